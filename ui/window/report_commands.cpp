#include "ui/window/report_commands.h"

#include "ui/base/file_to_write.h"
#include "ui/base/last_folder.h"
#include "ui/base/plain_message.h"
#include "ui/claims/claims_pane.h"
#include "ui/plots/base/plot_export.h"
#include "ui/plots/study/bands_model.h"
#include "ui/report/report_job.h"
#include "ui/window/pane.h"
#include "ui/window/session.h"
#include "ui/window/window_layout.h"

#include <QCoreApplication>
#include <QMainWindow>
#include <QMenu>
#include <QPrintDialog>
#include <QPrinter>
#include <QProgressDialog>

namespace lobewright::ui {

ReportCommands::ReportCommands(Session& session, Views& views, WindowLayout& layout)
    : QObject(&session.window), session_(session), views_(views), layout_(layout) {}

void ReportCommands::addTo(QMenu& menu) {
    const auto isSolved = [this] { return session_.live.isSettled(); };
    QAction* report = menu.addAction(tr("&Report…"), QKeySequence(tr("Ctrl+R")), this,
                                     &ReportCommands::askForFile);
    report->setStatusTip(tr("A PDF with drawing, results, plots, limits, assumptions and sources"));
    session_.enableWhile(report, isSolved);
    menu.addAction(tr("Print this pa&ne…"), QKeySequence(tr("Ctrl+P")), this,
                   &ReportCommands::printPane)
        ->setStatusTip(
            tr("The view that has the keyboard, else the one under the pointer, on paper "
               "or as a PDF"));
    QAction* print = menu.addAction(tr("Print the &full report…"), QKeySequence(tr("Ctrl+Shift+P")),
                                    this, &ReportCommands::askForPrinter);
    print->setStatusTip(tr("The pages of the report on paper"));
    session_.enableWhile(print, isSolved);
}

void ReportCommands::askForFile() {
    const QString file =
        fileToWrite(&session_.window, tr("Write a report"),
                    lastFolder() + QLatin1Char('/') + fileStem(session_.document.name()) + ".pdf",
                    tr("Report (*.pdf)"));
    if (!file.isEmpty())
        write(file);
}

void ReportCommands::write(const QString& file) {
    if (isPossible()) {
        make(tr("Report written to %1").arg(file),
             [this, file](ReportJob& job) { job.start(content(), file); });
    }
}

void ReportCommands::askForPrinter() {
    if (!isPossible())
        return;
    const auto printer = std::make_shared<QPrinter>(QPrinter::ScreenResolution);
    printer->setDocName(session_.document.name());
    printer->setCreator(QStringLiteral("Lobewright"));
    QPrintDialog dialog(printer.get(), &session_.window);
    if (dialog.exec() == QDialog::Accepted) {
        make(tr("Report printed"),
             [this, printer](ReportJob& job) { job.print(content(), printer); });
    }
}

void ReportCommands::printPane() {
    const Views::View* view = viewHere();
    if (!view)
        view = views_.find(layout_.shownViews().front());
    printPicture(*view->widget, view->title);
}

bool ReportCommands::isPossible() {
    const SolutionPointer& solution = session_.live.solution();
    if (solution && solution->gas)
        return true;
    warn(&session_.window, tr("No report"),
         tr("The gas cycle of this design could not be solved; a report needs its solution. The "
            "limits list says why."));
    return false;
}

ReportContent ReportCommands::content() const {
    const SolutionPointer& solution = session_.live.solution();
    const BandsModel& bands = views_.bands();
    std::shared_ptr<const ReportUnknowns> unknowns;
    if (bands.isOfUnknownsOf(solution->design)) {
        unknowns = std::make_shared<const ReportUnknowns>(
            ReportUnknowns{*bands.ensemble(), {}, bands.requirement()});
    }
    return {.solution = solution,
            .torqueCurve = {},
            .version = QCoreApplication::applicationVersion(),
            .date = {},
            .baseline = session_.baseline.solution(),
            .baselineName = session_.baseline.name(),
            .unknowns = std::move(unknowns),
            .verdict = views_.claims().verdictOn(solution)};
}

void ReportCommands::make(const QString& done, const std::function<void(ReportJob&)>& start) {
    constexpr int wholeWork = 1000;
    auto* progress = new QProgressDialog(tr("Computing the torque curve and drawing the pages"),
                                         tr("Cancel"), 0, wholeWork, &session_.window);
    progress->setObjectName(QStringLiteral("reportProgress"));
    progress->setWindowTitle(tr("Report"));
    progress->setAttribute(Qt::WA_DeleteOnClose);
    progress->setMinimumDuration(0);
    progress->setAutoClose(false);
    progress->setAutoReset(false);
    progress->setValue(0);
    auto* job = new ReportJob(progress); // ends with its dialog
    connect(job, &ReportJob::progressed, progress, [progress](double fraction) {
        progress->setValue(static_cast<int>(fraction * wholeWork));
    });
    connect(progress, &QProgressDialog::canceled, job, [this, job, progress] {
        job->cancel();
        session_.say(tr("Report cancelled; nothing was written"));
        progress->deleteLater();
    });
    connect(job, &ReportJob::written, this, [this, progress, done] {
        progress->deleteLater();
        session_.say(done);
    });
    connect(job, &ReportJob::failed, this, [this, progress](const QString& reason) {
        progress->deleteLater();
        warn(&session_.window, tr("Report not written"), reason);
    });
    progress->show();
    start(*job);
}

} // namespace lobewright::ui
