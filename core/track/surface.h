#pragma once

#include "core/ends.h"
#include "core/track/track.h"

#include <Eigen/Core>

namespace lobewright::track {

/// Where a track sits in the coordinates of the shaft: z from the inlet to the exhaust end, polar
/// angle counted in the direction of rotation.
struct Placement {
    End end = End::inlet;
    double turned = 0.0; ///< forward turn against the inlet track, δ + Δ [rad]; inlet 0
    double origin = 0.0; ///< z of the roller axis at lift 0 [m]

    /// Polar angle of pattern angle φ [rad].
    double polarAngle(double phi) const { return turned - phi; }
    /// z of a lift [m].
    double axial(double lift) const { return end == End::inlet ? origin + lift : origin - lift; }
};

/// Points of a flank with unit normals that point out of the track, towards the roller.
/// Both 3 × (angles·stations), angle fastest: (φ₀,ρ₀) (φ₁,ρ₀) … (φ₀,ρ₁) …; points in m.
struct Surface {
    Eigen::Matrix3Xd points, normals;
};

/// The flank that a roller of radius r envelops, on the given angles [rad] and stations ρ [m].
/// Exact; self-intersecting where areaFactor is negative.
Surface surface(const motion::LiftCurve& curve, const Samples& phi, const Samples& rho,
                double rollerRadius, Flank flank, const Placement& placement);

} // namespace lobewright::track
