#include "ui/scene/section/section_painter.h"

#include "core/units.h"
#include "ui/base/units.h"
#include "ui/base/words.h"
#include "ui/plots/base/thin_line.h"

#include <QCoreApplication>
#include <QPainter>
#include <QPainterPath>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(SectionPainter)
};

void arrow(QPainter& painter, const QPointF& tail, const QPointF& tip, double head) {
    const QPointF way = tip - tail;
    const double length = std::hypot(way.x(), way.y());
    if (length < 1.0)
        return;
    const QPointF unit = way / length;
    const QPointF across(-unit.y(), unit.x());
    const double size = std::min(head, length);
    const QPointF base = tip - size * unit;
    painter.drawLine(tail, base);
    painter.save();
    painter.setBrush(painter.pen().color());
    painter.setPen(Qt::NoPen);
    painter.drawPolygon(QPolygonF{tip, base + 0.45 * size * across, base - 0.45 * size * across});
    painter.restore();
}

} // namespace

void SectionPainter::paint() {
    paintBaseline();
    const auto pistons = engine_.pair().pistons();
    for (const End end : pistons)
        paintTrack(end);
    paintGas();
    for (const End end : bothEnds)
        paintFarPorts(end);
    for (const End end : pistons)
        paintPiston(end);
    paintLiner();
    if (engine_.pair().mechanism().isOneSided())
        paintHead();
    for (const End end : bothEnds)
        paintPortFlow(end);
    for (const End end : pistons)
        paintRoller(end);
    for (const End end : pistons)
        paintForce(end);
    paintGap();
}

QColor SectionPainter::gasTone() const {
    const auto gas = engine_.gasAt(theta_);
    if (!gas)
        return tones_.panel;
    return gas->burning ? tones_.burning : tones_.gas(gas->burntShare);
}

void SectionPainter::paintBaseline() {
    const auto* baseline = engine_.baseline();
    if (!baseline)
        return;
    const double middle = frame_.at(0.0, 0.0).y();
    for (const End end : baseline->pair.pistons()) {
        const auto& pair = baseline->pair;
        const double out = 0.5 * pair.mechanism().clearance + pair.curve(end).stroke() -
                           pair.lift(end, theta_).y + pair.shift(end);
        const double x = frame_.at(SectionFrame::outward(end) * out, 0.0).x();
        const double half = (frame_.halfBore() + 1.8 * frame_.wall()) * frame_.scale();
        painter_.setPen(QPen(tones_.baseline(tones_.side(end)), 1.6, Qt::DashLine));
        painter_.drawLine(QPointF(x, middle - half), QPointF(x, middle + half));
    }
}

void SectionPainter::paintTrack(End end) {
    const QPolygonF profile = thinned(frame_.trackProfile(end, theta_, false));
    QPolygonF body = profile;
    const double face = frame_.blankFace(end);
    body << QPointF(face, profile.last().y()) << QPointF(face, profile.first().y());
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(tones_.metalPale);
    painter_.drawPolygon(body);
    painter_.setPen(QPen(tones_.side(end), 2.2));
    painter_.setBrush(Qt::NoBrush);
    painter_.drawPolyline(profile);
    if (!engine_.design().mechanism.closedTrack)
        return;
    const QPolygonF pull = thinned(frame_.trackProfile(end, theta_, true));
    const double rim = frame_.rimFace(end);
    QPolygonF rib = pull;
    rib << QPointF(rim, pull.last().y()) << QPointF(rim, pull.first().y());
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(tones_.metalPale);
    painter_.drawPolygon(rib);
    painter_.setPen(QPen(tones_.side(end), 1.4));
    painter_.setBrush(Qt::NoBrush);
    painter_.drawPolyline(pull);
}

void SectionPainter::paintGas() {
    const double b = frame_.halfBore();
    const double left = frame_.linerEnd(End::inlet), right = frame_.linerEnd(End::exhaust);
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(tones_.paper);
    painter_.drawRect(frame_.box(left, -b, right, b));
    painter_.setBrush(gasTone());
    painter_.drawRect(
        frame_.box(frame_.crown(End::inlet, theta_), -b, frame_.crown(End::exhaust, theta_), b));
}

void SectionPainter::paintFarPorts(End end) {
    const double b = frame_.halfBore();
    for (const auto& row : engine_.design().ports[end]) {
        const double inner = frame_.portPlace(end, row.edge);
        const double outer = frame_.portPlace(end, row.edge - row.height);
        painter_.setPen(QPen(tones_.side(end), 1.0));
        painter_.setBrush(tones_.sideFill(end));
        // Ports on the far half of the bore, foreshortened by their place around it.
        for (int i = 0; i < row.count; ++i) {
            const double around = aroundBore(end, (i + 0.5) / row.count);
            if (std::cos(around) <= 0.05)
                continue;
            const double half = std::asin(std::clamp(0.5 * row.width / b, 0.0, 1.0));
            const double top = b * std::sin(std::max(around - half, -0.5 * units::pi));
            const double bottom = b * std::sin(std::min(around + half, 0.5 * units::pi));
            const double corner = row.cornerRadius * frame_.scale();
            painter_.drawRoundedRect(frame_.box(inner, top, outer, bottom), corner, corner);
        }
    }
}

void SectionPainter::paintPiston(End end) {
    const double out = SectionFrame::outward(end);
    const double crown = frame_.crown(end, theta_);
    const double axis = frame_.rollerAxis(end, theta_);
    const double b = frame_.halfBore() - 0.6 / frame_.scale();
    const double length = frame_.pistonLength();
    const double skirt = 0.16 * frame_.halfBore();
    const double top = std::min(0.22 * length, 0.36 * frame_.halfBore());
    const double rod = 0.30 * frame_.halfBore();
    const double r = engine_.design().mechanism.roller.radius;

    // Inside the cup one looks at the far skirt wall.
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(tones_.tint(tones_.metal, 0.35));
    painter_.drawRect(frame_.box(crown, -b, crown + out * length, b));
    painter_.setPen(QPen(outline(), 1.0));
    painter_.setBrush(tones_.metal);
    painter_.drawRect(frame_.box(crown + out * 0.5 * top, -rod, axis - out * 0.15 * r, rod));
    painter_.drawRoundedRect(
        frame_.box(axis - out * 0.95 * r, -0.55 * r, axis + out * 0.35 * r, 0.55 * r), 3, 3);
    QPolygonF cup;
    const auto point = [&](double along, double t) { return frame_.at(crown + out * along, t); };
    cup << point(0, -b) << point(length, -b) << point(length, -b + skirt) << point(top, -b + skirt)
        << point(top, b - skirt) << point(length, b - skirt) << point(length, b) << point(0, b);
    painter_.drawPolygon(cup);

    const auto& mechanism = engine_.design().mechanism;
    if (mechanism.piston) {
        const auto& rings = engine_.design().friction.rings;
        painter_.setBrush(tones_.ink);
        painter_.setPen(Qt::NoPen);
        for (std::size_t i = 0; i < mechanism.piston->ringDistances.size(); ++i) {
            const double from = mechanism.piston->ringDistances[i];
            const double high = i < rings.size() ? rings[i].height : 0.02 * mechanism.bore;
            const double depth = 0.07 * frame_.halfBore();
            for (const double side : {-1.0, 1.0}) {
                painter_.drawRect(frame_.box(crown + out * from, side * frame_.halfBore(),
                                             crown + out * (from + high),
                                             side * (frame_.halfBore() - depth)));
            }
        }
    }
    painter_.setPen(QPen(tones_.side(end), 3.0, Qt::SolidLine, Qt::FlatCap));
    painter_.drawLine(point(1.5 / frame_.scale(), -b), point(1.5 / frame_.scale(), b));
}

void SectionPainter::paintLiner() {
    const double b = frame_.halfBore(), w = frame_.wall();
    const double left = frame_.linerEnd(End::inlet), right = frame_.linerEnd(End::exhaust);
    for (const double side : {-1.0, 1.0}) {
        QPainterPath wall;
        wall.addRect(frame_.box(left, side * b, right, side * (b + w)));
        QPainterPath openings;
        for (const End end : bothEnds) {
            if (!cuts(end, side))
                continue;
            for (const auto& row : engine_.design().ports[end]) {
                openings.addRect(frame_.box(frame_.portPlace(end, row.edge), side * 0.9 * b,
                                            frame_.portPlace(end, row.edge - row.height),
                                            side * (b + 1.2 * w)));
            }
        }
        painter_.setPen(QPen(outline(), 1.0));
        painter_.setBrush(tones_.metalPale);
        painter_.drawPath(wall.subtracted(openings));
    }
}

/// One piston uncovers both rows: they share the circumference, exhaust above and inlet below.
bool SectionPainter::cuts(End end, double side) const {
    return !engine_.pair().mechanism().isOneSided() || (end == End::inlet) == (side > 0.0);
}

double SectionPainter::aroundBore(End end, double share) const {
    if (!engine_.pair().mechanism().isOneSided())
        return units::turn * share - 0.5 * units::pi;
    return (end == End::inlet ? units::pi : -units::pi) * share;
}

/// The head closes the cylinder where the other piston would stand.
void SectionPainter::paintHead() {
    const double b = frame_.halfBore(), w = frame_.wall();
    const double face = frame_.head(), thick = frame_.headThickness();
    const double step = 0.16 * frame_.halfBore();
    painter_.setPen(QPen(outline(), 1.0));
    painter_.setBrush(tones_.metal);
    painter_.drawRect(frame_.box(face, -b - w, face + thick, b + w));
    painter_.save();
    painter_.setClipRect(frame_.box(face, -b - w, face + thick, b + w));
    painter_.setPen(QPen(tones_.tint(tones_.ink, 0.45), 1.0));
    for (double t = -b - w - thick; t < b + w; t += step)
        painter_.drawLine(frame_.at(face, t), frame_.at(face + thick, t + thick));
    painter_.restore();
    painter_.setPen(QPen(tones_.ink, 2.2));
    painter_.drawLine(frame_.at(face, -b), frame_.at(face, b));
    const QString text = Words::tr("head");
    const double wide = painter_.fontMetrics().horizontalAdvance(text) + 8.0;
    const double high = painter_.fontMetrics().height();
    if (high > thick * frame_.scale())
        return;
    painter_.save();
    painter_.translate(frame_.at(face + 0.5 * thick, 0.0));
    if (wide > thick * frame_.scale())
        painter_.rotate(-90.0);
    const QRectF box(-0.5 * wide, -0.5 * high, wide, high);
    painter_.fillRect(box, tones_.panel);
    painter_.setPen(tones_.ink);
    painter_.drawText(box, Qt::AlignCenter, text);
    painter_.restore();
}

void SectionPainter::paintPortFlow(End end) {
    const double b = frame_.halfBore(), w = frame_.wall();
    const double lift = engine_.timing().position(end, theta_);
    for (const auto& row : engine_.design().ports[end]) {
        const double inner = frame_.portPlace(end, row.edge);
        const double outer = frame_.portPlace(end, row.edge - row.height);
        const double open = std::clamp(row.edge - lift, 0.0, row.height);
        const double reached = frame_.portPlace(end, row.edge - open);
        for (const double side : {-1.0, 1.0}) {
            if (!cuts(end, side))
                continue;
            painter_.setPen(Qt::NoPen);
            painter_.setBrush(tones_.sideFill(end));
            painter_.drawRect(frame_.box(inner, side * b, outer, side * (b + w)));
            if (open > 0.0) {
                painter_.setBrush(tones_.side(end));
                painter_.drawRect(frame_.box(inner, side * b, reached, side * (b + w)));
            }
        }
        const auto flowsIn = engine_.flowsIn(end, theta_);
        if (open <= 0.0 || !flowsIn)
            continue;
        const bool inwards = *flowsIn;
        const double x = 0.5 * (inner + reached);
        const double reach = (0.12 + 0.28 * open / row.height) * frame_.halfBore();
        painter_.setPen(QPen(tones_.side(end), 2.0));
        for (const double side : {-1.0, 1.0}) {
            if (!cuts(end, side))
                continue;
            const QPointF near = frame_.at(x, side * (b + 1.35 * w));
            const QPointF far = frame_.at(x, side * (b + 1.35 * w + reach));
            arrow(painter_, inwards ? far : near, inwards ? near : far, 8.0);
        }
    }
}

void SectionPainter::paintRoller(End end) {
    const double r = engine_.design().mechanism.roller.radius * frame_.scale();
    const QPointF centre = frame_.at(frame_.rollerAxis(end, theta_), 0.0);
    painter_.setPen(QPen(outline(), 1.2));
    painter_.setBrush(tones_.tint(tones_.metal, 0.6));
    painter_.drawEllipse(centre, r, r);
    painter_.setBrush(tones_.metal);
    painter_.drawEllipse(centre, 0.38 * r, 0.38 * r);
    const double turn = frame_.rollerTurn(end, theta_);
    painter_.setPen(Qt::NoPen);
    painter_.setBrush(tones_.ink);
    for (int i = 0; i < 3; ++i) {
        const double a = turn + i * units::turn / 3.0;
        painter_.drawEllipse(centre + 0.7 * r * QPointF(std::cos(a), std::sin(a)), 0.07 * r,
                             0.07 * r);
    }
}

void SectionPainter::paintForce(End end) {
    const std::string name = std::string("contact_force_") + lobewright::name(end) + "_N";
    const auto force = engine_.channel(name, theta_);
    const auto peak = engine_.channelPeak(name);
    if (!force || !peak || *peak <= 0.0)
        return;
    const bool closed = engine_.design().mechanism.closedTrack;
    const double r = engine_.design().mechanism.roller.radius * frame_.scale();
    const QPointF centre = frame_.at(frame_.rollerAxis(end, theta_), 0.0);
    const double below = centre.y() + r + 4.0;
    QString text;
    if (!closed && *force <= 0.0) {
        painter_.setPen(QPen(tones_.warning, 2.4, Qt::DashLine));
        painter_.setBrush(Qt::NoBrush);
        painter_.drawEllipse(centre, r + 3.0, r + 3.0);
        text = Words::tr("lifts off");
        painter_.setPen(tones_.warning);
    } else {
        const bool pull = *force < 0.0;
        const QPointF touch = frame_.contact(end, theta_, pull);
        const QPointF way = (pull ? -1.0 : 1.0) * frame_.push(end, theta_);
        const double length = std::abs(*force) / *peak * std::max(2.6 * r, 34.0);
        painter_.setPen(QPen(tones_.ink, 2.4));
        arrow(painter_, touch, touch + length * way, 9.0);
        text = quantityText(*force / 1000.0, QStringLiteral("kN"), 2);
        painter_.setPen(tones_.ink);
    }
    const double width = painter_.fontMetrics().horizontalAdvance(text) + 8.0;
    QRectF box(centre.x() - 0.5 * width, below, width, painter_.fontMetrics().height());
    painter_.save();
    painter_.setBrush(tones_.panel);
    painter_.setPen(Qt::NoPen);
    painter_.drawRoundedRect(box, 3, 3);
    painter_.restore();
    painter_.drawText(box, Qt::AlignCenter, text);
}

void SectionPainter::paintGap() {
    const double left = frame_.crown(End::inlet, theta_),
                 right = frame_.crown(End::exhaust, theta_);
    painter_.setPen(QPen(tones_.quiet, 1.0, Qt::DashDotLine));
    painter_.drawLine(frame_.at(frame_.linerEnd(End::inlet) * 1.02, 0), frame_.at(left, 0));
    if (!engine_.pair().mechanism().isOneSided())
        painter_.drawLine(frame_.at(right, 0), frame_.at(frame_.linerEnd(End::exhaust) * 1.02, 0));
    const double gap = right - left;
    const QString text = quantityText(gap / units::millimetre, QStringLiteral("mm"), 1);
    const double width = painter_.fontMetrics().horizontalAdvance(text);
    if (width + 40.0 > gap * frame_.scale())
        return; // the caption below says it
    painter_.setPen(QPen(tones_.ink, 1.0));
    const double t = 0.45 * frame_.halfBore();
    const QPointF middle = frame_.at(0.5 * (left + right), t);
    arrow(painter_, middle, frame_.at(left, t), 6.0);
    arrow(painter_, middle, frame_.at(right, t), 6.0);
    const double high = painter_.fontMetrics().height();
    const QRectF box(middle.x() - 0.5 * width - 4, middle.y() - 0.5 * high, width + 8, high);
    painter_.fillRect(box, gasTone());
    painter_.drawText(box, Qt::AlignCenter, text);
}

} // namespace lobewright::ui
