#pragma once

#include <QColor>
#include <QRectF>
#include <QString>

#include <vector>

class QPainter;

namespace lobewright::ui {

/// Letters above a frame, at the place of what they name.
struct LaneLetters {
    double x = 0.0; ///< [px]
    QString text;
    QColor colour;
};
/// Side by side in the painter's font, in the order given; those that find no room near their
/// place are left out.
void paintLane(QPainter& painter, const QRectF& lane, const std::vector<LaneLetters>& all);

} // namespace lobewright::ui
