#include "core/solution/pipeline/angles.h"
#include "core/units.h"
#include "tests/solution/solved_sample.h"

namespace lobewright {
namespace {

using test::sample;
using test::solved;

bool holds(const Samples& angles, double angle) {
    return ((angles - angle).abs() < 1e-12).any();
}

TEST(SampleAngles, CoverOneTurnInStepsOfAtMostHalfADegree) {
    const auto solution = solved(sample("biogas-pump-set"));
    const auto& theta = solution.theta;
    EXPECT_EQ(theta[0], 0.0);
    EXPECT_DOUBLE_EQ(theta[theta.size() - 1], units::turn);
    const Samples steps = theta.tail(theta.size() - 1) - theta.head(theta.size() - 1);
    EXPECT_GT(steps.minCoeff(), 0.0);
    EXPECT_LE(steps.maxCoeff(), 0.5 * units::degree + 1e-12);
}

TEST(SampleAngles, HoldEveryEventOfEveryLobeExactly) {
    const auto solution = solved(sample("hydrogen-buoy-generator"));
    const double period = solution.pair.period();
    const long lobes = std::lround(units::turn / period);
    ASSERT_GT(lobes, 1);
    for (const auto& cycle : solution.timing.cycles()) {
        for (const double event : {cycle.exhaustOpens, cycle.inletOpens, cycle.inletCloses,
                                   cycle.exhaustCloses, cycle.centres.idc, cycle.centres.odc}) {
            const double first = event - period * std::floor(event / period);
            for (long i = 0; i < lobes; ++i) {
                const double angle = first + period * static_cast<double>(i);
                EXPECT_TRUE(holds(solution.theta, angle)) << angle / units::degree;
            }
        }
    }
}

TEST(CycleAngles, AreZeroAtInnerDeadCentreAndWrapIntoOneCycle) {
    const auto solution = solved(sample("biogas-pump-set"));
    const double period = solution.pair.period();
    const Samples chi = solution::cycleAngles(solution.theta, solution.timing, period,
                                              solution.pair.cyclesPerTurn());
    EXPECT_GE(chi.minCoeff(), -units::pi - 1e-9);
    EXPECT_LT(chi.maxCoeff(), units::pi);
    Samples idc(1);
    idc << solution.timing.cycles().front().centres.idc;
    EXPECT_NEAR(
        solution::cycleAngles(idc, solution.timing, period, solution.pair.cyclesPerTurn())[0], 0.0,
        1e-12);
}

} // namespace
} // namespace lobewright
