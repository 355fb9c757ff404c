#pragma once

#include "core/solution/solution.h"

#include <string>

namespace lobewright::cli {

/// Progress is shown. Ends the command where the design cannot be used.
solution::Solution solvedDesign(const std::string& file, const design::Design& design);

/// The sentence of the check that says why the gas cycle has no solution; empty when it has one.
std::string whyNotSolved(const solution::Solution& solution);

} // namespace lobewright::cli
