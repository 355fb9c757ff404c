#include "ui/window/safekeeping.h"

#include "core/design/file.h"
#include "ui/base/core_text.h"
#include "ui/base/faults.h"
#include "ui/base/plain_message.h"
#include "ui/window/hint_bar.h"

#include <QDir>
#include <QFileInfo>
#include <QLabel>
#include <QLocale>
#include <QPushButton>

namespace lobewright::ui {

namespace {

/// The notes of a copy may be missing.
QString nameOf(const Autosave::Left& left) {
    return left.name.isEmpty() ? QFileInfo(left.file).fileName() : left.name;
}

} // namespace

Safekeeping::Safekeeping(Document& document, const QString& folder, QWidget& window, HintBar& hint,
                         QLabel& state)
    : document_(document), window_(window), hint_(hint), state_(state),
      autosave_(document, folder) {
    state_.setTextFormat(Qt::PlainText);
    connect(&autosave_, &Autosave::problemChanged, this, &Safekeeping::showRecoveryState);
    connect(&document_, &Document::fileChanged, this, &Safekeeping::noteFileChange);
    connect(&Faults::instance(), &Faults::happened, this, &Safekeeping::noteFault);
    showRecoveryState();
}

void Safekeeping::showRecoveryState() {
    const auto& problem = autosave_.problem();
    state_.setVisible(problem.has_value());
    if (!problem)
        return;
    const QString text =
        tr("No copies of unsaved work are kept: %1. What is not saved is lost if the program or "
           "the computer fails.")
            .arg(coreText(problem->message));
    state_.setText(tr("Recovery off"));
    state_.setToolTip(plainToolTip(text));
    state_.setAccessibleDescription(text);
    hint_.say(text, {}, {});
}

bool Safekeeping::offerRecovery() {
    for (const Autosave::Left& left : autosave_.leftovers()) {
        auto design = design::loadDesign(left.file.toStdString());
        if (design) {
            if (offer(left, *design))
                return true;
            continue;
        }
        const QString place = QDir::toNativeSeparators(Autosave::setAside(left));
        warn(&window_, tr("Unsaved work that cannot be read"),
             tr("A copy of unsaved work (“%1”, %2) cannot be read by this version of the program: "
                "%3\n\nIt was not deleted. It is kept as %4")
                 .arg(nameOf(left), QLocale().toString(left.when, QLocale::ShortFormat),
                      coreText(design.problems().front().message), place));
    }
    return false;
}

bool Safekeeping::offer(const Autosave::Left& left, const design::Design& design) {
    PlainMessage box(QMessageBox::Question, tr("Unsaved work found"),
                     tr("The program did not end properly while “%1” was being changed. "
                        "The changes up to %2 are still there.")
                         .arg(nameOf(left), QLocale().toString(left.when, QLocale::ShortFormat)),
                     QMessageBox::NoButton, &window_);
    auto* recover = box.addButton(tr("&Recover them"), QMessageBox::AcceptRole);
    auto* discard = box.addButton(tr("&Discard them"), QMessageBox::DestructiveRole);
    box.addButton(tr("Ask again &later"), QMessageBox::RejectRole);
    box.exec();
    if (box.clickedButton() == discard)
        Autosave::discard(left);
    if (box.clickedButton() != recover)
        return false;
    document_.recover(design, left.name, left.original, left.digest);
    autosave_.update();
    if (!autosave_.problem()) // else it is the only copy there is
        Autosave::discard(left);
    return true;
}

FileConflict::Answer Safekeeping::askWhichStays() {
    if (!document_.isFileChanged())
        return FileConflict::Answer::overwrite;
    const auto theirs = design::loadDesign(document_.path().toStdString());
    if (theirs && *theirs == document_.design())
        return FileConflict::Answer::overwrite;
    FileConflict conflict(document_.path(), document_.design(), theirs, &window_);
    const auto answer = conflict.ask();
    if (answer == FileConflict::Answer::reload)
        document_.reload(*theirs);
    return answer;
}

void Safekeeping::noteFileChange() {
    const auto theirs = design::loadDesign(document_.path().toStdString());
    if (theirs && *theirs == document_.design()) {
        document_.acceptFile();
        return;
    }
    hint_.say(tr("“%1” was changed by another window or program. This window still shows the "
                 "design as it was here.")
                  .arg(QFileInfo(document_.path()).fileName()),
              {}, {{tr("Compare…"), [this] { Q_EMIT answered(askWhichStays()); }}});
}

void Safekeeping::noteFault(const Problem& fault) {
    autosave_.update();
    // A fault in painting comes again with every picture.
    if (fault.message == saidFault_ && saidRevision_ == document_.revision())
        return;
    saidFault_ = fault.message;
    saidRevision_ = document_.revision();
    const QString kept = !document_.isModified() ? tr("Nothing is unsaved.")
                         : autosave_.problem()
                             ? tr("Save your work now: no copy for recovery could be written.")
                             : tr("A copy of your unsaved work was written for recovery.");
    auto* box = new PlainMessage(
        QMessageBox::Critical, tr("Program error"),
        tr("An internal error stopped one part of the program: %1\n\nThe design is unchanged and "
           "the program goes on. %2 If it happens again, undo the last change.")
            .arg(coreText(fault.message), kept),
        QMessageBox::Ok, &window_);
    box->setObjectName(QStringLiteral("fault"));
    box->setAttribute(Qt::WA_DeleteOnClose);
    box->open();
}

} // namespace lobewright::ui
