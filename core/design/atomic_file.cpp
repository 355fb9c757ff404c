#include "core/design/atomic_file.h"

#include <fmt/format.h>

#include <cerrno>
#include <fcntl.h>
#include <string>
#include <system_error>
#include <unistd.h>

namespace lobewright::design {

namespace {

namespace fs = std::filesystem;

/// The file itself where the path is a link, so that the link survives.
fs::path target(const fs::path& file) {
    std::error_code error;
    const fs::path resolved = fs::weakly_canonical(file, error);
    return error ? file : resolved;
}

/// Writes all bytes and flushes them; errno tells what went wrong.
bool writeAll(int descriptor, std::string_view bytes) {
    while (!bytes.empty()) {
        const ssize_t written = ::write(descriptor, bytes.data(), bytes.size());
        if (written < 0 && errno == EINTR) {
            continue;
        }
        if (written < 0) {
            return false;
        }
        bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    return ::fsync(descriptor) == 0;
}

} // namespace

std::optional<Problem> writeAtomically(const fs::path& file, std::string_view bytes) {
    const auto failed = [&](int reason) {
        return Problem{"", fmt::format("{} cannot be written: {}", file.string(),
                                       std::generic_category().message(reason))};
    };
    const fs::path real = target(file);
    const fs::path temporary =
        real.parent_path() /
        fmt::format(".{}.{}.part", real.filename().string(), static_cast<long>(::getpid()));
    std::error_code ignored;
    fs::remove(temporary, ignored); // left by a process of this number that died
    constexpr mode_t readableByUmask = 0666;
    const int descriptor =
        ::open(temporary.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, readableByUmask);
    if (descriptor < 0) {
        return failed(errno);
    }
    const bool isWritten = writeAll(descriptor, bytes);
    const int reason = errno;
    const bool isClosed = ::close(descriptor) == 0;
    if (!isWritten || !isClosed) {
        fs::remove(temporary, ignored);
        return failed(isWritten ? errno : reason);
    }
    const auto status = fs::status(real, ignored);
    if (fs::is_regular_file(status)) {
        fs::permissions(temporary, status.permissions(), ignored);
    }
    std::error_code error;
    fs::rename(temporary, real, error);
    if (error) {
        fs::remove(temporary, ignored);
        return failed(error.value());
    }
    return std::nullopt;
}

} // namespace lobewright::design
