#include "ui/scene/base/turn_view.h"

#include "core/units.h"
#include "ui/base/drawing.h"
#include "ui/base/units.h"

#include <QFocusEvent>
#include <QKeyEvent>
#include <QMouseEvent>
#include <QWheelEvent>

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

TurnView::TurnView(TurnCursor& cursor, QWidget* parent)
    : QWidget(parent), cursor_(cursor), hand_(new Hand(*this)) {
    setMouseTracking(true);
    setFocusPolicy(Qt::StrongFocus);
    setAttribute(Qt::WA_OpaquePaintEvent);
    setSizePolicy(QSizePolicy::Expanding, QSizePolicy::Expanding);
    connect(&Units::instance(), &Units::changed, this, [this] { update(); });
    connect(hand_, &Hand::edited, this, &TurnView::edited);
    connect(hand_, &Hand::editFinished, this, &TurnView::editFinished);
    connect(hand_, &Hand::changed, this, [this] { update(); });
    connect(hand_, &Hand::gripped, this, [this](bool isHeld) {
        if (!isHeld)
            refresh();
    });
    connect(&cursor_, &TurnCursor::angleChanged, this, [this] {
        if (handlesFollowAngle() && !hand_->isGripping()) {
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
    std::vector<Handle> handles;
    if (!engine_.isEmpty()) {
        layOut();
        handles = makeHandles();
    }
    hand_->setHandles(std::move(handles));
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
    hand_->paint(painter);
    if (hasFocus()) {
        outlineOnly(painter, QPen(tones().cursor, 1.0, Qt::DotLine));
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
    turning_ = pressed_;
}

void TurnView::mouseMoveEvent(QMouseEvent* event) {
    if (!turning_) {
        setCursor(Qt::OpenHandCursor);
        return;
    }
    const QPointF at = event->position();
    const bool fine = event->modifiers().testFlag(Qt::ShiftModifier);
    turnBy(turningWay(at - *turning_) * radiansPerPixel() * (fine ? 0.1 : 1.0));
    turning_ = at;
}

void TurnView::mouseReleaseEvent(QMouseEvent* event) {
    if (event->button() != Qt::LeftButton)
        return;
    if (turning_ && (event->position() - pressed_).manhattanLength() < 4.0)
        clickedGround(event->position());
    turning_.reset();
}

void TurnView::mouseDoubleClickEvent(QMouseEvent* event) {
    const auto addition = engine_.isEmpty() ? std::nullopt : additionAt(event->position());
    if (!addition) {
        mousePressEvent(event);
        return;
    }
    turning_.reset();
    hand_->put(addition);
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
    const double turn = event->modifiers().testFlag(Qt::ShiftModifier) ? 0.1 : 1.0;
    switch (event->key()) {
    case Qt::Key_Left:
    case Qt::Key_Down:
        turnBy(-turn * units::degree);
        return;
    case Qt::Key_Right:
    case Qt::Key_Up:
        turnBy(turn * units::degree);
        return;
    case Qt::Key_Insert:
        if (!engine_.isEmpty())
            hand_->put(additionAtAngle());
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

void TurnView::focusInEvent(QFocusEvent* event) {
    // Walking in with Tab starts at the drawing itself, so that arrow keys first turn the shaft.
    QWidget::focusInEvent(event);
    update();
}

void TurnView::focusOutEvent(QFocusEvent* event) {
    QWidget::focusOutEvent(event);
    update();
}

bool TurnView::event(QEvent* event) {
    // Arrows belong to the drawing while it has the focus, not to shortcuts.
    if (event->type() == QEvent::ShortcutOverride) {
        auto* key = static_cast<QKeyEvent*>(event);
        const bool plain = !(key->modifiers() & (Qt::ControlModifier | Qt::AltModifier));
        if (plain && key->key() >= Qt::Key_Left && key->key() <= Qt::Key_Down) {
            event->accept();
            return true;
        }
    }
    return QWidget::event(event);
}

} // namespace lobewright::ui
