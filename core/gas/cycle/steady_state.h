#pragma once

#include "core/gas/cycle/coupled_cylinders.h"
#include "core/gas/integrators/acceleration.h"
#include "core/monitor.h"

#include <limits>
#include <memory>

namespace lobewright::gas {

/// What the search for the cyclic steady state achieved.
struct SteadySearch {
    int windows = 0;       ///< integrated
    double change = 1e300; ///< largest relative change over the last of them
    int unsteady = 0;      ///< windows that did not repeat their state, or not exactly enough
    double asked = 0.0;    ///< the change below which one does
    bool steady = false;   ///< the state repeats
    bool rough = false;    ///< but no better than `goodEnough`
    bool near = false;     ///< it began where a similar engine's was, or kept its burn start
};

/// Where the period of a converged cycle begins, for the search in a similar engine.
struct CycleStart {
    double period = 0.0;    ///< [rad]
    double burnStart = 0.0; ///< cycle angle [rad]
    /// How far off it may be, where it lies between those of similar engines [rad].
    double burnStartDoubt = std::numeric_limits<double>::infinity();
    bool fired = false;
    SupplyKind supply = SupplyKind::reservoir;
    CoupledCylinders::State state;
    AndersonAcceleration acceleration; ///< how periods answered to the state they began with
    double wheelSpeed = 0.0;           ///< of a turbine [rad/s], 0 without one
};

/// Finds the state x of the cylinders that a period P leaves as it was, x = P(x), and nothing else
/// decides how to search. Periods are combined by Anderson's method; early ones are integrated
/// loosely. The last period integrated is then the solution, which the cylinders hold.
class SteadyState {
  public:
    /// Change below which a state that repeats no better is taken all the same, with a remark.
    static constexpr double goodEnough = 1e-5;

    SteadyState(const Model& model, CoupledCylinders& cylinders, int remembered)
        : acceleration(remembered), model_(model), cylinders_(cylinders) {}

    /// From `state` on. `near`: it is near the answer, as after a small change of the engine, so
    /// that the integrator is exact from the first period on. Ends without a steady state after
    /// options.maxPeriods or maxEvaluations. Errors: no air in a fired engine, gas out of range,
    /// cancelled.
    Result<SteadySearch> find(const CycleOptions& options, Monitor& monitor, bool near);

    CoupledCylinders::State state;
    AndersonAcceleration acceleration; ///< learns how periods answer to the state they begin with
    CoupledCylinders& cylinders() { return cylinders_; }

  private:
    const Model& model_;
    CoupledCylinders& cylinders_;
};

} // namespace lobewright::gas
