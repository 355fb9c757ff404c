#include "core/balance/balance.h"
#include "core/loads/orders.h"
#include "core/units.h"
#include "tests/machines.h"
#include "tests/traces.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::balance {
namespace {

TEST(Balance, GathersShakingAndSpeedFluctuation) {
    const auto pair = machines::pair(machines::pumpMechanism(), machines::pumpTrack());
    const traces::BurnAtIdc cycle{pair};
    const auto trace = cycle.trace();
    const loads::Friction friction;
    const Samples theta = loads::evenAngles(720);
    const auto loads =
        loads::solveLoads({pair, friction, 188.5, 1e5, theta, &trace, nullptr, cycle.breaks()});
    const Balance found =
        solveBalance({unitBalance(pair, theta), loads.evenTotalTorque, 188.5, 0.4});
    EXPECT_NEAR(found.highestForce, found.shaking.force.abs().maxCoeff(), 1e-9);
    EXPECT_GE(found.highestMoment, found.shaking.momentX.abs().maxCoeff() - 1e-9);
    EXPECT_NEAR(found.pistonForce, loads.piston.exhaust.inertiaForce.abs().maxCoeff(),
                0.01 * found.pistonForce);
    ASSERT_TRUE(found.fluctuation);
    EXPECT_NEAR(*found.fluctuation, found.energy.energy / (0.4 * 188.5 * 188.5), 1e-12);
    EXPECT_NEAR(found.speeds->highest - found.speeds->lowest, *found.fluctuation * 188.5, 1e-9);
    EXPECT_FALSE(
        solveBalance({unitBalance(pair, theta), loads.evenTotalTorque, 188.5, 0.0}).fluctuation);
}

} // namespace
} // namespace lobewright::balance
