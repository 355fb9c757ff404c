#include "core/study/operating_points.h"

#include "core/parallel.h"
#include "core/solution/missing_piston.h"
#include "core/study/beyond_limits.h"
#include "core/study/line.h"

#include <fmt/format.h>

#include <algorithm>
#include <atomic>
#include <cassert>
#include <limits>
#include <memory>
#include <mutex>
#include <numeric>
#include <utility>

LW_TEXTS_OF(Core)

namespace lobewright::study {

Message reasonOf(const Problems& problems) {
    const auto& first = problems.front();
    return first.path.empty() ? first.message
                              : Message(LW_TEXT("%1: %2"), first.path, first.message);
}

const solution::Check* unsolvedGas(const solution::Solution& solved) {
    return solved.check("not-converged");
}

namespace {

/// What the variants lend each other: whichever is solved first lends its stages, the labels of its
/// figures and the groups they are in to all that start later.
class Lender {
  public:
    std::shared_ptr<const solution::Solution> get() const {
        const std::scoped_lock lock(mutex_);
        return solution_;
    }
    /// Without a gas cycle most figures are missing: only a last resort for the labels.
    void offer(const std::shared_ptr<const solution::Solution>& solved) {
        const std::scoped_lock lock(mutex_);
        if (!solution_ || (!solution_->gas && solved->gas)) {
            solution_ = solved;
        }
    }

  private:
    mutable std::mutex mutex_;
    std::shared_ptr<const solution::Solution> solution_;
};

/// The groups of the figures wanted and of those that every point is judged by; none, which stands
/// for all, as long as nothing tells them.
std::vector<std::string> groupsOf(const solution::Solution* solved,
                                  const std::vector<std::string>& figures) {
    if (!solved || !solved->gas) {
        return {};
    }
    std::vector<std::string> groups(std::begin(judgedGroups), std::end(judgedGroups));
    for (const auto& name : figures) {
        const auto* figure = solved->figure(name);
        // A name of its own stands for what of the balance costs next to nothing.
        const bool isPeak =
            figure && (name == "shaking_force_peak_N" || name == "rocking_moment_peak_Nm" ||
                       name == "piston_inertia_force_peak_N");
        const std::string group = isPeak ? "shaking" : figure ? figure->group : "";
        if (figure && std::find(groups.begin(), groups.end(), group) == groups.end()) {
            groups.push_back(group);
        }
    }
    return groups;
}

using Start = std::shared_ptr<const gas::CycleStart>;

/// `start`: where the gas cycle is likely to begin; then where it does, null where it was not
/// found.
Point solvePoint(std::size_t index, const Variant& variant, const std::vector<std::string>& figures,
                 Monitor& monitor, Lender& lender, Start& start) {
    Point point{index, variant.parameter, std::vector<std::optional<double>>(figures.size()), {}};
    const auto lent = lender.get();
    solution::Request request(solution::Detail::figures);
    request.groups = groupsOf(lent.get(), figures);
    request.valid = variant.valid;
    request.near = std::exchange(start, nullptr);
    auto result = solution::solve(variant.design, monitor, lent.get(), request);
    if (!result) {
        point.failure = reasonOf(result.problems());
        return point;
    }
    const auto solved = std::make_shared<const solution::Solution>(std::move(result).value());
    for (std::size_t i = 0; i < figures.size(); ++i) {
        if (const auto* figure = solved->figure(figures[i])) {
            point.values[i] = figure->value;
        }
    }
    if (const auto* why = unsolvedGas(*solved)) {
        point.failure = why->message;
    } else {
        point.beyond = beyondLimits(*solved);
    }
    start = solved->gas ? solved->gas->start : nullptr;
    if (!lent || !lent->gas) {
        lender.offer(solved);
    }
    return point;
}

/// Where the cycle of a point is likely to begin, from those beside it. Null where one of them has
/// none.
Start likelyStart(const Beside& neighbours, const std::vector<Start>& starts) {
    std::vector<Start> chosen;
    for (const std::size_t i : neighbours.points) {
        chosen.push_back(starts[i]);
    }
    return gas::startBetween(chosen, neighbours.weights, neighbours.fewer);
}

std::vector<std::size_t> partOf(std::size_t count, const Shard& shard) {
    std::vector<std::size_t> part;
    for (auto i = static_cast<std::size_t>(shard.part); i < count;
         i += static_cast<std::size_t>(shard.of)) {
        part.push_back(i);
    }
    return part;
}

/// One round of all points, or several where the earlier tell about the later.
std::vector<std::vector<std::size_t>> roundsOf(std::size_t count, Course course) {
    if (course == Course::smooth) {
        return bisectingRounds(count);
    }
    std::vector<std::size_t> all(count);
    std::iota(all.begin(), all.end(), std::size_t{0});
    return {all};
}

/// Labels and units come from a solution. A name that a complete one does not have is a mistake of
/// the caller; one without a gas cycle lacks many.
Result<std::vector<Column>> columnsOf(const solution::Solution* solution,
                                      const std::vector<std::string>& figures) {
    std::vector<Column> columns;
    for (const auto& name : figures) {
        const auto* figure = solution ? solution->figure(name) : nullptr;
        const bool isOfNoPiston = solution && solution::isOfMissingPiston(*solution, name);
        if (!figure && (isOfNoPiston || !(solution && solution->gas))) {
            columns.push_back({name, name, ""});
            continue;
        }
        if (!figure) {
            return Problem{"", Message(LW_TEXT("there is no figure \"%1\""), name)};
        }
        columns.push_back({name, figure->label, figure->symbolOfUnit()});
    }
    return columns;
}

} // namespace

std::optional<std::size_t> Table::column(std::string_view name) const {
    const auto place = std::find_if(columns.begin(), columns.end(),
                                    [&](const Column& column) { return column.name == name; });
    return place == columns.end()
               ? std::nullopt
               : std::optional(static_cast<std::size_t>(place - columns.begin()));
}

Samples Table::values(std::string_view name) const {
    const auto index = column(name);
    assert(index);
    Samples result(static_cast<Eigen::Index>(points.size()));
    for (std::size_t i = 0; i < points.size(); ++i) {
        result[static_cast<Eigen::Index>(i)] =
            points[i].values[*index].value_or(std::numeric_limits<double>::quiet_NaN());
    }
    return result;
}

std::vector<double> evenlySpaced(double from, double to, int count) {
    assert(count >= 1);
    if (from == to || count == 1) {
        return {from};
    }
    std::vector<double> values(static_cast<std::size_t>(count));
    for (int i = 0; i < count; ++i) {
        values[static_cast<std::size_t>(i)] = from + (to - from) * i / (count - 1);
    }
    return values;
}

Result<Table> solveVariants(const Column& parameter, const std::vector<Variant>& variants,
                            const Shard& shard, const std::vector<std::string>& figures,
                            Monitor& monitor, const PointSink& sink, Course course) {
    assert(!variants.empty() && shard.of >= 1 && shard.part >= 0 && shard.part < shard.of);
    const auto mine = partOf(variants.size(), shard);
    std::vector<double> parameters;
    parameters.reserve(mine.size());
    for (const std::size_t i : mine) {
        parameters.push_back(variants[i].parameter);
    }
    Lender lender;
    std::atomic<bool> stopped = false;
    StoppedByFlag pointMonitor(stopped);
    Table table{parameter, {}, std::vector<Point>(mine.size())};
    std::mutex collecting;
    std::size_t done = 0;
    if (!monitor.step(0.0, LW_TEXT("first point"))) {
        return Problem{"", LW_TEXT("cancelled")};
    }
    std::vector<Start> starts(mine.size());
    const auto solveOne = [&](std::size_t i) {
        auto point =
            solvePoint(mine[i], variants[mine[i]], figures, pointMonitor, lender, starts[i]);
        const std::scoped_lock lock(collecting);
        table.points[i] = std::move(point);
        ++done;
        if (!monitor.step(static_cast<double>(done) / static_cast<double>(mine.size()),
                          fmt::format("{} of {}", done, mine.size()))) {
            stopped = true;
        } else if (sink) {
            sink(table.points[i]);
        }
    };
    std::vector<std::size_t> solvedBefore;
    for (const auto& round : roundsOf(mine.size(), course)) {
        for (const std::size_t i : round) {
            starts[i] = likelyStart(beside(i, solvedBefore, parameters), starts);
        }
        onAllCores(round.size(), [&](std::size_t i) {
            if (!stopped) {
                solveOne(round[i]);
            }
        });
        solvedBefore.insert(solvedBefore.end(), round.begin(), round.end());
        std::sort(solvedBefore.begin(), solvedBefore.end());
    }
    if (stopped) {
        return Problem{"", LW_TEXT("cancelled")};
    }
    auto columns = columnsOf(lender.get().get(), figures);
    if (!columns) {
        return columns.problems();
    }
    table.columns = std::move(columns).value();
    return table;
}

} // namespace lobewright::study
