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
    for (const auto phase :
         {QCPLayoutElement::upPreparation, QCPLayoutElement::upMargins, QCPLayoutElement::upLayout})
        plot.plotLayout()->update(phase);
}

bool fitTicks(QCPAxis& axis, int height) {
    constexpr int most = 5, fewest = 2;
    constexpr double apart = 2.2; // heights of the letters: a ticker takes up to half as many again
    const int letters = std::max(1, QFontMetrics(axis.tickLabelFont()).height());
    const int count = std::clamp(static_cast<int>(height / (apart * letters)), fewest, most);
    if (axis.ticker()->tickCount() == count)
        return false;
    axis.ticker()->setTickCount(count);
    return true;
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
    for (QCPLayoutElement* element : plot_.plotLayout()->elements(true)) {
        if (auto* scale = qobject_cast<QCPColorScale*>(element)) {
            const int height = scale->rect().height();
            isChanged = fitTicks(*scale->axis(), height) || isChanged;
            isChanged = fitName(*scale->axis(), height) || isChanged;
        }
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
    // Along a narrow frame numbers of four digits stand side by side.
    for (QCPAxis* axis : frame.axes(QCPAxis::atTop | QCPAxis::atBottom)) {
        const QFontMetrics letters(axis->tickLabelFont());
        const int digits = std::max(1, letters.horizontalAdvance(QStringLiteral("0000")));
        isChanged = fitTicks(*axis, frame.width() * letters.height() / digits) || isChanged;
        // A name stands in the middle of its frame and may reach beyond it.
        const int middle = frame.center().x();
        isChanged = fitName(*axis, 2 * std::min(middle, plot_.width() - middle)) || isChanged;
    }
    const int height = frame.height();
    for (QCPAxis* axis : frame.axes(QCPAxis::atLeft | QCPAxis::atRight)) {
        isChanged = fitTicks(*axis, height) || isChanged;
        isChanged = fitName(*axis, height) || isChanged;
    }
    return isChanged;
}

/// A name longer than its room would be cut: its unit is left, which stands
/// behind the last comma, or nothing where that is too long too or there is none. An owner that
/// names the axis anew is heeded.
bool LowFrames::fitName(QCPAxis& axis, int room) {
    Shortened& kept = shortened_[&axis];
    if (axis.label() != kept.shown)
        kept.whole = axis.label();
    const QFontMetrics letters(axis.labelFont());
    kept.shown = QString();
    for (const QString& name : {kept.whole, kept.whole.section(QStringLiteral(", "), -1)}) {
        if (letters.horizontalAdvance(name) <= room) {
            kept.shown = name;
            break;
        }
    }
    if (axis.label() == kept.shown)
        return false;
    axis.setLabel(kept.shown);
    return true;
}

} // namespace lobewright::ui
