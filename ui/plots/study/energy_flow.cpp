#include "ui/plots/study/energy_flow.h"

#include "ui/base/type_scale.h"
#include "ui/base/units.h"

#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace lobewright::ui {

namespace {

constexpr double bar = 8.0, gap = 8.0; // [px]
constexpr double leastStream = 72.0;   // of width between bars [px]
constexpr double leastHeight = 48.0;   // of all streams together [px]
constexpr double inShare = 0.22;       // of the width, for the names of what comes in
constexpr int noFlags = Qt::AlignLeft | Qt::AlignVCenter;

double total(const std::vector<FlowPart>& parts) {
    return std::accumulate(parts.begin(), parts.end(), 0.0,
                           [](double sum, const FlowPart& part) { return sum + part.size; });
}

QString wordsOf(const FlowPart& part) {
    return part.row->label + QStringLiteral("  ") + flowValue(*part.row);
}

double widest(const std::vector<FlowPart>& parts, const QFontMetricsF& metrics) {
    double most = 0.0;
    for (const FlowPart& part : parts)
        most = std::max(most, metrics.horizontalAdvance(wordsOf(part)));
    return std::ceil(most) + 2.0;
}

/// From the right edge of one bar to the left edge of another, as high at both ends.
void paintStream(QPainter& painter, const QPointF& from, const QPointF& to, double high) {
    const double middle = 0.5 * (from.x() + to.x());
    QPainterPath path(from);
    path.cubicTo({middle, from.y()}, {middle, to.y()}, to);
    path.lineTo(to.x(), to.y() + high);
    path.cubicTo({middle, to.y() + high}, {middle, from.y() + high}, {from.x(), from.y() + high});
    path.closeSubpath();
    painter.drawPath(path);
}

/// Bars below one another from `top`, each at least as far from the next as a line of words.
double stack(std::vector<FlowLayout::Node>& nodes, const std::vector<FlowPart>& parts, double x,
             double top, double scale, double line) {
    for (const FlowPart& part : parts) {
        const double high = part.size * scale;
        nodes.push_back({part, QRectF(x, top, bar, high), {}});
        top += std::max(high + 0.25 * line, line);
    }
    return top;
}

} // namespace

QString flowValue(const BarTable::Row& row) {
    return quantityText(row.value.value_or(0.0), row.unit);
}

std::optional<FlowLayout> FlowLayout::make(const EnergyFlow& flow, const QRectF& place,
                                           const QFontMetricsF& metrics) {
    const double line = metrics.height() + 2.0;
    const double all = total(flow.in);
    const double inWidth = std::max(inShare * place.width(), 10.0 * metrics.averageCharWidth());
    const double workWidth = widest(flow.work, metrics);
    const double room = place.width() - inWidth - workWidth - 3.0 * (bar + gap);
    const double outWidth = widest({flow.out.begin() + 1, flow.out.end()}, metrics);
    if (all <= 0.0 || room < 2.0 * leastStream)
        return std::nullopt;
    FlowLayout layout;
    layout.flow_ = flow;
    const double inX = place.left() + inWidth + gap;
    const double outX = inX + bar + 0.42 * room;
    const double workX = place.right() - workWidth - gap - bar;
    if (outX + bar + gap + outWidth > place.right())
        return std::nullopt;
    // Titles above, then the name of the work, then the streams as large as they fit.
    const double title = 2.0 * line;
    const double top = place.top() + title + line;
    const auto heightAt = [&](double scale) {
        const auto high = [&](const std::vector<FlowPart>& parts) {
            std::vector<Node> nodes;
            return stack(nodes, parts, 0.0, 0.0, scale, line);
        };
        const double work = std::max(high(flow.work), flow.out.front().size * scale + 0.5 * line);
        const double in = std::max(high(flow.in), 4.0 * line * static_cast<double>(flow.in.size()));
        return std::max(work + high({flow.out.begin() + 1, flow.out.end()}), in);
    };
    double scale = (place.bottom() - top) / all;
    while (heightAt(scale) > place.bottom() - top && scale * all > leastHeight)
        scale *= 0.95;
    if (scale * all <= leastHeight)
        return std::nullopt;
    layout.scale_ = scale;
    layout.inTitle_ = QRectF(place.left(), place.top(), inWidth + gap + bar, title);
    layout.outTitle_ = QRectF(outX, place.top(), workX - outX - gap, title);
    layout.workTitle_ = QRectF(workX, place.top(), place.right() - workX, title);
    double next = stack(layout.work_, flow.work, workX, top, scale, line);
    next = std::max(next, top + flow.out.front().size * scale + 0.5 * line);
    layout.out_.push_back({flow.out.front(), QRectF(outX, top, bar, flow.out.front().size * scale),
                           QRectF(outX, top - line, place.right() - outX, line)});
    for (std::size_t i = 1; i < flow.out.size(); ++i) {
        const FlowPart& part = flow.out[i];
        const double high = part.size * scale;
        layout.out_.push_back({part, QRectF(outX, next, bar, high),
                               QRectF(outX + bar + gap, next + 0.5 * (high - line),
                                      place.right() - outX - bar - gap, line)});
        next += std::max(high + 0.25 * line, line);
    }
    for (Node& node : layout.work_) {
        node.words = QRectF(workX + bar + gap, node.bar.center().y() - 0.5 * line,
                            place.right() - workX - bar - gap, line);
    }
    double words = top, start = top;
    for (const FlowPart& part : flow.in) { // one above the other: together they are one stream
        layout.in_.push_back({part, QRectF(inX, start, bar, part.size * scale),
                              QRectF(place.left(), std::max(words, start), inWidth, 3.0 * line)});
        start += part.size * scale;
        words = layout.in_.back().words.bottom() + 0.5 * line;
    }
    return layout;
}

void FlowLayout::paintStreams(QPainter& painter, const Palette& tones) const {
    painter.setPen(Qt::NoPen);
    const auto pale = [&](const QColor& colour) { return tones.tint(colour, 0.55); };
    // What goes out is taken from what came in, from the top downward.
    double start = in_.front().bar.top();
    for (const Node& node : out_) {
        painter.setBrush(pale(node.part.colour));
        paintStream(painter, {in_.front().bar.right(), start}, node.bar.topLeft(),
                    node.bar.height());
        start += node.bar.height();
    }
    start = out_.front().bar.top();
    for (const Node& node : work_) {
        painter.setBrush(pale(node.part.colour));
        paintStream(painter, {out_.front().bar.right(), start}, node.bar.topLeft(),
                    node.bar.height());
        start += node.bar.height();
    }
    for (const auto* nodes : {&in_, &out_, &work_}) {
        for (const Node& node : *nodes)
            painter.fillRect(node.bar, node.part.colour);
    }
}

void FlowLayout::paint(QPainter& painter, const Palette& tones) const {
    paintStreams(painter, tones);
    const QFont plain = painter.font();
    painter.setFont(inBold(plain));
    painter.setPen(tones.ink);
    const int titleFlags = Qt::AlignLeft | Qt::AlignTop | Qt::TextWordWrap;
    painter.drawText(inTitle_, titleFlags, flow_.inTitle);
    painter.drawText(outTitle_, titleFlags, flow_.outTitle);
    painter.drawText(workTitle_, titleFlags, flow_.workTitle);
    painter.setFont(plain);
    for (const Node& node : in_) {
        painter.drawText(node.words, titleFlags,
                         node.part.row->label + QLatin1Char('\n') + flowValue(*node.part.row));
    }
    for (const auto* nodes : {&out_, &work_}) {
        for (const Node& node : *nodes)
            painter.drawText(node.words, noFlags, wordsOf(node.part));
    }
}

} // namespace lobewright::ui
