#include "core/gas/models/knock.h"
#include "core/gas/models/supply.h"
#include "core/gas/models/wall_heat.h"
#include "core/gas/models/wiebe.h"

#include <gtest/gtest.h>

namespace lobewright::gas {
namespace {

// Wiebe function [Heywood, §9.2], a = 5 and 6.908 with m = 2, tabulated from its closed form.
TEST(Wiebe, BurntShareAtTheTabulatedPoints) {
    const double at[] = {0.1, 0.25, 0.5, 0.75, 1.0};
    const double five[] = {0.004988, 0.075151, 0.464739, 0.878686, 0.993262};
    const double full[] = {0.006884, 0.102316, 0.578316, 0.945759, 0.999000};
    for (int i = 0; i < 5; ++i) {
        EXPECT_NEAR(wiebeBurnt(at[i], 5.0, 2.0), five[i], 6e-7);
        EXPECT_NEAR(wiebeBurnt(at[i], 6.908, 2.0), full[i], 6e-7);
    }
}

TEST(Wiebe, TenFiftyAndNinetyPercentPoints) {
    // the table counts shares of the whole fuel; ours counts shares of what burns until ξ = 1
    const double table[][4] = {{5.0, 0.276208, 0.517549, 0.772233},
                               {6.908, 0.247994, 0.464684, 0.693353}};
    for (const auto& [a, ten, fifty, ninety] : table) {
        const double whole = 1.0 - std::exp(-a);
        EXPECT_NEAR(wiebeProgress(0.1 / whole, a, 2.0), ten, 6e-7);
        EXPECT_NEAR(wiebeProgress(0.5 / whole, a, 2.0), fifty, 6e-7);
        EXPECT_NEAR(wiebeProgress(0.9 / whole, a, 2.0), ninety, 6e-7);
    }
}

TEST(Wiebe, PeakRateStandsWhereTheTableHasIt) {
    EXPECT_NEAR(wiebeRate(0.510873, 5.0, 2.0), 2.009960, 2e-6);
    EXPECT_NEAR(wiebeRate(0.458690, 6.908, 2.0), 2.238626, 2e-6);
    EXPECT_LT(wiebeRate(0.458690 + 0.01, 6.908, 2.0), 2.238626);
    EXPECT_LT(wiebeRate(0.458690 - 0.01, 6.908, 2.0), 2.238626);
}

// Woschni in the form of Heywood, §12.4.3 and SAE 670931 (from memory), evaluated by hand for a
// bore of 0.1 m.
TEST(WallHeat, WoschniCoefficientOfThreePhases) {
    EXPECT_NEAR(woschniCoefficient(0.1, 2000e3, 800.0, woschniClosed * 10.0), 697.734, 1e-3);
    const double combustion = woschniClosed * 10.0 + woschniCombustion * 1e-3 * 350.0 /
                                                         (100e3 * 1.1e-3) * (6000e3 - 3000e3);
    EXPECT_NEAR(combustion, 53.727273, 1e-6);
    EXPECT_NEAR(woschniCoefficient(0.1, 6000e3, 2200.0, combustion), 1912.326, 1e-3);
    EXPECT_NEAR(woschniCoefficient(0.1, 120e3, 700.0, woschniExchange * 10.0), 175.610, 1e-3);
}

// Hohenberg, SAE 790825 (from memory), evaluated by hand.
TEST(WallHeat, HohenbergCoefficient) {
    EXPECT_NEAR(hohenbergCoefficient(1e-4, 60e5, 2200.0, 10.0), 1927.610, 1e-3);
    EXPECT_NEAR(hohenbergCoefficient(5e-4, 20e5, 800.0, 10.0), 1089.224, 1e-3);
}

// A polytropic compression gives its own index back, within the clip.
TEST(WallHeat, MotoredIndexIsThatOfTheCompression) {
    for (const double n : {1.27, 1.33, 1.40}) {
        EXPECT_NEAR(motoredIndex(1e5, 5e-4, 1e5 * std::pow(8.0, n), 5e-4 / 8.0), n, 1e-12);
    }
    EXPECT_EQ(motoredIndex(1e5, 5e-4, 1e5 * std::pow(8.0, 1.6), 5e-4 / 8.0), 1.42);
    EXPECT_EQ(motoredIndex(1e5, 5e-4, 1e5 * std::pow(8.0, 1.1), 5e-4 / 8.0), 1.25);
    EXPECT_EQ(motoredIndex(1e5, 5e-4, 2e5, 4.9e-4), 1.35);
}

// Douaud & Eyzat, SAE 780080; Heywood, eq. 9.59 (from memory): τ = 17.68 ms·(ON/100)^3.402·
// p^−1.7·exp(3800/T); by hand for ON 95, 40 atm, 800 K.
TEST(Knock, IgnitionDelayByHand) {
    const double byHand = 17.68e-3 * 0.839877 * 1.890158e-3 * 115.584285;
    EXPECT_NEAR(ignitionDelay(95.0, 40.0 * 101325.0, 800.0) / byHand, 1.0, 1e-5);
    EXPECT_NEAR(ignitionDelay(100.0, 101325.0, 3800.0), 0.01768 * std::exp(1.0), 1e-12);
}

// Blower work with constant heat: c_p·T₁·(π^((γ−1)/γ) − 1)/η [any thermodynamics text].
TEST(Supply, BlowerWorkOfAGasOfConstantHeat) {
    const GasGroup gas = GasGroup::constant(287.0, 1004.5);
    Supply supply;
    supply.ambientPressure = 1e5;
    supply.ambientTemperature = 300.0;
    supply.isentropicEfficiency = 0.7;
    const double gamma = 1004.5 / (1004.5 - 287.0);
    for (const double ratio : {1.1, 1.5, 2.5}) {
        const double work = 1004.5 * 300.0 * (std::pow(ratio, (gamma - 1.0) / gamma) - 1.0) / 0.7;
        const Compression compression = compress(supply, gas, ratio * 1e5);
        EXPECT_NEAR(compression.work / work, 1.0, 1e-12);
        EXPECT_NEAR(compression.outletTemperature, 300.0 + work / 1004.5, 1e-9);
    }
    EXPECT_EQ(compress(supply, gas, 0.9e5).work, 0.0);
    EXPECT_EQ(compress(supply, gas, 0.9e5).outletTemperature, 300.0);
}

// 0.85 · 1.1684 kg/m³ · 0.5 l · 2 · 50/s at the standard state 1.000 bar, 298.15 K.
TEST(Supply, BlowerFlowByHand) {
    Supply supply;
    supply.displacement = 0.5e-3;
    supply.driveRatio = 2.0;
    supply.volumetricEfficiency = 0.85;
    const double density = 1e5 / (dryAir().gasConstant() * 298.15);
    EXPECT_NEAR(density, 1.1684, 2e-4);
    EXPECT_NEAR(blowerFlow(supply, dryAir(), 2.0 * 3.14159265358979 * 50.0),
                0.85 * density * 0.5e-3 * 2.0 * 50.0, 1e-12);
}

} // namespace
} // namespace lobewright::gas
