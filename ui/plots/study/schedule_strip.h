#pragma once

#include "core/design/design.h"
#include "core/design/fields.h"
#include "ui/editing/edit.h"

#include <QWidget>

class QComboBox;
class QLabel;
class QToolButton;

namespace lobewright::ui {

class ScheduleCanvas;

/// The inputs of a design that follow the shaft speed, one at a time, as a curve with points to be
/// dragged; lies below a plot against speed and shares its axis. Hidden where nothing follows it.
class ScheduleStrip : public QWidget {
    Q_OBJECT

  public:
    explicit ScheduleStrip(QWidget* parent = nullptr);

    void show(const design::Design& design);
    using QWidget::show;
    /// Speeds shown [1/min], and how far the axes of the plot above stand off its edges [px].
    void alignTo(double from, double to, int left, int right);
    /// JSON pointer of the input shown; empty: none.
    std::string input() const;
    void showInput(const std::string& input);
    ScheduleCanvas& canvas() const { return *canvas_; }

  Q_SIGNALS:
    void edited(const lobewright::ui::Edit& edit);
    void editFinished();
    /// The person wants the best value at every speed of this input.
    void searchWanted(const QString& input);

  private:
    void fillInputs();
    void removeSchedule();

    design::Design design_;
    QComboBox* inputs_;
    QLabel* readout_;
    QToolButton *add_, *remove_, *best_, *drop_;
    ScheduleCanvas* canvas_;
};

} // namespace lobewright::ui
