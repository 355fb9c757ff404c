#pragma once

#include "core/result.h"

#include <cstdint>
#include <filesystem>
#include <string>

namespace lobewright::files {

/// The bytes of a file, a device or a pipe from its beginning, at most `most`: ask for one more
/// than can be used, and there are too many. Errors (path ""): there is no such file, it is a
/// folder, it may not be read.
Result<std::string> readFile(const std::filesystem::path& file, std::uintmax_t most);

/// The name of a file as messages show it.
std::string shownName(const std::filesystem::path& file);

/// What the operating system says of an error, "No space left on device".
std::string reasonOf(int error);

} // namespace lobewright::files
