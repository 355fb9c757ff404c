#pragma once

#include "core/design/design.h"
#include "core/result.h"

#include <QDialog>

class QTreeWidget;

namespace lobewright::ui {

/// One input that two designs state differently, in words.
struct InputDifference {
    QString input, mine, theirs; ///< an input that only one of them has is empty in the other
};

/// In file order.
std::vector<InputDifference> differences(const design::Design& mine, const design::Design& theirs);

/// The file of a document holds something else than when it was read: shows what differs and asks
/// which of the two shall stay.
class FileConflict : public QDialog {
    Q_OBJECT

  public:
    enum class Answer { cancel, overwrite, saveAs, reload };

    /// `theirs`: what the file holds now, or why it is no design.
    FileConflict(const QString& file, const design::Design& mine,
                 const Result<design::Design>& theirs, QWidget* parent = nullptr);
    /// Runs the dialog.
    Answer ask();

  private:
    QTreeWidget* buildList(const std::vector<InputDifference>& all);
    void buildButtons(bool canReload);

    Answer answer_ = Answer::cancel;
};

} // namespace lobewright::ui
