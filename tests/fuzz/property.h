#pragma once

#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <string>

/// What must hold for every input; ends the program where it does not, so that the fuzzer keeps the
/// input.
inline void mustHold(bool holds, const char* property, const std::string& seen = {}) {
    if (!holds) {
        std::fprintf(stderr, "broken property: %s\n%s\n", property, seen.c_str());
        std::abort();
    }
}

/// Ends the program where one input takes more than ten seconds of the processor. The fuzzer's own
/// limit counts the time of day, which on a busy machine says nothing of the reader.
class MustBeQuick {
  public:
    MustBeQuick() = default;
    MustBeQuick(const MustBeQuick&) = delete;
    MustBeQuick& operator=(const MustBeQuick&) = delete;
    ~MustBeQuick() {
        mustHold(std::clock() - begin_ < 10 * CLOCKS_PER_SEC, "an input is read in ten seconds");
    }

  private:
    std::clock_t begin_ = std::clock();
};
