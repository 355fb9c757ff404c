#include "core/balance/speed_fluctuation.h"
#include "core/loads/orders.h"
#include "core/units.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::balance {
namespace {

using units::pi;

TEST(EnergyFluctuation, IsFastestWhereTheExcessEnds) {
    const Samples theta = loads::evenAngles(720);
    const EnergyFluctuation found = energyFluctuation(100.0 + 50.0 * theta.sin());
    EXPECT_NEAR(found.fastestAngle, pi, 1e-6);
    EXPECT_NEAR(found.slowestAngle, 0.0, 1e-6);
    EXPECT_NEAR(found.meanTorque, 100.0, 1e-12);
}

// A step of torque: area of a rectangle, whatever the samples do at its edges.
TEST(EnergyFluctuation, OfAStepIsItsArea) {
    const Samples theta = loads::evenAngles(720);
    const Samples torque = (theta < pi).select(Samples::Constant(720, 80.0), -80.0);
    EXPECT_NEAR(energyFluctuation(torque).energy, 80.0 * pi, 0.005 * 80.0 * pi);
}

// Torque that begins below its mean: the energy falls first. ∫sin over half a turn is 2.
TEST(EnergyFluctuation, CountsFromTheLowestEnergyNotFromTheFirst) {
    const Samples theta = loads::evenAngles(720);
    EXPECT_NEAR(energyFluctuation(-50.0 * theta.sin()).energy, 100.0, 1e-3);
    EXPECT_NEAR(energyFluctuation(50.0 * theta.sin()).energy, 100.0, 1e-3);
}

TEST(EnergyFluctuation, OfASteadyTorqueIsNothing) {
    EXPECT_NEAR(energyFluctuation(Samples::Constant(8, 33.0)).energy, 0.0, 1e-12);
}

TEST(Fluctuation, AndInertiaAreInverse) {
    const double inertia = inertiaFor(120.0, 0.02, 180.0);
    EXPECT_NEAR(fluctuation(120.0, inertia, 180.0), 0.02, 1e-15);
}

} // namespace
} // namespace lobewright::balance
