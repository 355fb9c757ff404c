#pragma once

#include "core/gas/cycle/model.h"
#include "core/gas/cycle/steady_state.h"
#include "core/units.h"

namespace lobewright::gas {

inline constexpr double burnStartAccuracy = 0.05 * units::degree; ///< cycle angle

/// Moves the model's burn start to where the net imep is highest: between −60° and +20° cycle angle
/// with all ports closed, to `burnStartAccuracy`. First it looks at starts 8° apart with `scout`,
/// then closely with `search`, which is left near the steady state there; both may be the same.
/// Takes its work from `options`. True: `search` has learnt how the cylinders answer. False: that
/// was cut short, and the start is known to the 8° only (model.burnStartRough). Errors: those of
/// the steady state.
Result<bool> findBestStart(Model& model, SteadyState& scout, SteadyState& search,
                           CycleOptions& options, Monitor& monitor);

/// The same from the burn start that the model has, near which the best must lie, where `search`
/// stands near the steady state.
Result<bool> findBestStartNear(Model& model, SteadyState& search, CycleOptions& options,
                               Monitor& monitor);

} // namespace lobewright::gas
