#pragma once

#include "core/motion/lift_curve.h"
#include "core/samples.h"

/// Roller on an axial track: what the contact looks like. Symbols and signs of this folder:
///
///   φ     pattern angle under the roller [rad]; grows while the shaft turns forward (ω > 0)
///   y     lift of the roller axis, positive inward, with derivatives y', y'', y''' per radian
///   ρ     position along the roller axis, a radial line of the shaft [m]; R at its middle
///   r     roller radius [m]
///   D     √(ρ² + y'²), length of pitch path per radian at ρ [m/rad]
///   α(ρ)  contact angle, tan α = y'/ρ, positive on a rise; at R it is the pressure angle.
///         It changes along the roller: the contact line is twisted.
///   κ     curvature of the developed pitch curve, positive where the crest of a lobe is convex
///   push  flank on the outer side of the roller, which pushes it inward; an open track has only
///         this one. pull: flank on the inner side, which a closed track has too.
///   behind, ahead: against and with the direction of rotation. below, above: outward, inward.
///
/// The roller touches the push flank r·sin α behind and r·cos α below its axis, the pull flank
/// r·sin α ahead and r·cos α above. A track angle φ lies at polar angle −φ (inlet) or
/// δ + Δ − φ (exhaust) about the shaft axis z, which points from the inlet to the exhaust end;
/// lift counts along +z at the inlet end and along −z at the exhaust end. Equal patterns therefore
/// make mirror-image parts.
///
/// Formulas hold without approximation for a cylindrical roller on the surface that it envelops
/// (envelope condition of a one-parameter family of cylinders; derived here, checked by brute
/// force in the tests). Preconditions of all functions: ρ > 0, r > 0, equally long arrays, finite
/// values; they are asserted. `checkRoller` turns bad input into problems beforehand.
namespace lobewright::track {

enum class Flank { push, pull };

inline constexpr double sign(Flank flank) {
    return flank == Flank::push ? 1.0 : -1.0;
}

/// Contact angle at ρ, signed [rad]; at ρ = R the pressure angle. Shape (samples).
Samples contactAngle(const motion::LiftSamples& lift, double rho);
double contactAngle(const motion::Lift& lift, double rho);

/// Curvature of the developed pitch curve at ρ, −ρ·y''/D³, convex positive [1/m].
Samples pitchCurvature(const motion::LiftSamples& lift, double rho);
double pitchCurvature(const motion::Lift& lift, double rho);

/// Relative radius of curvature of roller and track at ρ, normal to the contact line [m]:
/// r·(D² − r²·sin²α ± r·y''·cos α)/(D² + r²·sin²α), + push, − pull flank.
/// Zero or negative: the track is undercut there.
Samples relativeRadius(const motion::LiftSamples& lift, double rho, double rollerRadius,
                       Flank flank);
double relativeRadius(const motion::Lift& lift, double rho, double rollerRadius, Flank flank);

/// The planar approximation r·(1 ∓ r·κ), − push, + pull, which the former tends to for r ≪ ρ.
/// It misses the twist of the contact line [Cam Design Handbook, §6.4.2].
Samples planarRelativeRadius(const motion::LiftSamples& lift, double rho, double rollerRadius,
                             Flank flank);

/// Area of track surface per angle and width, D·(1 ± r·ρ·y''/D³ − r²·y'²/D⁴), + push, − pull [m].
/// Zero at a cusp, negative where the surface is undercut.
Samples areaFactor(const motion::LiftSamples& lift, double rho, double rollerRadius, Flank flank);

/// Largest roller radius that does not undercut the track at this place [m]:
/// 2·D³/(√(ρ²·y''² + 4·y'²·D²) ∓ ρ·y''), − push, + pull; infinite where there is none.
double rollerRadiusLimit(const motion::Lift& lift, double rho, Flank flank);

} // namespace lobewright::track
