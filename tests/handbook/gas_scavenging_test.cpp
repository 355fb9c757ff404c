#include "core/gas/cycle/cycle.h"
#include "core/gas/models/fuel.h"
#include "core/units.h"
#include "tests/gas/analytic_chamber.h"

#include <gtest/gtest.h>

#include <stdexcept>

// The classic scavenging curves hold for constant volume, temperature and pressure; the delivery
// ratio then refers to the trapped mass [Heywood, §6.6; Blair, SAE R-161, ch. 3 (from memory)]. The
// solver is brought into that limit: a chamber of constant volume, gas and supply equally warm, and
// a pressure drop of a thousandth.
namespace lobewright::gas {
namespace {

CycleFigures scavenged(const Scavenging& scavenging, double revPerMinute) {
    AnalyticChamber::Shape shape;
    shape.sweptVolume = 0.0;
    shape.clearanceVolume = 2e-4;
    const AnalyticChamber chamber(shape);
    Settings settings = plainSettings();
    settings.supply.pressure = 1.001e5;
    settings.scavenging = scavenging;
    RunConditions run;
    run.omega = revPerMinute * units::revPerMinute;
    run.motored = true;
    SilentMonitor monitor;
    const auto solution = solveCycle(chamber, settings, constantGas(), run, monitor);
    if (!solution) {
        throw std::runtime_error(solution.problems().front().message.english());
    }
    return solution->cycles.front();
}

constexpr double speeds[] = {50.0, 100.0, 200.0, 400.0, 1000.0};
constexpr double bound = 2e-3; // what a thousandth of pressure drop leaves of constant density

TEST(ScavengingCurves, PerfectMixingIsOneLessExponential) {
    for (const double speed : speeds) {
        const CycleFigures f = scavenged({ScavengingModel::perfectMixing}, speed);
        const double ratio = f.scavengeRatio;
        EXPECT_NEAR(f.scavengingEfficiency, 1.0 - std::exp(-ratio), bound) << ratio;
        EXPECT_NEAR(f.trappingEfficiency, (1.0 - std::exp(-ratio)) / ratio, bound) << ratio;
    }
}

TEST(ScavengingCurves, PerfectDisplacementFillsThenShortCircuits) {
    for (const double speed : speeds) {
        const CycleFigures f = scavenged({ScavengingModel::perfectDisplacement}, speed);
        const double ratio = f.scavengeRatio;
        EXPECT_NEAR(f.scavengingEfficiency, std::min(1.0, ratio), bound) << ratio;
        EXPECT_NEAR(f.trappingEfficiency, std::min(1.0, 1.0 / ratio), bound) << ratio;
    }
}

// Displacement until the share d has left, mixing of the rest afterwards (after Benson & Brandham
// 1969): 1 − (1 − d)·exp(d − L) for L > d.
TEST(ScavengingCurves, DisplacementThenMixingLiesBetween) {
    const double d = 0.4;
    for (const double speed : speeds) {
        const CycleFigures f = scavenged({ScavengingModel::displacementThenMixing, d}, speed);
        const double ratio = f.scavengeRatio;
        const double expected = ratio < d ? ratio : 1.0 - (1.0 - d) * std::exp(d - ratio);
        EXPECT_NEAR(f.scavengingEfficiency, expected, bound) << ratio;
    }
}

// Fresh gas that goes straight to the exhaust neither displaces nor mixes.
TEST(ScavengingCurves, ShortCircuitTakesItsShareOfTheDelivery) {
    const double sigma = 0.25;
    for (const double speed : speeds) {
        const CycleFigures f = scavenged({ScavengingModel::perfectMixing, 0.5, sigma}, speed);
        const double ratio = f.scavengeRatio;
        EXPECT_NEAR(f.scavengingEfficiency, 1.0 - std::exp(-(1.0 - sigma) * ratio), bound) << ratio;
    }
}

// The speeds span the curves from sparse to plentiful delivery.
TEST(ScavengingCurves, SpeedsSpanSparseToPlentifulDelivery) {
    EXPECT_GT(scavenged({ScavengingModel::perfectMixing}, speeds[0]).scavengeRatio, 2.5);
    EXPECT_LT(scavenged({ScavengingModel::perfectMixing}, speeds[4]).scavengeRatio, 0.3);
}

// Reference curve points as tabulated: L, mixing η_sc, mixing η_tr. Own evaluation of the curves
// above must print the same digits.
TEST(ScavengingCurves, ClosedFormsGiveTheTabulatedPoints) {
    const double table[][3] = {{0.25, 0.221199, 0.884797}, {0.50, 0.393469, 0.786939},
                               {1.00, 0.632121, 0.632121}, {1.50, 0.776870, 0.517913},
                               {2.00, 0.864665, 0.432332}, {3.00, 0.950213, 0.316738}};
    for (const auto& [ratio, scavenging, trapping] : table) {
        EXPECT_NEAR(1.0 - std::exp(-ratio), scavenging, 5e-7);
        EXPECT_NEAR((1.0 - std::exp(-ratio)) / ratio, trapping, 5e-7);
    }
}

} // namespace
} // namespace lobewright::gas
