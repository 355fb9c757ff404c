#include "ui/window/solving_state.h"

#include "ui/window/stale_mark.h"

#include <QLabel>
#include <QProgressBar>
#include <QStatusBar>
#include <QToolButton>

namespace lobewright::ui {

namespace {
constexpr int wholeWork = 1000; // of the progress shown
} // namespace

SolvingState::SolvingState(LiveSolution& live, QStatusBar& bar, QWidget& results, QWidget& figures)
    : QObject(&bar), live_(live), figures_(figures), stale_(new StaleMark(results)),
      state_(new QLabel(&bar)), progress_(new QProgressBar(&bar)), cancel_(new QToolButton(&bar)) {
    build(bar);
    connect(&live_, &LiveSolution::requested, this, &SolvingState::noteOutdated);
    connect(&live_, &LiveSolution::solved, this,
            [this](const SolutionPointer&, double seconds) { showSolved(seconds); });
    connect(&live_, &LiveSolution::failed, this, [this] {
        markDue_.stop();
        markOutdated(tr("Not solved: results are of the earlier input"));
    });
    connect(&live_, &LiveSolution::stopped, this, &SolvingState::offerSolving);
    connect(&live_.solver(), &Solver::progressed, this, &SolvingState::showProgress);
    connect(&live_.solver(), &Solver::busyChanged, this, [this](bool busy) {
        if (busy)
            return;
        progress_->hide();
        cancel_->hide();
    });
    connect(cancel_, &QToolButton::clicked, this,
            [this] { live_.isBusy() ? live_.stop() : live_.solve(); });
    markDue_.setSingleShot(true);
    markDue_.setInterval(LiveSolution::blink);
    connect(&markDue_, &QTimer::timeout, this, &SolvingState::showSlow);
}

void SolvingState::build(QStatusBar& bar) {
    state_->setObjectName(QStringLiteral("solveState"));
    progress_->setObjectName(QStringLiteral("solveProgress"));
    progress_->setAccessibleName(tr("Progress of solving"));
    progress_->setRange(0, wholeWork);
    progress_->setMaximumWidth(140);
    progress_->setTextVisible(false);
    progress_->hide();
    cancel_->setObjectName(QStringLiteral("stopSolving"));
    cancel_->setText(tr("Stop"));
    cancel_->setToolTip(tr("Stop solving; the results stay those of the earlier input"));
    cancel_->hide();
    bar.addPermanentWidget(state_);
    bar.addPermanentWidget(progress_);
    bar.addPermanentWidget(cancel_);
}

void SolvingState::noteOutdated() {
    // Under the hand each picture follows within a blink, and words would only flicker.
    if (!live_.isQuick()) {
        state_->setText(live_.solution() ? tr("Solving: results are of the earlier input")
                                         : tr("Solving"));
    }
    if (!markDue_.isActive())
        markDue_.start();
}

void SolvingState::markOutdated(const QString& why) {
    state_->setText(why);
    state_->setAccessibleDescription(why);
    figures_.setEnabled(false);
    stale_->mark(why);
}

void SolvingState::showSlow() {
    if (!live_.isBusy())
        return;
    progress_->setRange(0, 0); // until it says how far it is
    progress_->show();
    cancel_->setText(tr("Stop"));
    cancel_->setToolTip(tr("Stop solving; the results stay those of the earlier input"));
    cancel_->show();
    markOutdated(tr("Results of the earlier input; solving"));
}

void SolvingState::showProgress(double fraction, const QString& what) {
    if (!live_.isBusy())
        return;
    progress_->setRange(0, wholeWork);
    progress_->setValue(static_cast<int>(wholeWork * fraction));
    progress_->setToolTip(what);
}

void SolvingState::offerSolving() {
    markOutdated(tr("Stopped: results are of the earlier input"));
    cancel_->setText(tr("Solve"));
    cancel_->setToolTip(tr("Solve the present input after all"));
    cancel_->show();
}

void SolvingState::showSolved(double seconds) {
    state_->setText(tr("Solved in %1 ms").arg(seconds * 1e3, 0, 'f', 0));
    state_->setAccessibleDescription({});
    figures_.setEnabled(true);
    stale_->hide();
    markDue_.stop();
    if (live_.isBusy())
        noteOutdated();
}

} // namespace lobewright::ui
