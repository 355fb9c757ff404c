#include "core/loads/lever_arm.h"
#include "core/loads/orders.h"
#include "core/loads/torque.h"
#include "core/units.h"
#include "tests/machines.h"
#include "tests/traces.h"

#include <gtest/gtest.h>

#include <cmath>
#include <numeric>

namespace lobewright::loads {
namespace {

using units::degree;
using units::pi;

const Samples turn = evenAngles(720);

mechanism::OpposedPair machine(int lobes, int cylinders) {
    auto m = machines::pumpMechanism();
    m.cylinders = cylinders;
    m.exhaustLead = 0.0;
    return machines::pair(m, machines::wave(lobes, 0.03, motion::Law::cycloidal));
}

TEST(Ripple, IsAbsentWhereTheMeanIsBelowOnePercentOfThePeak) {
    EXPECT_NEAR(*torqueRipple(300.0, -100.0, 100.0), 4.0, 1e-15);
    EXPECT_NEAR(*torqueRipple(300.0, -100.0, -100.0), 4.0, 1e-15);
    EXPECT_TRUE(torqueRipple(300.0, -100.0, 3.01));
    EXPECT_FALSE(torqueRipple(300.0, -100.0, 2.99));
    EXPECT_FALSE(torqueRipple(0.0, 0.0, 0.0));
}

// M cylinders 2π/M apart on N lobes fire every 2π/lcm(N, M), gcd(N, M) at a time.
TEST(Firing, IntervalIsATurnOverTheLeastCommonMultiple) {
    for (int lobes = 1; lobes <= 4; ++lobes) {
        for (int cylinders = 1; cylinders <= 8; ++cylinders) {
            const Firing f = firing(machine(lobes, cylinders));
            const int together = std::gcd(lobes, cylinders);
            const int different = lobes * cylinders / together;
            EXPECT_EQ(f.angles.size(), static_cast<std::size_t>(lobes * cylinders));
            EXPECT_EQ(f.together, together) << lobes << " " << cylinders;
            EXPECT_NEAR(f.shortestInterval, 2 * pi / different, 1e-9);
            EXPECT_NEAR(f.longestInterval, 2 * pi / different, 1e-9);
        }
    }
}

TEST(Firing, UnevenRingHasUnevenIntervals) {
    auto m = machines::pumpMechanism();
    m.cylinders = 2;
    m.cylinderAngles = {{0.0, 100 * degree}};
    const Firing f = firing(machines::pair(m, machines::wave(1, 0.03)));
    EXPECT_NEAR(f.shortestInterval, 100 * degree, 1e-10);
    EXPECT_NEAR(f.longestInterval, 260 * degree, 1e-10);
}

TEST(TotalTorque, IsTheSumOfShiftedCylinders) {
    const auto pair = machines::pair(machines::pumpMechanism(), machines::pumpTrack());
    const traces::BurnAtIdc cycle{pair};
    const auto trace = cycle.trace();
    const Friction f;
    const Loads loads = solveLoads({pair, f, 188.5, 1e5, turn, &trace, nullptr, cycle.breaks()});
    for (Eigen::Index j = 0; j < 720; ++j) {
        double sum = -loads.shaftBearingLoss(j);
        for (const Eigen::Index behind : {0, 240, 480}) {
            sum += loads.cylinderTorque((j - behind + 720) % 720);
        }
        EXPECT_NEAR(loads.totalTorque(j), sum, 1e-8 * loads.highestTorque) << j;
    }
    EXPECT_NEAR((loads.totalTorque - loads.evenTotalTorque).abs().maxCoeff(), 0.0,
                1e-9 * loads.highestTorque);
    EXPECT_NEAR(loads.torqueOrders(0), loads.evenTotalTorque.mean(), 1e-9 * loads.highestTorque);
    EXPECT_NEAR(loads.peakToPeakTorque, loads.highestTorque - loads.lowestTorque, 1e-12);
}

TEST(TotalTorque, HasTheExtremesOfTheTurnWhateverAnglesAreAsked) {
    const auto pair = machines::pair(machines::pumpMechanism(), machines::pumpTrack());
    const traces::BurnAtIdc cycle{pair};
    const auto trace = cycle.trace();
    const Friction f;
    const Loads whole = solveLoads({pair, f, 188.5, 1e5, turn, &trace, nullptr, cycle.breaks()});
    for (const double angle : {0.2, 0.4, 0.9}) {
        const Samples asked = Samples::Constant(1, angle);
        const Loads one = solveLoads({pair, f, 188.5, 1e5, asked, &trace, nullptr, cycle.breaks()});
        EXPECT_NEAR(one.highestTorque, whole.highestTorque, 0.01 * whole.peakToPeakTorque);
        EXPECT_NEAR(one.lowestTorque, whole.lowestTorque, 0.01 * whole.peakToPeakTorque);
    }
}

// Order q of an even ring of M equal cylinders on N lobes: only common multiples of N and M are
// left (sum of M phases e^(−iq2πk/M)).
TEST(TorqueOrders, SurviveOnlyAtCommonMultiplesOfLobesAndCylinders) {
    Friction f; // shaft bearings carry the vector sum of all cylinders; left out here
    f.shaftBearing = 0.0;
    for (int lobes = 1; lobes <= 4; ++lobes) {
        for (int cylinders = 1; cylinders <= 8; ++cylinders) {
            const auto pair = machine(lobes, cylinders);
            const traces::FunctionTrace trace(
                [lobes](double t) { return 3e5 + 2e5 * std::exp(std::sin(lobes * t)); },
                mechanism::cylinderAngles(pair.mechanism()));
            const Loads loads = solveLoads({pair, f, 100.0, 1e5, turn, &trace});
            const int common = std::lcm(lobes, cylinders);
            // Ring friction jumps at reversals; where the ring does not fall on the samples the
            // jumps alias.
            const double scale =
                (720 % cylinders == 0 ? 1e-11 : 2e-3) * loads.torqueOrders.maxCoeff();
            for (int q = 1; q < loads.torqueOrders.size(); ++q) {
                if (q % common != 0) {
                    EXPECT_LT(loads.torqueOrders(q), scale)
                        << lobes << " " << cylinders << " " << q;
                }
            }
            EXPECT_GT(loads.torqueOrders(common), 0.0);
        }
    }
}

TEST(LeverArm, OfATrackIsTheNegativeSlope) {
    Samples slope(2);
    slope << 0.02, -0.03;
    EXPECT_EQ(leverArm(slope)(1), 0.03);
}

// Work is force times way on either lever: ∫(lever)dτ over the outward stroke is the stroke.
TEST(LeverArm, OfACrankIntegratesToTheStroke) {
    const Samples tau = Samples::LinSpaced(2001, 0.0, pi);
    const Samples lever = crankLeverArm(0.08, 0.28, tau);
    const double sum = (lever.head(2000) + lever.tail(2000)).sum() * 0.5 * pi / 2000;
    EXPECT_NEAR(sum, 0.08, 1e-6);
}

} // namespace
} // namespace lobewright::loads
