#include "core/editing/design_edits.h"
#include "core/editing/knot_edits.h"
#include "core/editing/lift_grips.h"
#include "core/motion/lift_curve.h"
#include "tests/editing/edited.h"

#include <gtest/gtest.h>

namespace lobewright::editing::testing {
namespace {

TEST(LiftGrips, MovingABoundKeepsThePatternLength) {
    const design::Design design = sample();
    const auto grips = liftGrips(design, End::inlet);
    ASSERT_EQ(grips.size(), segments(design).size() - 1);
    const design::Design next =
        applied(design, moveGrip(design, grips[0], grips[0].angle - 3.0, grips[0].value));
    EXPECT_NEAR(degreesTogether(next), degreesTogether(design), 1e-9);
    EXPECT_NEAR(segments(next)[0].span, segments(design)[0].span - 3.0 * units::degree, 1e-9);
}

TEST(LiftGrips, BoundStopsBeforeItsNeighbours) {
    const design::Design design = sample();
    const auto grip = liftGrips(design, End::inlet).front();
    const design::Design next = applied(design, moveGrip(design, grip, 500.0, grip.value));
    EXPECT_GT(segments(next)[1].span, 0.0);
    EXPECT_TRUE(design::validate(next).empty());
}

TEST(LiftGrips, TheLiftOfAKnotFollowsTheAccelerationAskedOfIt) {
    design::Design design = sample();
    design = applied(design, *shapeEdit(design, End::inlet, TrackShape::knots));
    const auto grip = liftGrips(design, End::inlet, LiftGrip::Curve::acceleration).at(3);
    const double asked = 0.9 * grip.value;
    const design::Design next = applied(design, moveGrip(design, grip, grip.angle, asked));
    const auto curve = motion::LiftCurve::make(next.tracks.inlet);
    ASSERT_TRUE(curve);
    constexpr double unit = units::millimetre / units::degree / units::degree;
    // The lift is rounded to a tenth of a micrometre.
    EXPECT_NEAR(curve->at(grip.angle * units::degree).y2 / unit, asked, 1e-3 * std::abs(asked));
}

TEST(LiftGrips, AMoveOfOneDragKeepsItsKeyAndSaysWhatMoves) {
    const design::Design design = sample();
    const auto grip = liftGrips(design, End::inlet).front();
    const Change first = moveGrip(design, grip, grip.angle + 1.0, grip.value);
    const Change second = moveGrip(design, grip, grip.angle + 2.0, grip.value);
    EXPECT_FALSE(first.mergeKey.empty());
    EXPECT_EQ(first.mergeKey, second.mergeKey);
    EXPECT_EQ(first.text.english(),
              std::string("Move boundary 1 (") + trackName(design, End::inlet).text + ")");
}

} // namespace
} // namespace lobewright::editing::testing
