#include "core/gas/cycle/turbine.h"
#include "core/gas/models/supply.h"
#include "core/units.h"
#include "tests/gas/engines.h"
#include "tests/gas/textbook_cycle.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::gas {
namespace {

/// Exhaust gas of constant heat.
ExhaustState gasAt(double pressure, double temperature, double heat, double gamma) {
    return {pressure, {0.0, temperature, heat * temperature, heat * (gamma - 1.0) / gamma, gamma}};
}

/// A wheel at its best speed ratio behind the gas.
double bestSpeed(const Turbine& turbine, double spouting) {
    return turbine.bestSpeedRatio * spouting / (0.5 * turbine.diameter);
}

// Gas at 1100 K (c_p 1148 J/(kg·K), γ 1.333) over a pressure ratio of 1.873 with an efficiency of
// 0.9: the temperature drops by 145 K [Cohen, Rogers & Saravanamuttoo, Gas Turbine Theory, example
// of ch. 7, from memory; the figures there are rounded to a per cent].
TEST(TurbineWheel, AgreesWithATextbookExample) {
    Turbine turbine;
    turbine.bestEfficiency = 0.9;
    const ExhaustState gas = gasAt(4e5, 1100.0, 1148.0, 1.333);
    const double outlet = 4e5 / 1.873;
    const double speed = bestSpeed(turbine, spoutingVelocity(gas, outlet));
    const TurbineFlow flow = turbineFlow(turbine, gas, outlet, speed);
    EXPECT_NEAR(flow.power / (flow.mass * 1148.0), 145.0, 1.5);
}

// Ideal limits: without loss the gas does the work of an isentropic expansion, at twice the best
// speed ratio none, at half of it three quarters.
TEST(TurbineWheel, ExpandsIsentropicallyWhereNothingIsLost) {
    Turbine turbine;
    turbine.bestEfficiency = 1.0;
    const double gamma = 1.34, heat = 1150.0;
    const ExhaustState gas = gasAt(2e5, 850.0, heat, gamma);
    const double speed = bestSpeed(turbine, spoutingVelocity(gas, 1e5));
    const TurbineFlow flow = turbineFlow(turbine, gas, 1e5, speed);
    const double drop = 850.0 * (1.0 - std::pow(0.5, (gamma - 1.0) / gamma));
    EXPECT_NEAR(flow.power / (flow.mass * heat * drop), 1.0, 1e-12);
    const auto share = [&](double factor) {
        return turbineFlow(turbine, gas, 1e5, factor * speed).power / flow.power;
    };
    EXPECT_NEAR(share(0.5), 0.75, 1e-12);
    EXPECT_NEAR(share(2.0), 0.0, 1e-12);
    EXPECT_LT(share(2.2), 0.0);
    EXPECT_EQ(turbineFlow(turbine, gasAt(1e5, 850.0, heat, gamma), 1e5, speed).mass, 0.0);
}

Engine turboEngine(Stages stages) {
    Engine engine = pumpEngine();
    Supply& supply = engine.settings.supply;
    supply.kind = SupplyKind::compressor;
    supply.compressor.drive = WheelDrive::turbine;
    supply.compressor.stages = stages;
    supply.compressor.wheel.diameter = 0.05;
    supply.compressor.turbine.diameter = 0.05;
    supply.compressor.turbine.nozzleArea = 420e-6;
    supply.displacement = 1.3e-3;
    engine.settings.exhaustPressure = 1.0e5;
    return engine;
}

// Everything that enters engine, plenums and both wheels leaves them: fuel, ambient air and the
// shaft's share of the compression against work, walls, bearings and exhaust.
TEST(Turbocharger, KeepsMassAndEnergyOfEnginePlenumsAndWheels) {
    const Engine engine = turboEngine(Stages::wheelThenBlower);
    const CycleSolution solution = cycleOf(engine);
    ASSERT_TRUE(solution.turbine);
    const TurbineFigures& turbine = *solution.turbine;
    const CompressorFigures& compressor = *solution.compressor;
    EXPECT_TRUE(turbine.sustained);
    EXPECT_LT(turbine.balanceResidual, 1e-6);
    EXPECT_LT(turbine.massResidual, 1e-6);
    EXPECT_LT(turbine.energyResidual, 1e-6);
    EXPECT_LT(compressor.massResidual, 1e-6);
    EXPECT_LT(compressor.energyResidual, 1e-6);
    EXPECT_GT(compressor.pressureRatio, 1.05);
    EXPECT_GT(turbine.pressure, 1.05e5);
    const CycleFigures& cycle = solution.cycles.front();
    EXPECT_LE(cycle.energyResidual, 1e-6);
    const double cycles =
        engine.run.cylinders * engine.chamber.cyclesPerTurn() * engine.run.omega / units::turn;
    const double ambient = dryAir().enthalpy(engine.settings.supply.ambientTemperature);
    const double in =
        cycles * cycle.heatReleased + compressor.flow * ambient + solution.supplyPower;
    const double out =
        cycles * (cycle.work + cycle.wallHeat) + turbine.friction + turbine.outletEnthalpy;
    EXPECT_NEAR((in - out) / (cycles * cycle.fuelHeat), 0.0, 1e-6);
}

TEST(Turbocharger, SpeedIsThatAtWhichThePowersMeet) {
    const Engine engine = turboEngine(Stages::wheelThenBlower);
    const CycleSolution solution = cycleOf(engine);
    const double kept = engine.settings.supply.compressor.turbine.mechanicalEfficiency;
    EXPECT_NEAR(kept * solution.turbine->power / solution.compressor->power, 1.0, 1e-6);
    // begun where a neighbour stands it is the same
    Engine beside = engine;
    beside.run = running(1790.0, 3);
    CycleOptions options;
    options.near = cycleOf(beside).start;
    const CycleSolution near = cycleOf(engine, options);
    EXPECT_TRUE(near.near);
    EXPECT_NEAR(near.compressor->wheelSpeed / solution.compressor->wheelSpeed, 1.0, 1e-5);
    EXPECT_NEAR(near.cycles.front().work / solution.cycles.front().work, 1.0, 1e-5);
}

// With a blower behind the wheel the engine breathes at every speed; where the exhaust is too weak
// the wheel idles, and the solution says so.
TEST(Turbocharger, ABlowerBehindTheWheelStartsTheEngine) {
    Engine engine = turboEngine(Stages::wheelThenBlower);
    for (const double share : {0.05, 0.1, 0.25, 0.5, 0.75, 1.0, 1.25, 1.5}) {
        engine.run = running(1800.0 * share, 3);
        SilentMonitor monitor;
        const auto solved = solveCycle(engine.chamber, engine.settings, engine.run, monitor);
        ASSERT_TRUE(solved) << share << ' ' << solved.problems().front().message.english();
        EXPECT_GT(solved->cycles.front().deliveryRatio, 0.3) << share;
        EXPECT_GE(solved->supplyPower, 0.0);
    }
}

// Too weak a turbine, and nothing else that brings air: the engine says what it lacks.
TEST(Turbocharger, AloneItMustSustainItself) {
    Engine engine = turboEngine(Stages::wheel);
    engine.settings.supply.compressor.turbine.bestEfficiency = 0.05;
    engine.run = running(600.0, 3);
    SilentMonitor monitor;
    const auto solved = solveCycle(engine.chamber, engine.settings, engine.run, monitor);
    ASSERT_FALSE(solved);
    EXPECT_EQ(solved.problems().front().path, "/gas/supply/drive");
}

// The same equations written a second time and integrated by CVODE, the wheel turning as fast:
// compressor, both plenums and turbine.
TEST(Turbocharger, AgreesWithTheTextbookCycle) {
    Engine engine = turboEngine(Stages::wheel);
    engine.run = running(2400.0);
    Supply& supply = engine.settings.supply;
    supply.compressor.wheel.diameter = supply.compressor.turbine.diameter = 0.03;
    supply.compressor.turbine.nozzleArea = 120e-6;
    supply.compressor.turbine.exhaustVolume = 4e-4;
    supply.compressor.turbine.bestEfficiency = 0.8;
    supply.plenumVolume = 4e-4;
    const CycleSolution ours = cycleOf(engine);
    ASSERT_TRUE(ours.turbine && ours.turbine->sustained);
    const auto theirs = lobewright::testing::solveTextbookCycle(
        engine.chamber, engine.settings, engine.run.omega, false, ours.compressor->wheelSpeed);
    const CycleFigures& cycle = ours.cycles.front();
    const double bound = 1e-4;
    EXPECT_NEAR(cycle.work / theirs.work, 1.0, bound);
    EXPECT_NEAR(cycle.peakPressure / theirs.peakPressure, 1.0, bound);
    EXPECT_NEAR(cycle.trappedMass / theirs.trappedMass, 1.0, bound);
    EXPECT_NEAR(cycle.deliveredMass / theirs.deliveredMass, 1.0, bound);
    const double time = engine.chamber.period() / engine.run.omega;
    EXPECT_NEAR(ours.compressor->power * time / theirs.compressorWork, 1.0, bound);
    EXPECT_NEAR(ours.turbine->power * time / theirs.turbineWork, 1.0, bound);
}

} // namespace
} // namespace lobewright::gas
