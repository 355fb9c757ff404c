#pragma once

#include <QFontMetricsF>
#include <QLineF>
#include <QRectF>
#include <QString>

#include <vector>

namespace lobewright::ui {

/// A part and where it is, at present and at rest: names stand where rest puts them, so that they
/// stay while the part moves. Pixels.
struct NamedPart {
    QString text;
    QPointF at, rest;
};

struct PlacedName {
    QString text;
    QRectF box;
    QLineF leader; ///< from the text to the part
};

/// Names in a column on either side of `picture`, within `room`: no two of them meet, no leader
/// runs through a name, and none crosses another while the parts are at rest. Of those for whom
/// there is no room the last named are left out.
std::vector<PlacedName> placedNames(const std::vector<NamedPart>& parts, const QRectF& room,
                                    const QRectF& picture, const QFontMetricsF& metrics);

} // namespace lobewright::ui
