#include "ui/plots/study/study_pane.h"

#include "ui/base/controls.h"
#include "ui/base/core_text.h"
#include "ui/base/layouts.h"
#include "ui/base/units.h"
#include "ui/plots/base/options_menu.h"

#include <QHBoxLayout>
#include <QLabel>
#include <QToolButton>
#include <QVBoxLayout>

#include <algorithm>

namespace lobewright::ui {

StudyPane::StudyPane(const QString& title, QWidget* parent)
    : QWidget(parent), title_(title), state_(new QLabel(this)), stop_(new QToolButton(this)),
      readout_(new ReadoutStrip(this)), foot_(new QHBoxLayout) {
    setAccessibleName(title);
    stop_->setText(tr("Stop"));
    const QString help = tr("Stop this study; finished points stay");
    describe(*stop_, help, help);
    stop_->hide();
    foot_->setContentsMargins(8, 0, 8, 0);
    foot_->addWidget(state_, 1);
    foot_->addWidget(stop_);
    columnOf(this, {0, 0, 0, 0}, 0, {readout_, foot_});
    connect(stop_, &QToolButton::clicked, this, &StudyPane::stop);
    connect(&Units::instance(), &Units::changed, this, &StudyPane::refill);
    offerOptions(*this);
}

void StudyPane::setPlot(QWidget& plot) {
    static_cast<QVBoxLayout*>(layout())->insertWidget(1, &plot, 1);
}

void StudyPane::watch(StudyRunner& runner, Taker taker) {
    connect(&runner, &StudyRunner::pointArrived, this,
            [this, take = taker.takePoint](const study::Point& point, quint64) {
                take(point);
                sayState();
            });
    connect(&runner, &StudyRunner::finished, this,
            [this, take = taker.takeTable](const study::Table& table, quint64) {
                take(table);
                refill();
                sayState();
            });
    connect(&runner, &StudyRunner::failed, this, [this](const Problems& problems, quint64) {
        problem_ = coreText(problems.front().message);
        sayState();
    });
    connect(&runner, &StudyRunner::busyChanged, this, &StudyPane::sayState);
    watched_.push_back({&runner, std::move(taker)});
}

bool StudyPane::mayStart(const StudyRunner& runner, bool hasSubject) {
    problem_.clear();
    isStopped_ = false;
    Watched& watched = *std::ranges::find(watched_, &runner, &Watched::runner);
    watched.isWanted = hasSubject && !isVisible();
    if (hasSubject && isVisible())
        return true;
    watched.runner->cancel();
    return false;
}

bool StudyPane::isBusy() const {
    return std::ranges::any_of(watched_, [](const Watched& each) { return each.runner->isBusy(); });
}

void StudyPane::stop() {
    for (const Watched& each : watched_)
        each.runner->cancel();
    isStopped_ = true;
    sayState();
}

void StudyPane::sayState() {
    const Count points = count();
    if (!problem_.isEmpty()) {
        state_->setText(problem_);
    } else if (isBusy()) {
        state_->setText(tr("solving … %1 of %2 points").arg(points.done).arg(points.wanted));
    } else if (isStopped_) {
        state_->setText(tr("stopped: some points are missing or of an earlier design"));
    } else if (points.failed > 0) {
        state_->setText(tr("not solved: %1 of %2 points").arg(points.failed).arg(points.shown));
    } else {
        state_->setText(restingWords());
    }
    stop_->setVisible(isBusy());
}

QString StudyPane::stateText() const {
    return state_->text();
}

void StudyPane::hideEvent(QHideEvent* event) {
    QWidget::hideEvent(event);
    for (Watched& each : watched_) {
        each.isWanted |= each.runner->isBusy();
        each.runner->cancel();
    }
}

void StudyPane::showEvent(QShowEvent* event) {
    QWidget::showEvent(event);
    for (const Watched& each : watched_) {
        if (each.isWanted)
            each.taker.start();
    }
}

} // namespace lobewright::ui
