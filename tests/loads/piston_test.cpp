#include "core/loads/piston.h"
#include "core/units.h"
#include "tests/machines.h"

#include <boost/math/quadrature/tanh_sinh.hpp>
#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::loads {
namespace {

using units::pi;

PistonSetup setup() {
    PistonSetup s;
    s.omega = 188.5;
    s.mass = 0.62;
    s.bore = 0.064;
    s.stroke = 0.036;
    s.pitchRadius = 0.095;
    s.underPistonPressure = 1e5;
    s.roller = {0.016, 0.014, {}, 0.0005};
    return s;
}

Samples one(double value) {
    return Samples::Constant(1, value);
}

motion::LiftSamples lift(double y, double y1, double y2) {
    return {one(y), one(y1), one(y2), one(0.0)};
}

struct Case {
    const char* name;
    double y1, y2, pressure;
    bool closed;
};
void PrintTo(const Case& each, std::ostream* out) {
    *out << each.name;
}

class OnePiston : public testing::TestWithParam<Case> {};

// The balance of forces written out again in scalars: rings with p = q + c·Δp and duty
// D = η·|ẏ|/(h·p), guide μ·(1 + 2·overhang/length), roller losses on the shaft.
TEST_P(OnePiston, ObeysTheBalanceOfForces) {
    const Case c = GetParam();
    PistonSetup s = setup();
    s.closedTrack = c.closed;
    const PistonLoads found = pistonLoads(s, lift(0.01, c.y1, c.y2), one(c.pressure));

    const double gauge = c.pressure - 1e5, speed = std::abs(s.omega * c.y1);
    const double sign = c.y1 > 0 ? 1.0 : c.y1 < 0 ? -1.0 : 0.0;
    double rings = 0.0;
    for (const PistonRing& ring : s.friction.rings) {
        const double p = ring.tensionPressure + ring.gasFactor * std::max(gauge, 0.0);
        const double duty = 0.008 * speed / (ring.height * p);
        const double f = 2.5 * std::sqrt(duty) + 0.12 * std::max(0.0, 1.0 - duty / 1e-4);
        rings += pi * 0.064 * ring.height * f * p;
    }
    const double demand =
        0.62 * s.omega * s.omega * c.y2 + gauge * pi * 0.032 * 0.032 + rings * sign;
    const double alpha = std::atan(c.y1 / 0.095);
    const double guide = 0.08 * (1.0 + 2.0 * 0.016 / 0.064);
    const double way = demand > 0 ? 1.0 : -1.0;
    double n = demand / (std::cos(alpha) - guide * std::abs(std::sin(alpha)) * way * sign);
    EXPECT_NEAR(found.demandedForce(0), n, 1e-11 * std::abs(n));
    if (!c.closed) {
        n = std::max(n, 0.0);
    }
    const double tolerance = 1e-11 * std::abs(demand);
    EXPECT_NEAR(found.axialDemand(0), demand, tolerance);
    EXPECT_NEAR(found.contactForce(0), n, tolerance);
    EXPECT_NEAR(found.pressureAngle(0), alpha, 1e-15);
    EXPECT_NEAR(found.sideForce(0), n * std::sin(alpha), tolerance);
    const double path = std::hypot(0.095, c.y1);
    const double rolling = 0.001 * std::abs(n) * path;
    const double bearing = 0.5 * 0.0025 * std::abs(n) * 0.016 * path / 0.016;
    EXPECT_NEAR(found.rollingLoss(0), rolling, tolerance);
    EXPECT_NEAR(found.rollerBearingLoss(0), bearing, tolerance);
    EXPECT_NEAR(found.torque(0),
                -n * 0.095 * std::sin(alpha) - rolling - bearing - found.slipLoss(0), tolerance);
    EXPECT_NEAR(found.guideLoss(0), guide * std::abs(n * std::sin(alpha) * c.y1), tolerance);
    EXPECT_NEAR(found.ringLoss(0), rings * std::abs(c.y1), tolerance);
    EXPECT_NEAR(axialDemand(s, {0.01, c.y1, c.y2, 0.0}, c.pressure), demand, tolerance);
}

INSTANTIATE_TEST_SUITE_P(Places, OnePiston,
                         testing::Values(Case{"RisingLoaded", 0.02, 0.05, 5e5, false},
                                         Case{"FallingLoaded", -0.03, -0.04, 40e5, false},
                                         Case{"RestingLoaded", 0.0, -0.06, 60e5, true},
                                         Case{"FallingLightlyLoaded", -0.03, -0.05, 1.1e5, false},
                                         Case{"PulledWhileRising", 0.03, -0.06, 1.2e5, true},
                                         Case{"PulledWhileFalling", -0.03, -0.06, 1.2e5, true},
                                         Case{"Vacuum", 0.01, 0.0, 0.4e5, true}),
                         [](const auto& place) { return std::string(place.param.name); });

TEST(PistonLoads, OpenTrackNeverPulls) {
    const PistonSetup s = setup();
    const PistonLoads open = pistonLoads(s, lift(0.03, 0.02, -0.2), one(1e5));
    EXPECT_LT(open.demandedForce(0), 0.0);
    EXPECT_EQ(open.contactForce(0), 0.0);
    EXPECT_EQ(open.torque(0), 0.0);
}

TEST(PistonLoads, FrictionHasNoSignInADwell) {
    const PistonLoads rest = pistonLoads(setup(), lift(0.036, 1e-18, 0.0), one(20e5));
    EXPECT_EQ(rest.ringFriction(0), 0.0);
    EXPECT_EQ(rest.guideFriction(0), 0.0);
    EXPECT_DOUBLE_EQ(rest.contactForce(0), 19e5 * pi * 0.032 * 0.032);
}

// Beyond the lock angle the guide holds whatever the load: no force is returned, the bracket says
// so.
TEST(PistonLoads, JammedPistonHasNoForce) {
    PistonSetup s = setup();
    s.friction.guide = 0.5;
    const PistonLoads jam = pistonLoads(s, lift(0.01, 0.2, 0.0), one(20e5));
    EXPECT_LT(jam.guideBracket(0), 0.0);
    EXPECT_EQ(jam.contactForce(0), 0.0);
    EXPECT_TRUE(std::isfinite(jam.torque(0)));
}

TEST(PistonLoads, GasLoadAloneIsTheSameOnOpenAndClosedTracks) {
    PistonSetup s = setup();
    s.mass = 0.0;
    PistonSetup closed = s;
    closed.closedTrack = true;
    const Samples y1 = Samples::LinSpaced(41, -0.05, 0.05);
    const motion::LiftSamples lifts{y1, y1, y1, y1};
    const Samples p = Samples::LinSpaced(41, 3e5, 50e5);
    const PistonLoads a = pistonLoads(s, lifts, p), b = pistonLoads(closed, lifts, p);
    EXPECT_EQ((a.contactForce - b.contactForce).abs().maxCoeff(), 0.0);
    EXPECT_EQ((a.torque - b.torque).abs().maxCoeff(), 0.0);
}

TEST(RingFriction, VanishesWithoutTensionAndGas) {
    Friction f;
    for (PistonRing& ring : f.rings) {
        ring.tensionPressure = 0.0;
    }
    EXPECT_EQ(ringFriction(f, 0.064, one(5.0), one(-1e5))(0), 0.0);
}

TEST(MotionSign, IsZeroAtRoundingLevel) {
    Samples y1(4);
    y1 << 1e-15, -1e-15, 1e-9, -1e-9;
    const Samples sign = motionSign(y1, Samples::Zero(4), 0.036);
    EXPECT_EQ(sign(0), 0.0);
    EXPECT_EQ(sign(1), 0.0);
    EXPECT_EQ(sign(2), 1.0);
    EXPECT_EQ(sign(3), -1.0);
}

// A harmonic lift stands 1 µm from its end where 1 − cos x = 2 µm/S.
TEST(MotionSign, IsZeroWithinAMicrometreOfTheStop) {
    const double edge = std::acos(1.0 - 2e-6 / 0.036);
    Samples x(3);
    x << 0.99 * edge, 1.01 * edge, -1.01 * edge;
    const Samples sign = motionSign(0.018 * x.sin(), 0.018 * x.cos(), 0.036);
    EXPECT_EQ(sign(0), 0.0);
    EXPECT_EQ(sign(1), 1.0);
    EXPECT_EQ(sign(2), -1.0);
}

// On a flat track the slip is |ρ − R|: its mean is L/4. Elsewhere against tanh-sinh quadrature.
TEST(MeanSlipArm, IsTheMeanOverTheWidthOfTheRoller) {
    const track::Roller roller{0.016, 0.014, {}, 0.0005};
    EXPECT_NEAR(meanSlipArm(roller, 0.095, one(0.0))(0), 0.013 / 4.0, 1e-15);
    boost::math::quadrature::tanh_sinh<double> integrate;
    for (const double y1 : {0.002, 0.01, 0.03, 0.08}) {
        const auto slip = [&](double rho) {
            const double d = std::hypot(rho, y1);
            return std::hypot(d - std::hypot(0.095, y1), 0.016 * y1 / d);
        };
        const double mean =
            (integrate.integrate(slip, 0.0885, 0.095) + integrate.integrate(slip, 0.095, 0.1015)) /
            0.013;
        EXPECT_NEAR(meanSlipArm(roller, 0.095, one(y1))(0), mean, 1e-3 * mean) << y1;
        EXPECT_EQ(meanSlipArm(roller, 0.095, one(y1))(0), meanSlipArm(roller, 0.095, one(-y1))(0));
    }
}

} // namespace
} // namespace lobewright::loads
