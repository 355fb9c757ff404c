#include "core/gas/steady.h"

#include "core/gas/acceleration.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::gas {
namespace {

/// Until the state changes less than `until`, the integrator may be as loose as `tolerance`.
struct Stage {
    double tolerance, until;
};
constexpr Stage approach{5e-5, 3e-3}; // the fewest evaluations over four samples at 21 speeds
/// Periods of accelerated and of plain repetition in turn. Where flow through a port hardly knows
/// its direction the map has kinks, around which the acceleration may circle for ever.
constexpr int acceleratedPeriods = 25, plainPeriods = 25;
constexpr double leastAir = 1e-3; ///< less than this share of the charge is none
constexpr int airlessWindows = 6; ///< in a row, after which the engine is taken to be dead

Problem noAir(double share) {
    return {"", Message(LW_TEXT("no air for the engine to burn (%1 of the charge is fresh): look "
                                "at the ports, the supply and the exhaust pressure"),
                        number(share, 2))};
}

/// `tolerance`: of the integrator in the first window.
Result<SteadySearch> searchFrom(Ring& ring, const CycleOptions& options, Monitor& monitor,
                                AndersonAcceleration& acceleration, double tolerance) {
    SteadySearch search;
    const int windowsPerPeriod = ring.alike() ? ring.cylinders() : 1;
    const double goal = options.steadyTolerance / windowsPerPeriod;
    search.asked = goal;
    const int limit = options.maxPeriods * windowsPerPeriod;
    const long last = ring.work() + options.maxEvaluations;
    int airless = 0;
    Eigen::VectorXd state = ring.repeating();
    double change = 1.0;
    bool comparable = false;
    while (search.windows < limit) {
        if (auto problem = ring.advance(tolerance)) {
            return *problem;
        }
        ++search.windows;
        const Eigen::VectorXd mapped = ring.repeating();
        change = (mapped - state).cwiseAbs().maxCoeff();
        search.change = change;
        if (change < goal && tolerance <= options.relativeTolerance) {
            if (ring.airShare() < leastAir) {
                return noAir(ring.airShare());
            }
            search.steady = true;
            return search;
        }
        ++search.unsteady;
        airless = ring.airShare() < leastAir ? airless + 1 : 0;
        if (airless >= airlessWindows) {
            return noAir(ring.airShare());
        }
        if (ring.work() > last) {
            return search;
        }
        const double done = std::clamp(std::log(change) / std::log(goal), 0.0, 1.0);
        if (!monitor.step(done, Message(LW_TEXT("gas cycle %1"), search.windows))) {
            return Problem{"", LW_TEXT("cancelled")};
        }
        const int turn = search.windows / windowsPerPeriod % (acceleratedPeriods + plainPeriods);
        if (turn >= acceleratedPeriods) {
            acceleration.restart();
            state = mapped;
        } else {
            state = acceleration.next(state, mapped, comparable);
        }
        comparable = turn < acceleratedPeriods;
        if (change < approach.until && tolerance > options.relativeTolerance) {
            tolerance = options.relativeTolerance;
            comparable = false;
        }
        if (!ring.setRepeating(state)) {
            acceleration.restart();
            state = mapped;
            if (!ring.setRepeating(state)) {
                return Problem{"",
                               LW_TEXT("the gas ran out of every range at the last port closing")};
            }
        }
        state = ring.repeating(); // what could not be is bent back
    }
    return search;
}

} // namespace

Result<SteadySearch> findSteadyState(Ring& ring, const CycleOptions& options, Monitor& monitor,
                                     AndersonAcceleration& acceleration) {
    return searchFrom(ring, options, monitor, acceleration,
                      std::max(approach.tolerance, options.relativeTolerance));
}

Result<SteadySearch> findSteadyStateNear(Ring& ring, const CycleOptions& options, Monitor& monitor,
                                         AndersonAcceleration& acceleration) {
    return searchFrom(ring, options, monitor, acceleration, options.relativeTolerance);
}

} // namespace lobewright::gas
