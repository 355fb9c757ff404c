// Every engine of ordinary proportions has a cycle, whether searched from nowhere or from that of
// the engine at a speed beside it, and both searches find the same.
#include "tests/gas/ordinary_engines.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace lobewright::gas {
namespace {

constexpr int speedsEach = 5;
constexpr double sameCycle = 3e-5; ///< relative, of work, charge and supply
/// The same where the best burn start is known to 0.05°.
constexpr double sameBestCycle = 2e-4;

/// What an engine that has no cycle may say: there is nothing to burn.
bool isPhysical(const Problem& problem) {
    return problem.message.english().find("no air to burn") != std::string::npos;
}

double difference(const CycleSolution& a, const CycleSolution& b) {
    const CycleFigures &f = a.cycles.front(), &g = b.cycles.front();
    return std::max({std::fabs(f.work / g.work - 1.0),
                     std::fabs(f.trappedMass / g.trappedMass - 1.0),
                     std::fabs(a.plenumPressure / b.plenumPressure - 1.0)});
}

void expectAnswers(unsigned long long seed, int count) {
    OrdinaryEngines engines(seed);
    SilentMonitor monitor;
    int solved = 0;
    for (int i = 0; i < count; ++i) {
        Engine engine = engines.next();
        for (const double omega : engines.speeds(engine, speedsEach)) {
            SCOPED_TRACE(testing::Message()
                         << "engine " << i << " of " << seed << " at " << omega << " rad/s");
            engine.run.omega = omega;
            const auto cold = solveCycle(engine.chamber, engine.settings, engine.run, monitor);
            if (!cold) {
                EXPECT_TRUE(isPhysical(cold.problems().front()))
                    << cold.problems().front().message.english();
                continue;
            }
            const bool first = solved++ % speedsEach == 0;
            EXPECT_LE(cold->cycles.front().massResidual, 1e-9);
            EXPECT_LE(cold->cycles.front().energyResidual, 2e-6);
            if (!first) {
                continue;
            }
            RunConditions beside = engine.run;
            beside.omega *= 1.03;
            const auto near = solveCycle(engine.chamber, engine.settings, beside, monitor);
            if (!near) {
                continue; // others are judged at their own speeds
            }
            CycleOptions options;
            options.near = near->start;
            const auto warm =
                solveCycle(engine.chamber, engine.settings, engine.run, monitor, options);
            ASSERT_TRUE(warm) << warm.problems().front().message.english();
            EXPECT_LE(difference(*warm, *cold),
                      engine.settings.burn.bestTorque ? sameBestCycle : sameCycle);
        }
    }
    EXPECT_GE(solved, count * speedsEach * 98 / 100);
}

TEST(ORDINARY, HaveACycleAtEverySpeed) {
    expectAnswers(1, ENGINES);
}

} // namespace
} // namespace lobewright::gas
