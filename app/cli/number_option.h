#pragma once

#include "core/study/load_map.h"

#include <optional>
#include <string>
#include <vector>

namespace CLI {
class App;
class Option;
} // namespace CLI

/// Options whose value is a number as files have it: digits and a decimal point, "1650", "-2.5",
/// "1e3". Not a number here: "1,650", "0x10", "inf", "nan", "12 bar".
namespace lobewright::cli {

CLI::Option* addNumber(CLI::App& command, const std::string& name, double& value,
                       const std::string& help);
CLI::Option* addNumber(CLI::App& command, const std::string& name, std::optional<double>& value,
                       const std::string& help);
/// Whole numbers within two bounds.
CLI::Option* addNumber(CLI::App& command, const std::string& name, int& value, int least, int most,
                       const std::string& help);
CLI::Option* addNumber(CLI::App& command, const std::string& name, std::optional<int>& value,
                       int least, int most, const std::string& help);
/// Several, separated by commas.
CLI::Option* addNumbers(CLI::App& command, const std::string& name, std::vector<double>& values,
                        const std::string& help);

/// "A:B:N": N values from A to B, both included, 2 ≤ N.
CLI::Option* addSteps(CLI::App& command, const std::string& name, study::MapSteps& steps,
                      const std::string& help);
/// --vary POINTER --from --to: an input of the design between two values.
void addVaried(CLI::App& command, std::string& input, double& from, double& to,
               const std::string& example);

} // namespace lobewright::cli
