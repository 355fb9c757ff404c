#include "core/files/read_file.h"

#include "core/files/descriptor.h"
#include "core/printable.h"

#include <fmt/format.h>

#include <algorithm>
#include <cerrno>
#include <fcntl.h>
#include <sys/stat.h>
#include <system_error>

LW_TEXTS_OF(Core)

namespace lobewright::files {

std::string shownName(const std::filesystem::path& file) {
    return printable(file.native());
}

std::string reasonOf(int error) {
    return std::generic_category().message(error);
}

Result<std::string> readFile(const std::filesystem::path& file, std::uintmax_t most) {
    const std::string name = shownName(file);
    const auto failed = [&](int reason) {
        return reason == ENOENT
                   ? Problem{"", Message(LW_TEXT("there is no file %1"), name)}
                   : Problem{"", Message(LW_TEXT("%1 cannot be read: %2"), name, reasonOf(reason))};
    };
    const Descriptor opened(::open(file.c_str(), O_RDONLY | O_CLOEXEC | O_NOCTTY));
    struct stat status {};
    if (!opened || ::fstat(opened.number(), &status) != 0) {
        return failed(errno);
    }
    if (S_ISDIR(status.st_mode)) {
        return Problem{"", Message(LW_TEXT("%1 is a folder, not a file to read"), name)};
    }
    // A pipe or a device has no size to ask for, and a file may grow meanwhile.
    std::string bytes;
    constexpr std::uintmax_t block = std::uintmax_t{1} << 16U;
    while (bytes.size() < most) {
        const std::size_t before = bytes.size();
        const auto wanted = static_cast<std::size_t>(std::min(block, most - before));
        bytes.resize(before + wanted);
        const ssize_t count = ::read(opened.number(), bytes.data() + before, wanted);
        const int reason = errno;
        bytes.resize(before + static_cast<std::size_t>(std::max<ssize_t>(count, 0)));
        if (count == 0) {
            break;
        }
        if (count < 0 && reason != EINTR) {
            return failed(reason);
        }
    }
    return bytes;
}

} // namespace lobewright::files
