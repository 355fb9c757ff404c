#pragma once

#include "ui/plots/base/custom_plot.h"

#include <utility>

namespace lobewright::ui {

/// Divides an empty plot into a large area and a smaller one below it, over one another to the
/// pixel: a curve, and what is left of it.
std::pair<QCPAxisRect*, QCPAxisRect*> stackTwoAreas(QCustomPlot& plot);

/// A third area between both, as wide as they are.
QCPAxisRect* addAreaBetween(QCustomPlot& plot, QCPAxisRect& above, QCPAxisRect& below);

/// A graph on the left and bottom axes of an area.
QCPGraph* graphOn(QCustomPlot& plot, QCPAxisRect& area);

/// A row of names above all areas, where it hides nothing; graphs are added to it.
QCPLegend* legendAbove(QCustomPlot& plot);

/// Ground, axes, grid and names of every area in the tones of the plot's window.
void applyAreaTones(QCustomPlot& plot);

} // namespace lobewright::ui
