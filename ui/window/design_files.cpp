#include "ui/window/design_files.h"

#include "core/exchange/solution_files.h"
#include "ui/base/core_text.h"
#include "ui/base/dialogs.h"
#include "ui/base/file_to_write.h"
#include "ui/base/last_folder.h"
#include "ui/base/plain_message.h"
#include "ui/document/load_design.h"
#include "ui/document/recent_files.h"
#include "ui/document/samples.h"
#include "ui/window/preferences.h"
#include "ui/window/safekeeping.h"
#include "ui/window/session.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QMainWindow>
#include <QMenu>

namespace lobewright::ui {

namespace {
const auto ending = QStringLiteral(".lobewright.json");
} // namespace

QString designFilter() {
    return DesignFiles::tr("Designs (*.lobewright.json);;JSON files (*.json);;All files (*)");
}

DesignFiles::DesignFiles(Session& session, Safekeeping& safekeeping, bool asksQuestions)
    : QObject(&session.window), session_(session), safekeeping_(safekeeping),
      recent_(new RecentFiles(&session.window)), asksQuestions_(asksQuestions) {
    connect(recent_, &RecentFiles::fileChosen, this, [this](const QString& file) {
        if (mayDiscard() && !open(file))
            recent_->remove(file);
    });
    connect(&safekeeping_, &Safekeeping::answered, this, &DesignFiles::goOnWith);
}

void addSamples(QMenu& menu, const std::function<void(int)>& choose) {
    menu.setToolTipsVisible(true);
    int index = 0;
    for (const Sample& sample : samples()) {
        QAction* action = menu.addAction(sampleText(sample.title), &menu,
                                         [choose, index = index++] { choose(index); });
        action->setToolTip(
            QStringLiteral("<p>%1</p>").arg(sampleText(sample.notes).toHtmlEscaped()));
    }
}

void DesignFiles::addOpening(QMenu& menu) {
    addSamples(*menu.addMenu(tr("New from &sample")), [this](int index) {
        if (mayDiscard())
            openSample(index);
    });
    menu.addAction(tr("&Open…"), QKeySequence::Open, this, &DesignFiles::askForFile);
    menu.addMenu(recent_);
}

void DesignFiles::addSaving(QMenu& menu) {
    session_.enableWhile(
        menu.addAction(tr("&Save"), QKeySequence::Save, this, &DesignFiles::save),
        [this] { return session_.document.isModified() || session_.document.path().isEmpty(); });
    menu.addAction(tr("Save &as…"), QKeySequence(tr("Ctrl+Shift+S")), this, &DesignFiles::saveAs);
    QAction* results =
        menu.addAction(tr("&Export results…"), this, &DesignFiles::askForResultsFolder);
    results->setStatusTip(tr("Channels over one revolution as CSV, all results as JSON"));
    session_.enableWhile(results, [this] { return session_.live.isSettled(); });
}

bool DesignFiles::open(const QString& file) {
    const auto loaded = loadDesign(&session_.window, file);
    if (!loaded)
        return false;
    if (const Problems problems = session_.document.open(file, loaded->design, loaded->digest);
        !problems.empty()) {
        showProblems(&session_.window, file, problems);
        return false;
    }
    Q_EMIT opened();
    noteFile(file);
    session_.say(tr("Opened %1").arg(QFileInfo(file).fileName()));
    return true;
}

void DesignFiles::noteFile(const QString& file) {
    noteFolder(file);
    recent_->add(file);
}

void DesignFiles::askForFile() {
    if (!mayDiscard())
        return;
    const QString file = QFileDialog::getOpenFileName(&session_.window, tr("Open a design"),
                                                      lastFolder(), designFilter());
    if (!file.isEmpty())
        open(file);
}

void DesignFiles::openSomething(const QString& file) {
    if ((asksQuestions_ && safekeeping_.offerRecovery()) || (!file.isEmpty() && open(file)))
        return;
    const QString last = RecentFiles::files().value(0);
    if (Preferences::load().opensLast && QFileInfo::exists(last) && open(last))
        return;
    openSample(0);
}

void DesignFiles::openSample(int index) {
    const Sample& sample = samples().at(static_cast<size_t>(index));
    auto design = loadSample(sample);
    if (!design) {
        showProblems(&session_.window, sample.title, design.problems());
        return;
    }
    session_.document.start(std::move(design).value(), sample.title);
    Q_EMIT sampleOpened();
}

bool DesignFiles::save() {
    const QString& file = session_.document.path();
    return file.isEmpty() ? saveAs() : saveTo(file);
}

bool DesignFiles::saveAs() {
    QString start = session_.document.path();
    if (start.isEmpty())
        start = lastFolder() + QLatin1Char('/') + fileStem(session_.document.name()) + ending;
    const QString file =
        fileToWrite(&session_.window, tr("Save the design as"), start, designFilter());
    return !file.isEmpty() && saveTo(file);
}

bool DesignFiles::saveTo(const QString& file) {
    Q_EMIT saving();
    const Document& document = session_.document;
    if (QFileInfo(file).absoluteFilePath() == document.path() && document.isFileChanged())
        return goOnWith(safekeeping_.askWhichStays());
    return write(file);
}

/// True: the design was saved.
bool DesignFiles::goOnWith(FileConflict::Answer answer) {
    switch (answer) {
    case FileConflict::Answer::overwrite:
        return write(session_.document.path());
    case FileConflict::Answer::saveAs:
        return saveAs();
    case FileConflict::Answer::reload:
        Q_EMIT reloaded();
        session_.say(tr("Reloaded; Undo brings back what was here"));
        return false;
    case FileConflict::Answer::cancel:
        break;
    }
    return false;
}

bool DesignFiles::write(const QString& file) {
    if (const auto problem = session_.document.save(file)) {
        warn(&session_.window, tr("Not saved"), coreText(problem->message));
        return false;
    }
    noteFile(file);
    session_.say(tr("Saved %1").arg(QFileInfo(file).fileName()));
    Q_EMIT saved();
    return true;
}

void DesignFiles::askForResultsFolder() {
    const QString folder = QFileDialog::getExistingDirectory(
        &session_.window, tr("Folder for the results"), lastFolder());
    if (folder.isEmpty())
        return;
    const QStringList files{folder + QStringLiteral("/summary.json"),
                            folder + QStringLiteral("/channels.csv")};
    if (mayReplace(&session_.window, files))
        exportResults(folder);
}

void DesignFiles::exportResults(const QString& folder) {
    if (const auto problem =
            exchange::writeSolution(*session_.live.solution(), folder.toStdString())) {
        warn(&session_.window, tr("Not exported"), coreText(problem->message));
        return;
    }
    session_.say(tr("channels.csv and summary.json written to %1").arg(folder));
}

bool DesignFiles::mayDiscard() {
    if (!session_.document.isModified() || !asksQuestions_)
        return true;
    PlainMessage box(QMessageBox::Question, tr("Unsaved changes"),
                     tr("“%1” has unsaved changes.").arg(session_.document.name()),
                     QMessageBox::Save | QMessageBox::Discard | QMessageBox::Cancel,
                     &session_.window);
    box.setDefaultButton(QMessageBox::Save);
    const int answer = box.exec();
    if (answer == QMessageBox::Save)
        return save();
    return answer == QMessageBox::Discard;
}

} // namespace lobewright::ui
