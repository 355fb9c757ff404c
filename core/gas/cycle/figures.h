#pragma once

#include "core/gas/cycle/cycle.h"
#include "core/gas/cycle/model.h"
#include "core/gas/cycle/running_cylinder.h"
#include "core/gas/cycle/trace.h"

#include <string>
#include <vector>

namespace lobewright::gas {

/// The figures of one cylinder's cycles from what was counted, peaks read off the trace.
std::vector<CycleFigures> figuresOf(const Model& model, const std::vector<CycleRecord>& records,
                                    const RecordedTrace& trace, int cylinder);

/// What a reader of the figures ought to know.
std::vector<Message> remarksOn(const Model& model, const CycleSolution& solution);

} // namespace lobewright::gas
