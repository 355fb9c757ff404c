#pragma once

#include <QMenu>

/// Entries of menus that say how something is and change it.
namespace lobewright::ui {

/// On or off; `act` gets which it is now.
template <class Receiver, class Act>
QAction* addCheck(QMenu& menu, const QString& text, bool isOn, Receiver* receiver, Act act) {
    QAction* action = menu.addAction(text);
    action->setCheckable(true);
    action->setChecked(isOn);
    QObject::connect(action, &QAction::toggled, receiver, act);
    return action;
}

/// One of several that exclude one another.
template <class Receiver, class Act>
QAction* addChoice(QMenu& menu, const QString& text, bool isChosen, Receiver* receiver, Act act) {
    QAction* action = menu.addAction(text, receiver, act);
    action->setCheckable(true);
    action->setChecked(isChosen);
    return action;
}

} // namespace lobewright::ui
