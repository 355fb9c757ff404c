#pragma once

#include "ui/plots/base/turn_cursor.h"
#include "ui/scene/walk/walk_steps.h"

#include <QVariantAnimation>
#include <QWidget>

class QLabel;
class QPushButton;
class QToolButton;

namespace lobewright::ui {

/// Steps through one cycle event by event, moves the common cursor there and says what happens and
/// why. Page Up and Page Down, or the two buttons, go back and on. When the shaft is turned by
/// other means, the text follows: the event last passed, paler, with how far the shaft stands
/// beyond it. Below it a formula with the numbers of the engine, and a question.
class StudentWalk : public QWidget {
    Q_OBJECT

  public:
    explicit StudentWalk(TurnCursor& cursor, QWidget* parent = nullptr);

    void showGeometry(const GeometryPointer& geometry);
    void showSolution(const SolutionPointer& solution);

    /// Index of the step told, −1: the page before the first, which names no event.
    int step() const { return step_; }
    int steps() const { return static_cast<int>(steps_.size()); }
    /// How far the shaft stands beyond the event told [rad of the shaft]; 0: at it.
    double beyond() const { return beyond_; }
    /// Seconds in which the machine turns from one stop to the next; 0: at once.
    void setTravelTime(double seconds) { travelSeconds_ = seconds; }

  public Q_SLOTS:
    void goOn();
    void goBack();
    /// To the step of this index; nothing where there is none.
    void goTo(int step);
    void start();
    void setCylinder(int index);
    /// Another design was opened: the page before the first step.
    void reset();

  Q_SIGNALS:
    void tasksWanted();

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    QWidget* makeCard();
    void tell();
    void tellLesson();
    void retell();
    void travelTo(double theta);
    void moveTo(double theta);
    void follow();
    void showTone();
    double shaftAngle(const WalkStep& step) const;

    TurnCursor& cursor_;
    ShownEngine engine_;
    std::vector<WalkStep> steps_;
    int step_ = -1;
    double beyond_ = 0.0;
    bool moving_ = false; ///< the angle changes because the walk turns the shaft
    int cylinder_ = 0;
    double travelSeconds_ = 1.2;
    QVariantAnimation travel_;
    QLabel* title_;
    QLabel* text_;
    QLabel* formula_;
    QLabel* question_;
    QLabel* answer_;
    QToolButton* reveal_;
    QLabel* place_;
    QPushButton* back_;
    QPushButton* on_;
    int lessonOf_ = -2; ///< step whose question is shown
};

} // namespace lobewright::ui
