#include "core/ports/liner_sweep.h"
#include "core/units.h"

#include <gtest/gtest.h>

namespace lobewright::ports {
namespace {

constexpr double mm = units::millimetre;
constexpr double deg = units::degree;

mechanism::Mechanism mechanismWith(double pistonLength, double axial = 0.0) {
    mechanism::Mechanism m;
    m.pitchRadius = 95.0 * mm;
    m.bore = 64.0 * mm;
    m.clearance = 7.5 * mm;
    m.piston = mechanism::PistonGeometry{pistonLength, {4.0 * mm, 8.0 * mm}};
    m.roller = {16.0 * mm, 14.0 * mm, {}, 0.5 * mm};
    m.pistonMass = {0.6, 0.6};
    m.adjuster.axial = axial;
    return m;
}

mechanism::OpposedPair pairOf(const mechanism::Mechanism& mechanism) {
    motion::SegmentShape shape;
    shape.stroke = 36.0 * mm;
    shape.segments = {{motion::SegmentKind::rise, 90.0 * deg, motion::Law::harmonic, {}},
                      {motion::SegmentKind::fall, 90.0 * deg, motion::Law::harmonic, {}}};
    const auto curve = motion::LiftCurve::make({2, shape});
    return mechanism::OpposedPair::make(mechanism, {*curve, *curve}).value();
}

Rows rowsOf(double exhaustWidth) {
    return {{{7.5 * mm, 7.5 * mm, 12.0 * mm, 10, 1.5 * mm, 0.7}},
            {{10.5 * mm, 10.5 * mm, exhaustWidth, 2, 1.5 * mm, 0.7}}};
}

// Geometry by hand: crown travels 0 … 36 mm, the rest of the piston follows at its distance.
TEST(LinerSweep, EveryPartFollowsTheCrownAtItsDistance) {
    const auto sweep = linerSweep(rowsOf(12.0 * mm), pairOf(mechanismWith(70.0 * mm))).inlet;
    EXPECT_NEAR(sweep.crown.from, 0.0, 1e-15);
    EXPECT_NEAR(sweep.crown.to, 36.0 * mm, 1e-12);
    EXPECT_NEAR(sweep.skirt.to, -34.0 * mm, 1e-12);
    ASSERT_EQ(sweep.rings.size(), 2U);
    EXPECT_NEAR(sweep.rings[1].from, -8.0 * mm, 1e-12);
    EXPECT_NEAR(sweep.rings[1].to, 28.0 * mm, 1e-12);
}

// A piston shorter than stroke − (edge − height) lets its skirt pass the outer end of the row,
// which here stands at 0: the limit is a length of 36 mm.
TEST(LinerSweep, AShortSkirtUncoversItsPortsAtInnerDeadCentre) {
    EXPECT_TRUE(linerSweep(rowsOf(12.0 * mm), pairOf(mechanismWith(36.1 * mm)))
                    .inlet.rowsUncoveredBySkirt.empty());
    const auto uncovered =
        linerSweep(rowsOf(12.0 * mm), pairOf(mechanismWith(35.9 * mm))).inlet.rowsUncoveredBySkirt;
    ASSERT_EQ(uncovered.size(), 1U);
    EXPECT_EQ(uncovered[0].row, 0);
    EXPECT_EQ(uncovered[0].side, End::inlet);
    EXPECT_NEAR(uncovered[0].depth, 0.1 * mm, 1e-9);
}

TEST(LinerSweep, AnOutwardShiftMovesTheExhaustPistonAloneOutward) {
    const auto sweeps = linerSweep(rowsOf(12.0 * mm), pairOf(mechanismWith(70.0 * mm, 2.0 * mm)));
    EXPECT_NEAR(sweeps.exhaust.crown.from, -2.0 * mm, 1e-12);
    EXPECT_NEAR(sweeps.exhaust.crown.to, 34.0 * mm, 1e-12);
    EXPECT_NEAR(sweeps.inlet.crown.to, 36.0 * mm, 1e-12);
}

TEST(LinerSweep, OnlyRingsThatPassAWidePortAreNamed) {
    // 0.4 of 64 mm is 25.6 mm.
    EXPECT_TRUE(linerSweep(rowsOf(25.5 * mm), pairOf(mechanismWith(70.0 * mm)))
                    .exhaust.ringsOverWide.empty());
    const auto wide = linerSweep(rowsOf(25.7 * mm), pairOf(mechanismWith(70.0 * mm))).exhaust;
    ASSERT_EQ(wide.ringsOverWide.size(), 2U);
    EXPECT_EQ(wide.ringsOverWide[1].ring, 1);
    auto behind = mechanismWith(70.0 * mm);
    behind.piston->ringDistances = {40.0 * mm}; // stays 4 mm outside the row
    EXPECT_TRUE(linerSweep(rowsOf(25.7 * mm), pairOf(behind)).exhaust.ringsOverWide.empty());
}

// Both pistons are innermost together, so the gap is the clearance plus the outward shift.
TEST(CrownGap, IsTheClearanceAtRestAndGrowsByTheShift) {
    const auto gap = leastCrownGap(pairOf(mechanismWith(70.0 * mm, 1.5 * mm)));
    EXPECT_NEAR(gap.asSet, 9.0 * mm, 1e-12);
    ASSERT_TRUE(gap.atRest);
    EXPECT_NEAR(*gap.atRest, 7.5 * mm, 1e-12);
}

TEST(LinerSweep, WithoutAPistonSectionOnlyTheCrownIsKnown) {
    auto bare = mechanismWith(70.0 * mm);
    bare.piston.reset();
    const auto sweep = linerSweep(rowsOf(30.0 * mm), pairOf(bare)).exhaust;
    EXPECT_NEAR(sweep.crown.to, 36.0 * mm, 1e-12);
    EXPECT_TRUE(sweep.rings.empty());
    EXPECT_TRUE(sweep.rowsUncoveredBySkirt.empty());
}

} // namespace
} // namespace lobewright::ports
