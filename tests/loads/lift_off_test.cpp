#include "core/loads/lift_off.h"
#include "core/loads/loads.h"
#include "core/units.h"
#include "tests/machines.h"
#include "tests/traces.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::loads {
namespace {

using units::degree;
using units::pi;

const Samples even = Samples::LinSpaced(720, 0.0, 2 * pi * 719 / 720);

Friction ringless() {
    Friction f;
    f.rings.clear();
    return f;
}

// Harmonic crest: y'' = −S·N²/2. Under a constant pressure the piston leaves its track when
// m·ω²·S·N²/2 = (p − p_under)·A.
TEST(LiftOff, OfAHarmonicTrackUnderConstantPressureIsAtTheCrest) {
    const auto pair = machines::pair(machines::pumpMechanism(), machines::wave(2, 0.036));
    const traces::FunctionTrace trace([](double) { return 4e5; }, {0.0, 1.0, 2.0});
    const Friction f = ringless();
    const Loads loads = solveLoads({pair, f, 100.0, 1e5, even, &trace});
    const double area = pi * 0.032 * 0.032;
    for (const End end : bothEnds) {
        const double m = end == End::inlet ? 0.62 : 0.66;
        const double expected = std::sqrt(3e5 * area / (m * 0.036 * 4 / 2));
        ASSERT_TRUE(loads.liftOffFired[end].omega);
        EXPECT_NEAR(*loads.liftOffFired[end].omega, expected, 1e-9 * expected);
        EXPECT_NEAR(std::cos(2 * pair.trackAngle(end, loads.liftOffFired[end].theta)), -1.0, 1e-6);
    }
    EXPECT_FALSE(loads.liftOffMotored);
}

TEST(LiftOff, SpeedPutsTheContactForceAtZero) {
    auto m = machines::pumpMechanism();
    m.closedTrack = true;
    const auto pair = machines::pair(m, machines::pumpTrack());
    traces::BurnAtIdc cycle{pair};
    cycle.outer = 3e5;
    const auto trace = cycle.trace();
    Friction f;
    f.rings.resize(1);
    f.ringHydrodynamic = 0.0;
    f.ringCriticalDuty = 1e9; // Coulomb: the ring force does not depend on speed
    const Loads slow = solveLoads({pair, f, 50.0, 1e5, even, &trace, nullptr, cycle.breaks()});
    for (const End end : bothEnds) {
        ASSERT_TRUE(slow.liftOffFired[end].omega);
        const double omega = *slow.liftOffFired[end].omega;
        const Loads at = solveLoads({pair, f, omega, 1e5, even, &trace, nullptr, cycle.breaks()});
        const double scale = at.highestContactForce[end].value;
        EXPECT_NEAR(at.lowestContactForce[end].value, 0.0, 1e-3 * scale);
        const Loads above =
            solveLoads({pair, f, 1.05 * omega, 1e5, even, &trace, nullptr, cycle.breaks()});
        EXPECT_LT(above.lowestContactForce[end].value, -1e-3 * scale);
        const Loads below =
            solveLoads({pair, f, 0.95 * omega, 1e5, even, &trace, nullptr, cycle.breaks()});
        EXPECT_GT(below.lowestContactForce[end].value, 0.0);
    }
}

TEST(LiftOff, IsZeroWhereNothingPressesThePistonOn) {
    const auto pair = machines::pair(machines::pumpMechanism(), machines::pumpTrack());
    const Friction f = ringless();
    const Loads loads = solveLoads({pair, f, 100.0, 1e5, even});
    EXPECT_EQ(loads.liftOffFired.inlet.omega, 0.0);
}

TEST(LiftOff, MotoredTraceIsJudgedToo) {
    const auto pair = machines::pair(machines::pumpMechanism(), machines::pumpTrack());
    traces::BurnAtIdc fired{pair};
    fired.outer = 2e5;
    traces::BurnAtIdc motored = fired;
    motored.burn = 1.0;
    motored.expansion = motored.compression;
    const auto firedTrace = fired.trace(), motoredTrace = motored.trace();
    const Friction f = ringless();
    const Loads loads = solveLoads({pair, f, 100.0, 1e5, even, &firedTrace, &motoredTrace});
    ASSERT_TRUE(loads.liftOffMotored);
    EXPECT_GT(*loads.liftOffMotored->inlet.omega, 0.0);
    EXPECT_LE(*loads.liftOffMotored->inlet.omega, *loads.liftOffFired.inlet.omega);
}

// Inertia alone on a closed harmonic track: the load changes flank where y'' = 0, half-way up.
TEST(FlankChange, OfInertiaAloneIsAtThePointsOfInflexion) {
    auto m = machines::pumpMechanism();
    m.closedTrack = true;
    m.exhaustLead = 0.0;
    const auto pair = machines::pair(m, machines::wave(2, 0.036));
    const Friction f = ringless();
    const Loads loads = solveLoads({pair, f, 200.0, 1e5, even});
    ASSERT_EQ(loads.flankChanges.size(), 4u);
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_NEAR(loads.flankChanges[i].theta, (i < 2 ? 45.0 : 135.0) * degree, 1e-10);
        EXPECT_EQ(loads.flankChanges[i].leavesPush, i < 2);
    }
}

TEST(FlankChange, DoesNotHappenUnderAHighLoad) {
    const auto pair = machines::pair(machines::pumpMechanism(), machines::pumpTrack());
    const traces::FunctionTrace trace([](double) { return 50e5; }, {0.0, 1.0, 2.0});
    const Friction f = ringless();
    EXPECT_TRUE(solveLoads({pair, f, 100.0, 1e5, even, &trace}).flankChanges.empty());
}

} // namespace
} // namespace lobewright::loads
