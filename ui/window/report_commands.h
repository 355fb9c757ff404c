#pragma once

#include <QObject>

#include <functional>

class QMenu;

namespace lobewright::ui {

struct ReportContent;
class ReportJob;
class Views;
class WindowLayout;
struct Session;

/// The report as a file or on paper, and a single pane on paper.
class ReportCommands : public QObject {
    Q_OBJECT

  public:
    ReportCommands(Session& session, Views& views, WindowLayout& layout);

    void addTo(QMenu& menu);
    /// The report of the present solution as a PDF; computed in the background.
    void write(const QString& file);

  private:
    void askForFile();
    void askForPrinter();
    void printPane();
    ReportContent content() const;
    /// False after saying why there can be none.
    bool isPossible();
    /// Runs a job with its progress shown; `done` is said at its end.
    void make(const QString& done, const std::function<void(ReportJob&)>& start);

    Session& session_;
    Views& views_;
    WindowLayout& layout_;
};

} // namespace lobewright::ui
