// Main formulas beside a general mathematical library (Boost.Math): the same question asked another
// way, by quadrature, search or a distribution function of statistics.
#include "core/contact/elliptic_contact.h"
#include "core/contact/line_contact.h"
#include "core/gas/models/orifice.h"
#include "core/gas/models/supply.h"
#include "core/gas/models/wiebe.h"
#include "core/gas/properties/properties.h"
#include "core/motion/motion_law.h"
#include "core/units.h"
#include "tests/laws.h"

#include <boost/math/distributions/weibull.hpp>
#include <boost/math/quadrature/gauss_kronrod.hpp>
#include <boost/math/tools/minima.hpp>
#include <boost/math/tools/roots.hpp>
#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace lobewright {
namespace {

using units::pi;

template <class F>
double integral(F&& f, double from, double to) {
    return boost::math::quadrature::gauss_kronrod<double, 61>::integrate(f, from, to, 12, 1e-12);
}

double squared(double x) {
    return x * x;
}

} // namespace

// 1 − exp(−a·ξ^(m+1)) is the Weibull distribution of shape m + 1 and scale a^(−1/(m+1)).
TEST(BesideALibrary, WiebeIsTheWeibullDistribution) {
    for (const auto& [a, m] : {std::pair{6.908, 2.0}, std::pair{5.0, 2.0}, std::pair{4.0, 0.7}}) {
        const boost::math::weibull_distribution<> weibull(m + 1.0, std::pow(a, -1.0 / (m + 1.0)));
        for (const double xi : {0.05, 0.2, 0.5, 0.8, 1.0}) {
            EXPECT_NEAR(gas::wiebeBurnt(xi, a, m), cdf(weibull, xi), 1e-13);
            EXPECT_NEAR(gas::wiebeRate(xi, a, m), pdf(weibull, xi), 1e-11);
        }
        for (const double share : {0.1, 0.5, 0.9}) {
            EXPECT_NEAR(gas::wiebeProgress(share, a, m),
                        quantile(weibull, share * cdf(weibull, 1.0)), 1e-12);
        }
    }
}

// The choked flow is the largest that the subsonic law gives at any pressure ratio.
TEST(BesideALibrary, ChokingIsTheMaximumOfTheSubsonicLaw) {
    for (const double gamma : {1.25, 1.35, 1.4, 1.667}) {
        const auto lessFlow = [gamma](double ratio) {
            return -2.0 * gamma / (gamma - 1.0) *
                   (std::pow(ratio, 2.0 / gamma) - std::pow(ratio, (gamma + 1.0) / gamma));
        };
        const auto [ratio, flow] = boost::math::tools::brent_find_minima(lessFlow, 0.2, 0.9, 50);
        EXPECT_NEAR(gas::flowFunction(0.2, gamma).value, std::sqrt(-flow), 1e-12);
        EXPECT_LT(gas::flowFunction(ratio - 1e-5, gamma).choking, 0.0);
        EXPECT_GT(gas::flowFunction(ratio + 1e-5, gamma).choking, 0.0);
    }
}

// Enthalpy is the integral of the heat; the fits change at 1000 K and are made to meet there.
TEST(BesideALibrary, EnthalpyIsTheIntegralOfTheHeat) {
    for (const gas::Species species : {gas::Species::nitrogen, gas::Species::oxygen,
                                       gas::Species::carbonDioxide, gas::Species::water}) {
        const auto heat = [species](double t) { return gas::molarHeat(species, t); };
        const double cold = integral(heat, 298.15, 1000.0);
        EXPECT_NEAR(gas::molarEnthalpy(species, 700.0), integral(heat, 298.15, 700.0), 0.1);
        EXPECT_NEAR(gas::molarEnthalpy(species, 2400.0), cold + integral(heat, 1000.0, 2400.0),
                    2.0);
    }
}

// Isentropic compression of air with its changing heat: ∫c_p/T dT = R·ln(p₂/p₁). The program takes
// the heat ratio at the beginning, which is 0.7 % too much work at three times the pressure.
TEST(BesideALibrary, CompressionFollowsTheEntropyOfAir) {
    const gas::GasGroup& air = gas::dryAir();
    gas::Supply supply;
    supply.ambientPressure = 1e5;
    supply.ambientTemperature = 298.15;
    supply.isentropicEfficiency = 1.0;
    for (const double ratio : {1.2, 2.0, 3.0}) {
        const auto entropy = [&](double t) {
            return integral([&](double x) { return air.heat(x) / x; }, 298.15, t) -
                   air.gasConstant() * std::log(ratio);
        };
        boost::uintmax_t steps = 100;
        const auto bracket = boost::math::tools::toms748_solve(
            entropy, 298.15, 800.0, boost::math::tools::eps_tolerance<double>(40), steps);
        const double work = air.enthalpy(bracket.first) - air.enthalpy(298.15);
        EXPECT_NEAR(gas::compress(supply, air, ratio * 1e5).work / work, 1.0, 8e-3) << ratio;
    }
}

// Lift is the acceleration integrated twice, y(x) = ∫(x − s)·y''(s) ds.
TEST(BesideALibrary, LiftIsTheAccelerationIntegratedTwice) {
    using motion::Law;
    for (const Law law : {Law::harmonic, Law::cycloidal, Law::parabolic, Law::modifiedTrapezoid,
                          Law::modifiedSine, Law::polynomial345, Law::polynomial4567}) {
        for (const double x : {0.1, 0.37, 0.5, 0.81, 1.0}) {
            std::vector<double> bounds = motion::innerJunctions(law);
            std::erase_if(bounds, [x](double at) { return at >= x; });
            bounds.insert(bounds.begin(), 0.0);
            bounds.push_back(x);
            double lift = 0.0, speed = 0.0;
            for (std::size_t i = 0; i + 1 < bounds.size(); ++i) {
                const auto acceleration = [&](double s) { return motion::unitLift(law, s).y2; };
                lift += integral([&](double s) { return (x - s) * acceleration(s); }, bounds[i],
                                 bounds[i + 1]);
                speed += integral(acceleration, bounds[i], bounds[i + 1]);
            }
            EXPECT_NEAR(motion::unitLift(law, x).y, lift, 1e-10) << testName(law) << " at " << x;
            EXPECT_NEAR(motion::unitLift(law, x).y1, speed, 1e-9) << testName(law) << " at " << x;
        }
    }
}

// The deepest shear below a line contact: line loads after Flamant [Johnson 1985, §2.2] spread as
// Hertz's ellipse, summed at every depth, and the depth searched.
TEST(BesideALibrary, DeepestShearOfALineIsThatOfSpreadLineLoads) {
    const auto shear = [](double depth) {
        const auto spread = [depth](double u, bool normal) { // s = sin u
            const double s = std::sin(u);
            const double numerator = normal ? depth * depth : s * s;
            return squared(std::cos(u)) * numerator / squared(s * s + depth * depth);
        };
        const double difference = integral(
            [&](double u) { return spread(u, true) - spread(u, false); }, -pi / 2.0, pi / 2.0);
        return -depth / pi * difference; // −(σ_x − σ_z)/2
    };
    const auto [depth, most] = boost::math::tools::brent_find_minima(shear, 0.3, 1.5, 40);
    EXPECT_NEAR(contact::lineDeepestShear().ratio, -most, 1e-8);
    EXPECT_NEAR(contact::lineDeepestShear().depth, depth, 1e-4);
}

// Elliptic integrals by their definition, and the condition on the radii with them.
TEST(BesideALibrary, EllipticContactSolvesItsConditionByQuadrature) {
    for (const double ratio : {1.3, 3.0, 12.0, 80.0}) {
        const contact::Ellipticity shape = contact::ellipticity(ratio);
        const double modulus = 1.0 - 1.0 / squared(shape.k);
        const auto root = [modulus](double t) {
            return std::sqrt(1.0 - modulus * squared(std::sin(t)));
        };
        const double first = integral([&](double t) { return 1.0 / root(t); }, 0.0, pi / 2.0);
        const double second = integral(root, 0.0, pi / 2.0);
        EXPECT_NEAR(shape.first, first, 1e-10);
        EXPECT_NEAR(shape.second, second, 1e-10);
        EXPECT_NEAR((squared(shape.k) * second - first) / (first - second) / ratio, 1.0, 1e-8);
    }
}

// Stresses on the axis below a contact ellipse: point loads after Boussinesq [Johnson 1985,
// eq. 3.20] spread as Hertz's half ellipsoid, summed over the ellipse.
TEST(BesideALibrary, AxisStressesAreThoseOfSpreadPointLoads) {
    const double poisson = 0.3;
    for (const double k : {1.0, 1.6, 4.0}) {
        for (const double z : {0.3, 0.7, 2.0}) {
            const auto sum = [&](auto&& ofPointLoad) {
                return integral(
                    [&](double u) { // distance from the middle sin u, pressure cos u
                        const double weight = squared(std::cos(u)) * std::sin(u) * k;
                        return weight * integral(
                                            [&](double phi) {
                                                return ofPointLoad(k * std::sin(u) * std::cos(phi),
                                                                   std::sin(u) * std::sin(phi));
                                            },
                                            0.0, 2.0 * pi);
                    },
                    0.0, pi / 2.0);
            };
            const auto normal = [z](double x, double y) {
                const double r = std::sqrt(x * x + y * y + z * z);
                return -1.5 / pi * std::pow(z, 3.0) / std::pow(r, 5.0);
            };
            const auto along = [z, poisson](double x, double y) {
                const double flat = std::max(x * x + y * y, 1e-24);
                const double r = std::sqrt(flat + z * z);
                const double share = flat / (r * (r + z)); // 1 − z/r, without cancelling
                return 0.5 / pi *
                       ((1.0 - 2.0 * poisson) / flat *
                            (share * (x * x - y * y) / flat + z * y * y / (r * r * r)) -
                        3.0 * z * x * x / std::pow(r, 5.0));
            };
            const contact::AxisStresses stresses = contact::axisStresses(k, poisson, z);
            EXPECT_NEAR(stresses.normal, sum(normal), 1e-8) << k << " at " << z;
            EXPECT_NEAR(stresses.along, sum(along), 1e-6) << k << " at " << z;
            EXPECT_NEAR(stresses.across, sum([&](double x, double y) { return along(y, x); }), 1e-6)
                << k << " at " << z;
        }
    }
}

} // namespace lobewright
