#include "ui/plots/base/event_lane.h"

#include <QFontMetricsF>
#include <QPainter>

#include <algorithm>

namespace lobewright::ui {

void paintLane(QPainter& painter, const QRectF& lane, const std::vector<LaneLetters>& all) {
    if (lane.isEmpty())
        return;
    const QFontMetricsF metrics(painter.font());
    const double line = lane.top() + 0.5 * (lane.height() + metrics.ascent() - metrics.descent());
    constexpr double apart = 4.0, farthest = 12.0; // [px]
    double freeFrom = lane.left();
    for (const auto& [x, text, colour] : all) {
        const double width = metrics.horizontalAdvance(text);
        const double own =
            std::clamp(x - 0.5 * width, lane.left(), std::max(lane.left(), lane.right() - width));
        const double left = std::max(own, freeFrom);
        if (x < lane.left() || x > lane.right() || left - own > farthest ||
            left + width > lane.right())
            continue;
        freeFrom = left + width + apart;
        painter.setPen(colour);
        painter.drawText(QPointF(left, line), text);
    }
}

} // namespace lobewright::ui
