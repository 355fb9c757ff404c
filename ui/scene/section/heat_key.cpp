#include "ui/scene/section/heat_key.h"

#include "ui/base/drawing.h"
#include "ui/base/units.h"
#include "ui/scene/section/gas_tone.h"

#include <QLinearGradient>

#include <algorithm>

namespace lobewright::ui {

void paintHeatKey(QPainter& painter, const Palette& tones, const QRectF& row,
                  std::optional<double> temperature) {
    const QString cold = quantityText(HeatRange::cold, QStringLiteral("K"), 0);
    const QString hot = quantityText(HeatRange::hot, QStringLiteral("K"), 0);
    const double left = painter.fontMetrics().horizontalAdvance(cold) + 6.0;
    const double right = painter.fontMetrics().horizontalAdvance(hot) + 6.0;
    const double wide = std::min(180.0, row.width() - left - right);
    if (wide < 30.0)
        return;
    const double start = row.center().x() - 0.5 * (left + wide + right) + left;
    const QRectF bar(start, row.center().y() - 4.0, wide, 8.0);
    QLinearGradient gradient(bar.topLeft(), bar.topRight());
    constexpr int steps = 8;
    for (int i = 0; i <= steps; ++i) {
        const double share = static_cast<double>(i) / steps;
        gradient.setColorAt(
            share, heatTone(tones, HeatRange::cold + share * (HeatRange::hot - HeatRange::cold)));
    }
    fillAndOutline(painter, gradient, QPen(tones.quiet, 1.0));
    painter.drawRect(bar);
    painter.setPen(tones.quiet);
    painter.drawText(QRectF(start - left, row.top(), left - 6.0, row.height()),
                     Qt::AlignRight | Qt::AlignVCenter, cold);
    painter.drawText(QRectF(bar.right() + 6.0, row.top(), right, row.height()),
                     Qt::AlignLeft | Qt::AlignVCenter, hot);
    if (!temperature)
        return;
    const double share =
        std::clamp((*temperature - HeatRange::cold) / (HeatRange::hot - HeatRange::cold), 0.0, 1.0);
    const double x = bar.left() + share * bar.width();
    painter.setPen(QPen(tones.ink, 2.0));
    painter.drawLine(QPointF(x, bar.top() - 3.0), QPointF(x, bar.bottom() + 3.0));
}

} // namespace lobewright::ui
