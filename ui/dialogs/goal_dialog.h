#pragma once

#include "core/study/solve_for.h"
#include "ui/base/background_work.h"
#include "ui/base/shown.h"

#include <QDialog>

#include <vector>

class QComboBox;
class QLabel;
class QLineEdit;
class QListWidget;
class QPushButton;
class QTableWidget;

namespace lobewright::ui {

class Document;
class SearchLine;

/// "Make this…": finds the value of one input that gives a result its target, shows every solution
/// in the range and what else would change, and applies one of them as one undo step.
class GoalDialog : public QDialog {
    Q_OBJECT

  public:
    /// `figure`: name of the result to be made; the solution must be of the document's design.
    GoalDialog(Document& document, SolutionPointer solution, const QString& figure,
               QWidget* parent = nullptr);

    /// Starts the search with what is entered.
    void search();
    bool isBusy() const { return work_.isBusy(); }

  private:
    struct Answer {
        Result<study::GoalAnswer> answer;
        std::vector<solution::Solution> made; ///< one for each solution of the goal
    };

    void buildForm(QWidget& form, const QString& figure);
    void fillResults(const QString& first);
    void fillInputs();
    void proposeRange();
    void takeUp(Answer answer);
    const solution::Figure& figure() const;
    void proposeTarget();
    void showAnswer(const study::GoalAnswer& answer);
    void showChanges(int index);
    void apply();

    Document& document_;
    SolutionPointer solution_;
    std::vector<design::Field> inputs_;
    study::Goal goal_;
    std::vector<study::Trial> solutions_;
    std::vector<solution::Solution> made_;
    BackgroundWork work_;
    QLineEdit *target_ = nullptr, *from_ = nullptr, *to_ = nullptr;
    QComboBox *result_ = nullptr, *input_ = nullptr;
    QLabel *targetUnit_ = nullptr, *fromUnit_ = nullptr;
    QListWidget* list_ = nullptr;
    QTableWidget* changes_ = nullptr;
    SearchLine* line_ = nullptr;
    QPushButton* apply_ = nullptr;
};

} // namespace lobewright::ui
