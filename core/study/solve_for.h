#pragma once

#include "core/design/fields.h"
#include "core/study/operating_points.h"

#include <optional>
#include <string>
#include <vector>

namespace lobewright::study {

/// "Make the brake power 60 kW by the supply pressure, between 1 and 3 bar."
struct Goal {
    std::string result;          ///< name of a figure of the summary, "brake_power_kW"
    double target = 0.0;         ///< in the unit of its name
    std::string input;           ///< JSON pointer of a number of the design
    double from = 0.0, to = 0.0; ///< in the unit of the design file
};

/// One value of the input, with what the result is there.
struct Trial {
    double input = 0.0;
    double result = 0.0;
};

struct GoalAnswer {
    std::vector<Trial> solutions; ///< ascending input; empty: not reachable
    /// Closest to the target within the range; where there are solutions, the first of them.
    Trial nearest;
    Trial lowest, highest; ///< of the result within the range
    int failed = 0;        ///< values of the coarse sweep where the engine cannot be built or run
    Message failure;       ///< why, at the first of them
    design::Field input;   ///< for label and unit
    Column result;         ///< likewise
};

/// Every value of the input in the range at which the result is the target. A coarse sweep of
/// `sweepPoints` values finds where the result passes the target, TOMS 748 [Alefeld 1995] closes in
/// on it; where the sweep turns round short of the target its peak is searched by Brent's method,
/// so that two solutions close together are both found. A place where the result jumps over the
/// target is no solution. Accurate to 1e-9 of the range in the input and to the tolerance of the
/// gas solver (1e-6) in the result.
/// Errors: the input is no number of the design that can take any value, or it follows the speed
/// (its path), the range is
/// not in order or beyond the admissible values (path), there is no such figure (path ""), the
/// engine cannot be built or run anywhere in the range (path of the input), cancelled (path "").
inline constexpr int sweepPoints = 33;
Result<GoalAnswer> solveFor(const design::Design& design, const Goal& goal, Monitor& monitor);

/// The design with the input at this value, its knowledge widened to hold it. The value must lie in
/// the range of an answered goal.
design::Design withGoal(const design::Design& design, const Goal& goal, double input);

/// A figure that is not what it was.
struct FigureDifference {
    solution::Figure before, after;
};
/// Figures of both solutions that differ by more than 1e-5 of their value, in their order.
std::vector<FigureDifference> figureDifferences(const solution::Solution& before,
                                                const solution::Solution& after);

} // namespace lobewright::study
