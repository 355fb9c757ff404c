#pragma once

#include "core/result.h"
#include "core/solution/solution.h"

#include <filesystem>
#include <optional>
#include <span>
#include <string>

namespace lobewright::exchange {

/// "error", as files and the batch program call it.
std::string_view word(solution::Severity severity);

/// The channels over a turn as RFC 4180 text: first line the names, one row a sample angle, lines
/// end in CR LF, nine significant digits, an empty field where there is no value.
std::string channelsCsv(const solution::Solution& solution);

/// The figures as JSON: one object a group, then `cycles` (one entry a gas cycle of a period) and
/// `checks`; null where a figure is not available.
std::string summaryJson(const solution::Solution& solution);

/// What writeSolution() would refuse, asked before solving. Changes nothing.
std::optional<Problem> checkSolutionFolder(const std::filesystem::path& folder,
                                           std::span<const std::filesystem::path> inputs = {});

/// Both files into a folder, made if missing: `summary.json` and `channels.csv`, both or none. They
/// replace none of `inputs`. Returns the problem (path ""), if any.
std::optional<Problem> writeSolution(const solution::Solution& solution,
                                     const std::filesystem::path& folder,
                                     std::span<const std::filesystem::path> inputs = {});

} // namespace lobewright::exchange
