#pragma once

#include "core/study/schedule_search.h"
#include "ui/base/background_work.h"

#include <QDialog>

#include <optional>
#include <vector>

class QComboBox;
class QCPGraph;
class QCustomPlot;
class QLabel;
class QLineEdit;
class QPushButton;
class QSpinBox;
class QTableWidget;

namespace lobewright::ui {

class EndLabels;

class Document;
class SearchLine;

/// Lets an input follow the shaft speed: finds the value with the highest torque at each speed
/// within limits on knock and peak pressure, shows it beside the fixed value, and applies it as one
/// undo step; or begins with a level schedule to be drawn by hand.
class ScheduleDialog : public QDialog {
    Q_OBJECT

  public:
    /// `input`: JSON pointer of the input to begin with; `from`, `to`: speeds [1/min].
    ScheduleDialog(Document& document, const std::string& input, std::pair<double, double> speeds,
                   QWidget* parent = nullptr);

    void search();
    bool isBusy() const { return work_.isBusy(); }
    const std::optional<study::ScheduleAnswer>& answer() const { return answer_; }

  private:
    void buildForm(QWidget& form, const std::string& input, std::pair<double, double> speeds);
    QWidget* buildResults();
    QLineEdit* addNumber(QWidget& line, const char* name, const QString& label, double value);
    const design::Field& field() const;
    void proposeRange();
    std::optional<study::ScheduleGoal> goal();
    void takeUp(Result<study::ScheduleAnswer> answer);
    void showRows();
    void showCurves();
    void nameCurves();
    void applyTones();
    void apply(const design::Schedule& schedule, const QString& text);
    void drawByHand();

    Document& document_;
    std::vector<design::Field> inputs_;
    std::optional<study::ScheduleAnswer> answer_;
    BackgroundWork work_;
    QComboBox* input_ = nullptr;
    QLineEdit *from_ = nullptr, *to_ = nullptr, *slowest_ = nullptr, *fastest_ = nullptr,
              *knock_ = nullptr, *pressure_ = nullptr;
    QLabel* unit_ = nullptr;
    QSpinBox* count_ = nullptr;
    QTableWidget* rows_ = nullptr;
    QCustomPlot* plot_ = nullptr;
    QCPGraph *fixedCurve_ = nullptr, *bestCurve_ = nullptr;
    EndLabels* names_ = nullptr; ///< of the curves
    SearchLine* line_ = nullptr;
    QPushButton *apply_ = nullptr, *draw_ = nullptr;
};

} // namespace lobewright::ui
