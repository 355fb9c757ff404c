#include "ui/help/help_pages.h"
#include "ui/window/hint_bar.h"
#include "ui/window/main_window.h"

#include <QActionGroup>
#include <QRegularExpression>
#include <QSettings>

#include <utility>

namespace lobewright::ui {

namespace {

const auto seenKey = QStringLiteral("samples/seen");
const auto greetedKey = QStringLiteral("window/hintSeen");

/// The sentence that says what the sample is, after the one that says that it is invented.
QString firstWords(const QString& notes) {
    static const QRegularExpression ends(QStringLiteral("(?<=[.!?])\\s+"));
    return notes.split(ends, Qt::SkipEmptyParts).value(1, notes);
}

} // namespace

bool MainWindow::isFirstStart() {
    return !QSettings().value(greetedKey, false).toBool();
}

void MainWindow::greet() {
    QSettings().setValue(greetedKey, true);
    hint_->say(
        tr("New here? Drag a diamond on the lift curve or a port edge in the section: every "
           "plot follows. F5 turns the shaft, Ctrl+1 to Ctrl+0 change the arrangement, F1 "
           "explains the pane you are in. Help > First hint brings this line back."),
        {}, {{tr("First steps"), [this] {
                  const QAction* arrangement = arrangementGroup_->checkedAction();
                  openHelp(firstStepsIn(arrangement ? arrangement->data().toString() : QString()));
              }}});
}

void MainWindow::introduceSample() {
    const QString title = QString::fromStdString(document_.design().title);
    const QString notes = QString::fromStdString(document_.design().notes);
    sample_ = SampleWords{document_.design().title, document_.design().notes};
    if (std::exchange(greets_, false)) { // opening the sample put the line away
        greet();
        return;
    }
    QSettings settings;
    QStringList seen = settings.value(seenKey).toStringList();
    if (!options_.asksQuestions || notes.isEmpty() || seen.contains(title)) {
        hint_->hide();
        return;
    }
    settings.setValue(seenKey, seen << title);
    hint_->say(firstWords(notes), notes,
               {{tr("What to look at"), [this] { goToField(QStringLiteral("/notes")); }}});
}

void MainWindow::offerOwnTitle() {
    const design::Design& design = document_.design();
    const bool isStillSample = sample_ && design.title == sample_->title;
    if (!isStillSample)
        return;
    const std::string name = document_.name().toStdString();
    hint_->say(tr("Saved. Title and notes are still the sample's."), {},
               {{tr("Title “%1”, notes empty").arg(document_.name()),
                 [this, name] {
                     Edit edit;
                     edit.text = tr("Title and notes of its own");
                     edit.changes = {{"/title", name}, {"/notes", std::string()}};
                     if (document_.apply(edit).empty() && !document_.path().isEmpty())
                         saveTo(document_.path());
                 }},
                {tr("Write them…"), [this] { goToField(QStringLiteral("/title")); }}});
    sample_.reset(); // offered once
}

} // namespace lobewright::ui
