#include "ui/workspace/hint_bar.h"
#include "ui/workspace/main_window.h"

#include <QRegularExpression>
#include <QSettings>

namespace lobewright::ui {

namespace {

const auto seenKey = QStringLiteral("samples/seen");

/// The sentence that says what the sample is, after the one that says that it is invented.
QString firstWords(const QString& notes) {
    static const QRegularExpression ends(QStringLiteral("(?<=[.;:])\\s+"));
    return notes.split(ends, Qt::SkipEmptyParts).value(1, notes);
}

} // namespace

void MainWindow::introduceSample() {
    const QString title = QString::fromStdString(document_.design().title);
    const QString notes = QString::fromStdString(document_.design().notes);
    sample_ = SampleWords{document_.design().title, document_.design().notes};
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
