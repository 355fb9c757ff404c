#include "core/gas/cycle/coupled_cylinders.h"

#include "core/gas/cycle/turbine.h"
#include "core/gas/models/supply.h"
#include "core/units.h"

#include <Eigen/LU>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace lobewright::gas {
namespace {

/// The pressure that the search starts from and that the trapped charge is guessed by.
double guessedSupplyPressure(const Settings& settings) {
    const Supply& supply = settings.supply;
    return supply.kind == SupplyKind::reservoir
               ? supply.pressure
               : std::max(supply.ambientPressure, 1.15 * settings.exhaustPressure);
}

/// What a compressor gives falls with the plenum's pressure: −d ln ṁ/d ln p, 0 of a blower.
double feedAnswer(const Feeder& feeder, double pressure) {
    const double flow = feeder.feed(pressure).flow;
    return flow > 0.0 ? feeder.slope(pressure) * pressure / flow : 0.0;
}

/// Likely gas in an exhaust plenum.
Stream guessedExhaust(const Model& model) {
    return model.fired ? model.stream(0.5, 800.0)
                       : model.stream(0.0, model.settings.supply.ambientTemperature);
}

} // namespace

SupplyState constantSupply(const Model& model, double blowerPressure) {
    const double exhaust = model.settings.exhaustPressure;
    const Stream behind = model.hasTurbine() ? guessedExhaust(model) : Stream{};
    const Supply& supply = model.settings.supply;
    if (supply.kind == SupplyKind::reservoir) {
        return {supply.pressure, model.freshStream(supply.temperature), exhaust, behind};
    }
    if (supply.kind == SupplyKind::underPiston) {
        return {blowerPressure, model.freshStream(supply.ambientTemperature), exhaust, behind};
    }
    return {blowerPressure, model.freshStream(model.feeder.feed(blowerPressure).temperature),
            exhaust, behind};
}

Charge guessedCharge(const Model& model, const SupplyState& supply) {
    const double products = model.fired ? 0.15 : 0.0;
    const double t = supply.fresh.temperature * (model.fired ? 1.2 : 1.05);
    const double pressure = 0.5 * (supply.pressure + model.settings.exhaustPressure);
    const double mass = pressure * model.chamber->at(model.start).volume /
                        (model.stream(products, t).gasConstant * t);
    Charge charge;
    charge.air = (1.0 - products) * mass;
    charge.products = products * mass;
    charge.temperature = t;
    charge.exhaustProducts = model.fired ? 0.6 : 0.0;
    charge.exhaustTemperature = model.fired ? 900.0 : supply.fresh.temperature;
    charge.fresh = charge.air;
    return charge;
}

CoupledCylinders::CoupledCylinders(const Model& model, const SupplyState& supply)
    : model_(&model), lags_{0.0}, weights_{1.0}, window_(model.period()),
      alone_(model, supply, false), together_(model, supply, false), closed_(model) {
    records_.assign(1, CylinderRecord{std::vector<CycleRecord>(cycles()), {}, {}});
}

CoupledCylinders::CoupledCylinders(const Model& model, const Phases& phases, bool eachByItself)
    : model_(&model), lags_{0.0}, weights_{1.0},
      hasPlenum_(model.settings.supply.kind != SupplyKind::reservoir), window_(model.period()),
      alone_(model, constantSupply(model, guessedSupplyPressure(model.settings)), false),
      together_(model, constantSupply(model, guessedSupplyPressure(model.settings)), hasPlenum_),
      closed_(model) {
    if (hasPlenum_) {
        weights_ = {phases.weights.front()};
        if (phases.even && !eachByItself) {
            windows_ = static_cast<int>(phases.lags.size());
            window_ = model.period() / windows_;
        } else {
            lags_ = phases.lags;
            weights_ = phases.weights;
        }
        for (std::size_t k = 0; k < lags_.size(); ++k) {
            for (std::size_t j = 0; j < cycles(); ++j) {
                const double into = entryOf(model.chamber->cycles()[j]) - model.start + lags_[k];
                entries_.push_back({into - std::floor(into / window_) * window_, k, j});
            }
        }
        std::sort(entries_.begin(), entries_.end(),
                  [](const Entry& a, const Entry& b) { return a.theta < b.theta; });
        for (const double event : model.pumpSpace.skirtEvents()) {
            pumpStops_.push_back(event - std::floor(event / window_) * window_);
        }
        std::sort(pumpStops_.begin(), pumpStops_.end());
    }
    records_.assign(lags_.size(), CylinderRecord{std::vector<CycleRecord>(cycles()), {}, {}});
}

/// Cylinder 1 is run on a constant supply whose pressure is moved until it takes what the blower
/// gives; where it then stands in the middle of its gas exchange, others stand at the start of the
/// window.
Result<CoupledCylinders::State> CoupledCylinders::guess() const {
    constexpr int rounds = 3;
    constexpr double looseTolerance = 1e-4;
    State state;
    if (!hasPlenum_) {
        state.charges = {guessedCharge(*model_, together_.plenumRecord.constant)};
        return state;
    }
    const double cylinders = weights_.front() * static_cast<double>(windows_) +
                             std::accumulate(weights_.begin() + 1, weights_.end(), 0.0);
    const double exhaust = model_->settings.exhaustPressure;
    const double perCylinder = model_->period() / (model_->omega * cylinders);
    double pressure = guessedSupplyPressure(model_->settings);
    if (const auto& wheel = model_->feeder.wheel()) {
        pressure = intakePressure(model_->settings.supply) *
                   wheel->pressureRatio(wheel->curve().bestFlow() * wheel->flowUnit());
    }
    State one;
    one.charges = {guessedCharge(*model_, constantSupply(*model_, pressure))};
    for (int i = 0; i < (model_->pumps() ? 1 : rounds); ++i) {
        CoupledCylinders single(*model_, constantSupply(*model_, pressure));
        if (auto problem = single.advance(one, looseTolerance)) {
            return *problem;
        }
        if (model_->pumps()) {
            break;
        }
        if (model_->feeder.wheel()) {
            // halfway to the pressure at which the wheel gives what the cylinders take
            const double taken = std::max(single.sumOf(deliveredMass), 0.0) / perCylinder;
            pressure = 0.5 * (pressure + intakePressure(model_->settings.supply) *
                                             model_->feeder.wheel()->pressureRatio(taken));
            continue;
        }
        const double share = model_->feeder.feed(pressure).flow * perCylinder;
        const double taken = std::max(single.sumOf(deliveredMass), 0.01 * share);
        // orifice flow grows about as the root of the pressure difference
        const double factor = std::clamp((share / taken) * (share / taken), 0.25, 4.0);
        pressure = exhaust + std::max(pressure - exhaust, 0.01 * exhaust) * factor;
    }
    const SupplyState supply = constantSupply(*model_, pressure);
    state.delivery = delivery(pressure);
    state.plenum[plenumTemperature] = supply.fresh.temperature;
    state.plenum[plenumMass] =
        model_->pumps()
            ? pressure * model_->pumpSpace.at(0.0).volume /
                  (supply.fresh.gasConstant * supply.fresh.temperature)
            : pressure / (together_.outside().pressurePerState() * supply.fresh.temperature);
    if (model_->hasTransfer()) {
        state.plenum[transferTemperature] = supply.fresh.temperature;
        state.plenum[transferMass] = pressure * *model_->settings.supply.pump.transferVolume /
                                     (supply.fresh.gasConstant * supply.fresh.temperature);
    }
    if (model_->hasTurbine()) {
        const Stream gas = supply.behind;
        const double volume = model_->settings.supply.compressor.turbine.exhaustVolume;
        const double mass = 1.05 * exhaust * volume / (gas.gasConstant * gas.temperature);
        state.plenum[exhaustPlenumMass] = mass;
        state.plenum[exhaustPlenumTemperature] = gas.temperature;
        state.plenum[exhaustPlenumProducts] = gas.products * mass;
    }
    CoupledCylinders single(*model_, supply);
    for (std::size_t j = 0; j < cycles(); ++j) {
        RunningCylinder cylinder(*model_);
        std::vector<CylinderRecord> record = single.records_;
        cylinder.written = &record.front();
        single.alone_.cylinders = {&cylinder};
        cylinder.begin(one.charges.front(), j);
        for (std::size_t k = 0; k < lags_.size(); ++k) {
            state.charges.resize(lags_.size() * cycles());
            state.charges[k * cycles() + j] = one.charges.front();
        }
        // angles of cylinder 1 at which others begin the window
        std::vector<Breathing> places;
        for (std::size_t k = 0; k < lags_.size(); ++k) {
            for (int b = 0; b < windows_; ++b) {
                const double into = b * window_ - lags_[k];
                const double period = model_->period();
                Breathing place;
                place.row = k;
                place.angle = model_->start + into - std::floor(into / period) * period;
                places.push_back(place);
            }
        }
        std::sort(places.begin(), places.end(),
                  [](const Breathing& a, const Breathing& b) { return a.angle < b.angle; });
        const CycleAngles& cycle = model_->chamber->cycles()[j];
        for (Breathing& place : places) {
            if (place.angle <= entryOf(cycle) + sameAngle ||
                place.angle >= cycle.lastClosing - sameAngle) {
                continue;
            }
            if (auto problem = single.alone_.followTo(place.angle, looseTolerance)) {
                return *problem;
            }
            place.y = cylinder.y;
            place.memory = cylinder.memory;
            state.breathing.push_back(place);
        }
    }
    return state;
}

double CoupledCylinders::delivery(double plenumPressure) const {
    constexpr double leastFlow = 1e-3; // flow coefficient of a wheel that gives next to nothing
    const auto& wheel = model_->feeder.wheel();
    double flow = model_->feeder.feed(plenumPressure).flow;
    if (wheel) {
        flow = std::max(flow, leastFlow * wheel->flowUnit());
    }
    return flow / model_->omega * window_;
}

SupplyState CoupledCylinders::meanSupply(const State& state) const {
    if (model_->pumps()) {
        return constantSupply(*model_, guessedSupplyPressure(model_->settings));
    }
    SupplyState supply =
        constantSupply(*model_, together_.outside().pressurePerState() * state.plenum[plenumMass] *
                                    state.plenum[plenumTemperature]);
    if (model_->hasTurbine()) {
        const PlenumState& plenum = state.plenum;
        const ExhaustState exhaust =
            exhaustState(*model_, plenum[exhaustPlenumMass], plenum[exhaustPlenumTemperature],
                         plenum[exhaustPlenumProducts]);
        supply.exhaustPressure = exhaust.pressure;
        supply.behind = exhaust.stream;
    }
    return supply;
}

bool CoupledCylinders::fits(const State& state) const {
    return state.charges.size() == (hasPlenum_ ? lags_.size() * cycles() : 1) &&
           (state.plenum[plenumMass] > 0.0) == hasPlenum_ &&
           (state.plenum[exhaustPlenumMass] > 0.0) ==
               (model_->hasTurbine() || model_->hasTransfer());
}

std::optional<Problem> CoupledCylinders::advance(State& state, double relativeTolerance) {
    for (CylinderRecord& record : records_) {
        record.clear();
    }
    alone_.beginPeriod();
    together_.beginPeriod();
    return hasPlenum_ ? advanceTogether(state, relativeTolerance)
                      : advanceAlone(state, relativeTolerance);
}

void CoupledCylinders::allow(long evaluations) {
    for (Integration* integration : {&alone_, &together_}) {
        integration->mostEvaluations = integration->rateEvaluations() + evaluations;
    }
}

std::optional<Problem> CoupledCylinders::advanceAlone(State& state, double tolerance) {
    closed_.written = &records_.front();
    closed_.rough = tolerance > roughTolerance;
    alone_.cylinders = {&closed_};
    for (std::size_t j = 0; j < cycles(); ++j) {
        closed_.begin(state.charges.front(), j);
        if (auto problem = run(closed_, lastClosing, tolerance)) {
            return problem;
        }
        closed_.count();
        state.charges.front() = closed_.carried();
    }
    return std::nullopt;
}

std::optional<Problem> CoupledCylinders::run(RunningCylinder& cylinder, unsigned until,
                                             double tolerance) {
    for (;;) {
        const unsigned next = cylinder.nextStop < model_->stops.size()
                                  ? model_->stops[cylinder.nextStop].actions
                                  : lastClosing;
        if (auto problem = alone_.advance(cylinder.nextStopAngle() - cylinder.angle, tolerance)) {
            return problem;
        }
        if (next & until & ~static_cast<unsigned>(lastClosing)) {
            return std::nullopt;
        }
        if (cylinder.applyStops(alone_.pressures()) & until) {
            return std::nullopt;
        }
    }
}

std::optional<Problem> CoupledCylinders::enter(const Entry& entry, const State& state,
                                               double tolerance) {
    RunningCylinder& cylinder = breathing_.emplace_back(*model_);
    cylinder.row = entry.row;
    cylinder.weight = weights_[entry.row];
    cylinder.written = &records_[entry.row];
    cylinder.rough = tolerance > roughTolerance;
    cylinder.begin(state.charges[entry.row * cycles() + entry.cycle], entry.cycle);
    alone_.cylinders = {&cylinder};
    return run(cylinder, model_->hasTurbine() ? firstOpening : inletOpens, tolerance);
}

void CoupledCylinders::put(const Breathing& breathing, double tolerance) {
    RunningCylinder& cylinder = breathing_.emplace_back(*model_);
    cylinder.row = breathing.row;
    cylinder.weight = weights_[breathing.row];
    cylinder.written = &records_[breathing.row];
    cylinder.rough = tolerance > roughTolerance;
    cylinder.y = breathing.y;
    cylinder.memory = breathing.memory;
    cylinder.angle = breathing.angle;
    cylinder.findNextStop();
    cylinder.startCounting();
}

/// Cylinders that have closed all ports leave their charge.
void CoupledCylinders::leave(State& state) {
    for (auto cylinder = breathing_.begin(); cylinder != breathing_.end();) {
        if (!(cylinder->applyStops(together_.pressures()) & lastClosing)) {
            ++cylinder;
            continue;
        }
        cylinder->count();
        state.charges[cylinder->row * cycles() + static_cast<std::size_t>(cylinder->memory.cycle)] =
            cylinder->carried();
        cylinder = breathing_.erase(cylinder);
    }
}

std::optional<Problem> CoupledCylinders::advanceTogether(State& state, double tolerance) {
    breathing_.clear();
    for (const Breathing& breathing : state.breathing) {
        put(breathing, tolerance);
    }
    together_.plenum = state.plenum;
    std::fill(together_.plenum.begin() + blowerWork, together_.plenum.begin() + plenumVariables,
              0.0);
    std::fill(together_.plenum.begin() + turbineWork, together_.plenum.end(), 0.0);
    windowBegin_ = together_.plenum;
    together_.plenumRecord.span = window_;
    together_.plenumRecord.begin.clear();
    together_.plenumRecord.length.clear();
    together_.plenumRecord.coefficients.clear();
    together_.theta = 0.0;
    std::size_t entry = 0;
    while (together_.theta < window_ - sameAngle) {
        double next = entry < entries_.size() ? entries_[entry].theta : window_;
        for (const RunningCylinder& cylinder : breathing_) {
            next = std::min(next, together_.theta + cylinder.nextStopAngle() - cylinder.angle);
        }
        next = std::min(next, window_);
        const auto stop =
            std::upper_bound(pumpStops_.begin(), pumpStops_.end(), together_.theta + sameAngle);
        if (stop != pumpStops_.end() && tolerance <= roughTolerance) {
            next = std::min(next, *stop);
        }
        if (next > together_.theta) {
            together_.cylinders.clear();
            for (RunningCylinder& cylinder : breathing_) {
                together_.cylinders.push_back(&cylinder);
            }
            if (auto problem = together_.advance(next - together_.theta, tolerance)) {
                return problem;
            }
            together_.theta = next;
        }
        leave(state);
        while (entry < entries_.size() && entries_[entry].theta <= together_.theta + sameAngle) {
            if (auto problem = enter(entries_[entry++], state, tolerance)) {
                return problem;
            }
            breathing_.back().applyStops(together_.pressures());
        }
    }
    state.breathing.clear();
    for (RunningCylinder& cylinder : breathing_) {
        cylinder.count();
        state.breathing.push_back({cylinder.row, cylinder.angle, cylinder.y, cylinder.memory});
    }
    state.plenum = together_.plenum;
    return std::nullopt;
}

/// The draw follows about the root of the pressure above the exhaust's and falls as that of the
/// temperature; what the feed brings replaces the gas. Near the steady state that makes mass and
/// pressure linear in what they are off by, d ln(m, p)/dθ = A·δ, so that δ = A⁻¹·(their change).
/// Either alone leads astray: gas too warm at the right pressure is to be exchanged for more of
/// cooler gas.
bool CoupledCylinders::foreseePlenum(const State& before, State& after, double trust) const {
    if (!hasPlenum_ || model_->pumps()) {
        return true;
    }
    const double pressure = meanPlenumPressure();
    const double behind = model_->hasTurbine() ? together_.plenum[exhaustPressureSum] / window_
                                               : model_->settings.exhaustPressure;
    const double above = std::max(1.0 - behind / pressure, 1e-3);
    const double answer = 0.5 / above + feedAnswer(model_->feeder, pressure);
    const auto logarithmOf = [&](PlenumVariable variable) {
        return std::log(after.plenum[variable] / before.plenum[variable]);
    };
    const double mass = logarithmOf(plenumMass), heat = mass + logarithmOf(plenumTemperature);
    const double gamma = model_->gas.air.heatRatio(after.plenum[plenumTemperature]);
    Eigen::Matrix2d exchange; // A, for every filling with what the feed brings
    exchange << -0.5, 0.5 - answer, 0.5 * gamma, -gamma * (answer + 0.5);
    const double renewed = delivery(pressure) / after.plenum[plenumMass];
    const Eigen::Array2d asked =
        trust * (exchange.inverse() * Eigen::Vector2d(mass, heat) / -renewed).array();
    const Eigen::Array2d more = asked.max(-0.3 * above).min(0.3 * above);
    after.plenum[plenumMass] *= std::exp(more[0]);
    after.plenum[plenumTemperature] *= std::exp(more[1] - more[0]);
    return (more == asked).all();
}

void CoupledCylinders::sortRecords() {
    for (CylinderRecord& record : records_) {
        record.sort();
    }
}

SupplyTrace CoupledCylinders::supply() const {
    return hasPlenum_ ? together_.plenumRecord : alone_.plenumRecord;
}

double CoupledCylinders::airShare() const {
    double least = 1.0;
    for (const CylinderRecord& row : records_) {
        for (const CycleRecord& record : row.cycles) {
            if (model_->fired && record.trappedMass > 0.0) {
                least = std::min({least, record.trappedAir / record.trappedMass,
                                  record.of(deliveredMass) / record.trappedMass});
            }
        }
    }
    return least;
}

double CoupledCylinders::sumOf(Variable counted) const {
    double sum = 0.0;
    for (const CylinderRecord& row : records_) {
        for (const CycleRecord& record : row.cycles) {
            sum += record.of(counted);
        }
    }
    return sum;
}

Effort CoupledCylinders::effort() const {
    Effort sum = alone_.effort();
    const Effort& more = together_.effort();
    sum.explicitSteps += more.explicitSteps;
    sum.implicitSteps += more.implicitSteps;
    sum.stepEvaluations += more.stepEvaluations;
    sum.restartEvaluations += more.restartEvaluations;
    return sum;
}

} // namespace lobewright::gas
