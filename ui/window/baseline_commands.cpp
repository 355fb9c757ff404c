#include "ui/window/baseline_commands.h"

#include "core/design/file.h"
#include "ui/base/core_text.h"
#include "ui/base/dialogs.h"
#include "ui/base/last_folder.h"
#include "ui/document/samples.h"
#include "ui/window/design_files.h"
#include "ui/window/session.h"

#include <QFileDialog>
#include <QFileInfo>
#include <QMainWindow>
#include <QMenu>

#include <utility>

namespace lobewright::ui {

namespace {} // namespace

BaselineCommands::BaselineCommands(Session& session) : QObject(&session.window), session_(session) {
    connect(&session_.live, &LiveSolution::solved, this, [this] {
        if (session_.live.isSettled() && std::exchange(isWanted_, false))
            keep();
    });
    connect(&session_.baseline, &Baseline::failed, this,
            [this](const Problems& problems) { session_.say(coreText(problems.front().message)); });
}

void BaselineCommands::addTo(QMenu& menu) {
    const auto compares = [this] { return session_.baseline.solution() != nullptr; };
    session_.enableWhile(menu.addAction(tr("&Keep this design as baseline"),
                                        QKeySequence(tr("Ctrl+B")), this, &BaselineCommands::keep),
                         [this] { return session_.live.isSettled() || session_.live.isBusy(); });
    menu.addAction(tr("&Open a file as baseline…"), this, &BaselineCommands::openFile);
    QMenu* sampleMenu = menu.addMenu(tr("A &sample as baseline"));
    sampleMenu->setObjectName(QStringLiteral("sampleBaselines"));
    addSamples(*sampleMenu, [this](int index) {
        const Sample& sample = samples()[static_cast<size_t>(index)];
        if (const auto design = loadSample(sample))
            session_.baseline.keep(*design, sampleText(sample.title));
    });
    session_.enableWhile(
        menu.addAction(tr("&Exchange design and baseline"), this, &BaselineCommands::exchange),
        compares);
    menu.addSeparator();
    session_.enableWhile(
        menu.addAction(tr("&Forget the baseline"), &session_.baseline, &Baseline::forget),
        compares);
}

void BaselineCommands::keep() {
    isWanted_ = !session_.live.isSettled();
    if (isWanted_)
        return;
    session_.baseline.keep(session_.live.solution(), session_.document.name());
    session_.say(tr("Kept as baseline"));
}

void BaselineCommands::openFile() {
    const QString file = QFileDialog::getOpenFileName(&session_.window, tr("Open as baseline"),
                                                      lastFolder(), designFilter());
    if (file.isEmpty())
        return;
    auto design = design::loadDesign(file.toStdString());
    if (!design) {
        showProblems(&session_.window, file, design.problems());
        return;
    }
    session_.baseline.keep(*design, QFileInfo(file).fileName());
}

void BaselineCommands::exchange() {
    const SolutionPointer other = session_.baseline.solution();
    Edit edit;
    edit.text = tr("Exchange with baseline");
    edit.replacement = other->design;
    if (session_.live.solution())
        session_.baseline.keep(session_.live.solution(), session_.document.name());
    session_.document.apply(edit);
}

} // namespace lobewright::ui
