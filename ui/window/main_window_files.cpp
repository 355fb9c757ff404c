#include "core/design/file.h"
#include "core/exchange/solution_files.h"
#include "ui/base/core_text.h"
#include "ui/base/dialogs.h"
#include "ui/base/file_to_write.h"
#include "ui/base/last_folder.h"
#include "ui/base/plain_message.h"
#include "ui/dialogs/export_dialog.h"
#include "ui/document/load_design.h"
#include "ui/document/recent_files.h"
#include "ui/document/samples.h"
#include "ui/window/field_keys.h"
#include "ui/window/hint_bar.h"
#include "ui/window/main_window.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QPushButton>
#include <QStatusBar>

namespace lobewright::ui {

namespace {

constexpr int messageTime = 5000; // [ms]
const auto ending = QStringLiteral(".lobewright.json");

QString filter() {
    return MainWindow::tr("Designs (*.lobewright.json);;JSON files (*.json);;All files (*)");
}

} // namespace

bool MainWindow::openFile(const QString& file) {
    const auto loaded = loadDesign(this, file);
    if (!loaded)
        return false;
    if (const Problems problems = document_.open(file, loaded->design, loaded->digest);
        !problems.empty()) {
        showProblems(this, file, problems);
        return false;
    }
    sample_.reset();
    hint_->hide();
    noteFolder(file);
    recent_->add(file);
    statusBar()->showMessage(tr("Opened %1").arg(QFileInfo(file).fileName()), messageTime);
    return true;
}

void MainWindow::askForFile() {
    if (!mayDiscard())
        return;
    const QString file =
        QFileDialog::getOpenFileName(this, tr("Open a design"), lastFolder(), filter());
    if (!file.isEmpty())
        openFile(file);
}

void MainWindow::openSomething(const QString& file) {
    if ((options_.asksQuestions && safekeeping_->offerRecovery()) ||
        (!file.isEmpty() && openFile(file)))
        return;
    const QString last = RecentFiles::files().value(0);
    if (Preferences::load().opensLast && QFileInfo::exists(last) && openFile(last))
        return;
    openSample(0);
}

void MainWindow::openSample(int index) {
    const Sample& sample = samples().at(static_cast<size_t>(index));
    auto design = loadSample(sample);
    if (!design) {
        showProblems(this, sample.title, design.problems());
        return;
    }
    document_.start(std::move(design).value(), sample.title);
    introduceSample();
}

bool MainWindow::save() {
    return document_.path().isEmpty() ? saveAs() : saveTo(document_.path());
}

bool MainWindow::saveAs() {
    QString start = document_.path();
    if (start.isEmpty())
        start = lastFolder() + QLatin1Char('/') + fileStem(document_.name()) + ending;
    const QString file = fileToWrite(this, tr("Save the design as"), start, filter());
    return !file.isEmpty() && saveTo(file);
}

bool MainWindow::saveTo(const QString& file) {
    fieldKeys_->commit();
    if (QFileInfo(file).absoluteFilePath() == document_.path() && document_.isFileChanged())
        return goOnWith(safekeeping_->askWhichStays());
    return write(file);
}

/// True: the design was saved.
bool MainWindow::goOnWith(FileConflict::Answer answer) {
    switch (answer) {
    case FileConflict::Answer::overwrite:
        return write(document_.path());
    case FileConflict::Answer::saveAs:
        return saveAs();
    case FileConflict::Answer::reload:
        hint_->hide();
        statusBar()->showMessage(tr("Reloaded; Undo brings back what was here"), messageTime);
        return false;
    case FileConflict::Answer::cancel:
        break;
    }
    return false;
}

bool MainWindow::write(const QString& file) {
    if (const auto problem = document_.save(file)) {
        warn(this, tr("Not saved"), coreText(problem->message));
        return false;
    }
    noteFolder(file);
    recent_->add(file);
    statusBar()->showMessage(tr("Saved %1").arg(QFileInfo(file).fileName()), messageTime);
    offerOwnTitle();
    return true;
}

void MainWindow::exportTrack() {
    ExportDialog dialog(document_.design(), document_.name(), this);
    QString source =
        document_.path().isEmpty() ? document_.name() : QFileInfo(document_.path()).fileName();
    if (document_.isModified())
        source += QStringLiteral(" (changed since it was saved)");
    dialog.setSource(source);
    dialog.exec();
}

void MainWindow::askForResultsFolder() {
    const QString folder =
        QFileDialog::getExistingDirectory(this, tr("Folder for the results"), lastFolder());
    if (folder.isEmpty())
        return;
    const QStringList files{folder + QStringLiteral("/summary.json"),
                            folder + QStringLiteral("/channels.csv")};
    if (mayReplace(this, files))
        exportResults(folder);
}

bool MainWindow::exportResults(const QString& folder) {
    if (const auto problem = exchange::writeSolution(*solution_, folder.toStdString())) {
        warn(this, tr("Not exported"), coreText(problem->message));
        return false;
    }
    statusBar()->showMessage(tr("channels.csv and summary.json written to %1").arg(folder),
                             messageTime);
    return true;
}

bool MainWindow::mayDiscard() {
    if (!document_.isModified() || !options_.asksQuestions)
        return true;
    PlainMessage box(QMessageBox::Question, tr("Unsaved changes"),
                     tr("“%1” has unsaved changes.").arg(document_.name()),
                     QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel, this);
    box.setDefaultButton(QMessageBox::Save);
    const int answer = box.exec();
    if (answer == QMessageBox::Save)
        return save();
    return answer == QMessageBox::Discard;
}

void MainWindow::keepBaseline() {
    if (!isSettled()) {
        baselineWanted_ = true; // as soon as the present design is solved
        return;
    }
    baseline_.keep(solution_, document_.name());
    statusBar()->showMessage(tr("Kept as baseline"), messageTime);
}

void MainWindow::openBaseline() {
    const QString file =
        QFileDialog::getOpenFileName(this, tr("Open as baseline"), lastFolder(), filter());
    if (file.isEmpty())
        return;
    auto design = design::loadDesign(file.toStdString());
    if (!design) {
        showProblems(this, file, design.problems());
        return;
    }
    baseline_.keep(*design, QFileInfo(file).fileName());
}

void MainWindow::swapWithBaseline() {
    const SolutionPointer other = baseline_.solution();
    Edit edit;
    edit.text = tr("Exchange with baseline");
    edit.replacement = other->design;
    if (solution_)
        baseline_.keep(solution_, document_.name());
    document_.apply(edit);
}

} // namespace lobewright::ui
