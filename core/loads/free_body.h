#pragma once

#include "core/loads/piston.h"

#include <Eigen/Core>

#include <optional>
#include <vector>

/// Free bodies of the moving parts.
///
/// Axes: z along the shaft from the inlet end to the exhaust end, ω > 0 about +z; x and y fixed to
/// the engine, cylinder k at polar angle ψ_k. Moments of a track are taken about the point where
/// the plane of its roller axes at outer dead centre cuts the shaft axis.
namespace lobewright::loads {

/// All rollers on one track, shape (samples) each.
struct TrackForces {
    Samples thrust;           ///< outward positive, away from the cylinders [N]
    Samples radialX, radialY; ///< radial pull [N]
    Samples tiltX, tiltY;     ///< tilting moment [N·m]
    Samples torque;           ///< about z, roller losses included [N·m]
    static TrackForces zero(Eigen::Index samples);
    Samples radial() const { return (radialX.square() + radialY.square()).sqrt(); }
    Samples tilt() const { return (tiltX.square() + tiltY.square()).sqrt(); }
};

/// What one roller does to its track, shape (samples) each.
struct RollerForces {
    Samples thrust; ///< N·cos α [N]
    Samples side;   ///< N·sin α [N]
    Samples lift;   ///< y [m]
    Samples torque; ///< on the shaft, losses included [N·m]
};

/// Adds the roller of one cylinder at polar angle psi [rad] to the forces on its track.
void addRoller(TrackForces& sum, End end, double psi, double pitchRadius,
               const RollerForces& roller);

/// Force and moment in engine axes.
struct Wrench {
    Eigen::Vector3d force = Eigen::Vector3d::Zero();  ///< [N]
    Eigen::Vector3d moment = Eigen::Vector3d::Zero(); ///< [N·m]
};

/// What the rollers do to one track at one sample.
Wrench trackWrench(const TrackForces& forces, End end, Eigen::Index sample);

/// Forces on one piston as vectors (tangential, inward) [N]: tangential in the direction of
/// rotation. They form a closed polygon unless the piston has lifted off or jams.
struct PistonPolygon {
    Eigen::Vector2d gas, inertia, rings, guide, track;
    /// What is left over; zero to rounding for a piston that follows its track.
    Eigen::Vector2d sum() const { return gas + inertia + rings + guide + track; }
};
PistonPolygon pistonPolygon(const PistonLoads& piston, Eigen::Index sample);

/// Shaft with both tracks: rollers on the tracks, two radial bearings in the planes of the tracks,
/// a thrust bearing and the load. All sums are zero.
struct ShaftReactions {
    Samples thrust;                   ///< of the thrust bearing on the shaft, +z [N]
    PerEnd<Samples> radialX, radialY; ///< of each radial bearing on the shaft [N]
    Samples loadTorque; ///< of load, bearing friction and flywheel inertia on the shaft [N·m]
    Samples radial(End end) const { return (radialX[end].square() + radialY[end].square()).sqrt(); }
};

/// Reactions on the shaft. `distance` between the planes of the roller axes at ODC [m], > 0.
/// Moments are balanced about the shaft axis in the inlet plane.
ShaftReactions shaftReactions(const PerEnd<TrackForces>& track, double distance);

/// Distance between the planes of the roller axes at ODC [m]: gap between the crowns and two
/// pistons, each from crown to roller axis, which counts as its length where it is not given. Of a
/// one-sided engine from that plane to the face of the head, where the other bearing is taken to
/// stand. Absent when the piston has no length given.
std::optional<double> trackDistance(const mechanism::OpposedPair& pair);

/// Axial force of all pistons on the frame through their friction, +z [N], shape (samples).
void addFrameFriction(Samples& sum, End end, const PistonLoads& piston);

/// Spline between the shaft and the exhaust track.
struct Spline {
    double radius = 0.0;   ///< of its flanks [m]
    double friction = 0.1; ///< lubricated steel on steel (common practice)
};
/// A spline on half of the pitch radius, as thick as the shaft bearing is taken [own estimate].
Spline defaultSpline(const mechanism::Mechanism& mechanism);

/// What holds the exhaust track at its setting.
struct AdjusterLoads {
    Samples torque; ///< to be held when the adjuster turns the track [N·m], forward positive
    /// To be held when the adjuster pushes the track along the spline [N], outward positive; absent
    /// for a straight phase change (no helix).
    std::optional<Samples> axialForce;
    /// μ·|force normal to the helix| − |force along it| [N]; the spline holds itself where ≥ 0.
    Samples holdingMargin;
    bool holdsItself = false; ///< at every sample
};
AdjusterLoads adjusterLoads(const TrackForces& exhaust, double helixLead, const Spline& spline);

} // namespace lobewright::loads
