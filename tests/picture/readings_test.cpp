#include "core/exchange/lift_import.h"
#include "core/motion/lift_curve.h"
#include "core/picture/readings.h"
#include "core/units.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

namespace lobewright::picture {
namespace {

using units::degree;
using units::millimetre;

constexpr double perInch = 0.0254;

/// A drawing at 150 dots an inch that lies askew by 3°, its origin in the middle of the sheet.
Place drawn(double x, double y) {
    const double pixels = 150.0 / perInch, askew = 3.0 * degree;
    return {800.0 + pixels * (x * std::cos(askew) - y * std::sin(askew)),
            600.0 + pixels * (x * std::sin(askew) + y * std::cos(askew))};
}

/// Where a hand clicks that means this place: on a whole pixel, at most one off.
Place clicked(Place place, std::mt19937& hand) {
    std::uniform_real_distribution<double> off(-0.5, 0.5);
    return {std::round(place.x + off(hand)), std::round(place.y + off(hand))};
}

Scale exactScale() {
    return *Scale::make(drawn(0.0, 0.0), drawn(0.1, 0.0), 0.1);
}

void expectHolds(const Reading& reading, double truth) {
    EXPECT_LE(reading.low, truth);
    EXPECT_GE(reading.high, truth);
}

TEST(Readings, ScaleTellsLengthsAskewOrNot) {
    const Scale scale = exactScale();
    EXPECT_NEAR(scale.pixel(), perInch / 150.0, 1e-12);
    const Axis axis{drawn(-0.05, 0.0), drawn(0.05, 0.0)};
    const Place a = drawn(0.01, 0.02), b = drawn(0.04, -0.02);
    EXPECT_NEAR(distance(scale, a, b).value, 0.05, 1e-12);
    EXPECT_NEAR(along(scale, axis, a, b).value, 0.03, 1e-12);
    EXPECT_NEAR(across(scale, axis, a, b).value, 0.04, 1e-12);
    EXPECT_NEAR(fromAxis(scale, axis, a).value, 0.02, 1e-12);
    // Two pixels of this length, and as many of the scale, which is as long as 0.1 m.
    const double half = 2.0 * scale.pixel() * (1.0 + 0.05 / 0.1);
    EXPECT_NEAR(distance(scale, a, b).high - 0.05, half, 1e-12);
    EXPECT_NEAR(0.05 - distance(scale, a, b).low, half, 1e-12);
}

TEST(Readings, ScaleIsRefusedWhereItWouldBeWorthless) {
    EXPECT_FALSE(Scale::make({0.0, 0.0}, {19.0, 0.0}, 0.1));
    EXPECT_TRUE(Scale::make({0.0, 0.0}, {20.0, 0.0}, 0.1));
    EXPECT_FALSE(Scale::make({0.0, 0.0}, {100.0, 0.0}, 0.0));
    EXPECT_FALSE(Scale::make({0.0, 0.0}, {100.0, 0.0}, std::nan("")));
}

TEST(Readings, CircleThroughThreePlacesIsTheirCircumcircle) {
    // The triangle 3, 4, 5 has its circumcentre in the middle of the longest side.
    const Place corners[] = {{0.0, 0.0}, {40.0, 0.0}, {0.0, 30.0}};
    const auto found = circle(corners);
    ASSERT_TRUE(found);
    EXPECT_NEAR(found->centre.x, 20.0, 1e-9);
    EXPECT_NEAR(found->centre.y, 15.0, 1e-9);
    EXPECT_NEAR(found->radius, 25.0, 1e-9);
}

TEST(Readings, CircleComesOutOfAShortArcClickedByHand) {
    std::mt19937 hand(7);
    std::vector<Place> edge;
    for (int i = 0; i <= 12; ++i) {
        const double at = (20.0 + 10.0 * i) * degree;
        edge.push_back(clicked(drawn(0.02 + 0.03 * std::cos(at), 0.03 * std::sin(at)), hand));
    }
    const auto found = circle(edge);
    ASSERT_TRUE(found);
    expectHolds(exactScale().length(2.0 * found->radius), 0.06);
}

TEST(Readings, CircleNeedsThreePlacesThatAreNoLine) {
    const Place line[] = {{0.0, 0.0}, {10.0, 5.0}, {20.0, 10.0}, {40.0, 20.0}};
    EXPECT_FALSE(circle(line));
    EXPECT_FALSE(circle(std::span(line).first(2)));
    const Place same[] = {{3.0, 3.0}, {3.0, 3.0}, {3.0, 3.0}};
    EXPECT_FALSE(circle(same));
}

TEST(Readings, AngleIsBetweenTheArmsEitherWayRound) {
    const Place corner = drawn(0.0, 0.0), flat = drawn(0.05, 0.0);
    for (const double degrees : {10.0, 90.0, 150.0, -40.0}) {
        const double at = degrees * degree;
        const auto read = angle(flat, corner, drawn(0.04 * std::cos(at), 0.04 * std::sin(at)));
        ASSERT_TRUE(read);
        EXPECT_NEAR(read->value, std::abs(at), 1e-12);
    }
    const auto square = angle(flat, corner, drawn(0.0, 0.04));
    ASSERT_TRUE(square);
    EXPECT_NEAR(square->high - square->value, square->value - square->low, 1e-12)
        << "as far above as below, where nothing bounds it";
    EXPECT_FALSE(angle(corner, corner, flat));
}

TEST(Readings, SeveralOfOneThingAreTheirMeanWithTheirSpread) {
    const Reading readings[] = {
        {0.050, 0.049, 0.051}, {0.056, 0.055, 0.057}, {0.053, 0.052, 0.054}};
    const Reading all = together(readings);
    EXPECT_NEAR(all.value, 0.053, 1e-15);
    EXPECT_DOUBLE_EQ(all.low, 0.050);
    EXPECT_DOUBLE_EQ(all.high, 0.056);
    // Two that agree by chance are no better than one.
    const Reading alike[] = {{0.05, 0.049, 0.051}, {0.05, 0.049, 0.051}};
    EXPECT_DOUBLE_EQ(together(alike).high, 0.051);
}

TEST(Readings, TracedLobeComesBackThroughTheLiftImport) {
    motion::Pattern pattern;
    pattern.lobes = 2;
    motion::SegmentShape shape;
    shape.stroke = 0.036;
    using motion::SegmentKind;
    for (const auto& [kind, span] : {std::pair(SegmentKind::rise, 82.0),
                                     {SegmentKind::dwell, 4.0},
                                     {SegmentKind::fall, 78.0},
                                     {SegmentKind::dwell, 16.0}}) {
        motion::Segment segment;
        segment.kind = kind;
        segment.span = span * degree;
        shape.segments.push_back(segment);
    }
    pattern.shape = shape;
    const auto curve = motion::LiftCurve::make(pattern);
    ASSERT_TRUE(curve);
    std::mt19937 hand(11);
    std::vector<Place> trace;
    constexpr double repetition = 0.16; // of the unrolled track [m]
    constexpr int places = 45;
    for (int i = 0; i <= places; ++i) {
        const double share = static_cast<double>(i) / places;
        trace.push_back(
            clicked(drawn(share * repetition - 0.08, -curve->at(share * units::pi).y), hand));
    }
    const Scale scale = exactScale();
    const auto table = liftTable(scale, trace, 2);
    ASSERT_TRUE(table);
    exchange::ImportOptions options;
    options.tolerance = traceTolerance(scale);
    const auto lobe = exchange::importLift(*table, options);
    ASSERT_TRUE(lobe);
    EXPECT_TRUE(lobe->withinTolerance);
    EXPECT_EQ(lobe->pattern.lobes, 2);
    const auto back = motion::LiftCurve::make(lobe->pattern);
    ASSERT_TRUE(back);
    // Within two pixels square to the curve; its steepest flank is 1.76·36 mm over 82° of 180°.
    for (double angle = 0.0; angle < units::pi; angle += 0.5 * degree) {
        const double slope = curve->at(angle).y1 * units::pi / repetition;
        const double miss = (back->at(angle).y - curve->at(angle).y) / std::hypot(1.0, slope);
        EXPECT_LE(std::abs(miss), placing * scale.pixel()) << angle / degree;
    }
}

TEST(Readings, TraceThatTurnsBackIsRefused) {
    const Place back[] = {{0.0, 0.0}, {50.0, 9.0}, {40.0, 12.0}, {80.0, 9.0}, {100.0, 0.0}};
    EXPECT_FALSE(liftTable(exactScale(), back, 2));
    EXPECT_FALSE(liftTable(exactScale(), std::span(back).first(4), 2));
    const Place closed[] = {{0.0, 0.0}, {50.0, 9.0}, {70.0, 12.0}, {80.0, 9.0}, {0.0, 0.0}};
    EXPECT_FALSE(liftTable(exactScale(), closed, 2));
}

} // namespace
} // namespace lobewright::picture
