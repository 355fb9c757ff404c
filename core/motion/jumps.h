#pragma once

#include "core/motion/lift_curve.h"

#include <vector>

namespace lobewright::motion {

/// A jump of y', y'' or y''' at a junction.
struct Jump {
    double angle = 0.0;               ///< [rad] in [0, period)
    double before = 0.0, after = 0.0; ///< values on both sides [m/radⁿ]
    int segment = 0;                  ///< as in Junction
    bool insideLaw = false;           ///< as in Junction
    double change() const { return after - before; }
};

/// The jumps of the n-th derivative, n = 1 … 3, ascending by angle. Less than 1e-9 of one stroke
/// over one period, taken n times, is rounding and left out.
std::vector<Jump> jumps(const LiftCurve& curve, int derivative);

} // namespace lobewright::motion
