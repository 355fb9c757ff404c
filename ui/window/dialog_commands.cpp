#include "ui/window/dialog_commands.h"

#include "ui/claims/claims_pane.h"
#include "ui/dialogs/export_dialog.h"
#include "ui/dialogs/goal_dialog.h"
#include "ui/dialogs/knot_fit_dialog.h"
#include "ui/dialogs/lift_import_dialog.h"
#include "ui/dialogs/new_engine_dialog.h"
#include "ui/dialogs/picture_dialog.h"
#include "ui/dialogs/schedule_dialog.h"
#include "ui/dialogs/wheel_import_dialog.h"
#include "ui/panels/figures_panel.h"
#include "ui/panels/number_panel.h"
#include "ui/plots/study/torque_curve.h"
#include "ui/window/design_files.h"
#include "ui/window/frames_dialog.h"
#include "ui/window/hint_bar.h"
#include "ui/window/pane.h"
#include "ui/window/session.h"
#include "ui/window/side_panel.h"

#include <QFileInfo>
#include <QMainWindow>
#include <QMenu>

namespace lobewright::ui {

DialogCommands::DialogCommands(Session& session, DesignFiles& files, SidePanel& side, Views& views,
                               HintBar& hint)
    : QObject(&session.window), session_(session), files_(files), side_(side), views_(views),
      hint_(hint) {}

void DialogCommands::addNew(QMenu& menu) {
    menu.addAction(tr("&New…"), QKeySequence::New, this, &DialogCommands::newEngine)
        ->setStatusTip(tr("From published figures, a duty, a picture, a sample, or blank"));
}

void DialogCommands::addExchange(QMenu& menu) {
    menu.addAction(tr("Export a &track…"), QKeySequence(tr("Ctrl+E")), this,
                   &DialogCommands::exportTrack)
        ->setStatusTip(tr("Solid, mesh, drawing, cutter path or tables of one track"));
    menu.addAction(tr("Export &pictures over one revolution…"), this, &DialogCommands::exportFrames)
        ->setStatusTip(tr("A drawing as numbered pictures that join into a loop"));
    menu.addAction(tr("&Import a lift table…"), this,
                   [this] { LiftImportDialog(session_.document, &session_.window).exec(); })
        ->setStatusTip(tr("A table of angle and lift becomes knots of a track"));
    menu.addAction(tr("Import measured &compressor points…"), this, &DialogCommands::importWheel)
        ->setStatusTip(tr("A table of speed, flow, pressure ratio and efficiency becomes the "
                          "compressor wheel"));
}

void DialogCommands::addEditing(QMenu& menu) {
    menu.addAction(tr("&Origin and range of an input…"), QKeySequence(tr("Ctrl+I")), this,
                   &DialogCommands::editOrigin)
        ->setStatusTip(
            tr("Given, measured, derived, assumed or chosen, and how far it may be off"));
    menu.addAction(tr("Mea&sure a picture…"), QKeySequence(tr("Ctrl+M")), this,
                   &DialogCommands::measurePicture)
        ->setStatusTip(tr("Reads lengths, angles and lobes off a picture into inputs"));
    menu.addAction(tr("&Make a result…"), QKeySequence(tr("Ctrl+G")), this,
                   [this] {
                       const QString selected = side_.figures().selectedFigure();
                       makeThis(selected.isEmpty() ? QStringLiteral("brake_power_kW") : selected);
                   })
        ->setStatusTip(tr("Finds the value of an input that gives a result its target"));
    menu.addAction(tr("Sc&hedule over speed…"), this, [this] { scheduleInput({}); })
        ->setStatusTip(
            tr("Lets an input follow the shaft speed; finds its best value at each speed"));
    menu.addAction(tr("Turn a track into &knots…"), QKeySequence(tr("Ctrl+K")), this,
                   [this] { turnIntoKnots(End::inlet); })
        ->setStatusTip(tr("Any track becomes a free-form one; shows what the fit costs"));
}

void DialogCommands::newEngine() {
    if (!files_.mayDiscard())
        return;
    // What was typed is there again at the next call.
    auto* kept = session_.window.findChild<NewEngineDialog*>(QString(), Qt::FindDirectChildrenOnly);
    NewEngineDialog& dialog = kept ? *kept : *new NewEngineDialog(&session_.window);
    dialog.begin();
    if (dialog.exec() != QDialog::Accepted)
        return;
    if (dialog.sample() >= 0)
        files_.openSample(dialog.sample());
    else if (dialog.chosen()) // work that is saved nowhere yet
        session_.document.recover(*dialog.chosen(), dialog.name(), {});
    if (const study::Claims* figures = dialog.publishedFigures())
        views_.claims().fillIn(*figures); // they are what the new engine is judged by
    if (dialog.sample() < 0)
        hint_.hide(); // it spoke of the engine before
    if (dialog.measuresPicture())
        measurePicture();
}

void DialogCommands::measurePicture() {
    PictureDialog(session_.document, &session_.window).exec();
}

void DialogCommands::importWheel() {
    WheelImportDialog(session_.document, &session_.window).exec();
}

void DialogCommands::turnIntoKnots(End end) {
    KnotFitDialog(session_.document, end, &session_.window).exec();
}

void DialogCommands::scheduleInput(const QString& input) {
    ScheduleDialog(session_.document, input.toStdString(), views_.torqueCurve().range(),
                   &session_.window)
        .exec();
}

void DialogCommands::makeThis(const QString& figure) {
    if (session_.live.isSettled())
        GoalDialog(session_.document, session_.live.solution(), figure, &session_.window).exec();
    else
        session_.say(tr("The design is being computed; try again in a moment"), 0);
}

void DialogCommands::exportTrack() {
    const Document& document = session_.document;
    ExportDialog dialog(document.design(), document.name(), &session_.window);
    QString source =
        document.path().isEmpty() ? document.name() : QFileInfo(document.path()).fileName();
    if (document.isModified())
        source += QStringLiteral(" (changed since it was saved)");
    dialog.setSource(source);
    dialog.exec();
}

void DialogCommands::exportFrames() {
    const Views::View* here = viewHere();
    FramesDialog(views_, session_.cursor, session_.document.name(), here ? here->key : QString(),
                 &session_.window)
        .exec();
}

void DialogCommands::editOrigin() {
    if (!side_.numbers().editOriginHere()) {
        session_.say(tr("Put the keyboard into an input first: click it, or find it with Ctrl+F"),
                     0);
    }
}

} // namespace lobewright::ui
