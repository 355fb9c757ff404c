#pragma once

#include "core/gas/cycle.h"
#include "core/loads/piston.h"

#include <optional>

namespace lobewright::loads {

/// Lowest speed at which a piston leaves an open track.
struct LiftOff {
    /// ω [rad/s]; 0: the piston is not pressed on the track even at rest; absent: nothing ever
    /// decelerates the piston, so it cannot lift off.
    std::optional<double> omega;
    double theta = 0.0; ///< where [rad]
};

/// Lift-off speed of one end with its pressure trace and ring friction held:
/// ω² = min over y'' < 0 of −[(p − p_under)·A + F_ring·sgn ẏ]/(m·y''). Starts from samples at theta
/// (lift and pressure of the same shape) and refines between them with the trace (null: constant
/// under-piston pressure).
LiftOff liftOff(const mechanism::OpposedPair& pair, End end, const PistonSetup& setup,
                const Samples& theta, const motion::LiftSamples& lift, const Samples& pressure,
                const gas::GasTrace* trace);

} // namespace lobewright::loads
