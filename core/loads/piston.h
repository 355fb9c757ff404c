#pragma once

#include "core/ends.h"
#include "core/loads/settings.h"
#include "core/mechanism/opposed_pair.h"
#include "core/samples.h"
#include "core/track/roller.h"

#include <array>

/// Forces on one piston with its roller.
///
/// Signs: forces on the piston are positive inward (in the direction of lift y); α is positive on a
/// rise; the contact force N is positive where the track pushes the piston inward and negative
/// where the pull flank of a closed track holds it back. Torques act on the shaft, positive
/// driving.
namespace lobewright::loads {

/// What the forces on one piston depend on besides motion and pressure.
struct PistonSetup {
    double omega = 0.0;               ///< ω [rad/s]
    double mass = 0.0;                ///< piston with roller [kg]
    double bore = 0.0;                ///< [m]
    double stroke = 0.0;              ///< [m]
    double pitchRadius = 0.0;         ///< R [m]
    double underPistonPressure = 0.0; ///< [Pa]
    bool closedTrack = false;
    track::Roller roller;
    Friction friction;
};

/// The setup of one end of an engine.
PistonSetup pistonSetup(const mechanism::OpposedPair& pair, End end, const Friction& friction,
                        double omega, double underPistonPressure);

/// What of a piston's forces its motion alone decides, all of shape (samples): it can be kept while
/// speed and pressures change.
struct PistonMotion {
    motion::LiftSamples lift; ///< by track angle
    Samples path;             ///< √(R² + y'²): of the roller along the track [m/rad]
    Samples cosine, sine;     ///< of the pressure angle at the pitch radius
    Samples direction;        ///< motionSign()
    Samples slipArm;          ///< meanSlipArm() [m]
};
PistonMotion pistonMotion(const track::Roller& roller, double pitchRadius, double stroke,
                          const motion::LiftSamples& lift);

/// Forces on one piston and torques on the shaft, all of shape (samples).
struct PistonLoads {
    motion::LiftSamples lift; ///< by track angle
    Samples pressureAngle;    ///< α at the pitch radius [rad]; may be empty: not asked for
    Samples inertiaForce;     ///< m·ÿ [N]
    Samples gasForce;         ///< (p − p_under)·A, outward positive [N]
    Samples ringFriction;     ///< F_ring·sgn ẏ, against the motion [N]
    Samples guideFriction;    ///< μ_e·|N|·|sin α|·sgn ẏ, against the motion [N]
    Samples axialDemand;   ///< m·ÿ + (p − p_under)·A + F_ring·sgn ẏ, asked of the track [N]
    Samples guideBracket;  ///< cos α − μ_e·|sin α|·sgn N·sgn ẏ; ≤ 0: the piston jams
    Samples demandedForce; ///< N that a closed track would carry [N]; 0 where it jams
    Samples contactForce;  ///< N [N]; on an open track 0 where the demand is negative
    Samples trackThrust;   ///< N·cos α, axial part of the contact force [N]
    Samples sideForce;     ///< N·sin α on the guide, in the direction of rotation [N]
    Samples torque;        ///< of the piston on the shaft, less the losses of its roller [N·m]
    Samples ringLoss;      ///< torque that the rings take [N·m], ≥ 0
    Samples guideLoss;     ///< torque that the guide takes [N·m], ≥ 0
    Samples rollingLoss;   ///< rolling resistance on the track [N·m], ≥ 0
    Samples rollerBearingLoss; ///< bearing inside the roller [N·m], ≥ 0
    Samples slipLoss;          ///< sliding across the width of the roller [N·m], ≥ 0
};

/// Every array of them but the lift.
inline constexpr std::array<Samples PistonLoads::*, 17> pistonParts = {
    &PistonLoads::pressureAngle,     &PistonLoads::inertiaForce,  &PistonLoads::gasForce,
    &PistonLoads::ringFriction,      &PistonLoads::guideFriction, &PistonLoads::axialDemand,
    &PistonLoads::guideBracket,      &PistonLoads::demandedForce, &PistonLoads::contactForce,
    &PistonLoads::trackThrust,       &PistonLoads::sideForce,     &PistonLoads::torque,
    &PistonLoads::ringLoss,          &PistonLoads::guideLoss,     &PistonLoads::rollingLoss,
    &PistonLoads::rollerBearingLoss, &PistonLoads::slipLoss};

/// The same quantities with every array passed through `change`, e.g. to reorder samples.
template <class Change>
PistonLoads transformed(const PistonLoads& piston, Change&& change) {
    PistonLoads result;
    result.lift = {change(piston.lift.y), change(piston.lift.y1), change(piston.lift.y2),
                   change(piston.lift.y3)};
    for (const auto part : pistonParts) {
        if ((piston.*part).size() > 0) {
            result.*part = change(piston.*part);
        }
    }
    return result;
}

/// Forces on one piston. Lift and pressure of equal shape (samples); pressure [Pa].
/// N = [m·ÿ + (p − p_under)·A + F_ring·sgn ẏ]/bracket, T = −N·R·sin α − roller losses.
PistonLoads pistonLoads(const PistonSetup& setup, const motion::LiftSamples& lift,
                        const Samples& pressure);

/// The same from a motion that is known; without `pressureAngle`, which is left empty.
PistonLoads pistonLoads(const PistonSetup& setup, const PistonMotion& motion,
                        const Samples& pressure);
/// α at the pitch radius [rad], from slopes of the lift [m/rad], shape (samples).
Samples pressureAngle(const Samples& y1, double pitchRadius);

/// Of what stands still in the place of a piston: no force, no torque. shape (samples)
PistonLoads standingLoads(Eigen::Index samples);

/// What the track is asked for at one angle [N], outward load positive.
struct AxialShares {
    double inertia = 0.0; ///< m·ÿ
    double gas = 0.0;     ///< (p − p_under)·A
    double ring = 0.0;    ///< F_ring·sgn ẏ
    double total() const { return inertia + gas + ring; }
};
AxialShares axialShares(const PistonSetup& setup, const motion::Lift& lift, double pressure);

/// axialDemand at one angle [N].
double axialDemand(const PistonSetup& setup, const motion::Lift& lift, double pressure);

/// Friction of the ring pack [N], ≥ 0, at piston speeds ẏ [m/s] and gauge pressures p − p_under
/// [Pa], both of shape (samples). Mixed lubrication by a duty number: form of Stanley et al., SAE
/// 1999-01-0974 (from memory).
double ringFriction(const Friction& friction, double bore, double speed, double gaugePressure);
Samples ringFriction(const Friction& friction, double bore, const Samples& speed,
                     const Samples& gaugePressure);

/// Mean slip speed across the loaded width of a roller that rolls without slip at R, divided by ω
/// [m]: (1/L)·∫√[(v_t(ρ) − v_t(R))² + (ω·r·sin α)²] dρ/ω. `y1` shape (samples) [m/rad]. Gauss
/// quadrature on both halves of the width, good to 1e-3.
Samples meanSlipArm(const track::Roller& roller, double pitchRadius, const Samples& y1);

/// μ_e = μ·(1 + 2·overhang/guide length) of the guide.
double effectiveGuideFriction(const Friction& friction, double rollerRadius, double bore);

/// −1, 0 or 1: direction of motion, from slope and curvature of the lift of equal shape (samples)
/// [m/rad, m/rad²]; 0 in dwells and within a micrometre of them or of a dead centre.
Samples motionSign(const Samples& y1, const Samples& y2, double stroke);

} // namespace lobewright::loads
