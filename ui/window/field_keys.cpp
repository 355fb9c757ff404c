#include "ui/window/field_keys.h"

#include <QAbstractButton>
#include <QAction>
#include <QApplication>
#include <QDoubleSpinBox>
#include <QKeyEvent>
#include <QLineEdit>
#include <QMainWindow>
#include <QMenu>
#include <QMenuBar>
#include <QPlainTextEdit>
#include <QPointer>
#include <QSpinBox>
#include <QTabBar>

#include <algorithm>

namespace lobewright::ui {

namespace {

template <class Box>
bool differs(const Box& box, const QString& number) {
    const bool isWord = !box.specialValueText().isEmpty() && box.value() == box.minimum();
    return box.text() != (isWord ? box.specialValueText() : box.prefix() + number + box.suffix());
}

/// Whether something was typed that the program has not taken yet.
bool hasTyping(const QWidget& field) {
    if (const auto* box = qobject_cast<const QDoubleSpinBox*>(&field))
        return differs(*box, box->textFromValue(box->value()));
    if (const auto* box = qobject_cast<const QSpinBox*>(&field)) {
        QLocale locale = box->locale();
        locale.setNumberOptions(QLocale::OmitGroupSeparator);
        return differs(*box, locale.toString(box->value()));
    }
    if (const auto* line = qobject_cast<const QLineEdit*>(&field))
        return line->isModified();
    const auto* text = qobject_cast<const QPlainTextEdit*>(&field);
    return text && text->document()->isModified();
}

bool isUndo(const QKeyEvent& key) {
    return key.matches(QKeySequence::Undo) || key.matches(QKeySequence::Redo) ||
           key.keyCombination() == (Qt::CTRL | Qt::Key_Y);
}

/// Buttons and tabs are clicked without taking the keyboard away from the field.
bool isPressedInPassing(const QWidget& widget) {
    return qobject_cast<const QAbstractButton*>(&widget) ||
           qobject_cast<const QMenuBar*>(&widget) || qobject_cast<const QTabBar*>(&widget);
}

} // namespace

FieldKeys::FieldKeys(QMainWindow& window) : QObject(&window), window_(window) {
    qApp->installEventFilter(this);
    for (const QAction* entry : window_.menuBar()->actions()) {
        if (entry->menu())
            connect(entry->menu(), &QMenu::aboutToShow, this, &FieldKeys::commit);
    }
}

QWidget* FieldKeys::field() const {
    QWidget* widget = QApplication::focusWidget();
    if (!widget || widget->window() != &window_)
        return nullptr;
    const auto* line = qobject_cast<QLineEdit*>(widget);
    const bool takesTyping = (line && !line->isReadOnly()) ||
                             qobject_cast<QAbstractSpinBox*>(widget) ||
                             qobject_cast<QPlainTextEdit*>(widget);
    return takesTyping ? widget : nullptr;
}

void FieldKeys::commit() {
    const QPointer<QWidget> typedIn = field();
    if (!typedIn || !hasTyping(*typedIn))
        return;
    QFocusEvent left(QEvent::FocusOut, Qt::OtherFocusReason);
    QCoreApplication::sendEvent(typedIn, &left);
    if (typedIn && typedIn->hasFocus()) {
        QFocusEvent back(QEvent::FocusIn, Qt::OtherFocusReason);
        QCoreApplication::sendEvent(typedIn, &back);
    }
}

bool FieldKeys::isActionKey(const QKeyCombination& keys) const {
    const auto actions = window_.findChildren<QAction*>();
    return std::ranges::any_of(actions, [&](const QAction* action) {
        return action->shortcutContext() == Qt::WindowShortcut &&
               action->shortcuts().contains(QKeySequence(keys));
    });
}

bool FieldKeys::eventFilter(QObject* watched, QEvent* event) {
    if (event->type() == QEvent::ShortcutOverride && watched == field()) {
        const auto& key = static_cast<QKeyEvent&>(*event);
        const auto& typedIn = static_cast<QWidget&>(*watched);
        if (!isActionKey(key.keyCombination()) || (isUndo(key) && hasTyping(typedIn)))
            return false;
        // Before the action is looked up: entering may be what makes it available.
        commit();
        event->ignore();
        return true;
    }
    if (event->type() == QEvent::MouseButtonPress) {
        const QWidget* typedIn = field();
        const auto* pressed = qobject_cast<const QWidget*>(watched);
        if (typedIn && pressed && pressed->window() == &window_ && isPressedInPassing(*pressed) &&
            !typedIn->isAncestorOf(pressed))
            commit();
    }
    return false;
}

} // namespace lobewright::ui
