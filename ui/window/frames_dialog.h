#pragma once

#include "ui/plots/base/turn_cursor.h"
#include "ui/scene/section/frame_export.h"
#include "ui/window/views.h"

#include <QDialog>

class QComboBox;
class QLabel;
class QProgressBar;
class QPushButton;
class QSpinBox;

namespace lobewright::ui {

/// Writes a drawing as numbered pictures over one turn of the shaft, to be joined into a loop.
/// Closing or Stop ends the work, and nothing of it is left.
class FramesDialog : public QDialog {
    Q_OBJECT

  public:
    /// `name`: of the design, for the file names. `view`: key of the drawing proposed, empty or of
    /// none: the first.
    FramesDialog(Views& views, TurnCursor& cursor, const QString& name, const QString& view,
                 QWidget* parent = nullptr);

    /// Starts writing to a folder, which must exist.
    void writeTo(const QString& folder);

  Q_SIGNALS:
    void written(int frames);

  protected:
    void done(int result) override;

  private:
    void buildForm();
    void askForFolder();
    /// What is asked for now, in this folder.
    FrameExport wantedIn(const QString& folder) const;
    void noteBusy(bool isBusy);

    Views& views_;
    TurnCursor& cursor_;
    QString name_;
    bool busy_ = false, stopWanted_ = false;
    QComboBox *drawing_ = nullptr, *size_ = nullptr;
    QSpinBox* frames_ = nullptr;
    QLabel* message_ = nullptr;
    QProgressBar* progress_ = nullptr;
    QPushButton *go_ = nullptr, *stop_ = nullptr;
};

} // namespace lobewright::ui
