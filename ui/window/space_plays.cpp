#include "ui/window/space_plays.h"

#include "ui/panels/number_edit.h"
#include "ui/plots/base/turn_cursor.h"

#include <QAbstractButton>
#include <QAbstractSpinBox>
#include <QApplication>
#include <QComboBox>
#include <QKeyEvent>
#include <QMenu>
#include <QMenuBar>
#include <QPlainTextEdit>
#include <QTextEdit>

namespace lobewright::ui {

namespace {

/// Behind a number that was begun, a space leads to its unit.
bool isBeingTyped(const QLineEdit* line) {
    return line && line->isModified();
}

bool hasOwnUseFor(const QWidget& widget) {
    if (const auto* number = qobject_cast<const NumberEdit*>(&widget))
        return isBeingTyped(number);
    if (qobject_cast<const QAbstractSpinBox*>(&widget))
        return isBeingTyped(widget.findChild<QLineEdit*>());
    const auto* page = qobject_cast<const QTextEdit*>(&widget);
    return qobject_cast<const QLineEdit*>(&widget) || (page && !page->isReadOnly()) ||
           qobject_cast<const QPlainTextEdit*>(&widget) ||
           qobject_cast<const QAbstractButton*>(&widget) ||
           qobject_cast<const QComboBox*>(&widget) || qobject_cast<const QMenu*>(&widget) ||
           qobject_cast<const QMenuBar*>(&widget);
}

} // namespace

SpacePlays::SpacePlays(TurnCursor& cursor, QWidget& window)
    : QObject(&window), cursor_(cursor), window_(window) {
    qApp->installEventFilter(this);
}

bool SpacePlays::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() != QEvent::KeyPress)
        return false;
    const auto* key = static_cast<QKeyEvent*>(event);
    const auto* widget = qobject_cast<const QWidget*>(watched);
    if (key->key() != Qt::Key_Space || key->modifiers() != Qt::NoModifier || !widget ||
        widget->window() != &window_ || QApplication::activePopupWidget() || hasOwnUseFor(*widget))
        return false;
    if (!key->isAutoRepeat())
        cursor_.togglePlaying();
    return true;
}

} // namespace lobewright::ui
