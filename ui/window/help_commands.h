#pragma once

#include <QObject>

class QMenu;

namespace lobewright::ui {

class HelpWindow;
class SampleHints;
class SidePanel;
class WindowLayout;
struct Session;

/// The help, opened where the person is.
class HelpCommands : public QObject {
    Q_OBJECT

  public:
    HelpCommands(Session& session, SidePanel& side, WindowLayout& layout, SampleHints& hints);

    void addTo(QMenu& menu);
    void open(const QString& page);
    void searchFor(const QString& words);
    /// The page of the view that has the keyboard or lies under the pointer, else that of the
    /// arrangement.
    QString pageHere() const;
    /// Null before it was opened first.
    HelpWindow* window() const { return help_; }

  private:
    HelpWindow& made();

    Session& session_;
    SidePanel& side_;
    WindowLayout& layout_;
    SampleHints& hints_;
    HelpWindow* help_ = nullptr;
};

} // namespace lobewright::ui
