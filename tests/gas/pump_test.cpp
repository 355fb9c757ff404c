#include "core/gas/cycle/coupled_cylinders.h"
#include "core/gas/cycle/model.h"
#include "core/units.h"
#include "tests/gas/engines.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::gas {
namespace {

// Reed and ports shut, the gas under the piston is compressed and expands along p·V^γ, to which
// a perfect gas of constant heat holds (any thermodynamics text).
TEST(UnderPistonPump, ClosedItIsAnAdiabaticChange) {
    Engine engine = craneEngine();
    engine.settings.supply.pump.reed.cracking = 1e5; // never opens
    const WorkingGas air = workingGas(engine.settings.fuel);
    auto made = makeModel(engine.chamber, engine.settings, air, running(2200.0, 1, true));
    ASSERT_TRUE(made);
    const Model& model = *made;
    Integration integration(model, constantSupply(model, 1e5), true);
    // from outer dead centre inward, as far as the ports stay shut
    RunningCylinder cylinder(model);
    CylinderRecord record{std::vector<CycleRecord>(1), {}, {}};
    cylinder.written = &record;
    Charge charge;
    charge.air = 3e-4;
    charge.temperature = charge.exhaustTemperature = 330.0;
    cylinder.begin(charge, 0);
    integration.cylinders = {&cylinder};
    const double start = model.pumpSpace.at(0.0).volume;
    const double r = air.air.gasConstant();
    integration.plenum[plenumTemperature] = 300.0;
    integration.plenum[plenumMass] = 1e5 * start / (r * 300.0);
    ASSERT_FALSE(integration.followTo(model.chamber->cycles().front().idc, 1e-11));
    const double t = integration.plenum[plenumTemperature];
    const double volume = model.pumpSpace.at(integration.theta).volume;
    EXPECT_GT(volume / start, 1.2);
    // isentropic for a gas whose heat depends on temperature: ∫c_p dT/T = R·ln(p/p₀)
    double entropy = 0.0;
    constexpr int steps = 2000; // midpoint rule
    for (int i = 0; i < steps; ++i) {
        const double at = 300.0 + (t - 300.0) * (i + 0.5) / steps;
        entropy += air.air.heat(at) / at * (t - 300.0) / steps;
    }
    const double pressure = integration.plenum[plenumMass] * r * t / volume;
    EXPECT_NEAR(entropy, r * std::log(pressure / 1e5), 1e-9 * r);
    EXPECT_DOUBLE_EQ(integration.plenum[plenumMass], 1e5 * start / (r * 300.0));
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
    engine.settings.supply.pump.reed.cracking = 1e5; // never opens
    engine.settings.supply.pump.wallArea = 0.1;
    engine.settings.supply.pump.wallCoefficient = 2e6;
    engine.settings.supply.pump.wallTemperature = 320.0;
    const WorkingGas air = workingGas(engine.settings.fuel);
    auto made = makeModel(engine.chamber, engine.settings, air, running(2200.0, 1, true));
    ASSERT_TRUE(made);
    Integration integration(*made, constantSupply(*made, 1e5), true);
    RunningCylinder cylinder(*made);
    CylinderRecord record{std::vector<CycleRecord>(1), {}, {}};
    cylinder.written = &record;
    Charge charge;
    charge.air = 3e-4;
    charge.temperature = charge.exhaustTemperature = 330.0;
    cylinder.begin(charge, 0);
    integration.cylinders = {&cylinder};
    const double start = made->pumpSpace.at(0.0).volume;
    const double r = air.air.gasConstant();
    integration.plenum[plenumTemperature] = 320.0;
    integration.plenum[plenumMass] = 1e5 * start / (r * 320.0);
    ASSERT_FALSE(integration.followTo(made->chamber->cycles().front().idc, 1e-8));
    EXPECT_NEAR(integration.plenum[plenumTemperature], 320.0, 0.1);
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

// Of a mixture, what does not stay is lost: lost share = 1 − trapping efficiency.
TEST(Premixed, FuelLostIsWhatIsNotTrapped) {
    Engine engine = pumpEngine();
    engine.settings.mixture = Mixture::premixed;
    engine.settings.exhaustPressure = 1.0e5;
    engine.settings.supply.pressure = 1.6e5;
    const CycleSolution solution = cycleOf(engine);
    const CycleFigures& cycle = solution.cycles.front();
    const double lost = 1.0 - cycle.fuelMass / cycle.suppliedFuelMass;
    EXPECT_GT(lost, 0.02);
    EXPECT_NEAR(lost, 1.0 - cycle.trappingEfficiency, 1e-6);
    EXPECT_LT(cycle.massResidual, 1e-9);
    EXPECT_LT(cycle.energyResidual, 1e-6);
}

} // namespace
} // namespace lobewright::gas
