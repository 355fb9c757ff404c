#include "core/design/file.h"
#include "core/solution/solution.h"
#include "core/solution/workings/working.h"
#include "tests/solution/random_designs.h"
#include "tests/solution/solved_sample.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace lobewright {
namespace {

constexpr int shards = 8;
constexpr int designsOfShard = 250;

std::vector<design::Design> samples() {
    std::vector<design::Design> all;
    for (const char* name : {"biogas-pump-set", "classroom-model", "hydrogen-buoy-generator",
                             "sketched-lobes-blown", "unequal-lobes"}) {
        all.push_back(test::sample(name));
    }
    return all;
}

/// Empty, or what is wrong with a solution.
std::string flawOf(const solution::Solution& solution) {
    for (const auto& figure : solution.figures) {
        if (figure.value && !std::isfinite(*figure.value)) {
            return "figure " + figure.name + " is not finite";
        }
    }
    for (const auto& channel : solution.channels) {
        if (channel.values.isInf().any()) {
            return "channel " + channel.name + " is infinite";
        }
        if (solution.gas && channel.name == "pressure_bar" && !channel.values.isFinite().all()) {
            return "the pressure has gaps";
        }
    }
    for (const auto& check : solution.checks) {
        if (check.message.empty() || !std::isfinite(check.value) || !std::isfinite(check.limit)) {
            return "check " + check.id + " says nothing";
        }
    }
    const bool unsolved = test::fires(solution, "not-converged");
    return unsolved == solution.gas.has_value() ? "a missing gas cycle must have its check" : "";
}

// Sixteen cylinders that all run differently, on a plenum of ten displacements, slowly, with the
// best burn start to be found: as much work as the program allows for, and an answer.
TEST(UnlikeCylinders, FindTheirBestBurnStartOnALargePlenum) {
    design::Design design = test::sample("sketched-lobes-blown");
    constexpr int cylinders = 16;
    design.mechanism.cylinders = cylinders;
    design.mechanism.pitchRadius *= 6.0;
    std::vector<double> angles;
    angles.reserve(cylinders);
    for (int k = 0; k < cylinders; ++k) {
        angles.push_back(units::turn * k / cylinders + 1.1 * units::degree * (k * k % 7));
    }
    design.mechanism.cylinderAngles = angles;
    design.gas.supply.plenumVolume *= 20.0;
    design.running.speed *= 0.25;
    SilentMonitor monitor;
    const auto solution = solution::solve(design, monitor);
    ASSERT_TRUE(solution);
    ASSERT_TRUE(solution->gas);
    EXPECT_LT(solution->gas->cycles.front().energyResidual, 2e-6);
}

class RandomValidDesigns : public ::testing::TestWithParam<int> {};

// Whatever a valid design holds, the answer is a solution of finite figures or one whose check says
// why there is no cycle; and the work to find it is bounded.
TEST_P(RandomValidDesigns, EndInFiguresOrASentenceWithBoundedWork) {
    test::RandomDesigns designs(samples(), 4711UL + static_cast<unsigned long>(GetParam()));
    int solved = 0;
    for (int i = 0; i < designsOfShard; ++i) {
        const design::Design design = designs.next();
        SilentMonitor monitor;
        const auto solution = solution::solve(design, monitor);
        const auto text = [&] { return std::to_string(i) + "\n" + design::writeDesign(design); };
        if (!solution) {
            EXPECT_FALSE(solution.problems().front().message.english().empty()) << text();
            continue;
        }
        EXPECT_EQ(flawOf(*solution), "") << text();
        if (solution->gas) {
            ++solved;
            EXPECT_LE(solution->gas->rhsEvaluations, gas::CycleOptions{}.maxEvaluations) << text();
        }
    }
    EXPECT_GT(solved, designsOfShard / 2);
}
/// Figures without a working, with one that cannot be worked out, or with a closed formula that
/// gives another figure. Columns of wild designs are too coarse to be summed.
std::string unexplained(const solution::Solution& solution) {
    std::string list;
    for (const auto& figure : solution.figures) {
        if (!figure.value) {
            continue;
        }
        const auto shown = solution::working(solution, figure.name);
        const auto value = shown ? solution::evaluate(*shown) : Result<double>(Problem{"", "none"});
        if (!value) {
            list += figure.name + ": " + value.problems().front().message.english() + "\n";
            continue;
        }
        if (shown->isClosed() && !shown->isNear(*value)) {
            list += fmt::format("{} = {}, but {} = {}\n", figure.name, *figure.value,
                                shown->formula, *value);
        }
    }
    return list;
}

TEST_P(RandomValidDesigns, ExplainTheirFigures) {
    test::RandomDesigns designs(samples(), 815UL + static_cast<unsigned long>(GetParam()));
    for (int i = 0; i < 25; ++i) {
        const design::Design design = designs.next();
        SilentMonitor monitor;
        const auto solution = solution::solve(design, monitor);
        if (solution) {
            EXPECT_EQ(unexplained(*solution), "") << i;
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Shards, RandomValidDesigns, ::testing::Range(0, shards));

} // namespace
} // namespace lobewright
