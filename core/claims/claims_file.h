#pragma once

#include "core/claims/claims.h"
#include "core/result.h"

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

/// The claims file, `*.claims.json`: JSON; every figure is a text with its unit, "120 hp"; counts
/// are numbers; everything but the format may be missing.
namespace lobewright::study {

inline constexpr int claimsFormatVersion = 1;
/// No claims file is larger [bytes].
inline constexpr std::uintmax_t largestClaims = std::uintmax_t{1} << 20;

/// Reads claims. Every problem is reported with its path, the value and the rule; unknown keys and
/// words name the nearest known one. Contradictory claims are not problems: see checkClaims().
Result<Claims> readClaims(std::string_view text);

/// As readClaims; a file that cannot be read is a problem too. Refuses files above 1 MiB.
Result<Claims> loadClaims(const std::filesystem::path& file);

/// JSON text with what was given, in the units in which it was given.
std::string writeClaims(const Claims& claims);

/// Writes atomically: a temporary file beside it, then rename. Returns the problem, if any.
std::optional<Problem> saveClaims(const Claims& claims, const std::filesystem::path& file);

} // namespace lobewright::study
