#include "core/design/schedules.h"
#include "ui/base/core_text.h"
#include "ui/base/units.h"
#include "ui/panels/figures_panel.h"
#include "ui/panels/limits_list.h"
#include "ui/panels/number_panel.h"
#include "ui/panels/snapshots_panel.h"
#include "ui/panels/working_view.h"
#include "ui/window/figures_bar.h"
#include "ui/window/main_window.h"
#include "ui/window/playback_bar.h"
#include "ui/window/stale_mark.h"

#include <QLabel>
#include <QProgressBar>
#include <QStatusBar>
#include <QTabWidget>
#include <QToolButton>

#include <utility>

namespace lobewright::ui {

namespace {
constexpr int messageTime = 8000;       // [ms]
constexpr int wholeWork = 1000;         // of the progress shown
constexpr int blink = 150;              // [ms] that nobody needs to be told of
constexpr int restingTime = 150;        // [ms] of a hand after which it may as well be exact
constexpr int patience = 20;            // [ms] that motion waits for the gas of the same picture
constexpr double quickSolution = 0.018; // [s]; of slower ones nothing is expected in that time

/// The quick stages, for a drag; null when one of them finds a fault.
GeometryPointer quickGeometry(const design::Design& given) {
    const design::Design design = design::atItsSpeed(given);
    const auto inlet = motion::LiftCurve::make(design.tracks.inlet);
    const auto exhaust = motion::LiftCurve::make(design.tracks[End::exhaust]);
    if (!inlet || !exhaust)
        return nullptr;
    auto pair = mechanism::OpposedPair::make(design.mechanism, {*inlet, *exhaust});
    if (!pair)
        return nullptr;
    auto timing = ports::PortTiming::make(design.ports, *pair);
    if (!timing)
        return nullptr;
    return std::make_shared<const Geometry>(Geometry{design, *pair, *timing});
}

} // namespace

void MainWindow::connectSolving() {
    connect(&solver_, &Solver::solved, this, &MainWindow::solutionArrived);
    connect(&solver_, &Solver::failed, this, &MainWindow::solutionFailed);
    connect(&solver_, &Solver::progressed, this, [this](double fraction, const QString& what) {
        if (!solver_.isBusy())
            return;
        progress_->setRange(0, wholeWork);
        progress_->setValue(static_cast<int>(wholeWork * fraction));
        progress_->setToolTip(what);
    });
    connect(&solver_, &Solver::busyChanged, this, [this](bool busy) {
        if (busy)
            return;
        progress_->hide();
        cancel_->hide();
    });
    connect(cancel_, &QToolButton::clicked, this, [this] {
        if (solver_.isBusy())
            stopSolving();
        else
            requestSolution(Solver::Pace::settled);
    });
    markDue_.setSingleShot(true);
    markDue_.setInterval(blink);
    connect(&markDue_, &QTimer::timeout, this, [this] {
        if (!solver_.isBusy())
            return;
        progress_->setRange(0, 0); // until it says how far it is
        progress_->show();
        cancel_->setText(tr("Stop"));
        cancel_->setToolTip(tr("Stop solving; the results stay those of the earlier input"));
        cancel_->show();
        markOutdated(tr("Results of the earlier input; solving"));
    });
    settle_.setSingleShot(true);
    settle_.setInterval(restingTime);
    connect(&settle_, &QTimer::timeout, this, [this] {
        if (settlePending_)
            requestSolution(Solver::Pace::settled);
    });
    connect(&document_, &Document::editFinished, this, [this] {
        if (settlePending_)
            requestSolution(Solver::Pace::settled);
    });
    geometryDue_.setSingleShot(true);
    geometryDue_.setInterval(patience);
    connect(&geometryDue_, &QTimer::timeout, this, &MainWindow::showGeometryNow);
}

void MainWindow::designChanged(Document::Change change) {
    numbers_->show(document_.design());
    snapshots_->show(document_.design());
    views_->showDesign(document_.design());
    const bool dragging = change == Document::Change::dragging;
    if (change == Document::Change::replaced)
        views_->startAnew();
    // Views make their next edit from what they show: never from an older design.
    if (solution_ && dragging)
        showGeometrySoon();
    else if (solution_)
        showGeometryNow();
    requestSolution(dragging ? Solver::Pace::live : Solver::Pace::settled);
    updateActions();
    updateTitle();
}

void MainWindow::requestSolution(Solver::Pace pace) {
    settlePending_ = pace == Solver::Pace::live;
    settle_.stop();
    solver_.request(document_.design(), document_.revision(), pace);
    noteOutdated();
}

void MainWindow::noteOutdated() {
    // Under the hand each picture follows within a blink, and words would only flicker.
    if (!settlePending_ || liveSeconds_ > 1e-3 * blink)
        solveState_->setText(solution_ ? tr("Solving: results are of the earlier input")
                                       : tr("Solving"));
    if (!markDue_.isActive())
        markDue_.start();
}

void MainWindow::markOutdated(const QString& why) {
    solveState_->setText(why);
    solveState_->setAccessibleDescription(why);
    figuresBar_->setEnabled(false);
    stale_->mark(why);
}

void MainWindow::stopSolving() {
    solver_.cancel();
    settlePending_ = false;
    markOutdated(tr("Stopped: results are of the earlier input"));
    cancel_->setText(tr("Solve"));
    cancel_->setToolTip(tr("Solve the present input after all"));
    cancel_->show();
}

void MainWindow::showGeometryNow() {
    geometryDue_.stop();
    if (const GeometryPointer geometry = quickGeometry(document_.design())) {
        views_->showGeometry(geometry);
        playback_->showGeometry(geometry);
    }
}

/// A solution that comes at once paints everything in one go; painting the motion before it would
/// only delay that. Under the hand itself nothing waits.
void MainWindow::showGeometrySoon() {
    if (liveSeconds_ > quickSolution) {
        showGeometryNow();
        return;
    }
    if (const GeometryPointer geometry = quickGeometry(document_.design()))
        views_->showGeometryWhereEdited(geometry);
    if (!geometryDue_.isActive())
        geometryDue_.start();
}

bool MainWindow::isSettled() const {
    return solution_ && solvedRevision_ == document_.revision() && !solution_->live;
}

void MainWindow::solutionArrived(const SolutionPointer& solution, quint64 revision,
                                 double seconds) {
    solution_ = solution;
    solvedRevision_ = revision;
    geometryDue_.stop();
    views_->showSolution(solution);
    figures_->showSolution(solution);
    working_->showSolution(solution);
    figuresBar_->showSolution(solution);
    limits_->showSolution(solution);
    showLimitsSummary();
    playback_->showGeometry(std::make_shared<const Geometry>(
        Geometry{solution->design, solution->pair, solution->timing}));
    // A drag is ahead of the solution: motion and ports are shown as they are by now.
    if (revision != document_.revision())
        showGeometryNow();
    solveState_->setText(tr("Solved in %1 ms").arg(seconds * 1e3, 0, 'f', 0));
    solveState_->setAccessibleDescription({});
    figuresBar_->setEnabled(true);
    stale_->hide();
    markDue_.stop();
    if (solver_.isBusy())
        noteOutdated();
    if (settlePending_) {
        liveSeconds_ = seconds;
        settle_.start();
    }
    if (isSettled() && std::exchange(baselineWanted_, false))
        keepBaseline();
    updateActions();
}

void MainWindow::solutionFailed(const Problems& problems) {
    markDue_.stop();
    markOutdated(tr("Not solved: results are of the earlier input"));
    statusBar()->showMessage(coreText(problems.front().message), messageTime);
}

void MainWindow::showLimitsSummary() {
    if (const QString summary = limits_->summary(); summary != limitsButton_->text())
        limitsButton_->setText(summary);
    const int graver =
        limits_->count(solution::Severity::error) + limits_->count(solution::Severity::warning);
    // A tab lays the whole side out anew even for the same words.
    const int tab = static_cast<int>(SideTab::limits);
    const QString title = graver ? tr("Limits (%1)").arg(graver) : tr("Limits");
    if (side_->tabText(tab) != title)
        side_->setTabText(tab, title);
}

} // namespace lobewright::ui
