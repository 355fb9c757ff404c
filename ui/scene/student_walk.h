#pragma once

#include "ui/plots/turn_cursor.h"
#include "ui/scene/walk_steps.h"

#include <QVariantAnimation>
#include <QWidget>

class QLabel;
class QPushButton;

namespace lobewright::ui {

/// Steps through one cycle event by event, moves the common cursor there and says what happens and
/// why. Page Up and Page Down, or the two buttons, go back and on.
class StudentWalk : public QWidget {
    Q_OBJECT

  public:
    explicit StudentWalk(TurnCursor& cursor, QWidget* parent = nullptr);

    void showGeometry(const GeometryPointer& geometry);
    void showSolution(const SolutionPointer& solution);

    /// Index of the step told, −1 before the first.
    int step() const { return step_; }
    int steps() const { return static_cast<int>(steps_.size()); }
    /// Seconds in which the machine turns from one stop to the next; 0: at once.
    void setTravelTime(double seconds) { travelSeconds_ = seconds; }

  public Q_SLOTS:
    void goOn();
    void goBack();
    void start();
    void setCylinder(int index);

  protected:
    void keyPressEvent(QKeyEvent* event) override;

  private:
    void tell();
    void retell();
    void travelTo(double theta);
    double shaftAngle(const WalkStep& step) const;

    TurnCursor& cursor_;
    ShownEngine engine_;
    std::vector<WalkStep> steps_;
    int step_ = -1;
    int cylinder_ = 0;
    double travelSeconds_ = 1.2;
    QVariantAnimation travel_;
    QLabel* title_;
    QLabel* text_;
    QLabel* place_;
    QPushButton* back_;
    QPushButton* on_;
};

} // namespace lobewright::ui
