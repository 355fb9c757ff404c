#pragma once

#include "core/files/descriptor.h"
#include "core/result.h"

#include <filesystem>
#include <optional>
#include <span>
#include <string>
#include <sys/stat.h>

namespace lobewright::files {

/// Where bytes go that are written to a path: a regular file in its folder, to be replaced or made,
/// or something that is there to be written to, a pipe or a device.
struct OutputPlace {
    std::filesystem::path asked; ///< as the user named it
    Descriptor folder;           ///< of the file that all links lead to; none: write to `asked`
    std::string name;            ///< of that file in the folder
    std::optional<struct stat> before; ///< the file that is there now

    bool isReplaced() const { return static_cast<bool>(folder); }
};

/// Follows links, also to what is not there yet. Errors (path ""): a folder stands there, the
/// folder is missing or nothing can be made in it, the file is write-protected, it is one of
/// `inputs`, which the same command has read. Nothing is changed.
Result<OutputPlace> outputPlace(const std::filesystem::path& file,
                                std::span<const std::filesystem::path> inputs);

} // namespace lobewright::files
