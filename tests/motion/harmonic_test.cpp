#include "core/motion/lift_curve.h"
#include "core/units.h"

#include <gtest/gtest.h>

#include <cmath>
#include <random>

using namespace lobewright;
using namespace lobewright::motion;

namespace {

HarmonicShape random(unsigned seed, int orders) {
    std::mt19937 engine(seed);
    std::normal_distribution<double> amplitude(0.0, 0.01);
    HarmonicShape shape;
    for (int k = 1; k <= orders; ++k)
        shape.harmonics.push_back({k, amplitude(engine) / k, amplitude(engine) / k});
    return shape;
}

} // namespace

// One harmonic is the crank with an endless rod: y = S/2·(1 − cos Nφ).
TEST(HarmonicSeries, OfOneTermIsASineWave) {
    const LiftCurve curve = LiftCurve::make({3, HarmonicShape{{{1, -0.02, 0.0}}}}).value();
    EXPECT_NEAR(curve.stroke(), 0.04, 1e-17);
    EXPECT_EQ(curve.cyclesPerTurn(), 3);
    for (double phi : {0.0, 0.3, 1.0, 5.0}) {
        EXPECT_NEAR(curve.at(phi).y, 0.02 * (1.0 - std::cos(3 * phi)), 1e-16);
        EXPECT_NEAR(curve.at(phi).y1, 0.06 * std::sin(3 * phi), 1e-15);
        EXPECT_NEAR(curve.at(phi).y2, 0.18 * std::cos(3 * phi), 1e-15);
        EXPECT_NEAR(curve.at(phi).y3, -0.54 * std::sin(3 * phi), 1e-14);
    }
}

// Parseval: the mean of (y − mean)² is Σ (a² + b²)/2, and each derivative brings order·lobes.
// Even sampling integrates a trigonometric polynomial exactly.
TEST(HarmonicSeries, KeepsTheSumOfSquares) {
    const int lobes = 2, orders = 12, samples = 64;
    const HarmonicShape shape = random(3, orders);
    const LiftCurve curve = LiftCurve::make({lobes, shape}).value();
    double mean = 0.0, y = 0.0, y1 = 0.0, y2 = 0.0, y3 = 0.0;
    for (int i = 0; i < samples; ++i)
        mean += curve.at(curve.period() * i / samples).y / samples;
    for (int i = 0; i < samples; ++i) {
        const Lift lift = curve.at(curve.period() * i / samples);
        y += (lift.y - mean) * (lift.y - mean) / samples;
        y1 += lift.y1 * lift.y1 / samples;
        y2 += lift.y2 * lift.y2 / samples;
        y3 += lift.y3 * lift.y3 / samples;
    }
    double power[4] = {};
    for (const Harmonic& term : shape.harmonics) {
        const double square = 0.5 * (term.cosine * term.cosine + term.sine * term.sine);
        for (int n = 0; n < 4; ++n)
            power[n] += square * std::pow(lobes * term.order, 2 * n);
    }
    EXPECT_NEAR(y, power[0], 1e-13 * power[0]);
    EXPECT_NEAR(y1, power[1], 1e-13 * power[1]);
    EXPECT_NEAR(y2, power[2], 1e-12 * power[2]);
    EXPECT_NEAR(y3, power[3], 1e-12 * power[3]);
}

// Lowest lift exactly 0, against a scan of 100 000 places.
TEST(HarmonicSeries, StandsOnItsLowestPoint) {
    for (unsigned seed = 1; seed <= 6; ++seed) {
        const LiftCurve curve = LiftCurve::make({1, random(seed, 15)}).value();
        double lowest = 1.0, highest = -1.0;
        for (int i = 0; i < 100000; ++i) {
            const double y = curve.at(units::turn * i / 100000.0).y;
            lowest = std::min(lowest, y);
            highest = std::max(highest, y);
        }
        EXPECT_GE(lowest, -1e-17);
        EXPECT_LE(lowest, 1e-9);
        EXPECT_LE(highest, curve.stroke() + 1e-17);
        EXPECT_GE(highest, curve.stroke() - 1e-9);
    }
}

// −a·cos x + b·cos 2x with b > a/4 has two troughs beside a middle crest that stands
// (a − 4b)²/(8b) above them; it makes a rise of its own from 5 % of the stroke on.
TEST(HarmonicSeries, CountsItsRises) {
    EXPECT_EQ(LiftCurve::make({5, HarmonicShape{{{3, 0.01, 0.003}}}})->risesPerPattern(), 3);
    const double a = 0.01;
    const auto curve = [&](double b) {
        return LiftCurve::make({1, HarmonicShape{{{1, -a, 0.0}, {2, b, 0.0}}}}).value();
    };
    EXPECT_EQ(curve(0.24 * a).risesPerPattern(), 1);
    EXPECT_EQ(curve(0.35 * a).risesPerPattern(), 1) << "a ripple of 2.8 % of the stroke";
    const double b = 0.5 * a; // 11 % of the stroke
    const std::vector<TurningPoint> turns = curve(b).turningPoints();
    ASSERT_EQ(turns.size(), 4u);
    EXPECT_TRUE(turns[0].crest);
    EXPECT_NEAR(turns[0].begin, 0.0, 1e-12);
    EXPECT_NEAR(turns[0].lift, (a - 4.0 * b) * (a - 4.0 * b) / (8.0 * b), 1e-15);
    EXPECT_NEAR(turns[1].begin, std::acos(a / (4.0 * b)), 1e-12);
    EXPECT_EQ(turns[1].lift, 0.0);
    EXPECT_NEAR(turns[2].begin, units::pi, 1e-12);
    EXPECT_EQ(turns[2].lift, curve(b).stroke());
}

// A flat crest (slope with a triple root) is still one extreme.
TEST(HarmonicSeries, CountsAFlatCrestOnce) {
    const LiftCurve curve =
        LiftCurve::make({1, HarmonicShape{{{1, -0.04, 0.0}, {2, -0.01, 0.0}}}}).value();
    EXPECT_EQ(curve.risesPerPattern(), 1);
    EXPECT_NEAR(curve.at(units::pi).y, curve.stroke(), 1e-15);
}

TEST(HarmonicSeries, TakesOrdersInAnySequence) {
    const LiftCurve a =
        LiftCurve::make({1, HarmonicShape{{{1, -0.02, 0.001}, {4, 0.002, 0.0}}}}).value();
    const LiftCurve b =
        LiftCurve::make({1, HarmonicShape{{{4, 0.002, 0.0}, {1, -0.02, 0.001}}}}).value();
    EXPECT_EQ(a.at(0.7).y, b.at(0.7).y);
}
