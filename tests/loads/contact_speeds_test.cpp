#include "core/loads/contact_speeds.h"
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
TEST(HighestContactSpeed, OfAHarmonicTrackUnderConstantPressureIsAtTheCrest) {
    for (const double lead : {0.0, 0.13 * degree, 5.0 * degree}) { // on a sample or between two
        auto mechanism = machines::pumpMechanism();
        mechanism.exhaustLead = lead;
        const auto pair = machines::pair(mechanism, machines::wave(2, 0.036));
        const traces::FunctionTrace trace([](double) { return 4e5; }, {0.0, 1.0, 2.0});
        const Friction f = ringless();
        const Loads loads = solveLoads({pair, f, 100.0, 1e5, even, &trace});
        const double area = pi * 0.032 * 0.032;
        for (const End end : bothEnds) {
            const double m = end == End::inlet ? 0.62 : 0.66;
            const double expected = std::sqrt(3e5 * area / (m * 0.036 * 4 / 2));
            ASSERT_TRUE(loads.contactSpeeds[end].high);
            EXPECT_NEAR(loads.contactSpeeds[end].high->omega, expected, 1e-9 * expected);
            EXPECT_NEAR(std::cos(2 * pair.trackAngle(end, loads.contactSpeeds[end].high->theta)),
                        -1.0, 1e-6);
        }
        EXPECT_FALSE(loads.contactSpeedsMotored);
    }
}

// Cycloidal: y'' is −2π·S/β² at most, three quarters up the rise, which no sample need meet.
TEST(HighestContactSpeed, OfACycloidalTrackIsFoundBetweenSamples) {
    auto mechanism = machines::pumpMechanism();
    mechanism.exhaustLead = 0.13 * degree;
    const auto pair = machines::pair(mechanism, machines::wave(2, 0.036, motion::Law::cycloidal));
    const traces::FunctionTrace trace([](double) { return 4e5; }, {0.0, 1.0, 2.0});
    const Friction f = ringless();
    const Loads loads = solveLoads({pair, f, 100.0, 1e5, even, &trace});
    const double steepest = 2 * pi * 0.036 / (0.25 * pi * pi);
    for (const End end : bothEnds) {
        const double m = end == End::inlet ? 0.62 : 0.66;
        const double expected = std::sqrt(3e5 * pi * 0.032 * 0.032 / (m * steepest));
        ASSERT_TRUE(loads.contactSpeeds[end].high);
        EXPECT_NEAR(loads.contactSpeeds[end].high->omega, expected, 1e-9 * expected);
    }
}

TEST(HighestContactSpeed, PutsTheContactForceAtZero) {
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
        ASSERT_TRUE(slow.contactSpeeds[end].high);
        const double omega = slow.contactSpeeds[end].high->omega;
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

TEST(HighestContactSpeed, IsZeroWhereNothingPressesThePistonOn) {
    const auto pair = machines::pair(machines::pumpMechanism(), machines::pumpTrack());
    const Friction f = ringless();
    const Loads loads = solveLoads({pair, f, 100.0, 1e5, even});
    EXPECT_EQ(loads.contactSpeeds.inlet.high->omega, 0.0);
}

TEST(HighestContactSpeed, MotoredTraceIsJudgedToo) {
    const auto pair = machines::pair(machines::pumpMechanism(), machines::pumpTrack());
    traces::BurnAtIdc fired{pair};
    fired.outer = 2e5;
    traces::BurnAtIdc motored = fired;
    motored.burn = 1.0;
    motored.expansion = motored.compression;
    const auto firedTrace = fired.trace(), motoredTrace = motored.trace();
    const Friction f = ringless();
    const Loads loads = solveLoads({pair, f, 100.0, 1e5, even, &firedTrace, &motoredTrace});
    ASSERT_TRUE(loads.contactSpeedsMotored);
    EXPECT_GT(loads.contactSpeedsMotored->inlet.high->omega, 0.0);
    EXPECT_LE(loads.contactSpeedsMotored->inlet.high->omega, loads.contactSpeeds.inlet.high->omega);
}

Friction coulombRing() {
    Friction f;
    f.rings.resize(1);
    f.ringHydrodynamic = 0.0;
    f.ringCriticalDuty = 1e9;
    return f;
}

/// Parabolic law: the acceleration is ±4·S/B² (Norton, Cam Design and Manufacturing Handbook).
mechanism::OpposedPair parabolic() {
    auto m = machines::pumpMechanism();
    m.exhaustLead = 0.0;
    return machines::pair(m, machines::wave(2, 0.036, motion::Law::parabolic));
}

// The pressure presses the piston on while it decelerates and is gone where it accelerates, as with
// open ports. On the way out only inertia then overcomes the ring: m·ω²·4·S/B² = π·D·h·f·q.
TEST(LowestContactSpeed, IsWhereInertiaReplacesThePressureThatRingsTake) {
    const auto pair = parabolic();
    const traces::FunctionTrace trace(
        [](double theta) {
            const double fromIdc = std::remainder(theta - 90.0 * degree, pi);
            return std::abs(fromIdc) <= 45.0 * degree + 1e-9 ? 4e5 : 1e5;
        },
        {0.0, 1.0, 2.0});
    const Friction f = coulombRing();
    const Loads loads = solveLoads({pair, f, 100.0, 1e5, even, &trace});
    const double ring =
        pi * 0.064 * f.rings[0].height * f.ringBoundary * f.rings[0].tensionPressure;
    for (const End end : bothEnds) {
        const double m = end == End::inlet ? 0.62 : 0.66;
        const double expected = std::sqrt(ring / (m * 4 * 0.036 / (pi * pi / 4)));
        ASSERT_TRUE(loads.contactSpeeds[end].low);
        EXPECT_NEAR(loads.contactSpeeds[end].low->omega, expected, 1e-6 * expected);
        EXPECT_GT(loads.contactSpeeds[end].low->shares.inertia, 0.0);
        EXPECT_GT(loads.contactSpeeds[end].high->omega, expected);
    }
    // Below that speed the force is negative, above it is not.
    const double low = loads.contactSpeeds.inlet.low->omega;
    EXPECT_LT(solveLoads({pair, f, 0.99 * low, 1e5, even, &trace}).lowestContactForce.inlet.value,
              -0.01 * ring);
    EXPECT_GE(solveLoads({pair, f, 1.01 * low, 1e5, even, &trace}).lowestContactForce.inlet.value,
              0.0);
}

TEST(LowestContactSpeed, IsNoneWhereRingsAlsoPullADeceleratingPiston) {
    const auto pair = machines::pair(machines::pumpMechanism(), machines::pumpTrack());
    const Friction f = coulombRing();
    const Loads loads = solveLoads({pair, f, 100.0, 1e5, even});
    EXPECT_FALSE(loads.contactSpeeds.inlet.low);
    EXPECT_EQ(loads.contactSpeeds.inlet.high->omega, 0.0);
}

TEST(LowestContactSpeed, IsZeroWhereThePressureAlwaysPresses) {
    const auto pair = machines::pair(machines::pumpMechanism(), machines::wave(2, 0.036));
    const traces::FunctionTrace trace([](double) { return 4e5; }, {0.0, 1.0, 2.0});
    const Friction f = ringless();
    EXPECT_EQ(solveLoads({pair, f, 100.0, 1e5, even, &trace}).contactSpeeds.inlet.low->omega, 0.0);
}

TEST(LowestContactForce, KnowsWhatPullsThere) {
    const auto pair = machines::pair(machines::pumpMechanism(), machines::wave(2, 0.036));
    const traces::FunctionTrace trace([](double) { return 2e5; }, {0.0, 1.0, 2.0});
    const Friction f = ringless();
    const Loads fast = solveLoads({pair, f, 400.0, 1e5, even, &trace});
    const auto& lowest = fast.lowestContactForce.inlet;
    EXPECT_LT(lowest.shares.inertia, 0.0);
    EXPECT_GT(lowest.shares.gas, 0.0);
    EXPECT_NEAR(lowest.shares.total(), lowest.value, 1e-2 * std::abs(lowest.value)); // α
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
