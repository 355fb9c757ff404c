#include "core/gas/cycle/coupled_cylinders.h"

#include "core/gas/cycle/turbine.h"
#include "core/gas/models/supply.h"
#include "core/units.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace lobewright::gas {
namespace {

constexpr double sameAngle = 1e-12;                ///< [rad]
constexpr double exhaustTemperatureScale = 1000.0; ///< [K]
constexpr double temperatureScale = 300.0;         ///< [K]

constexpr double coldestOutflow = 200.0, hottestOutflow = 4000.0; ///< [K]

bool possibleTemperature(double t) {
    return t > 100.0 && t < 6000.0;
}

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

/// The plenum filled with ambient air [kg].
double plenumScale(const Model& model) {
    return ambientDensity(model.settings.supply, model.gas.air) *
           model.settings.supply.plenumVolume;
}

/// Reads or writes the numbers of a state one after the other, so that the order is written down
/// once. `number(value, scale)` passes one; what was pushed back into the runner keeps its
/// composition and temperature: `slug(mass, products, enthalpy)` passes its mass.
template <class State, class Exchange>
void exchange(State& state, const Model& model, Exchange& with) {
    const double mass = model.massScale;
    for (auto& c : state.charges) {
        with.number(c.air, mass);
        with.number(c.products, mass);
        with.number(c.temperature, temperatureScale);
        with.slug(c.slugMass, c.slugProducts, c.slugEnthalpy);
        with.number(c.exhaustProducts, 1.0);
        with.number(c.exhaustTemperature, exhaustTemperatureScale);
        if (model.premixed()) {
            with.number(c.fresh, mass);
        }
    }
    for (auto& b : state.breathing) {
        for (const Variable variable :
             {airMass, productsMass, freshMass, residualMass, outflowMass, outflowProducts}) {
            with.number(b.y[variable], mass);
        }
        with.number(b.y[temperature], temperatureScale);
        with.slug(b.y[slugMass], b.y[slugProducts], b.y[slugEnthalpy]);
        with.number(b.y[outflowTemperature], mass * exhaustTemperatureScale);
        with.number(b.memory.exhaustBack.products, 1.0);
        with.number(b.memory.exhaustBack.temperature, exhaustTemperatureScale);
        with.number(b.memory.displacedUntil, mass);
        with.number(b.memory.residual.products, 1.0);
        with.number(b.memory.residual.gasConstant, 300.0);
    }
    if (model.pumps() && state.plenum[plenumMass] > 0.0) {
        with.number(state.plenum[plenumMass], mass);
        with.number(state.plenum[plenumTemperature], temperatureScale);
        with.number(state.plenum[plenumProducts], mass);
        if (model.hasTransfer()) {
            with.number(state.plenum[transferMass], mass);
            with.number(state.plenum[transferTemperature], temperatureScale);
            with.number(state.plenum[transferProducts], mass);
        }
    } else if (state.plenum[plenumMass] > 0.0) {
        // a large plenum changes little in a window, however wrong it is: its numbers are weighed
        // with how many windows' delivery it holds
        const double weight = std::max(1.0, plenumScale(model) / state.delivery);
        with.number(state.plenum[plenumMass], plenumScale(model) / weight);
        with.number(state.plenum[plenumTemperature], temperatureScale / weight);
    }
    if (model.hasTurbine()) {
        with.number(state.plenum[exhaustPlenumMass], mass);
        with.number(state.plenum[exhaustPlenumTemperature], exhaustTemperatureScale);
        with.number(state.plenum[exhaustPlenumProducts], mass);
    }
}

struct Reading {
    double massScale;
    std::vector<double> numbers;
    void number(double value, double scale) { numbers.push_back(value / scale); }
    void slug(double mass, double, double) { numbers.push_back(mass / massScale); }
};

struct Writing {
    double massScale;
    const Eigen::VectorXd& numbers;
    Eigen::Index next = 0;
    void number(double& value, double scale) { value = numbers[next++] * scale; }
    void slug(double& mass, double& products, double& enthalpy) {
        const double now = std::max(numbers[next++], 0.0) * massScale;
        const double share = mass > 0.0 ? now / mass : 0.0;
        mass *= share;
        products *= share;
        enthalpy *= share;
    }
};

/// Bends what extrapolation made impossible back to the nearest possible charge; false where there
/// is none.
bool makePossible(double& air, double& products, double t, double& exhaustProducts,
                  double exhaustTemperature, const Model& model) {
    air = std::max(air, 0.0);
    products = std::max(products, 0.0);
    exhaustProducts = std::clamp(exhaustProducts, 0.0, 1.0);
    return air + products > 0.01 * model.massScale && possibleTemperature(t) &&
           possibleTemperature(exhaustTemperature);
}

/// Every number of a state.
std::vector<double*> numbersOf(CoupledCylinders::State& state) {
    std::vector<double*> numbers;
    for (Charge& c : state.charges) {
        numbers.insert(numbers.end(),
                       {&c.air, &c.products, &c.temperature, &c.slugMass, &c.slugProducts,
                        &c.slugEnthalpy, &c.exhaustProducts, &c.exhaustTemperature, &c.fresh});
    }
    for (CoupledCylinders::Breathing& b : state.breathing) {
        for (double& number : b.y) {
            numbers.push_back(&number);
        }
        Memory& m = b.memory;
        numbers.insert(numbers.end(),
                       {&m.trappedMass, &m.trappedPressure, &m.trappedTemperature, &m.trappedVolume,
                        &m.trappedAir, &m.fuelMass, &m.burnableFuel, &m.startPressure,
                        &m.startVolume, &m.motoredIndex, &m.displacedUntil});
        for (Stream* stream : {&m.residual, &m.slug, &m.exhaustBack}) {
            numbers.insert(numbers.end(),
                           {&stream->products, &stream->temperature, &stream->enthalpy,
                            &stream->gasConstant, &stream->gamma});
        }
    }
    numbers.insert(numbers.end(),
                   {&state.plenum[plenumMass], &state.plenum[plenumTemperature],
                    &state.plenum[plenumProducts], &state.plenum[exhaustPlenumMass],
                    &state.plenum[exhaustPlenumTemperature], &state.plenum[exhaustPlenumProducts]});
    return numbers;
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

Eigen::VectorXd CoupledCylinders::State::scaled(const Model& model) const {
    Reading reading{model.massScale, {}};
    exchange(*this, model, reading);
    return Eigen::Map<Eigen::VectorXd>(reading.numbers.data(),
                                       static_cast<Eigen::Index>(reading.numbers.size()));
}

std::optional<CoupledCylinders::State> CoupledCylinders::State::with(const Eigen::VectorXd& numbers,
                                                                     const Model& model) const {
    State made = *this;
    Writing writing{model.massScale, numbers};
    exchange(made, model, writing);
    bool possible = numbers.allFinite();
    for (Charge& c : made.charges) {
        possible = possible && makePossible(c.air, c.products, c.temperature, c.exhaustProducts,
                                            c.exhaustTemperature, model);
    }
    for (Breathing& b : made.breathing) {
        Stream& exhaust = b.memory.exhaustBack;
        possible = possible && makePossible(b.y[airMass], b.y[productsMass], b.y[temperature],
                                            exhaust.products, exhaust.temperature, model);
        // sums of one outflow: a mean share and a mean temperature that a gas can have
        const double out = b.y[outflowMass] = std::max(b.y[outflowMass], 0.0);
        b.y[outflowProducts] = std::clamp(b.y[outflowProducts], 0.0, out);
        b.y[outflowTemperature] =
            std::clamp(b.y[outflowTemperature], coldestOutflow * out, hottestOutflow * out);
        if (possible) {
            exhaust = model.stream(exhaust.products, exhaust.temperature);
        }
    }
    if (plenum[plenumMass] > 0.0) {
        possible = possible && made.plenum[plenumMass] > 0.01 * plenum[plenumMass] &&
                   possibleTemperature(made.plenum[plenumTemperature]);
        made.plenum[plenumProducts] = std::max(made.plenum[plenumProducts], 0.0);
    }
    if (model.hasTransfer()) {
        possible = possible && made.plenum[transferMass] > 0.01 * plenum[transferMass] &&
                   possibleTemperature(made.plenum[transferTemperature]);
        made.plenum[transferProducts] = std::max(made.plenum[transferProducts], 0.0);
    }
    return possible ? std::optional(made) : std::nullopt;
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
            : pressure / (together_.plenumRecord.pressurePerState * supply.fresh.temperature);
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
        constantSupply(*model_, together_.plenumRecord.pressurePerState * state.plenum[plenumMass] *
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
    if (model_->pumps()) {
        auditPump(windowBegin_);
    }
    return std::nullopt;
}

/// The draw follows about the root of the pressure above the exhaust's: a share x too much of the
/// blower's delivery left in the plenum asks for 2·x more of that pressure (half of it is taken, to
/// stay on the safe side); its temperature is renewed with its gas.
void CoupledCylinders::foreseePlenum(const State& before, State& after, double trust) const {
    if (!hasPlenum_ || model_->pumps()) {
        return;
    }
    const double pressure = meanPlenumPressure();
    const double behind = model_->hasTurbine() ? together_.plenum[exhaustPressureSum] / window_
                                               : model_->settings.exhaustPressure;
    const double renewed = delivery(pressure) / after.plenum[plenumMass];
    const double above = 1.0 - behind / pressure;
    const double answer = 1.0 + above * feedAnswer(model_->feeder, pressure);
    for (const auto& [variable, gain] :
         {std::pair(plenumMass, above / (renewed * answer)),
          std::pair(plenumTemperature, 1.0 / -std::expm1(-renewed))}) {
        const double from = before.plenum[static_cast<std::size_t>(variable)];
        double& to = after.plenum[static_cast<std::size_t>(variable)];
        const double most = 0.3 * std::max(above, 0.0) * from;
        const double change = to - from;
        to += trust * std::clamp((std::max(gain, 1.0) - 1.0) * change, -most, most);
    }
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

double CoupledCylinders::meanPlenumPressure() const {
    return together_.plenum[pressureSum] / window_;
}

double CoupledCylinders::meanPlenumTemperature() const {
    return together_.plenum[temperatureSum] / window_;
}

double CoupledCylinders::meanBlowerPower() const {
    return together_.plenum[blowerWork] / window_ * model_->omega;
}

void CoupledCylinders::auditPump(const PlenumState& begin) {
    const PlenumState& end = together_.plenum;
    const auto energyIn = [this](double mass, double products, double t) {
        return (mass - products) * model_->gas.air.internalEnergy(t) +
               products * model_->gas.products.internalEnergy(t);
    };
    // chamber and transfer volume
    const auto energy = [&](const PlenumState& state) {
        double sum = energyIn(state[plenumMass], state[plenumProducts], state[plenumTemperature]);
        if (model_->hasTransfer()) {
            sum +=
                energyIn(state[transferMass], state[transferProducts], state[transferTemperature]);
        }
        return sum;
    };
    const auto mass = [&](const PlenumState& state) {
        return state[plenumMass] + (model_->hasTransfer() ? state[transferMass] : 0.0);
    };
    pump_ = {};
    pump_.work = -end[blowerWork];
    pump_.intakeMass = end[intakeMass];
    pump_.massResidual = std::fabs(end[intakeMass] - end[portMass] - mass(end) + mass(begin)) /
                         std::max(end[intakeMass], 1e-6 * model_->massScale);
    pump_.energyResidual = std::fabs(end[intakeEnthalpy] - end[portEnthalpy] + end[blowerWork] -
                                     energy(end) + energy(begin)) /
                           model_->energyScale;
}

PumpFigures CoupledCylinders::pump() const {
    PumpFigures figures = pump_;
    const double cycles =
        static_cast<double>(model_->chamber->cycles().size()) / static_cast<double>(windows_);
    // of one cylinder and cycle
    const double share = 1.0 / (cycles * static_cast<double>(model_->pumpSpace.lags.size()));
    figures.work *= share;
    figures.intakeMass *= share;
    const PumpSpace::Bounds bounds = model_->pumpSpace.bounds();
    figures.compressionRatio = bounds.largest / bounds.smallest;
    figures.lowPressure = std::numeric_limits<double>::infinity();
    const SupplyTrace trace = together_.plenumRecord;
    for (std::size_t i = 0; i < trace.begin.size(); ++i) {
        for (const double s : {0.0, 0.5}) {
            const double pressure = trace.pumpPressure(trace.begin[i] + s * trace.length[i],
                                                       model_->gas.air.gasConstant(),
                                                       model_->gas.products.gasConstant());
            figures.lowPressure = std::min(figures.lowPressure, pressure);
            figures.highPressure = std::max(figures.highPressure, pressure);
        }
    }
    return figures;
}

CompressorFigures CoupledCylinders::compressor() const {
    const TurningWheel& wheel = *model_->feeder.wheel();
    const GasGroup& air = model_->gas.air;
    const PlenumState &begin = windowBegin_, &end = together_.plenum;
    const auto energy = [&air](const PlenumState& state) {
        return state[plenumMass] * air.internalEnergy(state[plenumTemperature]);
    };
    CompressorFigures figures;
    figures.wheelSpeed = wheel.speed();
    figures.tipSpeed = wheel.tipSpeed();
    figures.flow = end[intakeMass] / window_ * model_->omega;
    figures.flowCoefficient = wheel.flowCoefficient(figures.flow);
    figures.surgeFlow = wheel.curve().surgeFlow();
    figures.chokeFlow = wheel.curve().chokeFlow();
    const auto& between = model_->feeder.between();
    figures.pressureRatio = (between ? between->pressure : meanPlenumPressure()) /
                            intakePressure(model_->settings.supply);
    figures.outletTemperature = wheel.compression(figures.flow).outletTemperature;
    figures.efficiency = wheel.efficiency(figures.flow);
    figures.power = model_->hasTurbine() ? meanWheelPower()
                    : between            ? between->flow * between->work
                                         : meanBlowerPower();
    const double passed = std::max(end[intakeMass], 1e-6 * model_->massScale);
    figures.massResidual =
        std::fabs(end[intakeMass] - end[portMass] - end[plenumMass] + begin[plenumMass]) / passed;
    figures.energyResidual =
        std::fabs(end[intakeEnthalpy] - end[portEnthalpy] - energy(end) + energy(begin)) /
        (passed * air.heat(referenceTemperature) * referenceTemperature);
    return figures;
}

double CoupledCylinders::meanWheelPower() const {
    return together_.plenum[wheelWork] / window_ * model_->omega;
}

double CoupledCylinders::meanTurbinePower() const {
    return together_.plenum[turbineWork] / window_ * model_->omega;
}

TurbineFigures CoupledCylinders::turbine() const {
    const Turbine& turbine = model_->settings.supply.compressor.turbine;
    const PlenumState &begin = windowBegin_, &end = together_.plenum;
    const auto energy = [this](const PlenumState& state) {
        const double t = state[exhaustPlenumTemperature];
        return (state[exhaustPlenumMass] - state[exhaustPlenumProducts]) *
                   model_->gas.air.internalEnergy(t) +
               state[exhaustPlenumProducts] * model_->gas.products.internalEnergy(t);
    };
    TurbineFigures figures;
    figures.flow = end[nozzleMass] / window_ * model_->omega;
    figures.power = meanTurbinePower();
    figures.friction = (1.0 - turbine.mechanicalEfficiency) * figures.power;
    figures.pressure = end[exhaustPressureSum] / window_;
    figures.temperature = end[exhaustTemperatureSum] / window_;
    const double share = std::clamp(end[exhaustPlenumProducts] / end[exhaustPlenumMass], 0.0, 1.0);
    const ExhaustState mean{figures.pressure, model_->stream(share, figures.temperature)};
    const double spouting = spoutingVelocity(mean, model_->settings.exhaustPressure);
    const double tip = 0.5 * turbine.diameter * model_->feeder.wheel()->speed();
    figures.speedRatio = spouting > 0.0 ? tip / spouting : 0.0;
    const double ideal = 0.5 * figures.flow * spouting * spouting;
    figures.efficiency = ideal > 0.0 ? figures.power / ideal : 0.0;
    const double passed = std::max(end[nozzleMass], 1e-6 * model_->massScale);
    figures.outletTemperature =
        model_->streamOfEnthalpy(share, (end[nozzleEnthalpy] - end[turbineWork]) / passed)
            .temperature;
    figures.outletEnthalpy = (end[nozzleEnthalpy] - end[turbineWork]) / window_ * model_->omega;
    const double taken = meanWheelPower();
    figures.balanceResidual =
        std::fabs(figures.power - figures.friction - taken) / std::max(taken, 1e-300);
    figures.massResidual = std::fabs(end[exhaustInMass] - end[nozzleMass] - end[exhaustPlenumMass] +
                                     begin[exhaustPlenumMass]) /
                           passed;
    figures.energyResidual =
        std::fabs(end[exhaustInEnthalpy] - end[nozzleEnthalpy] - energy(end) + energy(begin)) /
        (passed * mean.stream.gasConstant * figures.temperature * mean.stream.gamma /
         (mean.stream.gamma - 1.0));
    return figures;
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

CoupledCylinders::State blend(const std::vector<const CoupledCylinders::State*>& states,
                              const std::vector<double>& weights) {
    const CoupledCylinders::State& first = *states.front();
    const auto alike = [&](const CoupledCylinders::State* state) {
        return state->charges.size() == first.charges.size() &&
               std::equal(state->breathing.begin(), state->breathing.end(), first.breathing.begin(),
                          first.breathing.end(), [](const auto& a, const auto& b) {
                              return a.row == b.row && a.memory.cycle == b.memory.cycle;
                          });
    };
    if (!std::all_of(states.begin(), states.end(), alike)) {
        return first;
    }
    CoupledCylinders::State sum = first;
    const std::vector<double*> to = numbersOf(sum);
    for (double* number : to) {
        *number *= weights.front();
    }
    for (std::size_t i = 1; i < states.size(); ++i) {
        CoupledCylinders::State other = *states[i];
        const std::vector<double*> from = numbersOf(other);
        for (std::size_t j = 0; j < to.size(); ++j) {
            *to[j] += weights[i] * *from[j];
        }
    }
    return sum;
}

} // namespace lobewright::gas
