#pragma once

#include "core/samples.h"

namespace lobewright::balance {

/// Energy method: the load takes the mean torque, the rest speeds the shaft up and slows it down.
struct EnergyFluctuation {
    double meanTorque = 0.0; ///< [N·m]
    double energy = 0.0;     ///< ΔE, largest less smallest kinetic energy [J]
    double fastestAngle = 0.0, slowestAngle = 0.0; ///< θ [rad]
};
/// From even samples 2πj/M of the total torque over a turn, M ≥ 4. Cubic between samples.
EnergyFluctuation energyFluctuation(const Samples& evenTorque);

/// Coefficient of fluctuation C_s = (ω_max − ω_min)/ω = ΔE/(I·ω²); inertia > 0 [kg·m²].
double fluctuation(double energy, double inertia, double omega);
/// Inertia for a given C_s > 0 [kg·m²].
double inertiaFor(double energy, double fluctuation, double omega);

/// Speeds between which the shaft swings about ω [rad/s]: ω·(1 ± C_s/2).
struct SpeedRange {
    double lowest = 0.0, highest = 0.0;
};
SpeedRange speedRange(double energy, double inertia, double omega);

} // namespace lobewright::balance
