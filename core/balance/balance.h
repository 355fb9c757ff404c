#pragma once

#include "core/balance/remedy.h"
#include "core/balance/shaking.h"
#include "core/balance/speed_fluctuation.h"
#include "core/loads/loads.h"

#include <optional>

namespace lobewright::balance {

/// What the motion alone decides, at 1 rad/s: all of it grows with the square of the speed but for
/// the remedy.
struct UnitBalance {
    Shaking shaking;
    ShakingOrders orders;
    Remedy remedy;
    double pistonForce = 0.0;
};

/// Orders 0 … highestOrder; shape of the shaking (samples), that of theta.
UnitBalance unitBalance(const mechanism::OpposedPair& pair, const Samples& theta,
                        int highestOrder = 24);

/// The largest of what shakes at 1 rad/s, for studies that ask for no more.
struct UnitPeaks {
    double force = 0.0, moment = 0.0; ///< [N], [N·m]
    double pistonForce = 0.0;         ///< [N]
};
/// theta: shaft angles over at least one period of the track.
UnitPeaks unitPeaks(const mechanism::OpposedPair& pair, const Samples& theta);

/// Everything the stage depends on. References must outlive the call.
struct Inputs {
    const UnitBalance& unit;
    const Samples& evenTotalTorque; ///< loads::Loads::evenTotalTorque
    double omega = 0.0;             ///< ω [rad/s], > 0
    double inertia = 0.0;           ///< of the shaft with all that turns [kg·m²]; 0: not given
};

struct Balance {
    Shaking shaking;
    ShakingOrders orders;
    Remedy remedy;
    double pistonForce = 0.0; ///< largest |m·ÿ| of one piston [N], to compare with
    double highestForce = 0.0, highestMoment = 0.0; ///< largest magnitudes [N], [N·m]
    EnergyFluctuation energy;
    std::optional<double> fluctuation; ///< C_s; absent without an inertia
    std::optional<SpeedRange> speeds;
};

/// Shaking, rocking and speed fluctuation of the whole engine. Reaction about z = −total torque.
Balance solveBalance(const Inputs& inputs);
/// No more than its largest forces and moment, at ω [rad/s].
Balance peaksAt(const UnitPeaks& unit, double omega);

} // namespace lobewright::balance
