#pragma once

#include "core/solution/solution.h"

#include <string>
#include <variant>

namespace lobewright::cli {

/// The solution, or the exit status after the reasons have gone to stderr. Progress is shown.
std::variant<solution::Solution, int> solveOrReport(const std::string& file,
                                                    const design::Design& design);

/// The sentence of the check that says why the gas cycle has no solution; empty when it has one.
std::string whyNotSolved(const solution::Solution& solution);

} // namespace lobewright::cli
