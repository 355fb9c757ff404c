// Jamming of a translating follower in its guide, F/L = 1/(cos α − μ·(2A + B)/B·sin α), overhang A,
// guide length B [Rothbart, Cam Design Handbook, eq. 6.7 and 6.8]. Table evaluated from that
// formula to the digits given.
#include "core/loads/piston.h"
#include "core/units.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::loads {
namespace {

constexpr double radius = 0.1;

/// A massless, ringless piston that rises against a load at contact angle alpha.
PistonLoads rising(double alphaDegrees, double mu, double overhang, double length) {
    PistonSetup setup;
    setup.omega = 1.0;
    setup.bore = 0.05;
    setup.stroke = 0.04;
    setup.pitchRadius = radius;
    setup.roller = {0.015, 0.012, {}, 0.0};
    setup.friction.rings.clear();
    setup.friction.guide = mu;
    setup.friction.guideOverhang = overhang;
    setup.friction.guideLength = length;
    const Samples slope = Samples::Constant(1, radius * std::tan(alphaDegrees * units::degree));
    const Samples none = Samples::Zero(1);
    return pistonLoads(setup, motion::LiftSamples{none, slope, none, none},
                       Samples::Constant(1, 1e5));
}

double forceRatio(double alpha, double mu, double overhang, double length) {
    const PistonLoads loads = rising(alpha, mu, overhang, length);
    return loads.contactForce(0) / loads.gasForce(0);
}

TEST(JammingHandbook, ForceRatioFollowsThePublishedFormula) {
    const struct {
        double alpha, equalMild, equalRough, halfMild;
    } rows[] = {{20, 1.194620, 1.272615, 1.147725},
                {30, 1.396598, 1.560001, 1.305440},
                {45, 2.020305, 2.571297, 1.767767},
                {60, 4.163329, 9.067123, 3.060023}};
    for (const auto& row : rows) {
        EXPECT_NEAR(forceRatio(row.alpha, 0.10, 0.04, 0.04), row.equalMild, 5e-7) << row.alpha;
        EXPECT_NEAR(forceRatio(row.alpha, 0.15, 0.04, 0.04), row.equalRough, 5e-7) << row.alpha;
        EXPECT_NEAR(forceRatio(row.alpha, 0.10, 0.02, 0.04), row.halfMild, 5e-7) << row.alpha;
    }
}

TEST(JammingHandbook, BracketVanishesAtTheLockAngle) {
    const struct {
        double mu, overhang, angle;
    } rows[] = {{0.10, 0.04, 73.300756}, {0.15, 0.04, 65.772255}, {0.25, 0.04, 53.130102},
                {0.10, 0.02, 78.690068}, {0.15, 0.02, 73.300756}, {0.25, 0.02, 63.434949}};
    for (const auto& row : rows) {
        EXPECT_NEAR(rising(row.angle, row.mu, row.overhang, 0.04).guideBracket(0), 0.0, 2e-8);
        EXPECT_GT(rising(row.angle - 0.01, row.mu, row.overhang, 0.04).guideBracket(0), 0.0);
        EXPECT_LT(rising(row.angle + 0.01, row.mu, row.overhang, 0.04).guideBracket(0), 0.0);
    }
}

// Published values: 2 (Rothbart, Cam Design Handbook, page read).
// Printed in the handbook for A = B: 73° at μ = 0.10 and 66° at μ = 0.15.
TEST(JammingHandbook, PrintedLockAnglesAreMetToTheDegree) {
    EXPECT_NEAR(rising(73.0, 0.10, 0.04, 0.04).guideBracket(0), 0.0, 0.01);
    EXPECT_NEAR(rising(66.0, 0.15, 0.04, 0.04).guideBracket(0), 0.0, 0.01);
}

// T = F·ds/dθ: 10 kN on a harmonic track of 40 mm and two lobes peaks at 400 N·m, frictionless
// [same handbook, torque of a cam].
TEST(JammingHandbook, TorqueOfAHarmonicTrackPeaksAtForceTimesSlope) {
    PistonSetup setup;
    setup.omega = 1.0;
    setup.bore = 2.0 / std::sqrt(units::pi) * 0.1; // 0.01 m²
    setup.stroke = 0.04;
    setup.pitchRadius = radius;
    setup.roller = {0.015, 0.012, {}, 0.0};
    setup.friction.rings.clear();
    setup.friction.guide = setup.friction.rolling = setup.friction.rollerBearing =
        setup.friction.slip = 0.0;
    const Samples slope = Samples::Constant(1, -0.04);
    const Samples none = Samples::Zero(1);
    const PistonLoads loads =
        pistonLoads(setup, motion::LiftSamples{none, slope, none, none}, Samples::Constant(1, 1e6));
    EXPECT_NEAR(loads.torque(0), 400.0, 1e-9);
}

} // namespace
} // namespace lobewright::loads
