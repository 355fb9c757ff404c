#pragma once

#include <cstdio>
#include <cstdlib>
#include <string>

/// What must hold for every input; ends the program where it does not, so that the fuzzer keeps the
/// input.
inline void mustHold(bool holds, const char* property, const std::string& seen = {}) {
    if (!holds) {
        std::fprintf(stderr, "broken property: %s\n%s\n", property, seen.c_str());
        std::abort();
    }
}
