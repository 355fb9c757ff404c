#include "ui/scene/section/crank_painter.h"

#include "ui/base/drawing.h"
#include "ui/scene/section/gas_tone.h"

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {

constexpr double pinShare = 0.6; ///< of the piston's length, crown to pin

} // namespace

CrankSide CrankSide::of(const ShownEngine& engine, End end) {
    const auto& mechanism = engine.design().mechanism;
    const double stroke = engine.pair().curve(end).stroke();
    const double rodRatio = engine.design().reference.rodRatio;
    const double length = mechanism.piston ? mechanism.piston->length : 1.1 * mechanism.bore;
    return {study::SliderCrank(stroke, rodRatio),
            0.5 * mechanism.clearance,
            length,
            engine.pair().shift(end),
            0.5 * stroke,
            0.5 * stroke / rodRatio};
}

double CrankSide::pinAt(double tau) const {
    return crownAt(tau) + pinShare * length;
}

double CrankSide::centre() const {
    return crown + shift + pinShare * length + rod + radius;
}

CrankPainter::CrankPainter(QPainter& painter, const ShownEngine& engine, const SectionFrame& cam,
                           const Palette& tones, const QRectF& area, double scale,
                           const PerEnd<double>& tau, const std::optional<GasMoment>& gas)
    : painter_(painter), engine_(engine), cam_(cam), tones_(tones), middle_(area.center()),
      scale_(scale), tau_(tau), gas_(gas) {}

void CrankPainter::paint() {
    paintGas();
    for (const End end : engine_.pair().pistons())
        paintCrank(end);
    paintLiner();
}

double CrankPainter::openHeight(const ShownEngine& engine, End side, const ports::Row& row,
                                const PerEnd<double>& tau) {
    const End piston = engine.pair().uncovers(side);
    const CrankSide crank = CrankSide::of(engine, piston);
    const double position = crank.crank.at(tau[piston]).y - crank.shift;
    return std::clamp(row.edge - position, 0.0, row.height);
}

QPointF CrankPainter::at(End end, double z, double t) const {
    return middle_ + scale_ * QPointF(SectionFrame::outward(end) * z, t);
}

void CrankPainter::paintGas() {
    const double b = cam_.halfBore() * scale_;
    PerEnd<double> crowns;
    crowns.exhaust = middle_.x() + cam_.head() * scale_; // where there is no second piston
    for (const End end : engine_.pair().pistons())
        crowns[end] = at(end, CrankSide::of(engine_, end).crownAt(tau_[end]), 0.0).x();
    painter_.setPen(Qt::NoPen);
    // As in the section above.
    painter_.setBrush(gas_ ? heatTone(tones_, gas_->temperature) : tones_.panel);
    painter_.drawRect(
        QRectF(crowns.inlet, middle_.y() - b, crowns.exhaust - crowns.inlet, 2.0 * b));
}

void CrankPainter::paintCrank(End end) {
    const CrankSide side = CrankSide::of(engine_, end);
    const double tau = tau_[end];
    const double b = cam_.halfBore() - 0.6 / scale_;
    const double crown = side.crownAt(tau), pin = side.pinAt(tau);
    fillAndOutline(painter_, tones_.metal, QPen(tones_.ink, 1.0));
    painter_.drawRect(QRectF(at(end, crown, -b), at(end, crown + side.length, b)).normalized());

    // Inner dead centre: the crank points along the cylinder towards the piston.
    const QPointF centre = at(end, side.centre(), 0.0);
    const QPointF crankPin =
        at(end, side.centre() - side.radius * std::cos(tau), side.radius * std::sin(tau));
    painter_.setBrush(tones_.metalPale);
    painter_.drawEllipse(centre, 1.3 * side.radius * scale_, 1.3 * side.radius * scale_);
    const double thick = std::max(4.0, 0.28 * b * scale_);
    painter_.setPen(QPen(tones_.ink, thick + 2.0, Qt::SolidLine, Qt::RoundCap));
    painter_.drawLine(at(end, pin, 0.0), crankPin);
    painter_.setPen(QPen(tones_.metal, thick, Qt::SolidLine, Qt::RoundCap));
    painter_.drawLine(at(end, pin, 0.0), crankPin);
    painter_.setPen(QPen(tones_.side(end), 2.2));
    painter_.drawLine(centre, crankPin);
    fillAndOutline(painter_, tones_.paper, QPen(tones_.ink, 1.0));
    for (const QPointF& joint : {at(end, pin, 0.0), crankPin, centre})
        painter_.drawEllipse(joint, 0.32 * thick, 0.32 * thick);
    painter_.setPen(QPen(tones_.side(end), 3.0, Qt::SolidLine, Qt::FlatCap));
    painter_.drawLine(at(end, crown + 1.5 / scale_, -b), at(end, crown + 1.5 / scale_, b));
}

void CrankPainter::paintLiner() {
    const double b = cam_.halfBore() * scale_, w = cam_.wall() * scale_;
    const double left = middle_.x() + cam_.linerEnd(End::inlet) * scale_;
    const double right = middle_.x() + cam_.linerEnd(End::exhaust) * scale_;
    const bool isOneSided = engine_.pair().mechanism().isOneSided();
    for (const bool isBelow : {false, true}) {
        const double top = isBelow ? middle_.y() + b : middle_.y() - b - w;
        fillAndOutline(painter_, tones_.metalPale, QPen(tones_.ink, 1.0));
        painter_.drawRect(QRectF(left, top, right - left, w));
        // One piston uncovers both rows: exhaust above and inlet below, as in the section.
        for (const End side : bothEnds) {
            if (!isOneSided || (side == End::inlet) == isBelow)
                paintPorts(side, top);
        }
    }
}

/// Solid where the piston leaves them open, pale where it covers them.
void CrankPainter::paintPorts(End side, double wallTop) {
    const double w = cam_.wall() * scale_;
    painter_.setPen(Qt::NoPen);
    for (const auto& row : engine_.design().ports[side]) {
        const auto box = [&](double from, double to) {
            const double a = middle_.x() + cam_.portPlace(side, row.edge - from) * scale_;
            const double z = middle_.x() + cam_.portPlace(side, row.edge - to) * scale_;
            return QRectF(QPointF(a, wallTop), QPointF(z, wallTop + w)).normalized();
        };
        const double open = openHeight(engine_, side, row, tau_);
        painter_.setBrush(tones_.sideFill(side));
        painter_.drawRect(box(0.0, row.height));
        painter_.setBrush(tones_.side(side));
        if (open > 0.0)
            painter_.drawRect(box(0.0, open));
    }
}

} // namespace lobewright::ui
