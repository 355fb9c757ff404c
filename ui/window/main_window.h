#pragma once

#include "ui/document/baseline.h"
#include "ui/document/document.h"
#include "ui/document/solver.h"
#include "ui/plots/base/turn_cursor.h"
#include "ui/window/preferences.h"
#include "ui/window/safekeeping.h"
#include "ui/window/views.h"

#include <QMainWindow>
#include <QTimer>

#include <functional>
#include <memory>
#include <optional>

class QActionGroup;
class QLabel;
class QProgressBar;
class QSplitter;
class QTabWidget;
class QToolButton;

namespace lobewright::ui {

class FiguresBar;
class FiguresPanel;
class FieldKeys;
class HelpWindow;
class HintBar;
class LimitsList;
class NumberPanel;
class PaneGrid;
class PlaybackBar;
class ReportJob;
struct ReportContent;
class RecentFiles;
class SnapshotsPanel;
class StaleMark;
class WorkingView;

/// The client area nearest to the present one whose frame lies within the part of the screen that
/// windows may use.
QRect fittingClient(const QRect& client, const QRect& frame, const QRect& available);

/// The window of the program: one document, its solution, and everything that shows them.
class MainWindow : public QMainWindow {
    Q_OBJECT

  public:
    struct Options {
        QString recoveryFolder;    ///< empty: the program's own
        bool asksQuestions = true; ///< false: nothing is asked on closing or opening (pictures)
    };

    explicit MainWindow(const Options& options, QWidget* parent = nullptr);
    explicit MainWindow(QWidget* parent = nullptr) : MainWindow(Options(), parent) {}
    ~MainWindow() override;

    /// Opens a file; the present design stays if it cannot be used.
    bool openFile(const QString& file);
    /// What a crash left behind if the person wants it back; else the file, if there is one that
    /// can be used; else the design of last time, if that is preferred; else the first sample.
    void openSomething(const QString& file = {});
    bool saveTo(const QString& file);
    /// Channels and figures of the present solution as files in a folder.
    bool exportResults(const QString& folder);
    /// The report of the present solution as a PDF; computed in the background.
    void writeReport(const QString& file);
    void keepBaseline();
    void arrange(const QString& key);
    void setTheme(const QString& name);
    /// Takes up what this window does of the preferences, and shows which are chosen.
    void applyPreferences(const Preferences& preferences);
    void editPreferences();
    /// The help page of the view that has the keyboard or lies under the pointer, else that of the
    /// arrangement.
    QString helpPageHere() const;
    void openHelp(const QString& page);
    void searchHelp(const QString& words);
    /// The view that has the keyboard, else the one under the pointer; null: neither is a view.
    const Views::View* viewHere() const;
    /// Asks for a printer for the view of viewHere(), else for the first one.
    void printPane();
    /// Null before it was opened first.
    HelpWindow* helpWindow() const { return help_; }

    Document& document() { return document_; }
    TurnCursor& cursor() { return cursor_; }
    Solver& solver() { return solver_; }
    Views& views() { return *views_; }
    NumberPanel& numbers() { return *numbers_; }
    LimitsList& limits() { return *limits_; }
    FiguresPanel& figures() { return *figures_; }
    SnapshotsPanel& snapshots() { return *snapshots_; }
    WorkingView& working() { return *working_; }
    const Baseline& baseline() const { return baseline_; }
    PlaybackBar& playback() { return *playback_; }
    Autosave& autosave() { return safekeeping_->autosave(); }
    /// Of the newest design that could be solved; null before the first.
    const SolutionPointer& solution() const { return solution_; }

  protected:
    void closeEvent(QCloseEvent* event) override;
    void showEvent(QShowEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;
    void dragEnterEvent(QDragEnterEvent* event) override;
    void dropEvent(QDropEvent* event) override;

  private:
    enum class SideTab { numbers, limits, figures };

    // main_window.cpp
    void buildCentre();
    void fitSide();
    void buildStatusBar();
    void addCaution();
    void connectParts();
    void goToField(const QString& path);
    void saveLayout();
    void restoreLayout();
    void fitOnScreen();

    // main_window_solving.cpp
    void connectSolving();
    void designChanged(Document::Change change);
    void requestSolution(Solver::Pace pace);
    void showGeometryNow();
    void showGeometrySoon();
    void solutionArrived(const SolutionPointer& solution, quint64 revision, double seconds);
    void solutionFailed(const Problems& problems);
    /// Results are of an earlier input from now on: said at once, and marked where that lasts.
    void noteOutdated();
    /// Marks the results, for good until others arrive.
    void markOutdated(const QString& why);
    void stopSolving();
    void showLimitsSummary();
    /// What is shown belongs to the present design and is more than a picture under the hand.
    bool isSettled() const;

    // main_window_actions.cpp
    void buildActions();
    void buildFileMenu();
    void buildEditMenu();
    void buildBaselineMenu();
    void buildViewMenu();
    void buildThemeMenu(QMenu& menu);
    void buildUnitsMenu(QMenu& menu);
    void buildMotionMenu();
    void buildHelpMenu();
    void buildSampleMenu(QMenu& menu);
    void turnIntoKnots(End end);
    /// The one place that says which actions can be used now.
    void updateActions();
    void updateTitle();

    // main_window_files.cpp
    void askForFile();
    void openSample(int index);
    bool save();
    bool saveAs();
    bool goOnWith(FileConflict::Answer answer);
    bool write(const QString& file);
    bool mayDiscard();
    void askForResultsFolder();
    void exportTrack();
    void openBaseline();
    void swapWithBaseline();

    // main_window_hints.cpp
    /// Says once of every sample what it is, and where its notes are.
    static bool isFirstStart(); ///< on this account
    void greet();
    void introduceSample();
    /// After the first saving of what began as a sample and still has its title.
    void offerOwnTitle();

    // main_window_known.cpp
    void addKnownActions(QMenu& menu);
    void newEngine();
    void measurePicture();
    void importWheel();
    /// Lets an input follow the speed; empty: the person chooses which.
    void scheduleInput(const QString& input);
    /// Brings the schedule of an input to sight, below the torque curve.
    void showSchedule(const QString& input);
    /// Asks which input shall give this figure which value.
    void makeThis(const QString& figure);

    // main_window_snapshots.cpp
    void buildSnapshots();
    void addSnapshotActions(QMenu& menu);

    // main_window_working.cpp
    void buildWorking();
    void connectWorking();
    void showWorking(const QString& figure);

    // main_window_report.cpp
    void addReportAction(QMenu& menu);
    void askForReport();
    ReportContent reportContent() const;
    /// False after saying why there can be none.
    bool reportIsPossible();
    /// Runs a job with its progress shown; `done` is said at its end.
    void makeReport(const QString& done, const std::function<void(ReportJob&)>& start);

    // main_window_print.cpp
    void addPrintActions(QMenu& menu);
    void askToPrintReport();

    Options options_;
    Document document_;
    TurnCursor cursor_;
    Solver solver_;
    Baseline baseline_;
    std::unique_ptr<Safekeeping> safekeeping_;
    SolutionPointer solution_;
    quint64 solvedRevision_ = 0;
    struct SampleWords {
        std::string title, notes;
    };
    std::optional<SampleWords> sample_; ///< that the document began as, until it is saved
    bool wasShown_ = false;
    bool baselineWanted_ = false; ///< keep the next settled solution as baseline
    bool settlePending_ = false;  ///< the newest request was for a picture under the hand
    double liveSeconds_ = 1.0;    ///< that the last such picture took to solve
    QTimer settle_, geometryDue_, markDue_;

    Views* views_ = nullptr;
    PaneGrid* grid_ = nullptr;
    QSplitter* split_ = nullptr;
    QTabWidget* side_ = nullptr;
    NumberPanel* numbers_ = nullptr;
    LimitsList* limits_ = nullptr;
    FiguresPanel* figures_ = nullptr;
    SnapshotsPanel* snapshots_ = nullptr;
    WorkingView* working_ = nullptr;
    PlaybackBar* playback_ = nullptr;
    bool isSideChosen_ = false; ///< the person moved its edge
    bool greets_ = false;       ///< the first hint comes before what is said of a sample
    FiguresBar* figuresBar_ = nullptr;
    QToolButton* limitsButton_ = nullptr;
    QLabel *recoveryState_ = nullptr, *solveState_ = nullptr;
    StaleMark* stale_ = nullptr;
    QProgressBar* progress_ = nullptr;
    QToolButton* cancel_ = nullptr;
    RecentFiles* recent_ = nullptr;
    HintBar* hint_ = nullptr;
    FieldKeys* fieldKeys_ = nullptr;
    HelpWindow* help_ = nullptr;

    QAction *save_ = nullptr, *exportResults_ = nullptr, *report_ = nullptr,
            *printReport_ = nullptr, *keepBaseline_ = nullptr, *swapBaseline_ = nullptr,
            *forgetBaseline_ = nullptr, *sideShown_ = nullptr, *play_ = nullptr;
    QActionGroup *arrangementGroup_ = nullptr, *themeGroup_ = nullptr, *unitsGroup_ = nullptr;
};

} // namespace lobewright::ui
