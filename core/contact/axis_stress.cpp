#include "core/contact/elliptic_contact.h"
#include "core/units.h"

#include <boost/math/special_functions/ellint_1.hpp>
#include <boost/math/special_functions/ellint_2.hpp>
#include <boost/math/tools/minima.hpp>

#include <algorithm>
#include <cmath>

namespace lobewright::contact {

namespace {

/// Double precision throughout: Boost would promote to long double otherwise.
using Policy = boost::math::policies::policy<boost::math::policies::promote_double<false>>;

/// Below a circular contact [Johnson 1985, eq. 3.45].
AxisStresses circular(double poissonRatio, double zeta) {
    const double across =
        -(1.0 + poissonRatio) * (1.0 - zeta * std::atan2(1.0, zeta)) + 0.5 / (1.0 + zeta * zeta);
    return {across, across, -1.0 / (1.0 + zeta * zeta)};
}

double largestShear(double k, double poissonRatio, double zeta) {
    const AxisStresses s = axisStresses(k, poissonRatio, zeta);
    const auto [low, high] = std::minmax({s.along, s.across, s.normal});
    return 0.5 * (high - low);
}

} // namespace

AxisStresses axisStresses(double k, double poissonRatio, double zeta) {
    const double b = 1.0 / k; // short over long semi-axis
    const double complement = (1.0 - b) * (1.0 + b);
    constexpr double circle = 1e-6; // nearer than this the general form loses its digits
    if (complement < circle) {
        return circular(poissonRatio, zeta);
    }
    // [Thomas and Hoersch 1930, as in Boresi and Schmidt, Advanced Mechanics of Materials, ch. 17].
    const double depth = b * zeta;
    const double n = std::sqrt(b * b * (1.0 + zeta * zeta) / (1.0 + depth * depth));
    const double modulus = std::sqrt(complement);
    const double angle = std::atan2(1.0, depth);
    const double first = boost::math::ellint_1(modulus, angle, Policy());
    const double second = boost::math::ellint_2(modulus, angle, Policy());
    const double nearer = depth * (first - second);
    const double farther = depth * (second / (b * b) - first);
    const double scale = 2.0 * b / complement;
    AxisStresses stresses;
    stresses.along =
        scale * (-0.5 * (1.0 - n) + nearer + poissonRatio * (1.0 - n / (b * b) + farther));
    stresses.across =
        scale * (0.5 / n + 0.5 - n / (b * b) + farther + poissonRatio * (n - 1.0 + nearer));
    stresses.normal = -0.5 * scale * (1.0 / n - n);
    return stresses;
}

DeepestShear ellipticDeepestShear(double k, double poissonRatio) {
    constexpr double line = 1e5; // by then within 3e-6 of a line, and short of digits beyond
    if (k > line) {
        return lineDeepestShear();
    }
    // The maximum lies between that of a circle and that of a line, 0.46 … 0.79 of b.
    constexpr int digits = 26;
    const auto [depth, shear] = boost::math::tools::brent_find_minima(
        [k, poissonRatio](double zeta) { return -largestShear(k, poissonRatio, zeta); }, 0.3, 1.0,
        digits);
    return {-shear, depth};
}

} // namespace lobewright::contact
