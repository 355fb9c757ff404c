#include "core/gas/cycle/cycle.h"
#include "core/units.h"
#include "tests/gas/engines.h"
#include "tests/gas/textbook_cycle.h"

#include <gtest/gtest.h>

namespace lobewright::gas {
namespace {

struct Case {
    std::string name;
    Engine engine;
};

void PrintTo(const Case& c, std::ostream* out) {
    *out << c.name;
}

/// Engines that between them burn, are motored, run lean on hydrogen, fast and slow, lose
/// heat by either correlation or not at all, and breathe back through both ports.
std::vector<Case> cases() {
    std::vector<Case> list;
    const auto add = [&list](std::string name, Engine engine) -> Engine& {
        list.push_back({std::move(name), std::move(engine)});
        return list.back().engine;
    };
    add("FiredMethane", pumpEngine());
    add("FiredMethaneFast", pumpEngine()).run = running(3200.0);
    add("FiredPetrolWithoutWallHeat", pumpEngine()).settings.wallHeat.model = WallHeatModel::none;
    list.back().engine.settings.fuel = Fuel::petrol;
    Engine& hohenberg = add("FiredEthanolHohenberg", pumpEngine());
    hohenberg.settings.fuel = Fuel::ethanol;
    hohenberg.settings.wallHeat.model = WallHeatModel::hohenberg;
    add("Motored", pumpEngine()).run = running(1800.0, 3, true);
    add("LeanHydrogenSlow", buoyEngine()).run = running(500.0);
    add("LeanHydrogen", buoyEngine());
    Engine& backflow = add("RichDieselAgainstHighExhaustPressure", pumpEngine());
    backflow.settings.fuel = Fuel::diesel;
    backflow.settings.lambda = 0.95;
    backflow.settings.exhaustPressure = 1.28 * units::bar;
    add("OneSidedWithUnderPistonPump", craneEngine());
    add("OneSidedWithIntakeUnderTheSkirt", craneEngine()).settings.supply.pump.skirtRow =
        ports::Row{38e-3, 20e-3, 16e-3, 4, 0.0, 0.7};
    return list;
}

class TextbookComparison : public ::testing::TestWithParam<Case> {};

// The same equations written twice and integrated by two methods of different families must agree
// to far better than any use of the figures needs. Observed differences are below 3e-6; 1e-4 is
// what is promised.
TEST_P(TextbookComparison, AgreesInWorkPeakPressureAndTrappedMass) {
    const Engine& engine = GetParam().engine;
    SilentMonitor monitor;
    const auto solved = solveCycle(engine.chamber, engine.settings, engine.run, monitor);
    ASSERT_TRUE(solved) << solved.problems().front().message.english();
    const CycleFigures& ours = solved->cycles.front();
    const lobewright::testing::TextbookCycle theirs = lobewright::testing::solveTextbookCycle(
        engine.chamber, engine.settings, engine.run.omega, engine.run.motored);
    const double bound = 1e-4;
    EXPECT_NEAR(ours.work / theirs.work, 1.0, bound);
    EXPECT_NEAR(ours.peakPressure / theirs.peakPressure, 1.0, bound);
    EXPECT_NEAR(ours.trappedMass / theirs.trappedMass, 1.0, bound);
    EXPECT_NEAR(ours.purity / (theirs.trappedAir / theirs.trappedMass), 1.0, bound);
    EXPECT_NEAR(ours.deliveredMass / theirs.deliveredMass, 1.0, bound);
    EXPECT_NEAR(ours.scavengingEfficiency / (theirs.retainedFresh / theirs.trappedMass), 1.0,
                bound);
    EXPECT_NEAR(ours.wallHeat, theirs.wallHeat, bound * std::fabs(theirs.work));
    if (solved->pump) {
        EXPECT_NEAR(solved->pump->work / theirs.pumpWork, 1.0, bound);
    }
    RecordProperty("work_difference", std::to_string(ours.work / theirs.work - 1.0));
}

// How well the equations are solved is reported with every solution.
TEST_P(TextbookComparison, KeepsMassAndEnergy) {
    const Engine& engine = GetParam().engine;
    SilentMonitor monitor;
    const auto solved = solveCycle(engine.chamber, engine.settings, engine.run, monitor);
    ASSERT_TRUE(solved) << solved.problems().front().message.english();
    for (const CycleFigures& cycle : solved->cycles) {
        EXPECT_LE(cycle.massResidual, 1e-9);
        EXPECT_LE(cycle.energyResidual, 1e-6);
    }
}

INSTANTIATE_TEST_SUITE_P(Designs, TextbookComparison, ::testing::ValuesIn(cases()),
                         [](const auto& test) { return test.param.name; });

} // namespace
} // namespace lobewright::gas
