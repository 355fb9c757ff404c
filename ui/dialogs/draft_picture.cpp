#include "ui/dialogs/draft_picture.h"

#include "core/draft/build.h"
#include "core/mechanism/opposed_pair.h"
#include "core/motion/lift_curve.h"
#include "core/units.h"
#include "ui/base/drawing.h"
#include "ui/base/palette.h"

#include <QPainterPath>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {
constexpr double liftHeight = 34.0, blowerSize = 18.0;
constexpr double shaftShare = 0.12; ///< of the pitch radius; the drawing needs some shaft
} // namespace

DraftPicture::DraftPicture(const design::Design& design, bool isBoosted, double largest,
                           QWidget* parent)
    : QWidget(parent), design_(design), isBoosted_(isBoosted),
      largest_(largest > 0.0 ? largest : draft::outerDiameter(design)) {
    setMinimumSize(96, 104);
    const QString name =
        tr("Cylinders about the shaft, and the lift of both tracks over one revolution");
    setAccessibleName(isBoosted ? tr("%1; with a blower").arg(name) : name);
}

void DraftPicture::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double side = std::min<double>(width(), height() - liftHeight - 8.0);
    paintCylinders(painter, QRectF(0.5 * (width() - side), 0.0, side, side));
    if (isBoosted_)
        paintBlower(painter, QRectF(2.0, 2.0, blowerSize, blowerSize));
    paintLift(painter, QRectF(6.0, height() - liftHeight - 2.0, width() - 12.0, liftHeight));
}

void DraftPicture::paintCylinders(QPainter& painter, const QRectF& area) const {
    const Palette& tones = Palette::of(*this);
    const auto& m = design_.mechanism;
    const double scale = (area.width() - 4.0) / largest_;
    const QPointF centre = area.center();
    painter.setPen(QPen(tones.ink, 1.2));
    const auto circle = [&](QPointF at, double radius, const QColor& fill) {
        painter.setBrush(fill);
        painter.drawEllipse(at, radius * scale, radius * scale);
    };
    circle(centre, 0.5 * draft::outerDiameter(design_), tones.metalPale);
    circle(centre, shaftShare * m.pitchRadius, tones.metal);
    for (const double angle : mechanism::cylinderAngles(m)) {
        const QPointF at =
            centre + scale * m.pitchRadius * QPointF(std::cos(angle), -std::sin(angle));
        circle(at, 0.5 * m.bore, tones.paper);
    }
}

/// The sign of a compressor in plans [ISO 10628]: its lines close in on the side of the high
/// pressure, here with a pipe towards the cylinders.
void DraftPicture::paintBlower(QPainter& painter, const QRectF& area) const {
    const Palette& tones = Palette::of(*this);
    fillAndOutline(painter, tones.paper, QPen(tones.ink, 1.4));
    painter.drawEllipse(area);
    const QPointF centre = area.center();
    const double radius = 0.5 * area.width();
    for (const double side : {-1.0, 1.0}) {
        painter.drawLine(centre + radius * QPointF(-0.6, 0.8 * side),
                         centre + radius * QPointF(0.95, 0.31 * side));
    }
    const QPointF end = centre + radius * QPointF(1.8, 0.0);
    painter.drawLine(centre + radius * QPointF(1.0, 0.0), end);
    painter.setBrush(tones.ink);
    painter.drawPolygon(QPolygonF{end, end + QPointF(-4.0, -2.5), end + QPointF(-4.0, 2.5)});
}

void DraftPicture::paintLift(QPainter& painter, const QRectF& area) const {
    constexpr int steps = 180;
    const auto inlet = motion::LiftCurve::make(design_.tracks[End::inlet]);
    const auto exhaust = motion::LiftCurve::make(design_.tracks[End::exhaust]);
    if (!inlet || !exhaust)
        return;
    const auto pair = mechanism::OpposedPair::make(design_.mechanism, {*inlet, *exhaust});
    if (!pair)
        return;
    painter.setBrush(Qt::NoBrush);
    const double most = std::max(inlet->stroke(), exhaust->stroke());
    for (const End end : bothEnds) {
        QPainterPath path;
        for (int i = 0; i <= steps; ++i) {
            const double lift = pair->lift(end, units::turn * i / steps).y / most;
            const QPointF at(area.left() + area.width() * i / steps,
                             area.bottom() - area.height() * lift);
            i == 0 ? path.moveTo(at) : path.lineTo(at);
        }
        painter.setPen(QPen(Palette::of(*this).side(end), 1.6));
        painter.drawPath(path);
    }
}

} // namespace lobewright::ui
