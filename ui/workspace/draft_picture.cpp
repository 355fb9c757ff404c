#include "ui/workspace/draft_picture.h"

#include "core/draft/build.h"
#include "core/motion/lift_curve.h"
#include "core/units.h"
#include "ui/palette.h"

#include <QPainter>
#include <QPainterPath>

#include <cmath>

namespace lobewright::ui {

DraftPicture::DraftPicture(const design::Design& design, double largest, QWidget* parent)
    : QWidget(parent), design_(design), largest_(largest) {
    setMinimumSize(110, 130);
    setAccessibleName(tr("Cylinders about the shaft and the lift over one turn"));
}

void DraftPicture::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.setRenderHint(QPainter::Antialiasing);
    const double side = std::min<double>(width(), height() - 42.0);
    paintCylinders(painter, QRectF(0.5 * (width() - side), 0.0, side, side));
    paintLift(painter, QRectF(4.0, side + 6.0, width() - 8.0, height() - side - 10.0));
}

void DraftPicture::paintCylinders(QPainter& painter, const QRectF& area) const {
    const Palette& tones = Palette::of(*this);
    const auto& m = design_.mechanism;
    const double scale = (area.width() - 4.0) / largest_;
    const QPointF centre = area.center();
    painter.setPen(QPen(tones.ink, 1.2));
    const auto circle = [&](QPointF at, double radius) {
        painter.drawEllipse(at, radius * scale, radius * scale);
    };
    circle(centre, 0.5 * draft::outerDiameter(design_));
    circle(centre, std::max(0.12 * m.pitchRadius, 0.004));
    for (const double angle : mechanism::cylinderAngles(m)) {
        const QPointF at =
            centre + scale * m.pitchRadius * QPointF(std::cos(angle), -std::sin(angle));
        circle(at, 0.5 * m.bore);
    }
}

void DraftPicture::paintLift(QPainter& painter, const QRectF& area) const {
    const auto curve = motion::LiftCurve::make(design_.tracks.inlet);
    if (!curve)
        return;
    const auto& shape = std::get<motion::SegmentShape>(design_.tracks.inlet.shape);
    QPainterPath path;
    constexpr int steps = 180;
    for (int i = 0; i <= steps; ++i) {
        const double lift = curve->at(units::turn * i / steps).y / shape.stroke;
        const QPointF at(area.left() + area.width() * i / steps,
                         area.bottom() - area.height() * lift);
        i == 0 ? path.moveTo(at) : path.lineTo(at);
    }
    painter.setBrush(Qt::NoBrush);
    painter.setPen(QPen(Palette::of(*this).inlet, 1.6));
    painter.drawPath(path);
}

} // namespace lobewright::ui
