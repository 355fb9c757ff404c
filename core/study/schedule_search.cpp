#include "core/study/schedule_search.h"

#include "core/design/schedules.h"
#include "core/units.h"
#include "core/units/named.h"

#include <algorithm>
#include <cmath>
#include <functional>
#include <iterator>
#include <map>

LW_TEXTS_OF(Core)

namespace lobewright::study {

namespace {

constexpr int coarse = 9;            ///< values over the range
constexpr int rounds = 3;            ///< the grid, and two finer ones where the best may lie
constexpr int finer = 4;             ///< how many times as fine
constexpr double sameTorque = 0.005; ///< changes below are none for a sentence [share]

const std::vector<std::string>& figures() {
    static const std::vector<std::string> names = {"brake_torque_Nm", "knock_integral",
                                                   "peak_pressure_bar"};
    return names;
}

std::optional<Problem> problemOf(const ScheduleGoal& goal,
                                 const std::optional<design::Field>& field) {
    if (!field || !design::canFollowSpeed(*field)) {
        return Problem{goal.input,
                       Message(LW_TEXT("\"%1\" names no number of the adjuster, of the gas side or "
                                       "of the operating point that can follow the speed"),
                               goal.input)};
    }
    const auto from = asTyped(goal.from, unitNamed(field->unit)).bare();
    const auto to = asTyped(goal.to, unitNamed(field->unit));
    if (!(goal.from < goal.to)) {
        return Problem{goal.input,
                       Message(LW_TEXT("the range is %1 to %2; it must ascend"), from, to)};
    }
    if (!field->range.contains(goal.from) || !field->range.contains(goal.to)) {
        return Problem{goal.input,
                       Message(LW_TEXT("the range of %1 is %2 to %3; its ends must be %4"),
                               field->label, from, to,
                               field->range.describe(unitNamed(field->unit)))};
    }
    if (goal.speeds.empty() || !(goal.speeds.front() > 0.0) ||
        !std::ranges::all_of(goal.speeds, [](double speed) { return std::isfinite(speed); }) ||
        std::ranges::adjacent_find(goal.speeds, std::greater_equal()) != goal.speeds.end()) {
        return Problem{"", LW_TEXT("speeds must be positive and ascend")};
    }
    for (const auto& limit : {goal.knockIntegral, goal.peakPressure}) {
        if (limit && !(*limit > 0.0)) {
            return Problem{"", LW_TEXT("limits of knock integral and peak pressure must be "
                                       "positive")};
        }
    }
    return std::nullopt;
}

/// By how much of itself the worst limit is exceeded; 0 where all are kept.
double excess(const ScheduledValue& value, const ScheduleGoal& goal) {
    double most = 0.0;
    if (goal.knockIntegral && value.knockIntegral) {
        most = std::max(most, *value.knockIntegral / *goal.knockIntegral - 1.0);
    }
    if (goal.peakPressure) {
        most = std::max(most, value.peakPressure / *goal.peakPressure - 1.0);
    }
    return most;
}

std::optional<ScheduledValue> valueOf(const Point& point, const ScheduleGoal& goal) {
    if (!point.failure.empty() || !point.values[0] || !point.values[2]) {
        return std::nullopt;
    }
    ScheduledValue value{point.parameter, *point.values[0], point.values[1], *point.values[2]};
    value.isWithin = excess(value, goal) <= 0.0;
    return value;
}

bool isBetter(const ScheduledValue& a, const ScheduledValue& b, const ScheduleGoal& goal) {
    if (a.isWithin && b.isWithin) {
        return a.torque > b.torque;
    }
    return excess(a, goal) < excess(b, goal);
}

/// Solves values of the input at many speeds at once, and between them more where the best may lie.
class ScheduleSearch {
  public:
    ScheduleSearch(const design::Design& design, const ScheduleGoal& goal, ScheduleAnswer& answer)
        : design_(design::withoutSchedule(design, goal.input)), goal_(goal), answer_(answer),
          tried_(answer.rows.size()) {
        design_.snapshots.clear();
        design_.knowledge.clear();
    }

    /// Nothing: done; else why not.
    std::optional<Problem> run(Monitor& monitor) {
        for (int round = 0; round < rounds; ++round) {
            std::vector<Trial> trials;
            for (std::size_t row = 0; row < answer_.rows.size(); ++row) {
                round == 0 ? addGrid(trials, row) : addBetween(trials, row);
            }
            PartOfWork part(monitor, static_cast<double>(round) / rounds,
                            static_cast<double>(round + 1) / rounds);
            if (auto problem = solve(trials, part)) {
                return problem;
            }
        }
        return std::nullopt;
    }

  private:
    struct Trial {
        std::size_t row;
        std::optional<double> value; ///< absent: the fixed one
    };
    /// A value of one speed with what the engine does there; nothing where it does not run.
    using Tried = std::map<double, std::optional<ScheduledValue>>;

    void addGrid(std::vector<Trial>& trials, std::size_t row) const {
        trials.push_back({row, std::nullopt});
        for (int i = 0; i < coarse; ++i) {
            trials.push_back({row, goal_.from + (goal_.to - goal_.from) * i / (coarse - 1)});
        }
    }

    /// Whether a better value than the best may lie between two neighbours: beside the best itself,
    /// and where a limit or the running engine ends on the way to more torque.
    bool isPromising(const std::optional<ScheduledValue>& a, const std::optional<ScheduledValue>& b,
                     const ScheduledValue& best) const {
        for (const auto* end : {&a, &b}) {
            if (*end && (*end)->value == best.value) {
                return true;
            }
        }
        const bool keeps = a && a->isWithin, alsoKeeps = b && b->isWithin;
        return keeps != alsoKeeps && a && b && std::max(a->torque, b->torque) > best.torque;
    }

    void addBetween(std::vector<Trial>& trials, std::size_t row) const {
        const auto& best = answer_.rows[row].best;
        const Tried& tried = tried_[row];
        for (auto low = tried.begin(); best && std::next(low) != tried.end(); ++low) {
            const auto high = std::next(low);
            for (int i = 1; i < finer && isPromising(low->second, high->second, *best); ++i) {
                trials.push_back({row, low->first + (high->first - low->first) * i / finer});
            }
        }
    }

    std::optional<Problem> solve(const std::vector<Trial>& trials, Monitor& monitor) {
        std::vector<Variant> variants;
        for (const Trial& trial : trials) {
            design::Design varied = design_;
            varied.running.speed = answer_.rows[trial.row].speed * units::revPerMinute;
            if (trial.value) {
                varied = design::withField(varied, goal_.input, *trial.value).value();
            }
            variants.push_back({trial.value.value_or(0.0), std::move(varied)});
        }
        if (variants.empty()) {
            return std::nullopt;
        }
        const auto table = solveVariants({goal_.input, answer_.input.label, answer_.input.unit},
                                         variants, {}, figures(), monitor);
        if (!table) {
            return table.problems().front();
        }
        for (std::size_t i = 0; i < trials.size(); ++i) {
            take(trials[i], table->points[i]);
        }
        return std::nullopt;
    }

    void take(const Trial& trial, const Point& point) {
        ScheduleRow& row = answer_.rows[trial.row];
        const auto value = valueOf(point, goal_);
        if (!trial.value) {
            row.fixed = value;
            if (const auto* number = std::get_if<double>(&answer_.input.value); value && number) {
                row.fixed->value = *number;
            }
            return;
        }
        tried_[trial.row].emplace(*trial.value, value);
        if (value && (!row.best || isBetter(*value, *row.best, goal_))) {
            row.best = value;
            row.failure = {};
        } else if (!value && !row.best) {
            row.failure = point.failure;
        }
    }

    design::Design design_;
    const ScheduleGoal& goal_;
    ScheduleAnswer& answer_;
    std::vector<Tried> tried_; ///< by row
};

/// Neighbouring speeds at which the schedule does the same to the torque.
struct Span {
    int sign = 0;                ///< 1 buys, −1 costs, 0 neither
    double from = 0.0, to = 0.0; ///< [1/min]
    double most = 0.0;           ///< largest gain by amount [share]
};

int signOf(double gain) {
    return gain > sameTorque ? 1 : gain < -sameTorque ? -1 : 0;
}

std::vector<Span> spansOf(const ScheduleAnswer& answer) {
    std::vector<Span> spans;
    double before = 0.0;
    for (const ScheduleRow& row : answer.rows) {
        const auto gain = row.gain();
        if (!gain) {
            continue;
        }
        const int sign = signOf(*gain);
        if (spans.empty()) {
            spans.push_back({sign, row.speed, row.speed, *gain});
        } else if (sign != spans.back().sign) {
            // Where the gain passes 0, or the threshold between something and nothing.
            const double level = sign * spans.back().sign < 0        ? 0.0
                                 : sign > 0 || spans.back().sign > 0 ? sameTorque
                                                                     : -sameTorque;
            const double share = std::clamp((level - before) / (*gain - before), 0.0, 1.0);
            const double at = spans.back().to + share * (row.speed - spans.back().to);
            spans.back().to = at;
            spans.push_back({sign, at, row.speed, *gain});
        } else {
            spans.back().to = row.speed;
            if (std::abs(*gain) > std::abs(spans.back().most)) {
                spans.back().most = *gain;
            }
        }
        before = *gain;
    }
    return spans;
}

Amount inPercent(double share) {
    return withDecimals(std::abs(share), in::percent, 0);
}

/// To a twentieth of its power of ten: 1,450 and 85.
Amount speedOf(double speed) {
    const double step = std::pow(10.0, std::floor(std::log10(speed))) / 20.0;
    return withDecimals(step * std::round(speed / step) * units::revPerMinute, in::turnsPerMinute,
                        0);
}

Message partOf(const Span& span) {
    const Amount from = speedOf(span.from).bare(), to = speedOf(span.to);
    return span.sign > 0 ? Message(LW_TEXT("buys up to %1 torque from %2 to %3"),
                                   inPercent(span.most), from, to)
                         : Message(LW_TEXT("costs up to %1 torque from %2 to %3"),
                                   inPercent(span.most), from, to);
}

Message gainsInWords(const std::vector<Span>& all) {
    std::vector<Span> spans;
    std::ranges::copy_if(all, std::back_inserter(spans),
                         [](const Span& span) { return span.sign != 0; });
    if (spans.empty()) {
        return LW_TEXT("The schedule changes the torque by less than half a per cent.");
    }
    const Span& first = spans.front();
    if (all.size() == 1) {
        return first.sign > 0
                   ? Message(LW_TEXT("The schedule buys up to %1 torque over the whole range."),
                             inPercent(first.most))
                   : Message(LW_TEXT("The schedule costs up to %1 torque over the whole range."),
                             inPercent(first.most));
    }
    if (spans.size() == 2 && first.sign != spans.back().sign) {
        const Amount at = speedOf(first.to), above = speedOf(spans.back().from);
        if (all.size() == 2) {
            return first.sign > 0
                       ? Message(LW_TEXT("The schedule buys up to %1 torque below %2 and costs up "
                                         "to %3 above."),
                                 inPercent(first.most), at, inPercent(spans.back().most))
                       : Message(LW_TEXT("The schedule costs up to %1 torque below %2 and buys up "
                                         "to %3 above."),
                                 inPercent(first.most), at, inPercent(spans.back().most));
        }
        return first.sign > 0
                   ? Message(LW_TEXT("The schedule buys up to %1 torque below %2 and costs up to "
                                     "%3 above %4."),
                             inPercent(first.most), at, inPercent(spans.back().most), above)
                   : Message(LW_TEXT("The schedule costs up to %1 torque below %2 and buys up to "
                                     "%3 above %4."),
                             inPercent(first.most), at, inPercent(spans.back().most), above);
    }
    Message parts = partOf(first);
    for (std::size_t i = 1; i < spans.size(); ++i) {
        parts = Message(LW_TEXT("%1, %2"), parts, partOf(spans[i]));
    }
    return Message(LW_TEXT("The schedule %1."), parts);
}

} // namespace

std::optional<double> ScheduleRow::gain() const {
    if (!fixed || !best || fixed->torque == 0.0) {
        return std::nullopt;
    }
    return (best->torque - fixed->torque) / std::abs(fixed->torque);
}

design::Schedule ScheduleAnswer::schedule() const {
    design::Schedule schedule{input.path, {}, {}};
    for (const ScheduleRow& row : rows) {
        if (row.best) {
            schedule.speed.push_back(row.speed * units::revPerMinute);
            schedule.value.push_back(row.best->value);
        }
    }
    return schedule;
}

Result<ScheduleAnswer> findSchedule(const design::Design& design, const ScheduleGoal& goal,
                                    Monitor& monitor) {
    const auto field = design::findField(design, goal.input);
    if (auto problem = problemOf(goal, field)) {
        return std::move(*problem);
    }
    ScheduleAnswer answer{*field, {}};
    for (const double speed : goal.speeds) {
        answer.rows.push_back({speed, {}, {}, {}});
    }
    if (auto problem = ScheduleSearch(design, goal, answer).run(monitor)) {
        return std::move(*problem);
    }
    return answer;
}

Message scheduleInWords(const ScheduleAnswer& answer) {
    const auto breaks = std::ranges::count_if(
        answer.rows, [](const ScheduleRow& row) { return row.fixed && !row.fixed->isWithin; });
    const auto beyond = std::ranges::count_if(
        answer.rows, [](const ScheduleRow& row) { return !row.best || !row.best->isWithin; });
    Message words = gainsInWords(spansOf(answer));
    if (breaks > 0) {
        words = Message(LW_TEXT("%1 The fixed value exceeds a limit at %2 of %3 speeds."), words,
                        static_cast<long>(breaks), answer.rows.size());
    }
    if (beyond > 0) {
        words = Message(LW_TEXT("%1 At %2 of %3 speeds no value of the range keeps the limits."),
                        words, static_cast<long>(beyond), answer.rows.size());
    }
    return words;
}

design::Design withSchedule(design::Design design, const design::Schedule& schedule) {
    design = design::withoutSchedule(std::move(design), schedule.input);
    design.schedules.push_back(schedule);
    return design;
}

} // namespace lobewright::study
