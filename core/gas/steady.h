#pragma once

#include "core/gas/acceleration.h"
#include "core/gas/ring.h"
#include "core/monitor.h"

#include <optional>

namespace lobewright::gas {

/// What the search for the cyclic steady state achieved.
struct SteadySearch {
    int windows = 0;       ///< integrated
    double change = 1e300; ///< largest relative change over the last window
    int unsteady = 0;      ///< windows that did not repeat their state, or not exactly enough
    double asked = 0.0;    ///< the change below which one does
    bool steady = false;   ///< the goal was reached; otherwise the last state is left in the ring
    bool near = false;     ///< it began where a similar engine's was, or kept its burn start
};

/// Integrates windows, combining them by Anderson's method, until the ring repeats itself within
/// options.steadyTolerance; the last window is then the solution. Tolerances of the integrator
/// follow the change, so that early windows are cheap.
/// Ends without one after options.maxPeriods. Errors: no air in a fired engine, gas out of range,
/// cancelled.
/// `acceleration` learns how windows answer to the state they begin with.
Result<SteadySearch> findSteadyState(Ring& ring, const CycleOptions& options, Monitor& monitor,
                                     AndersonAcceleration& acceleration);

/// The same where the ring stands near its steady state, as after a small change of the engine, and
/// `acceleration` knows from searches before; the integrator is as exact from the first window as
/// at the end.
Result<SteadySearch> findSteadyStateNear(Ring& ring, const CycleOptions& options, Monitor& monitor,
                                         AndersonAcceleration& acceleration);

} // namespace lobewright::gas
