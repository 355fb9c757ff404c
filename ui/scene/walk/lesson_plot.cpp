#include "ui/scene/walk/lesson_plot.h"

#include "ui/plots/turn/port_plot.h"
#include "ui/plots/turn/pressure_volume_plot.h"
#include "ui/plots/turn/torque_plot.h"

#include <QMenu>

namespace lobewright::ui {

LessonPlot::LessonPlot(TurnCursor& cursor, QWidget* parent)
    : QStackedWidget(parent), pressure_(new PressureVolumePlot(cursor, this)),
      torque_(new TorquePlot(cursor, this)), ports_(new PortPlot(cursor, this)) {
    setAccessibleName(tr("Plot of the stage"));
    addWidget(pressure_);
    addWidget(torque_);
    addWidget(ports_);
}

void LessonPlot::showSolution(const SolutionPointer& solution) {
    pressure_->showSolution(solution);
    torque_->showSolution(solution);
    ports_->showSolution(solution);
}

void LessonPlot::showBaseline(const SolutionPointer& baseline) {
    pressure_->showBaseline(baseline);
    torque_->showBaseline(baseline);
    ports_->showBaseline(baseline);
}

void LessonPlot::addOptions(QMenu& menu) {
    if (currentWidget() == pressure_)
        pressure_->addOptions(menu);
    else if (currentWidget() == torque_)
        torque_->addOptions(menu);
    else
        ports_->addOptions(menu);
}

void LessonPlot::setEvent(WalkEvent event) {
    switch (event) {
    case WalkEvent::portsClose:
    case WalkEvent::combustion:
    case WalkEvent::innerDeadCentre:
    case WalkEvent::highestPressure:
        setCurrentWidget(pressure_);
        return;
    case WalkEvent::hardestPush:
        setCurrentWidget(torque_);
        return;
    case WalkEvent::exhaustOpens:
    case WalkEvent::inletOpens:
    case WalkEvent::outerDeadCentre:
    case WalkEvent::firstClosing:
        setCurrentWidget(ports_);
        return;
    }
}

} // namespace lobewright::ui
