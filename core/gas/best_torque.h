#pragma once

#include "core/gas/model.h"
#include "core/gas/ring.h"
#include "core/monitor.h"

#include <optional>

namespace lobewright::gas {

/// Moves the model's burn start to where the net imep of the ring is highest: between −60° and +20°
/// cycle angle with all ports closed, to 0.05°. The ring is left near the steady state there.
/// Errors: those of the steady-state search.
std::optional<Problem> findBestStart(Model& model, Ring& ring, const CycleOptions& options,
                                     Monitor& monitor);

} // namespace lobewright::gas
