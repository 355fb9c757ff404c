// The part of EngineSolid that names things and is moved by hand.
#include "core/units.h"
#include "ui/base/palette.h"
#include "ui/base/words.h"
#include "ui/scene/solid/engine_solid.h"
#include "ui/scene/solid/solid_points.h"

#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QWheelEvent>

#include <cmath>

namespace lobewright::ui {

void EngineSolid::paintWords(QPainter& painter, const Sight& sight) const {
    if (engine_.isEmpty())
        return;
    const Palette& p = Palette::of(*this);
    painter.setPen(p.quiet);
    painter.drawText(QRectF(rect()).adjusted(8, 4, -8, -6), Qt::AlignBottom | Qt::AlignHCenter,
                     tr("Shaft %1").arg(words::degrees(cursor_.angle(), 1)));
    const auto& mechanism = engine_.pair().mechanism();
    const auto angles = mechanism::cylinderAngles(mechanism);
    const double out = mechanism.pitchRadius + 0.5 * mechanism.bore;
    if (angles.size() < 2)
        return;
    const float middle = sight.eye.map(QVector3D()).z();
    for (std::size_t k = 0; k < angles.size(); ++k) {
        const QVector3D place(static_cast<float>(out * std::cos(angles[k])),
                              static_cast<float>(out * std::sin(angles[k])), 0.0F);
        const auto at = onScreen(sight.screen, place, size());
        if (!at)
            continue;
        const QString number = QString::number(k + 1);
        QRectF ground = painter.fontMetrics().boundingRect(number).toRectF();
        ground.adjust(-4, -1, 4, 1);
        ground.moveCenter(*at);
        painter.fillRect(ground, p.panel);
        // Those beyond the shaft are named more quietly: their cylinder may be hidden.
        painter.setPen(sight.eye.map(place).z() < middle ? p.quiet : p.ink);
        painter.drawText(ground, Qt::AlignCenter, number);
    }
}

void EngineSolid::mousePressEvent(QMouseEvent* event) {
    last_ = event->position();
}

void EngineSolid::mouseMoveEvent(QMouseEvent* event) {
    if (!event->buttons().testFlag(Qt::LeftButton))
        return;
    isDragged_ = true;
    const QPointF way = event->position() - last_;
    last_ = event->position();
    View next = view_;
    next.azimuth += 0.4F * static_cast<float>(way.x());
    next.height += 0.4F * static_cast<float>(way.y());
    setView(next);
}

void EngineSolid::mouseReleaseEvent(QMouseEvent*) {
    isDragged_ = false;
    update();
}

void EngineSolid::mouseDoubleClickEvent(QMouseEvent*) {
    setView({});
}

void EngineSolid::wheelEvent(QWheelEvent* event) {
    View next = view_;
    next.distance *= std::pow(0.9F, static_cast<float>(event->angleDelta().y()) / 120.0F);
    setView(next);
    event->accept();
}

void EngineSolid::keyPressEvent(QKeyEvent* event) {
    View next = view_;
    switch (event->key()) {
    case Qt::Key_Left:
        next.azimuth -= 5.0F;
        break;
    case Qt::Key_Right:
        next.azimuth += 5.0F;
        break;
    case Qt::Key_Up:
        next.height += 5.0F;
        break;
    case Qt::Key_Down:
        next.height -= 5.0F;
        break;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        next.distance *= 0.9F;
        break;
    case Qt::Key_Minus:
        next.distance /= 0.9F;
        break;
    case Qt::Key_Home:
        next = {};
        break;
    case Qt::Key_Space:
        cursor_.togglePlaying();
        return;
    default:
        QWidget::keyPressEvent(event);
        return;
    }
    setView(next);
}

} // namespace lobewright::ui
