#pragma once

#include <filesystem>
#include <string>
#include <sys/stat.h>
#include <sys/sysmacros.h>

namespace lobewright::test {

/// A node of /dev, "null" or "full", to write to. Whoever could replace that of the machine gets
/// one of their own in the folder: a test that fails must not take the machine's away.
inline std::filesystem::path device(const std::filesystem::path& folder, const std::string& name) {
    const std::filesystem::path own = folder / name, real = "/dev/" + name;
    struct stat status {};
    const bool isKnown = ::stat(real.c_str(), &status) == 0;
    constexpr mode_t forAll = 0666;
    return isKnown && ::mknod(own.c_str(), S_IFCHR | forAll, status.st_rdev) == 0 ? own : real;
}

} // namespace lobewright::test
