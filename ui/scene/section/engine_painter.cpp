#include "ui/scene/section/engine_painter.h"

#include "core/units.h"
#include "ui/base/drawing.h"
#include "ui/plots/base/thin_line.h"
#include "ui/scene/section/cylinder_painter.h"
#include "ui/scene/section/drawn_arrow.h"
#include "ui/scene/section/gas_tone.h"

#include <QCoreApplication>
#include <QLinearGradient>
#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(EnginePainter)
};

constexpr double faded = 0.32; ///< opacity of the cylinder beyond the shaft
constexpr int shaftLines = 6;
constexpr double leastPush = 0.06; ///< of the peak pressure

/// A round bar lying across the gradient's direction.
QLinearGradient rounded(const QPointF& from, const QPointF& to, const QColor& tone, bool isDark) {
    QLinearGradient gradient(from, to);
    gradient.setColorAt(0.0, tone.darker(isDark ? 150 : 118));
    gradient.setColorAt(0.35, tone.lighter(isDark ? 118 : 110));
    gradient.setColorAt(1.0, tone.darker(isDark ? 175 : 135));
    return gradient;
}

} // namespace

void EnginePainter::paint() {
    const auto pistons = engine_.pair().pistons();
    for (const End end : pistons)
        paintFarDrum(end);
    paintShaft();
    for (const End end : pistons)
        paintCutDrum(end);
    paintTurning();
    paintCylinder(theta_);
    paintGasWord();
    for (const End end : pistons) {
        paintSliding(end);
        paintGasPush(end);
    }
}

void EnginePainter::paintOpposite(double theta) {
    painter_.save();
    painter_.setOpacity(faded);
    painter_.translate(0.0, 2.0 * frame_.at(0.0, 0.0).y());
    painter_.scale(1.0, -1.0);
    paintCylinder(theta);
    painter_.restore();
}

void EnginePainter::paintCylinder(double theta) {
    CylinderPainter cylinder(painter_, engine_, frame_.cylinder(), tones_, theta);
    const auto pistons = engine_.pair().pistons();
    cylinder.paintBehind();
    for (const End end : pistons) {
        cylinder.paintPiston(end);
        paintCrosshead(end, theta);
        paintRoller(end, theta);
    }
    for (const End end : pistons)
        paintRails(end);
    cylinder.paintAround();
}

QPolygonF EnginePainter::polygon(std::initializer_list<QPointF> zAndRho) const {
    QPolygonF result;
    for (const QPointF& point : zAndRho)
        result << frame_.at(point.x(), point.y());
    return result;
}

void EnginePainter::fill(const QPolygonF& part, const QColor& tone, bool cut) {
    fillAndOutline(painter_, tone, QPen(tones_.ink, 1.0));
    painter_.drawPolygon(part);
    if (!cut)
        return;
    fillOnly(painter_, QBrush(materials_.hatch, Qt::BDiagPattern));
    painter_.drawPolygon(part);
}

/// The half of the drum behind the plane: one looks into it, on the bore of its ring and the edge
/// of the running surface, which shows the lobes that come.
void EnginePainter::paintFarDrum(End end) {
    const double inner = frame_.pitchRadius() - frame_.halfTrack();
    const double outer = frame_.pitchRadius() + frame_.halfTrack();
    const auto face = frame_.face(end, theta_, false);
    const double back = frame_.back(end);
    const bool isClosed = engine_.design().mechanism.closedTrack;
    const auto edge = [&](double rho) {
        QPolygonF line;
        for (const auto& point : face) {
            if (point.angle >= 0.0 && point.angle <= units::pi)
                line << frame_.at(point.z, rho * std::cos(point.angle));
        }
        return thinned(line);
    };
    const auto body = [&](const QPolygonF& line, double rho) {
        QPolygonF part = line;
        part << frame_.at(back, -rho) << frame_.at(back, rho);
        return part;
    };
    const double top = frame_.at(0.0, outer).y(), bottom = frame_.at(0.0, -outer).y();
    fillOnly(painter_, rounded({0.0, top}, {0.0, bottom}, materials_.ironFar, tones_.isDark));
    if (isClosed) {
        painter_.drawRect(frame_.box(frame_.rim(end), outer, back, -outer));
        outlineOnly(painter_, QPen(tones_.side(end), 1.4, Qt::DashLine));
        painter_.drawPolyline(edge(frame_.pitchRadius()));
        return;
    }
    const QPolygonF far = edge(outer), near = edge(inner);
    painter_.drawPolygon(body(far, outer));
    painter_.drawPolygon(body(near, inner));
    outlineOnly(painter_, QPen(tones_.tint(tones_.side(end), 0.55), 1.2));
    painter_.drawPolyline(far);
    painter_.setPen(QPen(tones_.side(end), 1.8));
    painter_.drawPolyline(near);
}

void EnginePainter::paintShaft() {
    const double s = frame_.shaftRadius();
    const QRectF machine = frame_.machine();
    const double top = frame_.at(0.0, s).y(), bottom = frame_.at(0.0, -s).y();
    QRectF bar(QPointF(machine.left(), top), QPointF(machine.right(), bottom));
    if (engine_.pair().mechanism().isOneSided()) { // nothing to carry on the other side of the head
        bar.setRight(
            std::min(bar.right(), frame_.at(frame_.cylinder().head(), 0.0).x() +
                                      1.2 * frame_.cylinder().halfBore() * frame_.scale()));
    }
    fillAndOutline(painter_, rounded({0.0, top}, {0.0, bottom}, materials_.steel, tones_.isDark),
                   QPen(tones_.ink, 1.0));
    painter_.drawRect(bar.adjusted(-2.0, 0.0, 2.0, 0.0));
    // Lines along it that come over the top towards the viewer, one of them strong.
    for (int i = 0; i < shaftLines; ++i) {
        const double angle = theta_ + units::turn * i / shaftLines;
        if (std::sin(angle) <= 0.05)
            continue;
        const double y = frame_.at(0.0, s * std::cos(angle)).y();
        QColor tone = tones_.ink;
        tone.setAlphaF(static_cast<float>((i == 0 ? 0.75 : 0.22) * std::sin(angle)));
        painter_.setPen(QPen(tone, i == 0 ? 2.4 : 1.2));
        painter_.drawLine(QPointF(bar.left(), y), QPointF(bar.right(), y));
    }
}

void EnginePainter::paintCutDrum(End end) {
    paintDrumCut(end, 0.0, 1.0);
    paintDrumCut(end, units::pi, -1.0);
    paintKey(end);
}

/// What the plane cuts of a drum above (`side` 1) or below the shaft (−1): hub, web and ring with
/// the running surface; of a closed track both flanks with the groove between them.
void EnginePainter::paintDrumCut(End end, double angle, double side) {
    const double out = SectionFrame::outward(end);
    const double r = engine_.design().mechanism.roller.radius, s = frame_.shaftRadius();
    const double back = frame_.back(end);
    const double face = EngineFrame::zAt(frame_.face(end, theta_, false), angle);
    const double inner = frame_.pitchRadius() - frame_.halfTrack();
    const double outer = frame_.pitchRadius() + frame_.halfTrack();
    const double hub = std::min(1.45 * s, 0.5 * (s + inner));
    const double web = back - out * 0.5 * r, sleeve = back - out * 1.5 * r;
    const auto at = [&](double z, double rho) { return QPointF(z, side * rho); };
    if (!engine_.design().mechanism.closedTrack) {
        fill(polygon({at(face, outer), at(back, outer), at(back, s), at(sleeve, s), at(sleeve, hub),
                      at(web, hub), at(web, inner), at(face, inner)}),
             materials_.iron, true);
    } else {
        const double pull = EngineFrame::zAt(frame_.face(end, theta_, true), angle);
        const double rim = frame_.rim(end), base = inner - 0.35 * frame_.halfTrack();
        fill(polygon({at(face, outer), at(back, outer), at(back, s), at(sleeve, s), at(sleeve, hub),
                      at(web, hub), at(web, base), at(rim, base), at(rim, outer), at(pull, outer),
                      at(pull, inner), at(face, inner)}),
             materials_.iron, true);
        painter_.setPen(QPen(tones_.side(end), 1.6));
        painter_.drawLine(frame_.at(pull, side * outer), frame_.at(pull, side * inner));
    }
    painter_.setPen(QPen(tones_.side(end), 2.8, Qt::SolidLine, Qt::FlatCap));
    painter_.drawLine(frame_.at(face, side * outer), frame_.at(face, side * inner));
}

void EnginePainter::paintKey(End end) {
    const double out = SectionFrame::outward(end), s = frame_.shaftRadius();
    const double r = engine_.design().mechanism.roller.radius, back = frame_.back(end);
    fillAndOutline(painter_, materials_.bronze, QPen(tones_.ink, 1.0));
    painter_.drawRect(frame_.box(back - out * 0.2 * r, 1.12 * s, back - out * 1.3 * r, 0.88 * s));
}

/// An arrow round the shaft over its top, with the word.
void EnginePainter::paintTurning() {
    const double s = frame_.shaftRadius() * frame_.scale();
    if (s < 8.0)
        return;
    const bool isOneSided = engine_.pair().mechanism().isOneSided();
    const QPointF middle = frame_.at(isOneSided ? -0.9 * frame_.cylinder().halfBore() : 0.0, 0.0);
    const double high = s + 7.0, wide = 0.42 * s;
    QPainterPath arc;
    constexpr int steps = 24;
    const auto place = [&](double share) { // from behind over the top down the front
        const double angle = units::degree * (-35.0 + 150.0 * share);
        return middle + QPointF(wide * std::sin(angle), -high * std::cos(angle));
    };
    arc.moveTo(place(0.0));
    for (int i = 1; i < steps; ++i)
        arc.lineTo(place(static_cast<double>(i) / steps));
    outlineOnly(painter_, QPen(tones_.ink, 2.2));
    painter_.drawPath(arc);
    drawArrow(painter_, place(1.0 - 1.0 / steps), place(1.0) + QPointF(0.0, 4.0), 9.0);
    if (!named_)
        return;
    const QString word = Words::tr("turns");
    const double line = painter_.fontMetrics().height();
    const QRectF box(middle.x() + wide + 6.0, middle.y() - s - line - 3.0,
                     painter_.fontMetrics().horizontalAdvance(word) + 4.0, line);
    painter_.drawText(box, Qt::AlignLeft | Qt::AlignVCenter, word);
}

EnginePainter::Crosshead EnginePainter::crosshead() const {
    const auto& mechanism = engine_.design().mechanism;
    const double r = mechanism.roller.radius, b = frame_.cylinder().halfBore();
    const double skirtEnd = frame_.cylinder().pistonLength() - frame_.axisDistance();
    Crosshead part{};
    part.plateFrom = skirtEnd + 0.01 * r;
    part.plateTo = mechanism.closedTrack ? skirtEnd + 0.16 * r : -1.05 * r;
    part.block = part.plateFrom - 0.4 * r;
    part.tip = 0.46 * r;
    part.shoe = part.plateFrom + 1.5 * r;
    part.armIn = mechanism.closedTrack ? frame_.halfTrack() + 0.08 * r
                                       : 0.5 * mechanism.roller.width + 0.08 * r;
    part.armOut = std::min(part.armIn + 0.34 * r, std::max(0.86 * b, part.armIn + 0.2 * r));
    part.half = b - 0.3 / frame_.scale();
    return part;
}

/// Guide rails of the housing, for the shoes of the crosshead.
void EnginePainter::paintRails(End end) {
    const double out = SectionFrame::outward(end), b = frame_.cylinder().halfBore();
    const double w = frame_.cylinder().wall();
    const double from = frame_.cylinder().linerEnd(end);
    const double outermost = frame_.cylinder().portPlace(end, 0.0) + out * frame_.axisDistance();
    const double to = outermost + out * (crosshead().shoe + 0.12 * w);
    painter_.setPen(QPen(tones_.ink, 1.0));
    for (const double side : {-1.0, 1.0}) {
        const QRectF rail = frame_.cylinder().box(from, side * b, to, side * (b + 0.62 * w));
        painter_.setBrush(materials_.iron);
        painter_.drawRect(rail);
        painter_.fillRect(rail.adjusted(1, 1, -1, -1), QBrush(materials_.hatch, Qt::FDiagPattern));
    }
}

void EnginePainter::paintCrosshead(End end, double theta) {
    const SectionFrame& cylinder = frame_.cylinder();
    const double out = SectionFrame::outward(end), b = cylinder.halfBore();
    const double axis = cylinder.rollerAxis(end, theta), crown = cylinder.crown(end, theta);
    const double crownThickness = std::min(0.22 * cylinder.pistonLength(), 0.36 * b);
    const Crosshead part = crosshead();
    const bool isClosed = engine_.design().mechanism.closedTrack;
    const auto draw = [&](double from, double t1, double to, double t2) {
        painter_.drawRect(cylinder.box(axis + out * from, t1, axis + out * to, t2));
    };
    fillAndOutline(painter_, materials_.steel, QPen(tones_.ink, 1.0));
    painter_.drawRect(
        cylinder.box(crown + out * crownThickness, -0.26 * b, axis + out * part.block, 0.26 * b));
    draw(part.block, -0.66 * b, part.plateFrom, 0.66 * b);
    draw(part.plateFrom, -part.half, part.plateTo, part.half);
    draw(part.plateTo, -part.armOut, part.tip, -part.armIn);
    if (!isClosed)
        draw(part.plateTo, part.armIn, part.tip, part.armOut);
    painter_.setBrush(materials_.bronze);
    const double thick = std::min(0.13 * b, 0.8 * (b - part.armOut));
    for (const double side : {-1.0, 1.0})
        draw(part.plateFrom, side * (part.half - thick), part.shoe, side * part.half);
}

void EnginePainter::paintRoller(End end, double theta) {
    const SectionFrame& cylinder = frame_.cylinder();
    const auto& roller = engine_.design().mechanism.roller;
    const Crosshead part = crosshead();
    const double axis = cylinder.rollerAxis(end, theta), r = roller.radius;
    const double half = 0.5 * roller.width;
    const QRectF body = cylinder.box(axis - r, -half, axis + r, half);
    fillAndOutline(painter_,
                   rounded(body.topLeft(), body.topRight(), materials_.steel, tones_.isDark),
                   QPen(tones_.ink, 1.2));
    painter_.drawRoundedRect(body, 2.0, 2.0);
    // Marks on its running face pass the front as it rolls.
    const double turn = cylinder.rollerTurn(end, theta);
    for (int i = 0; i < 3; ++i) {
        const double angle = turn + units::turn * i / 3.0;
        if (std::cos(angle) <= 0.1)
            continue;
        const double x = cylinder.at(axis, 0.0).x() + r * cylinder.scale() * std::sin(angle);
        QColor tone = tones_.ink;
        tone.setAlphaF(static_cast<float>(0.7 * std::cos(angle)));
        painter_.setPen(QPen(tone, 1.6));
        painter_.drawLine(QPointF(x, body.top() + 2.0), QPointF(x, body.bottom() - 2.0));
    }
    // The pin, radial to the shaft: its ends show in the arms of the fork.
    const double pin = 0.24 * r;
    fillAndOutline(painter_, materials_.bronze, QPen(tones_.ink, 1.0));
    painter_.drawRect(cylinder.box(axis - pin, -part.armOut - 0.04 * r, axis + pin, -part.armIn));
    if (!engine_.design().mechanism.closedTrack)
        painter_.drawRect(cylinder.box(axis - pin, part.armIn, axis + pin, part.armOut + 0.04 * r));
    painter_.setPen(QPen(tones_.quiet, 1.0, Qt::DashDotLine));
    painter_.drawLine(cylinder.at(axis, -half), cylinder.at(axis, half));
}

/// Which way the piston moves and how fast, in the hollow of its skirt.
void EnginePainter::paintSliding(End end) {
    const SectionFrame& cylinder = frame_.cylinder();
    const double out = SectionFrame::outward(end), b = cylinder.halfBore();
    const double crown = cylinder.crown(end, theta_);
    const double from = crown + out * std::min(0.22 * cylinder.pistonLength(), 0.36 * b);
    const double to = crown + out * cylinder.pistonLength();
    const double line = painter_.fontMetrics().height();
    const QRectF room = cylinder.box(from, 0.32 * b, to, 0.8 * b).adjusted(3, 0, -3, 0);
    const auto& curve = engine_.pair().curve(end);
    const double speed = engine_.pair().lift(end, theta_).y1; // inward positive
    const double share = std::clamp(std::abs(speed) / std::max(1e-12, curve.stroke()), 0.0, 1.0);
    painter_.setPen(QPen(tones_.ink, 2.0));
    const double length = std::sqrt(share) * 0.46 * room.width();
    const QPointF middle = cylinder.box(from, -0.8 * b, to, -0.32 * b).center();
    const double way = (speed > 0.0 ? -out : out) * length;
    if (room.width() > 30.0)
        drawArrow(painter_, middle - QPointF(way, 0.0), middle + QPointF(way, 0.0), 8.0);
    const QString word = Words::tr("slides");
    if (named_ && room.height() >= line &&
        room.width() >= painter_.fontMetrics().horizontalAdvance(word))
        painter_.drawText(room, Qt::AlignCenter, word);
}

/// Pressure over its peak, 0 where nothing worth an arrow pushes.
double EnginePainter::pushShare() const {
    const auto gas = engine_.gasAt(theta_);
    const double peak = engine_.channelPeak("pressure_bar").value_or(0.0);
    const double share = gas && peak > 0.0 ? std::clamp(gas->pressure / peak, 0.0, 1.0) : 0.0;
    return share < leastPush ? 0.0 : share;
}

/// What the gas does to the piston, as long as its pressure is high.
void EnginePainter::paintGasPush(End end) {
    const double share = pushShare();
    if (share <= 0.0)
        return;
    const SectionFrame& cylinder = frame_.cylinder();
    const double out = SectionFrame::outward(end);
    const double longest =
        0.62 * (frame_.axisDistance() - engine_.design().mechanism.roller.radius);
    const double crown = cylinder.crown(end, theta_);
    painter_.setPen(QPen(tones_.ink, 4.0, Qt::SolidLine, Qt::FlatCap));
    drawArrow(painter_, cylinder.at(crown, 0.0), cylinder.at(crown + out * share * longest, 0.0),
              13.0);
}

/// Who pushes, in the chamber where it has room for the words.
void EnginePainter::paintGasWord() {
    const auto gas = engine_.gasAt(theta_);
    const SectionFrame& cylinder = frame_.cylinder();
    const QRectF chamber = cylinder.box(cylinder.crown(End::inlet, theta_), -cylinder.halfBore(),
                                        cylinder.crown(End::exhaust, theta_), cylinder.halfBore());
    const QString word = Words::tr("gas pushes");
    if (!named_ || !gas || pushShare() <= 0.0 ||
        painter_.fontMetrics().horizontalAdvance(word) + 14.0 > chamber.width())
        return;
    const bool isPale = heatTone(tones_, gas->temperature).lightnessF() > 0.5F;
    painter_.setPen(isPale ? Palette::lightTones().ink : Palette::darkTones().ink);
    painter_.drawText(chamber, Qt::AlignCenter, word);
}

} // namespace lobewright::ui
