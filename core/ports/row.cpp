#include "core/ports/events.h"
#include "core/units.h"

#include <algorithm>
#include <cmath>

namespace lobewright::ports {

namespace {

/// Area of the first u ≤ r of a rounded rectangle: the strip between the corners and two circular
/// half-segments.
double cornerArea(double width, double radius, double u) {
    if (radius <= 0.0) {
        return width * u;
    }
    const double s = radius - u;
    const double half = std::sqrt(std::max(radius * radius - s * s, 0.0));
    const double segment =
        radius * radius * std::acos(std::clamp(s / radius, -1.0, 1.0)) - s * half;
    return (width - 2.0 * radius) * u + segment;
}

} // namespace

double openAreaInCorners(const Row& row, double uncovered) {
    const double r = row.cornerRadius;
    const double full = row.width * row.height - (4.0 - units::pi) * r * r;
    if (uncovered >= row.height) {
        return full;
    }
    if (uncovered < r) {
        return cornerArea(row.width, r, uncovered);
    }
    return full - cornerArea(row.width, r, row.height - uncovered);
}

double openChord(const Row& row, double uncovered) {
    if (uncovered < 0.0 || uncovered > row.height) {
        return 0.0;
    }
    const double r = row.cornerRadius;
    const double s = r - std::min({uncovered, row.height - uncovered, r});
    return row.width - 2.0 * r + 2.0 * std::sqrt(std::max(r * r - s * s, 0.0));
}

} // namespace lobewright::ports
