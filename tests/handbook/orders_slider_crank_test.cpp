// The slider-crank as the baseline of lever arms: x' = r·sin t + r²·sin t·cos t/√(l² − r²·sin²t)
// [Norton, Design of Machinery, ch. 11], evaluated to the digits given; and the Fourier content of
// its acceleration [Taylor; Den Hartog] (from memory, exact column by FFT).
#include "core/loads/lever_arm.h"
#include "core/loads/orders.h"
#include "core/units.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::loads {
namespace {

TEST(SliderCrankHandbook, LeverArmEqualsTheTabulatedVelocityFactor) {
    const struct {
        double r, l, angle, lever; // mm, degrees
    } rows[] = {{40, 140, 0, 0.0},        {40, 140, 30, 25.0},       {40, 140, 60, 39.748555},
                {40, 140, 90, 40.0},      {40, 140, 120, 29.533477}, {40, 140, 180, 0.0},
                {50, 150, 30, 32.319251}, {50, 150, 60, 50.839054},  {50, 150, 90, 50.0}};
    for (const auto& row : rows) {
        const Samples tau = Samples::Constant(1, row.angle * units::degree);
        EXPECT_NEAR(crankLeverArm(2 * row.r, row.r / row.l, tau)(0), row.lever, 5e-7) << row.angle;
    }
}

TEST(SliderCrankHandbook, AccelerationHasTheTabulatedOrders) {
    const struct {
        double ratio, second, fourth, sixth;
    } rows[] = {{0.20, 0.20203840, -0.00206180, 0.00002367},
                {0.25, 0.25402504, -0.00409811, 0.00007438},
                {2.0 / 7.0, 0.29177954, -0.00621054, 0.00014872},
                {0.30, 0.30705066, -0.00723769, 0.00019194}};
    const Samples t = evenAngles(720);
    for (const auto& row : rows) {
        // Lever arm of a crank of radius 1 is x'; x'' has q times its orders.
        const Eigen::ArrayXcd c = orders(crankLeverArm(2.0, row.ratio, t), 6);
        const auto acceleration = [&c](int q) { return -q * c(q).imag(); };
        EXPECT_NEAR(acceleration(1), 1.0, 1e-12);
        EXPECT_NEAR(acceleration(2), row.second, 5e-9);
        EXPECT_NEAR(acceleration(4), row.fourth, 5e-9);
        EXPECT_NEAR(acceleration(6), row.sixth, 5e-9);
        EXPECT_NEAR(acceleration(3), 0.0, 1e-12);
        EXPECT_NEAR(acceleration(5), 0.0, 1e-12);
    }
}

} // namespace
} // namespace lobewright::loads
