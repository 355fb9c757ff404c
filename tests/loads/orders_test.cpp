#include "core/loads/orders.h"
#include "core/units.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::loads {
namespace {

TEST(Orders, OfACosineSeriesAreItsAmplitudesAndPhases) {
    const Samples theta = evenAngles(720);
    const Samples f = 25.0 - 7.5 * (3.0 * theta).sin() + 2.0 * (10.0 * theta + 0.4).cos();
    const Eigen::ArrayXcd c = orders(f, 24);
    EXPECT_NEAR(c(0).real(), 25.0, 1e-12);
    EXPECT_NEAR(std::abs(c(3)), 7.5, 1e-12);
    EXPECT_NEAR(std::arg(c(3)), 0.5 * units::pi, 1e-12);
    EXPECT_NEAR(std::abs(c(10)), 2.0, 1e-12);
    EXPECT_NEAR(std::arg(c(10)), 0.4, 1e-12);
    for (const int q : {1, 2, 4, 9, 11, 24}) {
        EXPECT_NEAR(std::abs(c(q)), 0.0, 1e-12) << q;
    }
}

TEST(Orders, OfARepeatedCurveFollowFromItsFirstRepetition) {
    const Samples theta = evenAngles(720);
    const Samples f = (3.0 * theta).sin().exp() + 0.3 * (6.0 * theta).cos();
    const Eigen::ArrayXcd whole = orders(f, 24);
    const Eigen::ArrayXcd first = orders(f.head(240), 24, 3);
    EXPECT_NEAR((whole - first).abs().maxCoeff(), 0.0, 1e-14);
}

TEST(EvenAngles, LeaveOutTheFullTurn) {
    const Samples theta = evenAngles(4);
    EXPECT_DOUBLE_EQ(theta(3), 1.5 * units::pi);
}

} // namespace
} // namespace lobewright::loads
