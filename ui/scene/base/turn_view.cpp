#include "ui/scene/base/turn_view.h"

#include "core/units.h"
#include "ui/base/units.h"

#include <QFocusEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QPainter>
#include <QToolTip>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

TurnView::TurnView(TurnCursor& cursor, QWidget* parent) : QWidget(parent), cursor_(cursor) {
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    connect(&Units::instance(), &Units::changed, this, [this] { update(); });
    connect(&cursor_, &TurnCursor::angleChanged, this, [this] {
        if (handlesFollowAngle() && !grip_) {
            refresh();
        } else {
            update();
        }
    });
}

void TurnView::showGeometry(const GeometryPointer& geometry) {
    engine_.setGeometry(geometry);
    refresh();
}

void TurnView::showSolution(const SolutionPointer& solution) {
    const bool isShown = solution && !engine_.isEmpty() && engine_.design() == solution->design;
    engine_.setSolution(solution);
    // Under the hand the motion was drawn ahead of the gas.
    if (!isShown || showsGas())
        refresh();
}

void TurnView::showBaseline(const SolutionPointer& baseline) {
    engine_.setBaseline(baseline);
    refresh();
}

void TurnView::refresh() {
    const std::string key =
        handleOf(chosen_) ? handles_[static_cast<std::size_t>(chosen_)].key : "";
    handles_.clear();
    hovered_ = chosen_ = -1;
    if (!engine_.isEmpty()) {
        layOut();
        handles_ = makeHandles();
    }
    if (!key.empty()) {
        for (std::size_t i = 0; i < handles_.size(); ++i) {
            if (handles_[i].key == key)
                chosen_ = static_cast<int>(i);
        }
    }
    update();
}

double TurnView::radiansPerPixel() const {
    return units::turn / std::max(200.0, 1.5 * width());
}

void TurnView::turnBy(double radians) {
    cursor_.setAngle(cursor_.angle() + radians);
}

void TurnView::goToEvent(int step) {
    if (engine_.isEmpty())
        return;
    const double now = cursor_.angle();
    const double period = engine_.pair().period();
    double best = step > 0 ? now + period : now - period;
    for (const auto& cycle : engine_.timing().cycles()) {
        for (const double event : {cycle.centres.idc, cycle.exhaustOpens, cycle.inletOpens,
                                   cycle.centres.odc, cycle.inletCloses, cycle.exhaustCloses}) {
            double ahead = std::remainder(event - now, period);
            if (step > 0 && ahead < 1e-9)
                ahead += period;
            if (step < 0 && ahead > -1e-9)
                ahead -= period;
            if (std::abs(ahead) < std::abs(best - now))
                best = now + ahead;
        }
    }
    cursor_.setAngle(best);
}

void TurnView::paintEvent(QPaintEvent*) {
    QPainter painter(this);
    painter.fillRect(rect(), tones().paper);
    painter.setRenderHint(QPainter::Antialiasing);
    painter.setPen(tones().quiet);
    if (engine_.isEmpty()) {
        painter.drawText(rect(), Qt::AlignCenter, tr("No design to draw yet"));
        return;
    }
    paintDrawing(painter);
    paintHandles(painter);
    if (hasFocus()) {
        painter.setBrush(Qt::NoBrush);
        painter.setPen(QPen(tones().cursor, 1.0, Qt::DotLine));
        painter.drawRect(QRectF(rect()).adjusted(1.5, 1.5, -1.5, -1.5));
    }
}

void TurnView::resizeEvent(QResizeEvent*) {
    refresh();
}

void TurnView::changeEvent(QEvent* event) {
    if (event->type() == QEvent::PaletteChange || event->type() == QEvent::FontChange ||
        event->type() == QEvent::LanguageChange)
        refresh();
    QWidget::changeEvent(event);
}

void TurnView::mousePressEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton || engine_.isEmpty())
        return;
    pressed_ = event->position();
    byKeyboard_ = false;
    released_.clear();
    QToolTip::hideText(); // the tag of the handle says more
    const int hit = handleAt(pressed_);
    choose(hit);
    if (const Handle* handle = handleOf(hit)) {
        std::vector<double> values;
        for (const auto& axis : handle->axes)
            values.push_back(axis.value);
        const bool fine = event->modifiers().testFlag(Qt::ShiftModifier);
        grip_ = Grip{*handle, pressed_, values, values, fine, false};
    } else {
        turning_ = pressed_;
    }
    update();
}

void TurnView::mouseMoveEvent(QMouseEvent* event) {
    const QPointF at = event->position();
    if (grip_) {
        dragHandle(at, event->modifiers().testFlag(Qt::ShiftModifier));
    } else if (turning_) {
        const bool fine = event->modifiers().testFlag(Qt::ShiftModifier);
        turnBy(turningWay(at - *turning_) * radiansPerPixel() * (fine ? 0.1 : 1.0));
        turning_ = at;
    } else {
        pointerInside_ = true;
        pointer_ = at;
        const int hit = handleAt(at);
        const Handle* handle = handleOf(hit);
        if (!handle) {
            setCursor(Qt::OpenHandCursor);
        } else if (handle->axes.size() > 1) {
            setCursor(Qt::SizeAllCursor);
        } else {
            setCursor(std::abs(handle->axes[0].perUnit.x()) > std::abs(handle->axes[0].perUnit.y())
                          ? Qt::SizeHorCursor
                          : Qt::SizeVerCursor);
        }
        hovered_ = hit;
        if (!handle || handle->key != released_)
            released_.clear();
        update();
    }
}

void TurnView::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton)
        return;
    if (grip_) {
        released_ = grip_->handle.key;
        dropHandle(true);
    } else if (turning_ && (event->position() - pressed_).manhattanLength() < 4.0) {
        clickedGround(event->position());
    }
    turning_.reset();
}

void TurnView::mouseDoubleClickEvent(QMouseEvent* event) {
    if (const Handle* handle = handleOf(handleAt(event->position()))) {
        grip_.reset();
        openExactEntry(*handle);
    } else if (const auto addition =
                   engine_.isEmpty() ? std::nullopt : additionAt(event->position())) {
        turning_.reset();
        add(addition);
    } else {
        mousePressEvent(event);
    }
}

void TurnView::leaveEvent(QEvent*) {
    pointerInside_ = false;
    hovered_ = -1;
    update();
}

void TurnView::wheelEvent(QWheelEvent* event) {
    const QPoint delta = event->angleDelta();
    // With Shift some platforms report the wheel sideways.
    const int notch = delta.y() != 0 ? delta.y() : delta.x();
    const bool fine = event->modifiers().testFlag(Qt::ShiftModifier);
    turnBy(notch / 120.0 * (fine ? 0.2 : 2.0) * units::degree);
    event->accept();
}

void TurnView::keyPressEvent(QKeyEvent* event) {
    const bool fine = event->modifiers().testFlag(Qt::ShiftModifier);
    const Handle* handle = handleOf(chosen_);
    const QPointF direction = event->key() == Qt::Key_Left    ? QPointF(-1, 0)
                              : event->key() == Qt::Key_Right ? QPointF(1, 0)
                              : event->key() == Qt::Key_Up    ? QPointF(0, -1)
                              : event->key() == Qt::Key_Down  ? QPointF(0, 1)
                                                              : QPointF();
    if (!direction.isNull()) {
        if (handle) {
            nudge(*handle, direction, fine);
        } else {
            turnBy((direction.x() - direction.y()) * (fine ? 0.1 : 1.0) * units::degree);
        }
        return;
    }
    switch (event->key()) {
    case Qt::Key_Escape:
        if (grip_) {
            dropHandle(false);
        } else if (handle) {
            choose(-1);
        } else {
            QWidget::keyPressEvent(event);
        }
        return;
    case Qt::Key_Return:
    case Qt::Key_Enter:
        if (handle) {
            openExactEntry(*handle);
        } else {
            QWidget::keyPressEvent(event);
        }
        return;
    case Qt::Key_Insert:
        if (!engine_.isEmpty())
            add(additionAtAngle());
        return;
    case Qt::Key_Delete:
        if (handle && handle->removal)
            emitWhole(handle->removal());
        return;
    case Qt::Key_Space:
    case Qt::Key_Home:
    case Qt::Key_PageDown:
    case Qt::Key_PageUp:
        walkByKey(event->key());
        return;
    default:
        QWidget::keyPressEvent(event);
    }
}

void TurnView::walkByKey(int key) {
    if (key == Qt::Key_Space)
        cursor_.togglePlaying();
    else if (key == Qt::Key_PageDown || key == Qt::Key_PageUp)
        goToEvent(key == Qt::Key_PageDown ? 1 : -1);
    else if (!engine_.isEmpty())
        cursor_.setAngle(engine_.pair().deadCentres().front().idc);
}

void TurnView::keyReleaseEvent(QKeyEvent* event) {
    if (nudging_ && !event->isAutoRepeat()) {
        nudging_ = false;
        Q_EMIT editFinished();
    }
    QWidget::keyReleaseEvent(event);
}

void TurnView::focusInEvent(QFocusEvent* event) {
    // Walking in with Tab starts at the drawing itself, so that arrow keys first turn the shaft.
    QWidget::focusInEvent(event);
    update();
}

void TurnView::focusOutEvent(QFocusEvent* event) {
    if (grip_)
        dropHandle(true);
    QWidget::focusOutEvent(event);
    update();
}

bool TurnView::event(QEvent* event) {
    // A tag stands there already.
    if (event->type() == QEvent::ToolTip && (grip_ || hovered_ >= 0))
        return true;
    // Space, arrows and Escape belong to the drawing while it has the focus, not to shortcuts.
    if (event->type() == QEvent::ShortcutOverride) {
        auto* key = static_cast<QKeyEvent*>(event);
        const bool plain = !(key->modifiers() & (Qt::ControlModifier | Qt::AltModifier));
        const bool arrow = key->key() >= Qt::Key_Left && key->key() <= Qt::Key_Down;
        const bool escape = key->key() == Qt::Key_Escape && (grip_ || chosen_ >= 0);
        if (plain && (arrow || escape)) {
            event->accept();
            return true;
        }
    }
    return QWidget::event(event);
}

} // namespace lobewright::ui
