#include "core/exchange/atomic_file.h"

#include <fmt/format.h>

#include <fstream>
#include <random>
#include <system_error>

namespace lobewright::exchange {

namespace {

/// Unique beside the target, so that the rename stays on one file system and two writers never
/// meet.
std::filesystem::path temporaryBeside(const std::filesystem::path& file) {
    std::random_device random;
    auto name =
        fmt::format(".{}-{:08x}{}", file.stem().string(), random(), file.extension().string());
    return file.parent_path() / name;
}

Problem cannotWrite(const std::filesystem::path& file, const std::string& why) {
    return {file.string(), fmt::format("cannot be written: {}", why)};
}

} // namespace

std::optional<Problem> writeAtomically(
    const std::filesystem::path& file,
    const std::function<std::optional<std::string>(const std::filesystem::path&)>& write) {
    const auto temporary = temporaryBeside(file);
    std::error_code error;
    if (auto failure = write(temporary)) {
        std::filesystem::remove(temporary, error);
        return cannotWrite(file, *failure);
    }
    std::filesystem::rename(temporary, file, error);
    if (error) {
        const auto why = error.message();
        std::filesystem::remove(temporary, error);
        return cannotWrite(file, why);
    }
    return std::nullopt;
}

std::optional<Problem> writeAtomically(const std::filesystem::path& file,
                                       std::string_view content) {
    return writeAtomically(
        file, [&](const std::filesystem::path& temporary) -> std::optional<std::string> {
            std::ofstream out(temporary, std::ios::binary);
            out.write(content.data(), static_cast<std::streamsize>(content.size()));
            out.close();
            if (!out) {
                return std::error_code(errno, std::generic_category()).message();
            }
            return std::nullopt;
        });
}

} // namespace lobewright::exchange
