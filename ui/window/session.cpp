#include "ui/window/session.h"

#include "ui/base/core_text.h"

#include <QAction>
#include <QMainWindow>
#include <QStatusBar>

namespace lobewright::ui {

void Session::say(const QString& text, int milliseconds) const {
    window.statusBar()->showMessage(text, milliseconds);
}

void Session::say(const Problems& problems) const {
    say(coreText(problems.front().message));
}

void Session::enableWhile(QAction* action, std::function<bool()> holds) {
    actions_.emplace_back(action, std::move(holds));
}

void Session::updateActions() const {
    for (const auto& [action, holds] : actions_)
        action->setEnabled(holds());
}

} // namespace lobewright::ui
