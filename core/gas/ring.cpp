#include "core/gas/ring.h"

#include "core/gas/supply.h"
#include "core/units.h"

#include <boost/math/tools/roots.hpp>
#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

namespace lobewright::gas {
namespace {

constexpr double sameAngle = 1e-12;         ///< window angles closer than this are one [rad]
constexpr long stepLimit = 400000;          ///< steps of one window
constexpr double coldest = 50.0;            ///< [K]; outside, the gas model means nothing
constexpr double hottest = 8000.0;          ///< [K]
constexpr std::size_t reservedSteps = 4096; ///< memory taken beforehand for the record

/// Scales of the variables of a cylinder: an error of `tolerance` times the scale is tolerated.
std::array<double, cylinderVariables> variableScales(const Model& model) {
    std::array<double, cylinderVariables> scales{};
    scales.fill(model.massScale);
    scales[temperature] = scales[unburntTemperature] = 300.0;
    scales[knockIntegral] = 1.0;
    scales[outflowTemperature] = 300.0 * model.massScale;
    for (const Variable variable : {slugEnthalpy, work, wallHeat, inletEnthalpy, exhaustEnthalpy}) {
        scales[variable] = model.energyScale;
    }
    scales[burntFuel] = model.massScale / model.gas.airFuelRatio;
    return scales;
}

} // namespace

Ring::Ring(const Model& model, const SupplyState& supply)
    : model_(&model), constantSupply_(supply), window_(model.period()), y_(cylinderVariables, 0.0),
      plenumOffset_(cylinderVariables), explicit_(cylinderVariables),
      implicit_(cylinderVariables, 1) {
    members_.emplace_back(model, model.start);
    takeStorage(1);
}

Ring::Ring(const Model& model, const std::vector<double>& lags, const std::vector<double>& weights,
           bool even)
    : model_(&model), even_(even),
      window_(even ? model.period() / static_cast<double>(lags.size()) : model.period()),
      y_(lags.size() * cylinderVariables + plenumVariables, 0.0),
      plenumOffset_(lags.size() * cylinderVariables), explicit_(static_cast<int>(y_.size())),
      implicit_(static_cast<int>(y_.size()), static_cast<int>(lags.size())) {
    for (std::size_t k = 0; k < lags.size(); ++k) {
        // alike: member b stands at the start of the b-th part of the period
        double start =
            even ? model.start + static_cast<double>(k) * window_ : model.start - lags[k];
        if (start < model.start - sameAngle) {
            start += model.period();
        }
        Member member(model, start);
        member.weight = weights[k];
        member.record = even ? 0 : k;
        members_.push_back(member);
    }
    takeStorage(even ? 1 : lags.size());
    double* plenum = &scales_[plenumOffset_];
    const Supply& settings = model.settings.supply;
    plenum[plenumMass] = ambientDensity(settings, model.gas.air) * settings.plenumVolume;
    plenum[plenumTemperature] = settings.ambientTemperature;
    plenum[blowerWork] = model.energyScale;
    plenum[pressureSum] = settings.ambientPressure;
    plenum[temperatureSum] = settings.ambientTemperature;
}

void Ring::takeStorage(std::size_t recordRows) {
    const std::size_t size = y_.size();
    dy_.assign(size, 0.0);
    scratch_.assign(size, 0.0);
    scratchRates_.assign(size, 0.0);
    weights_.assign(size, 1.0);
    blocks_.assign(members_.size(), {});
    scales_.assign(size, 1.0);
    const auto scales = variableScales(*model_);
    for (std::size_t k = 0; k < members_.size(); ++k) {
        std::copy(scales.begin(), scales.end(),
                  scales_.begin() + static_cast<std::ptrdiff_t>(k * cylinderVariables));
    }
    records_.assign(recordRows, std::vector<CycleRecord>(model_->chamber->cycles().size()));
    steps_.begin.reserve(reservedSteps);
    steps_.length.reserve(reservedSteps);
    steps_.coefficients.reserve(reservedSteps * members_.size() * StepRecord::variables *
                                StepRecord::terms);
}

SupplyState Ring::plenumState(const double* y) const {
    if (!hasPlenum()) {
        return constantSupply_;
    }
    const double* plenum = y + plenumOffset_;
    const double pressure = plenum[plenumMass] * model_->gas.air.gasConstant() *
                            plenum[plenumTemperature] / model_->settings.supply.plenumVolume;
    return {pressure, model_->freshStream(plenum[plenumTemperature])};
}

/// dm = ṁ_b − Σ ṁ_k, dU = ṁ_b·h(T_in) − Σ ṁ_k·h(T), adiabatic.
void Ring::plenumRates(const double* y, double fresh, const SupplyState& supply, double* dy) const {
    const double* plenum = y + plenumOffset_;
    double* rate = dy + plenumOffset_;
    const Supply& settings = model_->settings.supply;
    const GasGroup& air = model_->gas.air;
    const double blown = blowerFlow(settings, air, model_->omega) / model_->omega;
    const Compression compression = compress(settings, air, supply.pressure);
    const double inlet =
        std::min(compression.outletTemperature,
                 settings.afterCoolerTemperature.value_or(std::numeric_limits<double>::infinity()));
    const double t = plenum[plenumTemperature];
    const double r = air.gasConstant();
    rate[plenumMass] = blown - fresh;
    rate[plenumTemperature] =
        (blown * (air.enthalpy(inlet) - supply.fresh.enthalpy + r * t) - fresh * r * t) /
        (plenum[plenumMass] * (air.heat(t) - r));
    rate[blowerWork] = blown * compression.work;
    rate[pressureSum] = supply.pressure;
    rate[temperatureSum] = t;
}

void Ring::rates(double theta, const double* y, double* dy) {
    const SupplyState supply = plenumState(y);
    double fresh = 0.0;
    for (std::size_t k = 0; k < members_.size(); ++k) {
        Member& member = members_[k];
        member.cylinder.rates(theta + member.offset, y + k * cylinderVariables, member.memory,
                              supply, dy + k * cylinderVariables, member.observed);
        fresh += member.weight * member.observed.freshRate;
    }
    if (hasPlenum()) {
        plenumRates(y, fresh, supply, dy);
    }
    ++rhsEvaluations_;
}

void Ring::refresh() {
    rates(theta_, y_.data(), dy_.data());
    for (std::size_t k = 0; k < members_.size(); ++k) {
        Member& member = members_[k];
        if (member.hintsStale) {
            Mode& mode = member.memory.mode;
            mode.inletChoked = member.observed.inletChoking < 0.0;
            mode.exhaustChoked = member.observed.exhaustChoking < 0.0;
            mode.freshLimitsShortCircuit = member.observed.shortCircuit >= 0.0;
            mode.hot = variables(k)[temperature] >= fitBreak;
            member.hintsStale = false;
        }
    }
    settle();
}

void Ring::settle() {
    relaxation_ = 0.0;
    for (std::size_t k = 0; k < members_.size(); ++k) {
        Member& member = members_[k];
        member.margins = member.cylinder.margins(variables(k), member.memory, member.observed);
        if (member.memory.mode.portsOpen()) {
            relaxation_ = std::max(relaxation_, member.observed.relaxation());
        }
        blocks_[k] = stiffBlock(member.observed);
    }
}

/// An explicit step is stable up to about 3.3/rate. Where that would take hundreds of steps to the
/// next stop, an implicit method is cheaper.
void Ring::chooseMethod(double stop) {
    constexpr double enter = 300.0;
    constexpr double leave = 50.0;
    const double relaxations = relaxation_ * (stop - theta_);
    if (step_ == &explicit_ && relaxations > enter) {
        step_ = &implicit_;
    } else if (step_ == &implicit_ && relaxations < leave) {
        step_ = &explicit_;
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

std::optional<Problem> Ring::advance(double relativeTolerance) {
    tolerance_ = relativeTolerance;
    slack_ = 0.1 * relativeTolerance;
    startWindow();
    refresh();
    std::size_t snapshot = 0;
    snapshots.clear();
    while (theta_ < window_) {
        double stop = std::min(nextStopAngle(), window_);
        const bool pause = snapshot < snapshotAngles.size() && snapshotAngles[snapshot] <= stop;
        if (pause) {
            stop = snapshotAngles[snapshot];
        }
        if (auto problem = integrateTo(stop)) {
            return problem;
        }
        if (pause) {
            snapshots.push_back({});
            std::copy_n(variables(0), cylinderVariables, snapshots.back().y.begin());
            snapshots.back().memory = members_[0].memory;
            ++snapshot;
        }
        if (applyStops()) {
            refresh();
        }
    }
    finishWindow();
    return std::nullopt;
}

double Ring::tryStep(double h) {
    const auto evaluate = [this](double theta, const double* y, double* dy) {
        rates(theta, y, dy);
    };
    setWeights(tolerance_);
    if (step_ == &explicit_) {
        explicit_.attempt(evaluate, theta_, h, y_.data(), dy_.data());
        return explicit_.error(weights_.data());
    }
    if (!implicit_.attempt(evaluate, theta_, h, y_.data(), dy_.data(), blocks_, weights_.data())) {
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
    const double power = step_ == &explicit_ ? -0.2 : -0.25;
    h_ = h * std::clamp(0.9 * std::pow(error, power), 0.1, 0.9);
}

/// Step size for the next step. [Hairer, Nørsett & Wanner, §II.4; PI control after Hairer & Wanner,
/// §IV.2, for the explicit method]
void Ring::adaptStep(double h, double error, bool cutShort) {
    const double bounded = std::max(error, 1e-8);
    const double factor = step_ == &explicit_
                              ? 0.9 * std::pow(bounded, -0.17) * std::pow(lastError_, 0.04)
                              : 0.9 * std::pow(bounded, -0.25);
    const double next = h * std::clamp(factor, 0.2, 5.0);
    h_ = cutShort ? std::max(h_, next) : next;
    lastError_ = std::max(error, 1e-4);
}

void Ring::accept(double h, double end) {
    ++stepCount_;
    steps_.begin.push_back(theta_);
    steps_.length.push_back(h);
    for (std::size_t k = 0; k < members_.size(); ++k) {
        for (const Variable variable : {airMass, productsMass, temperature}) {
            double r[StepRecord::terms];
            step_->denseCoefficients(static_cast<int>(k) * cylinderVariables + variable, r);
            steps_.coefficients.insert(steps_.coefficients.end(), r, r + StepRecord::terms);
        }
    }
    std::copy_n(step_->end(), y_.size(), y_.begin());
    std::copy_n(step_->endRates(), y_.size(), dy_.begin());
    theta_ = end;
    settle();
}

void Ring::interpolate(double s, double* out) const {
    double r[DenseStep::denseTerms];
    for (std::size_t i = 0; i < y_.size(); ++i) {
        step_->denseCoefficients(static_cast<int>(i), r);
        out[i] = denseValue(r, s);
    }
}

std::optional<Ring::Crossing> Ring::firstCrossing(double h) {
    std::optional<Crossing> first;
    for (std::size_t k = 0; k < members_.size(); ++k) {
        const Member& member = members_[k];
        const Margins end = member.cylinder.margins(step_->end() + k * cylinderVariables,
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

std::optional<Problem> Ring::impossibleState(double theta) const {
    for (std::size_t k = 0; k < members_.size(); ++k) {
        const double* y = variables(k);
        const double mass = y[airMass] + y[productsMass];
        if (y[temperature] > coldest && y[temperature] < hottest && mass > 0.0) {
            continue;
        }
        return Problem{"", fmt::format("the gas ran out of every range at {:.1f}° of the shaft: "
                                       "{:.4g} K, {:.4g} mg in the chamber",
                                       (theta + members_[k].offset) / units::degree, y[temperature],
                                       mass / units::milligram)};
    }
    if (hasPlenum() && !(y_[plenumOffset_ + plenumMass] > 0.0)) {
        return Problem{"/gas/supply/plenum_cm3",
                       "the plenum ran empty: the cylinders take all that the blower delivers at "
                       "once; the plenum must hold more"};
    }
    return std::nullopt;
}

Problem Ring::stalled() const {
    return {"", fmt::format("the gas equations could not be followed past {:.3f}° of the shaft: "
                            "the steps became too small",
                            (theta_ + members_[0].offset) / units::degree)};
}

} // namespace lobewright::gas
