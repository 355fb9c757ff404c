#include "core/loads/loads.h"
#include "core/loads/orders.h"
#include "core/units.h"
#include "tests/machines.h"
#include "tests/traces.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::loads {
namespace {

using units::pi;

const Samples turn = evenAngles(720);

TEST(Loads, WithoutGasThePistonsCarryInertiaAndRingsOnly) {
    const auto pair = machines::pair(machines::pumpMechanism(), machines::pumpTrack());
    const Friction f;
    const Loads loads = solveLoads({pair, f, 188.5, 1.3e5, turn});
    EXPECT_EQ(loads.piston.inlet.gasForce.abs().maxCoeff(), 0.0);
    EXPECT_NEAR(loads.work.gas, 0.0, 1e-9);
    EXPECT_FALSE(loads.totalTorque.isNaN().any());
}

// A parabolic law jumps from +4 to −4·h·ω²/β² in mid-rise: the least demand stands on the right of
// the jump when falling, but on its left when rising towards it backwards; both must be found.
TEST(Loads, ExtremesSeeBothSidesOfAJump) {
    auto m = machines::pumpMechanism();
    m.closedTrack = true;
    m.exhaustLead = 0.0;
    const auto pair = machines::pair(m, machines::wave(2, 0.036, motion::Law::parabolic));
    Friction f;
    f.rings.clear();
    f.guide = 0.0;
    Samples few(3); // none of them near a jump
    few << 0.1, 0.3, 3.0;
    const Loads loads = solveLoads({pair, f, 200.0, 1e5, few});
    const double half = pi / 2; // span
    const double inertia = 0.62 * 200.0 * 200.0 * 4.0 * 0.036 / (half * half);
    const double slope = 2.0 * 0.036 / half;
    const double n = inertia / (0.095 / std::hypot(0.095, slope));
    EXPECT_NEAR(loads.highestContactForce.inlet.value, n, 1e-9 * n);
    EXPECT_NEAR(loads.lowestContactForce.inlet.value, -n, 1e-9 * n);
}

TEST(Loads, JamMarginIsOneWhereNothingPushesBack) {
    const auto pair = machines::pair(machines::pumpMechanism(), machines::wave(2, 0.036));
    Friction f;
    f.rings.clear();
    const traces::FunctionTrace trace([](double) { return 2e5; }, {0.0, 1.0, 2.0});
    const Loads loads = solveLoads({pair, f, 1.0, 1e5, turn, &trace});
    // Harmonic: steepest slope S·N/2 = S, load against the motion on the rise.
    const double alpha = std::atan(0.036 / 0.095);
    const double guide = effectiveGuideFriction(f, 0.016, 0.064);
    EXPECT_NEAR(loads.jamMargin.inlet.value, std::cos(alpha) - guide * std::sin(alpha), 1e-9);
    EXPECT_NEAR(loads.jamMargin.inlet.theta, pi / 4, 1e-9);
    const Loads still = solveLoads({pair, f, 1e-9, 2e5, turn, &trace});
    EXPECT_LE(still.jamMargin.inlet.value, 1.0);
}

TEST(Loads, PressureOfEveryCylinderLagsByItsAngle) {
    auto m = machines::pumpMechanism();
    m.cylinderAngles = {{0.2, 1.0, 4.0}};
    const auto pair = machines::pair(m, machines::pumpTrack());
    const traces::BurnAtIdc cycle{pair};
    const auto trace = cycle.trace();
    const Friction f;
    const Loads loads = solveLoads({pair, f, 100.0, 1e5, turn, &trace, nullptr, cycle.breaks()});
    EXPECT_NEAR(loads.meanTorque, loads.totalTorque.mean(), 2e-3 * loads.meanTorque);
    EXPECT_GT(loads.meanTorque, 0.0);
}

} // namespace
} // namespace lobewright::loads
