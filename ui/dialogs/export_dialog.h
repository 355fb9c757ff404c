#pragma once

#include "core/design/design.h"
#include "core/exchange/track_export.h"

#include <QDialog>
#include <QFutureWatcher>

class QComboBox;
class QDoubleSpinBox;
class QFormLayout;
class QLabel;
class QLineEdit;
class QProgressBar;
class QPushButton;

namespace lobewright::ui {

/// Writes one track of a design for CAD, the workshop or inspection. The work runs in the
/// background; closing the window stops it, and nothing is written then.
class ExportDialog : public QDialog {
    Q_OBJECT

  public:
    /// `name`: of the design, for the file names that are offered.
    ExportDialog(design::Design design, QString name, QWidget* parent = nullptr);
    ~ExportDialog() override;

    /// The file of the design, said in what is written; its name unless given.
    void setSource(const QString& source) { source_ = source; }
    /// What is asked for now; nothing when the radii are no list of numbers, which is then said.
    std::optional<exchange::ExportOptions> options();
    /// "mine-inlet.dxf": the name offered for what is asked for.
    QString proposedName() const;
    /// Starts writing what is asked for.
    void exportTo(const QString& file);
    void stop();
    bool isBusy() const { return watcher_.isRunning(); }

  Q_SIGNALS:
    void written(const QString& file);

  protected:
    void done(int result) override;

  private:
    void buildForm();
    void buildFoot();
    void kindChanged();
    void askForFile();
    void finished();
    void noteBusy(bool isBusy);
    void say(const QString& text, bool isWarning);
    const exchange::ExportWords& kind() const;

    design::Design design_;
    QString name_, source_, file_;
    QFutureWatcher<Problems> watcher_;
    QFormLayout* form_ = nullptr;
    QComboBox *track_ = nullptr, *kind_ = nullptr;
    QLabel *kindHelp_ = nullptr, *message_ = nullptr;
    QDoubleSpinBox *tolerance_ = nullptr, *step_ = nullptr, *cutter_ = nullptr;
    QLineEdit* radii_ = nullptr;
    QProgressBar* progress_ = nullptr;
    QPushButton *go_ = nullptr, *stop_ = nullptr;
};

} // namespace lobewright::ui
