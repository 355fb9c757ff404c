#include "core/gas/cycle/coupled_cylinders.h"
#include "core/gas/cycle/model.h"
#include "core/ports/events.h"
#include "core/units.h"
#include "tests/gas/engines.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <stdexcept>

namespace lobewright::gas {
namespace {

/// The gas under a piston from outer dead centre inward, at 1 bar and a temperature to begin with,
/// as far as the ports stay shut; the reed never opens.
struct ShutPump {
    double volume = 0.0, startVolume = 0.0; ///< [m³]
    double temperature = 0.0;               ///< at the end [K]
    double mass = 0.0, startMass = 0.0;     ///< [kg]
};

ShutPump shutPump(Engine engine, const WorkingGas& air, double temperature, double tolerance) {
    engine.settings.supply.pump.reed.cracking = 1e5;
    auto made = makeModel(engine.chamber, engine.settings, air, running(2200.0, 1, true));
    if (!made) {
        throw std::runtime_error("no model");
    }
    const Model& model = *made;
    Integration integration(model, constantSupply(model, 1e5), true);
    RunningCylinder cylinder(model);
    CylinderRecord record{std::vector<CycleRecord>(1), {}, {}};
    cylinder.written = &record;
    Charge charge;
    charge.air = 3e-4;
    charge.temperature = charge.exhaustTemperature = 330.0;
    cylinder.begin(charge, 0);
    integration.cylinders = {&cylinder};
    ShutPump result;
    result.startVolume = model.pumpSpace.at(0.0).volume;
    result.startMass = 1e5 * result.startVolume / (air.air.gasConstant() * temperature);
    integration.plenum[plenumTemperature] = temperature;
    integration.plenum[plenumMass] = result.startMass;
    EXPECT_FALSE(integration.followTo(model.chamber->cycles().front().idc, tolerance));
    result.temperature = integration.plenum[plenumTemperature];
    result.mass = integration.plenum[plenumMass];
    result.volume = model.pumpSpace.at(integration.theta).volume;
    return result;
}

// Reed and ports shut, the gas under the piston is compressed and expands along p·V^γ, to which
// a perfect gas of constant heat holds (any thermodynamics text).
TEST(UnderPistonPump, ClosedItIsAnAdiabaticChange) {
    const Engine engine = craneEngine();
    const WorkingGas air = workingGas(engine.settings.fuel);
    const ShutPump shut = shutPump(engine, air, 300.0, 1e-11);
    EXPECT_GT(shut.volume / shut.startVolume, 1.2);
    // isentropic for a gas whose heat depends on temperature: ∫c_p dT/T = R·ln(p/p₀)
    double entropy = 0.0;
    constexpr int steps = 2000; // midpoint rule
    for (int i = 0; i < steps; ++i) {
        const double at = 300.0 + (shut.temperature - 300.0) * (i + 0.5) / steps;
        entropy += air.air.heat(at) / at * (shut.temperature - 300.0) / steps;
    }
    const double r = air.air.gasConstant();
    const double pressure = shut.mass * r * shut.temperature / shut.volume;
    EXPECT_NEAR(entropy, r * std::log(pressure / 1e5), 1e-9 * r);
    EXPECT_DOUBLE_EQ(shut.mass, shut.startMass);
}

TEST(UnderPistonPump, KeepsMassAndEnergyOfBothChambers) {
    for (const double speed : {110.0, 600.0, 2200.0, 3300.0}) {
        Engine engine = craneEngine();
        engine.run = running(speed);
        engine.settings.scavenging.shortCircuitFraction = oneSidedShortCircuit;
        const CycleSolution solution = cycleOf(engine);
        ASSERT_TRUE(solution.pump);
        EXPECT_LT(solution.pump->massResidual, 1e-6) << speed;
        EXPECT_LT(solution.pump->energyResidual, 1e-6) << speed;
        for (const CycleFigures& cycle : solution.cycles) {
            EXPECT_LT(cycle.massResidual, 1e-6) << speed;
            EXPECT_LT(cycle.energyResidual, 1e-6) << speed;
            // what the reed lets in is what the ports give, in the steady state
            EXPECT_NEAR(cycle.deliveredMass / solution.pump->intakeMass, 1.0, 2e-5) << speed;
        }
        EXPECT_LT(solution.pump->work, 0.0) << speed;
        EXPECT_NEAR(solution.supplyPower, -solution.pump->work * engine.run.omega / units::turn,
                    1e-9 * solution.supplyPower);
    }
}

// Walls warm what is drawn in, so that less of it finds room; the balance of energy counts them.
TEST(UnderPistonPump, WarmWallsCostDelivery) {
    Engine engine = craneEngine();
    const double adiabatic = cycleOf(engine).cycles.front().deliveryRatio;
    Pump& pump = engine.settings.supply.pump;
    pump.wallArea = 300e-4;
    pump.wallTemperature = 400.0;
    double before = adiabatic;
    for (const double coefficient : {50.0, 200.0}) {
        pump.wallCoefficient = coefficient;
        const CycleSolution warmed = cycleOf(engine);
        EXPECT_LT(warmed.cycles.front().deliveryRatio, before);
        EXPECT_LT(warmed.pump->energyResidual, 1e-6);
        before = warmed.cycles.front().deliveryRatio;
    }
    pump.wallCoefficient = 0.0;
    EXPECT_EQ(cycleOf(engine).cycles.front().deliveryRatio, adiabatic);
}

// Reed and ports shut and walls that give and take at once: the gas keeps their temperature, and
// pressure by volume is constant (Boyle).
TEST(UnderPistonPump, ClosedBetweenWallsThatNeverTireItIsIsothermal) {
    Engine engine = craneEngine();
    Pump& pump = engine.settings.supply.pump;
    pump.wallArea = 0.1;
    pump.wallCoefficient = 2e6;
    pump.wallTemperature = 320.0;
    const ShutPump shut =
        shutPump(engine, workingGas(engine.settings.fuel), pump.wallTemperature, 1e-8);
    EXPECT_GT(shut.volume / shut.startVolume, 1.2);
    EXPECT_NEAR(shut.temperature, pump.wallTemperature, 0.1);
}

/// A piston that lets its own air in: four ports that the skirt uncovers near inner dead centre.
Engine skirtEngine() {
    Engine engine = craneEngine();
    engine.settings.supply.pump.skirtRow = ports::Row{38e-3, 20e-3, 16e-3, 4, 2e-3, 0.7};
    return engine;
}

TEST(UnderPistonPump, SkirtUncoversItsRowWhereThePistonHasGoneSoFar) {
    const Engine engine = skirtEngine();
    const WorkingGas air = workingGas(engine.settings.fuel);
    const auto made = makeModel(engine.chamber, engine.settings, air, engine.run);
    ASSERT_TRUE(made);
    const ports::Row& row = *engine.settings.supply.pump.skirtRow;
    const double area = units::pi / 4.0 * engine.chamber.bore() * engine.chamber.bore();
    double widest = 0.0;
    for (double window = 0.0; window < made->period(); window += 0.01) {
        const double gone =
            engine.chamber.behind(made->start + window, PumpSides::inlet).volume / area;
        const double open = row.dischargeCoefficient * row.count *
                            ports::openArea(row, std::clamp(gone - row.edge, 0.0, row.height));
        EXPECT_NEAR(made->pumpSpace.skirtArea(window), open, 1e-15);
        widest = std::max(widest, open);
    }
    EXPECT_GT(widest, 0.9 * 0.7 * 4 * 16e-3 * 20e-3);
    const auto events = made->pumpSpace.skirtEvents();
    ASSERT_EQ(events.size(), 4U) << "opening and closing, and both ends of the whole opening";
    for (const double window : events) {
        const double gone =
            engine.chamber.behind(made->start + window, PumpSides::inlet).volume / area;
        EXPECT_LT(std::min(std::abs(gone - row.edge), std::abs(gone - row.edge - row.height)),
                  1e-12);
    }
}

TEST(UnderPistonPump, BreathesThroughItsSkirtWithoutLosingMassOrEnergy) {
    double before = 0.0;
    for (const double speed : {600.0, 2200.0, 3300.0}) {
        Engine engine = skirtEngine();
        engine.run = running(speed);
        const CycleSolution solution = cycleOf(engine);
        ASSERT_TRUE(solution.pump);
        EXPECT_LT(solution.pump->massResidual, 1e-6) << speed;
        EXPECT_LT(solution.pump->energyResidual, 1e-6) << speed;
        EXPECT_LT(solution.cycles.front().energyResidual, 1e-6) << speed;
        EXPECT_LT(solution.pump->lowPressure, 1e5) << "drawn low before the row opens";
        // what came in and was pushed out again before the row closed is not delivered
        EXPECT_NEAR(solution.cycles.front().deliveredMass / solution.pump->intakeMass, 1.0, 2e-5);
        EXPECT_GT(solution.cycles.front().deliveryRatio, 0.3) << speed;
        EXPECT_LT(solution.cycles.front().deliveryRatio, 0.9) << speed;
        EXPECT_NE(solution.cycles.front().deliveryRatio, before);
        before = solution.cycles.front().deliveryRatio;
    }
}

Engine transferEngine(double area) {
    Engine engine = craneEngine();
    Pump& pump = engine.settings.supply.pump;
    pump.deadVolume = 250e-6;
    pump.transferVolume = 200e-6;
    pump.transferArea = area;
    return engine;
}

TEST(TransferVolume, KeepsMassAndEnergyOfChamberAndVolume) {
    for (const double speed : {110.0, 600.0, 2200.0, 3300.0}) {
        for (const Mixture mixture : {Mixture::injected, Mixture::premixed}) {
            Engine engine = transferEngine(500e-6);
            engine.run = running(speed);
            engine.settings.mixture = mixture;
            const CycleSolution solution = cycleOf(engine);
            ASSERT_TRUE(solution.pump);
            EXPECT_LT(solution.pump->massResidual, 1e-6) << speed;
            EXPECT_LT(solution.pump->energyResidual, 1e-6) << speed;
            EXPECT_LT(solution.cycles.front().energyResidual, 1e-6) << speed;
            EXPECT_NEAR(solution.cycles.front().deliveredMass / solution.pump->intakeMass, 1.0,
                        2e-5)
                << speed;
        }
    }
}

// Through a passage that hardly holds anything back, chamber and volume are one: the pump with as
// much more dead volume. A narrow one costs work, for the chamber rises above the volume, and at
// last delivery.
TEST(TransferVolume, BehindAWidePassageIsDeadVolume) {
    Engine one = craneEngine();
    one.settings.supply.pump.deadVolume = 450e-6;
    const CycleSolution together = cycleOf(one);
    const CycleSolution wide = cycleOf(transferEngine(20e-3));
    const CycleSolution narrow = cycleOf(transferEngine(100e-6));
    const CycleSolution throttled = cycleOf(transferEngine(20e-6));
    EXPECT_NEAR(wide.cycles.front().deliveryRatio / together.cycles.front().deliveryRatio, 1.0,
                2e-3);
    EXPECT_NEAR(wide.pump->work / together.pump->work, 1.0, 5e-3);
    EXPECT_LT(narrow.pump->work, 1.1 * wide.pump->work) << "both negative";
    EXPECT_GT(throttled.pump->highPressure, 1.1 * wide.pump->highPressure);
    EXPECT_LT(throttled.cycles.front().deliveryRatio, 0.9 * wide.cycles.front().deliveryRatio);
}

// A volume that holds next to nothing follows the chamber at once, with a hair's breadth between
// their pressures: the engine is that without it, found with hardly more work.
TEST(TransferVolume, OfNextToNothingIsNoneAndFoundAsSoon) {
    Engine none = craneEngine();
    none.settings.supply.pump.deadVolume = 250e-6;
    const CycleSolution without = cycleOf(none);
    Engine engine = transferEngine(600e-6);
    engine.settings.supply.pump.transferVolume = 1e-6;
    const CycleSolution solution = cycleOf(engine);
    EXPECT_LT(solution.rhsEvaluations, 1000000);
    EXPECT_NEAR(solution.cycles.front().work / without.cycles.front().work, 1.0, 2e-2);
    EXPECT_LT(solution.pump->massResidual, 1e-6);
    EXPECT_LT(solution.pump->energyResidual, 1e-6);
}

// Crankcase-scavenged engines deliver about 0.5 to 0.8 of the swept volume [Heywood, ch. 6.6].
TEST(UnderPistonPump, DeliversWhatHandbooksSay) {
    const CycleSolution solution = cycleOf(craneEngine());
    EXPECT_GT(solution.cycles.front().deliveryRatio, 0.5);
    EXPECT_LT(solution.cycles.front().deliveryRatio, 0.8);
    EXPECT_GT(solution.pump->compressionRatio, 1.3);
    EXPECT_LT(solution.pump->lowPressure, 1e5);
    EXPECT_GT(solution.pump->highPressure, 1.1e5);
}

// Two cylinders half a period apart in one case cancel each other's strokes but for the motion
// law: the case pumps next to nothing and the engine finds no air.
TEST(UnderPistonPump, ASharedCasePumpsOnlyWhatIsNotCancelled) {
    Engine engine = craneEngine();
    engine.run = running(2200.0, 2);
    engine.settings.supply.pump.shared = true;
    SilentMonitor monitor;
    const auto shared = solveCycle(engine.chamber, engine.settings, engine.run, monitor);
    engine.settings.supply.pump.shared = false;
    const CycleSolution apart = cycleOf(engine);
    EXPECT_GT(apart.cycles.front().deliveryRatio, 0.5);
    if (shared) {
        EXPECT_LT(shared->cycles.front().deliveryRatio, 0.3);
    } else {
        EXPECT_FALSE(shared.problems().front().message.empty());
    }
}

// Of a mixture, what does not stay is lost: lost share = 1 − trapping efficiency. What burns came
// in a cycle before what is trapped: the search has to end near the steady state.
TEST(Premixed, FuelLostIsWhatIsNotTrapped) {
    Engine engine = pumpEngine();
    engine.settings.mixture = Mixture::premixed;
    engine.settings.exhaustPressure = 1.0e5;
    engine.settings.supply.pressure = 1.6e5;
    CycleOptions tight;
    tight.relativeTolerance = tight.steadyTolerance = 1e-9;
    const CycleSolution solution = cycleOf(engine, tight);
    const CycleFigures& cycle = solution.cycles.front();
    const double lost = 1.0 - cycle.fuelMass / cycle.suppliedFuelMass;
    EXPECT_GT(lost, 0.02);
    EXPECT_NEAR(lost, 1.0 - cycle.trappingEfficiency, 1e-9);
    EXPECT_LT(cycle.massResidual, 1e-9);
    EXPECT_LT(cycle.energyResidual, 1e-6);
}

// Of a rich mixture the air burns what it can: the share λ of the fuel, as the burn ends (Wiebe,
// 1 − e^(−a)); no residual gas brings air.
TEST(Premixed, ARichMixtureBurnsAsMuchFuelAsItsAirAllows) {
    Engine engine = pumpEngine();
    engine.settings.mixture = Mixture::premixed;
    engine.settings.lambda = 0.8;
    const CycleFigures cycle = cycleOf(engine).cycles.front();
    const double burnt = 1.0 - std::exp(-engine.settings.burn.wiebeA);
    EXPECT_NEAR(cycle.burntFuelMass / cycle.fuelMass, 0.8 * burnt, 0.02);
}

} // namespace
} // namespace lobewright::gas
