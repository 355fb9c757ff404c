#pragma once

#include "ui/document/autosave.h"
#include "ui/window/file_conflict.h"

#include <QObject>

class QLabel;
class QWidget;

namespace lobewright::ui {

class HintBar;

/// Keeps the work of a window: copies for recovery, what a crash left behind, a file that somebody
/// else writes to, mistakes of the program itself. Says what happened and asks what to do.
class Safekeeping : public QObject {
    Q_OBJECT

  public:
    /// `state` is shown while no copies can be kept.
    Safekeeping(Document& document, const QString& folder, QWidget& window, HintBar& hint,
                QLabel& state);

    Autosave& autosave() { return autosave_; }
    /// Offers what a crash left; true when the document is one of these now. What cannot be read
    /// is set aside and named.
    bool offerRecovery();
    /// The file may hold something else than it did when it was read: which of both shall stay?
    /// `overwrite` without asking when it holds the same as this window, or is as it was.
    FileConflict::Answer askWhichStays();

  Q_SIGNALS:
    /// Of a change of the file that was noticed while nothing was being saved.
    void answered(lobewright::ui::FileConflict::Answer answer);

  private:
    bool offer(const Autosave::Left& left, const design::Design& design);
    void showRecoveryState();
    void noteFileChange();
    void noteFault(const Problem& fault);

    Document& document_;
    QWidget& window_;
    HintBar& hint_;
    QLabel& state_;
    Autosave autosave_;
    Message saidFault_;        ///< said already
    quint64 saidRevision_ = 0; ///< of this revision of the design
};

} // namespace lobewright::ui
