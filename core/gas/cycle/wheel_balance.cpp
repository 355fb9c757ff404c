#include "core/gas/cycle/wheel_balance.h"

#include <boost/math/tools/roots.hpp>

#include <cmath>
#include <optional>

LW_TEXTS_OF(Core)

namespace lobewright::gas {
namespace {

constexpr double fastestTip = 800.0; ///< of the compressor wheel [m/s]; none stands that
constexpr double idleTip = 10.0;     ///< below this a wheel idles [m/s]
constexpr double speedAccuracy = 1e-7;
constexpr double balanceAccuracy = 2e-7; ///< powers that differ by less are in balance
constexpr int mostTrials = 40;

double tipPerSpeed(const Model& model) {
    return 0.5 * model.settings.supply.compressor.wheel.diameter;
}

/// What is left of the turbine's power on the wheel shaft at one speed after another.
class Shaft {
  public:
    Shaft(Model& model, SteadyState& search, bool near, const CycleOptions& options,
          Monitor& monitor)
        : model_(model), search_(search), near_(near), options_(options), monitor_(monitor) {}

    /// [W]; 0: the powers are in balance; absent where the engine finds no steady state.
    std::optional<double> excess(double speed) {
        model_.setWheelSpeed(speed);
        const CoupledCylinders::State before = search_.state;
        const long used = search_.cylinders().rateEvaluations();
        Result<SteadySearch> found = search_.find(options_, monitor_, near_);
        options_.maxEvaluations -= search_.cylinders().rateEvaluations() - used;
        if (!found || !found->steady) {
            problem = found ? std::nullopt : std::optional(found.problems().front());
            search_.state = before;
            search_.acceleration.forget();
            return std::nullopt;
        }
        near_ = true;
        windows_ += found->windows;
        last = *found;
        last->windows = windows_;
        last->unsteady = windows_ - 1; // all before the one that is kept
        const double kept = model_.settings.supply.compressor.turbine.mechanicalEfficiency;
        CoupledCylinders& cylinders = search_.cylinders();
        const double taken = cylinders.meanWheelPower();
        const double left = kept * cylinders.meanTurbinePower() - taken;
        return std::fabs(left) <= balanceAccuracy * taken ? 0.0 : left;
    }
    bool isCancelled() const {
        return problem && problem->message == Message(LW_TEXT("cancelled"));
    }
    std::optional<SteadySearch> last;
    std::optional<Problem> problem; ///< why there was no steady state

  private:
    Model& model_;
    SteadyState& search_;
    bool near_;
    CycleOptions options_; ///< what of the work allowed is left
    Monitor& monitor_;
    int windows_ = 0;
};

/// Speeds between which the turbine's power meets what is taken.
struct Bracket {
    double low = 0.0, high = 0.0;             ///< [rad/s]
    double excessLow = 0.0, excessHigh = 0.0; ///< > 0, ≤ 0 [W]
};

/// Absent: the wheel finds no balance; see `sustained`, or it would run away.
std::optional<Bracket> bracketOf(Shaft& shaft, double guess, double factor, double tip,
                                 bool& overspeeds) {
    Bracket bracket{0.0, 0.0, 0.0, 0.0};
    double speed = guess;
    for (int trial = 0; trial < mostTrials; ++trial) {
        const std::optional<double> excess = shaft.excess(speed);
        if (excess && *excess == 0.0) {
            return Bracket{speed, speed, 0.0, 0.0};
        }
        if (excess && *excess > 0.0) {
            bracket.low = speed;
            bracket.excessLow = *excess;
            if (bracket.high > 0.0) {
                return bracket;
            }
            if (tip * speed > fastestTip) {
                overspeeds = true;
                return std::nullopt;
            }
            speed *= factor;
        } else {
            if (excess) {
                bracket.high = speed;
                bracket.excessHigh = *excess;
                if (bracket.low > 0.0) {
                    return bracket;
                }
            } else if (bracket.low > 0.0 || shaft.isCancelled()) {
                return std::nullopt;
            }
            if (tip * speed < idleTip) {
                return std::nullopt;
            }
            speed /= factor;
        }
        factor = std::min(factor * factor, 1.5); // wider with every step in vain
    }
    return std::nullopt;
}

} // namespace

Result<SteadySearch> balanceWheel(Model& model, SteadyState& search, double guess, bool near,
                                  const CycleOptions& options, Monitor& monitor, bool& sustained) {
    Shaft shaft(model, search, near, options, monitor);
    const double tip = tipPerSpeed(model);
    bool overspeeds = false;
    sustained = true;
    const auto bracket = bracketOf(shaft, guess, near ? 1.002 : 1.3, tip, overspeeds);
    if (overspeeds) {
        return Problem{"/gas/supply/turbine/nozzle_mm2",
                       Message(LW_TEXT("the turbine drives the compressor wheel beyond a tip speed "
                                       "of %1: enlarge the nozzle"),
                               Amount(fastestTip, in::metrePerSecond, 3))};
    }
    if (!bracket && shaft.isCancelled()) {
        return *shaft.problem;
    }
    if (!bracket) {
        sustained = false;
        if (model.settings.supply.compressor.stages != Stages::wheelThenBlower) {
            return Problem{"/gas/supply/drive",
                           LW_TEXT("the turbocharger does not sustain itself, and nothing else "
                                   "delivers air: add a blower downstream of its wheel")};
        }
        if (!shaft.excess(idleTip / tip)) {
            return shaft.problem.value_or(
                Problem{"", LW_TEXT("no cyclic steady state with an idling wheel")});
        }
        return *shaft.last;
    }
    if (bracket->low == bracket->high) {
        return *shaft.last;
    }
    std::uintmax_t iterations = mostTrials;
    double at = bracket->high;
    std::optional<Problem> failed;
    const auto excess = [&](double speed) {
        at = speed;
        const auto value = shaft.excess(speed);
        if (!value) {
            failed = shaft.problem.value_or(Problem{"", LW_TEXT("no cyclic steady state")});
        }
        return value.value_or(0.0); // ends the search
    };
    const auto [low, high] = boost::math::tools::toms748_solve(
        excess, bracket->low, bracket->high, bracket->excessLow, bracket->excessHigh,
        [](double a, double b) { return b - a <= speedAccuracy * b; }, iterations);
    if (failed) {
        return *failed;
    }
    const double root = 0.5 * (low + high);
    if (root != at && !shaft.excess(root)) {
        return shaft.problem.value_or(Problem{"", LW_TEXT("no cyclic steady state")});
    }
    return *shaft.last;
}

} // namespace lobewright::gas
