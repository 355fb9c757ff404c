#pragma once

#include "ui/scene/base/shown_engine.h"

#include <QString>

#include <vector>

namespace lobewright::ui {

/// One stop of the walk through a cycle.
struct WalkStep {
    double theta = 0.0; ///< shaft angle of cylinder 1 [rad], ascending over the walk
    QString title;
    QString text; ///< two plain sentences with the numbers of the design shown
};

/// One cycle of cylinder 1 event by event, from the last port closing to the next. Tells only what
/// the solution at hand knows; without one the geometry alone.
std::vector<WalkStep> walkSteps(const ShownEngine& engine);

/// What stands before the first step: what is fixed, what turns and what slides in this engine.
QString walkOpening(const ShownEngine& engine);

} // namespace lobewright::ui
