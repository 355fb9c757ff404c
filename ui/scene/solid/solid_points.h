#pragma once

#include <QVector3D>

#include <cmath>

namespace lobewright::ui {

/// Points of meshes are single numbers, what they are worked out from is not.
inline QVector3D vector(double x, double y, double z) {
    return {static_cast<float>(x), static_cast<float>(y), static_cast<float>(z)};
}

/// At a radius [m] and polar angle [rad] about z.
inline QVector3D polar(double radius, double angle, double z) {
    return vector(radius * std::cos(angle), radius * std::sin(angle), z);
}

} // namespace lobewright::ui
