#include "core/motion/lift_curve.h"
#include "core/units.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <random>

using namespace lobewright;
using namespace lobewright::motion;

namespace {

constexpr double period = units::turn;

/// Bernoulli polynomials of the fractional part, with derivatives per unit [NIST Handbook of
/// Mathematical Functions, §24.2, table 24.2.2]: Bₙ' = n·Bₙ₋₁.
double bernoulli(int n, double x) {
    x -= std::floor(x);
    switch (n) {
    case 2:
        return x * x - x + 1.0 / 6.0;
    case 3:
        return x * (x * (x - 1.5) + 0.5);
    case 4:
        return x * x * (x - 1.0) * (x - 1.0) - 1.0 / 30.0;
    case 5:
        return x * (x * x * (x * (x - 2.5) + 5.0 / 3.0) - 1.0 / 6.0);
    case 6:
        return x * x * (x * x * (x * (x - 3.0) + 2.5) - 0.5) + 1.0 / 42.0;
    default:
        return 0.0;
    }
}

/// Fourth derivative just beside a knot, by a one-sided difference of the jerk: exact for the
/// linear fourth derivative of a quintic up to a parabola through three points.
double fourth(const LiftCurve& curve, double knot, double side) {
    const double h = side * 1e-3;
    const auto jerk = [&](double phi) {
        return side > 0.0 ? curve.at(phi).y3 : curve.before(phi).y3;
    };
    return (-3.0 * jerk(knot) + 4.0 * jerk(knot + h) - jerk(knot + 2.0 * h)) / (2.0 * h);
}

KnotShape sketched(unsigned seed, std::size_t count) {
    std::mt19937 random(seed);
    std::uniform_real_distribution<double> gap(0.5, 1.5), lift(0.0, 0.04);
    std::vector<double> angles{0.0};
    for (std::size_t i = 0; i < count; ++i)
        angles.push_back(angles.back() + gap(random));
    KnotShape shape;
    for (std::size_t i = 0; i < count; ++i)
        shape.knots.push_back({(angles[i] + 0.3) / angles.back() * period, lift(random), {}});
    return shape;
}

} // namespace

// Σ wᵢ·B₆(x − xᵢ) with Σ wᵢ = 0 has a piecewise constant fifth derivative: it is a periodic quintic
// spline with knots xᵢ, four times continuously differentiable, so interpolation must return it.
TEST(QuinticSpline, ReproducesAPeriodicQuinticSpline) {
    const double places[] = {0.02, 0.21, 0.35, 0.60, 0.83};
    const double weights[] = {1.0, -2.5, 3.0, 0.5, -2.0};
    const auto exact = [&](int derivative, double x) {
        const double factors[] = {1.0, 6.0, 30.0, 120.0};
        double sum = 0.0;
        for (std::size_t i = 0; i < 5; ++i)
            sum += weights[i] * bernoulli(6 - derivative, x - places[i]);
        return factors[derivative] * sum / std::pow(period, derivative);
    };
    KnotShape shape;
    for (double x : places)
        shape.knots.push_back({x * period, exact(0, x), {}});
    const LiftCurve curve = LiftCurve::make({1, shape}).value();
    const double offset = curve.at(places[0] * period).y - exact(0, places[0]);
    for (int i = 0; i < 500; ++i) {
        const double x = (i + 0.4) / 500.0;
        const Lift lift = curve.at(x * period);
        EXPECT_NEAR(lift.y - offset, exact(0, x), 1e-13);
        EXPECT_NEAR(lift.y1, exact(1, x), 1e-13);
        EXPECT_NEAR(lift.y2, exact(2, x), 1e-13);
        EXPECT_NEAR(lift.y3, exact(3, x), 1e-12);
    }
}

// B₅ is one quintic over the whole period whose fourth derivative jumps where it closes: with its
// slope given there, that knot gives up the fourth derivative and the rest follows.
TEST(QuinticSpline, WithASlopeReproducesAQuintic) {
    KnotShape shape;
    for (double x : {0.0, 0.22, 0.41, 0.77})
        shape.knots.push_back({x * period, bernoulli(5, x), {}});
    shape.knots[0].slope = 5.0 * bernoulli(4, 0.0) / period;
    const LiftCurve curve = LiftCurve::make({1, shape}).value();
    const double offset = curve.at(0.0).y;
    for (int i = 0; i < 200; ++i) {
        const double x = (i + 0.4) / 200.0;
        EXPECT_NEAR(curve.at(x * period).y - offset, bernoulli(5, x), 1e-14);
        EXPECT_NEAR(curve.at(x * period).y2, 20.0 * bernoulli(3, x) / (period * period), 1e-14);
    }
}

TEST(QuinticSpline, IsFourTimesSmoothAtEveryKnot) {
    for (unsigned seed : {1u, 2u, 3u}) {
        for (std::size_t count : {3u, 4u, 12u, 40u}) {
            const LiftCurve curve = LiftCurve::make({1, sketched(seed, count)}).value();
            double scale3 = 0.0, scale4 = 0.0;
            for (const Junction& j : curve.junctions()) {
                scale3 = std::max(scale3, std::abs(j.after.y3));
                scale4 = std::max(scale4, std::abs(fourth(curve, j.angle, 1.0)));
            }
            for (const Junction& j : curve.junctions()) {
                EXPECT_NEAR(j.before.y, j.after.y, 1e-15);
                EXPECT_NEAR(j.before.y1, j.after.y1, 1e-12);
                EXPECT_NEAR(j.before.y2, j.after.y2, 1e-11);
                EXPECT_NEAR(j.before.y3, j.after.y3, 1e-9 * scale3);
                EXPECT_NEAR(fourth(curve, j.angle, -1.0), fourth(curve, j.angle, 1.0),
                            1e-9 * scale4);
            }
        }
    }
}

TEST(QuinticSpline, PassesThroughItsKnotsAndSlopes) {
    KnotShape shape = sketched(4, 9);
    shape.knots[2].slope = 0.013;
    shape.knots[3].slope = -0.02;
    const LiftCurve curve = LiftCurve::make({1, shape}).value();
    const double offset = curve.at(shape.knots[0].angle).y - shape.knots[0].lift;
    for (const Knot& knot : shape.knots) {
        EXPECT_NEAR(curve.at(knot.angle).y - offset, knot.lift, 1e-15);
        if (knot.slope) {
            EXPECT_NEAR(curve.at(knot.angle).y1, *knot.slope, 1e-14);
            EXPECT_NEAR(curve.before(knot.angle).y3, curve.at(knot.angle).y3, 1e-9);
        }
    }
}

// Lowest lift exactly 0 and highest the stroke, against a scan of 200 000 places.
TEST(QuinticSpline, StandsOnItsLowestPoint) {
    for (unsigned seed = 10; seed < 16; ++seed) {
        const LiftCurve curve = LiftCurve::make({1, sketched(seed, 8)}).value();
        double lowest = 1.0, highest = -1.0;
        for (int i = 0; i < 200000; ++i) {
            const double y = curve.at(period * i / 200000.0).y;
            lowest = std::min(lowest, y);
            highest = std::max(highest, y);
        }
        EXPECT_GE(lowest, -1e-17);
        EXPECT_LE(lowest, 1e-10);
        EXPECT_LE(highest, curve.stroke() + 1e-17);
        EXPECT_GE(highest, curve.stroke() - 1e-10);
    }
}

TEST(QuinticSpline, CountsItsRises) {
    const double d = units::degree;
    const KnotShape twice{{{10 * d, 0.0, {}},
                           {80 * d, 0.03, {}},
                           {150 * d, 0.01, {}},
                           {220 * d, 0.036, {}},
                           {290 * d, 0.012, {}}}};
    EXPECT_EQ(LiftCurve::make({1, twice})->risesPerPattern(), 2);
}

// Turning the whole sketch turns the curve: the seam of the period is no special place.
TEST(QuinticSpline, DoesNotKnowWhereThePeriodBegins) {
    const KnotShape shape = sketched(21, 7);
    KnotShape turned;
    const double shift = shape.knots[3].angle + 0.05;
    for (std::size_t i = 0; i < shape.knots.size(); ++i) {
        Knot knot = shape.knots[(i + 4) % shape.knots.size()];
        knot.angle += knot.angle < shift ? period - shift : -shift;
        turned.knots.push_back(knot);
    }
    const LiftCurve a = LiftCurve::make({1, shape}).value();
    const LiftCurve b = LiftCurve::make({1, turned}).value();
    for (int i = 0; i < 100; ++i) {
        const double phi = period * i / 100.0;
        EXPECT_NEAR(a.at(phi + shift).y, b.at(phi).y, 1e-14);
        EXPECT_NEAR(a.at(phi + shift).y2, b.at(phi).y2, 1e-11);
    }
}
