#include "core/editing/design_edits.h"
#include "core/editing/knot_edits.h"
#include "core/motion/lift_curve.h"
#include "tests/editing/edited.h"

#include <gtest/gtest.h>

namespace lobewright::editing::testing {
namespace {

/// Of the sample, turned into knots.
design::Design withKnots() {
    const design::Design design = sample();
    return applied(design, *shapeEdit(design, End::inlet, TrackShape::knots));
}

const std::vector<motion::Knot>& knots(const design::Design& design) {
    return std::get<motion::KnotShape>(design.tracks.inlet.shape).knots;
}

TEST(KnotEdits, AnAddedKnotLiesOnTheCurveAndLeavesItAlmostAsItIs) {
    const design::Design design = withKnots();
    const double between = 0.5 * (knots(design)[2].angle + knots(design)[3].angle) / units::degree;
    const auto change = addKnot(design, End::inlet, between);
    ASSERT_TRUE(change);
    const design::Design next = applied(design, *change);
    ASSERT_EQ(knots(next).size(), knots(design).size() + 1);
    EXPECT_EQ(knotAt(next, End::inlet, between), 3);
    const auto before = motion::LiftCurve::make(design.tracks.inlet);
    const auto after = motion::LiftCurve::make(next.tracks.inlet);
    ASSERT_TRUE(before && after);
    // A spline through a point of itself differs only beside it, by the fifth differences there.
    for (double phi = 0.0; phi < before->period(); phi += 0.01) {
        EXPECT_NEAR(after->at(phi).y, before->at(phi).y, 1e-3 * before->stroke());
    }
    EXPECT_FALSE(addKnot(next, End::inlet, between + 0.5 * closestKnots)) << "too close";
}

TEST(KnotEdits, TakingAnAddedKnotOutIsWhereItBegan) {
    const design::Design design = withKnots();
    const double between = 0.5 * (knots(design)[2].angle + knots(design)[3].angle) / units::degree;
    const design::Design more = applied(design, *addKnot(design, End::inlet, between));
    const auto removal = removeKnot(more, End::inlet, 3);
    ASSERT_TRUE(removal);
    EXPECT_EQ(applied(more, *removal), design);
    EXPECT_EQ(removal->text.english().substr(0, 15), "Remove knot at ");
}

TEST(KnotEdits, ThreeKnotsAreTheFewest) {
    design::Design design = withKnots();
    while (knots(design).size() > 3) {
        design = applied(design, *removeKnot(design, End::inlet, 0));
    }
    EXPECT_FALSE(removeKnot(design, End::inlet, 0));
}

TEST(KnotEdits, AFreedSlopeIsTheSplinesOwn) {
    design::Design design = withKnots();
    EXPECT_FALSE(freeSlope(design, End::inlet, 2)) << "free already";
    design = *design::withField(design, "/tracks/inlet/knots/2/slope_mm_per_deg", 0.0);
    const auto change = freeSlope(design, End::inlet, 2);
    ASSERT_TRUE(change);
    EXPECT_FALSE(knots(applied(design, *change))[2].slope);
}

TEST(KnotEdits, AnExhaustTrackOfItsOwnBeginsAsTheSame) {
    design::Design design = sample();
    design.tracks.exhaust.reset();
    EXPECT_EQ(patternEnd(design, End::exhaust), End::inlet);
    EXPECT_EQ(trackLabel(design, End::exhaust), LW_TEXT("Both tracks"));
    const auto change = ownExhaustTrack(design);
    ASSERT_TRUE(change);
    const design::Design next = applied(design, *change);
    EXPECT_EQ(next.tracks.exhaust, design.tracks.inlet);
    EXPECT_EQ(patternEnd(next, End::exhaust), End::exhaust);
    EXPECT_FALSE(ownExhaustTrack(next));
}

} // namespace
} // namespace lobewright::editing::testing
