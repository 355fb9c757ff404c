#pragma once

#include "core/design/design.h"
#include "core/monitor.h"
#include "core/result.h"
#include "core/solution/solution.h"

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Studies solve many variants of one design and keep a few figures of each.
namespace lobewright::study {

/// One column of a study's table: a figure of the summary, under its name there.
struct Column {
    std::string name;
    Message label;
    std::string unit;
    bool operator==(const Column&) const = default;
};

/// One solved variant. `values` has one entry a column; all absent where `failure` says why the
/// variant could not be solved.
struct Point {
    std::size_t index = 0;  ///< place in the study, from 0
    double parameter = 0.0; ///< what was varied, in the unit of the table
    std::vector<std::optional<double>> values;
    Message failure;
    Message beyond = {}; ///< of what was solved: why it could not be run, see beyondLimits()
};

struct Table {
    Column parameter;
    std::vector<Column> columns;
    std::vector<Point> points; ///< ascending index

    /// Index of a column; absent when there is none of that name.
    std::optional<std::size_t> column(std::string_view name) const;
    /// One column over all points, gaps as NaN; shape (points). The name must exist.
    Samples values(std::string_view name) const;
};

/// Why a variant cannot be built, in one sentence with its place. problems: not empty.
Message reasonOf(const Problems& problems);
/// The check that says why the gas has no solution; null where it has one.
const solution::Check* unsolvedGas(const solution::Solution& solved);

/// One variant to be solved.
struct Variant {
    double parameter = 0.0;
    design::Design design;
    bool valid = false; ///< the design is known to obey every rule
};

/// Which part of a study to do, so that a cluster's job array can split it: points i with i % of ==
/// part.
struct Shard {
    int part = 0, of = 1;
};

/// Evenly spaced values from `from` to `to` inclusive, `count` ≥ 2; one value when from == to.
std::vector<double> evenlySpaced(double from, double to, int count);

/// Called once for each solved point, as it comes, from several threads but never at the same time.
using PointSink = std::function<void(const Point&)>;

/// How the engine changes from variant to variant.
enum class Course {
    arbitrary,
    /// Little by little: searches for gas cycles begin between those of variants beside. A point
    /// then equals a single solve within the tolerance of that search (1e-6 of the state from cycle
    /// to cycle), whatever the cores; so do the points of parts and of the whole study.
    smooth
};

/// Solves the variants on all cores. Stages that equal those of the first variant are computed
/// once. Errors: cancelled, or `figures` names a figure that no solution has. A variant that cannot
/// be solved is a point with a failure.
Result<Table> solveVariants(const Column& parameter, const std::vector<Variant>& variants,
                            const Shard& shard, const std::vector<std::string>& figures,
                            Monitor& monitor, const PointSink& sink = {},
                            Course course = Course::arbitrary);

} // namespace lobewright::study
