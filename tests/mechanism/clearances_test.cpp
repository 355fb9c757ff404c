#include "core/mechanism/clearances.h"
#include "tests/machines.h"

#include <algorithm>
#include <cmath>

namespace lobewright::mechanism {
namespace {

/// The corner of the face of one roller nearest to its neighbour against the plane between both, in
/// the plane of the axes: coordinates, not the formula.
double gapByCorners(double inner, double radius, double angle) {
    const double x = inner * std::cos(0.5 * angle) + radius * std::sin(0.5 * angle);
    const double y = inner * std::sin(0.5 * angle) - radius * std::cos(0.5 * angle);
    return x > 0.0 ? 2.0 * y : 0.0;
}

TEST(RollerGap, IsTakenAtTheInnerEdgeOfTheNearestNeighbours) {
    auto m = machines::pumpMechanism();
    m.pitchRadius = 0.104;
    m.cylinders = 6;
    m.roller = {0.070, 0.020, {}, 0.0005};
    const auto pair = machines::pair(m, machines::pumpTrack());
    const auto found = tightestRollerGap(pair);
    ASSERT_TRUE(found);
    EXPECT_NEAR(found->gap, gapByCorners(0.094, 0.070, units::pi / 3.0), 1e-12);
    EXPECT_LT(found->gap, 0.0);
    EXPECT_NEAR(found->largestRadius, 0.094 / std::sqrt(3.0), 1e-12);

    m.cylinderAngles = {0.0, 0.5, 2.0, 3.0, 4.0, 5.5};
    const auto uneven = tightestRollerGap(machines::pair(m, machines::pumpTrack()));
    EXPECT_NEAR(uneven->angle, 0.5, 1e-12);
    m.cylinders = 3; // the nearest lie on either side of 0
    m.cylinderAngles = {0.17, 3.0, 6.0};
    const auto around = tightestRollerGap(machines::pair(m, machines::pumpTrack()));
    EXPECT_NEAR(around->angle, 0.17 + units::turn - 6.0, 1e-12);
    m.cylinderAngles.reset();
    m.cylinders = 1;
    EXPECT_FALSE(tightestRollerGap(machines::pair(m, machines::pumpTrack())));
}

TEST(RollerGap, NeighboursAreLevelAtTheAngleGiven) {
    auto m = machines::pumpMechanism();
    m.cylinders = 5;
    const auto pair = machines::pair(m, machines::pumpTrack());
    const auto found = tightestRollerGap(pair);
    double least = 1.0;
    for (int k = 0; k < 5; ++k) {
        const double psi = k * units::turn / 5;
        least =
            std::min(least, std::abs(pair.lift(End::inlet, found->theta - psi).y -
                                     pair.lift(End::inlet, found->theta - psi - found->angle).y));
    }
    EXPECT_LT(least, 3e-4);
}

// Closed track: stroke 36, roller radius 16, rim 14 mm: its plane stands 66 mm inward of the axis.
TEST(CrownToRollerAxis, KeepsTheSkirtClearOfRollerAndRim) {
    auto m = machines::pumpMechanism();
    const auto distance = [&] {
        return crownToRollerAxis(machines::pair(m, machines::pumpTrack()), 0.070, 0.014);
    };
    EXPECT_NEAR(distance(), 0.070 + 1.2 * 0.016, 1e-12);
    m.closedTrack = true;
    EXPECT_NEAR(distance(), 0.070 + 0.066 + 0.0032, 1e-12);
    m.piston = PistonGeometry{0.070, {0.005}, 0.140};
    EXPECT_EQ(distance(), 0.140);
}

TEST(SkirtGap, IsWhatTheStemLeavesOverStrokeRollerAndRim) {
    auto m = machines::pumpMechanism();
    m.closedTrack = true;
    m.piston = PistonGeometry{0.070, {0.005}, 0.140};
    auto pair = machines::pair(m, machines::pumpTrack());
    const auto gap = skirtGap(pair, End::inlet, 0.014);
    ASSERT_TRUE(gap);
    EXPECT_NEAR(gap->gap, 0.004, 1e-12);
    EXPECT_NEAR(pair.lift(End::inlet, gap->theta).y, 0.0, 1e-6) << "at outer dead centre";
    m.piston->rollerAxis.reset();
    EXPECT_FALSE(skirtGap(machines::pair(m, machines::pumpTrack()), End::inlet, 0.014));
}

// Coordinates of skirt and flank over the whole turn, not the search.
TEST(SkirtGap, OfAnOpenTrackIsThatToTheFlankBesideTheRoller) {
    auto m = machines::pumpMechanism();
    m.piston = PistonGeometry{0.070, {0.005}, 0.075};
    const auto pair = machines::pair(m, machines::pumpTrack());
    const auto& curve = pair.curve(End::inlet);
    double least = 1.0;
    for (double roller = 0.0; roller < curve.period(); roller += 0.004) {
        for (double at = -1.0; at <= 1.0; at += 0.004) {
            const auto lift = curve.at(roller + at);
            const double angle = std::atan(lift.y1 / m.pitchRadius);
            const double aside = m.pitchRadius * at + m.roller.radius * std::sin(angle);
            if (std::abs(aside) <= 0.5 * m.bore) {
                const double flank = 0.075 - lift.y + m.roller.radius * std::cos(angle);
                least = std::min(least, flank - (0.070 - curve.at(roller).y));
            }
        }
    }
    const auto found = skirtGap(pair, End::inlet, 0.014);
    ASSERT_TRUE(found);
    EXPECT_NEAR(found->gap, least, 2e-4);
    EXPECT_LT(found->gap, 0.075 - 0.070 + m.roller.radius);
}

} // namespace
} // namespace lobewright::mechanism
