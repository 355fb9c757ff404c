#pragma once

#include "core/track/track.h"

namespace lobewright::track {

/// Speed of the track surface past the roller axis at ρ, ω·D [m/s], shape (samples).
/// ω in rad/s; exact at the contact point, across the roller axis.
Samples surfaceSpeed(const motion::LiftSamples& lift, double rho, double omega);

/// Speed of the track surface relative to the roller's at the contact point [m/s]. The roller is
/// taken to roll without slip at R.
struct Slip {
    Samples rolling; ///< across the roller axis, v_t(ρ) − v_t(R)
    Samples axial;   ///< along it, outward from the shaft positive, ±ω·r·sin α(ρ)
    Samples magnitude() const { return (rolling.square() + axial.square()).sqrt(); }
};
Slip slip(const motion::LiftSamples& lift, double rho, double pitchRadius, double rollerRadius,
          double omega, Flank flank);

/// Entrainment speed of the oil film at ρ, mean of both surface speeds relative to the contact
/// [m/s]: ½·[v_t(ρ) + v_t(R)] ± ω·r·ρ·y''/D², + push, − pull flank. The last term is the contact
/// moving round the roller, r·dα/dt. Signed; the film depends on its magnitude.
Samples entrainmentSpeed(const motion::LiftSamples& lift, double rho, double pitchRadius,
                         double rollerRadius, double omega, Flank flank);

/// Spin of the roller about its own axis, ω·D(R)/r [rad/s], as a magnitude; it reverses when the
/// load changes flank.
Samples rollerSpin(const motion::LiftSamples& lift, double pitchRadius, double rollerRadius,
                   double omega);

} // namespace lobewright::track
