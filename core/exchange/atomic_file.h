#pragma once

#include "core/result.h"

#include <filesystem>
#include <functional>
#include <optional>
#include <string>
#include <string_view>

namespace lobewright::exchange {

/// Writes a whole file or nothing: into a temporary file beside it, then renamed over it.
/// Returns the problem (path: the file) where the folder cannot be written or the disk is full.
std::optional<Problem> writeAtomically(const std::filesystem::path& file, std::string_view content);

/// As above for libraries that insist on a file name of their own: `write` gets the temporary name,
/// with the ending of `file`, and returns a sentence when it failed.
std::optional<Problem> writeAtomically(
    const std::filesystem::path& file,
    const std::function<std::optional<std::string>(const std::filesystem::path&)>& write);

} // namespace lobewright::exchange
