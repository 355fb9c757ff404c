#include "core/motion/jumps.h"
#include "core/motion/lift_curve.h"
#include "patterns.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

using namespace lobewright;
using namespace lobewright::motion;
using namespace lobewright::motion::test;

namespace {

class SegmentCurve : public testing::TestWithParam<Law> {
  protected:
    LiftCurve dwellingCurve() const { return LiftCurve::make(dwelling(GetParam())).value(); }
    LiftCurve unequalCurve() const { return LiftCurve::make(unequal(GetParam())).value(); }
};

/// Largest magnitude of each derivative over a fine scan.
Lift peaks(const LiftCurve& curve) {
    Lift peak;
    for (int i = 0; i < 20000; ++i) {
        const Lift lift = curve.at(curve.period() * i / 20000.0);
        peak.y = std::max(peak.y, std::abs(lift.y));
        peak.y1 = std::max(peak.y1, std::abs(lift.y1));
        peak.y2 = std::max(peak.y2, std::abs(lift.y2));
        peak.y3 = std::max(peak.y3, std::abs(lift.y3));
    }
    return peak;
}

bool nearJunction(const LiftCurve& curve, double phi, double distance) {
    return std::any_of(curve.junctions().begin(), curve.junctions().end(), [&](const Junction& j) {
        return std::abs(std::remainder(phi - j.angle, curve.period())) < distance;
    });
}

/// Each derivative against the central difference of the one before, 200 places away from
/// junctions. Step 1e-5 rad: error step²/6 of the third next derivative plus rounding/step.
void expectDerivativesToFit(const LiftCurve& curve) {
    const double step = 1e-5;
    const Lift peak = peaks(curve);
    std::mt19937 random(7);
    std::uniform_real_distribution<double> angle(0.0, curve.period());
    for (int i = 0; i < 200; ++i) {
        const double phi = angle(random);
        if (nearJunction(curve, phi, 2.0 * step))
            continue;
        const Lift left = curve.at(phi - step), here = curve.at(phi), right = curve.at(phi + step);
        const double rounding = 1e-15 / step;
        const double scale = step * step * 1000.0;
        EXPECT_NEAR(here.y1, (right.y - left.y) / (2.0 * step),
                    scale * peak.y1 + rounding * peak.y);
        EXPECT_NEAR(here.y2, (right.y1 - left.y1) / (2.0 * step),
                    scale * peak.y2 + rounding * peak.y1);
        EXPECT_NEAR(here.y3, (right.y2 - left.y2) / (2.0 * step),
                    scale * peak.y3 + rounding * peak.y2);
    }
}

} // namespace

INSTANTIATE_TEST_SUITE_P(Laws, SegmentCurve, testing::ValuesIn(allLaws), lawName);

TEST_P(SegmentCurve, HasTheDerivativesOfItsLift) {
    expectDerivativesToFit(dwellingCurve());
    expectDerivativesToFit(unequalCurve());
}

TEST(KnotAndHarmonicCurve, HasTheDerivativesOfItsLift) {
    const double d = units::degree;
    const KnotShape knots{{{5 * d, 0.0, {}},
                           {40 * d, 0.012, 0.02},
                           {85 * d, 0.036, {}},
                           {120 * d, 0.02, {}},
                           {160 * d, 0.001, 0.0}}};
    expectDerivativesToFit(LiftCurve::make({2, knots}).value());
    const HarmonicShape harmonics{{{1, -0.018, 0.001}, {2, 0.001, -0.0005}, {5, 0.0001, 0.0}}};
    expectDerivativesToFit(LiftCurve::make({2, harmonics}).value());
}

TEST_P(SegmentCurve, MeetsItsLiftsAtEverySegment) {
    const LiftCurve curve = dwellingCurve();
    const double d = units::degree;
    EXPECT_EQ(curve.stroke(), 0.036);
    EXPECT_EQ(curve.at(0.0).y, 0.0);
    EXPECT_NEAR(curve.at(41 * d).y, 0.018, 1e-15);
    EXPECT_EQ(curve.at(82 * d).y, 0.036);
    EXPECT_EQ(curve.at(84 * d).y, 0.036);
    EXPECT_NEAR(curve.at(125 * d).y, 0.018, 1e-15);
    EXPECT_EQ(curve.at(170 * d).y, 0.0);
    EXPECT_EQ(curve.at(170 * d).y1, 0.0);
}

TEST_P(SegmentCurve, RepeatsEveryPeriod) {
    const LiftCurve curve = dwellingCurve();
    for (double phi : {0.1, 1.3, 2.9}) {
        for (int turns : {-7, -1, 1, 40}) {
            const Lift here = curve.at(phi), there = curve.at(phi + turns * curve.period());
            EXPECT_NEAR(here.y, there.y, 1e-14);
            EXPECT_NEAR(here.y1, there.y1, 1e-13);
            EXPECT_NEAR(here.y2, there.y2, 1e-12);
        }
    }
}

TEST_P(SegmentCurve, NeverLeavesTheStroke) {
    for (const LiftCurve& curve : {dwellingCurve(), unequalCurve()}) {
        for (int i = 0; i < 5000; ++i) {
            const double y = curve.at(curve.period() * i / 5000.0).y;
            EXPECT_GE(y, -1e-18);
            EXPECT_LE(y, curve.stroke() * (1.0 + 1e-15));
        }
    }
}

// Laws that start and end at rest join without a velocity jump; the harmonic and parabolic laws
// jump in acceleration by C_a·h/β² against a dwell.
TEST_P(SegmentCurve, ReportsTheJumpsOfItsLaw) {
    const LiftCurve curve = dwellingCurve();
    const Law law = GetParam();
    const double span = 82 * units::degree;
    const Junction& start = curve.junctions().front();
    EXPECT_EQ(start.angle, 0.0);
    EXPECT_EQ(start.segment, 0);
    EXPECT_FALSE(start.insideLaw);
    EXPECT_EQ(start.before.y2, 0.0);
    const double jump = law == Law::harmonic    ? units::pi * units::pi / 2.0
                        : law == Law::parabolic ? 4.0
                                                : 0.0;
    EXPECT_NEAR(start.after.y2, jump * 0.036 / (span * span), 1e-12);
    for (const Junction& junction : curve.junctions()) {
        EXPECT_NEAR(junction.before.y, junction.after.y, 1e-16);
        EXPECT_NEAR(junction.before.y1, junction.after.y1, 1e-15);
    }
}

TEST(SegmentJunctions, LieInsideLawsToo) {
    const double d = units::degree;
    const LiftCurve curve = LiftCurve::make(dwelling(Law::modifiedTrapezoid)).value();
    std::vector<double> angles;
    std::vector<int> segments;
    for (const Junction& junction : curve.junctions()) {
        angles.push_back(junction.angle / d);
        segments.push_back(junction.segment);
    }
    const std::vector<double> expected = {0,  10.25, 30.75,  51.25,  71.75,  82,
                                          86, 95.75, 115.25, 134.75, 154.25, 164};
    ASSERT_EQ(angles.size(), expected.size());
    for (std::size_t i = 0; i < angles.size(); ++i)
        EXPECT_NEAR(angles[i], expected[i], 1e-12);
    EXPECT_EQ(segments, (std::vector<int>{0, 0, 0, 0, 0, 1, 2, 2, 2, 2, 2, 3}));
}

// Rounding in φ = θ − ψ must not decide on which side of a junction a sample falls.
TEST(SegmentJunctions, HaveBothLimitsWhateverTheRounding) {
    const LiftCurve curve = LiftCurve::make(dwelling(Law::parabolic)).value();
    for (const Junction& junction : curve.junctions()) {
        for (int periods : {-3, 0, 5}) {
            for (double rounding : {-2e-14, 0.0, 2e-14}) {
                const double phi = junction.angle + periods * curve.period() + rounding;
                EXPECT_NEAR(curve.at(phi).y2, junction.after.y2, 1e-12);
                EXPECT_NEAR(curve.before(phi).y2, junction.before.y2, 1e-12);
            }
        }
    }
}

// The harmonic law starts and ends with C_a/2·h/β² [VDI 2143-1: C_a = π²/2 at both ends]; beside a
// dwell that is a jump of acceleration, of the same size and sign as the limits differ, and none of
// velocity. A law that starts from rest with finite jerk jumps in jerk alone.
TEST(Jumps, AreThoseOfTheLawBesideADwell) {
    const LiftCurve harmonic = LiftCurve::make(dwelling(Law::harmonic)).value();
    EXPECT_TRUE(jumps(harmonic, 1).empty());
    const std::vector<Jump> found = jumps(harmonic, 2);
    ASSERT_EQ(found.size(), 4u);
    for (const Jump& jump : found) {
        EXPECT_EQ(jump.before, harmonic.before(jump.angle).y2);
        EXPECT_EQ(jump.after, harmonic.at(jump.angle).y2);
        EXPECT_GT(std::abs(jump.change()), 0.0);
    }
    const LiftCurve cycloidal = LiftCurve::make(dwelling(Law::cycloidal)).value();
    EXPECT_TRUE(jumps(cycloidal, 1).empty());
    EXPECT_TRUE(jumps(cycloidal, 2).empty());
    EXPECT_EQ(jumps(cycloidal, 3).size(), 4u);
}

TEST(Cycles, AreCountedPerRise) {
    EXPECT_EQ(LiftCurve::make(dwelling(Law::cycloidal))->cyclesPerTurn(), 2);
    const LiftCurve curve = LiftCurve::make(unequal(Law::cycloidal)).value();
    EXPECT_EQ(curve.risesPerPattern(), 3) << "a rise in two stages is one rise";
    EXPECT_EQ(curve.cyclesPerTurn(), 3);
    EXPECT_EQ(curve.lobes(), 1);
}

TEST(TurningPoints, AreTheCrestsAndTroughsInTurn) {
    const double d = units::degree;
    const LiftCurve curve = LiftCurve::make(unequal(Law::modifiedTrapezoid)).value();
    const double begins[] = {60, 110, 190, 250, 285, 350};
    const double ends[] = {60, 110, 190, 250, 285, 365};
    const double lifts[] = {0.040, 0.0, 0.030, 0.005, 0.025, 0.0};
    ASSERT_EQ(curve.turningPoints().size(), 6u);
    for (std::size_t i = 0; i < 6; ++i) {
        const TurningPoint& point = curve.turningPoints()[i];
        EXPECT_NEAR(point.begin / d, begins[i], 1e-12);
        EXPECT_NEAR(point.end / d, ends[i], 1e-12);
        EXPECT_EQ(point.lift, lifts[i]);
        EXPECT_EQ(point.crest, i % 2 == 0);
    }
}

// A step back of 4 % of the stroke is no stroke of the engine, one of 6 % is.
TEST(TurningPoints, LeaveOutRipples) {
    const auto rises = [](double back) {
        const Law law = Law::modifiedSine;
        return LiftCurve::make({1, SegmentShape{0.050,
                                                {rise(90, law, 0.030), fall(30, law, 0.030 - back),
                                                 rise(80, law), fall(160, law)}}})
            ->risesPerPattern();
    };
    EXPECT_EQ(rises(0.0020), 1);
    EXPECT_EQ(rises(0.0030), 2);
}

TEST(Plateaus, AreTheDwellsAndRunOverTheEndOfThePeriod) {
    const double d = units::degree;
    const LiftCurve curve = LiftCurve::make(unequal(Law::modifiedSine)).value();
    ASSERT_EQ(curve.plateaus().size(), 2u);
    const Plateau& stage = curve.plateaus()[0];
    EXPECT_NEAR(stage.begin / d, 140.0, 1e-12);
    EXPECT_NEAR(stage.end / d, 150.0, 1e-12);
    EXPECT_EQ(stage.lift, 0.015);
    const Plateau& outer = curve.plateaus()[1];
    EXPECT_NEAR(outer.begin / d, 350.0, 1e-12);
    EXPECT_NEAR(outer.end / d, 365.0, 1e-12);
    EXPECT_EQ(outer.lift, 0.0);
}

TEST(Sampling, EqualsPointwiseEvaluation) {
    const LiftCurve curve = LiftCurve::make(unequal(Law::polynomial345)).value();
    const Samples phi = Samples::LinSpaced(97, -3.0, 9.0);
    const LiftSamples samples = curve.sample(phi);
    for (Eigen::Index i = 0; i < phi.size(); ++i) {
        const Lift lift = curve.at(phi(i));
        EXPECT_EQ(samples.y(i), lift.y);
        EXPECT_EQ(samples.y1(i), lift.y1);
        EXPECT_EQ(samples.y2(i), lift.y2);
        EXPECT_EQ(samples.y3(i), lift.y3);
    }
}

TEST_P(SegmentCurve, DividesItselfIntoSmoothStretches) {
    const LiftCurve curve = unequalCurve();
    const std::vector<double>& bounds = curve.divisions();
    EXPECT_EQ(bounds.front(), 0.0);
    EXPECT_EQ(bounds.back(), curve.period());
    EXPECT_TRUE(std::is_sorted(bounds.begin(), bounds.end()));
    for (const Junction& junction : curve.junctions())
        EXPECT_TRUE(std::binary_search(bounds.begin(), bounds.end(), junction.angle));
}
