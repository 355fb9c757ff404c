#include "core/files/write_file.h"

#include "core/files/output_place.h"
#include "core/files/read_file.h"

#include <fmt/format.h>

#include <cerrno>
#include <csignal>
#include <ctime>
#include <dirent.h>
#include <fcntl.h>
#include <memory>
#include <random>
#include <sys/file.h>
#include <vector>

LW_TEXTS_OF(Core)

namespace lobewright::files {

namespace {

namespace fs = std::filesystem;

Problem failed(const fs::path& file, int reason) {
    return {"", Message(LW_TEXT("%1 cannot be written: %2"), shownName(file), reasonOf(reason))};
}

bool writeAll(const Descriptor& file, std::string_view bytes) {
    while (!bytes.empty()) {
        const ssize_t written = ::write(file.number(), bytes.data(), bytes.size());
        if (written < 0 && errno == EINTR) {
            continue;
        }
        if (written < 0) {
            return false;
        }
        bytes.remove_prefix(static_cast<std::size_t>(written));
    }
    return true;
}

/// Asks for the bytes to be on the disk; true too where a file system knows no such thing.
bool flush(const Descriptor& file) {
    return ::fsync(file.number()) == 0 || errno == EINVAL || errno == ENOSYS || errno == EROFS;
}

/// Files on their way have short names of their own, so that the longest name of a user has room.
constexpr std::string_view beginOfTemporary = ".lobewright-", endOfTemporary = ".part";

/// Numbers of processes repeat between containers that share a folder; these do not.
std::string temporaryName() {
    std::random_device random;
    return fmt::format("{}{:08x}{:08x}{}", beginOfTemporary, random(), random(), endOfTemporary);
}

bool isTemporary(std::string_view name) {
    return name.starts_with(beginOfTemporary) && name.ends_with(endOfTemporary);
}

/// A file on its way, under a name of its own beside the place that it is meant for. It is locked
/// as long as its program lives, which tells others that it is no leftover.
class Temporary {
  public:
    explicit Temporary(const OutputPlace& place) : place_(place) {}
    Temporary(const Temporary&) = delete;
    Temporary& operator=(const Temporary&) = delete;
    ~Temporary() {
        if (!name_.empty()) {
            ::unlinkat(folder(), name_.c_str(), 0);
        }
    }

    /// False: errno says why.
    bool create() {
        constexpr int tries = 100;
        for (int i = 0; i < tries; ++i) {
            const std::string name = temporaryName();
            constexpr mode_t asUmaskAllows = 0666;
            file_ = Descriptor(::openat(folder(), name.c_str(),
                                        O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, asUmaskAllows));
            if (!file_ && errno != EEXIST) {
                return false;
            }
            if (file_) {
                name_ = name;
                ::flock(file_.number(), LOCK_EX); // where that is unknown nothing is swept either
                struct stat status {};
                if (::fstat(file_.number(), &status) == 0 && status.st_nlink > 0) {
                    return true;
                }
            } // another's sweeping was faster than the lock
        }
        errno = EEXIST;
        return false;
    }

    bool fill(std::string_view bytes) {
        return writeAll(file_, bytes) && keepRights() && flush(file_);
    }

    /// Steps into the place; what stood there is gone.
    bool replace() {
        if (::renameat(folder(), name_.c_str(), folder(), place_.name.c_str()) != 0) {
            return false;
        }
        name_.clear();
        return true;
    }

    /// The file that stands in the place goes under a name of its own and comes back with
    /// putBack().
    bool setAside() {
        nameOld();
        if (::renameat(folder(), place_.name.c_str(), folder(), aside_.c_str()) == 0) {
            return true;
        }
        aside_.clear();
        return errno == ENOENT; // nothing to set aside
    }
    /// The same, but it stays in the place until it is replaced, so that a kill in between takes
    /// nothing away; where a file cannot have two names it is set aside.
    bool keep() {
        nameOld();
        if (::linkat(folder(), place_.name.c_str(), folder(), aside_.c_str(), 0) == 0) {
            return true;
        }
        return setAside();
    }
    void putBack() {
        if (!aside_.empty()) {
            if (::renameat(folder(), aside_.c_str(), folder(), place_.name.c_str()) == 0) {
                ::unlinkat(folder(), aside_.c_str(), 0); // still there if both named one file
            }
            aside_.clear();
        } else if (name_.empty()) { // new, where nothing was
            ::unlinkat(folder(), place_.name.c_str(), 0);
        }
    }
    void forgetOld() {
        if (!aside_.empty()) {
            ::unlinkat(folder(), aside_.c_str(), 0);
            aside_.clear();
        }
    }

    const OutputPlace& place() const { return place_; }

  private:
    int folder() const { return place_.folder.number(); }

    void nameOld() {
        old_ = Descriptor(::openat(folder(), place_.name.c_str(),
                                   O_RDONLY | O_NONBLOCK | O_NOFOLLOW | O_CLOEXEC));
        if (old_) {
            ::flock(old_.number(), LOCK_EX | LOCK_NB); // no leftover: see sweep()
        }
        aside_ = temporaryName();
    }

    /// Of the file that is replaced. Its owner only where the system allows it, as copying does.
    bool keepRights() const {
        if (!place_.before) {
            return true;
        }
        const struct stat& before = *place_.before;
        const bool hasGroup = ::fchown(file_.number(), static_cast<uid_t>(-1), before.st_gid) == 0;
        [[maybe_unused]] const int onlyForRoot =
            ::fchown(file_.number(), before.st_uid, static_cast<gid_t>(-1));
        // Rights of a group are not for another one.
        constexpr mode_t rights = 0777, ofGroup = 0070;
        const mode_t kept = before.st_mode & rights;
        return ::fchmod(file_.number(), hasGroup ? kept : kept & ~ofGroup) == 0;
    }

    const OutputPlace& place_;
    std::string name_;  ///< empty: not made, or in its place
    std::string aside_; ///< of what stood or stands in the place; empty: nothing
    Descriptor file_;   ///< open, and so locked, to the end
    Descriptor old_;    ///< what was set aside, locked likewise
};

/// Removes files of programs that were killed while they wrote here.
void sweep(const OutputPlace& place) {
    const int folder = ::openat(place.folder.number(), ".", O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    const std::unique_ptr<DIR, int (*)(DIR*)> listing(folder < 0 ? nullptr : ::fdopendir(folder),
                                                      ::closedir);
    if (!listing) {
        return; // it may not be listed: leftovers stay
    }
    while (const dirent* entry = ::readdir(listing.get())) {
        if (!isTemporary(entry->d_name)) {
            continue;
        }
        const Descriptor left(
            ::openat(folder, entry->d_name, O_RDONLY | O_NONBLOCK | O_CLOEXEC | O_NOFOLLOW));
        if (left && ::flock(left.number(), LOCK_EX | LOCK_NB) == 0) {
            ::unlinkat(folder, entry->d_name, 0);
        }
    }
}

/// The names of a folder, so that a replaced file is found again after a power cut.
std::optional<Problem> flushFolder(const OutputPlace& place) {
    if (flush(place.folder) || errno == EBADF) { // a folder that may not be listed
        return std::nullopt;
    }
    const int reason = errno;
    return Problem{"", Message(LW_TEXT("%1 is written, but the disk does not confirm it: %2"),
                               shownName(place.asked), reasonOf(reason))};
}

/// Writing to a pipe that nobody reads is an error like another while this lives, not the end of
/// the program.
class WithoutPipeSignal {
  public:
    WithoutPipeSignal() {
        ::sigemptyset(&pipe_);
        ::sigaddset(&pipe_, SIGPIPE);
        ::pthread_sigmask(SIG_BLOCK, &pipe_, &before_);
    }
    ~WithoutPipeSignal() {
        const int reason = errno;
        constexpr struct timespec now {};
        while (::sigtimedwait(&pipe_, nullptr, &now) > 0) {
        }
        ::pthread_sigmask(SIG_SETMASK, &before_, nullptr);
        errno = reason;
    }
    WithoutPipeSignal(const WithoutPipeSignal&) = delete;
    WithoutPipeSignal& operator=(const WithoutPipeSignal&) = delete;

  private:
    sigset_t pipe_{}, before_{};
};

std::optional<Problem> writeInto(const OutputPlace& place, std::string_view bytes) {
    const WithoutPipeSignal silent;
    Descriptor file(::open(place.asked.c_str(), O_WRONLY | O_APPEND | O_NOCTTY | O_CLOEXEC));
    if (!file || !writeAll(file, bytes) || !file.close()) {
        return failed(place.asked, errno);
    }
    return std::nullopt;
}

std::optional<Problem> replaceOne(Temporary& temporary) {
    if (!temporary.replace()) {
        return failed(temporary.place().asked, errno);
    }
    return flushFolder(temporary.place());
}

/// The last one goes first and comes last, so that it never stands beside files of another set. The
/// others are there all the time.
std::optional<Problem> replaceAll(std::span<const std::unique_ptr<Temporary>> set) {
    const auto undo = [&](const Temporary& at, int reason) {
        for (const auto& one : set) {
            one->putBack();
        }
        return failed(at.place().asked, reason);
    };
    for (std::size_t i = set.size(); i-- > 0;) {
        const bool isLast = i + 1 == set.size();
        if (isLast ? !set[i]->setAside() : !set[i]->keep()) {
            return undo(*set[i], errno);
        }
    }
    for (const auto& one : set) {
        if (!one->replace()) {
            return undo(*one, errno);
        }
    }
    for (const auto& one : set) {
        one->forgetOld();
    }
    return flushFolder(set.back()->place());
}

} // namespace

std::optional<Problem> checkOutput(const fs::path& file, std::span<const fs::path> inputs) {
    const auto place = outputPlace(file, inputs);
    return place ? std::nullopt : std::optional(place.problems().front());
}

std::optional<Problem> makeFolder(const fs::path& folder) {
    std::error_code error;
    fs::create_directories(folder, error);
    if (error) {
        return Problem{"", Message(LW_TEXT("folder %1 cannot be made: %2"), shownName(folder),
                                   error.message())};
    }
    return std::nullopt;
}

std::optional<Problem> checkFolder(const fs::path& folder) {
    std::error_code error;
    fs::path above = fs::absolute(folder, error);
    while (!above.has_filename() || !fs::exists(fs::symlink_status(above, error))) {
        if (above == above.parent_path()) {
            break;
        }
        above = above.parent_path();
    }
    const bool isFolder = fs::is_directory(above, error);
    if (!isFolder || ::faccessat(AT_FDCWD, above.c_str(), W_OK | X_OK, AT_EACCESS) != 0) {
        return Problem{"", Message(LW_TEXT("no file can be made in folder %1: %2"),
                                   shownName(folder), reasonOf(isFolder ? errno : ENOTDIR))};
    }
    return std::nullopt;
}

std::optional<Problem> writeFile(const fs::path& file, std::string_view bytes,
                                 std::span<const fs::path> inputs) {
    const Output output{file, bytes};
    return writeFiles({&output, 1}, inputs);
}

std::optional<Problem> writeFiles(std::span<const Output> outputs,
                                  std::span<const fs::path> inputs) {
    std::vector<OutputPlace> places;
    for (const Output& output : outputs) {
        auto place = outputPlace(output.file, inputs);
        if (!place) {
            return place.problems().front();
        }
        places.push_back(std::move(place).value());
    }
    std::vector<std::unique_ptr<Temporary>> replaced;
    for (std::size_t i = 0; i < outputs.size(); ++i) {
        if (places[i].isReplaced()) {
            sweep(places[i]);
            replaced.push_back(std::make_unique<Temporary>(places[i]));
            if (!replaced.back()->create() || !replaced.back()->fill(outputs[i].bytes)) {
                return failed(outputs[i].file, errno);
            }
        }
    }
    for (std::size_t i = 0; i < outputs.size(); ++i) {
        if (!places[i].isReplaced()) {
            if (auto problem = writeInto(places[i], outputs[i].bytes)) {
                return problem;
            }
        }
    }
    if (replaced.size() == 1) {
        return replaceOne(*replaced.front());
    }
    return replaced.empty() ? std::nullopt : replaceAll(replaced);
}

} // namespace lobewright::files
