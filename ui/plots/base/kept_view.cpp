#include "ui/plots/base/kept_view.h"

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

KeptView::KeptView(QCustomPlot& plot) : QObject(&plot) {
    connect(&plot, &QCustomPlot::mouseWheel, this, [this] { isChosen_ = true; });
    connect(&plot, &QCustomPlot::mouseMove, this, [this](QMouseEvent* event) {
        if (event->buttons() & Qt::LeftButton)
            isChosen_ = true;
    });
    connect(&plot, &QCustomPlot::mouseDoubleClick, this, [this] { isChosen_ = false; });
}

std::optional<QCPRange> contentRange(const std::optional<QCPRange>& own,
                                     const std::optional<QCPRange>& others) {
    if (!own || !others || own->size() <= 0.0)
        return united(own, others);
    constexpr double share = 0.25;
    const double room = share * own->size();
    return QCPRange(std::min(own->lower, std::max(others->lower, own->lower - room)),
                    std::max(own->upper, std::min(others->upper, own->upper + room)));
}

std::optional<QCPRange> rangeOf(const QCPAbstractPlottable& plottable, Qt::Orientation along) {
    bool isFound = false;
    const QCPRange range =
        along == Qt::Horizontal ? plottable.getKeyRange(isFound) : plottable.getValueRange(isFound);
    return isFound ? std::optional(range) : std::nullopt;
}

std::optional<QCPRange> united(const std::optional<QCPRange>& a, const std::optional<QCPRange>& b) {
    if (!a || !b)
        return a ? a : b;
    return QCPRange(std::min(a->lower, b->lower), std::max(a->upper, b->upper));
}

void standAt(QCPItemStraightLine& line, double place) {
    line.point1->setCoords(place, 0.0);
    line.point2->setCoords(place, 1.0);
}

void showContent(QCPAxis& axis, const std::optional<QCPRange>& range, double room) {
    if (!range)
        return;
    double size = range->size();
    if (size <= 0.0)
        size = std::max(1e-9, std::abs(range->upper));
    axis.setRange(range->lower - room * size, range->upper + room * size);
}

} // namespace lobewright::ui
