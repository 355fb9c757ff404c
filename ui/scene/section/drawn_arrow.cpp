#include "ui/scene/section/drawn_arrow.h"

#include "ui/base/drawing.h"

#include <QPolygonF>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

void drawArrow(QPainter& painter, const QPointF& tail, const QPointF& tip, double head) {
    const QPointF way = tip - tail;
    const double length = std::hypot(way.x(), way.y());
    if (length < 1.0)
        return;
    const QPointF unit = way / length;
    const QPointF across(-unit.y(), unit.x());
    const double size = std::min(head, length);
    const QPointF base = tip - size * unit;
    painter.drawLine(tail, base);
    painter.save();
    fillOnly(painter, painter.pen().color());
    painter.drawPolygon(QPolygonF{tip, base + 0.45 * size * across, base - 0.45 * size * across});
    painter.restore();
}

} // namespace lobewright::ui
