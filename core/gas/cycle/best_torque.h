#pragma once

#include "core/gas/cycle/model.h"
#include "core/gas/cycle/steady_state.h"

namespace lobewright::gas {

/// Moves the model's burn start to where the net imep is highest: between −60° and +20° cycle angle
/// with all ports closed, to 0.05°. First it looks at starts 8° apart with `scout`, then closely
/// with `search`, which is left near the steady state there; both may be the same. Takes its work
/// from `options`. True: `search` has learnt how the cylinders answer. False: that was cut short,
/// and the start is known to the 8° only (model.burnStartRough). Errors: those of the steady state.
Result<bool> findBestStart(Model& model, SteadyState& scout, SteadyState& search,
                           CycleOptions& options, Monitor& monitor);

/// The same from the burn start that the model has, near which the best must lie, where `search`
/// stands near the steady state.
Result<bool> findBestStartNear(Model& model, SteadyState& search, CycleOptions& options,
                               Monitor& monitor);

} // namespace lobewright::gas
