#pragma once

#include "core/gas/cycle/model.h"
#include "core/gas/cycle/steady_state.h"

namespace lobewright::gas {

/// The steady state at the wheel speed where the turbine gives what compressor and bearings take,
/// ∮P_t·η_m = ∮P_c, the highest such speed; the model's wheel then turns so. Where the exhaust
/// cannot keep the wheel turning it idles and `sustained` is false: whatever else feeds the plenum
/// has to do. `guess` [rad/s] is where to begin; `near`: it is near the answer, and so is the state
/// of the search. Errors: those of the search, a turbine that overspeeds, a plenum that nothing
/// else feeds.
Result<SteadySearch> balanceWheel(Model& model, SteadyState& search, double guess, bool near,
                                  const CycleOptions& options, Monitor& monitor, bool& sustained);

} // namespace lobewright::gas
