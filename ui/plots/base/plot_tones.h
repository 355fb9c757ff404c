#pragma once

class QCPAxis;
class QCustomPlot;
class QFont;

namespace lobewright::ui {

struct Palette;

/// Lines, numbers, name and grid of one axis.
void applyAxisTones(QCPAxis& axis, const Palette& tones, const QFont& letters);

/// Ground, axes, grid and fonts of a plot in the tones of its window.
void applyPlotTones(QCustomPlot& plot, const Palette& tones);

} // namespace lobewright::ui
