#pragma once

#include <QMatrix4x4>
#include <QPointF>
#include <QSizeF>
#include <QVector3D>
#include <QVector4D>

#include <cmath>
#include <optional>

namespace lobewright::ui {

/// Points of meshes are single numbers, what they are worked out from is not.
inline QVector3D vector(double x, double y, double z) {
    return {static_cast<float>(x), static_cast<float>(y), static_cast<float>(z)};
}

/// At a radius [m] and polar angle [rad] about z.
inline QVector3D polar(double radius, double angle, double z) {
    return vector(radius * std::cos(angle), radius * std::sin(angle), z);
}

/// Where a place is seen in a picture of this size [px]; absent where it lies behind the eye, from
/// where its image would come back upside down.
inline std::optional<QPointF> onScreen(const QMatrix4x4& screen, const QVector3D& place,
                                       const QSizeF& picture) {
    const QVector4D at = screen * QVector4D(place, 1.0F);
    if (at.w() <= 0.0F)
        return std::nullopt;
    return QPointF(0.5 * (1.0 + static_cast<double>(at.x() / at.w())) * picture.width(),
                   0.5 * (1.0 - static_cast<double>(at.y() / at.w())) * picture.height());
}

} // namespace lobewright::ui
