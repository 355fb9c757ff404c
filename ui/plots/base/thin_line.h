#pragma once

#include "ui/plots/base/custom_plot.h"

#include <QPolygonF>

#include <vector>

namespace lobewright::ui {

/// Indices of the points that a line needs to stay within `tolerance` [px] of the whole one, the
/// first and the last among them. Points that are not a number, and those beside them, stay.
/// Stroking is most of what a plot costs, and goes with the number of points.
std::vector<qsizetype> neededPoints(const QPolygonF& line, double tolerance);

/// The line with those points only.
QPolygonF thinned(const QPolygonF& line);

/// A graph that draws no more points than its line needs on the screen. Its data stay whole.
class ThinGraph : public QCPGraph {
  public:
    using QCPGraph::QCPGraph;

  protected:
    void getOptimizedLineData(QVector<QCPGraphData>* lineData,
                              const QCPGraphDataContainer::const_iterator& begin,
                              const QCPGraphDataContainer::const_iterator& end) const override;
};

} // namespace lobewright::ui
