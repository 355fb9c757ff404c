#pragma once

#include "core/motion/lift_curve.h"
#include "core/motion/motion_law.h"

#include <vector>

namespace lobewright::motion {

/// One rise or return between a trough and a crest, however the pattern describes it, judged by
/// what handbooks tabulate for a motion law.
struct Stroke {
    bool rises = true;
    double begin = 0.0; ///< track angle in [0, period) [rad]
    double span = 0.0;  ///< β [rad]; dwells at its ends do not count
    double lift = 0.0;  ///< h > 0 [m]
    // Largest magnitudes, both limits at junctions, of a jump at the ends the limit inside.
    double velocity = 0.0;     ///< |y'| [m/rad]
    double acceleration = 0.0; ///< |y''| [m/rad²]
    double jerk = 0.0;         ///< |y'''| between jumps [m/rad³]
    double torque = 0.0;       ///< |y'·y''| [m²/rad³]
    /// C_v = |y'|·β/h and so on; jerk infinite where the acceleration jumps, ends included.
    CharacteristicFactors factors;
};

/// One entry for each rise and return of the curve's turning points, ascending by `begin`. Peaks to
/// about 1e-12 of their value.
std::vector<Stroke> strokes(const LiftCurve& curve);

} // namespace lobewright::motion
