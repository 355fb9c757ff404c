#include "core/motion/polynomial.h"

#include <boost/math/tools/roots.hpp>

#include <cstdint>

namespace lobewright::motion {

double valueOf(const Polynomial& polynomial, double x) {
    double value = 0.0;
    for (std::size_t i = polynomial.size(); i-- > 0;)
        value = value * x + polynomial[i];
    return value;
}

Polynomial derivative(const Polynomial& polynomial) {
    Polynomial result;
    for (std::size_t i = 1; i < polynomial.size(); ++i)
        result.push_back(static_cast<double>(i) * polynomial[i]);
    return result;
}

std::vector<double> signChanges(const Polynomial& polynomial, double from, double to) {
    if (polynomial.size() < 2)
        return {};
    std::vector<double> bounds = signChanges(derivative(polynomial), from, to);
    bounds.insert(bounds.begin(), from);
    bounds.push_back(to);
    const auto f = [&](double x) { return valueOf(polynomial, x); };
    std::vector<double> changes;
    double left = bounds.front(), atLeft = f(left);
    for (std::size_t i = 1; i < bounds.size(); ++i) {
        const double right = bounds[i], atRight = f(right);
        if (atRight == 0.0)
            continue; // decided by the next bound with a sign
        if (atLeft != 0.0 && (atLeft < 0.0) != (atRight < 0.0)) {
            std::uintmax_t steps = 200;
            const auto bracket = boost::math::tools::toms748_solve(
                f, left, right, atLeft, atRight, boost::math::tools::eps_tolerance<double>(52),
                steps);
            changes.push_back(0.5 * (bracket.first + bracket.second));
        }
        left = right;
        atLeft = atRight;
    }
    return changes;
}

} // namespace lobewright::motion
