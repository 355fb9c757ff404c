#include "core/motion/strokes.h"
#include "patterns.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

using namespace lobewright;
using namespace lobewright::motion;
using namespace lobewright::motion::test;

namespace {

class StrokesOfALaw : public testing::TestWithParam<Law> {};

void expectRelative(double found, double exact, double share) {
    if (std::isinf(exact)) {
        EXPECT_TRUE(std::isinf(found));
    } else {
        EXPECT_NEAR(found, exact, share * std::abs(exact));
    }
}

} // namespace

INSTANTIATE_TEST_SUITE_P(Laws, StrokesOfALaw, testing::ValuesIn(allLaws), lawName);

// A rise of one segment has the factors that handbooks print for its law.
TEST_P(StrokesOfALaw, HaveTheFactorsOfTheLaw) {
    const LiftCurve curve = LiftCurve::make(dwelling(GetParam())).value();
    const std::vector<Stroke> found = strokes(curve);
    ASSERT_EQ(found.size(), 2U);
    EXPECT_TRUE(found[0].rises);
    EXPECT_NEAR(found[0].span, 82.0 * units::degree, 1e-12);
    EXPECT_NEAR(found[1].span, 78.0 * units::degree, 1e-12);
    const CharacteristicFactors exact = characteristicFactors(GetParam());
    for (const Stroke& stroke : found) {
        EXPECT_NEAR(stroke.lift, 0.036, 1e-15);
        expectRelative(stroke.factors.velocity, exact.velocity, 1e-10);
        expectRelative(stroke.factors.acceleration, exact.acceleration, 1e-10);
        expectRelative(stroke.factors.jerk, exact.jerk, 1e-9);
        EXPECT_NEAR(stroke.factors.jerkInside, exact.jerkInside, 1e-7);
        expectRelative(stroke.factors.torque, exact.torque, 1e-10);
    }
}

// One sine wave is two harmonic strokes that blend into each other: C_v = π/2, C_a = π²/2, and a
// finite C_j = π³/2 [VDI 2143-1].
TEST(Strokes, OfASineWaveAreHarmonicWithoutJumps) {
    const LiftCurve curve = LiftCurve::make({2, HarmonicShape{{{1, 0.009, -0.015}}}}).value();
    const std::vector<Stroke> found = strokes(curve);
    ASSERT_EQ(found.size(), 2U);
    for (const Stroke& stroke : found) {
        EXPECT_NEAR(stroke.span, 0.5 * units::pi, 1e-8);
        EXPECT_NEAR(stroke.factors.velocity, units::pi / 2.0, 1e-7);
        EXPECT_NEAR(stroke.factors.acceleration, units::pi * units::pi / 2.0, 1e-7);
        EXPECT_NEAR(stroke.factors.jerk, std::pow(units::pi, 3) / 2.0, 1e-6);
    }
    EXPECT_NE(found[0].rises, found[1].rises);
}

// Seven lifts on the way from 0 to 40 mm and back: what a stroke climbs, not where it ends.
TEST(Strokes, HaveTheLiftThatTheyClimb) {
    const LiftCurve curve = LiftCurve::make(unequal(Law::cycloidal)).value();
    std::vector<double> lifts;
    for (const Stroke& stroke : strokes(curve))
        lifts.push_back(stroke.lift);
    std::sort(lifts.begin(), lifts.end());
    const std::vector<double> climbed = {0.020, 0.025, 0.025, 0.030, 0.040, 0.040};
    ASSERT_EQ(lifts.size(), climbed.size());
    for (std::size_t i = 0; i < climbed.size(); ++i)
        EXPECT_NEAR(lifts[i], climbed[i], 1e-12);
}

// A smooth rise into a return that begins with a jump: at the crest both have it.
TEST(Strokes, HaveTheJumpOfTheirEnd) {
    for (int span = 40; span <= 86; ++span) { // whatever rounding does to the angle of the crest
        const Segment up = rise(span, Law::cycloidal), down = fall(82, Law::parabolic);
        for (const auto& segments :
             {std::vector{up, down, dwell(98 - span)}, std::vector{dwell(98 - span), up, down}}) {
            const LiftCurve curve = LiftCurve::make({2, SegmentShape{0.036, segments}}).value();
            for (const Stroke& stroke : strokes(curve))
                EXPECT_TRUE(std::isinf(stroke.factors.jerk)) << span << " " << stroke.rises;
        }
    }
}

// Peaks of unequal free-form strokes are those of a fine scan, over the end of the period too.
TEST(Strokes, OfAFreeFormLobeAreThePeaksOfAFineScan) {
    const double d = units::degree;
    const LiftCurve curve = LiftCurve::make({1, KnotShape{{{20 * d, 0.030, {}},
                                                           {80 * d, 0.0, {}},
                                                           {150 * d, 0.036, {}},
                                                           {220 * d, 0.004, {}},
                                                           {330 * d, 0.024, {}}}}})
                                .value();
    const std::vector<Stroke> found = strokes(curve);
    ASSERT_EQ(found.size(), 2U * static_cast<unsigned>(curve.risesPerPattern()));
    double together = 0.0;
    for (const Stroke& stroke : found) {
        together += stroke.span;
        Lift most{};
        for (int i = 0; i <= 20000; ++i) {
            const Lift here = curve.at(stroke.begin + stroke.span * i / 20000.0);
            most.y1 = std::max(most.y1, std::abs(here.y1));
            most.y2 = std::max(most.y2, std::abs(here.y2));
            most.y3 = std::max(most.y3, std::abs(here.y3));
        }
        EXPECT_NEAR(stroke.velocity, most.y1, 1e-6 * most.y1);
        EXPECT_NEAR(stroke.acceleration, most.y2, 1e-5 * most.y2);
        EXPECT_NEAR(stroke.jerk, most.y3, 1e-4 * most.y3);
        EXPECT_FALSE(std::isinf(stroke.factors.jerk));
    }
    EXPECT_NEAR(together, curve.period(), 1e-9) << "no dwells: strokes fill the turn";
}
