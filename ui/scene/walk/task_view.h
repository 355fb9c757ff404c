#pragma once

#include "core/lessons/task.h"
#include "ui/base/background_work.h"
#include "ui/base/shown.h"
#include "ui/plots/base/turn_cursor.h"

#include <QWidget>

#include <map>

class QComboBox;
class QDoubleSpinBox;
class QLabel;
class QPushButton;

namespace lobewright::ui {

class CauseBars;

/// Short tasks on the engine shown: predict and lock, turn the shaft to a place, or change the
/// design; hints on demand, then what comes out and why. No marks, no account: a lab sheet can be
/// saved.
class TaskView : public QWidget {
    Q_OBJECT

  public:
    explicit TaskView(TurnCursor& cursor, QWidget* parent = nullptr);

    void showSolution(const SolutionPointer& solution);
    void addOptions(QMenu& menu);

    const std::vector<lessons::Task>& tasks() const { return tasks_; }
    /// Index of the task shown, −1 without one.
    int task() const;
    bool isSolved(const std::string& id) const;
    bool isBusy() const { return work_.isBusy(); }
    /// The sheet with every task, what was answered and what came out.
    QString labSheet() const;
    bool writeLabSheet(const QString& file);

  public Q_SLOTS:
    void chooseTask(int index);
    /// Locks what was entered, or looks at what was turned or built.
    void lock();
    void hint();
    /// Another design was opened: the tasks begin anew.
    void reset();

  protected:
    void changeEvent(QEvent* event) override;

  private:
    struct Answered {
        QString attempt; ///< in words
        QString outcome;
        bool isRight = false;
    };

    QWidget* makePage();
    void ask();
    void showProgress();
    void take(const std::string& id, double guess, const Result<lessons::Verdict>& verdict);
    void sayAttempt(Answered& answered, const lessons::Task& task, double guess) const;
    double guessInSi(const lessons::Task& task) const;
    void saveLabSheet();
    QString engineTitle() const;

    TurnCursor& cursor_;
    BackgroundWork work_;
    SolutionPointer solution_; ///< newest
    SolutionPointer start_;    ///< that the task shown was asked about
    std::vector<lessons::Task> tasks_;
    std::map<std::string, Answered> answered_;
    std::size_t hintsGiven_ = 0;
    QComboBox* chooser_;
    QLabel *title_, *question_, *way_, *hint_, *outcome_, *progress_;
    QDoubleSpinBox* guess_;
    QPushButton *lock_, *more_, *next_;
    CauseBars* causes_;
};

} // namespace lobewright::ui
