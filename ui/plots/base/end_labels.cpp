#include "ui/plots/base/end_labels.h"

#include <algorithm>
#include <numeric>

namespace lobewright::ui {

namespace {

constexpr int lead = 16, gap = 4, border = 6; // [px] of the line, of what is beside it, of the plot

} // namespace

std::vector<double> spreadOut(const std::vector<double>& wanted, double apart, double top,
                              double bottom) {
    std::vector<std::size_t> order(wanted.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::ranges::stable_sort(order, {}, [&](std::size_t i) { return wanted[i]; });
    std::vector<double> placed(wanted.size());
    // Downward no nearer than they may be, then upward what the lower end pushes back.
    double next = top;
    for (const std::size_t i : order) {
        placed[i] = std::max(wanted[i], next);
        next = placed[i] + apart;
    }
    double last = bottom;
    for (auto i = order.rbegin(); i != order.rend(); ++i) {
        placed[*i] = std::min(placed[*i], last);
        last = placed[*i] - apart;
    }
    return placed;
}

EndLabels::EndLabels(QCustomPlot& plot) : QCPLayerable(&plot, QStringLiteral("axes")) {}

void EndLabels::setLabels(std::vector<Label> labels) {
    labels_ = std::move(labels);
    const QFontMetrics metrics(parentPlot()->xAxis->labelFont());
    int widest = 0;
    for (const Label& label : labels_)
        widest = std::max(widest, metrics.horizontalAdvance(label.text));
    QCPAxisRect& frame = *parentPlot()->axisRect();
    QMargins margins = frame.minimumMargins();
    margins.setRight(labels_.empty() ? border : lead + 2 * gap + widest + border);
    frame.setMinimumMargins(margins);
}

void EndLabels::applyDefaultAntialiasingHint(QCPPainter* painter) const {
    painter->setAntialiasing(true);
}

void EndLabels::draw(QCPPainter* painter) {
    const QCPAxisRect& frame = *parentPlot()->axisRect();
    if (labels_.empty() || !frame.visible())
        return;
    const QFont font = parentPlot()->xAxis->labelFont();
    const QFontMetricsF metrics(font);
    const QRectF box = frame.rect();
    painter->setFont(font);
    // More of them than lines of the frame: every second one, or fewer.
    const auto lines =
        std::max(std::size_t{1}, static_cast<std::size_t>(box.height() / metrics.height()));
    const std::size_t stride = (labels_.size() + lines - 1) / lines;
    std::vector<double> wanted;
    for (std::size_t i = 0; i < labels_.size(); i += stride) {
        wanted.push_back(std::clamp(parentPlot()->yAxis->coordToPixel(labels_[i].value), box.top(),
                                    box.bottom()));
    }
    const double half = 0.5 * metrics.height();
    const auto placed = spreadOut(wanted, metrics.height(), box.top() + half, box.bottom() - half);
    for (std::size_t line = 0; line < wanted.size(); ++line) {
        const Label& label = labels_[line * stride];
        const double x = std::min(parentPlot()->xAxis->coordToPixel(label.key), box.right());
        const double from = box.right() + gap, to = from + lead;
        painter->setPen(QPen(label.colour, 1.0));
        if (x > box.right() - 2.0) {
            painter->drawLine(QPointF(from, wanted[line]), QPointF(to, placed[line]));
        } else {
            painter->drawLine(QPointF(to - gap, placed[line]), QPointF(to, placed[line]));
        }
        painter->drawText(QRectF(to + gap, placed[line] - half, box.width(), 2.0 * half),
                          Qt::AlignLeft | Qt::AlignVCenter, label.text);
    }
}

} // namespace lobewright::ui
