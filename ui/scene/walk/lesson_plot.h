#pragma once

#include "ui/plots/base/turn_cursor.h"
#include "ui/scene/walk/walk_steps.h"

#include <QStackedWidget>

class QMenu;

namespace lobewright::ui {

class PortPlot;
class PressureVolumePlot;
class TorquePlot;

/// One plot that fits the stage of the cycle: pressure over volume while the chamber is closed,
/// torque where the shaft is pushed, port areas while gas is exchanged.
class LessonPlot : public QStackedWidget {
    Q_OBJECT

  public:
    explicit LessonPlot(TurnCursor& cursor, QWidget* parent = nullptr);

    void showSolution(const SolutionPointer& solution);
    void showBaseline(const SolutionPointer& baseline);
    void addOptions(QMenu& menu);

  public Q_SLOTS:
    void setEvent(lobewright::ui::WalkEvent event);

  private:
    PressureVolumePlot* pressure_;
    TorquePlot* torque_;
    PortPlot* ports_;
};

} // namespace lobewright::ui
