#pragma once

#include "core/samples.h"

#include <Eigen/Core>

namespace lobewright::loads {

/// Complex amplitudes of shaft orders 0 … highest: c_q = 2/M·Σ f_j·e^(−iqθ_j) (c_0 = mean), from M
/// samples at θ_j = 2πj/M over one turn. f(θ) = Σ Re(c_q·e^(iqθ)). highest < M/2. Where f repeats
/// itself several times a turn, the M/repeats samples of the first repetition are enough.
Eigen::ArrayXcd orders(const Samples& evenSamples, int highest, int repeats = 1);

/// M angles 2πj/M [rad].
Samples evenAngles(int count);

} // namespace lobewright::loads
