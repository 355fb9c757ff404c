#pragma once

#include "core/exchange/lift_import.h"

#include <QDialog>
#include <QFutureWatcher>
#include <QTimer>

#include <optional>

class QComboBox;
class QDoubleSpinBox;
class QFormLayout;
class QLabel;
class QPushButton;
class QSpinBox;

namespace lobewright::ui {

class Document;
class LiftImportPlot;
class TableFile;

/// Turns a lift table into knots of one track and shows what is left between the two before the
/// design is changed. Fits in the background whenever a setting changes.
class LiftImportDialog : public QDialog {
    Q_OBJECT

  public:
    explicit LiftImportDialog(Document& document, QWidget* parent = nullptr);

    /// Reads a table; false when the file cannot be read, which is then said.
    bool openTable(const QString& file);
    /// A table that was made elsewhere: its name, the track that it is of, and how close the fit
    /// shall come [m].
    void takeTable(const QByteArray& table, const QString& name, End end, double tolerance);
    /// The fit of the present settings; absent while it runs or when the table cannot be used.
    const std::optional<exchange::ImportedLift>& fit() const { return fit_; }
    bool isBusy() const { return watcher_.isRunning() || settle_.isActive(); }

  private:
    using Answer = Result<exchange::ImportedLift>;

    QFormLayout* buildForm();
    void refit();
    void fitted();
    void useFit();
    void showFit();
    QString noiseWords() const;
    void say(const QString& text, bool isWarning);

    Document& document_;
    QByteArray table_;
    std::optional<exchange::ImportedLift> fit_;
    bool isToleranceOwn_ = false; ///< set by hand; else as proposed for each table
    QFutureWatcher<Answer> watcher_;
    QTimer settle_; ///< lets a person finish typing
    TableFile* file_ = nullptr;
    QComboBox* track_ = nullptr;
    QSpinBox *lobes_ = nullptr, *knots_ = nullptr;
    QDoubleSpinBox* tolerance_ = nullptr;
    LiftImportPlot* plot_ = nullptr;
    QLabel* message_ = nullptr;
    QPushButton* use_ = nullptr;
};

} // namespace lobewright::ui
