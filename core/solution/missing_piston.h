#pragma once

#include "core/solution/solution.h"

#include <string_view>

namespace lobewright::solution {

/// Whether a figure of this written name would be of the piston that a one-sided engine does not
/// have: that of the piston at the inlet is there.
bool isOfMissingPiston(const Solution& solution, std::string_view name);

} // namespace lobewright::solution
