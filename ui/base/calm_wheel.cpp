#include "ui/base/calm_wheel.h"

#include <QAbstractSlider>
#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QEvent>
#include <QScrollBar>
#include <QTabBar>

namespace lobewright::ui {

namespace {

/// The box that a widget is, or is part of: the line of an editable list or a spin box.
const QWidget* boxOf(const QObject* object) {
    const auto isBox = [](const QObject* candidate) {
        return qobject_cast<const QComboBox*>(candidate) ||
               qobject_cast<const QAbstractSpinBox*>(candidate) ||
               qobject_cast<const QTabBar*>(candidate) ||
               (qobject_cast<const QAbstractSlider*>(candidate) &&
                !qobject_cast<const QScrollBar*>(candidate));
    };
    const auto* widget = qobject_cast<const QWidget*>(object);
    if (widget && !isBox(widget))
        widget = widget->isWindow() ? nullptr : widget->parentWidget();
    return isBox(widget) ? widget : nullptr;
}

} // namespace

CalmWheel::CalmWheel(QObject* parent) : QObject(parent) {
    qApp->installEventFilter(this);
}

bool CalmWheel::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::Wheel)
        return false;
    const QWidget* box = boxOf(watched);
    const QWidget* focus = QApplication::focusWidget();
    if (!box || (focus && (focus == box || box->isAncestorOf(focus))))
        return false;
    event->ignore(); // what lies behind it takes it
    return true;
}

} // namespace lobewright::ui
