#pragma once

#include "core/gas/models/settings.h"

#include <QByteArray>
#include <QDialog>

#include <optional>

class QDoubleSpinBox;
class QLabel;
class QPushButton;

namespace lobewright::ui {

class Document;
class TableFile;
class WheelPlot;

/// Measured points of a compressor in place of the wheel of the design: shows their lines before
/// the design is changed, in one undo step.
class WheelImportDialog : public QDialog {
    Q_OBJECT

  public:
    explicit WheelImportDialog(Document& document, QWidget* parent = nullptr);

    /// Reads a table; false when the file cannot be read, which is then said.
    bool openTable(const QString& file);
    /// The wheel as it would be; absent while the table cannot be used.
    const std::optional<gas::Wheel>& wheel() const { return wheel_; }
    WheelPlot& plot() const { return *plot_; }

  private:
    void read();
    void use();
    void say(const QString& text, bool isWarning);

    Document& document_;
    QByteArray table_;
    std::optional<gas::Wheel> wheel_;
    TableFile* file_;
    QDoubleSpinBox *pressure_, *temperature_;
    WheelPlot* plot_;
    QLabel* message_;
    QPushButton* use_ = nullptr;
};

} // namespace lobewright::ui
