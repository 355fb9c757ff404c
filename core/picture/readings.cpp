#include "core/picture/readings.h"

#include "core/text/message.h"
#include "core/units.h"

#include <Eigen/Dense>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::picture {

namespace {

constexpr double worstScale = 0.1; ///< relative
constexpr double straight = 1e-3;  ///< of the extent of the places: a line
constexpr int fewestOfTrace = 5;

Eigen::Vector2d vector(Place place) {
    return {place.x, place.y};
}

double apart(Place a, Place b) {
    return (vector(b) - vector(a)).norm();
}

Eigen::Vector2d direction(const Axis& axis) {
    return (vector(axis.b) - vector(axis.a)).normalized();
}

double cross(const Eigen::Vector2d& a, const Eigen::Vector2d& b) {
    return a.x() * b.y() - a.y() * b.x();
}

/// Extent of the places along their longest direction and square to it.
Eigen::Vector2d extents(std::span<const Place> places) {
    Eigen::Vector2d mean = Eigen::Vector2d::Zero();
    for (const Place place : places) {
        mean += vector(place) / static_cast<double>(places.size());
    }
    Eigen::Matrix2d spread = Eigen::Matrix2d::Zero();
    for (const Place place : places) {
        const Eigen::Vector2d from = vector(place) - mean;
        spread += from * from.transpose() / static_cast<double>(places.size());
    }
    const Eigen::SelfAdjointEigenSolver<Eigen::Matrix2d> solver(spread);
    return solver.eigenvalues().cwiseMax(0.0).cwiseSqrt();
}

} // namespace

Result<Scale> Scale::make(Place a, Place b, double length) {
    if (!(length > 0.0) || !std::isfinite(length)) {
        return Problem{"", LW_TEXT("the length of the scale must be positive")};
    }
    const double pixels = apart(a, b);
    if (!(placing <= worstScale * pixels)) {
        return Problem{"", Message(LW_TEXT("the ends of the scale are %1 pixels apart; they must "
                                           "be at least %2 apart, and are best as far as the "
                                           "picture allows"),
                                   number(pixels, 3), number(placing / worstScale, 3))};
    }
    return Scale(length / pixels, placing / pixels);
}

Reading Scale::length(double pixels) const {
    const double value = pixels * pixel_;
    const double error = placing * pixel_ + relativeError_ * value;
    return {value, std::max(0.0, value - error), value + error};
}

Reading distance(const Scale& scale, Place a, Place b) {
    return scale.length(apart(a, b));
}

Reading along(const Scale& scale, const Axis& axis, Place a, Place b) {
    return scale.length(std::abs((vector(b) - vector(a)).dot(direction(axis))));
}

Reading across(const Scale& scale, const Axis& axis, Place a, Place b) {
    return scale.length(std::abs(cross(direction(axis), vector(b) - vector(a))));
}

Reading fromAxis(const Scale& scale, const Axis& axis, Place place) {
    return across(scale, axis, axis.a, place);
}

Result<Circle> circle(std::span<const Place> edge) {
    if (edge.size() < 3) {
        return Problem{"", LW_TEXT("a circle needs at least three places on its edge")};
    }
    const Eigen::Vector2d extent = extents(edge);
    if (!(extent.minCoeff() > straight * extent.maxCoeff())) {
        return Problem{"", LW_TEXT("the places on the edge lie in a line")};
    }
    // x² + y² = 2·x·c_x + 2·y·c_y + (r² − c²) is linear in its unknowns; a start for the distances.
    const auto count = static_cast<Eigen::Index>(edge.size());
    Eigen::MatrixX3d left(count, 3);
    Eigen::VectorXd right(count);
    for (Eigen::Index i = 0; i < count; ++i) {
        const Eigen::Vector2d place = vector(edge[static_cast<size_t>(i)]);
        left.row(i) << 2.0 * place.x(), 2.0 * place.y(), 1.0;
        right[i] = place.squaredNorm();
    }
    const Eigen::Vector3d start = left.colPivHouseholderQr().solve(right);
    Eigen::Vector2d centre = start.head<2>();
    double radius = std::sqrt(std::max(0.0, start[2] + centre.squaredNorm()));
    for (int step = 0; step < 20; ++step) {
        Eigen::MatrixX3d slope(count, 3);
        Eigen::VectorXd miss(count);
        for (Eigen::Index i = 0; i < count; ++i) {
            const Eigen::Vector2d from = centre - vector(edge[static_cast<size_t>(i)]);
            const double length = std::max(from.norm(), 1e-9);
            slope.row(i) << from.x() / length, from.y() / length, -1.0;
            miss[i] = length - radius;
        }
        const Eigen::Vector3d change = -slope.colPivHouseholderQr().solve(miss);
        centre += change.head<2>();
        radius += change[2];
        if (change.norm() < 1e-9 * radius) {
            break;
        }
    }
    if (!centre.allFinite() || !std::isfinite(radius) || !(radius > 0.0)) {
        return Problem{"", LW_TEXT("no circle comes near the places on the edge")};
    }
    return Circle{{centre.x(), centre.y()}, radius};
}

Result<Reading> angle(Place a, Place corner, Place b) {
    const double shorter = std::min(apart(corner, a), apart(corner, b));
    if (!(shorter > placing)) {
        return Problem{"", LW_TEXT("an arm of the angle is too short to be measured")};
    }
    const Eigen::Vector2d first = vector(a) - vector(corner), second = vector(b) - vector(corner);
    const double value = std::abs(std::atan2(cross(first, second), first.dot(second)));
    const double error = placing / shorter;
    return Reading{value, std::max(0.0, value - error), std::min(units::pi, value + error)};
}

Reading together(std::span<const Reading> readings) {
    Reading all;
    double least = readings.front().value, most = least, widest = 0.0;
    for (const Reading& reading : readings) {
        all.value += reading.value / static_cast<double>(readings.size());
        least = std::min(least, reading.value);
        most = std::max(most, reading.value);
        widest = std::max(widest, 0.5 * (reading.high - reading.low));
    }
    all.low = std::max(0.0, std::min(least, all.value - widest));
    all.high = std::max(most, all.value + widest);
    return all;
}

Result<std::string> liftTable(const Scale& scale, std::span<const Place> trace, int lobes) {
    if (trace.size() < fewestOfTrace) {
        return Problem{
            "", Message(LW_TEXT("a lobe needs at least %1 places along its curve"), fewestOfTrace)};
    }
    const Eigen::Vector2d base = vector(trace.back()) - vector(trace.front());
    const double repetition = base.norm();
    std::vector<Eigen::Vector2d> rows; // share of the repetition, pixels beside the line
    double side = 0.0;
    for (const Place place : trace) {
        const Eigen::Vector2d from = vector(place) - vector(trace.front());
        const Eigen::Vector2d row(from.dot(base) / (repetition * repetition),
                                  cross(base, from) / repetition);
        if (!rows.empty() && !(row.x() > rows.back().x())) {
            return Problem{"", Message(LW_TEXT("place %1 of the curve lies before the one before "
                                               "it; trace from one outer dead centre to the next"),
                                       rows.size() + 1)};
        }
        rows.push_back(row);
        side += row.y();
    }
    const double sign = side < 0.0 ? -1.0 : 1.0;
    std::string table =
        fmt::format("# Part: traced from a picture, {} lobes\nangle_deg;lift_mm\n", lobes);
    const double least =
        sign * std::ranges::min(rows, {}, [&](const auto& row) { return sign * row.y(); }).y();
    for (const Eigen::Vector2d& row : rows) {
        table += fmt::format("{:.6f};{:.6f}\n", row.x() * 360.0 / lobes,
                             (sign * row.y() - least) * scale.pixel() / units::millimetre);
    }
    return table;
}

double traceTolerance(const Scale& scale) {
    return 0.5 * placing * scale.pixel();
}

} // namespace lobewright::picture
