#pragma once

#include <QColor>
#include <QRectF>

class QPainter;

namespace lobewright::ui {

/// Hatches an area with lines that rise to the right and meet those of areas beside it. Several
/// times as fast as a brush with a pattern, and lines in files as well.
void hatch(QPainter& painter, const QRectF& area, const QColor& colour);

} // namespace lobewright::ui
