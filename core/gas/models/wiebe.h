#pragma once

#include "core/gas/models/elementary.h"

#include <cmath>

namespace lobewright::gas {

/// Share of the burnable fuel burnt at ξ = (χ − start)/duration: 1 − exp(−a·ξ^(m+1)), 0 before the
/// start. Not normalised: exp(−a) never burns. a > 0, m ≥ 0. [Heywood, §9.2]
inline double wiebeBurnt(double xi, double a, double m) {
    if (xi <= 0.0) {
        return 0.0;
    }
    return -std::expm1(-a * std::pow(std::fmin(xi, 1.0), m + 1.0));
}

/// dx/dξ; 0 outside 0 … 1.
inline double wiebeRate(double xi, double a, double m) {
    if (xi < 0.0 || xi > 1.0) {
        return 0.0;
    }
    const double power = xi > 0.0 ? exponential(m * logarithm(xi)) : (m > 0.0 ? 0.0 : 1.0);
    return a * (m + 1.0) * power * exponential(-a * power * xi);
}

/// ξ at which a share of everything that burns until ξ = 1 has burnt; 0 ≤ share ≤ 1.
inline double wiebeProgress(double share, double a, double m) {
    const double burnt = -share * std::expm1(-a);
    return std::pow(-std::log1p(-burnt) / a, 1.0 / (m + 1.0));
}

} // namespace lobewright::gas
