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
    if (relativeTolerance != weightsTolerance_) {
        for (std::size_t i = 0; i < y_.size(); ++i) {
            weights_[i] = relativeTolerance * scales_[i];
        }
        weightsTolerance_ = relativeTolerance;
    }
    for (std::size_t k = 0; k < members_.size(); ++k) {
        weights_[k * cylinderVariables + temperature] =
            relativeTolerance * std::fabs(variables(k)[temperature]);
    }
}

/// Step sizes differ from one smooth stretch to the next, but windows are much alike: each stretch
/// begins with the size that suited its first step before. What is known is kept as long as it
/// serves, so that windows in turn are divided alike and their states comparable.
void Ring::beginStretch() {
    const std::size_t stretch = stretch_++;
    if (stretch >= firstSteps_.size()) {
        firstSteps_.resize(stretch + 1);
    }
    const FirstStep& known = firstSteps_[stretch];
    if (known.size > 0.0 && known.implicit == stiff_) {
        h_ = known.size * std::pow(tolerance_ / known.tolerance, known.implicit ? 0.25 : 0.2);
    }
    firstStepPending_ = true;
    firstStepFailed_ = false;
}

void Ring::noteFirstStep(double suitable) {
    if (!firstStepPending_) {
        return;
    }
    firstStepPending_ = false;
    FirstStep& known = firstSteps_[stretch_ - 1];
    if (firstStepFailed_ || known.tolerance != tolerance_ || known.implicit != stiff_) {
        known = {suitable, tolerance_, stiff_};
    }
}

double Ring::tryStep(double h) {
    const auto evaluate = [this](double theta, const double* y, double* dy) {
        ++effort_.stepEvaluations;
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
    firstStepPending_ = false;
    return true;
}

void Ring::shortenStep(double h, double error) {
    firstStepFailed_ = true;
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
    noteFirstStep(next);
    h_ = cutShort ? std::max(h_, next) : next;
    lastError_ = std::max(error, 1e-4);
}

void Ring::accept(double h, double end) {
    ++stepCount_;
    ++(stiff_ ? effort_.implicitSteps : effort_.explicitSteps);
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

/// The continuous extension of what rates and margins of a member depend on.
void Ring::extend(std::size_t index, std::vector<double>& coefficients) const {
    coefficients.resize(DenseStep::denseTerms * (judgedVariables + 2));
    double* r = coefficients.data();
    const auto add = [&](std::size_t variable) {
        step().denseCoefficients(static_cast<int>(variable), r);
        r += DenseStep::denseTerms;
    };
    for (std::size_t i = 0; i < judgedVariables; ++i) {
        add(index * cylinderVariables + i);
    }
    if (hasPlenum()) {
        add(plenumOffset_ + plenumMass);
        add(plenumOffset_ + plenumTemperature);
    }
}

double Ring::crossingShare(std::size_t index, int event, double h) {
    Member& member = members_[index];
    extend(index, extension_);
    const auto margin = [&](double s) {
        const double* r = extension_.data();
        const auto next = [&] {
            const double value = denseValue(r, s);
            r += DenseStep::denseTerms;
            return value;
        };
        double* y = scratch_.data() + index * cylinderVariables;
        for (int i = 0; i < judgedVariables; ++i) {
            y[i] = next();
        }
        if (hasPlenum()) {
            scratch_[plenumOffset_ + plenumMass] = next();
            scratch_[plenumOffset_ + plenumTemperature] = next();
        }
        const SupplyState supply = plenumState(scratch_.data());
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
