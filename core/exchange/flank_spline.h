#pragma once

#include "core/exchange/flank_section.h"
#include "core/result.h"

#include <Eigen/Core>

#include <vector>

namespace lobewright::exchange {

/// The flank between two cylinders and two pattern angles as one tensor-product B-spline: degree 5
/// along, with the exact point, tangent and second derivative at every knot; one polynomial across,
/// through the exact points on Chebyshev's stations. Both boundary cylinders are stations.
struct FlankSpline {
    static constexpr int degreeAlong = 5;
    std::vector<double> knots; ///< pattern angle [rad], ascending, distinct
    /// 6 at both ends; inside 3, so that curvature is continuous, or 4 where the jerk jumps.
    std::vector<int> multiplicities;
    int degreeAcross = 0;
    /// Poles of the surface from the inner cylinder to the outer [m]: degreeAcross + 1 matrices,
    /// each 3 × (poles along). The first and last are those of the boundary curves.
    std::vector<Eigen::Matrix3Xd> poles;
    /// The boundary curves on their cylinders, rows polar angle [rad] and z [m], same knots.
    Eigen::Matrix2Xd innerTrace, outerTrace;
    double deviation = 0.0; ///< largest distance from the exact surface found while fitting [m]
};

/// Fits the stretch [begin, end] of a flank, along which y'' has no jumps, to a tolerance [m].
/// Error: no such spline of sensible size (path "").
Result<FlankSpline> fitFlank(const FlankForm& form, double faceInner, double faceOuter,
                             double begin, double end, double tolerance);

} // namespace lobewright::exchange
