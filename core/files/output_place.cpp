#include "core/files/output_place.h"

#include "core/files/read_file.h"

#include <fmt/format.h>

#include <cerrno>
#include <fcntl.h>
#include <system_error>

LW_TEXTS_OF(Core)

namespace lobewright::files {

namespace {

namespace fs = std::filesystem;

Problem refused(const fs::path& file, int reason) {
    return {"", Message(LW_TEXT("%1 cannot be written: %2"), shownName(file), reasonOf(reason))};
}

std::optional<struct stat> statusOf(const fs::path& file) {
    struct stat status {};
    return ::stat(file.c_str(), &status) == 0 ? std::optional(status) : std::nullopt;
}

/// The files of /proc/self/fd are open already, whatever their links say.
bool isOpenAlready(const fs::path& link) {
    std::error_code error;
    const fs::path folder = fs::canonical(link.has_parent_path() ? link.parent_path() : ".", error);
    return !error && folder.native().starts_with("/proc/");
}

struct End {
    fs::path file;
    int error = 0;
    bool isOpen = false;
};

/// The path at the end of all links, which need not exist.
End followed(fs::path file) {
    constexpr int mostLinks = 40; // as the system follows
    for (int i = 0; i < mostLinks; ++i) {
        std::error_code error;
        const fs::path next = fs::read_symlink(file, error);
        if (error) {
            return {file}; // no link, or nothing there
        }
        if (isOpenAlready(file)) {
            return {file, 0, true};
        }
        file = next.is_absolute() ? next : file.parent_path() / next;
    }
    return {file, ELOOP};
}

std::optional<Problem> isInput(const fs::path& file, const struct stat& status,
                               std::span<const fs::path> inputs) {
    for (const fs::path& input : inputs) {
        const auto other = statusOf(input);
        if (other && other->st_dev == status.st_dev && other->st_ino == status.st_ino) {
            return Problem{
                "", Message(LW_TEXT("%1 is what this command reads; name another file to write"),
                            shownName(file))};
        }
    }
    return std::nullopt;
}

/// Root may write what nobody may; a file without any right to write says that it is meant to stay.
bool isWriteProtected(const OutputPlace& place) {
    constexpr mode_t anybodyWrites = S_IWUSR | S_IWGRP | S_IWOTH;
    return (place.before->st_mode & anybodyWrites) == 0 ||
           ::faccessat(place.folder.number(), place.name.c_str(), W_OK, AT_EACCESS) != 0;
}

} // namespace

Result<OutputPlace> outputPlace(const fs::path& file, std::span<const fs::path> inputs) {
    OutputPlace place;
    place.asked = file;
    const auto status = statusOf(file);
    if (status && S_ISDIR(status->st_mode)) {
        return refused(file, EISDIR);
    }
    const End end = followed(file);
    if (end.isOpen || (status && !S_ISREG(status->st_mode))) {
        return place;
    }
    if (end.error != 0) {
        return refused(file, end.error);
    }
    place.name = end.file.filename().native();
    if (place.name.empty() || place.name == "." || place.name == "..") {
        return refused(file, file.empty() ? ENOENT : EISDIR);
    }
    const fs::path folder = end.file.has_parent_path() ? end.file.parent_path() : fs::path(".");
    place.folder = Descriptor(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (!place.folder && errno == EACCES) { // it may be entered and written, but not listed
        place.folder = Descriptor(::open(folder.c_str(), O_PATH | O_DIRECTORY | O_CLOEXEC));
    }
    if (!place.folder || ::faccessat(place.folder.number(), ".", W_OK | X_OK, AT_EACCESS) != 0) {
        const int reason = errno;
        return Problem{
            "", Message(LW_TEXT("%1 cannot be written: no file can be made in its folder: %2"),
                        shownName(file), reasonOf(reason))};
    }
    if (status) {
        place.before = status;
        if (auto problem = isInput(file, *status, inputs)) {
            return *problem;
        }
        if (isWriteProtected(place)) {
            return Problem{"", Message(LW_TEXT("%1 cannot be written: it is write-protected"),
                                       shownName(file))};
        }
    }
    return place;
}

} // namespace lobewright::files
