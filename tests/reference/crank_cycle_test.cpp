#include "core/reference/comparison.h"
#include "core/reference/crank_cycle.h"
#include "tests/solution/solved_sample.h"

namespace lobewright::study {
namespace {

CrankCycle cycleOf(const solution::Solution& solution, bool samePistonSpeed) {
    SilentMonitor monitor;
    auto cycle = crankCycle(solution, samePistonSpeed, monitor);
    if (!cycle) {
        throw std::runtime_error(cycle.problems().front().message.english());
    }
    return std::move(cycle).value();
}

TEST(CrankCycle, TurnsWithTheShaftOrAsOftenAsTheTracksHaveCycles) {
    const auto solution = test::solved(test::sample("biogas-pump-set"));
    const double omega = solution.design.running.speed;
    const double cycles = solution.pair.cyclesPerTurn();
    ASSERT_GT(cycles, 1.0);
    EXPECT_DOUBLE_EQ(cycleOf(solution, false).run.omega, omega);
    EXPECT_DOUBLE_EQ(cycleOf(solution, true).run.omega, cycles * omega);
}

// The comparison tells of the same engine: its work a cycle is that of the row.
TEST(CrankCycle, IsThatOfTheComparison) {
    const auto solution = test::solved(test::sample("biogas-pump-set"));
    SilentMonitor monitor;
    const auto comparison = compare(solution.design, Basis::displacement, monitor);
    ASSERT_TRUE(comparison);
    for (const bool isGeared : {false, true}) {
        const auto& row = comparison->engines[isGeared ? 2 : 1];
        ASSERT_TRUE(row.figure("imep_bar")->value);
        EXPECT_NEAR(cycleOf(solution, isGeared).gas.cycles.front().imep / units::bar,
                    *row.figure("imep_bar")->value, 1e-9);
    }
}

TEST(CrankCycle, OfAOneSidedEngineHasOnePistonAgainstAHead) {
    const auto solution = test::solved(test::sample("harbour-crane-auxiliary"));
    const auto cycle = cycleOf(solution, true);
    EXPECT_EQ(cycle.chamber.pistons().size(), 1U);
    EXPECT_TRUE(cycle.gas.pump);
}

} // namespace
} // namespace lobewright::study
