#include "ui/scene/section/cylinder_painter.h"

#include "core/design/skirt_row.h"
#include "core/ports/skirt_row.h"
#include "core/units.h"
#include "ui/base/drawing.h"
#include "ui/scene/section/drawn_arrow.h"
#include "ui/scene/section/gas_tone.h"

#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

// A spark is over long before it has been seen: it is shown for this part of the cycle [rad].
constexpr double flashLength = 14.0 * units::degree;
constexpr double leastFlow = 0.004; ///< share of the largest that is drawn

} // namespace

void CylinderPainter::paintBehind() {
    paintBaseline();
    for (const End end : bothEnds) {
        for (const double side : {-1.0, 1.0}) {
            if (cuts(end, side))
                paintBelt(end, side);
        }
    }
    paintGas();
    for (const End end : bothEnds)
        paintFarPorts(end);
    paintSkirtIntake();
}

void CylinderPainter::paintAround() {
    paintLiner();
    if (engine_.pair().mechanism().isOneSided())
        paintHead();
    for (const End end : bothEnds)
        paintPortFlow(end);
    paintPlug();
}

void CylinderPainter::paintBaseline() {
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

void CylinderPainter::paintGas() {
    const double b = frame_.halfBore();
    const double left = frame_.linerEnd(End::inlet), right = frame_.linerEnd(End::exhaust);
    fillOnly(painter_, tones_.paper);
    painter_.drawRect(frame_.box(left, -b, right, b));
    const auto gas = engine_.gasAt(theta_);
    painter_.setBrush(gas ? heatTone(tones_, gas->temperature) : tones_.panel);
    painter_.drawRect(
        frame_.box(frame_.crown(End::inlet, theta_), -b, frame_.crown(End::exhaust, theta_), b));
}

void CylinderPainter::paintFarPorts(End end) {
    const double b = frame_.halfBore();
    for (const auto& row : engine_.design().ports[end]) {
        const double inner = frame_.portPlace(end, row.edge);
        const double outer = frame_.portPlace(end, row.edge - row.height);
        fillAndOutline(painter_, tones_.sideFill(end), QPen(tones_.side(end), 1.0));
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

void CylinderPainter::paintPiston(End end) {
    const double out = SectionFrame::outward(end);
    const double crown = frame_.crown(end, theta_);
    const double b = frame_.halfBore() - 0.6 / frame_.scale();
    const double length = frame_.pistonLength();
    const double skirt = 0.16 * frame_.halfBore();
    const double top = std::min(0.22 * length, 0.36 * frame_.halfBore());

    // Inside the cup one looks at the far skirt wall.
    fillOnly(painter_, tones_.tint(materials_.alloy, tones_.isDark ? 0.45 : 0.55));
    painter_.drawRect(frame_.box(crown, -b, crown + out * length, b));
    QPolygonF cup;
    const auto point = [&](double along, double t) { return frame_.at(crown + out * along, t); };
    cup << point(0, -b) << point(length, -b) << point(length, -b + skirt) << point(top, -b + skirt)
        << point(top, b - skirt) << point(length, b - skirt) << point(length, b) << point(0, b);
    fillAndOutline(painter_, materials_.alloy, QPen(tones_.ink, 1.0));
    painter_.drawPolygon(cup);
    paintRings(end);
    painter_.setPen(QPen(tones_.side(end), 3.0, Qt::SolidLine, Qt::FlatCap));
    painter_.drawLine(point(1.5 / frame_.scale(), -b), point(1.5 / frame_.scale(), b));
}

void CylinderPainter::paintRings(End end) {
    const auto& mechanism = engine_.design().mechanism;
    if (!mechanism.piston)
        return;
    const double out = SectionFrame::outward(end), crown = frame_.crown(end, theta_);
    const auto& rings = engine_.design().friction.rings;
    fillOnly(painter_, tones_.ink);
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

CylinderPainter::Span CylinderPainter::rowsOf(End end) const {
    double highest = 0.0, lowest = 1e300;
    for (const auto& row : engine_.design().ports[end]) {
        highest = std::max(highest, row.edge);
        lowest = std::min(lowest, row.edge - row.height);
    }
    return {frame_.portPlace(end, highest), frame_.portPlace(end, std::min(lowest, highest))};
}

/// The duct round the liner that a row of ports opens into.
void CylinderPainter::paintBelt(End end, double side) {
    const double b = frame_.halfBore(), w = frame_.wall();
    const Span rows = rowsOf(end);
    const double margin = 0.1 * b * (rows.outer > rows.inner ? 1.0 : -1.0);
    const double outer = b * (1.0 + beltShare) + w;
    fillAndOutline(painter_, tones_.sideFill(end), QPen(tones_.ink, 1.0));
    painter_.drawRoundedRect(
        frame_.box(rows.inner - margin, side * (b + 0.5 * w), rows.outer + margin, side * outer),
        3.0, 3.0);
}

void CylinderPainter::paintLiner() {
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
            if (const auto row = skirtRowOf(end); row && side < 0.0) {
                openings.addRect(
                    frame_.box(row->inner, side * 0.9 * b, row->outer, side * (b + 1.2 * w)));
            }
        }
        fillAndOutline(painter_, materials_.iron, QPen(tones_.ink, 1.0));
        const QPainterPath cut = wall.subtracted(openings);
        painter_.drawPath(cut);
        painter_.fillPath(cut, QBrush(materials_.hatch, Qt::FDiagPattern));
    }
}

std::optional<CylinderPainter::Span> CylinderPainter::skirtRowOf(End end) const {
    const auto* row = design::skirtRow(engine_.design(), end);
    if (!row)
        return std::nullopt;
    const double edge = row->edge - frame_.pistonLength();
    return Span{frame_.portPlace(end, edge + row->height), frame_.portPlace(end, edge)};
}

void CylinderPainter::paintSkirtIntake() {
    const double b = frame_.halfBore(), w = frame_.wall();
    for (const End end : engine_.pair().pistons()) {
        const auto row = skirtRowOf(end);
        if (!row)
            continue;
        const double margin = 0.1 * b * (row->outer > row->inner ? 1.0 : -1.0);
        const double outer = b * (1.0 + beltShare) + w;
        fillAndOutline(painter_, tones_.sideFill(End::inlet), QPen(tones_.ink, 1.0));
        painter_.drawRoundedRect(
            frame_.box(row->inner - margin, -b - 0.5 * w, row->outer + margin, -outer), 3.0, 3.0);
        const ports::Row& skirt = *design::skirtRow(engine_.design(), end);
        const double open =
            std::clamp(ports::skirtPast(skirt, engine_.pair(), end, theta_), 0.0, skirt.height);
        if (open <= 0.0)
            continue;
        const double reached = row->outer + (row->inner - row->outer) * open / skirt.height;
        fillOnly(painter_, tones_.side(End::inlet));
        painter_.drawRect(frame_.box(row->outer, -b - 0.3 * w, reached, -b - 0.7 * w));
        const auto pressure = engine_.channel("pump_pressure_bar", theta_);
        if (!pressure)
            continue;
        const bool inward = *pressure * units::bar <= engine_.design().gas.supply.ambientPressure;
        const double x = 0.5 * (row->outer + reached);
        const QPointF outside = frame_.at(x, -(b + w + 0.6 * beltShare * b));
        const QPointF inside = frame_.at(x, -0.6 * b);
        painter_.setPen(QPen(tones_.side(End::inlet), 2.0));
        drawArrow(painter_, inward ? outside : inside, inward ? inside : outside, 8.0);
    }
}

/// One piston uncovers both rows: they share the circumference, exhaust above and inlet below.
bool CylinderPainter::cuts(End end, double side) const {
    return !engine_.pair().mechanism().isOneSided() || (end == End::inlet) == (side > 0.0);
}

double CylinderPainter::aroundBore(End end, double share) const {
    if (!engine_.pair().mechanism().isOneSided())
        return units::turn * share - 0.5 * units::pi;
    return (end == End::inlet ? units::pi : -units::pi) * share;
}

/// The head closes the cylinder where the other piston would stand.
void CylinderPainter::paintHead() {
    const double b = frame_.halfBore(), w = frame_.wall();
    const double face = frame_.head(), thick = frame_.headThickness();
    const QRectF head = frame_.box(face, -b - w, face + thick, b + w);
    fillAndOutline(painter_, materials_.iron, QPen(tones_.ink, 1.0));
    painter_.drawRect(head);
    painter_.fillRect(head, QBrush(materials_.hatch, Qt::BDiagPattern));
    painter_.setPen(QPen(tones_.ink, 2.2));
    painter_.drawLine(frame_.at(face, -b), frame_.at(face, b));
}

std::optional<CylinderPainter::Flow> CylinderPainter::flowThrough(End end, double open) const {
    constexpr const char* names[] = {"inlet_flow_g_per_s", "exhaust_flow_g_per_s"};
    const auto flow = engine_.channel(names[static_cast<std::size_t>(end)], theta_);
    const double most = std::max(engine_.channelPeak(names[0]).value_or(0.0),
                                 engine_.channelPeak(names[1]).value_or(0.0));
    if (flow && most > 0.0)
        return Flow{(*flow > 0.0) == (end == End::inlet), std::abs(*flow) / most};
    // Without flows in the solution: the way the pressures point, as much as the ports are open.
    const auto inward = engine_.flowsIn(end, theta_);
    return inward ? std::optional(Flow{*inward, 0.5 * open}) : std::nullopt;
}

void CylinderPainter::paintPortFlow(End end) {
    const double b = frame_.halfBore(), w = frame_.wall();
    const double lift = engine_.timing().position(end, theta_);
    for (const auto& row : engine_.design().ports[end]) {
        const double inner = frame_.portPlace(end, row.edge);
        const double open = std::clamp(row.edge - lift, 0.0, row.height);
        if (open <= 0.0)
            continue;
        const double reached = frame_.portPlace(end, row.edge - open);
        const auto flow = flowThrough(end, open / row.height);
        const double x = 0.5 * (inner + reached);
        const double reach = flow ? (0.15 + 0.75 * std::sqrt(flow->share)) * b : 0.0;
        for (const double side : {-1.0, 1.0}) {
            if (!cuts(end, side))
                continue;
            fillOnly(painter_, tones_.side(end));
            painter_.drawRect(
                frame_.box(inner, side * (b + 0.3 * w), reached, side * (b + 0.7 * w)));
            if (!flow || flow->share < leastFlow)
                continue;
            painter_.setPen(QPen(tones_.side(end), 1.5 + 3.0 * flow->share));
            const double belt = b + w + 0.6 * beltShare * b;
            const QPointF outside = frame_.at(x, side * belt);
            const QPointF inside = frame_.at(x, side * (belt - reach));
            drawArrow(painter_, flow->inward ? outside : inside, flow->inward ? inside : outside,
                      7.0 + 5.0 * flow->share);
        }
    }
}

double CylinderPainter::flash() const {
    const auto since = engine_.sinceBurnStart(theta_);
    return since && *since >= 0.0 ? std::max(0.0, 1.0 - *since / flashLength) : 0.0;
}

void CylinderPainter::paintPlug() {
    const double b = frame_.halfBore(), w = frame_.wall();
    const bool isOneSided = engine_.pair().mechanism().isOneSided();
    // Along the plug from the chamber outwards, and across it.
    const auto at = [&](double along, double across) {
        return isOneSided ? frame_.at(frame_.head() + along, across)
                          : frame_.at(across, -b - along);
    };
    const double long_ = isOneSided ? frame_.headThickness() + 0.3 * b : w + 0.42 * b;
    const auto part = [&](double from, double to, double half) {
        painter_.drawRect(QRectF(at(from, -half), at(to, half)).normalized());
    };
    fillAndOutline(painter_, materials_.steel, QPen(tones_.ink, 1.0));
    part(0.0, 0.6 * long_, 0.085 * b);
    part(0.45 * long_, 0.7 * long_, 0.13 * b);
    painter_.setBrush(tones_.paper);
    part(0.7 * long_, long_, 0.06 * b);
    painter_.setPen(QPen(tones_.ink, 1.6));
    painter_.drawLine(at(0.0, 0.0), at(-0.08 * b, 0.0));
    const double share = flash();
    if (share <= 0.0)
        return;
    QPolygonF star;
    const QPointF middle = at(-0.16 * b, 0.0);
    const double size = (0.22 + 0.34 * share) * b * frame_.scale();
    for (int i = 0; i < 16; ++i) {
        const double radius = i % 2 == 0 ? size : 0.42 * size;
        const double angle = units::turn * i / 16.0;
        star << middle + radius * QPointF(std::cos(angle), std::sin(angle));
    }
    fillAndOutline(painter_, QColor("#fff1a8"),
                   QPen(tones_.isDark ? QColor("#fff6d8") : QColor("#8a4b00"), 1.0));
    painter_.drawPolygon(star);
}

} // namespace lobewright::ui
