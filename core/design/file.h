#pragma once

#include "core/design/design.h"
#include "core/result.h"

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

/// The design file, `*.lobewright.json`.
namespace lobewright::design {

inline constexpr int formatVersion = 1;
/// No design file is larger [bytes].
inline constexpr std::uintmax_t largestDesign = std::uintmax_t{16} << 20;

/// Reads and validates a design. Every problem is reported, each with its path; unknown keys name
/// the nearest known key. Includes validate().
Result<Design> readDesign(std::string_view text);

/// As readDesign; a file that cannot be read is a problem too. Refuses files above 16 MiB.
Result<Design> loadDesign(const std::filesystem::path& file);

/// JSON text with every default written out; numbers in the shortest form that reads back the same.
std::string writeDesign(const Design& design);

/// Writes atomically: a temporary file beside it, then rename. Returns the problem, if any.
std::optional<Problem> saveDesign(const Design& design, const std::filesystem::path& file);

/// Every rule that goes beyond a single value (spans, ports against stroke, collision over the
/// adjuster's setting, equal periods, …); empty when the design can be solved.
/// Snapshots must keep the same rules; their paths begin with "/snapshots/<index>".
Problems validate(const Design& design);

/// The same without the snapshots: all that solving asks for.
Problems validateEngine(const Design& design);

} // namespace lobewright::design
