#include "ui/window/sample_hints.h"

#include "ui/document/document.h"
#include "ui/window/hint_bar.h"

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

SampleHints::SampleHints(Document& document, HintBar& hint, bool speaksUp)
    : QObject(&hint), document_(document), hint_(hint), speaksUp_(speaksUp),
      greets_(speaksUp && !QSettings().value(greetedKey, false).toBool()) {}

void SampleHints::greet() {
    QSettings().setValue(greetedKey, true);
    hint_.say(tr("New here? Drag a diamond on the lift curve or a port edge in the section: every "
                 "plot follows. F5 turns the shaft, Ctrl+1 to Ctrl+0 change the arrangement, F1 "
                 "explains the pane you are in. Help > First hint brings this line back."),
              {}, {{tr("First steps"), [this] { Q_EMIT firstStepsWanted(); }}});
}

void SampleHints::greetOnce() {
    if (greets_)
        greet();
}

void SampleHints::introduceSample() {
    const QString title = QString::fromStdString(document_.design().title);
    const QString notes = QString::fromStdString(document_.design().notes);
    sample_ = document_.design().title;
    if (std::exchange(greets_, false)) { // opening the sample put the line away
        greet();
        return;
    }
    QSettings settings;
    QStringList seen = settings.value(seenKey).toStringList();
    if (!speaksUp_ || notes.isEmpty() || seen.contains(title)) {
        hint_.hide();
        return;
    }
    settings.setValue(seenKey, seen << title);
    hint_.say(firstWords(notes), notes,
              {{tr("What to look at"), [this] { Q_EMIT fieldWanted(QStringLiteral("/notes")); }}});
}

void SampleHints::offerOwnTitle() {
    const design::Design& design = document_.design();
    const bool isStillSample = sample_ && design.title == *sample_;
    if (!isStillSample)
        return;
    const std::string name = document_.name().toStdString();
    hint_.say(tr("Saved. Title and notes are still the sample's."), {},
              {{tr("Title “%1”, notes empty").arg(document_.name()),
                [this, name] {
                    Edit edit;
                    edit.text = tr("Title and notes of its own");
                    edit.changes = {{"/title", name}, {"/notes", std::string()}};
                    if (document_.apply(edit).empty() && !document_.path().isEmpty())
                        Q_EMIT saveWanted();
                }},
               {tr("Write them…"), [this] { Q_EMIT fieldWanted(QStringLiteral("/title")); }}});
    sample_.reset(); // offered once
}

void SampleHints::forget() {
    sample_.reset();
    hint_.hide();
}

} // namespace lobewright::ui
