#include "core/contact/elliptic_contact.h"

#include "core/units.h"

#include <boost/math/special_functions/ellint_rd.hpp>

#include <algorithm>
#include <cassert>
#include <cmath>

namespace lobewright::contact {

namespace {

/// Double precision throughout: Boost would promote to long double otherwise.
using Policy = boost::math::policies::policy<boost::math::policies::promote_double<false>>;

/// The two integrals that K, E and the ratio of radii are made of, q = 1/k² [DLMF 19.25.1]; free of
/// cancellation at k = 1, unlike K − E.
struct Carlson {
    double along = 0.0;  ///< R_D(0, q, 1)
    double across = 0.0; ///< R_D(0, 1, q)
    explicit Carlson(double q)
        : along(boost::math::ellint_rd(0.0, q, 1.0, Policy())),
          across(boost::math::ellint_rd(0.0, 1.0, q, Policy())) {}
    /// (k²·E − K)/(K − E).
    double ratio() const { return across / along; }
};

} // namespace

Ellipticity ellipticity(double ratio, double guess) {
    assert(ratio >= 1.0 && std::isfinite(ratio));
    // Secant on ln(ratio) over ln k, almost a straight line; start after Hamrock and Brewe.
    const double target = std::log(ratio);
    const auto error = [target](double logarithm) {
        return std::log(Carlson(std::exp(-2.0 * logarithm)).ratio()) - target;
    };
    constexpr double usualSlope = 1.55;
    double u = guess > 1.0 ? std::log(guess) : 0.636 * target;
    double miss = error(u);
    double slope = usualSlope;
    constexpr int mostSteps = 50;
    for (int step = 0; step < mostSteps && std::abs(miss) > 4e-16 * (1.0 + target); ++step) {
        const double next = std::max(u - miss / slope, 0.0);
        const double nextMiss = error(next);
        if (next == u || std::abs(nextMiss) >= std::abs(miss)) {
            break; // rounding level
        }
        slope = (nextMiss - miss) / (next - u);
        u = next;
        miss = nextMiss;
    }
    const double q = std::exp(-2.0 * u);
    const Carlson integrals(q);
    const double second = q / 3.0 * (integrals.along + integrals.across);
    return {std::exp(u), second + (1.0 - q) / 3.0 * integrals.along, second};
}

PointContact pointContact(double load, double radiusX, double radiusY, double modulus,
                          double guess) {
    assert(radiusX > 0.0 && radiusY > 0.0 && load >= 0.0);
    PointContact contact;
    const double larger = std::max(radiusX, radiusY);
    const double smaller = std::min(radiusX, radiusY);
    contact.shape = ellipticity(larger / smaller, guess);
    const double k = contact.shape.k;
    const double radius = 1.0 / (1.0 / larger + 1.0 / smaller);
    const double twice = 2.0 * modulus; // E'
    const double size =
        std::cbrt(6.0 * contact.shape.second * load * radius / (units::pi * twice * k));
    contact.shortSemiAxis = size;
    contact.longSemiAxis = k * size;
    if (load > 0.0) {
        contact.peakPressure = 1.5 * load / (units::pi * k * size * size);
        const double stiffness = load / (units::pi * k * twice);
        contact.approach = contact.shape.first *
                           std::cbrt(4.5 / (contact.shape.second * radius) * stiffness * stiffness);
    }
    return contact;
}

} // namespace lobewright::contact
