#pragma once

#include "ui/document/live_solution.h"

class QLabel;
class QProgressBar;
class QStatusBar;
class QToolButton;

namespace lobewright::ui {

class StaleMark;

/// Says in the status bar how far solving is, with a button that stops it, and marks results that
/// belong to an earlier input.
class SolvingState : public QObject {
    Q_OBJECT

  public:
    /// `results` get the mark, `figures` are greyed as long as they are of an earlier input.
    SolvingState(LiveSolution& live, QStatusBar& bar, QWidget& results, QWidget& figures);

  private:
    void build(QStatusBar& bar);
    /// Results are of an earlier input from now on: said at once, and marked where that lasts.
    void noteOutdated();
    /// Marks the results, for good until others arrive.
    void markOutdated(const QString& why);
    void showSlow();
    void showProgress(double fraction, const QString& what);
    void showSolved(double seconds);
    void offerSolving();

    LiveSolution& live_;
    QWidget& figures_;
    StaleMark* stale_;
    QLabel* state_;
    QProgressBar* progress_;
    QToolButton* cancel_;
    QTimer markDue_;
};

} // namespace lobewright::ui
