#pragma once

#include "ui/document/baseline.h"
#include "ui/document/document.h"
#include "ui/document/live_solution.h"
#include "ui/plots/base/turn_cursor.h"

#include <functional>
#include <vector>

class QAction;
class QMainWindow;

namespace lobewright::ui {

/// What the parts of a window share: the design that is open, its solution, what can be done now,
/// and where to say things.
struct Session {
    explicit Session(QMainWindow& shownIn) : window(shownIn), live(document) {}

    /// At the foot of the window.
    void say(const QString& text, int milliseconds = 6000) const;
    /// The action can be used only while this holds.
    void enableWhile(QAction* action, std::function<bool()> holds);
    /// To be called when something changed that decides what can be used.
    void updateActions() const;

    QMainWindow& window;
    Document document;
    TurnCursor cursor;
    LiveSolution live;
    Baseline baseline;

  private:
    std::vector<std::pair<QAction*, std::function<bool()>>> actions_;
};

} // namespace lobewright::ui
