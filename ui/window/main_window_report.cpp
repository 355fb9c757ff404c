#include "ui/base/file_to_write.h"
#include "ui/base/last_folder.h"
#include "ui/base/plain_message.h"
#include "ui/claims/claims_pane.h"
#include "ui/plots/study/bands_model.h"
#include "ui/report/report_job.h"
#include "ui/window/main_window.h"

#include <QCoreApplication>
#include <QDir>
#include <QMenu>
#include <QProgressDialog>
#include <QStatusBar>

namespace lobewright::ui {

namespace {
constexpr int messageTime = 8000; // [ms]
} // namespace

void MainWindow::addReportAction(QMenu& menu) {
    report_ =
        menu.addAction(tr("&Report…"), QKeySequence(tr("Ctrl+R")), this, &MainWindow::askForReport);
    report_->setStatusTip(
        tr("A PDF with drawing, results, plots, limits, assumptions and sources"));
}

void MainWindow::askForReport() {
    const QString file =
        fileToWrite(this, tr("Write a report"),
                    lastFolder() + QLatin1Char('/') + fileStem(document_.name()) + ".pdf",
                    tr("Report (*.pdf)"));
    if (!file.isEmpty())
        writeReport(file);
}

bool MainWindow::reportIsPossible() {
    if (solution_ && solution_->gas)
        return true;
    warn(this, tr("No report"),
         tr("The gas cycle of this design could not be solved; a report needs its solution. The "
            "limits list says why."));
    return false;
}

ReportContent MainWindow::reportContent() const {
    const BandsModel& bands = views_->bands();
    std::shared_ptr<const ReportUnknowns> unknowns;
    if (bands.isOfUnknownsOf(solution_->design))
        unknowns = std::make_shared<const ReportUnknowns>(
            ReportUnknowns{*bands.ensemble(), {}, bands.requirement()});
    std::optional<study::VerdictPage> verdict;
    if (const auto* claims =
            dynamic_cast<ClaimsPane*>(views_->find(QStringLiteral("claims"))->widget))
        verdict = claims->verdictOn(solution_);
    return {.solution = solution_,
            .torqueCurve = {},
            .version = QCoreApplication::applicationVersion(),
            .date = {},
            .baseline = baseline_.solution(),
            .baselineName = baseline_.name(),
            .unknowns = std::move(unknowns),
            .verdict = std::move(verdict)};
}

void MainWindow::writeReport(const QString& file) {
    if (!reportIsPossible())
        return;
    makeReport(tr("Report written to %1").arg(file),
               [this, file](ReportJob& job) { job.start(reportContent(), file); });
}

void MainWindow::makeReport(const QString& done, const std::function<void(ReportJob&)>& start) {
    constexpr int wholeWork = 1000;
    auto* progress = new QProgressDialog(tr("Computing the torque curve and drawing the pages"),
                                         tr("Cancel"), 0, wholeWork, this);
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
        statusBar()->showMessage(tr("Report cancelled; nothing was written"), messageTime);
        progress->deleteLater();
    });
    connect(job, &ReportJob::written, this, [this, progress, done] {
        progress->deleteLater();
        statusBar()->showMessage(done, messageTime);
    });
    connect(job, &ReportJob::failed, this, [this, progress](const QString& reason) {
        progress->deleteLater();
        warn(this, tr("Report not written"), reason);
    });
    progress->show();
    start(*job);
}

} // namespace lobewright::ui
