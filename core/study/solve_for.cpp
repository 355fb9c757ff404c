#include "core/study/solve_for.h"

#include "core/design/file.h"
#include "core/design/knowledge.h"
#include "core/design/schedules.h"
#include "core/units/named.h"

#include <boost/math/tools/minima.hpp>
#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <cmath>
#include <cstdint>

LW_TEXTS_OF(Core)

namespace lobewright::study {

namespace {

/// A search that the person stopped, or an engine between two that run and does not.
struct Stopped {};
struct CannotRun {};

/// The result as a function of the input.
class Response {
  public:
    Response(const design::Design& design, const Goal& goal, Monitor& monitor)
        : design_(design), goal_(goal), monitor_(monitor) {}

    /// Throws Stopped or CannotRun.
    double operator()(double input) {
        if (!monitor_.step(progress(), LW_TEXT("closing in"))) {
            throw Stopped{};
        }
        const auto changed = withGoal(design_, goal_, input);
        const auto solved = solution::solve(changed, monitor_, before_ ? &*before_ : nullptr,
                                            solution::Request(solution::Detail::figures));
        if (!solved) {
            if (design::validateEngine(changed).empty()) {
                throw Stopped{};
            }
            throw CannotRun{};
        }
        before_ = *solved;
        const auto* figure = solved->figure(goal_.result);
        if (!figure || !figure->value) {
            throw CannotRun{};
        }
        return *figure->value;
    }

  private:
    double progress() { return 0.5 + 0.5 * (1.0 - std::pow(0.97, ++evaluations_)); }

    const design::Design& design_;
    const Goal& goal_;
    Monitor& monitor_;
    std::optional<solution::Solution> before_; ///< lends its stages
    int evaluations_ = 0;
};

class Search {
  public:
    Search(const Goal& goal, Response& response, std::vector<Trial> trials, double span)
        : goal_(goal), response_(response), trials_(std::move(trials)), scale_(span) {}

    /// Between each two neighbours of the sweep; `gaps` says after which trials engines fail.
    std::vector<Trial> run(const std::vector<bool>& gapAfter) {
        std::size_t searched = 0; // a neighbour that comes as near lies in the same peak
        for (std::size_t i = 0; i < trials_.size(); ++i) {
            if (offset(trials_[i]) == 0.0) {
                found_.push_back(trials_[i]);
            }
            if (i + 1 < trials_.size() && !gapAfter[i]) {
                closeIn(trials_[i], trials_[i + 1]);
            }
            const bool hasNeighbours =
                i > 0 && i + 1 < trials_.size() && !gapAfter[i - 1] && !gapAfter[i];
            if (hasNeighbours && i > searched && turnsShortOfTarget(i)) {
                searchPeak(trials_[i - 1], trials_[i], trials_[i + 1]);
                searched = i + 1;
            }
        }
        std::ranges::sort(found_, {}, &Trial::input);
        return found_;
    }
    /// Where the result turns round short of the target.
    const std::vector<Trial>& peaks() const { return peaks_; }

  private:
    double offset(const Trial& trial) const { return trial.result - goal_.target; }

    void closeIn(const Trial& low, const Trial& high) {
        if (offset(low) * offset(high) >= 0.0) {
            return;
        }
        const double width = 1e-9 * std::abs(goal_.to - goal_.from);
        const auto narrow = [width](double a, double b) { return std::abs(b - a) <= width; };
        std::uintmax_t evaluations = 60;
        Trial best = std::abs(offset(low)) < std::abs(offset(high)) ? low : high;
        const auto f = [&](double input) {
            const Trial trial{input, response_(input)};
            if (std::abs(offset(trial)) < std::abs(offset(best))) {
                best = trial;
            }
            return offset(trial);
        };
        try {
            boost::math::tools::toms748_solve(f, low.input, high.input, offset(low), offset(high),
                                              narrow, evaluations);
        } catch (const CannotRun&) {
            return; // the engine stops running between the two
        }
        const double tolerance = 1e-5 * std::max(std::abs(goal_.target), scale_);
        if (std::abs(offset(best)) <= tolerance) { // else a jump
            found_.push_back(best);
        }
    }

    bool turnsShortOfTarget(std::size_t i) const {
        const double here = offset(trials_[i]);
        const double before = offset(trials_[i - 1]);
        const double after = offset(trials_[i + 1]);
        const bool isOneSide = here * before > 0.0 && here * after > 0.0;
        return isOneSide && std::abs(here) <= std::abs(before) && std::abs(here) <= std::abs(after);
    }

    /// The nearest that the result comes to the target between two values.
    void searchPeak(const Trial& before, const Trial& middle, const Trial& after) {
        const double side = offset(middle) > 0.0 ? 1.0 : -1.0;
        constexpr int bits = 20; // a minimum is flat: half the digits say all
        std::uintmax_t evaluations = 30;
        Trial peak = middle;
        try {
            boost::math::tools::brent_find_minima(
                [&](double input) {
                    const Trial trial{input, response_(input)};
                    if (side * offset(trial) < side * offset(peak)) {
                        peak = trial;
                    }
                    return side * offset(trial);
                },
                before.input, after.input, bits, evaluations);
        } catch (const CannotRun&) {
            return;
        }
        peaks_.push_back(peak);
        closeIn(before, peak);
        closeIn(peak, after);
    }

    const Goal& goal_;
    Response& response_;
    std::vector<Trial> trials_, peaks_, found_;
    double scale_; ///< of the result over the range
};

std::optional<Problem> goalProblem(const design::Design& design, const Goal& goal,
                                   const std::optional<design::Field>& field) {
    if (!field) {
        return Problem{goal.input, Message(LW_TEXT("this design has no value \"%1\""), goal.input)};
    }
    if (field->kind != design::FieldKind::number || !std::holds_alternative<double>(field->value)) {
        return Problem{goal.input, Message(LW_TEXT("%1 is not a number that can take any value"),
                                           field->label)};
    }
    if (design::scheduleOf(design, goal.input) != nullptr) {
        return Problem{
            goal.input,
            Message(LW_TEXT("%1 follows the speed; remove its schedule to vary it"), field->label)};
    }
    if (!std::isfinite(goal.target)) {
        return Problem{"", LW_TEXT("the target must be a finite number")};
    }
    const Unit& unit = unitNamed(field->unit);
    const auto from = asTyped(goal.from, unit).bare(), to = asTyped(goal.to, unit);
    if (!(goal.from < goal.to)) {
        return Problem{goal.input,
                       Message(LW_TEXT("the range is %1 to %2; it must ascend"), from, to)};
    }
    if (!field->range.contains(goal.from) || !field->range.contains(goal.to)) {
        return Problem{goal.input,
                       Message(LW_TEXT("the range of %1 is %2 to %3; its ends must be %4"),
                               field->label, from, to, field->range.describe(unit))};
    }
    return std::nullopt;
}

Result<Table> coarseSweep(const design::Design& design, const Goal& goal,
                          const design::Field& field, Monitor& monitor) {
    std::vector<Variant> variants;
    for (const double input : evenlySpaced(goal.from, goal.to, sweepPoints)) {
        variants.push_back({input, withGoal(design, goal, input)});
    }
    return solveVariants({goal.input, field.label, field.unit}, variants, {}, {goal.result},
                         monitor, {}, Course::smooth);
}

/// The points of the sweep that run, and where some between do not.
struct Sweep {
    std::vector<Trial> trials;
    std::vector<bool> gapAfter;
    int failed = 0;
    Message failure;
};

Sweep usable(const Table& table) {
    Sweep sweep;
    for (const Point& point : table.points) {
        const auto value = point.values.front();
        if (!point.failure.empty() || !value || !std::isfinite(*value)) {
            if (sweep.failed++ == 0) {
                sweep.failure = point.failure.empty()
                                    ? Message(LW_TEXT("the result is not available there"))
                                    : point.failure;
            }
            if (!sweep.gapAfter.empty()) {
                sweep.gapAfter.back() = true;
            }
            continue;
        }
        sweep.trials.push_back({point.parameter, *value});
        sweep.gapAfter.push_back(false);
    }
    return sweep;
}

} // namespace

design::Design withGoal(const design::Design& design, const Goal& goal, double input) {
    auto changed = design::withField(design, goal.input, input);
    if (!changed) {
        return design;
    }
    design::Design next = std::move(changed).value();
    next.knowledge = design::settledKnowledge(next);
    return next;
}

Result<GoalAnswer> solveFor(const design::Design& design, const Goal& goal, Monitor& monitor) {
    const auto field = design::findField(design, goal.input);
    if (const auto problem = goalProblem(design, goal, field)) {
        return *problem;
    }
    PartOfWork half(monitor, 0.0, 0.5); // the sweep
    const auto table = coarseSweep(design, goal, *field, half);
    if (!table) {
        return table.problems();
    }
    const Sweep sweep = usable(*table);
    if (sweep.trials.empty()) {
        const Unit& unit = unitNamed(field->unit);
        return Problem{
            goal.input,
            Message(LW_TEXT("the engine cannot be built or run anywhere between %1 and %2: %3"),
                    asTyped(goal.from, unit).bare(), asTyped(goal.to, unit), sweep.failure)};
    }
    const auto [low, high] = std::ranges::minmax(sweep.trials, {}, &Trial::result);
    Response response(design, goal, monitor);
    Search search(goal, response, sweep.trials, high.result - low.result);
    GoalAnswer answer;
    try {
        answer.solutions = search.run(sweep.gapAfter);
    } catch (const Stopped&) {
        return Problem{"", LW_TEXT("cancelled")};
    }
    std::vector<Trial> all = sweep.trials;
    all.insert(all.end(), search.peaks().begin(), search.peaks().end());
    all.insert(all.end(), answer.solutions.begin(), answer.solutions.end());
    answer.lowest = std::ranges::min(all, {}, &Trial::result);
    answer.highest = std::ranges::max(all, {}, &Trial::result);
    answer.nearest = std::ranges::min(
        all, {}, [&](const Trial& trial) { return std::abs(trial.result - goal.target); });
    if (!answer.solutions.empty()) {
        answer.nearest = answer.solutions.front();
    }
    answer.failed = sweep.failed;
    answer.failure = sweep.failure;
    answer.input = *field;
    answer.result = table->columns.front();
    return answer;
}

std::vector<FigureDifference> figureDifferences(const solution::Solution& before,
                                                const solution::Solution& after) {
    std::vector<FigureDifference> differences;
    for (const solution::Figure& now : after.figures) {
        const auto* then = before.figure(now.name);
        if (!then || (!then->value && !now.value)) {
            continue;
        }
        const bool bothKnown = then->value && now.value;
        const bool isSame =
            bothKnown && std::abs(*now.value - *then->value) <=
                             1e-5 * std::max(std::abs(*then->value), std::abs(*now.value));
        if (!isSame) {
            differences.push_back({*then, now});
        }
    }
    return differences;
}

} // namespace lobewright::study
