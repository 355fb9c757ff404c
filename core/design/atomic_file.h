#pragma once

#include "core/result.h"

#include <filesystem>
#include <optional>
#include <string_view>

namespace lobewright::design {

/// Writes the bytes to a temporary file beside `file`, flushes it to disk and renames it, so that
/// nobody ever sees half a file. A link is followed and kept; the permissions of an existing file
/// are kept. Returns the problem, if any; `file` is then as it was.
std::optional<Problem> writeAtomically(const std::filesystem::path& file, std::string_view bytes);

} // namespace lobewright::design
