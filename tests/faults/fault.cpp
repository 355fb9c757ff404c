#include "tests/faults/fault.h"

#include <cstdio>
#include <cstdlib>

namespace seeded {

std::uint32_t active = 0;
unsigned char reached[65536] = {};

namespace {

__attribute__((constructor(101))) void readFault() {
    if (const char* number = std::getenv("LW_FAULT")) {
        active = static_cast<std::uint32_t>(std::strtoul(number, nullptr, 16));
    }
}

/// LW_REACHED names a file that takes the low bits of all places that ran, one a line, of every
/// process.
__attribute__((destructor(101))) void sayReached() {
    const char* name = std::getenv("LW_REACHED");
    std::FILE* file = name != nullptr ? std::fopen(name, "a") : nullptr;
    if (file == nullptr) {
        return;
    }
    for (unsigned bits = 0; bits < sizeof reached; ++bits) {
        if (reached[bits] != 0) {
            std::fprintf(file, "%04x\n", bits);
        }
    }
    std::fclose(file);
}

} // namespace
} // namespace seeded
