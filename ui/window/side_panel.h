#pragma once

#include "ui/base/shown.h"

#include <QTabWidget>

class QMenu;

namespace lobewright::ui {

class FiguresPanel;
class FiguresView;
class LimitsList;
class NumberPanel;
class SnapshotsPanel;
class TurnCursor;
class WorkingView;

/// What stands beside the panes: inputs, limits, results with their workings, snapshots.
class SidePanel : public QTabWidget {
    Q_OBJECT

  public:
    enum class Tab { numbers, limits, figures, snapshots };

    SidePanel(TurnCursor& cursor, QWidget* parent);

    NumberPanel& numbers() const { return *numbers_; }
    LimitsList& limits() const { return *limits_; }
    FiguresPanel& figures() const;
    WorkingView& working() const { return *working_; }
    SnapshotsPanel& snapshots() const { return *snapshots_; }

    void showDesign(const design::Design& design);
    void showSolution(const SolutionPointer& solution);
    void showBaseline(const SolutionPointer& baseline);

    /// Each brings its tab to sight.
    void open(Tab tab);
    void goToField(const QString& path);
    void showWorking(const QString& figure);
    /// Taking a snapshot, finding an input.
    void addTo(QMenu& menu);
    /// The help page of the tab that the widget lies in; empty: in none.
    QString helpPageOf(const QWidget* widget) const;

  Q_SIGNALS:
    /// A tab is to be seen: the panel may be hidden.
    void sightWanted();
    /// A view that a working speaks of is to be seen.
    void viewWanted(const QString& key);

  private:
    void addResults();
    void connectTabs(TurnCursor& cursor);

    NumberPanel* numbers_;
    LimitsList* limits_;
    FiguresView* figures_;
    WorkingView* working_;
    SnapshotsPanel* snapshots_;
};

} // namespace lobewright::ui
