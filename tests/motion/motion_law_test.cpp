#include "core/motion/motion_law.h"
#include "patterns.h"

#include <boost/multiprecision/cpp_bin_float.hpp>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <set>
#include <string>

using namespace lobewright;
using namespace lobewright::motion;

namespace {

using Real = boost::multiprecision::cpp_bin_float_100;

const Real pi = boost::math::constants::pi<Real>();

/// Displacement equations piece by piece as handbooks print them [Norton, Design of Machinery,
/// ch. 8; VDI 2143-1], with exact constants for the printed decimals; 0 ≤ x ≤ 1.
Real handbook(Law law, const Real& x) {
    switch (law) {
    case Law::harmonic:
        return (1 - cos(pi * x)) / 2;
    case Law::cycloidal:
        return x - sin(2 * pi * x) / (2 * pi);
    case Law::parabolic:
        return x < 0.5 ? Real(2 * x * x) : Real(1 - 2 * (1 - x) * (1 - x));
    case Law::polynomial345:
        return x * x * x * (10 + x * (-15 + 6 * x));
    case Law::polynomial4567:
        return x * x * x * x * (35 + x * (-84 + x * (70 - 20 * x)));
    case Law::modifiedTrapezoid:
        if (x > 0.5)
            return 1 - handbook(law, 1 - x);
        if (x < 0.125) // 0.38898448·x − 0.0309544·sin 4πx
            return (2 * x - sin(4 * pi * x) / (2 * pi)) / (pi + 2);
        if (x < 0.375) // 2.44406184·x² − 0.22203094·x + 0.00723406
            return (4 * pi * x * x + (2 - pi) * x + (pi * pi - 8) / (16 * pi)) / (pi + 2);
        // 1.6110154·x − 0.0309544·sin(4πx − π) − 0.3055077
        return (2 * (pi + 1) * x - sin(4 * pi * x - pi) / (2 * pi) - pi / 2) / (pi + 2);
    case Law::modifiedSine:
        if (x > 0.5)
            return 1 - handbook(law, 1 - x);
        if (x < 0.125) // 0.43990085·x − 0.0350062·sin 4πx
            return (pi * x - sin(4 * pi * x) / 4) / (pi + 4);
        // 0.28004957 + 0.43990085·x − 0.31505577·cos(4πx/3 − π/6)
        return (2 + pi * x - 9 * cos(4 * pi * x / 3 - pi / 6) / 4) / (pi + 4);
    }
    return 0;
}

/// Derivatives by central differences in 100 digits, step 1e-15: exact to 1e-28 or better.
Lift byDifferences(Law law, double x) {
    const Real h("1e-15");
    const Real at = x;
    const auto s = [&](int steps) { return handbook(law, at + steps * h); };
    const Real s1 = (s(1) - s(-1)) / (2 * h);
    const Real s2 = (s(1) - 2 * s(0) + s(-1)) / (h * h);
    const Real s3 = (s(2) - 2 * s(1) + 2 * s(-1) - s(-2)) / (2 * h * h * h);
    return {s(0).convert_to<double>(), s1.convert_to<double>(), s2.convert_to<double>(),
            s3.convert_to<double>()};
}

class EveryLaw : public testing::TestWithParam<Law> {};

} // namespace

INSTANTIATE_TEST_SUITE_P(Laws, EveryLaw, testing::ValuesIn(allLaws), test::lawName);

// To 1e-12 of the peak of each derivative; 200 places, none on a junction.
TEST_P(EveryLaw, EqualsTheHandbookEquationsInAHundredDigits) {
    const Law law = GetParam();
    const CharacteristicFactors peak = characteristicFactors(law);
    const double jerk = std::max(peak.jerkInside, peak.acceleration);
    for (int i = 0; i < 200; ++i) {
        const double x = (i + 0.37) / 200.0;
        const Lift ours = unitLift(law, x), exact = byDifferences(law, x);
        EXPECT_NEAR(ours.y, exact.y, 1e-14) << x;
        EXPECT_NEAR(ours.y1, exact.y1, 1e-12 * peak.velocity) << x;
        EXPECT_NEAR(ours.y2, exact.y2, 1e-12 * peak.acceleration) << x;
        EXPECT_NEAR(ours.y3, exact.y3, 1e-12 * jerk) << x;
    }
}

// Lift near the end keeps its digits relative to the distance from the end.
TEST_P(EveryLaw, KeepsItsDigitsNearTheEnd) {
    const Law law = GetParam();
    const double x = 0.9990234375; // 1 − 2⁻¹⁰, exact in binary
    EXPECT_EQ(unitLift(law, x).y1, unitLift(law, 1.0 - x).y1);
    EXPECT_EQ(unitLift(law, x).y2, -unitLift(law, 1.0 - x).y2);
}

TEST_P(EveryLaw, StaysAtRestOutsideItsSpan) {
    for (double x : {-0.5, 1.5}) {
        const Lift lift = unitLift(GetParam(), x);
        EXPECT_EQ(lift.y, x < 0.0 ? 0.0 : 1.0);
        EXPECT_EQ(lift.y1, 0.0);
        EXPECT_EQ(lift.y2, 0.0);
    }
}

// The tabulated factors are the largest values that occur, by a fine scan.
TEST_P(EveryLaw, ReachesItsCharacteristicFactorsAndNoMore) {
    const CharacteristicFactors factors = characteristicFactors(GetParam());
    double velocity = 0.0, acceleration = 0.0, jerk = 0.0, torque = 0.0;
    const int n = 24000;
    for (int i = 0; i <= n; ++i) {
        const Lift lift = unitLift(GetParam(), static_cast<double>(i) / n);
        velocity = std::max(velocity, lift.y1);
        acceleration = std::max(acceleration, std::abs(lift.y2));
        jerk = std::max(jerk, std::abs(lift.y3));
        const Lift left = unitLift(GetParam(), static_cast<double>(i) / n - 1e-13);
        torque = std::max({torque, lift.y1 * lift.y2, left.y1 * left.y2});
    }
    const double step = 60.0 / n / n; // curvature of a peak times half a step squared, roughly
    EXPECT_NEAR(velocity, factors.velocity, step);
    EXPECT_LE(velocity, factors.velocity * (1.0 + 1e-14));
    EXPECT_NEAR(acceleration, factors.acceleration, 10.0 * step);
    EXPECT_LE(acceleration, factors.acceleration * (1.0 + 1e-14));
    EXPECT_NEAR(jerk, factors.jerkInside, 100.0 * step);
    EXPECT_LE(jerk, factors.jerkInside * (1.0 + 1e-14));
    EXPECT_NEAR(torque, factors.torque, 100.0 * step);
    EXPECT_LE(torque, factors.torque * (1.0 + 1e-14));
}

// Jerk is infinite exactly where the acceleration does not start from zero or jumps inside.
TEST_P(EveryLaw, HasInfiniteJerkWhereAccelerationJumps) {
    const Law law = GetParam();
    double jump = std::abs(unitLift(law, 0.0).y2);
    for (double x : innerJunctions(law))
        jump = std::max(jump, std::abs(unitLift(law, x).y2 - unitLift(law, x - 1e-12).y2));
    EXPECT_EQ(jump > 1e-6, std::isinf(characteristicFactors(law).jerk));
}

TEST(InnerJunctions, StandAtTheRampsOfTheModifiedLaws) {
    EXPECT_EQ(innerJunctions(Law::parabolic), std::vector<double>{0.5});
    EXPECT_EQ(innerJunctions(Law::modifiedTrapezoid),
              (std::vector<double>{0.125, 0.375, 0.625, 0.875}));
    EXPECT_EQ(innerJunctions(Law::modifiedSine), (std::vector<double>{0.125, 0.875}));
    for (Law law : {Law::harmonic, Law::cycloidal, Law::polynomial345, Law::polynomial4567})
        EXPECT_TRUE(innerJunctions(law).empty());
}

// Peak y' = C_v·h/β and so on, against a scan of the curve itself.
TEST_P(EveryLaw, ScalesToThePeaksOfASegment) {
    const Pattern pattern = test::unequal(GetParam());
    const LiftCurve curve = LiftCurve::make(pattern).value();
    const SegmentShape& shape = std::get<SegmentShape>(pattern.shape);
    for (const SegmentPeaks& peaks : segmentPeaks(shape)) {
        double begin = 0.0;
        for (int i = 0; i < peaks.segment; ++i)
            begin += shape.segments[static_cast<std::size_t>(i)].span;
        const double span = shape.segments[static_cast<std::size_t>(peaks.segment)].span;
        double velocity = 0.0, acceleration = 0.0, jerk = 0.0, torque = 0.0;
        for (int i = 1; i < 2400; ++i) {
            const Lift lift = curve.at(begin + span * i / 2400.0);
            velocity = std::max(velocity, std::abs(lift.y1));
            acceleration = std::max(acceleration, std::abs(lift.y2));
            jerk = std::max(jerk, std::abs(lift.y3));
            torque = std::max(torque, std::abs(lift.y1 * lift.y2));
        }
        EXPECT_NEAR(velocity, peaks.velocity, 1e-5 * peaks.velocity);
        EXPECT_NEAR(acceleration, peaks.acceleration, 2e-3 * peaks.acceleration);
        EXPECT_NEAR(jerk, peaks.jerk, 5e-3 * peaks.jerk + 1e-9);
        EXPECT_NEAR(torque, peaks.torque, 1e-3 * peaks.torque);
    }
}

// What a contributor adds is a row; everything a law is asked for comes out of it. The row here is
// a law that nobody uses, s = 4x³ to mid-span: s' = 12x², s'' = 24x, and there s'' jumps.
TEST(LawTable, ALawIsOneRow) {
    Piece cubic;
    cubic.degree = 3;
    cubic.polynomial = {0.0, 0.0, 0.0, 4.0};
    const LawRow dummy{Law::harmonic, "cubic", LW_TEXT("Cubic"), {cubic}, {}, true};
    for (const double x : {0.0, 0.1, 0.25, 0.4}) {
        const Lift lift = unitLift(dummy, x), mirrored = unitLift(dummy, 1.0 - x);
        EXPECT_NEAR(lift.y, 4.0 * x * x * x, 1e-15);
        EXPECT_NEAR(lift.y1, 12.0 * x * x, 1e-14);
        EXPECT_NEAR(lift.y2, 24.0 * x, 1e-14);
        EXPECT_NEAR(mirrored.y, 1.0 - lift.y, 1e-15);
        EXPECT_NEAR(mirrored.y1, lift.y1, 1e-14);
        EXPECT_NEAR(mirrored.y2, -lift.y2, 1e-13);
    }
    EXPECT_EQ(unitLift(dummy, 0.5).y2, -12.0) << "right-hand limit";
}

TEST(LawTable, EveryLawHasItsRowKeyAndWords) {
    ASSERT_EQ(laws().size(), std::size(allLaws));
    std::set<std::string> keys, labels;
    for (const Law law : allLaws) {
        EXPECT_EQ(rowOf(law).law, law);
        keys.insert(rowOf(law).key);
        labels.insert(rowOf(law).label.text);
    }
    EXPECT_EQ(keys.size(), laws().size());
    EXPECT_EQ(labels.size(), laws().size());
}
