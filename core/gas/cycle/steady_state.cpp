#include "core/gas/cycle/steady_state.h"

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::gas {
namespace {

/// The integrator is as loose as this share of the last change of the state, within bounds: the
/// fewest evaluations on a reservoir and on a plenum.
constexpr double shareOfChange = 1e-3, loosest = 5e-5;
/// A state after a window is good to about this many times the integrator's tolerance.
constexpr double noise = 2.0;
constexpr double nearNoise = 1e-2; ///< a loose state that changes less may be as good as it gets
/// Periods of accelerated and of plain repetition in turn. Where flow through a port hardly knows
/// its direction the map has kinks, around which the acceleration may circle for ever.
constexpr int acceleratedPeriods = 25, plainPeriods = 15;
/// Periods in which the best change has not halved, after which no better is to be had.
constexpr int patience = 20;
/// Where the acceleration sees the answer farther from a state than this many times the change
/// asked for, the state only seems to repeat: a large plenum fills slowly.
constexpr double mostDistance = 10.0;
constexpr double leastAir = 1e-3; ///< less than this share of the charge is none
constexpr int airlessPeriods = 6; ///< in a row, after which the engine is taken to be dead

Problem noAir(double share) {
    return {"", Message(LW_TEXT("no air to burn (%1 of the charge is fresh): check the ports, the "
                                "supply pressure and the exhaust back pressure"),
                        number(share, 2))};
}

/// How exactly to integrate after a change of the state.
double toleranceAfter(double change, const CycleOptions& options) {
    return std::max(std::min(shareOfChange * change, loosest), options.relativeTolerance);
}

/// Whether the search gets anywhere.
class Progress {
  public:
    explicit Progress(int windows) : patience_(windows) {}
    void note(int period, double change) {
        if (change < 0.5 * best_) {
            best_ = change;
            since_ = period;
        }
    }
    bool stands(int period) const { return period - since_ >= patience_; }

  private:
    int patience_; ///< windows in which the best change may stay what it was
    double best_ = 1e300;
    int since_ = 0;
};

} // namespace

Result<SteadySearch> SteadyState::find(const CycleOptions& options, Monitor& monitor, bool near) {
    SteadySearch search;
    const int windows = cylinders_.windowsPerPeriod();
    search.asked = options.steadyTolerance;
    const int most = options.maxPeriods * windows;
    double tolerance =
        near ? options.relativeTolerance : std::max(loosest, options.relativeTolerance);
    const long last = cylinders_.rateEvaluations() + options.maxEvaluations;
    int airless = 0;
    acceleration.beginAnew();
    Progress progress(patience), approaching(8 + windows);
    double trust = 1.0; ///< in what the plenum is foreseen to become
    while (search.windows < most && cylinders_.rateEvaluations() <= last) {
        const Eigen::VectorXd from = state.scaled(model_);
        const CoupledCylinders::State before = state;
        cylinders_.allow(last - cylinders_.rateEvaluations());
        if (auto problem = cylinders_.advance(state, tolerance)) {
            if (cylinders_.rateEvaluations() > last) {
                return search; // not steady, and half a window is no answer
            }
            return *problem;
        }
        ++search.windows;
        const bool exact = tolerance <= options.relativeTolerance;
        search.change = (state.scaled(model_) - from).cwiseAbs().maxCoeff();
        // the acceleration is to learn of one map, be the integrator exact or not
        const bool isForeseen = cylinders_.foreseePlenum(before, state, trust);
        const Eigen::VectorXd mapped = state.scaled(model_);
        const double share = cylinders_.airShare();
        airless = share < leastAir ? airless + 1 : 0;
        const bool plain =
            search.windows / windows % (acceleratedPeriods + plainPeriods) >= acceleratedPeriods;
        Eigen::VectorXd predicted = mapped;
        if (plain || !isForeseen) {
            acceleration.forget();
        } else {
            predicted = acceleration.next(from, mapped, noise * tolerance);
        }
        const double distance = (predicted - from).cwiseAbs().maxCoeff();
        search.steady =
            exact && search.change < search.asked && distance < mostDistance * search.asked;
        if (!search.steady && exact && search.change < goodEnough) {
            search.rough = search.steady = progress.stands(search.windows);
        }
        if (airless >= airlessPeriods * windows || (search.steady && airless > 0)) {
            return noAir(share);
        }
        if (search.steady) {
            return search;
        }
        ++search.unsteady;
        const double done = std::log(search.change) / std::log(search.asked);
        if (!monitor.step(std::clamp(done, 0.0, 1.0),
                          Message(LW_TEXT("gas cycle %1"), search.windows))) {
            return Problem{"", LW_TEXT("cancelled")};
        }
        approaching.note(search.windows, search.change);
        bool noisy = false; // no better is to be had as loosely as this
        if (approaching.stands(search.windows)) {
            trust *= 0.3;
            noisy = search.change < nearNoise;
            approaching = Progress(8 + windows);
            approaching.note(search.windows, search.change);
        }
        if (exact) {
            progress.note(search.windows, std::max(search.change, 0.1 * distance));
        }
        std::optional<CoupledCylinders::State> next = state.with(predicted, model_);
        if (noisy) {
            tolerance = options.relativeTolerance;
        } else if (!exact) {
            tolerance = std::min(tolerance, toleranceAfter(search.change, options));
        } else if (near && search.windows == 1) {
            tolerance = toleranceAfter(search.change, options); // it was not as near as hoped
        }
        if (!next) {
            acceleration.forget();
            next = state.with(mapped, model_);
        }
        if (!next) {
            return Problem{"",
                           LW_TEXT("the gas left the range of the model at the last port closing")};
        }
        state = *next;
    }
    search.rough = search.steady = search.change < goodEnough;
    return search;
}

} // namespace lobewright::gas
