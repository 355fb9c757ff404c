#include "core/contact/elliptic_contact.h"
#include "core/units.h"

#include <boost/math/special_functions/ellint_1.hpp>
#include <boost/math/special_functions/ellint_2.hpp>
#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::contact {
namespace {

using units::pi;

// Against the Legendre form with Boost's complete integrals, well away from k = 1.
TEST(Ellipticity, SolvesTheEquationOfTheRatioOfRadii) {
    for (const double ratio : {1.5, 3.0, 12.0, 80.0, 1e3, 1e5}) {
        const Ellipticity found = ellipticity(ratio);
        const double e = std::sqrt(1.0 - 1.0 / (found.k * found.k));
        const double first = boost::math::ellint_1(e), second = boost::math::ellint_2(e);
        const double lost = 1e-15 * found.k * found.k; // digits that 1 − e² loses
        EXPECT_NEAR(found.first, first, 1e-13 + lost);
        EXPECT_NEAR(found.second, second, 1e-13 + lost);
        EXPECT_NEAR((found.k * found.k * second - first) / (first - second), ratio, 1e-10 * ratio);
    }
}

TEST(Ellipticity, OfEqualRadiiIsACircle) {
    const Ellipticity circle = ellipticity(1.0);
    EXPECT_NEAR(circle.k, 1.0, 1e-15);
    EXPECT_NEAR(circle.first, pi / 2, 1e-15);
    EXPECT_NEAR(circle.second, pi / 2, 1e-15);
    EXPECT_NEAR(ellipticity(1.0 + 1e-12).k, 1.0, 1e-11);
}

TEST(Ellipticity, DoesNotDependOnTheGuess) {
    const double k = ellipticity(20.0).k;
    for (const double guess : {1.001, 3.0, 7.0, 50.0, 1e4}) {
        EXPECT_NEAR(ellipticity(20.0, guess).k, k, 1e-13 * k) << guess;
    }
}

TEST(PointContact, PressureOverTheEllipseIsTheLoad) {
    const PointContact c = pointContact(5000.0, 0.013, 0.5, 113e9);
    EXPECT_NEAR(2.0 / 3.0 * pi * c.longSemiAxis * c.shortSemiAxis * c.peakPressure, 5000.0, 1e-8);
}

TEST(PointContact, DoesNotCareWhichRadiusIsNamedFirst) {
    const PointContact a = pointContact(1000.0, 0.02, 0.3, 113e9);
    const PointContact b = pointContact(1000.0, 0.3, 0.02, 113e9);
    EXPECT_DOUBLE_EQ(a.peakPressure, b.peakPressure);
}

// p₀ ∝ N^(1/3).
TEST(PointContact, PeakPressureGrowsWithCubeRootOfForce) {
    const double once = pointContact(100.0, 0.02, 0.3, 113e9).peakPressure;
    EXPECT_NEAR(pointContact(800.0, 0.02, 0.3, 113e9).peakPressure, 2 * once, 1e-6);
    EXPECT_EQ(pointContact(0.0, 0.02, 0.3, 113e9).peakPressure, 0.0);
}

// As the crown grows the middle of the ellipse becomes a line contact: p₀ = E*·b/(2R), b from the
// line load there, π/2·p₀·b.
TEST(PointContact, BecomesALineContactAsTheCrownGrows) {
    const double r = 0.0134, modulus = 113e9;
    double previous = 1.0;
    for (const double crown : {1.0, 100.0, 1e4, 1e6}) {
        const PointContact c = pointContact(5000.0, r, crown, modulus);
        const double lineLoad = 0.5 * pi * c.peakPressure * c.shortSemiAxis;
        const double miss =
            std::abs(linePeakPressure(lineLoad, 1.0, r, modulus) / c.peakPressure - 1.0);
        EXPECT_LT(miss, previous);
        previous = miss;
    }
    EXPECT_LT(previous, 1e-4);
}

// Surface stresses in the middle [Johnson 1985, eq. 3.64]: −2ν − (1 − 2ν)·b/(a + b) along the long
// axis, −2ν − (1 − 2ν)·a/(a + b) along the short one.
TEST(AxisStresses, AtTheSurfaceFollowTheClosedForm) {
    for (const double k : {1.0, 1.3, 3.0, 10.0}) {
        for (const double nu : {0.0, 0.3, 0.5}) {
            const AxisStresses s = axisStresses(k, nu, 0.0);
            EXPECT_NEAR(s.normal, -1.0, 1e-12);
            EXPECT_NEAR(s.along, -2 * nu - (1 - 2 * nu) / (k + 1), 1e-11) << k;
            EXPECT_NEAR(s.across, -2 * nu - (1 - 2 * nu) * k / (k + 1), 1e-11) << k;
        }
    }
}

// Below a long ellipse: −(1 + 2ζ²)/√(1 + ζ²) + 2ζ across, −1/√(1 + ζ²) normal, ν times their sum
// along [Johnson 1985, eq. 4.45].
TEST(AxisStresses, BelowALongEllipseAreThoseOfALine) {
    for (const double z : {0.2, 0.7862, 1.5}) {
        const double root = std::sqrt(1 + z * z);
        const double across = -(1 + 2 * z * z) / root + 2 * z, normal = -1 / root;
        const AxisStresses s = axisStresses(2000.0, 0.3, z);
        EXPECT_NEAR(s.across, across, 1e-3);
        EXPECT_NEAR(s.normal, normal, 1e-3);
        EXPECT_NEAR(s.along, 0.3 * (across + normal), 2e-3);
    }
}

// The general form meets the closed form of a circle.
TEST(AxisStresses, AreContinuousAtTheCircle) {
    for (const double z : {0.1, 0.5, 2.0}) {
        const AxisStresses circle = axisStresses(1.0, 0.3, z);
        const AxisStresses near = axisStresses(1.0 + 1e-4, 0.3, z);
        EXPECT_NEAR(near.along, circle.along, 1e-4);
        EXPECT_NEAR(near.across, circle.across, 1e-4);
        EXPECT_NEAR(near.normal, circle.normal, 1e-4);
    }
}

TEST(EllipticDeepestShear, LiesBetweenCircleAndLine) {
    const DeepestShear line = lineDeepestShear();
    double depth = 0.47;
    for (const double k : {1.0, 1.5, 3.0, 10.0, 100.0}) {
        const DeepestShear s = ellipticDeepestShear(k, 0.3);
        EXPECT_GT(s.depth, depth);
        EXPECT_LT(s.depth, line.depth + 1e-6);
        depth = s.depth;
    }
    const DeepestShear slender = ellipticDeepestShear(1e6, 0.3);
    EXPECT_NEAR(slender.ratio, line.ratio, 1e-5);
    EXPECT_NEAR(slender.depth, line.depth, 1e-3);
}

} // namespace
} // namespace lobewright::contact
