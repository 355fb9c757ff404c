#include "ui/window/help_commands.h"

#include "ui/base/dialogs.h"
#include "ui/help/help_pages.h"
#include "ui/help/help_window.h"
#include "ui/window/pane.h"
#include "ui/window/sample_hints.h"
#include "ui/window/session.h"
#include "ui/window/shortcuts.h"
#include "ui/window/side_panel.h"
#include "ui/window/window_layout.h"

#include <QMainWindow>
#include <QMenu>

namespace lobewright::ui {

HelpCommands::HelpCommands(Session& session, SidePanel& side, WindowLayout& layout,
                           SampleHints& hints)
    : QObject(&session.window), session_(session), side_(side), layout_(layout), hints_(hints) {
    connect(&hints_, &SampleHints::firstStepsWanted, this,
            [this] { open(firstStepsIn(layout_.arrangement())); });
}

void HelpCommands::addTo(QMenu& menu) {
    menu.addAction(tr("&Help on this pane"), QKeySequence(tr("F1")), this,
                   [this] { open(pageHere()); })
        ->setStatusTip(tr("The page of the pane that has the keyboard"));
    menu.addAction(tr("Help &contents"), this, [this] { open(helpPages().front().file); });
    menu.addAction(tr("&First hint"), &hints_, &SampleHints::greet)
        ->setStatusTip(tr("The hint shown at the first start"));
    menu.addAction(tr("&Keyboard shortcuts…"), QKeySequence(tr("Shift+F1")), this,
                   [this] { showShortcuts(&session_.window, *session_.window.menuBar()); });
    menu.addSeparator();
    menu.addAction(tr("&About Lobewright"), this, [this] { showAbout(&session_.window); });
}

QString HelpCommands::pageHere() const {
    for (const QWidget* widget : widgetsHere()) {
        QString page = side_.helpPageOf(widget);
        if (const Pane* pane = paneOf(widget); page.isEmpty() && pane)
            page = helpOfView(pane->view()->key);
        if (!page.isEmpty())
            return page;
    }
    return helpOfArrangement(layout_.arrangement());
}

HelpWindow& HelpCommands::made() {
    if (!help_)
        help_ = new HelpWindow(&session_.window);
    return *help_;
}

void HelpCommands::open(const QString& page) {
    made().open(page);
}

void HelpCommands::searchFor(const QString& words) {
    made().searchFor(words);
}

} // namespace lobewright::ui
