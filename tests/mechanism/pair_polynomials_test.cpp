#include "core/mechanism/pair_polynomials.h"
#include "tests/machines.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::mechanism {
namespace {

/// Largest deviation from the closed form, as share of both strokes (rates: per radian).
double deviation(const OpposedPair& pair) {
    const PairPolynomials polynomials(pair);
    const double strokes = pair.curve(End::inlet).stroke() + pair.curve(End::exhaust).stroke();
    double worst = 0.0;
    for (double theta = -1.0; theta < 7.5; theta += 1.7e-3) {
        const PairState exact = pair.at(theta);
        const auto place = polynomials.place(theta);
        const auto motion = polynomials.motion(place);
        worst = std::max(
            {worst, std::fabs(motion.gap - exact.gap),
             std::fabs(motion.gapRate * pair.pistonArea() - exact.volumeRate) / pair.pistonArea()});
        const PerEnd<double>& positions = motion.positions;
        for (const End end : bothEnds) {
            worst =
                std::max(worst, std::fabs(positions[end] - (exact.lift[end].y - pair.shift(end))));
        }
    }
    return worst / strokes;
}

Mechanism shifted() {
    Mechanism m = machines::pumpMechanism();
    m.adjuster.helixLead = 0.05;
    m.adjuster.setting = 3.0 * units::degree;
    m.adjuster.axial = 0.0003;
    return m;
}

// The closed forms are exact; rounding of both is some 1e-15.
TEST(PairPolynomials, EqualTheClosedFormOfEveryLaw) {
    for (const motion::Law law : motion::allLaws) {
        EXPECT_LT(deviation(machines::pair(shifted(),
                                           machines::lobe(2, 0.036, 82.0, 4.0, 78.0, 16.0, law))),
                  2e-14)
            << static_cast<int>(law);
    }
}

TEST(PairPolynomials, EqualSplinesAndHarmonicSeries) {
    const motion::Pattern knots{
        2,
        motion::KnotShape{{{0.0, 0.0, {}}, {0.9, 0.021, {}}, {1.5, 0.036, 0.0}, {2.3, 0.014, {}}}}};
    const motion::Pattern series{
        2, motion::HarmonicShape{{{1, -0.015, 0.002}, {2, 0.001, 0.0}, {17, 1e-5, 2e-5}}}};
    for (const motion::Pattern& pattern : {knots, series}) {
        EXPECT_LT(deviation(machines::pair(shifted(), pattern)), 3e-14);
    }
}

TEST(PairPolynomials, StretchesCoverThePeriodWithoutGaps) {
    const OpposedPair pair = machines::pair(shifted(), machines::pumpTrack());
    const PairPolynomials polynomials(pair);
    EXPECT_EQ(polynomials.begin(0), 0.0);
    for (std::size_t i = 0; i + 1 < polynomials.stretches(); ++i) {
        EXPECT_EQ(polynomials.end(i), polynomials.begin(i + 1));
    }
    EXPECT_EQ(polynomials.end(polynomials.stretches() - 1), pair.period());
}

} // namespace
} // namespace lobewright::mechanism
