#pragma once

#include "core/result.h"

#include <vector>

namespace lobewright::exchange {

/// Pattern angles over one turn in equal steps [rad]: 0, step, 2·step, … below 2π.
/// Error: step not within 0.001° … 90° ("/step_deg").
Result<std::vector<double>> turnSteps(double step);

} // namespace lobewright::exchange
