#pragma once

#include "core/result.h"
#include "core/track/roller.h"
#include "core/track/surface.h"

#include <algorithm>
#include <cmath>

namespace lobewright::track {

/// Centre line of a cylindrical cutter whose axis is radial to the shaft, as for the roller.
struct CutterPath {
    Samples phi;        ///< pattern angle of the contact at R that the cutter makes [rad]
    Samples polarAngle; ///< of its axis, in the frame of the track [rad]
    Samples lift;       ///< of its axis [m]
    Samples axial;      ///< z of its axis [m]
};

/// Path of a cutter of radius c for the flank that a roller of radius r envelops: the axis is moved
/// by c − r along the normal of the contact at ρ = R. The pitch path itself for c = r, the only
/// radius that makes the surface exactly. For any other the error grows from R to both edges; at R
/// a small one remains, because a moved axis that is radial again is no longer square to the
/// normal: c·(1 − √(1 − (sin α·sin γ)²)) with γ the change of polar angle.
/// phi shape (samples) [rad]. Errors: cutter radius not positive ("/cutter_radius_mm").
Result<CutterPath> cutterPath(const motion::LiftCurve& curve, const Samples& phi,
                              double pitchRadius, double rollerRadius, double cutterRadius,
                              Flank flank, const Placement& placement);

/// How far the surface that the cutter leaves is from the roller's, at one ρ over a period:
/// positive material left, negative gouged.
struct CutterDeviation {
    double rho = 0.0;                     ///< [m]
    double most = 0.0, mostAngle = 0.0;   ///< largest deviation [m] and its φ [rad]
    double least = 0.0, leastAngle = 0.0; ///< smallest deviation [m] and its φ [rad]
    /// The larger magnitude of the two [m].
    double magnitude() const { return std::max(std::abs(most), std::abs(least)); }
};

/// Deviation at each φ: smallest distance over the whole path from the surface point (φ, ρ) to the
/// cutter's axis, less c [m], shape (samples). Minimum found between sampled positions, then to
/// rounding.
/// Errors: as cutterPath; ρ not positive ("/rho").
Result<Samples> cutterDeviation(const motion::LiftCurve& curve, const Samples& phi, double rho,
                                double pitchRadius, double rollerRadius, double cutterRadius,
                                Flank flank);

/// Deviations at the inner edge, the middle and the outer edge of the roller over one period, at
/// 720 angles.
struct CutterDeviations {
    CutterDeviation inner, middle, outer;
};
Result<CutterDeviations> cutterDeviations(const motion::LiftCurve& curve, double pitchRadius,
                                          const Roller& roller, double cutterRadius, Flank flank);

} // namespace lobewright::track
