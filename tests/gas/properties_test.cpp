#include "core/gas/models/fuel.h"
#include "core/gas/models/orifice.h"
#include "core/gas/properties/properties.h"

#include <gtest/gtest.h>

namespace lobewright::gas {
namespace {

// c_p is the slope of h: central difference, away from where the ranges meet.
TEST(GasGroup, HeatIsTheSlopeOfEnthalpy) {
    const WorkingGas gas = workingGas(Fuel::petrol);
    for (const GasGroup* group : {&gas.air, &gas.products}) {
        for (double t = 250.0; t < 3500.0; t += 133.0) {
            const double slope = (group->enthalpy(t + 0.01) - group->enthalpy(t - 0.01)) / 0.02;
            EXPECT_NEAR(slope / group->heat(t), 1.0, 1e-7) << t;
        }
    }
}

TEST(GasGroup, RangesMeetAtTheBreak) {
    const WorkingGas gas = workingGas(Fuel::methane);
    for (const GasGroup* group : {&gas.air, &gas.products}) {
        const double below = std::nextafter(fitBreak, 0.0);
        EXPECT_NEAR(group->enthalpy(below), group->enthalpy(fitBreak),
                    1e-9 * group->enthalpy(fitBreak));
        EXPECT_NEAR(group->heat(below) / group->heat(fitBreak), 1.0, 1e-5);
    }
}

TEST(GasGroup, EnthalpyIsZeroAtTheReference) {
    for (const Species species : allSpecies) {
        EXPECT_NEAR(molarEnthalpy(species, referenceTemperature), 0.0, 1e-9);
    }
    EXPECT_EQ(GasGroup::constant(287.0, 1005.0).enthalpy(referenceTemperature), 0.0);
}

// A mixture weighs its parts by mole.
TEST(GasGroup, MixtureIsTheSumOfItsParts) {
    const Portion portions[] = {{Species::nitrogen, 3.0}, {Species::water, 2.0}};
    const GasGroup mixture = GasGroup::mixture(portions);
    const double mass = 3.0 * molarMass(Species::nitrogen) + 2.0 * molarMass(Species::water);
    for (const double t : {400.0, 999.0, 1700.0}) {
        EXPECT_NEAR(mixture.heat(t),
                    (3.0 * molarHeat(Species::nitrogen, t) + 2.0 * molarHeat(Species::water, t)) /
                        mass,
                    1e-9 * mixture.heat(t));
    }
}

// Odd about equal pressures and smooth where the laminar law takes over.
TEST(FlowFunctionShape, TurnsRoundSmoothly) {
    for (const double drop : {1e-8, 5e-7, 1e-5, 1e-2}) {
        EXPECT_NEAR(flowFunction(1.0 / (1.0 - drop), 1.4).value,
                    -flowFunction(1.0 - drop, 1.4).value, 1e-12 + 1e-3 * laminarDrop);
    }
    const double inside = flowFunction(1.0 - laminarDrop * (1.0 - 1e-9), 1.4).value;
    const double outside = flowFunction(1.0 - laminarDrop * (1.0 + 1e-9), 1.4).value;
    EXPECT_NEAR(inside / outside, 1.0, 1e-6);
    EXPECT_EQ(flowFunction(1.0, 1.4).value, 0.0);
}

// The slope that the implicit method uses is the slope: central difference.
TEST(FlowFunctionShape, SlopeIsTheDerivative) {
    for (const double ratio : {0.3, 0.6, 0.9, 0.999, 1.0 - 3e-7, 1.0 + 3e-7, 1.05, 1.5}) {
        const double step = 1e-9;
        const double difference =
            (flowFunction(ratio + step, 1.35).value - flowFunction(ratio - step, 1.35).value) /
            (2.0 * step);
        EXPECT_NEAR(flowFunction(ratio, 1.35).slope(), difference,
                    1e-5 * std::fabs(difference) + 1e-6);
    }
}

TEST(GasPair, IsBothGasesSideBySide) {
    const WorkingGas gas = workingGas(Fuel::ethanol);
    const GasPair pair(gas.air, gas.products);
    for (const double t : {250.0, 700.0, 999.9, 1000.0, 2400.0, 3900.0}) {
        EXPECT_DOUBLE_EQ(pair.at(t).heat[0], gas.air.heat(t));
        EXPECT_DOUBLE_EQ(pair.at(t).heat[1], gas.products.heat(t));
        EXPECT_DOUBLE_EQ(pair.at(t).enthalpy[0], gas.air.enthalpy(t));
        EXPECT_DOUBLE_EQ(pair.at(t).enthalpy[1], gas.products.enthalpy(t));
    }
}

} // namespace
} // namespace lobewright::gas
