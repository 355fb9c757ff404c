#pragma once

#include "core/exchange/refine.h"

#include <Eigen/Core>

#include <cmath>
#include <vector>

namespace lobewright::exchange {

/// Parameters from `bounds.front()` to `bounds.back()` such that straight lines between the points
/// of a plane curve stray from it by no more than `tolerance`.
/// `curve` maps a parameter to an Eigen::Vector2d and is smooth between the bounds.
template <class Curve>
std::vector<double> chordParameters(const std::vector<double>& bounds, const Curve& curve,
                                    double tolerance) {
    const auto isFine = [&](double a, double b) {
        const Eigen::Vector2d p = curve(a);
        const Eigen::Vector2d chord = Eigen::Vector2d(curve(b)) - p;
        for (double share : {0.25, 0.5, 0.75}) {
            const Eigen::Vector2d away = Eigen::Vector2d(curve(a + share * (b - a))) - p;
            if (std::abs(chord.x() * away.y() - chord.y() * away.x()) > tolerance * chord.norm()) {
                return false;
            }
        }
        return true;
    };
    return refined(bounds, isFine, 20);
}

} // namespace lobewright::exchange
