#pragma once

#include <QPointF>

class QPainter;

namespace lobewright::ui {

/// A straight arrow in the pen of the painter, with a filled head of the given length [px]; nothing
/// where it is shorter than a pixel.
void drawArrow(QPainter& painter, const QPointF& tail, const QPointF& tip, double head);

} // namespace lobewright::ui
