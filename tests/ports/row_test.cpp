#include "core/ports/events.h"
#include "core/units.h"

#include <boost/math/quadrature/tanh_sinh.hpp>
#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::ports {
namespace {

using units::pi;

Row row(double height, double width, double radius) {
    return {0.012, height, width, 1, radius, 0.7};
}

TEST(PortArea, OfASharpPortIsChordTimesDepth) {
    const Row sharp = row(0.010, 0.012, 0.0);
    EXPECT_DOUBLE_EQ(openArea(sharp, 0.004), 0.012 * 0.004);
    EXPECT_DOUBLE_EQ(openArea(sharp, 0.010), 0.012 * 0.010);
    EXPECT_DOUBLE_EQ(openChord(sharp, 0.004), 0.012);
}

// A square with corners of half its side is a circle: circular segments,
// r²·acos(1 − u/r) − (r − u)·√(2ru − u²) [Bronshtein, Handbook of Mathematics, circle].
TEST(PortArea, OfARoundPortIsTheCircularSegment) {
    const double r = 0.005;
    const Row round = row(2 * r, 2 * r, r);
    for (const double u : {0.0005, 0.002, 0.005, 0.0071, 0.0099, 0.01}) {
        const double segment =
            r * r * std::acos(1.0 - u / r) - (r - u) * std::sqrt(std::max(2 * r * u - u * u, 0.0));
        EXPECT_NEAR(openArea(round, u), segment, 1e-14 * r) << u;
    }
}

TEST(PortArea, SegmentIsExactToRounding) {
    for (int i = 0; i <= 1000; ++i) {
        const long double t = i / 1000.0L;
        const long double exact = acosl(1 - t) - (1 - t) * sqrtl(2 * t - t * t);
        EXPECT_NEAR(segmentArea(static_cast<double>(t)), static_cast<double>(exact), 3e-15) << i;
    }
}

TEST(PortArea, IsTheIntegralOfTheChord) {
    const Row r = row(0.0075, 0.012, 0.0015);
    boost::math::quadrature::tanh_sinh<double> integrate;
    const auto chord = [&](double u) { return openChord(r, u); };
    for (const double u : {0.0007, 0.0015}) {
        EXPECT_NEAR(openArea(r, u), integrate.integrate(chord, 0.0, u), 1e-16);
    }
    const double corner = integrate.integrate(chord, 0.0, 0.0015);
    EXPECT_NEAR(openArea(r, 0.004), corner + 0.0025 * 0.012, 1e-16);
    EXPECT_NEAR(openArea(r, 0.0075), 2 * corner + 0.0045 * 0.012, 1e-16);
}

TEST(PortArea, IsClippedToTheHeight) {
    const Row r = row(0.0075, 0.012, 0.0015);
    EXPECT_EQ(openArea(r, -0.001), 0.0);
    EXPECT_EQ(openArea(r, 0.1), openArea(r, 0.0075));
    EXPECT_NEAR(openArea(r, 0.1), 0.0075 * 0.012 - (4 - pi) * 0.0015 * 0.0015, 1e-18);
    EXPECT_EQ(openChord(r, -0.001), 0.0);
    EXPECT_EQ(openChord(r, 0.0076), 0.0);
}

// Six ports of 25.88 mm chord on a 100 mm bore cover 30° each: webs of 30°, chord 25.88 mm.
TEST(Webs, AreChordsOfWhatThePortsLeave) {
    Rows rows;
    const double chord = 0.1 * std::sin(15.0 * units::degree);
    rows.inlet = {{0.01, 0.01, chord, 6, 0.0, 0.7}};
    rows.exhaust = {{0.01, 0.01, chord, 12, 0.0, 0.7}};
    const auto found = webs(rows, 0.1);
    ASSERT_EQ(found.size(), 2u);
    EXPECT_NEAR(found[0].chord, chord, 1e-15);
    EXPECT_EQ(found[1].end, End::exhaust);
    EXPECT_NEAR(found[1].chord, 0.0, 1e-15);
}

TEST(Webs, RowsThatOverlapAxiallyShareTheBore) {
    Rows rows;
    rows.inlet = {{0.020, 0.005, 0.01, 8, 0.0, 0.7},
                  {0.010, 0.010, 0.01, 8, 0.0, 0.7},
                  {0.012, 0.004, 0.01, 6, 0.0, 0.7}};
    const auto found = webs(rows, 0.1);
    ASSERT_EQ(found.size(), 2u);
    EXPECT_EQ(found[0].row, 1);
    EXPECT_EQ(found[1].row, 0);
    const double each = 2.0 * std::asin(0.1);
    EXPECT_NEAR(found[0].chord, 0.1 * std::sin((2 * pi - 14 * each) / 28), 1e-15);
    EXPECT_NEAR(found[1].chord, 0.1 * std::sin((2 * pi - 8 * each) / 16), 1e-15);
}

TEST(Webs, TooManyPortsLeaveANegativeWeb) {
    Rows rows;
    rows.exhaust = {{0.01, 0.01, 0.03, 12, 0.0, 0.7}};
    EXPECT_LT(webs(rows, 0.1)[0].chord, 0.0);
}

} // namespace
} // namespace lobewright::ports
