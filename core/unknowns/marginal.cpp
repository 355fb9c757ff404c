#include "core/unknowns/marginal.h"

#include <boost/math/distributions/normal.hpp>

#include <algorithm>
#include <cmath>

namespace lobewright::unknowns {

namespace {

const boost::math::normal standard(0.0, 1.0);
/// Of the standard normal distribution.
constexpr double percentile95 = 1.6448536269514722;
/// Shares of a normal distribution end here: one in a thousand million lies beyond on either side.
constexpr double outermost = 1e-9;

double shareBelow(double value) {
    if (std::isinf(value)) {
        return value > 0.0 ? 1.0 : 0.0;
    }
    return boost::math::cdf(standard, value);
}

double triangular(const Marginal& marginal, double share) {
    const double width = marginal.high - marginal.low;
    const double rise = (marginal.mode - marginal.low) / width;
    return share < rise ? marginal.low + width * std::sqrt(share * rise)
                        : marginal.high - width * std::sqrt((1.0 - share) * (1.0 - rise));
}

double normal(const Marginal& marginal, double share) {
    const double below = shareBelow((marginal.least - marginal.mean()) / marginal.deviation());
    const double above = shareBelow((marginal.most - marginal.mean()) / marginal.deviation());
    const double inside = std::clamp(below + share * (above - below), outermost, 1.0 - outermost);
    const double value =
        marginal.mean() + marginal.deviation() * boost::math::quantile(standard, inside);
    return std::clamp(value, marginal.least, marginal.most);
}

} // namespace

double Marginal::deviation() const {
    return 0.5 * (high - low) / percentile95;
}

bool Marginal::isCut() const {
    return kind == Kind::normal &&
           shareBelow((least - mean()) / deviation()) + shareBelow((mean() - most) / deviation()) >
               1e-4;
}

double Marginal::value(double share) const {
    switch (kind) {
    case Kind::uniform:
        return low + share * (high - low);
    case Kind::triangular:
        return triangular(*this, share);
    case Kind::normal:
        return normal(*this, share);
    case Kind::choice:
        break;
    }
    return std::min(std::floor(share * options), options - 1.0);
}

} // namespace lobewright::unknowns
