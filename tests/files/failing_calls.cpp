#include "tests/files/failing_calls.h"

#include <cerrno>
#include <csignal>
#include <cstdarg>
#include <dlfcn.h>
#include <fcntl.h>
#include <sys/stat.h>
#include <sys/types.h>
#include <unistd.h>

// The program's own functions of these names come before those of the C library, which they call.

namespace {

constexpr int never = -1;
thread_local int before = never; ///< calls that still go well
thread_local int error = 0;
thread_local const char* name = nullptr;

bool fails(const char* call) {
    if (before == never) {
        return false;
    }
    if (before > 0) {
        --before;
        return false;
    }
    before = never;
    name = call;
    if (error == lobewright::test::FailingCall::killed) {
        ::raise(SIGKILL);
    }
    errno = error;
    return true;
}

template <class Function>
Function* real(const char* call) {
    return reinterpret_cast<Function*>(::dlsym(RTLD_NEXT, call));
}

} // namespace

namespace lobewright::test {

FailingCall::FailingCall(int calls, int reason) {
    name = nullptr;
    error = reason;
    before = calls;
}
FailingCall::~FailingCall() {
    before = never;
}
const char* FailingCall::failed() {
    return name;
}

} // namespace lobewright::test

extern "C" {

int open(const char* path, int flags, ...) {
    std::va_list rest;
    va_start(rest, flags);
    const mode_t mode = (flags & O_CREAT) != 0 ? va_arg(rest, mode_t) : 0;
    va_end(rest);
    static const auto call = real<int(const char*, int, ...)>("open");
    return fails("open") ? -1 : call(path, flags, mode);
}

int openat(int folder, const char* path, int flags, ...) {
    std::va_list rest;
    va_start(rest, flags);
    const mode_t mode = (flags & O_CREAT) != 0 ? va_arg(rest, mode_t) : 0;
    va_end(rest);
    static const auto call = real<int(int, const char*, int, ...)>("openat");
    return fails("openat") ? -1 : call(folder, path, flags, mode);
}

ssize_t write(int file, const void* bytes, size_t count) {
    static const auto call = real<ssize_t(int, const void*, size_t)>("write");
    return fails("write") ? -1 : call(file, bytes, count);
}

int fsync(int file) {
    static const auto call = real<int(int)>("fsync");
    return fails("fsync") ? -1 : call(file);
}

int close(int file) {
    static const auto call = real<int(int)>("close");
    const bool isFailing = fails("close"); // the file is closed all the same, as Linux does
    const int result = call(file);
    if (isFailing) {
        errno = error;
    }
    return isFailing ? -1 : result;
}

int fchown(int file, uid_t user, gid_t group) noexcept {
    static const auto call = real<int(int, uid_t, gid_t)>("fchown");
    return fails("fchown") ? -1 : call(file, user, group);
}

int fchmod(int file, mode_t mode) noexcept {
    static const auto call = real<int(int, mode_t)>("fchmod");
    return fails("fchmod") ? -1 : call(file, mode);
}

#pragma GCC diagnostic push
#pragma GCC diagnostic ignored "-Wshadow" // a structure has the same name
int flock(int file, int operation) noexcept {
    static const auto call = real<int(int, int)>("flock");
    return fails("flock") ? -1 : call(file, operation);
}
#pragma GCC diagnostic pop

int fstat(int file, struct stat* status) noexcept {
    static const auto call = real<int(int, struct stat*)>("fstat");
    return fails("fstat") ? -1 : call(file, status);
}

int stat(const char* path, struct stat* status) noexcept {
    static const auto call = real<int(const char*, struct stat*)>("stat");
    return fails("stat") ? -1 : call(path, status);
}

int faccessat(int folder, const char* path, int wanted, int flags) noexcept {
    static const auto call = real<int(int, const char*, int, int)>("faccessat");
    return fails("faccessat") ? -1 : call(folder, path, wanted, flags);
}

int renameat(int from, const char* old, int to, const char* now) noexcept {
    static const auto call = real<int(int, const char*, int, const char*)>("renameat");
    return fails("renameat") ? -1 : call(from, old, to, now);
}

int linkat(int from, const char* old, int to, const char* now, int flags) noexcept {
    static const auto call = real<int(int, const char*, int, const char*, int)>("linkat");
    return fails("linkat") ? -1 : call(from, old, to, now, flags);
}

int unlinkat(int folder, const char* path, int flags) noexcept {
    static const auto call = real<int(int, const char*, int)>("unlinkat");
    return fails("unlinkat") ? -1 : call(folder, path, flags);
}

} // extern "C"
