#include "core/study/operating_points.h"

#include <fmt/format.h>
#include <tbb/parallel_for.h>

#include <algorithm>
#include <atomic>
#include <cassert>
#include <limits>
#include <mutex>

namespace lobewright::study {

namespace {

/// Cancel from any thread; progress comes from finished points, not from inside one.
class PointMonitor final : public Monitor {
  public:
    explicit PointMonitor(const std::atomic<bool>& stopped) : stopped_(stopped) {}
    bool step(double, std::string_view) override { return !stopped_; }

  private:
    const std::atomic<bool>& stopped_;
};

std::string sentence(const Problems& problems) {
    const auto& first = problems.front();
    return first.path.empty() ? first.message : fmt::format("{}: {}", first.path, first.message);
}

/// The first error check, when the gas has no solution.
std::string whyUnsolved(const std::vector<solution::Check>& checks) {
    const auto place = std::find_if(checks.begin(), checks.end(),
                                    [](const auto& check) { return check.id == "not-converged"; });
    return place == checks.end() ? std::string() : place->message;
}

Point solvePoint(std::size_t index, const Variant& variant, const std::vector<std::string>& figures,
                 Monitor& monitor, const solution::Solution* shared) {
    Point point{index, variant.parameter, std::vector<std::optional<double>>(figures.size()), {}};
    const auto solved = solution::solve(variant.design, monitor, shared, solution::Detail::figures);
    if (!solved) {
        point.failure = sentence(solved.problems());
        return point;
    }
    for (std::size_t i = 0; i < figures.size(); ++i) {
        if (const auto* figure = solved->figure(figures[i])) {
            point.values[i] = figure->value;
        }
    }
    point.failure = whyUnsolved(solved->checks);
    return point;
}

/// Labels and units come from a solution. A name that a complete one does not have is a mistake of
/// the caller; one without a gas cycle lacks many.
Result<std::vector<Column>> columnsOf(const solution::Solution& solution,
                                      const std::vector<std::string>& figures) {
    std::vector<Column> columns;
    for (const auto& name : figures) {
        const auto* figure = solution.figure(name);
        if (!figure && !solution.gas) {
            columns.push_back({name, name, ""});
            continue;
        }
        if (!figure) {
            return Problem{"", fmt::format("there is no figure \"{}\"", name)};
        }
        columns.push_back({name, figure->label, figure->unit});
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
                            Monitor& monitor, const PointSink& sink) {
    assert(!variants.empty() && shard.of >= 1 && shard.part >= 0 && shard.part < shard.of);
    std::vector<std::size_t> mine;
    for (auto i = static_cast<std::size_t>(shard.part); i < variants.size();
         i += static_cast<std::size_t>(shard.of)) {
        mine.push_back(i);
    }
    // Whichever variant solves first lends its stages and the labels of its figures to all.
    std::optional<solution::Solution> shared;
    std::atomic<bool> stopped = false;
    PointMonitor pointMonitor(stopped);
    for (const auto i : mine) {
        if (!monitor.step(0.0, "first point")) {
            return Problem{"", "cancelled"};
        }
        auto first =
            solution::solve(variants[i].design, pointMonitor, nullptr, solution::Detail::figures);
        // Without a gas cycle most figures are missing: only a last resort for the labels.
        if (first && (first->gas || !shared)) {
            shared.emplace(std::move(first).value());
        }
        if (shared && shared->gas) {
            break;
        }
    }
    Table table{parameter, {}, {}};
    if (shared) {
        auto columns = columnsOf(*shared, figures);
        if (!columns) {
            return columns.problems();
        }
        table.columns = *columns;
    } else {
        for (const auto& name : figures) {
            table.columns.push_back({name, name, ""});
        }
    }
    table.points.resize(mine.size());
    std::mutex collecting;
    std::size_t done = 0;
    tbb::parallel_for(std::size_t{0}, mine.size(), [&](std::size_t i) {
        if (stopped) {
            return;
        }
        auto point = solvePoint(mine[i], variants[mine[i]], figures, pointMonitor,
                                shared ? &*shared : nullptr);
        const std::scoped_lock lock(collecting);
        table.points[i] = std::move(point);
        ++done;
        if (!monitor.step(static_cast<double>(done) / static_cast<double>(mine.size()),
                          fmt::format("{} of {}", done, mine.size()))) {
            stopped = true;
        } else if (sink) {
            sink(table.points[i]);
        }
    });
    if (stopped) {
        return Problem{"", "cancelled"};
    }
    return table;
}

} // namespace lobewright::study
