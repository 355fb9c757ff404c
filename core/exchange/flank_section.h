#pragma once

#include "core/exchange/jet.h"
#include "core/track/surface.h"

#include <Eigen/Core>

/// Where a flank meets the cylinders about the shaft. The face of a track reaches from one cylinder
/// to another, while the contact at ρ lies on no cylinder: its distance from the shaft axis is
/// s = √(ρ² + r²·sin²α(ρ)). Solved for ρ² this is a quadratic, so the exact surface has a closed
/// form over (φ, s) too.
namespace lobewright::exchange {

/// What makes one flank.
struct FlankForm {
    motion::LiftCurve curve;
    double rollerRadius = 0.0; ///< [m]
    track::Flank flank = track::Flank::push;
    track::Placement placement;
};

/// The limit to take at a junction of the lift curve.
enum class Limit { after, before };

/// A place of the flank in cylinder coordinates, with derivatives along φ on its cylinder.
struct Section {
    Jet angle;  ///< polar angle [rad]
    Jet height; ///< lift coordinate, inward positive, 0 at the roller axis of lift 0 [m]
    Jet rho;    ///< position along the roller of the contact that makes it [m]
};

/// The flank at pattern angle φ on the cylinder of radius s [m].
/// Precondition: s ≥ smallestSection of the largest |y'|.
Section section(const FlankForm& form, double phi, double radius, Limit limit = Limit::after);

/// The same in the coordinates of the shaft [m], with derivatives per radian of φ.
struct SpacePoint {
    Eigen::Vector3d value, first, second;
};
SpacePoint spacePoint(const FlankForm& form, double phi, double radius, Limit limit = Limit::after);

/// Unit normal of the flank there; it points out of the track, to the axis of the roller.
Eigen::Vector3d normal(const FlankForm& form, double phi, double radius);

/// Distance from the shaft axis of the contact at ρ [m].
double contactDistance(double slope, double rho, double rollerRadius);

/// The inverse: position ρ along the roller of the contact that lies on the cylinder of radius s
/// [m]. Precondition: s ≥ smallestSection of this slope.
double contactPosition(double slope, double radius, double rollerRadius);

/// Radius of the smallest cylinder that the contact lines of slopes up to |y'| all cross [m].
double smallestSection(double steepestSlope, double rollerRadius);

} // namespace lobewright::exchange
