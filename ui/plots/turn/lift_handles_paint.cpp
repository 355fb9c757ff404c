#include "core/editing/knot_edits.h"
#include "core/units.h"
#include "ui/base/core_text.h"
#include "ui/plots/base/angle_ticks.h"
#include "ui/plots/turn/lift_handles.h"

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

QString LiftHandles::valueOf(const Handle& handle) const {
    const Unit unit = unitOf(handle.grip.curve);
    const auto plotted = [&](int decimals) {
        return degreesText(handle.plotted, unit.decimals(decimals)) + QChar(0xA0) + unit.text;
    };
    switch (handle.grip.curve) {
    case LiftGrip::Curve::lift: {
        // Lifts of knots are stored as typed; the curve is moved so that its lowest place has 0.
        const double shift =
            editing::knotShift(geometry_->design, handle.grip.end) / units::millimetre;
        if (handle.grip.kind != LiftGrip::Kind::knot || std::abs(shift) < 0.005)
            return plotted(2);
        const QString typed = quantityText(handle.grip.value, QStringLiteral("mm"), 2);
        const QString moved = quantityText(std::abs(shift), QStringLiteral("mm"), 2);
        return shift > 0.0 ? tr("%1 = knot %2 + %3").arg(plotted(2), typed, moved)
                           : tr("%1 = knot %2 − %3").arg(plotted(2), typed, moved);
    }
    case LiftGrip::Curve::velocity:
        return tr("%1, slope %2")
            .arg(plotted(2), quantityText(handle.grip.value, QStringLiteral("mm/°"), 4));
    case LiftGrip::Curve::acceleration:
        return tr("%1, by its lift").arg(plotted(0));
    }
    return {};
}

void LiftHandles::paint(QCPPainter& painter) const {
    const Palette& tones = canvas_.tones();
    for (const Handle& handle : handles_) {
        const QPointF place = placeOf(handle);
        const bool isSelected = isSame(handle, selected_);
        double size = isSelected || isSame(handle, hovered_) ? 6.0 : 4.2;
        if (handle.grip.curve != LiftGrip::Curve::lift)
            size -= 1.2;
        painter.setPen(QPen(tones.side(handle.shown), 1.6));
        painter.setBrush(isSelected ? tones.side(handle.shown) : tones.paper);
        if (handle.grip.kind == LiftGrip::Kind::knot)
            painter.drawEllipse(place, size, size);
        else
            painter.drawPolygon(QPolygonF{{place.x() - size, place.y()},
                                          {place.x(), place.y() - size},
                                          {place.x() + size, place.y()},
                                          {place.x(), place.y() + size}});
    }
    paintLabel(painter);
    painter.setBrush(Qt::NoBrush);
}

/// Of all places where the grip stands, the one under the hand.
const LiftHandles::Handle* LiftHandles::namedHandle() const {
    const auto& named = drag_ ? selected_ : hovered_;
    if (!drag_ && released_)
        return nullptr;
    const Handle* nearest = nullptr;
    double least = 1e300;
    for (const Handle& candidate : handles_) {
        const QPointF away = placeOf(candidate) - pointer_;
        const double distance = std::hypot(away.x(), away.y());
        if (isSame(candidate, named) && distance < least) {
            least = distance;
            nearest = &candidate;
        }
    }
    return nearest;
}

void LiftHandles::paintLabel(QCPPainter& painter) const {
    const Palette& tones = canvas_.tones();
    const Handle* handle = namedHandle();
    if (!handle)
        return;
    const QString text =
        tr("%1: %2° on the track, %3")
            .arg(coreText(handle->grip.label), degreesText(handle->grip.angle, 2), valueOf(*handle));
    painter.setFont(canvas_.xAxis->tickLabelFont());
    QRectF box = QFontMetricsF(painter.font()).boundingRect(text).adjusted(-5, -3, 5, 3);
    box.moveBottomLeft(placeOf(*handle) + QPointF(8, -10));
    const QRectF inside = canvas_.inside();
    box.moveLeft(std::clamp(box.left(), inside.left(),
                            std::max(inside.left(), inside.right() - box.width())));
    box.moveTop(std::clamp(box.top(), inside.top(),
                           std::max(inside.top(), inside.bottom() - box.height())));
    painter.setPen(QPen(tones.grid, 1));
    painter.setBrush(tones.panel);
    painter.drawRect(box);
    painter.setPen(tones.ink);
    painter.drawText(box, Qt::AlignCenter, text);
}

} // namespace lobewright::ui
