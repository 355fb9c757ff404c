#include "core/gas/ring.h"

#include "core/gas/supply.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>

LW_TEXTS_OF(Core)

namespace lobewright::gas {
namespace {

constexpr double sameAngle = 1e-12;         ///< window angles closer than this are one [rad]
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
      plenumOffset_(cylinderVariables), explicit_(cylinderVariables, coupledRanges(1, false)),
      implicit_(cylinderVariables, stiffVariables(1, false), coupledRanges(1, false)) {
    members_.emplace_back(model, model.start);
    takeStorage(1);
}

Ring::Ring(const Model& model, const std::vector<double>& lags, const std::vector<double>& weights,
           bool even)
    : model_(&model), even_(even),
      window_(even ? model.period() / static_cast<double>(lags.size()) : model.period()),
      y_(lags.size() * cylinderVariables + plenumVariables, 0.0),
      plenumOffset_(lags.size() * cylinderVariables),
      explicit_(static_cast<int>(y_.size()), coupledRanges(lags.size(), true)),
      implicit_(static_cast<int>(y_.size()), stiffVariables(lags.size(), true),
                coupledRanges(lags.size(), true)) {
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
    setPlenumScales();
}

Ring::Ring(const Model& model, const std::vector<double>& lags, double weight)
    : Ring(model, {0.0}, {weight}, true) {
    neighbours_ = Neighbours(model, {lags.begin() + 1, lags.end()}, weight);
}

void Ring::setPlenumScales() {
    double* plenum = &scales_[plenumOffset_];
    const Supply& settings = model_->settings.supply;
    plenum[plenumMass] = ambientDensity(settings, model_->gas.air) * settings.plenumVolume;
    plenum[plenumTemperature] = settings.ambientTemperature;
    plenum[blowerWork] = model_->energyScale;
    plenum[pressureSum] = settings.ambientPressure;
    plenum[temperatureSum] = settings.ambientTemperature;
}

void Ring::takeStorage(std::size_t recordRows) {
    const std::size_t size = y_.size();
    dy_.assign(size, 0.0);
    scratch_.assign(size, 0.0);
    scratchRates_.assign(size, 0.0);
    weights_.assign(size, 1.0);
    const auto stiff =
        static_cast<Eigen::Index>(stiffVariables(members_.size(), hasPlenum()).size());
    derivatives_.setZero(stiff, stiff);
    scales_.assign(size, 1.0);
    const auto scales = variableScales(*model_);
    for (std::size_t k = 0; k < members_.size(); ++k) {
        std::copy(scales.begin(), scales.end(),
                  scales_.begin() + static_cast<std::ptrdiff_t>(k * cylinderVariables));
    }
    records_.assign(recordRows, std::vector<CycleRecord>(model_->chamber->cycles().size()));
    steps_.begin.reserve(reservedSteps);
    steps_.length.reserve(reservedSteps);
    steps_.plenumCoefficients.reserve(2 * reservedSteps * StepRecord::terms);
    steps_.constantPressure = constantSupply_.pressure;
    steps_.pressurePerState = model_->gas.air.gasConstant() / model_->settings.supply.plenumVolume;
    steps_.coefficients.reserve(reservedSteps * members_.size() * StepRecord::variables *
                                StepRecord::terms);
}

SupplyState supplyAt(const Model& model, const StepRecord& steps, double window) {
    const auto temperature = steps.plenumTemperatureAt(window);
    return {steps.supplyPressureAt(window),
            model.freshStream(temperature.value_or(model.settings.supply.temperature))};
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
        if (!neighbours_.none()) {
            fresh += neighbours_.draw(theta, supply).rate;
        }
        plenumRates(y, fresh, supply, dy);
    }
    ++rhsEvaluations_;
}

void Ring::refresh() {
    ++effort_.restartEvaluations;
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
    for (std::size_t k = 0; k < members_.size(); ++k) {
        modeChanges_.push_back({theta_, k, members_[k].memory});
    }
    noteFreshFlow();
    settle();
    beginStretch();
    if (keepRestarts) {
        restarts.push_back({theta_, {}});
        std::copy_n(variables(0), cylinderVariables, restarts.back().snapshot.y.begin());
        restarts.back().snapshot.memory = members_[0].memory;
    }
}

void Ring::noteFreshFlow() {
    const bool fresh = members_.front().memory.mode.inlet == InletFlow::fresh;
    const bool noted = !freshIntervals_.empty() && freshIntervals_.back().to > theta_;
    if (fresh && !noted) {
        freshIntervals_.push_back({theta_, window_ + 1.0});
    } else if (!fresh && noted) {
        freshIntervals_.back().to = theta_;
    }
}

void Ring::settle() {
    relaxation_ = 0.0;
    for (std::size_t k = 0; k < members_.size(); ++k) {
        Member& member = members_[k];
        member.margins = member.cylinder.margins(variables(k), member.memory, member.observed);
        if (member.memory.mode.portsOpen()) {
            relaxation_ = std::max(relaxation_, member.observed.relaxation());
        }
        member.settled = member.observed;
    }
    if (hasPlenum()) {
        relaxation_ = std::max(relaxation_, plenumRelaxation());
    }
}

std::optional<Problem> Ring::advance(double relativeTolerance) {
    tolerance_ = relativeTolerance;
    slack_ = 0.1 * relativeTolerance;
    startWindow();
    restarts.clear();
    refresh();
    std::size_t snapshot = 0;
    snapshots.clear();
    while (theta_ < window_) {
        double stop = std::min({nextStopAngle(), neighbours_.nextChange(), window_});
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
        const bool changed = applyStops();
        if (neighbours_.pass(theta_) || changed) {
            refresh();
        }
    }
    finishWindow();
    return std::nullopt;
}

double Ring::airShare() const {
    double least = 1.0;
    for (const auto& row : records_) {
        for (const CycleRecord& record : row) {
            if (model_->fired && record.trappedMass > 0.0) {
                least = std::min({least, record.trappedAir / record.trappedMass,
                                  record.of(deliveredMass) / record.trappedMass});
            }
        }
    }
    return least;
}

std::optional<Problem> Ring::impossibleState(double theta) const {
    for (std::size_t k = 0; k < members_.size(); ++k) {
        const double* y = variables(k);
        const double mass = y[airMass] + y[productsMass];
        if (y[temperature] > coldest && y[temperature] < hottest && mass > 0.0) {
            continue;
        }
        return Problem{
            "",
            Message(
                LW_TEXT("the gas ran out of every range at %1 of the shaft: %2, %3 in the chamber"),
                withDecimals(toSi(in::degrees, (theta + members_[k].offset) / units::degree),
                             in::degrees, 1),
                amountIn(in::kelvin, y[temperature]), Amount(mass, in::mg))};
    }
    if (hasPlenum() && !(y_[plenumOffset_ + plenumMass] > 0.0)) {
        return Problem{
            "/gas/supply/plenum_cm3",
            LW_TEXT("the plenum ran empty: the cylinders take all that the blower delivers at "
                    "once; the plenum must hold more")};
    }
    return std::nullopt;
}

Problem Ring::stalled() const {
    return {"", Message(LW_TEXT("the gas equations could not be followed past %1 of the shaft: the "
                                "steps became too small"),
                        withDecimals(theta_ + members_[0].offset, in::degrees, 3))};
}

} // namespace lobewright::gas
