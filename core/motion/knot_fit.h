#pragma once

#include "core/motion/lift_curve.h"
#include "core/result.h"

#include <optional>
#include <vector>

namespace lobewright::motion {

struct FitOptions {
    double tolerance = 10e-6; ///< largest deviation asked for [m], > 0; tables: above their noise
    int mostKnots = 48;       ///< give up beyond this many, ≥ 3
};

/// The largest difference of something between a fit and what it stands for.
struct Deviation {
    double value = 0.0; ///< ≥ 0
    double angle = 0.0; ///< where it is [rad]
};

/// A free-form pattern close to something given.
struct KnotFit {
    KnotShape shape;
    double largestError = 0.0;    ///< largest deviation found [m]
    double angle = 0.0;           ///< where it is [rad]
    bool withinTolerance = false; ///< false: mostKnots were not enough, this is the closest
    /// Of y' [m/rad] and y'' [m/rad²], both limits of every junction included; a table has none.
    std::optional<Deviation> slope, curvature;
};

/// Free-form pattern that follows a lift curve, for sketching on from there. Knots at the segment
/// bounds, then at the middle of whatever interval fits worst; every knot lies on the curve. The
/// error is that of the finished lift curve, lowest lift 0, on a grid of 128 angles for each
/// division of the given curve: an acceleration jump of a law is rounded off and costs most.
/// Errors: tolerance not positive, fewer than 3 knots allowed.
Result<KnotFit> fitKnots(const LiftCurve& curve, const FitOptions& options = {});

/// The same with exactly this many knots, whatever the error; evenly spaced where they are fewer
/// than the segment bounds. `withinTolerance` judges the usual tolerance.
/// Errors: fewer than 3 or more than `mostFittedKnots`.
Result<KnotFit> fitKnotCount(const LiftCurve& curve, int count);
inline constexpr int mostFittedKnots = 200; ///< more cannot be handled by hand [own estimate]

/// Measured or imported lifts over one period.
struct LiftTable {
    std::vector<double> angles; ///< [rad], increasing, from first to last at most one period
    std::vector<double> lifts;  ///< [m], any zero
};

/// Free-form pattern smoothed through a table: least squares with the fewest evenly spaced knots
/// whose largest residual is within the tolerance. Choose that above the noise of the table, or
/// the noise is followed. The error is the largest residual in a row, before the lowest lift
/// is set to 0. A closing row one period after the first is left out.
/// Errors: tolerance, knots allowed; columns of different length; rows not finite, not increasing,
/// longer than a period ("/rows/12/angle_deg"); a gap of more than a quarter of a period; closing
/// row that differs from the first by more than the tolerance; all lifts equal.
Result<KnotFit> fitKnots(const LiftTable& table, int lobes, const FitOptions& options = {});

} // namespace lobewright::motion
