#pragma once

#include "core/result.h"

#include <vector>

namespace lobewright::exchange {

/// Pattern angles over one turn in equal steps [rad]: 0, step, 2·step, … below 2π.
/// Error: step not within 0.001° … 90° ("/step_deg").
Result<std::vector<double>> turnSteps(double step);
/// The same, closed by 2π: for tables from which a control or an interpolation must come round.
Result<std::vector<double>> closedTurn(double step);

} // namespace lobewright::exchange
