#pragma once

#include "core/units.h"
#include "ui/scene/base/shown_engine.h"

#include <QString>

#include <vector>

namespace lobewright::ui {

/// What a stop of the walk is about.
enum class WalkEvent {
    portsClose,
    combustion,
    innerDeadCentre,
    highestPressure,
    hardestPush,
    exhaustOpens,
    inletOpens,
    outerDeadCentre,
    firstClosing
};

/// One stop of the walk through a cycle.
struct WalkStep {
    double theta = 0.0; ///< shaft angle of cylinder 1 [rad], ascending over the walk
    QString title;
    QString text; ///< two plain sentences with the numbers of the design shown
    WalkEvent event = WalkEvent::portsClose;
    QString formula = {};  ///< with this engine's numbers
    QString question = {}; ///< to think about before going on
    QString answer = {};
};

/// Nearer than this the shaft stands at the event: keys and sliders move in such steps [rad].
constexpr double atEvent = 0.05 * units::degree;

/// One cycle of cylinder 1 event by event, from the last port closing to the next. Tells only what
/// the solution at hand knows; without one the geometry alone.
std::vector<WalkStep> walkSteps(const ShownEngine& engine);

/// What stands before the first step: what is fixed, what turns and what slides in this engine.
QString walkOpening(const ShownEngine& engine);

/// Index of the step that θ of cylinder 1 passed last, and how far back it lies [rad]; −1 of none.
struct PassedStep {
    int index = -1;
    double beyond = 0.0;
};
PassedStep lastPassed(const std::vector<WalkStep>& steps, double theta, double period);

} // namespace lobewright::ui
