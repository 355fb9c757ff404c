#include "core/gas/ring.h"

#include <boost/math/tools/roots.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

namespace lobewright::gas {
namespace {

constexpr double sameAngle = 1e-12; ///< window angles closer than this are one [rad]
constexpr long stepLimit = 400000;  ///< steps of one window
/// Where pressures are nearly equal, a looser one would blur the flow between them.
constexpr double implicitTolerance = 1e-7;

} // namespace

/// An explicit step is stable up to about 3.3/rate. Where that would take hundreds of steps to the
/// next stop, an implicit method is cheaper.
void Ring::chooseMethod(double stop) {
    constexpr double enter = 100.0;
    constexpr double leave = 20.0;
    const double relaxations = relaxation_ * (stop - theta_);
    if (!stiff_ && relaxations > enter) {
        stiff_ = true;
    } else if (stiff_ && relaxations < leave) {
        stiff_ = false;
        h_ = std::min(h_, 2.0 / std::max(relaxation_, 1e-3));
    }
}

void Ring::setWeights(double relativeTolerance) {
    for (std::size_t i = 0; i < y_.size(); ++i) {
        weights_[i] = relativeTolerance * scales_[i];
    }
    for (std::size_t k = 0; k < members_.size(); ++k) {
        weights_[k * cylinderVariables + temperature] =
            relativeTolerance * std::fabs(variables(k)[temperature]);
    }
}

double Ring::tryStep(double h) {
    const auto evaluate = [this](double theta, const double* y, double* dy) {
        rates(theta, y, dy);
    };
    setWeights(!stiff_ ? tolerance_ : std::min(tolerance_, implicitTolerance));
    if (!stiff_) {
        explicit_.attempt(evaluate, theta_, h, y_.data(), dy_.data());
        return explicit_.error(weights_.data());
    }
    findStiffDerivatives();
    if (!implicit_.attempt(evaluate, theta_, h, y_.data(), dy_.data(), derivatives_,
                           weights_.data())) {
        return std::numeric_limits<double>::infinity();
    }
    return implicit_.error(weights_.data());
}

std::optional<Problem> Ring::integrateTo(double stop) {
    const long firstStep = stepCount_;
    while (theta_ < stop) {
        chooseMethod(stop);
        const double remaining = stop - theta_;
        double h = std::min(h_, 0.5 * remaining);
        if (h_ >= 0.9 * remaining) {
            h = remaining;
        }
        const double error = tryStep(h);
        if (!(error <= 1.0)) {
            shortenStep(h, error);
            if (h_ < 1e-13 * window_) {
                return impossibleState(theta_).value_or(stalled());
            }
            continue;
        }
        const std::optional<Crossing> crossing = firstCrossing(h);
        if (crossing && crossing->share < 1.0) {
            if (crossing->share > 0.0 && !takePartOfStep(crossing->share * h)) {
                continue;
            }
        } else {
            adaptStep(h, error, h == remaining);
            accept(h, h == remaining ? stop : theta_ + h);
        }
        if (crossing) {
            toggle(crossing->member, static_cast<Event>(crossing->event));
            members_[crossing->member].lastEvent = theta_;
            refresh();
        }
        if (auto problem = impossibleState(theta_)) {
            return problem;
        }
        if (stepCount_ - firstStep > stepLimit) {
            return stalled();
        }
    }
    return std::nullopt;
}

bool Ring::takePartOfStep(double h) {
    if (!std::isfinite(tryStep(h))) {
        h_ = 0.5 * h;
        return false;
    }
    accept(h, theta_ + h);
    return true;
}

void Ring::shortenStep(double h, double error) {
    if (!std::isfinite(error)) {
        h_ = 0.25 * h;
        return;
    }
    const double power = !stiff_ ? -0.2 : -0.25;
    h_ = h * std::clamp(0.9 * std::pow(error, power), 0.1, 0.9);
}

/// Step size for the next step. [Hairer, Nørsett & Wanner, §II.4; PI control after Hairer & Wanner,
/// §IV.2, for the explicit method]
void Ring::adaptStep(double h, double error, bool cutShort) {
    const double bounded = std::max(error, 1e-8);
    const double factor = !stiff_ ? 0.9 * std::pow(bounded, -0.17) * std::pow(lastError_, 0.04)
                                  : 0.9 * std::pow(bounded, -0.25);
    const double next = h * std::clamp(factor, 0.2, 5.0);
    h_ = cutShort ? std::max(h_, next) : next;
    lastError_ = std::max(error, 1e-4);
}

void Ring::accept(double h, double end) {
    ++stepCount_;
    implicitSteps_ += stiff_ ? 1 : 0;
    steps_.begin.push_back(theta_);
    steps_.length.push_back(h);
    for (std::size_t k = 0; k < members_.size(); ++k) {
        for (const Variable variable : {airMass, productsMass, temperature}) {
            double r[StepRecord::terms];
            step().denseCoefficients(static_cast<int>(k) * cylinderVariables + variable, r);
            steps_.coefficients.insert(steps_.coefficients.end(), r, r + StepRecord::terms);
        }
    }
    if (hasPlenum()) {
        for (const int variable : {plenumMass, plenumTemperature}) {
            double r[StepRecord::terms];
            step().denseCoefficients(static_cast<int>(plenumOffset_) + variable, r);
            steps_.plenumCoefficients.insert(steps_.plenumCoefficients.end(), r,
                                             r + StepRecord::terms);
        }
    }
    std::copy_n(step().end(), y_.size(), y_.begin());
    std::copy_n(step().endRates(), y_.size(), dy_.begin());
    theta_ = end;
    settle();
}

void Ring::interpolate(double s, double* out) const {
    double r[DenseStep::denseTerms];
    for (std::size_t i = 0; i < y_.size(); ++i) {
        step().denseCoefficients(static_cast<int>(i), r);
        out[i] = denseValue(r, s);
    }
}

std::optional<Ring::Crossing> Ring::firstCrossing(double h) {
    std::optional<Crossing> first;
    for (std::size_t k = 0; k < members_.size(); ++k) {
        const Member& member = members_[k];
        const Margins end = member.cylinder.margins(step().end() + k * cylinderVariables,
                                                    member.memory, member.observed);
        for (int e = 0; e < eventCount; ++e) {
            if (end[static_cast<std::size_t>(e)] >= -slack_) {
                continue;
            }
            crossings_.push_back({k, e, 1.0});
        }
    }
    for (Crossing& crossing : crossings_) {
        const Member& member = members_[crossing.member];
        const double start = member.margins[static_cast<std::size_t>(crossing.event)];
        if (start > 0.0) {
            crossing.share = crossingShare(crossing.member, crossing.event, h);
        } else {
            // already past: change at once, but only once at the same angle
            crossing.share = theta_ - member.lastEvent > sameAngle ? 0.0 : 1.0;
        }
        if (!first || crossing.share < first->share) {
            first = crossing;
        }
    }
    crossings_.clear();
    return first;
}

double Ring::crossingShare(std::size_t index, int event, double h) {
    Member& member = members_[index];
    const auto margin = [&](double s) {
        interpolate(s, scratch_.data());
        const SupplyState supply = plenumState(scratch_.data());
        const double* y = scratch_.data() + index * cylinderVariables;
        Observed observed;
        member.cylinder.rates(theta_ + s * h + member.offset, y, member.memory, supply,
                              scratchRates_.data(), observed);
        return member.cylinder.margins(y, member.memory, observed)[static_cast<std::size_t>(event)];
    };
    const double start = member.margins[static_cast<std::size_t>(event)];
    const double end = margin(1.0);
    if (!(end < 0.0)) {
        return 1.0;
    }
    std::uintmax_t iterations = 40;
    const auto bracket = boost::math::tools::toms748_solve(
        margin, 0.0, 1.0, start, end, [](double a, double b) { return std::fabs(b - a) < 1e-11; },
        iterations);
    return bracket.second;
}

} // namespace lobewright::gas
