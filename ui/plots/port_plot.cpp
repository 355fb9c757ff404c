#include "ui/plots/port_plot.h"

#include "core/units.h"
#include "ui/plots/angle_ticks.h"

#include <cmath>

namespace lobewright::ui {

namespace {
constexpr int areaSamples = 721; // every half degree and both ends
}

QString spanText(double shaftAngle, int cyclesPerTurn, double omega) {
    const double degrees = shaftAngle / units::degree;
    QString text = PortPlot::tr("%1° shaft, %2° cycle")
                       .arg(degreesText(degrees), degreesText(degrees * cyclesPerTurn));
    if (omega > 0.0)
        text += PortPlot::tr(", %1 ms").arg(QLocale().toString(shaftAngle / omega * 1e3, 'f', 2));
    return text;
}

PortPlot::PortPlot(TurnCursor& cursor, QWidget* parent)
    : TurnPlot(cursor, tr("Port timing"), parent) {
    canvas().setLeftLabel(tr("open area, mm²"));
    const QString help = tr("Geometric area that the piston uncovers, all rows of one end.");
    area_.inlet = addCurve({tr("Inlet ports"), tr("mm²"), help, Tone::inlet});
    area_.exhaust = addCurve({tr("Exhaust ports"), tr("mm²"), help, Tone::exhaust});
    canvas().addPaint(TurnCanvas::shading, [this](QCPPainter& painter) { paintShading(painter); });
    canvas().addPaint(TurnCanvas::marks, [this](QCPPainter& painter) { paintLabels(painter); });
}

void PortPlot::refill() {
    const mechanism::OpposedPair& pair = geometry()->pair;
    Samples theta = Samples::LinSpaced(areaSamples, 0.0, units::turn);
    if (isSolved())
        theta = solution()->theta; // every event is a sample
    for (const End end : bothEnds) {
        setValues(area_[end], theta, geometry()->timing.area(end, theta) / units::squareMillimetre);
        if (baseline())
            setBaselineValues(area_[end], baseline()->theta,
                              baseline()->timing.area(end, baseline()->theta) /
                                  units::squareMillimetre);
        else
            setBaselineValues(area_[end], {}, {});
    }
    spans_ = portSpans(pair, geometry()->timing);
    finishRefill();
}

QCPRange PortPlot::contentRange(bool onRight) const {
    QCPRange range = TurnPlot::contentRange(onRight);
    range.upper += 0.18 * range.size(); // the labels of the spans stand above the curves
    return range;
}

QPolygonF PortPlot::area(const Span& span,
                         const std::function<double(Eigen::Index)>& height) const {
    QPolygonF shape;
    const Samples& theta = curves()[area_.inlet].theta;
    const double ground = canvas().yAxis->coordToPixel(0.0);
    for (Eigen::Index i = 0; i < theta.size(); ++i) {
        if (theta[i] < span.from || theta[i] > span.to)
            continue;
        if (shape.isEmpty())
            shape.append({canvas().xOf(theta[i]), ground});
        shape.append({canvas().xOf(theta[i]), canvas().yAxis->coordToPixel(height(i))});
    }
    if (!shape.isEmpty())
        shape.append({shape.last().x(), ground});
    return shape;
}

QPolygonF PortPlot::areaUnder(size_t of, const Span& span) const {
    const Samples& values = curves()[of].values;
    return area(span, [&values](Eigen::Index i) { return values[i]; });
}

QPolygonF PortPlot::areaUnderBoth(const Span& span) const {
    const Samples& inlet = curves()[area_.inlet].values;
    const Samples& exhaust = curves()[area_.exhaust].values;
    return area(span, [&](Eigen::Index i) { return std::min(inlet[i], exhaust[i]); });
}

void PortPlot::paintShading(QCPPainter& painter) const {
    if (!geometry())
        return;
    painter.setPen(Qt::NoPen);
    painter.setBrush(tones().sideFill(End::exhaust));
    for (const Span& span : spans_.blowdown)
        painter.drawPolygon(areaUnder(area_.exhaust, span));
    painter.setBrush(tones().sideFill(End::inlet));
    for (const Span& span : spans_.afterCharge)
        painter.drawPolygon(areaUnder(area_.inlet, span));
    painter.setBrush(QBrush(tones().tint(tones().ink, 0.14)));
    for (const Span& span : spans_.overlap) {
        const QPolygonF shape = areaUnderBoth(span);
        painter.drawPolygon(shape);
    }
    painter.setBrush(Qt::NoBrush);
}

void PortPlot::paintLabels(QCPPainter& painter) const {
    if (!geometry())
        return;
    const QRectF box = canvas().inside();
    painter.setFont(canvas().xAxis->tickLabelFont());
    const QFontMetricsF metrics(painter.font());
    const double omega = geometry()->design.running.speed;
    const int cycles = geometry()->pair.cyclesPerTurn();
    struct Group {
        const std::vector<Span>& spans;
        QString name;
        QColor colour;
    };
    const Group groups[] = {{spans_.blowdown, tr("blowdown"), tones().exhaust},
                            {spans_.overlap, tr("overlap"), tones().ink},
                            {spans_.afterCharge, tr("after-charge"), tones().inlet}};
    // A line of its own for each kind, below the letters of the events.
    double line = box.top() + 2.0 * metrics.height() + 2.0;
    for (const Group& group : groups) {
        double freeFrom = box.left();
        for (const Span& span : group.spans) {
            const double from = canvas().xOf(span.from), to = canvas().xOf(span.to);
            if (to < box.left() || from > box.right())
                continue;
            const QString words = group.name + ' ' + spanText(span.length(), cycles, omega);
            const QString few =
                group.name + ' ' + degreesText(span.length() / units::degree) + QChar(0xB0);
            painter.setPen(QPen(group.colour, 1));
            const double y = line + 0.5 * metrics.height();
            painter.drawLine(QPointF(from, y + 0.5 * metrics.height()),
                             QPointF(to, y + 0.5 * metrics.height()));
            for (const QString& text : {words, few}) {
                const double width = metrics.horizontalAdvance(text);
                const double left = std::clamp(0.5 * (from + to) - 0.5 * width, box.left() + 2.0,
                                               box.right() - width - 2.0);
                const double roomTo = freeFrom;
                if (left < roomTo)
                    continue;
                painter.drawText(QPointF(left, line + metrics.ascent()), text);
                freeFrom = left + width + 6.0;
                break;
            }
        }
        line += metrics.height() + 2.0;
    }
}

} // namespace lobewright::ui
