#pragma once

#include "ui/plots/base/custom_plot.h"

#include <QObject>

#include <cmath>
#include <optional>

namespace lobewright::ui {

/// The part of a plot that a person chose by wheel or drag: it stays, whatever is drawn anew, until
/// a double click asks for the whole. To be made before anything else listens to the double click.
class KeptView : public QObject {
    Q_OBJECT

  public:
    explicit KeptView(QCustomPlot& plot);

    bool isChosen() const { return isChosen_; }
    void release() { isChosen_ = false; }

  private:
    bool isChosen_ = false;
};

/// What an axis shows: all of the engine's own values, and of those of others beside it (a
/// baseline, published figures) what lies within a quarter of that range beyond it, so that they do
/// not press its own curves flat. Without own values all of the others.
std::optional<QCPRange> contentRange(const std::optional<QCPRange>& own,
                                     const std::optional<QCPRange>& others);

/// Values of a graph or curve along one axis, of those that can be drawn; none: absent.
std::optional<QCPRange> rangeOf(const QCPAbstractPlottable& plottable, Qt::Orientation along);

/// Of the finite ones; none: absent.
template <class Values>
std::optional<QCPRange> rangeOf(const Values& values) {
    std::optional<QCPRange> range;
    for (const double value : values) {
        if (!std::isfinite(value))
            continue;
        if (!range)
            range = QCPRange(value, value);
        range->expand(value);
    }
    return range;
}

/// Both together; either may be absent.
std::optional<QCPRange> united(const std::optional<QCPRange>& a, const std::optional<QCPRange>& b);

/// Stands an upright line at a place of the horizontal axis.
void standAt(QCPItemStraightLine& line, double place);

/// Sets an axis to a range with `room` of it more at either end; absent: leaves it.
void showContent(QCPAxis& axis, const std::optional<QCPRange>& range, double room);

} // namespace lobewright::ui
