// Ten thousand solves in one process, of every sample at many speeds: memory stays where it was
// after the first thousand. At night (`ctest --preset release -L nightly`); prints the memory.
// LOBEWRIGHT_SOLVES makes it another number.
#include "core/solution/solution.h"
#include "core/units.h"
#include "tests/design/sample.h"
#include "tests/places.h"

#include <gtest/gtest.h>

#include <cstdio>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <malloc.h>
#include <vector>

namespace lobewright {
namespace {

/// Memory of this process that is not shared with a file [MB].
double memoryInUse() {
    malloc_trim(0);
    long size = 0, resident = 0, shared = 0;
    std::ifstream("/proc/self/statm") >> size >> resident >> shared;
    return static_cast<double>(resident - shared) * 4096.0 / 1e6;
}

std::vector<design::Design> samples() {
    std::vector<design::Design> found;
    const auto folder = std::filesystem::path(test::sourceFolder()) / "samples";
    for (const auto& entry : std::filesystem::directory_iterator(folder)) {
        const std::string name = entry.path().filename().string();
        constexpr std::string_view ending = ".lobewright.json";
        if (name.ends_with(ending)) {
            found.push_back(design::testing::sample(name.substr(0, name.size() - ending.size())));
        }
    }
    return found;
}

TEST(ManySolves, MemoryStaysFlat) {
    const char* asked = std::getenv("LOBEWRIGHT_SOLVES");
    const int count = asked != nullptr ? std::atoi(asked) : 10000;
    const auto designs = samples();
    ASSERT_FALSE(designs.empty());
    double warm = 0.0;
    int solved = 0;
    SilentMonitor monitor;
    for (int i = 0; i < count; ++i) {
        design::Design design = designs[static_cast<std::size_t>(i) % designs.size()];
        design.running.speed *= 0.7 + 0.06 * ((i / static_cast<int>(designs.size())) % 11);
        solved += solution::solve(design, monitor) ? 1 : 0;
        if (i % (count / 20) == count / 20 - 1) {
            const double now = memoryInUse();
            warm = i < count / 10 ? now : warm;
            std::printf("%6d solves, %6d with an answer %7.1f MB\n", i + 1, solved, now);
            std::fflush(stdout);
        }
    }
    EXPECT_GT(solved, 9 * count / 10);
    EXPECT_LT(memoryInUse(), 1.02 * warm + 2.0);
}

} // namespace
} // namespace lobewright
