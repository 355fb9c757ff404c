#pragma once

class QCustomPlot;

namespace lobewright::ui {

struct Palette;

/// Ground, axes, grid and fonts of a plot in the tones of its window.
void applyPlotTones(QCustomPlot& plot, const Palette& tones);

} // namespace lobewright::ui
