#include "ui/plots/base/hatching.h"

#include "ui/base/palette.h"

#include <QLineF>
#include <QPainter>
#include <QVector>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

void hatch(QPainter& painter, const QRectF& area, const QColor& colour) {
    constexpr double spacing = 8.0; // [px] along either axis
    QVector<QLineF> lines;
    // x + y is the same all along a line.
    const double last = area.right() + area.bottom();
    for (double sum = std::ceil((area.left() + area.top()) / spacing) * spacing; sum < last;
         sum += spacing) {
        const double left = std::max(area.left(), sum - area.bottom());
        const double right = std::min(area.right(), sum - area.top());
        lines.append(QLineF(left, sum - left, right, sum - right));
    }
    painter.save();
    painter.setRenderHint(QPainter::Antialiasing, false);
    painter.setPen(QPen(colour, 1.0));
    painter.drawLines(lines);
    painter.restore();
}

QColor beyondHatch(const Palette& tones) {
    return tones.tint(tones.warning, 0.45);
}

} // namespace lobewright::ui
