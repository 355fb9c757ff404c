#pragma once

#include "core/lessons/task.h"

#include <span>

namespace lobewright::lessons {

/// How one task is told and judged.
struct Recipe {
    const char* id;
    TaskKind kind;
    /// The task for this engine; absent where it makes no sense for it. Fills in all but id and
    /// kind.
    std::optional<Task> (*tell)(const solution::Solution& start);
    /// The guess is there for a prediction.
    Result<Verdict> (*judge)(const Attempt& attempt, Monitor& monitor);
};

std::span<const Recipe> predictions();
std::span<const Recipe> places();
std::span<const Recipe> buildings();

/// Value of a figure in the unit of its name; absent where it is not available.
std::optional<double> figureOf(const solution::Solution& solution, std::string_view name);
/// [N·m]; 0 where it is not available.
inline double torqueOf(const solution::Solution& solution) {
    return figureOf(solution, "brake_torque_Nm").value_or(0.0);
}

} // namespace lobewright::lessons
