#pragma once

#include "core/gas/cycle/cycle.h"
#include "core/loads/settings.h"
#include "core/reference/crank_motion.h"
#include "core/samples.h"

#include <optional>
#include <vector>

/// Forces on pistons with massless rods on cranks, and the torque of an engine of them. Signs as on
/// a track: forces on a piston are positive inward, torques act on the shaft, positive driving.
namespace lobewright::study {

/// One piston of the engine and what it depends on.
struct CrankPiston {
    SliderCrank crank;
    double phase = 0.0; ///< τ − θ [rad]
    double mass = 0.0;  ///< piston [kg]
    double bore = 0.0;  ///< [m]
};

struct CrankPistonLoads {
    motion::LiftSamples lift;
    Samples inertiaForce;        ///< m·ÿ [N]
    Samples ringFriction;        ///< against the motion, signed like the velocity [N]
    Samples rodForce;            ///< along the rod, positive where it pushes the piston inward [N]
    Samples sideForce;           ///< rod force·sin β on the liner [N]
    Samples torque;              ///< [N·m]
    Samples ringLoss, guideLoss; ///< torque that friction takes [N·m], ≥ 0
};

/// Whether guide friction blocks the piston at the steepest rod: cos β ≤ μ·sin β, sin β = λ_c.
bool jams(const SliderCrank& crank, const loads::Friction& friction);

/// Forces on one piston at crank angles theta, pressures of the same shape (samples) [Pa].
/// F_rod·cos β − μ·|F_rod·sin β|·sgn ẏ = m·ÿ + (p − p_under)·A + F_ring·sgn ẏ;
/// T = −F_rod·cos β·y'. The piston must not jam. Without `friction` rings and guide are left out.
CrankPistonLoads crankPistonLoads(const CrankPiston& piston, const loads::Friction* friction,
                                  double omega, double underPistonPressure, const Samples& theta,
                                  const Samples& pressure);

/// Engine of equal cylinders on cranks.
struct CrankEngine {
    std::vector<CrankPiston> pistons;   ///< of cylinder 1
    std::vector<double> cylinderAngles; ///< ψ_k: cylinder k at θ is cylinder 1 at θ − ψ_k [rad]
    double period = 0.0;                ///< of the cycle [rad]
    const loads::Friction* friction = nullptr; ///< null: friction is counted elsewhere
    double omega = 0.0;                        ///< of the crank [rad/s], > 0
    double underPistonPressure = 0.0;          ///< [Pa]
    const gas::GasTrace* trace = nullptr; ///< null: the chamber stands at under-piston pressure
    std::vector<double> breaks;           ///< where the pressure is not smooth [rad]
    std::vector<double> firings; ///< inner dead centres of cylinder 1 that fire, in a period [rad]
};

struct CrankEngineLoads {
    Samples theta; ///< even samples over the period, shape (samples) [rad]
    Samples pressure, cylinderTorque, totalTorque; ///< [Pa], [N·m], friction of `friction` included
    std::vector<CrankPistonLoads> pistons;         ///< cylinder 1
    double meanTorque = 0.0;                ///< all cylinders, by quadrature between breaks [N·m]
    double gasTorque = 0.0;                 ///< ∮p dV of all cylinders by the period [N·m]
    double ringLoss = 0.0, guideLoss = 0.0; ///< mean, all cylinders [N·m]
    double inertiaTorque = 0.0;             ///< mean; exactly 0 on paper
    double highestTorque = 0.0, lowestTorque = 0.0;
    std::optional<double> ripple;
    double highestSideForce = 0.0, highestLeverArm = 0.0; ///< [N], [m]
    double highestAcceleration = 0.0, highestSpeed = 0.0; ///< of any piston [m/s²], [m/s]
    double shakingForce = 0.0; ///< largest axial force of all pistons together [N]
    double shortestInterval = 0.0, longestInterval = 0.0; ///< between firings [rad]
    int together = 1;                                     ///< cylinders that fire at once
};

/// Two opposed pistons push each other's inertia away from the engine: `opposed` counts the second
/// piston of a cylinder against the first.
CrankEngineLoads crankEngineLoads(const CrankEngine& engine, bool opposed);

} // namespace lobewright::study
