#pragma once

#include "core/study/load_map.h"

#include <string>

namespace CLI {
class App;
class Option;
} // namespace CLI

namespace lobewright::cli {

/// An option "A:B:N": N values from A to B, both included, 2 ≤ N.
CLI::Option* addSteps(CLI::App& command, const std::string& name, study::MapSteps& steps,
                      const std::string& help);

} // namespace lobewright::cli
