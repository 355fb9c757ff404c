#include "core/gas/cycle/cycle.h"
#include "core/units.h"
#include "tests/gas/engines.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>
#include <random>

namespace lobewright::gas {
namespace {

using ::testing::HasSubstr;

Problem problemOf(const Engine& engine) {
    SilentMonitor monitor;
    const auto solution = solveCycle(engine.chamber, engine.settings, engine.run, monitor);
    return solution ? Problem{"none", "solved"} : solution.problems().front();
}

TEST(Failure, NumbersOutOfRangeAreNamedByPath) {
    const double nan = std::numeric_limits<double>::quiet_NaN();
    const double infinite = std::numeric_limits<double>::infinity();
    for (const double bad : {0.0, -1.0, nan, infinite}) {
        Engine engine = pumpEngine();
        engine.settings.lambda = bad;
        EXPECT_EQ(problemOf(engine).path, "/gas/lambda") << bad;
        engine = pumpEngine();
        engine.settings.supply.pressure = bad;
        EXPECT_EQ(problemOf(engine).path, "/gas/supply/pressure_bar") << bad;
        engine = pumpEngine();
        engine.settings.exhaustPressure = bad;
        EXPECT_EQ(problemOf(engine).path, "/gas/exhaust_pressure_bar") << bad;
        engine = pumpEngine();
        engine.run.omega = bad;
        EXPECT_EQ(problemOf(engine).path, "/running/speed_rpm") << bad;
    }
}

TEST(Failure, EveryBrokenRuleIsReported) {
    Engine engine = pumpEngine();
    engine.settings.lambda = -1.0;
    engine.settings.burn.wiebeA = 0.0;
    engine.settings.wallHeat.multiplier = -2.0;
    SilentMonitor monitor;
    const auto solution = solveCycle(engine.chamber, engine.settings, engine.run, monitor);
    ASSERT_FALSE(solution);
    EXPECT_EQ(solution.problems().size(), 3u);
}

TEST(Failure, BurnMustStartWithPortsClosed) {
    Engine engine = pumpEngine();
    for (const double start : {-140.0, 130.0}) {
        engine.settings.burn.start = start * units::degree;
        const Problem problem = problemOf(engine);
        EXPECT_EQ(problem.path, "/gas/burn/start_deg");
        EXPECT_THAT(problem.message.english(),
                    HasSubstr("must start between the last port closing"));
    }
}

// A supply below the exhaust pressure fills the engine with exhaust.
TEST(Failure, EngineWithoutAirSaysSo) {
    Engine engine = pumpEngine();
    engine.settings.supply.pressure = 0.8 * units::bar;
    engine.settings.exhaustPressure = 3.0 * units::bar;
    EXPECT_THAT(problemOf(engine).message.english(), HasSubstr("no air to burn"));
}

TEST(Failure, SearchThatIsCutShortSaysHowFarItCame) {
    Engine engine = pumpEngine();
    CycleOptions options;
    options.maxPeriods = 3;
    SilentMonitor monitor;
    const auto solution = solveCycle(engine.chamber, engine.settings, engine.run, monitor, options);
    ASSERT_FALSE(solution);
    EXPECT_THAT(solution.problems().front().message.english(),
                HasSubstr("no cyclic steady state after 3"));
}

class Impatient final : public Monitor {
  public:
    bool step(double fraction, const Message&) override {
        largest = std::max(largest, fraction);
        return ++calls < 2;
    }
    int calls = 0;
    double largest = 0.0;
};

TEST(Failure, MonitorCanStopTheWork) {
    Engine engine = pumpEngine();
    Impatient monitor;
    const auto solution = solveCycle(engine.chamber, engine.settings, engine.run, monitor);
    ASSERT_FALSE(solution);
    EXPECT_EQ(solution.problems().front().message.english(), "cancelled");
    EXPECT_EQ(monitor.calls, 2);
    EXPECT_LE(monitor.largest, 1.0);
}

/// Valid settings at random, from sparse to absurd.
Engine randomEngine(std::mt19937_64& random) {
    const auto within = [&](double a, double b) {
        return std::uniform_real_distribution<double>(a, b)(random);
    };
    const auto spread = [&](double a, double b) {
        return std::exp(within(std::log(a), std::log(b)));
    };
    const auto chance = [&](double p) { return within(0.0, 1.0) < p; };
    const auto pick = [&](int n) { return std::uniform_int_distribution<int>(0, n - 1)(random); };
    Engine engine = pick(3) == 0 ? pumpEngine() : pick(2) == 0 ? buoyEngine() : classroomEngine();
    Settings& s = engine.settings;
    s.fuel = static_cast<Fuel>(pick(5));
    s.lambda = spread(0.5, 5.0);
    s.combustionEfficiency = within(0.3, 1.0);
    s.burn.start = within(-50.0, 40.0) * units::degree;
    s.burn.duration = spread(3.0, 150.0) * units::degree;
    s.burn.wiebeA = within(1.0, 20.0);
    s.burn.wiebeM = within(0.2, 6.0);
    s.exhaustPressure = within(0.5, 3.0) * units::bar;
    s.supply.temperature = within(220.0, 500.0);
    s.supply.pressure = chance(0.2) ? s.exhaustPressure : within(0.5, 5.0) * units::bar;
    s.scavenging = {static_cast<ScavengingModel>(pick(3)), within(0.0, 1.0),
                    chance(0.5) ? 0.0 : within(0.0, 1.0)};
    s.wallHeat.model = static_cast<WallHeatModel>(pick(3));
    s.wallHeat.multiplier = within(0.0, 4.0);
    engine.run = running(spread(20.0, 6000.0), 1 + pick(4), chance(0.25));
    if (chance(0.4)) {
        s.supply.kind = SupplyKind::blower;
        s.supply.displacement = engine.chamber.sweptVolume() * engine.chamber.cyclesPerTurn() *
                                engine.run.cylinders * spread(0.2, 4.0);
        s.supply.plenumVolume = engine.chamber.sweptVolume() * spread(0.5, 50.0);
    }
    return engine;
}

// Whatever the settings, the answer is finite figures whose mass and energy close, or a sentence.
TEST(Failure, RandomValidSettingsGiveFiguresOrASentence) {
    std::mt19937_64 random(20240607);
    int solved = 0;
    for (int i = 0; i < 100; ++i) {
        const Engine engine = randomEngine(random);
        SilentMonitor monitor;
        const auto solution = solveCycle(engine.chamber, engine.settings, engine.run, monitor);
        if (!solution) {
            EXPECT_FALSE(solution.problems().front().message.english().empty());
            continue;
        }
        ++solved;
        for (const CycleFigures& f : solution->cycles) {
            for (const double value :
                 {f.work, f.imep, f.peakPressure, f.peakTemperature, f.trappedMass, f.purity,
                  f.deliveryRatio, f.trappingEfficiency, f.scavengingEfficiency, f.wallHeat,
                  f.indicatedEfficiency}) {
                EXPECT_TRUE(std::isfinite(value)) << i;
            }
            EXPECT_LE(f.massResidual, 1e-9) << i;
            EXPECT_LE(f.energyResidual, 2e-6) << i;
        }
    }
    EXPECT_GT(solved, 40);
}

} // namespace
} // namespace lobewright::gas
