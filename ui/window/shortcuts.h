#pragma once

#include <QString>

#include <vector>

class QMenuBar;
class QWidget;

namespace lobewright::ui {

struct Shortcut {
    QString keys; ///< as the system writes them
    QString act;
};
struct ShortcutGroup {
    QString title;
    std::vector<Shortcut> shortcuts;
};

/// All keys of the program: those of the menus, read off their actions, then those of drawings,
/// plots and number fields.
std::vector<ShortcutGroup> shortcutGroups(const QMenuBar& menus);

/// A list of them that can be searched.
void showShortcuts(QWidget* parent, const QMenuBar& menus);

} // namespace lobewright::ui
