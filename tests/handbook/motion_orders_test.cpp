#include "core/motion/lift_curve.h"
#include "core/units.h"
#include "tests/laws.h"

#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <gtest/gtest.h>

#include <array>
#include <cmath>

using namespace lobewright;
using namespace lobewright::motion;

namespace {

/// Cosine amplitude of order k of y''·(β²/h) for a wave without dwells of one law; quadrature
/// between the divisions of the curve.
double order(Law law, int k) {
    const double stroke = 0.036, span = units::pi / 2.0;
    const LiftCurve curve = LiftCurve::make({2, SegmentShape{stroke,
                                                             {{SegmentKind::rise, span, law, {}},
                                                              {SegmentKind::fall, span, law, {}}}}})
                                .value();
    const auto integrand = [&](double phi) {
        return curve.at(phi).y2 * std::cos(k * units::pi * phi / span);
    };
    double integral = 0.0;
    const std::vector<double>& bounds = curve.divisions();
    for (std::size_t i = 0; i + 1 < bounds.size(); ++i) {
        integral += boost::math::quadrature::gauss_kronrod<double, 31>::integrate(
            integrand, bounds[i], bounds[i + 1], 10, 1e-13);
    }
    return integral / span * span * span / stroke;
}

struct Content {
    Law law;
    std::array<double, 4> amplitudes; ///< A1, A3, A5, A7
};

void PrintTo(const Content& content, std::ostream* out) {
    *out << testName(content.law);
}

class OrderContent : public testing::TestWithParam<Content> {};

} // namespace

// Acceleration of a dwell-free wave, s'' = Σ A_k·cos(kπx); six digits computed from the
// definitions, cycloidal A_k = 16/(4 − k²) in closed form. Even orders vanish by symmetry.
TEST_P(OrderContent, HasTheTabulatedAmplitudes) {
    const Content& expected = GetParam();
    for (std::size_t i = 0; i < 4; ++i) {
        const int k = 2 * static_cast<int>(i) + 1;
        EXPECT_NEAR(order(expected.law, k), expected.amplitudes[i], 6e-7) << "order " << k;
        EXPECT_NEAR(order(expected.law, k + 1), 0.0, 1e-9) << "order " << k + 1;
    }
}
INSTANTIATE_TEST_SUITE_P(
    Handbook, OrderContent,
    testing::Values(Content{Law::harmonic, {4.934802, 0.0, 0.0, 0.0}},
                    Content{Law::cycloidal, {16.0 / 3.0, -16.0 / 5.0, -16.0 / 21.0, -16.0 / 45.0}},
                    Content{Law::polynomial345, {5.248945, -2.336886, -0.925378, -0.483953}},
                    Content{Law::polynomial4567, {5.468702, -4.534879, -0.635438, -0.168832}},
                    Content{Law::modifiedSine, {5.160396, -1.465997, -0.915694, -0.681065}},
                    Content{Law::modifiedTrapezoid, {5.252489, -2.639170, 0.125168, -0.987694}}),
    [](const auto& each) { return testName(each.param.law); });

// A harmonic wave on two lobes, 40 mm at 3000 rev/min: peak speed 12.566371 m/s, π/2 times the
// mean of 8 m/s, and peak acceleration 7895.6835 m/s² (closed form).
TEST(HarmonicWave, HasPeakSpeedHalfPiTimesTheMean) {
    const double omega = 3000.0 * units::revPerMinute;
    const LiftCurve curve = LiftCurve::make({2, HarmonicShape{{{1, -0.020, 0.0}}}}).value();
    EXPECT_NEAR(omega * curve.at(units::pi / 4.0).y1, 12.566371, 5e-7);
    EXPECT_NEAR(omega * omega * curve.at(0.0).y2, 7895.6835, 5e-5);
    const double mean = 2.0 * curve.stroke() * curve.cyclesPerTurn() * omega / units::turn;
    EXPECT_NEAR(mean, 8.0, 1e-12);
}
