#include "ui/base/core_text.h"
#include "ui/claims/claims_pane.h"
#include "ui/dialogs/goal_dialog.h"
#include "ui/dialogs/new_engine_dialog.h"
#include "ui/dialogs/picture_dialog.h"
#include "ui/dialogs/schedule_dialog.h"
#include "ui/panels/figures_panel.h"
#include "ui/panels/number_panel.h"
#include "ui/plots/study/schedule_strip.h"
#include "ui/plots/study/torque_curve.h"
#include "ui/window/hint_bar.h"
#include "ui/window/main_window.h"
#include "ui/window/pane_grid.h"

#include <QMenu>
#include <QStatusBar>
#include <QTabWidget>

namespace lobewright::ui {

void MainWindow::addKnownActions(QMenu& menu) {
    menu.addAction(tr("&Origin and range of an input…"), QKeySequence(tr("Ctrl+I")), this,
                   [this] {
                       if (!numbers_->editOriginHere())
                           statusBar()->showMessage(
                               tr("Put the keyboard into an input first: click it, or find it "
                                  "with Ctrl+F"));
                   })
        ->setStatusTip(
            tr("Given, measured, derived, assumed or chosen, and how far it may be off"));
    menu.addAction(tr("Mea&sure a picture…"), QKeySequence(tr("Ctrl+M")), this,
                   &MainWindow::measurePicture)
        ->setStatusTip(tr("Reads lengths, angles and lobes off a picture into inputs"));
    menu.addAction(tr("&Make a result…"), QKeySequence(tr("Ctrl+G")), this,
                   [this] {
                       const QString selected = figures_->selectedFigure();
                       makeThis(selected.isEmpty() ? QStringLiteral("brake_power_kW") : selected);
                   })
        ->setStatusTip(tr("Finds the value of an input that gives a result its target"));
    menu.addAction(tr("Sc&hedule over speed…"), this, [this] { scheduleInput({}); })
        ->setStatusTip(
            tr("Lets an input follow the shaft speed; finds its best value at each speed"));
}

void MainWindow::scheduleInput(const QString& input) {
    ScheduleDialog(document_, input.toStdString(), views_->torqueCurve().range(), this).exec();
}

void MainWindow::showSchedule(const QString& input) {
    grid_->reveal(QStringLiteral("torque-curve"));
    views_->torqueCurve().strip().showInput(input.toStdString());
}

void MainWindow::measurePicture() {
    PictureDialog(document_, this).exec();
}

void MainWindow::newEngine() {
    if (!mayDiscard())
        return;
    // What was typed is there again at the next call.
    auto* kept = findChild<NewEngineDialog*>(QString(), Qt::FindDirectChildrenOnly);
    NewEngineDialog& dialog = kept ? *kept : *new NewEngineDialog(this);
    dialog.begin();
    if (dialog.exec() != QDialog::Accepted)
        return;
    if (dialog.sample() >= 0)
        openSample(dialog.sample());
    else if (dialog.chosen())
        document_.recover(*dialog.chosen(), dialog.name(), {}); // work that is saved nowhere yet
    if (const study::Claims* figures = dialog.publishedFigures())
        views_->claims().fillIn(*figures); // they are what the new engine is judged by
    if (dialog.sample() < 0)
        hint_->hide(); // it spoke of the engine before
    if (dialog.measuresPicture())
        measurePicture();
}

void MainWindow::makeThis(const QString& figure) {
    if (!isSettled()) {
        statusBar()->showMessage(tr("The design is being computed; try again in a moment"));
        return;
    }
    GoalDialog(document_, solution_, figure, this).exec();
}

} // namespace lobewright::ui
