#include "ui/scene/section/section_painter.h"

#include "core/units.h"
#include "ui/base/drawing.h"
#include "ui/base/units.h"
#include "ui/base/words.h"
#include "ui/plots/base/thin_line.h"
#include "ui/scene/section/cylinder_painter.h"
#include "ui/scene/section/drawn_arrow.h"
#include "ui/scene/section/gas_tone.h"

#include <QCoreApplication>

#include <algorithm>
#include <cmath>
#include <numbers>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(SectionPainter)
};

} // namespace

void SectionPainter::paint() {
    CylinderPainter cylinder(painter_, engine_, frame_, tones_, theta_);
    const auto pistons = engine_.pair().pistons();
    for (const End end : pistons)
        paintTrack(end);
    cylinder.paintBehind();
    for (const End end : pistons) {
        cylinder.paintPiston(end);
        paintRod(end);
    }
    cylinder.paintAround();
    for (const End end : pistons)
        paintRoller(end);
    for (const End end : pistons)
        paintForce(end);
    paintGap();
}

void SectionPainter::paintTrack(End end) {
    const QPolygonF profile = thinned(frame_.trackProfile(end, theta_, false));
    QPolygonF body = profile;
    const double face = frame_.blankFace(end);
    body << QPointF(face, profile.last().y()) << QPointF(face, profile.first().y());
    fillOnly(painter_, tones_.metalPale);
    painter_.drawPolygon(body);
    outlineOnly(painter_, QPen(tones_.side(end), 2.2));
    painter_.drawPolyline(profile);
    if (!engine_.design().mechanism.closedTrack)
        return;
    const QPolygonF pull = thinned(frame_.trackProfile(end, theta_, true));
    const double rim = frame_.rimFace(end);
    QPolygonF rib = pull;
    rib << QPointF(rim, pull.last().y()) << QPointF(rim, pull.first().y());
    fillOnly(painter_, tones_.metalPale);
    painter_.drawPolygon(rib);
    outlineOnly(painter_, QPen(tones_.side(end), 1.4));
    painter_.drawPolyline(pull);
}

/// From the crown to the block that carries the roller.
void SectionPainter::paintRod(End end) {
    const double out = SectionFrame::outward(end);
    const double axis = frame_.rollerAxis(end, theta_);
    const double crown = std::min(0.22 * frame_.pistonLength(), 0.36 * frame_.halfBore());
    const double rod = 0.30 * frame_.halfBore();
    const double r = engine_.design().mechanism.roller.radius;
    fillAndOutline(painter_, Materials(tones_).steel, QPen(tones_.ink, 1.0));
    painter_.drawRect(
        frame_.box(frame_.crown(end, theta_) + out * crown, -rod, axis - out * 0.15 * r, rod));
    painter_.drawRoundedRect(
        frame_.box(axis - out * 0.95 * r, -0.55 * r, axis + out * 0.35 * r, 0.55 * r), 3, 3);
}

void SectionPainter::paintRoller(End end) {
    const double r = engine_.design().mechanism.roller.radius * frame_.scale();
    const QPointF centre = frame_.at(frame_.rollerAxis(end, theta_), 0.0);
    fillAndOutline(painter_, tones_.tint(tones_.metal, 0.6), QPen(tones_.ink, 1.2));
    painter_.drawEllipse(centre, r, r);
    painter_.setBrush(tones_.metal);
    painter_.drawEllipse(centre, 0.38 * r, 0.38 * r);
    const double turn = frame_.rollerTurn(end, theta_);
    fillOnly(painter_, tones_.ink);
    for (int i = 0; i < 3; ++i) {
        const double a = turn + i * units::turn / 3.0;
        painter_.drawEllipse(centre + 0.7 * r * QPointF(std::cos(a), std::sin(a)), 0.07 * r,
                             0.07 * r);
    }
}

void SectionPainter::paintForce(End end) {
    const std::string name = solution::QuantityId{"contact_force", &in::N, end}.written();
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
        outlineOnly(painter_, QPen(tones_.warning, 2.4, Qt::DashLine));
        painter_.drawEllipse(centre, r + 3.0, r + 3.0);
        text = Words::tr("lifts off");
        painter_.setPen(tones_.warning);
    } else {
        const bool pull = *force < 0.0;
        const QPointF touch = frame_.contact(end, theta_, pull);
        const QPointF way = (pull ? -1.0 : 1.0) * frame_.push(end, theta_);
        const double length = std::abs(*force) / *peak * std::max(2.6 * r, 34.0);
        painter_.setPen(QPen(tones_.ink, 2.4));
        drawArrow(painter_, touch, touch + length * way, 9.0);
        text = quantityText(*force / 1000.0, QStringLiteral("kN"), 2);
        painter_.setPen(tones_.ink);
    }
    const double width = painter_.fontMetrics().horizontalAdvance(text) + 8.0;
    QRectF box(centre.x() - 0.5 * width, below, width, painter_.fontMetrics().height());
    painter_.save();
    fillOnly(painter_, tones_.panel);
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
    drawArrow(painter_, middle, frame_.at(left, t), 6.0);
    drawArrow(painter_, middle, frame_.at(right, t), 6.0);
    const double high = painter_.fontMetrics().height();
    const QRectF box(middle.x() - 0.5 * width - 4, middle.y() - 0.5 * high, width + 8, high);
    const auto gas = engine_.gasAt(theta_);
    painter_.fillRect(box, gas ? heatTone(tones_, gas->temperature) : tones_.panel);
    painter_.drawText(box, Qt::AlignCenter, text);
}

} // namespace lobewright::ui
