#include "core/mechanism/extremes.h"
#include "core/units.h"
#include "tests/machines.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace lobewright::mechanism {
namespace {

using units::pi;

PeriodicFunction cosines(double second) {
    PeriodicFunction f;
    f.value = [second](double x) { return std::cos(x) + second * std::cos(2.0 * x); };
    f.slope = [second](double x) { return -std::sin(x) - 2.0 * second * std::sin(2.0 * x); };
    f.period = 2.0 * pi;
    return f;
}

TEST(Extremes, CosineHasOneMaximumAndOneMinimum) {
    const auto found = extremes(cosines(0.0));
    ASSERT_EQ(found.size(), 2u);
    EXPECT_NEAR(found[0].begin, 0.0, 1e-15);
    EXPECT_TRUE(found[0].maximum);
    EXPECT_NEAR(found[1].begin, pi, 1e-14);
    EXPECT_FALSE(found[1].maximum);
}

// cos x + cos 2x turns where sin x = 0 and where cos x = −1/4: exact angles.
TEST(Extremes, TwoHarmonicsTurnFourTimesAtTheirExactAngles) {
    const auto found = extremes(cosines(1.0));
    ASSERT_EQ(found.size(), 4u);
    const double side = std::acos(-0.25);
    const double expected[] = {0.0, side, pi, 2.0 * pi - side};
    for (std::size_t i = 0; i < 4; ++i) {
        EXPECT_NEAR(found[i].begin, expected[i], 1e-14) << i;
        EXPECT_EQ(found[i].maximum, i % 2 == 0) << i;
    }
}

// A sine is steepest at 0, where the search begins.
TEST(Extremes, SineSteepestAtTheStartTurnsAQuarterOnEitherSide) {
    PeriodicFunction f;
    f.value = [](double x) { return std::sin(x); };
    f.slope = [](double x) { return std::cos(x); };
    f.period = 2.0 * pi;
    const auto found = extremes(f);
    ASSERT_EQ(found.size(), 2u);
    EXPECT_NEAR(found[0].begin, 0.5 * pi, 1e-14);
    EXPECT_TRUE(found[0].maximum);
    EXPECT_NEAR(found[1].begin, 1.5 * pi, 1e-14);
    EXPECT_FALSE(found[1].maximum);
}

// Level on [5.9, 2π + 0.3], with a lobe (1 − cos)² above the rest of the period: the bounds are
// those that were given, not the nodes next to them.
TEST(Extremes, LevelOverTheEndOfThePeriodKeepsItsBounds) {
    constexpr double begin = 5.9, end = 2.0 * pi + 0.3, first = end - 2.0 * pi;
    const auto phase = [](double x) {
        const double turn = std::fmod(x, 2.0 * pi) + (x < 0.0 ? 2.0 * pi : 0.0);
        return std::clamp((turn - first) / (begin - first), 0.0, 1.0) * 2.0 * pi;
    };
    PeriodicFunction f;
    f.value = [phase](double x) { return std::pow(1.0 - std::cos(phase(x)), 2); };
    f.slope = [phase](double x) {
        return 2.0 * (1.0 - std::cos(phase(x))) * std::sin(phase(x)) * 2.0 * pi / (begin - first);
    };
    f.period = 2.0 * pi;
    f.levels = {{begin, end}};
    const auto found = extremes(f);
    ASSERT_EQ(found.size(), 2u);
    EXPECT_TRUE(found[0].maximum);
    EXPECT_NEAR(found[0].begin, 0.5 * (first + begin), 1e-13);
    EXPECT_FALSE(found[1].maximum);
    EXPECT_NEAR(found[1].begin, begin, 1e-14);
    EXPECT_NEAR(found[1].end, end, 1e-14);
}

TEST(Extremes, ConstantHasNone) {
    PeriodicFunction f;
    f.value = [](double) { return 3.0; };
    f.slope = [](double) { return 0.0; };
    f.period = 1.0;
    EXPECT_TRUE(extremes(f).empty());
}

TEST(Extremes, DwellsAreTakenFromTheirBounds) {
    for (const motion::Law law : motion::allLaws) {
        const auto curve = machines::curve(machines::lobe(2, 0.036, 82.0, 4.0, 78.0, 16.0, law));
        const auto found = extremes(curve);
        ASSERT_EQ(found.size(), 2u);
        EXPECT_TRUE(found[0].maximum);
        EXPECT_NEAR(found[0].begin, 82.0 * units::degree, 1e-14);
        EXPECT_NEAR(found[0].end, 86.0 * units::degree, 1e-14);
        EXPECT_FALSE(found[1].maximum);
        EXPECT_NEAR(found[1].begin, 164.0 * units::degree, 1e-14);
        EXPECT_NEAR(found[1].end, 180.0 * units::degree, 1e-14);
    }
}

// A rise in two stages with a rest between them does not turn there.
TEST(Extremes, RestInsideARiseIsNoExtreme) {
    using motion::Law, motion::SegmentKind;
    const double d = units::degree;
    const auto curve = machines::curve(
        {1, motion::SegmentShape{0.04,
                                 {{SegmentKind::rise, 90 * d, Law::cycloidal, 0.02},
                                  {SegmentKind::dwell, 30 * d, Law::harmonic, {}},
                                  {SegmentKind::rise, 90 * d, Law::cycloidal, 0.04},
                                  {SegmentKind::fall, 150 * d, Law::cycloidal, {}}}}});
    const auto found = extremes(curve);
    ASSERT_EQ(found.size(), 2u);
    EXPECT_NEAR(found[0].begin, 0.0, 1e-14);
    EXPECT_NEAR(found[1].begin, 210 * d, 1e-14);
}

TEST(Extremes, WrappedAnglesStayBelowThePeriod) {
    EXPECT_DOUBLE_EQ(wrapped(7.0, 3.0), 1.0);
    EXPECT_DOUBLE_EQ(wrapped(-1.0, 3.0), 2.0);
    EXPECT_EQ(wrapped(-1e-17, 3.0), 0.0);
    EXPECT_EQ(wrapped(3.0 - 1e-15, 3.0), 0.0);
}

} // namespace
} // namespace lobewright::mechanism
