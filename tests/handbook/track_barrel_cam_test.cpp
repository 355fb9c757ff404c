#include "core/track/speeds.h"
#include "core/track/track.h"
#include "core/track/undercut.h"
#include "core/units.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <cmath>

using namespace lobewright;
using namespace lobewright::track;
using motion::LiftCurve;

// Barrel cam with a translating follower and a harmonic wave of lift h, N waves a turn, evaluated
// at radius ρ [Cam Design Handbook, §6.4; closed forms beside each check]. Lengths in mm.

namespace {

constexpr double millimetre = units::millimetre;

LiftCurve wave(double h, int lobes) {
    return LiftCurve::make({lobes, motion::HarmonicShape{{{1, -0.5 * h * millimetre, 0.0}}}})
        .value();
}

struct Cam {
    double h;
    int lobes;
    double rho;
    double pressureAngle; ///< [deg]
    double crestRadius;   ///< [mm]
};

std::string camName(const Cam& cam) {
    return fmt::format("Lift{:.0f}Lobes{}Radius{:.0f}", cam.h, cam.lobes, cam.rho);
}

void PrintTo(const Cam& cam, std::ostream* out) {
    *out << camName(cam);
}

class BarrelCam : public testing::TestWithParam<Cam> {};

motion::LiftSamples single(const motion::Lift& lift) {
    return {Samples::Constant(1, lift.y), Samples::Constant(1, lift.y1),
            Samples::Constant(1, lift.y2), Samples::Constant(1, lift.y3)};
}

} // namespace

// tan α_max = h·N/(2ρ); crest radius of the developed pitch curve 2ρ²/(h·N²).
TEST_P(BarrelCam, HasTheTabulatedPressureAngleAndCrest) {
    const Cam& cam = GetParam();
    const LiftCurve curve = wave(cam.h, cam.lobes);
    const double rho = cam.rho * millimetre;
    const double steepest = curve.period() / 4.0, crest = curve.period() / 2.0;
    EXPECT_NEAR(contactAngle(curve.at(steepest), rho) / units::degree, cam.pressureAngle, 5e-7);
    EXPECT_NEAR(1.0 / pitchCurvature(curve.at(crest), rho) / millimetre, cam.crestRadius, 5e-7);
}
INSTANTIATE_TEST_SUITE_P(Handbook, BarrelCam,
                         testing::Values(Cam{40.0, 2, 100.0, 21.801409, 125.0},
                                         Cam{40.0, 2, 50.0, 38.659808, 31.25},
                                         Cam{60.0, 2, 60.0, 45.0, 30.0},
                                         Cam{40.0, 3, 80.0, 36.869898, 35.555556}),
                         [](const auto& each) { return camName(each.param); });

// h 40, N 2, ρ 50, roller 15: area of surface per angle and width on both flanks, from the cross
// product of the two surface derivatives by differences; good to one unit of the last digit. The
// flank on the side of growing lift is the pull flank.
TEST(BarrelCamSurface, HasTheTabulatedAreaFactors) {
    const LiftCurve curve = wave(40.0, 2);
    const auto factor = [&](double angle, Flank flank) {
        return areaFactor(single(curve.at(angle)), 50.0 * millimetre, 15.0 * millimetre, flank)(0) /
               millimetre;
    };
    const double half = units::pi / 2.0;
    const double table[5][3] = {{0.0, 26.000000, 74.000000},
                                {0.5, 50.186123, 68.033013},
                                {0.785, 62.648299, 62.671607},
                                {1.2, 69.636058, 42.240633},
                                {half, 74.000000, 26.000000}};
    for (const auto& [angle, pull, push] : table) {
        EXPECT_NEAR(factor(angle, Flank::pull), pull, 1e-6) << angle;
        EXPECT_NEAR(factor(angle, Flank::push), push, 1e-6) << angle;
    }
}

// h 40, N 2, ρ 100, roller 15: the crest of the track itself is rounder by the roller radius on
// the convex side and flatter on the concave one: 110 and 140 mm. Relative curvature of two
// touching cylinders is 1/r ± 1/radius [Johnson 1985, §4.2].
TEST(BarrelCamSurface, HasCrestRadiiOffsetByTheRoller) {
    const LiftCurve curve = wave(40.0, 2);
    const motion::Lift crest = curve.at(curve.period() / 2.0);
    const double r = 15.0, rho = 100.0;
    const auto trackRadius = [&](Flank flank) {
        const double relative =
            relativeRadius(crest, rho * millimetre, r * millimetre, flank) / millimetre;
        return 1.0 / (1.0 / relative - 1.0 / r);
    };
    EXPECT_NEAR(trackRadius(Flank::push), 110.0, 1e-9);
    EXPECT_NEAR(-trackRadius(Flank::pull), 140.0, 1e-9);
}

// Roller turns per cam turn, √(ρ² + y'²)/r: 6.6667 at the crest, 7.1802 at the steepest place.
TEST(RollerSpin, IsPathOverRollerRadius) {
    const LiftCurve curve = wave(40.0, 2);
    const auto ratio = [&](double angle) {
        return rollerSpin(single(curve.at(angle)), 0.100, 0.015, 1.0)(0);
    };
    EXPECT_NEAR(ratio(0.0), 6.6667, 5e-5);
    EXPECT_NEAR(ratio(curve.period() / 4.0), 7.1802, 5e-5);
}

// Equality of roller radius and crest radius is a cusp [Cam Design Handbook, §6.4.2]; at the crest
// the planar rule is exact, there y' = 0.
TEST(Undercut, BeginsAtTheCrestRadius) {
    const LiftCurve curve = wave(40.0, 2);
    const motion::Lift crest = curve.at(curve.period() / 2.0);
    EXPECT_NEAR(rollerRadiusLimit(crest, 0.050, Flank::push), 0.03125, 1e-12);
    EXPECT_NEAR(relativeRadius(crest, 0.050, 0.03125, Flank::push), 0.0, 1e-15);
}
