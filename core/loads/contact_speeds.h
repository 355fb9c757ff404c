#pragma once

#include "core/gas/cycle/cycle.h"
#include "core/loads/piston.h"

#include <optional>

namespace lobewright::loads {

/// A speed at which the contact force reaches zero, and where it does.
struct SpeedBound {
    double omega = 0.0; ///< ω [rad/s]
    double theta = 0.0; ///< shaft angle of cylinder 1 [rad]
    AxialShares shares; ///< there, at the running speed
};

/// Speeds between which a piston keeps to an open track, its pressure trace and ring friction held.
struct ContactSpeeds {
    /// Where the piston accelerates inward and gas and rings pull it off its track, only inertia
    /// presses it on. ω = 0: any speed presses enough. Absent: no speed keeps contact, because gas
    /// and rings also pull where inertia does not press.
    std::optional<SpeedBound> low;
    /// Where the piston decelerates, only gas and rings press it on. ω = 0: they do not. Absent:
    /// nothing decelerates the piston.
    std::optional<SpeedBound> high;

    bool include(double omega) const {
        return low && low->omega <= omega && (!high || omega <= high->omega);
    }
};

/// Contact needs m·ω²·y'' + (p − p_under)·A + F_ring·sgn ẏ ≥ 0 at every angle:
/// y'' < 0 bounds ω² from above, y'' > 0 from below. Starts from samples at theta (motion and
/// pressure of the same shape, period of the pattern) and refines between them with the trace
/// (null: constant under-piston pressure).
ContactSpeeds contactSpeeds(const mechanism::OpposedPair& pair, End end, const PistonSetup& setup,
                            const Samples& theta, const PistonMotion& motion,
                            const Samples& pressure, const gas::GasTrace* trace);

} // namespace lobewright::loads
