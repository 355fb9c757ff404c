#pragma once

#include "ui/base/shown.h"
#include "ui/editing/edit.h"
#include "ui/plots/base/turn_cursor.h"

#include <QHash>
#include <QObject>
#include <QWidget>

#include <functional>
#include <memory>
#include <vector>

class QMenu;

namespace lobewright::unknowns {
struct Ensemble;
}

namespace lobewright::ui {

class BandsModel;
class ClaimsPane;
class PartNames;
class PositionPlot;
class TorqueCurve;
class StudentWalk;
class TaskView;

/// Everything that can stand in a pane: drawings, plots, lists. One of each, all of the same
/// cursor. Views that cannot be seen are brought up to date when they are shown.
class Views : public QObject {
    Q_OBJECT

  public:
    struct View {
        QString key; ///< kept between runs
        QString title;
        QString icon; ///< name of a line icon, may be empty
        QWidget* widget = nullptr;
        std::function<void(const SolutionPointer&)> showSolution;
        std::function<void(const SolutionPointer&)> showBaseline;
        std::function<void(const GeometryPointer&)> showGeometry; ///< may be empty
        std::function<void(QMenu&)> addOptions;                   ///< may be empty
        std::function<QString()> state;                           ///< may be empty
        std::function<void(const QString&)> restoreState;         ///< may be empty
    };

    /// The widgets belong to `owner` until a pane takes them.
    Views(TurnCursor& cursor, QWidget* owner);

    const std::vector<View>& all() const { return views_; }
    /// Null when there is none of that key.
    const View* find(const QString& key) const;
    /// Brings a view up to date though it may be out of sight (to write it to a file).
    void refresh(const View& view);
    PositionPlot& position() const { return *position_; }
    BandsModel& bands() const { return *bands_; }
    TorqueCurve& torqueCurve() const { return *torqueCurve_; }
    ClaimsPane& claims() const { return *claims_; }

    /// Another design was opened: what tells a story starts anew.
    void startAnew();
    /// The design as it is edited, ahead of its solution.
    void showDesign(const design::Design& design);
    void showSolution(const SolutionPointer& solution);
    void showBaseline(const SolutionPointer& baseline);
    void showGeometry(const GeometryPointer& geometry);
    /// Only in the view that the last edit came from: it makes its next one from what it shows.
    void showGeometryWhereEdited(const GeometryPointer& geometry);

  Q_SIGNALS:
    void edited(const lobewright::ui::Edit& edit);
    void editFinished();
    void fieldWanted(const QString& path);
    /// The person wants an input to follow the speed; empty: one to be chosen.
    void scheduleWanted(const QString& input);
    /// The person wants to take a compressor wheel from a table.
    void wheelWanted();
    void workingWanted(const QString& figure);
    void stateChanged();
    void arrangementWanted(const QString& key);

  protected:
    bool eventFilter(QObject* watched, QEvent* event) override;

  private:
    template <class Widget>
    View& add(const char* key, const QString& title, Widget* widget);
    /// One whose choices are kept between runs.
    template <class Widget>
    void addKept(const char* key, const QString& title, Widget* widget);
    template <class Plot>
    void addPlot(const char* key, Plot* plot);
    void addDrawings(TurnCursor& cursor, QWidget* owner);
    void addLessons(TurnCursor& cursor, QWidget* owner);
    void addPlots(TurnCursor& cursor, QWidget* owner);
    void addStudies(QWidget* owner);
    void addLoads(TurnCursor& cursor, QWidget* owner);
    void addLobes(TurnCursor& cursor, QWidget* owner);
    void addLists(TurnCursor& cursor, QWidget* owner);
    void addReviews(QWidget* owner);
    void addUnknowns(QWidget* owner);
    void putBandsBehind(QWidget* view);
    void giveBandsToClaims();

    struct Stale {
        bool solution = false, baseline = false, geometry = false;
    };
    std::vector<View> views_;
    QHash<QObject*, Stale> stale_;
    BandsModel* bands_ = nullptr;
    PartNames* partNames_ = nullptr;
    ClaimsPane* claims_ = nullptr;
    std::shared_ptr<const unknowns::Ensemble> claimsBands_; ///< that the claims have
    PositionPlot* position_ = nullptr;
    TorqueCurve* torqueCurve_ = nullptr;
    StudentWalk* walk_ = nullptr;
    TaskView* tasks_ = nullptr;
    QWidget* editedLast_ = nullptr;
    SolutionPointer solution_, baseline_;
    GeometryPointer geometry_; ///< of a drag that is ahead of the solution, else null
};

} // namespace lobewright::ui
