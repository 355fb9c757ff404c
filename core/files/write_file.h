#pragma once

#include "core/result.h"

#include <filesystem>
#include <optional>
#include <span>
#include <string>
#include <string_view>

namespace lobewright::files {

/// One file that is to be written.
struct Output {
    std::filesystem::path file;
    std::string_view bytes;
};

/// Writes a file the way every file of the program is written.
///
/// A regular file, or what is not there yet, is replaced in one step: nobody ever sees half of it,
/// and after a failure, a kill or a power cut it holds what it held before or all that is new.
/// Links are followed and stay; mode, group and, where allowed, owner stay. Pipes and devices are
/// written to. Refused are folders, files that are write-protected and files of `inputs`, which the
/// same command has read. Leftovers in the folder of writes that were killed are removed. Returns
/// the problem (path ""), if any.
std::optional<Problem> writeFile(const std::filesystem::path& file, std::string_view bytes,
                                 std::span<const std::filesystem::path> inputs = {});

/// Writes files that belong together, all of them or none: after a failure all hold what they held
/// before. The last one says that the set is whole: after a kill at the wrong moment it is missing,
/// never beside another's files. The others hold their old or their new bytes even then.
std::optional<Problem> writeFiles(std::span<const Output> outputs,
                                  std::span<const std::filesystem::path> inputs = {});

/// What writeFile() would refuse, asked before the work of an hour. Changes nothing.
std::optional<Problem> checkOutput(const std::filesystem::path& file,
                                   std::span<const std::filesystem::path> inputs = {});

/// Whether a folder is there or can be made, asked before the work of an hour. Changes nothing.
std::optional<Problem> checkFolder(const std::filesystem::path& folder);

/// Makes a folder and those above it where they are missing. Returns the problem (path ""), if any.
std::optional<Problem> makeFolder(const std::filesystem::path& folder);

} // namespace lobewright::files
