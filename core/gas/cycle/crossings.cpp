// Where the equations of a cylinder change within a step, and how far steps may reach before.
#include "core/gas/cycle/integration.h"
#include "core/gas/models/orifice.h"

#include <boost/math/tools/roots.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

namespace lobewright::gas {
namespace {

/// Steps towards where a flow turns: the share of the way there that one may cover, and the
/// relative pressure drop over tolerance^⅔ from which one may reach beyond, how many times as far.
constexpr double shareOfApproach = 0.6, nearTurn = 18.0, beyondTurn = 1.5;
/// Laminar ranges that the first step of a flow just turned may be long.
constexpr double mostLaminarRanges = 10.0;

} // namespace

Margins Integration::marginsOf(std::size_t index, const double* y, double x, bool bends) {
    RunningCylinder& cylinder = *cylinders[index];
    return cylinder.equations.margins(offsets_[index] + x, y, cylinder.memory, supply_, bends);
}

/// Changes the equations of a cylinder where it stands.
void Integration::change(const Crossing& crossing) {
    scatter();
    RunningCylinder& cylinder = *cylinders[crossing.index];
    cylinder.toggle(static_cast<Event>(crossing.event));
    cylinder.lastEvent = cylinder.angle;
    for (std::size_t k = 0; k < cylinders.size(); ++k) {
        std::copy(cylinders[k]->y.begin(), cylinders[k]->y.end(), variables(k));
    }
    refresh();
    const auto event = static_cast<Event>(crossing.event);
    if (event == Event::inletTurns || event == Event::exhaustTurns) {
        // how the flow answers to the pressure bends in and near the laminar range: a step over all
        // of that would not see it
        h_ =
            std::min(h_, mostLaminarRanges * laminarDrop / std::fabs(pressureRise(crossing.index)));
    }
}

/// The error of a step to where a flow turns grows as drop^1.5.
double Integration::dropNearTurn(double relativeTolerance) {
    return nearTurn * std::cbrt(relativeTolerance * relativeTolerance);
}

/// A flow falls as the root of the pressure drop: no polynomial follows it to where it turns. Steps
/// that cover a fixed share of the way there do; the error estimate would find them by failing.
double Integration::stepTowardsTurn() {
    double longest = std::numeric_limits<double>::infinity();
    for (std::size_t k = 0; k < cylinders.size() && !stiff_; ++k) {
        RunningCylinder& cylinder = *cylinders[k];
        const Mode& mode = cylinder.memory.mode;
        if (!mode.portsOpen()) {
            continue;
        }
        const double rise = pressureRise(k);
        const auto approach = [&](Event event, bool outward) {
            const double drop = cylinder.margins[static_cast<std::size_t>(event)];
            const double closing = outward ? -rise : rise;
            if (drop > 0.0 && closing > 0.0) {
                const double reach = drop > turnNear_ ? shareOfApproach * drop
                                                      : beyondTurn * std::max(drop, laminarDrop);
                longest = std::min(longest, reach / closing);
            }
        };
        if (mode.inlet != InletFlow::closed) {
            approach(Event::inletTurns, mode.inlet == InletFlow::back);
        }
        if (mode.exhaust != ExhaustFlow::closed) {
            approach(Event::exhaustTurns, mode.exhaust == ExhaustFlow::out);
        }
    }
    return longest;
}

/// d(ln p)/dθ of a cylinder where it stands [1/rad].
double Integration::pressureRise(std::size_t index) {
    return cylinders[index]->equations.pressureRise(offsets_[index] + x_, variables(index),
                                                    &dy_[index * cylinderVariables]);
}

std::optional<Integration::Crossing> Integration::firstCrossing(double h) {
    std::optional<Crossing> first;
    for (std::size_t k = 0; k < cylinders.size(); ++k) {
        RunningCylinder& cylinder = *cylinders[k];
        cylinder.ahead = marginsOf(k, step().end() + k * cylinderVariables, x_ + h, !rough_);
        if (*std::min_element(cylinder.ahead.begin(), cylinder.ahead.end()) >= -slack_) {
            continue; // most steps
        }
        for (int event = 0; event < eventCount; ++event) {
            const auto index = static_cast<std::size_t>(event);
            if (cylinder.ahead[index] >= -slack_) {
                continue;
            }
            // already past: change at once, but only once at the same angle
            const bool again = offsets_[k] + x_ - cylinder.lastEvent <= sameAngle;
            const double share = cylinder.margins[index] > 0.0
                                     ? crossingShare(cylinder, k, static_cast<Event>(event), h)
                                     : (again ? 1.0 : 0.0);
            if (!first || share < first->share) {
                first = Crossing{k, event, share};
            }
        }
    }
    return first;
}

double Integration::crossingShare(RunningCylinder& cylinder, std::size_t index, Event event,
                                  double h) {
    constexpr int fours = judgedVariables / 4;
    static_assert(4 * fours == judgedVariables);
    double own[fours][4 * DenseStep::denseTerms];
    const int first = static_cast<int>(index) * cylinderVariables;
    const std::size_t plenumOffset = cylinders.size() * cylinderVariables;
    for (int i = 0; i < fours; ++i) {
        step().denseCoefficientsOfFour(first + 4 * i, own[i]);
    }
    for (std::size_t i = 0; i < coupled_.size(); ++i) {
        step().denseCoefficients(static_cast<int>(plenumOffset) + coupled_[i],
                                 coupledCourse_[i].data());
    }
    const auto margin = [&](double s) {
        double* y = scratch_.data() + first;
        for (int i = 0; i < fours; ++i) {
            denseValuesOfFour(own[i], s, y + 4 * i);
        }
        for (std::size_t i = 0; i < coupled_.size(); ++i) {
            scratch_[plenumOffset + static_cast<std::size_t>(coupled_[i])] =
                denseValue(coupledCourse_[i].data(), s);
        }
        const Margins there =
            cylinder.equations.marginsElsewhere(offsets_[index] + x_ + s * h, y, cylinder.memory,
                                                supplyOf(x_ + s * h, scratch_.data()));
        return there[static_cast<std::size_t>(event)];
    };
    const double start = cylinder.margins[static_cast<std::size_t>(event)];
    const double end = cylinder.ahead[static_cast<std::size_t>(event)];
    std::uintmax_t iterations = 40;
    const auto bracket = boost::math::tools::toms748_solve(
        margin, 0.0, 1.0, start, end, [](double a, double b) { return std::fabs(b - a) < 1e-11; },
        iterations);
    return bracket.second;
}

} // namespace lobewright::gas
