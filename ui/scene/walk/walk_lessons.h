#pragma once

#include "ui/scene/walk/walk_steps.h"

namespace lobewright::ui {

/// Gives a step its formula with the numbers of this engine, and a question with its answer.
void addLesson(WalkStep& step, const ShownEngine& engine, const ports::CycleEvents& cycle);

} // namespace lobewright::ui
