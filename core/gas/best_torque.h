#pragma once

#include "core/gas/acceleration.h"
#include "core/gas/model.h"
#include "core/gas/ring.h"
#include "core/monitor.h"

namespace lobewright::gas {

/// Moves the model's burn start to where the net imep is highest: between −60° and +20° cycle angle
/// with all ports closed, to 0.05°. First it looks at starts 8° apart with the ring `scout`, then
/// closely with `ring`, which is left near the steady state there. For a blower's ring the scout is
/// one cylinder on a constant supply; otherwise both are the same. Takes its work from `options`.
/// True: `acceleration` has learnt how the ring answers. False: that was cut short, and the start
/// is known to the 8° only (model.burnStartRough). Errors: those of the steady-state search.
Result<bool> findBestStart(Model& model, Ring& scout, Ring& ring, CycleOptions& options,
                           Monitor& monitor, AndersonAcceleration& acceleration);

/// The same from the burn start that the model has, near which the best must lie, with a ring that
/// stands near its steady state there.
Result<bool> findBestStartNear(Model& model, Ring& ring, CycleOptions& options, Monitor& monitor,
                               AndersonAcceleration& acceleration);

} // namespace lobewright::gas
