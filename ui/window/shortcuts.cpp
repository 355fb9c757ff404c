#include "ui/window/shortcuts.h"

#include "ui/base/controls.h"
#include "ui/base/layouts.h"
#include "ui/base/type_scale.h"

#include <QAction>
#include <QCoreApplication>
#include <QDialog>
#include <QDialogButtonBox>
#include <QHeaderView>
#include <QLineEdit>
#include <QMenu>
#include <QMenuBar>
#include <QRegularExpression>
#include <QTreeWidget>

namespace lobewright::ui {

namespace {

struct Words {
    Q_DECLARE_TR_FUNCTIONS(Shortcuts)
};

/// A menu text without its mnemonic and its dots.
QString plain(QString text) {
    static const QRegularExpression mnemonic(QStringLiteral("&(.)"));
    return text.replace(mnemonic, QStringLiteral("\\1")).remove(QChar(0x2026));
}

void collect(const QMenu& menu, const QString& before, ShortcutGroup& group) {
    for (const QAction* action : menu.actions()) {
        const QString name = before + plain(action->text());
        if (action->menu())
            collect(*action->menu(), name + QStringLiteral(" > "), group);
        QStringList keys;
        for (const QKeySequence& sequence : action->shortcuts())
            keys << sequence.toString(QKeySequence::NativeText);
        if (!keys.isEmpty())
            group.shortcuts.push_back({keys.join(QStringLiteral(", ")), name});
    }
}

std::vector<ShortcutGroup> keysOfViews() {
    return {
        {Words::tr("In drawings and plots"),
         {{Words::tr("Space"), Words::tr("Turn or stop the shaft")},
          {Words::tr("Left, Right"), Words::tr("Turn the shaft; Shift: fine, Ctrl: coarse")},
          {Words::tr("Page Up, Page Down"), Words::tr("Previous event, next event")},
          {Words::tr("Drag"), Words::tr("Turn the shaft")},
          {Words::tr("Home, double click"), Words::tr("Show the whole turn")},
          {Words::tr("Wheel"), Words::tr("Zoom the angle; with Ctrl the values")},
          {Words::tr("Shift and drag"), Words::tr("Zoom to a range")},
          {Words::tr("Middle button and drag"), Words::tr("Move what is shown")}}},
        {Words::tr("At a handle"),
         {{Words::tr("Tab"), Words::tr("To the next handle of a drawing")},
          {Words::tr("Arrow keys"), Words::tr("Move the handle; Shift: fine")},
          {Words::tr("Drag a diamond, dot or bar"),
           Words::tr("Move a boundary, lift, knot or port edge; Shift: fine")},
          {Words::tr("Enter, double click"), Words::tr("Exact number")},
          {Words::tr("Double click on a curve of knots, or Insert"), Words::tr("Put a knot there")},
          {Words::tr("Delete, Backspace on a knot"), Words::tr("Remove it; free its slope")},
          {Words::tr("Drag a knot on velocity, acceleration"),
           Words::tr("Prescribe its slope; move its lift until the acceleration follows")},
          {Words::tr("Escape"), Words::tr("Leave the handle; during a drag: take the move back")}}},
        {Words::tr("In an input field"),
         {{Words::tr("Up, Down"), Words::tr("Change it in steps; Shift: fine, Ctrl: coarse")},
          {Words::tr("Enter"), Words::tr("Accept")},
          {Words::tr("Escape"), Words::tr("Restore the previous value")}}},
        {Words::tr("In a pane"),
         {{Words::tr("Double click beside the name"),
           Words::tr("Show only this view, or all again")},
          {Words::tr("Options, Show another view here"), Words::tr("Choose another view")}}}};
}

} // namespace

std::vector<ShortcutGroup> shortcutGroups(const QMenuBar& menus) {
    std::vector<ShortcutGroup> groups;
    for (const QAction* action : menus.actions()) {
        ShortcutGroup group{plain(action->text()), {}};
        if (action->menu())
            collect(*action->menu(), {}, group);
        if (!group.shortcuts.empty())
            groups.push_back(std::move(group));
    }
    for (ShortcutGroup& group : keysOfViews())
        groups.push_back(std::move(group));
    return groups;
}

void showShortcuts(QWidget* parent, const QMenuBar& menus) {
    QDialog dialog(parent);
    dialog.setObjectName(QStringLiteral("shortcuts"));
    dialog.setWindowTitle(Words::tr("Keyboard shortcuts"));
    auto* search = new QLineEdit(&dialog);
    const QString purpose = Words::tr("Find a key or what it does");
    makeSearch(*search, purpose, purpose);
    auto* list = new QTreeWidget(&dialog);
    list->setColumnCount(2);
    list->setHeaderLabels({Words::tr("What it does"), Words::tr("Keys")});
    list->setAccessibleName(dialog.windowTitle());
    list->setRootIsDecorated(false);
    for (const ShortcutGroup& group : shortcutGroups(menus)) {
        auto* heading = new QTreeWidgetItem(list, {group.title});
        heading->setFont(0, inBold(list->font()));
        heading->setFirstColumnSpanned(true);
        for (const Shortcut& shortcut : group.shortcuts)
            new QTreeWidgetItem(heading, {shortcut.act, shortcut.keys});
    }
    list->expandAll();
    list->header()->setSectionResizeMode(0, QHeaderView::Stretch);
    list->header()->setSectionResizeMode(1, QHeaderView::ResizeToContents);
    list->header()->setStretchLastSection(false);
    QObject::connect(search, &QLineEdit::textChanged, list, [list](const QString& text) {
        for (int i = 0; i < list->topLevelItemCount(); ++i) {
            QTreeWidgetItem* group = list->topLevelItem(i);
            bool any = false;
            for (int k = 0; k < group->childCount(); ++k) {
                QTreeWidgetItem* line = group->child(k);
                const bool has = line->text(0).contains(text, Qt::CaseInsensitive) ||
                                 line->text(1).contains(text, Qt::CaseInsensitive);
                line->setHidden(!has);
                any = any || has;
            }
            group->setHidden(!any);
        }
    });
    auto* buttons = footOf(dialog, QDialogButtonBox::Close);
    columnOf(&dialog, {search, {list, 1}, buttons});
    dialog.resize(620, 640);
    dialog.exec();
}

} // namespace lobewright::ui
