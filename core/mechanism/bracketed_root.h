#pragma once

#include <boost/math/tools/toms748_solve.hpp>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>
#include <utility>

namespace lobewright::mechanism {

/// Root of f in [low, high], to a few units in the last place. f changes sign over the interval; f
/// need not be continuous, the place of the change is found then. Without a change of sign (a zero
/// at an end, lost to rounding) the end nearer to zero.
/// Method: Alefeld, Potra and Shi, ACM TOMS 748.
template <class F>
double bracketedRoot(F&& f, double low, double high) {
    const double atLow = f(low);
    const double atHigh = f(high);
    if (!(atLow * atHigh < 0.0)) {
        return std::abs(atLow) <= std::abs(atHigh) ? low : high;
    }
    const auto narrow = [](double a, double b) {
        return std::abs(b - a) <= 4.0 * std::numeric_limits<double>::epsilon() *
                                      std::max({std::abs(a), std::abs(b), 1.0});
    };
    std::uintmax_t iterations = 200;
    const auto bracket = boost::math::tools::toms748_solve(std::forward<F>(f), low, high, atLow,
                                                           atHigh, narrow, iterations);
    return 0.5 * (bracket.first + bracket.second);
}

} // namespace lobewright::mechanism
