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
    EXPECT_NEAR(crownToRollerAxis(m, 0.070, 0.036, 0.014), 0.070 + 1.2 * 0.016, 1e-12);
    m.closedTrack = true;
    EXPECT_NEAR(crownToRollerAxis(m, 0.070, 0.036, 0.014), 0.070 + 0.066 + 0.0032, 1e-12);
}

} // namespace
} // namespace lobewright::mechanism
