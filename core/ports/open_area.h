#pragma once

#include "core/ports/row.h"
#include "core/units.h"

#include <cmath>
#include <cstddef>

namespace lobewright::ports {

/// Area of a circular segment over the square of the radius, from its height over the radius, t:
/// arccos(1 − t) − (1 − t)·√(2t − t²) for 0 ≤ t ≤ 1, within 3e-15. As the slope is 2·√(2t − t²) =
/// √t·f(t), it is t^1.5 by a smooth function: here its polynomial of least deviation, 2e-17.
/// [Bronshtein, Handbook of Mathematics, circle]
inline double segmentArea(double t) {
    constexpr double c[18] = {
        1.8856180831641267401,     -0.28284271247462444467,   -0.025253813613222159712,
        -0.0049104637829604105854, -0.0012555157508570153621, -3.7183342768750819095e-4,
        -1.2077708823245109057e-4, -4.2300328801639857731e-5, -1.3389334350977722273e-5,
        -1.1784316841615989108e-5, 1.2625236329453955996e-5,  -2.8276124279965713691e-5,
        3.743190937882890157e-5,   -3.8645859027123007826e-5, 2.8125316642235153825e-5,
        -1.4121440623712477311e-5, 4.3352769814952499618e-6,  -6.405670510944217414e-7};
    // even and odd powers apart, so that the two sums run side by side
    const double square = t * t;
    double even = c[16], odd = c[17];
    for (std::size_t i = 16; i >= 2; i -= 2) {
        even = even * square + c[i - 2];
        odd = odd * square + c[i - 1];
    }
    return t * std::sqrt(t) * (even + t * odd);
}

/// Area of the first u of a rounded rectangle, 0 ≤ u < radius: the strip between the corners and
/// two halves of a circular segment [m²].
inline double areaInCorners(const Row& row, double u) {
    const double r = row.cornerRadius;
    return (row.width - 2.0 * r) * u + r * r * segmentArea(u / r);
}

/// Geometric area of a rounded-rectangle port uncovered to depth u [m²], closed form; u clipped to
/// 0 … height.
inline double openArea(const Row& row, double uncovered) {
    if (uncovered <= 0.0) {
        return 0.0;
    }
    const double r = row.cornerRadius;
    if (uncovered < r) {
        return areaInCorners(row, uncovered);
    }
    const double left = row.height - uncovered;
    if (left >= r) {
        return row.width * uncovered - (2.0 - 0.5 * units::pi) * r * r;
    }
    const double full = row.width * row.height - (4.0 - units::pi) * r * r;
    return left > 0.0 ? full - areaInCorners(row, left) : full;
}

} // namespace lobewright::ports
