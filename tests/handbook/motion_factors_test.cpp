#include "core/motion/motion_law.h"
#include "core/units.h"
#include "tests/laws.h"

#include <gtest/gtest.h>

#include <cmath>
#include <limits>

using namespace lobewright;
using namespace lobewright::motion;

namespace {

constexpr double pi = units::pi;
constexpr double infinite = std::numeric_limits<double>::infinity();

struct Factors {
    Law law;
    double velocity, acceleration, jerk, torque;
};

void PrintTo(const Factors& factors, std::ostream* out) {
    *out << testName(factors.law);
}

std::string factorsName(const testing::TestParamInfo<Factors>& info) {
    return testName(info.param.law);
}

class ExactFactors : public testing::TestWithParam<Factors> {};
class PrintedByVdi : public testing::TestWithParam<Factors> {};
class PrintedByNorton : public testing::TestWithParam<Factors> {};

void expectRounded(double exact, double printed, double lastDigit) {
    if (std::isinf(printed))
        EXPECT_TRUE(std::isinf(exact));
    else
        EXPECT_NEAR(exact, printed, 0.5 * lastDigit * (1.0 + 1e-9));
}

} // namespace

// Closed forms of the definitions; the torque factor of the modified laws to six printed digits.
TEST_P(ExactFactors, FollowFromTheDefinition) {
    const Factors& expected = GetParam();
    const CharacteristicFactors factors = characteristicFactors(expected.law);
    EXPECT_NEAR(factors.velocity, expected.velocity, 1e-9);
    EXPECT_NEAR(factors.acceleration, expected.acceleration, 1e-9);
    EXPECT_NEAR(factors.torque, expected.torque, 5e-7);
    if (std::isinf(expected.jerk))
        EXPECT_TRUE(std::isinf(factors.jerk));
    else
        EXPECT_NEAR(factors.jerk, expected.jerk, 1e-9);
}
INSTANTIATE_TEST_SUITE_P(
    Handbook, ExactFactors,
    testing::Values(Factors{Law::parabolic, 2.0, 4.0, infinite, 8.0},
                    Factors{Law::harmonic, pi / 2.0, pi* pi / 2.0, infinite, pi* pi* pi / 8.0},
                    Factors{Law::cycloidal, 2.0, 2.0 * pi, 4.0 * pi* pi, 8.162097},
                    Factors{Law::modifiedTrapezoid, 2.0, 8.0 * pi / (pi + 2.0),
                            32.0 * pi* pi / (pi + 2.0), 8.089981},
                    Factors{Law::modifiedSine, 4.0 * pi / (pi + 4.0), 4.0 * pi* pi / (pi + 4.0),
                            16.0 * pi* pi* pi / (pi + 4.0), 5.457753},
                    Factors{Law::polynomial345, 15.0 / 8.0, 10.0 / std::sqrt(3.0), 60.0, 6.694269},
                    Factors{Law::polynomial4567, 35.0 / 16.0, 84.0 / (5.0 * std::sqrt(5.0)), 52.5,
                            10.750226}),
    factorsName);

// Published values: 22 (VDI 2143-1, 1980; from memory).
// VDI 2143-1 (1980), characteristic values of the normalised laws; from memory, not re-read.
TEST_P(PrintedByVdi, RoundToTheTable) {
    const Factors& printed = GetParam();
    const CharacteristicFactors factors = characteristicFactors(printed.law);
    expectRounded(factors.velocity, printed.velocity, 0.01);
    expectRounded(factors.acceleration, printed.acceleration, 0.01);
    expectRounded(factors.jerk, printed.jerk, 0.1);
    expectRounded(factors.torque, printed.torque, 0.01);
}
INSTANTIATE_TEST_SUITE_P(Handbook, PrintedByVdi,
                         testing::Values(Factors{Law::parabolic, 2.00, 4.00, infinite, 8.00},
                                         Factors{Law::harmonic, 1.57, 4.93, infinite, 3.88},
                                         Factors{Law::polynomial345, 1.88, 5.77, 60.0, 6.69},
                                         Factors{Law::cycloidal, 2.00, 6.28, 39.5, 8.16},
                                         Factors{Law::modifiedTrapezoid, 2.00, 4.89, 61.4, 8.09},
                                         Factors{Law::modifiedSine, 1.76, 5.53, 69.5, 5.46}),
                         factorsName);

// Published values: 19 (Norton, Design of Machinery, ch. 8; from memory).
// Norton, Design of Machinery, ch. 8, table of factors for peak velocity, acceleration and jerk;
// from memory. Three printed accelerations (4.945, 5.777, 7.526) lie up to 0.2 % above the closed
// form and some jerks are cut to whole numbers, hence 0.3 % and one unit.
TEST_P(PrintedByNorton, AgreeWithinTheirPrint) {
    const Factors& printed = GetParam();
    const CharacteristicFactors factors = characteristicFactors(printed.law);
    EXPECT_NEAR(factors.velocity, printed.velocity, 0.5e-3 * (1.0 + 1e-9));
    EXPECT_NEAR(factors.acceleration, printed.acceleration, 3e-3 * printed.acceleration);
    if (std::isinf(printed.jerk))
        EXPECT_TRUE(std::isinf(factors.jerk));
    else
        EXPECT_NEAR(factors.jerk, printed.jerk, 1.0);
}
INSTANTIATE_TEST_SUITE_P(Handbook, PrintedByNorton,
                         testing::Values(Factors{Law::parabolic, 2.000, 4.000, infinite, 0.0},
                                         Factors{Law::harmonic, 1.571, 4.945, infinite, 0.0},
                                         Factors{Law::modifiedTrapezoid, 2.000, 4.888, 61.0, 0.0},
                                         Factors{Law::modifiedSine, 1.760, 5.528, 69.0, 0.0},
                                         Factors{Law::polynomial345, 1.875, 5.777, 60.0, 0.0},
                                         Factors{Law::cycloidal, 2.000, 6.283, 40.0, 0.0},
                                         Factors{Law::polynomial4567, 2.188, 7.526, 52.0, 0.0}),
                         factorsName);

// Six digits computed from the definitions [VDI 2143-1; Norton 2009].
TEST(Displacement, AtAQuarterOfTheSpan) {
    EXPECT_NEAR(unitLift(Law::parabolic, 0.25).y, 0.125000, 5e-7);
    EXPECT_NEAR(unitLift(Law::harmonic, 0.25).y, 0.146447, 5e-7);
    EXPECT_NEAR(unitLift(Law::cycloidal, 0.25).y, 0.090845, 5e-7);
    EXPECT_NEAR(unitLift(Law::polynomial345, 0.25).y, 0.103516, 5e-7);
    EXPECT_NEAR(unitLift(Law::polynomial4567, 0.25).y, 0.070557, 5e-7);
    EXPECT_NEAR(unitLift(Law::modifiedTrapezoid, 0.25).y, 0.104480, 5e-7);
    EXPECT_NEAR(unitLift(Law::modifiedSine, 0.25).y, 0.117178, 5e-7);
}

// s(x) + s(1 − x) = 1 and s(1/2) = 1/2 for every law of the table.
TEST(Displacement, IsSymmetricAboutMidSpan) {
    for (Law law : allLaws) {
        EXPECT_NEAR(unitLift(law, 0.5).y, 0.5, 1e-15) << testName(law);
        EXPECT_NEAR(unitLift(law, 1.0).y, 1.0, 1e-15) << testName(law);
        for (double x : {0.03, 0.125, 0.21, 0.375, 0.44})
            EXPECT_NEAR(unitLift(law, x).y + unitLift(law, 1.0 - x).y, 1.0, 1e-15) << testName(law);
    }
}

// Where the peaks stand: the acceleration column of the same tables, and the torque factor of the
// modified laws.
TEST(PeakAcceleration, StandsWhereTheTableSays) {
    const auto expectPeakAt = [](Law law, double x) {
        EXPECT_NEAR(unitLift(law, x).y2, characteristicFactors(law).acceleration, 1e-9)
            << testName(law);
    };
    expectPeakAt(Law::parabolic, 0.2);
    expectPeakAt(Law::harmonic, 0.0);
    expectPeakAt(Law::cycloidal, 0.25);
    expectPeakAt(Law::modifiedTrapezoid, 0.125);
    expectPeakAt(Law::modifiedTrapezoid, 0.3);
    expectPeakAt(Law::modifiedSine, 0.125);
    expectPeakAt(Law::polynomial345, 0.5 * (1.0 - 1.0 / std::sqrt(3.0)));
    expectPeakAt(Law::polynomial4567, 0.5 * (1.0 - 1.0 / std::sqrt(5.0)));
}

TEST(PeakTorqueFactor, StandsWhereTheTableSays) {
    const auto expectPeakAt = [](Law law, double x) {
        const Lift lift = unitLift(law, x);
        EXPECT_NEAR(lift.y1 * lift.y2, characteristicFactors(law).torque, 1e-8) << testName(law);
    };
    expectPeakAt(Law::harmonic, 0.25);
    expectPeakAt(Law::cycloidal, 1.0 / 3.0);
    expectPeakAt(Law::modifiedTrapezoid, 0.392523);
    expectPeakAt(Law::modifiedSine, 0.287299);
}
