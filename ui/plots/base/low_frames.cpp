#include "ui/plots/base/low_frames.h"

#include "ui/plots/base/custom_plot.h"

#include <QFontMetrics>

#include <algorithm>

namespace lobewright::ui {

int roomOf(const QCPAxis& axis) {
    int room = axis.padding();
    if (axis.ticks())
        room += std::max(axis.tickLengthOut(), axis.subTickLengthOut());
    if (axis.tickLabels())
        room += axis.tickLabelPadding() + QFontMetrics(axis.tickLabelFont()).height();
    if (!axis.label().isEmpty())
        room += axis.labelPadding() + QFontMetrics(axis.labelFont()).height();
    return room;
}

void layOutAgain(QCustomPlot& plot) {
    for (const auto phase : {QCPLayoutElement::upPreparation, QCPLayoutElement::upMargins,
                             QCPLayoutElement::upLayout})
        plot.plotLayout()->update(phase);
}

LowFrames::LowFrames(QCustomPlot& plot) : QObject(&plot), plot_(plot) {
    connect(&plot_, &QCustomPlot::afterLayout, this, &LowFrames::fit);
}

void LowFrames::fit() {
    bool isChanged = false;
    for (QCPAxisRect* frame : plot_.axisRects()) {
        if (frame->visible())
            isChanged = fitFrame(*frame) || isChanged;
    }
    if (isChanged)
        layOutAgain(plot_);
}

/// Counted with the axes whether they are there or not, so that it does not swing to and fro.
bool LowFrames::fitFrame(QCPAxisRect& frame) {
    const int least = frame.minimumMargins().top() + frame.minimumMargins().bottom();
    int axes = 0;
    for (const QCPAxis* axis : frame.axes(QCPAxis::atTop | QCPAxis::atBottom)) {
        if (axis->visible() || std::find(taken_.begin(), taken_.end(), axis) != taken_.end())
            axes += roomOf(*axis);
    }
    const bool isLow = frame.outerRect().height() - std::max(least, axes) < leastFrame;
    bool isChanged = false;
    for (QCPAxis* axis : frame.axes()) {
        const auto kept = std::find(taken_.begin(), taken_.end(), axis);
        if (isLow && axis->visible()) {
            axis->setVisible(false);
            if (kept == taken_.end())
                taken_.push_back(axis);
            isChanged = true;
        } else if (!isLow && kept != taken_.end()) {
            axis->setVisible(true);
            taken_.erase(kept);
            isChanged = true;
        }
    }
    return isChanged;
}

} // namespace lobewright::ui
