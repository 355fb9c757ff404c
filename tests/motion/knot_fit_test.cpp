#include "core/motion/knot_fit.h"
#include "core/motion/knot_influence.h"
#include "patterns.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <limits>
#include <random>

using namespace lobewright;
using namespace lobewright::motion;
using namespace lobewright::motion::test;

namespace {

constexpr double micrometre = units::micrometre;

double largestDifference(const LiftCurve& a, const LiftCurve& b) {
    double largest = 0.0;
    for (int i = 0; i < 20000; ++i) {
        const double phi = a.period() * i / 20000.0;
        largest = std::max(largest, std::abs(a.at(phi).y - b.at(phi).y));
    }
    return largest;
}

LiftTable tableOf(const LiftCurve& curve, int rows, double noise = 0.0) {
    std::mt19937 random(5);
    std::uniform_real_distribution<double> error(-noise, noise);
    LiftTable table;
    for (int i = 0; i < rows; ++i) {
        table.angles.push_back(curve.period() * i / rows);
        table.lifts.push_back(curve.at(table.angles.back()).y + error(random));
    }
    return table;
}

class FitOfALaw : public testing::TestWithParam<Law> {};

} // namespace

INSTANTIATE_TEST_SUITE_P(Laws, FitOfALaw, testing::ValuesIn(allLaws), lawName);

// The reported error is the one that a fine scan of both curves finds.
TEST_P(FitOfALaw, ReportsTheErrorOfTheFinishedCurve) {
    for (const Pattern& pattern : {dwelling(GetParam()), unequal(GetParam())}) {
        const LiftCurve curve = LiftCurve::make(pattern).value();
        const KnotFit fit = fitKnots(curve, {20e-6, 60}).value();
        const LiftCurve fitted = LiftCurve::make({curve.lobes(), fit.shape}).value();
        const double found = largestDifference(curve, fitted);
        EXPECT_NEAR(fit.largestError, found, 0.02 * found);
        EXPECT_NEAR(std::abs(curve.at(fit.angle).y - fitted.at(fit.angle).y), fit.largestError,
                    1e-12);
        EXPECT_EQ(fit.withinTolerance, fit.largestError <= 20e-6);
        EXPECT_EQ(fitted.risesPerPattern(), curve.risesPerPattern())
            << "ripples in the dwells are no rises";
    }
}

// A law with continuous acceleration is followed to 10 µm with a number of knots that a hand can
// still move (own estimate of what is handy: 40 for two rises and two dwells).
TEST(KnotFit, FollowsASmoothLawWithFewKnots) {
    for (Law law : {Law::cycloidal, Law::modifiedSine, Law::polynomial345, Law::polynomial4567}) {
        const KnotFit fit = fitKnots(LiftCurve::make(dwelling(law)).value(), {10e-6, 40}).value();
        EXPECT_TRUE(fit.withinTolerance) << name(law) << " " << fit.largestError / micrometre;
    }
}

// Velocity and acceleration of the fit stray by what a fine scan of both curves finds; where a law
// jumps, by at least half the jump, for the spline does not.
TEST_P(FitOfALaw, ReportsTheErrorOfVelocityAndAcceleration) {
    const LiftCurve curve = LiftCurve::make(dwelling(GetParam())).value();
    const KnotFit fit = fitKnots(curve, {20e-6, 60}).value();
    const LiftCurve fitted = LiftCurve::make({curve.lobes(), fit.shape}).value();
    double slope = 0.0, curvature = 0.0;
    for (int i = 0; i < 40000; ++i) {
        const double phi = curve.period() * i / 40000.0;
        slope = std::max(slope, std::abs(curve.at(phi).y1 - fitted.at(phi).y1));
        curvature = std::max(curvature, std::abs(curve.at(phi).y2 - fitted.at(phi).y2));
    }
    ASSERT_TRUE(fit.slope && fit.curvature);
    EXPECT_NEAR(fit.slope->value, slope, 0.03 * slope);
    EXPECT_NEAR(fit.curvature->value, curvature, 0.03 * curvature);
    double jump = 0.0;
    for (const Junction& junction : curve.junctions())
        jump = std::max(jump, std::abs(junction.after.y2 - junction.before.y2));
    EXPECT_GE(fit.curvature->value, 0.5 * jump);
}

TEST(KnotFit, HasAsManyKnotsAsAskedFor) {
    const LiftCurve curve = LiftCurve::make(dwelling(Law::modifiedSine)).value();
    double before = 1.0;
    for (int count : {3, 6, 12, 24, 48}) {
        const KnotFit fit = fitKnotCount(curve, count).value();
        EXPECT_EQ(fit.shape.knots.size(), static_cast<std::size_t>(count));
        EXPECT_LT(fit.largestError, before) << "twice the knots follow more closely";
        before = fit.largestError;
    }
    EXPECT_EQ(fitKnotCount(curve, 2).problems()[0].path, "/knots");
    EXPECT_FALSE(fitKnotCount(curve, mostFittedKnots + 1));
}

// Harmonics are followed like segments.
TEST(KnotFit, FollowsHarmonics) {
    const LiftCurve curve =
        LiftCurve::make({2, HarmonicShape{{{1, -0.018, 0.0}, {2, 0.001, 0.0004}}}}).value();
    const KnotFit fit = fitKnots(curve, {5e-6, 48}).value();
    EXPECT_TRUE(fit.withinTolerance);
    EXPECT_LT(fit.curvature->value, 0.02 * 0.018 * 4.0);
}

// Raising a knot changes its own y'' at the rate stated, by any amount.
TEST(KnotInfluence, IsTheChangeOfTheAccelerationThere) {
    KnotFit fit = fitKnotCount(LiftCurve::make(dwelling(Law::cycloidal)).value(), 12).value();
    fit.shape.knots[4].slope = 0.01;
    const Pattern pattern{2, fit.shape};
    for (std::size_t knot : {0U, 4U, 7U}) {
        const double rate = curvaturePerLift(fit.shape, 2, knot);
        EXPECT_LT(rate, 0.0);
        for (double change : {1e-6, 0.5e-3, -2e-3}) {
            KnotShape moved = fit.shape;
            moved.knots[knot].lift += change;
            const double angle = moved.knots[knot].angle;
            const double found = LiftCurve::make({2, moved}).value().at(angle).y2 -
                                 LiftCurve::make(pattern).value().at(angle).y2;
            EXPECT_NEAR(found, rate * change, 1e-9 * std::abs(rate) * 2e-3);
        }
    }
}

TEST(KnotFit, GivesBackAFreeFormPattern) {
    const double d = units::degree;
    const KnotShape shape{
        {{10 * d, 0.0, {}}, {50 * d, 0.02, {}}, {90 * d, 0.036, {}}, {140 * d, 0.01, {}}}};
    const LiftCurve curve = LiftCurve::make({2, shape}).value();
    const KnotFit fit = fitKnots(curve, {1e-9, 20}).value();
    EXPECT_EQ(fit.shape.knots.size(), 4u);
    EXPECT_LT(fit.largestError, 1e-15);
}

TEST(KnotFit, SaysWhenTheKnotsDoNotSuffice) {
    const LiftCurve curve = LiftCurve::make(dwelling(Law::parabolic)).value();
    const KnotFit fit = fitKnots(curve, {1e-9, 12}).value();
    EXPECT_FALSE(fit.withinTolerance);
    EXPECT_EQ(fit.shape.knots.size(), 12u);
    EXPECT_GT(fit.largestError, 1e-9);
}

// Rows that lie on a spline of few even knots give that spline back.
TEST(TableFit, FindsTheSplineBehindExactRows) {
    KnotShape shape;
    const double lifts[] = {0.0, 0.004, 0.021, 0.035, 0.036, 0.020, 0.006};
    for (int i = 0; i < 7; ++i)
        shape.knots.push_back({units::pi * i / 7.0, lifts[i], {}});
    const LiftCurve curve = LiftCurve::make({2, shape}).value();
    const KnotFit fit = fitKnots(tableOf(curve, 90), 2, {1e-9, 48}).value();
    ASSERT_TRUE(fit.withinTolerance);
    ASSERT_EQ(fit.shape.knots.size(), 7u);
    EXPECT_LT(largestDifference(curve, LiftCurve::make({2, fit.shape}).value()), 1e-12);
}

// Noise of ±5 µm on a half-degree table, tolerance 10 µm: the fit averages the noise away, so that
// the finished curve is closer to the truth than the rows are.
TEST(TableFit, SmoothsNoiseBelowTheTolerance) {
    const LiftCurve truth =
        LiftCurve::make({2, HarmonicShape{{{1, -0.018, 0.0}, {2, 0.001, 0.0004}}}}).value();
    const KnotFit fit = fitKnots(tableOf(truth, 360, 5e-6), 2, {10e-6, 48}).value();
    ASSERT_TRUE(fit.withinTolerance);
    EXPECT_LT(fit.shape.knots.size(), 24u);
    const LiftCurve fitted = LiftCurve::make({2, fit.shape}).value();
    EXPECT_LT(largestDifference(truth, fitted), 10e-6);
    EXPECT_GT(fit.largestError, 4e-6) << "the residual shows the noise";
}

// The reported residual is that of the spline at the rows, wherever the lowest lift is.
TEST(TableFit, ReportsTheResidualOfItsWorstRow) {
    const LiftCurve curve = LiftCurve::make(dwelling(Law::modifiedSine)).value();
    LiftTable table = tableOf(curve, 180);
    for (double& lift : table.lifts)
        lift += 0.007; // any zero
    table.angles.push_back(table.angles[0] + curve.period());
    table.lifts.push_back(table.lifts[0]);
    const KnotFit fit = fitKnots(table, 2, {50e-6, 48}).value();
    const LiftCurve fitted = LiftCurve::make({2, fit.shape}).value();
    const double offset = fit.shape.knots[0].lift - fitted.at(fit.shape.knots[0].angle).y;
    double largest = 0.0;
    for (std::size_t i = 0; i < table.angles.size(); ++i) {
        largest =
            std::max(largest, std::abs(fitted.at(table.angles[i]).y + offset - table.lifts[i]));
    }
    EXPECT_NEAR(fit.largestError, largest, 1e-14);
    EXPECT_TRUE(fit.withinTolerance);
}

TEST(TableFit, ShowsAnOutlier) {
    const LiftCurve curve = LiftCurve::make({2, HarmonicShape{{{1, -0.018, 0.0}}}}).value();
    LiftTable table = tableOf(curve, 360);
    table.lifts[123] += 0.0005;
    const KnotFit fit = fitKnots(table, 2, {10e-6, 48}).value();
    EXPECT_FALSE(fit.withinTolerance);
    EXPECT_EQ(fit.angle, table.angles[123]);
}

TEST(TableFit, RefusesTablesWithTheirRow) {
    const LiftCurve curve = LiftCurve::make({2, HarmonicShape{{{1, -0.018, 0.0}}}}).value();
    const LiftTable good = tableOf(curve, 36);
    const auto expectProblem = [](const LiftTable& table, const std::string& path,
                                  const std::string& words) {
        const Result<KnotFit> fit = fitKnots(table, 2);
        ASSERT_FALSE(fit);
        EXPECT_EQ(fit.problems()[0].path, path);
        EXPECT_THAT(fit.problems()[0].message.english(), testing::HasSubstr(words));
    };
    LiftTable table = good; // one that closes, from another row on
    table.angles.erase(table.angles.begin());
    table.lifts.erase(table.lifts.begin());
    table.angles.push_back(table.angles.front() + curve.period());
    table.lifts.push_back(table.lifts.front() + 0.001);
    expectProblem(table, "/rows/35/lift_mm", "where the table closes");
    table = good;
    table.angles[5] = table.angles[4];
    expectProblem(table, "/rows/5/angle_deg", "angle is 20° after 20°, must increase");
    table = good;
    table.lifts[7] = std::numeric_limits<double>::quiet_NaN();
    expectProblem(table, "/rows/7/lift_mm", "must be a number");
    table = good;
    table.lifts.pop_back();
    expectProblem(table, "/rows", "36 angles and 35 lifts");
    table = good;
    table.angles.back() = 4.0;
    expectProblem(table, "/rows/35/angle_deg", "must cover at most the period of 180°");
    table = good;
    table.angles.push_back(units::pi);
    table.lifts.push_back(0.001);
    expectProblem(table, "/rows/36/lift_mm", "where the table closes");
    expectProblem({{0.0, 0.1, 0.2, 0.3}, {0.0, 1.0, 2.0, 1.0}}, "/rows", "must be at most 45°");
    expectProblem({{0.0, 0.1}, {0.0, 1.0}}, "/rows", "need at least 4");
    expectProblem({{0.0, 0.7, 1.4, 2.4}, {0.01, 0.01, 0.01, 0.01}}, "/rows", "all lifts are 10 mm");
}

TEST(Fit, RefusesItsOptions) {
    const LiftCurve curve = LiftCurve::make(dwelling(Law::cycloidal)).value();
    EXPECT_EQ(fitKnots(curve, {0.0, 48}).problems()[0].path, "/tolerance_mm");
    EXPECT_EQ(fitKnots(curve, {1e-5, 2}).problems()[0].path, "/most_knots");
    EXPECT_EQ(fitKnots(tableOf(curve, 90), 0).problems()[0].path, "/lobes");
}
