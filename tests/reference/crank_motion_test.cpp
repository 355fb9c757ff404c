#include "core/loads/lever_arm.h"
#include "core/reference/crank_motion.h"
#include "core/units.h"

#include <fmt/format.h>
#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::study {
namespace {

constexpr double mm = 1e-3;

struct Row {
    double radius, rod, degrees, x, x1, x2; ///< mm, mm/rad, mm/rad²
};

std::string rowName(const Row& row) {
    return fmt::format("Radius{}Rod{}At{}", row.radius, row.rod, row.degrees);
}

void PrintTo(const Row& row, std::ostream* out) {
    *out << rowName(row);
}

class SliderCrankTable : public testing::TestWithParam<Row> {};

// Evaluated in double precision from the closed form of Heywood 1988, eq. 2.1, and Norton, Design
// of Machinery, ch. 11: travel from the dead centre next to the head.
TEST_P(SliderCrankTable, IsReproducedToItsPrintedDigits) {
    const Row& row = GetParam();
    const SliderCrank crank(2.0 * row.radius * mm, row.radius / row.rod);
    const double tau = row.degrees * units::degree;
    const motion::Lift lift = crank.at(tau);
    EXPECT_NEAR((crank.stroke() - lift.y) / mm, row.x, 5e-7);
    EXPECT_NEAR(-lift.y1 / mm, row.x1, 5e-7);
    EXPECT_NEAR(-lift.y2 / mm, row.x2, 5e-7);
    const motion::LiftSamples samples = crank.at(Samples::Constant(1, tau));
    EXPECT_DOUBLE_EQ(samples.y(0), lift.y);
    EXPECT_DOUBLE_EQ(samples.y3(0), lift.y3);
}

INSTANTIATE_TEST_SUITE_P(Handbook, SliderCrankTable,
                         testing::Values(Row{40, 140, 0, 0, 0, 51.428571},
                                         Row{40, 140, 30, 6.794919, 25.000000, 40.594941},
                                         Row{40, 140, 60, 24.353400, 39.748555, 14.294637},
                                         Row{40, 140, 90, 45.835921, 40.000000, -11.925696},
                                         Row{40, 140, 120, 64.353400, 29.533477, -25.705363},
                                         Row{40, 140, 180, 80, 0, -28.571429},
                                         Row{50, 150, 30, 8.796735, 32.319251, 52.115022},
                                         Row{50, 150, 60, 31.385934, 50.839054, 16.691748},
                                         Row{50, 150, 90, 58.578644, 50.000000, -17.677670}),
                         [](const auto& each) { return rowName(each.param); });

TEST(SliderCrank, FastestPlaceAndSpeedAreThoseOfTheHandbook) {
    // r/l = 2/7: 1.040244·r·ω at 75.1356°; 1/3: 1.054640 at 73.1754°.
    for (const auto& [ratio, factor, degrees] :
         {std::tuple{2.0 / 7.0, 1.040244, 75.1356}, std::tuple{1.0 / 3.0, 1.054640, 73.1754}}) {
        const SliderCrank crank(2.0, ratio);
        EXPECT_NEAR(-crank.at(degrees * units::degree).y1, factor, 5e-7);
        EXPECT_NEAR(crank.at(degrees * units::degree).y2, 0.0, 5e-6); // the peak is there
    }
}

TEST(SliderCrank, EndsAreExact) {
    const SliderCrank crank(0.08, 0.25);
    EXPECT_DOUBLE_EQ(crank.at(0.0).y, 0.08);
    EXPECT_NEAR(crank.at(units::pi).y, 0.0, 1e-18);
    EXPECT_NEAR(crank.at(0.0).y2, -0.04 * 1.25, 1e-15);
    EXPECT_NEAR(crank.at(units::pi).y2, 0.04 * 0.75, 1e-15);
}

TEST(SliderCrank, JerkIsTheSlopeOfTheAcceleration) {
    const SliderCrank crank(0.08, 0.4);
    constexpr double step = 1e-5;
    for (double tau = 0.1; tau < 6.2; tau += 0.3) {
        const double slope = (crank.at(tau + step).y2 - crank.at(tau - step).y2) / (2.0 * step);
        EXPECT_NEAR(crank.at(tau).y3, slope, 1e-9);
    }
}

TEST(SliderCrank, AngleOfALiftIsFoundToRounding) {
    const SliderCrank crank(0.06, 0.28);
    for (double tau = 0.05; tau < units::pi; tau += 0.1) {
        EXPECT_NEAR(crank.angleAt(crank.at(tau).y), tau, 1e-13);
    }
    EXPECT_DOUBLE_EQ(crank.angleAt(0.06), 0.0);
    EXPECT_NEAR(crank.angleAt(0.0), units::pi, 1e-7); // the cosine is flat there
}

TEST(SliderCrank, SlopeIsTheLeverArmOfTheLoadsStage) {
    const SliderCrank crank(0.07, 0.3);
    const Samples tau = Samples::LinSpaced(73, 0.0, units::turn);
    EXPECT_LT((loads::crankLeverArm(0.07, 0.3, tau) + crank.at(tau).y1).abs().maxCoeff(), 1e-16);
}

} // namespace
} // namespace lobewright::study
