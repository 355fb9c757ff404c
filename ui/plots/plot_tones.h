#pragma once

class QCustomPlot;

namespace lobewright::ui {

/// Ground, axes, grid and fonts of a plot in the tones of its window.
void applyPlotTones(QCustomPlot& plot);

} // namespace lobewright::ui
