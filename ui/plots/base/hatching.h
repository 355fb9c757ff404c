#pragma once

#include <QColor>
#include <QRectF>

class QPainter;

namespace lobewright::ui {

struct Palette;

/// Hatches an area with lines that rise to the right and meet those of areas beside it. Several
/// times as fast as a brush with a pattern, and lines in files as well.
void hatch(QPainter& painter, const QRectF& area, const QColor& colour);

/// Hatching of what cannot be run or is beyond a limit, the same in all plots.
QColor beyondHatch(const Palette& tones);

} // namespace lobewright::ui
