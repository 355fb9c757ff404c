#include "core/gas/cycle/outside.h"

#include "core/gas/cycle/turbine.h"
#include "core/gas/models/supply.h"

#include <algorithm>

LW_TEXTS_OF(Core)

namespace lobewright::gas {
namespace {

/// Products in what passes the inlet between a cylinder and a pump chamber.
double shareThroughInlet(const double* y, const Memory& memory, const SupplyState& supply) {
    if (memory.mode.inlet != InletFlow::back) {
        return supply.fresh.products;
    }
    return memory.mode.displacing ? memory.residual.products
                                  : y[productsMass] / (y[airMass] + y[productsMass]);
}

/// dT of a well-mixed volume at T with a heat capacity: dU = gained enthalpy less work.
double temperatureRate(const WorkingGas& gas, double mass, double t, double share,
                       const Passed& gained, double moved) {
    const double heat = (1.0 - share) * (gas.air.heat(t) - gas.air.gasConstant()) +
                        share * (gas.products.heat(t) - gas.products.gasConstant());
    return (gained.enthalpy - moved - gas.air.internalEnergy(t) * (gained.mass - gained.products) -
            gas.products.internalEnergy(t) * gained.products) /
           (mass * heat);
}

bool isPossible(double mass, double t) {
    return mass > 0.0 && t > coldestGas && t < hottestGas;
}

/// Why no gas can be in the state p of what stands outside the ports.
std::optional<Problem> whyImpossible(const Model& model, const double* p) {
    if (model.pumps()) {
        if (!isPossible(p[plenumMass], p[plenumTemperature])) {
            return Problem{"/gas/supply/dead_cm3",
                           LW_TEXT("the gas under the piston left the range of the model: enlarge "
                                   "the pump chamber")};
        }
        if (model.hasTransfer() && !isPossible(p[transferMass], p[transferTemperature])) {
            return Problem{"/gas/supply/transfer_cm3",
                           LW_TEXT("the gas in the transfer volume left the range of the model: "
                                   "enlarge the volume")};
        }
        return std::nullopt;
    }
    if (model.hasTurbine()) {
        if (!isPossible(p[exhaustPlenumMass], p[exhaustPlenumTemperature])) {
            return Problem{"/gas/supply/turbine/exhaust_plenum_cm3",
                           LW_TEXT("the gas upstream of the turbine left the range of the model: "
                                   "enlarge the exhaust plenum")};
        }
    }
    if (!(p[plenumMass] > 0.0)) {
        return Problem{"/gas/supply/plenum_cm3",
                       LW_TEXT("the plenum ran empty: the cylinders take in all air as soon as the "
                               "blower delivers it; enlarge the plenum")};
    }
    return std::nullopt;
}

} // namespace

void PortTraffic::add(double weight, const double* y, const double* dy, const Memory& memory,
                      const SupplyState& supply) {
    fresh += weight * dy[deliveredMass];
    in.mass += weight * dy[inletMass];
    in.enthalpy += weight * dy[inletEnthalpy];
    in.products += weight * dy[inletMass] * shareThroughInlet(y, memory, supply);
    out.mass += weight * dy[exhaustMass];
    out.enthalpy += weight * dy[exhaustEnthalpy];
    out.products += weight * (memory.mode.exhaust == ExhaustFlow::back
                                  ? dy[exhaustMass] * supply.behind.products
                                  : dy[outflowProducts]);
}

void TrafficAnswer::add(double weight, const Mode& mode, const Responses& responses) {
    fresh += mode.inlet == InletFlow::fresh ? weight * responses.inlet.outerSlope : 0.0;
    inlet += mode.inlet != InletFlow::closed ? weight * responses.inlet.outerSlope : 0.0;
    exhaust += mode.exhaust != ExhaustFlow::closed ? weight * responses.exhaust.outerSlope : 0.0;
}

std::vector<int> Outside::coupled() const {
    if (model_->hasTransfer()) {
        return {plenumMass,   plenumTemperature,   plenumProducts,
                transferMass, transferTemperature, transferProducts};
    }
    if (model_->pumps()) {
        return {plenumMass, plenumTemperature, plenumProducts};
    }
    if (model_->hasTurbine()) {
        return {plenumMass, plenumTemperature, exhaustPlenumMass, exhaustPlenumTemperature,
                exhaustPlenumProducts};
    }
    return {plenumMass, plenumTemperature};
}

PlenumState Outside::scales() const {
    const Supply& supply = model_->settings.supply;
    const double density = ambientDensity(supply, model_->gas.air);
    // a small volume's pressure answers to less gas than a cylinder's
    const auto holding = [&](double volume) {
        return std::min(model_->massScale, density * volume);
    };
    PlenumState scales{};
    scales[plenumMass] = density * supply.plenumVolume;
    scales[plenumTemperature] = scales[temperatureSum] = supply.ambientTemperature;
    scales[blowerWork] = model_->energyScale;
    scales[pressureSum] = supply.ambientPressure;
    scales[plenumProducts] = scales[intakeMass] = scales[portMass] = model_->massScale;
    scales[intakeEnthalpy] = scales[portEnthalpy] = model_->energyScale;
    if (model_->pumps()) {
        scales[plenumMass] = model_->massScale;
    }
    if (model_->hasTransfer()) {
        std::fill(scales.begin() + transferMass, scales.end(), model_->massScale);
        scales[transferMass] = scales[transferProducts] = holding(*supply.pump.transferVolume);
        scales[transferTemperature] = supply.ambientTemperature;
    }
    if (model_->hasTurbine()) {
        scales[exhaustInMass] = scales[nozzleMass] = model_->massScale;
        scales[exhaustPlenumMass] = scales[exhaustPlenumProducts] =
            holding(supply.compressor.turbine.exhaustVolume);
        for (const PlenumVariable variable :
             {turbineWork, wheelWork, exhaustInEnthalpy, nozzleEnthalpy}) {
            scales[variable] = model_->energyScale;
        }
        scales[exhaustPlenumTemperature] = scales[exhaustTemperatureSum] = 300.0;
        scales[exhaustPressureSum] = supply.ambientPressure;
    }
    return scales;
}

double Outside::pressurePerState() const {
    return model_->gas.air.gasConstant() / model_->settings.supply.plenumVolume;
}

SupplyState Outside::pumpState(double window, const double* p) const {
    const double share = std::clamp(p[plenumProducts] / p[plenumMass], 0.0, 1.0);
    const Stream stream = model_->stream(share, p[plenumTemperature]);
    return {p[plenumMass] * stream.gasConstant * stream.temperature /
                model_->pumpSpace.at(window).volume,
            stream,
            constant_.exhaustPressure,
            {}};
}

SupplyState Outside::transferState(const double* p) const {
    const double share = std::clamp(p[transferProducts] / p[transferMass], 0.0, 1.0);
    const Stream stream = model_->stream(share, p[transferTemperature]);
    return {p[transferMass] * stream.gasConstant * stream.temperature /
                *model_->settings.supply.pump.transferVolume,
            stream,
            constant_.exhaustPressure,
            {}};
}

SupplyState Outside::state(double window, const double* p) const {
    if (model_->hasTransfer()) {
        return transferState(p);
    }
    if (model_->pumps()) {
        return pumpState(window, p);
    }
    SupplyState state{pressurePerState() * p[plenumMass] * p[plenumTemperature],
                      model_->freshStream(p[plenumTemperature]),
                      constant_.exhaustPressure,
                      {}};
    if (model_->hasTurbine()) {
        const ExhaustState exhaust = exhaustState(
            *model_, p[exhaustPlenumMass], p[exhaustPlenumTemperature], p[exhaustPlenumProducts]);
        state.exhaustPressure = exhaust.pressure;
        state.behind = exhaust.stream;
    }
    return state;
}

void Outside::rates(double window, const double* p, const SupplyState& now,
                    const PortTraffic& traffic, double* rate) const {
    std::fill_n(rate, size(), 0.0);
    if (model_->pumps()) {
        pumpRates(window, p, now, traffic.in, rate);
        return;
    }
    plenumRates(p, now, traffic.fresh, rate);
    if (model_->hasTurbine()) {
        exhaustRates(p, now, traffic.out, rate);
    }
}

/// dm = ṁ_b − Σ ṁ_k, dU = ṁ_b·h(T_in) − Σ ṁ_k·h(T), adiabatic.
void Outside::plenumRates(const double* p, const SupplyState& now, double fresh,
                          double* rate) const {
    const GasGroup& air = model_->gas.air;
    const Feed feed = model_->feeder.feed(now.pressure);
    const double blown = feed.flow / model_->omega;
    const double t = p[plenumTemperature];
    const double r = air.gasConstant();
    rate[plenumMass] = blown - fresh;
    rate[plenumTemperature] =
        (blown * (air.enthalpy(feed.temperature) - now.fresh.enthalpy + r * t) - fresh * r * t) /
        (p[plenumMass] * (air.heat(t) - r));
    // the gas in the exhaust pays for a wheel that a turbine drives
    rate[blowerWork] = blown * ((model_->hasTurbine() ? 0.0 : feed.wheelWork) + feed.blowerWork);
    rate[pressureSum] = now.pressure;
    rate[temperatureSum] = t;
    if (model_->feeder.wheel()) {
        rate[intakeMass] = blown;
        rate[intakeEnthalpy] = blown * air.enthalpy(feed.temperature);
        rate[portMass] = fresh;
        rate[portEnthalpy] = fresh * now.fresh.enthalpy;
    }
    if (model_->hasTurbine()) {
        rate[wheelWork] = blown * feed.wheelWork;
    }
}

/// dm = Σ ṁ_k − ṁ_t, dU = Σ (ṁ·h)_k − ṁ_t·h, adiabatic.
void Outside::exhaustRates(const double* p, const SupplyState& now, const Passed& in,
                           double* rate) const {
    const ExhaustState before{now.exhaustPressure, now.behind};
    const TurbineFlow turbine =
        turbineFlow(model_->settings.supply.compressor.turbine, before,
                    model_->settings.exhaustPressure, model_->feeder.wheel()->speed());
    const double out = turbine.mass / model_->omega;
    const double t = p[exhaustPlenumTemperature];
    const double share = now.behind.products;
    const Passed gained{in.mass - out, in.products - out * share,
                        in.enthalpy - out * now.behind.enthalpy};
    rate[exhaustPlenumMass] = gained.mass;
    rate[exhaustPlenumProducts] = gained.products;
    rate[exhaustPlenumTemperature] =
        temperatureRate(model_->gas, p[exhaustPlenumMass], t, share, gained, 0.0);
    rate[turbineWork] = turbine.power / model_->omega;
    rate[exhaustInMass] = in.mass;
    rate[exhaustInEnthalpy] = in.enthalpy;
    rate[nozzleMass] = out;
    rate[nozzleEnthalpy] = out * now.behind.enthalpy;
    rate[exhaustPressureSum] = now.exhaustPressure;
    rate[exhaustTemperatureSum] = t;
}

/// dm = ṁ_in − ṁ_out, dU = (ṁ·h)_in + α·A·(T_w − T) − (ṁ·h)_out − p_u dV_u; what cylinders push
/// back mixes in at once, and a row under the skirt lets out what it would let in. Out goes to the
/// cylinders, or through the passage into a transfer volume that gives to them.
void Outside::pumpRates(double window, const double* p, const SupplyState& now, const Passed& ports,
                        double* rate) const {
    const Supply& settings = model_->settings.supply;
    const GasGroup& air = model_->gas.air;
    SupplyState inside = now;
    Passed out = ports;
    if (model_->hasTransfer()) {
        inside = pumpState(window, p);
        const double flow =
            transferFlow(settings.pump, inside.fresh, inside.pressure, now.fresh, now.pressure) /
            model_->omega;
        const Stream& passing = flow >= 0.0 ? inside.fresh : now.fresh;
        out = {flow, flow * passing.products, flow * passing.enthalpy};
        const Passed kept{out.mass - ports.mass, out.products - ports.products,
                          out.enthalpy - ports.enthalpy};
        rate[transferMass] = kept.mass;
        rate[transferProducts] = kept.products;
        rate[transferTemperature] = temperatureRate(
            model_->gas, p[transferMass], p[transferTemperature], now.fresh.products, kept, 0.0);
    }
    const double intake = pumpIntake(window, inside) / model_->omega;
    const double in = std::max(intake, 0.0), back = std::max(-intake, 0.0);
    const double t = p[plenumTemperature];
    const Pump& pump = settings.pump;
    const double heated =
        pump.wallArea * pump.wallCoefficient * (pump.wallTemperature - t) / model_->omega;
    // What the walls give is counted with what the intake brings.
    const double enthalpy =
        in * air.enthalpy(settings.ambientTemperature) - back * inside.fresh.enthalpy + heated;
    const Passed gained{in - back - out.mass, -(out.products + back * inside.fresh.products),
                        enthalpy - out.enthalpy};
    const double moved = inside.pressure * model_->pumpSpace.at(window).rate;
    rate[plenumMass] = gained.mass;
    rate[plenumProducts] = gained.products;
    rate[plenumTemperature] =
        temperatureRate(model_->gas, p[plenumMass], t, inside.fresh.products, gained, moved);
    rate[blowerWork] = -moved;
    rate[pressureSum] = now.pressure;
    rate[temperatureSum] = now.fresh.temperature;
    rate[intakeMass] = in - back;
    rate[intakeEnthalpy] = enthalpy;
    rate[portMass] = ports.mass;
    rate[portEnthalpy] = ports.enthalpy;
}

/// What comes from ambient into the pump chamber, less what goes back there [kg/s].
double Outside::pumpIntake(double window, const SupplyState& inside) const {
    const Supply& settings = model_->settings.supply;
    const GasGroup& air = model_->gas.air;
    return settings.pump.skirtRow ? skirtFlow(settings, air, model_->pumpSpace.skirtArea(window),
                                              inside.fresh, inside.pressure)
                                  : reedFlow(settings, air, inside.pressure);
}

/// Rate at which the pump's pressure answers to its intake and to the ports, and that of a transfer
/// volume between them [1/rad].
double Outside::pumpRelaxation(double window, const double* p, const SupplyState& now,
                               double ports) const {
    const SupplyState state = model_->hasTransfer() ? pumpState(window, p) : now;
    const double step = 1e-6 * state.pressure;
    const auto intakeAt = [&](double pressure) {
        SupplyState at = state;
        at.pressure = pressure;
        return pumpIntake(window, at);
    };
    const double intake = (intakeAt(state.pressure - step) - intakeAt(state.pressure + step)) /
                          (2.0 * step * model_->omega);
    const double perMass = state.fresh.gamma * state.pressure / p[plenumMass];
    if (!model_->hasTransfer()) {
        return (intake + ports) * perMass;
    }
    const SupplyState& behind = now;
    const auto passedAt = [&](double pressure) {
        return transferFlow(model_->settings.supply.pump, state.fresh, pressure, behind.fresh,
                            behind.pressure);
    };
    const double passage = (passedAt(state.pressure + step) - passedAt(state.pressure - step)) /
                           (2.0 * step * model_->omega);
    return (intake + passage) * perMass +
           (ports + passage) * behind.fresh.gamma * behind.pressure / p[transferMass];
}

/// Rate at which the pressure in the exhaust plenum answers to its nozzle and to the ports [1/rad].
double Outside::exhaustRelaxation(const double* p, const SupplyState& now, double answer) const {
    const Turbine& turbine = model_->settings.supply.compressor.turbine;
    const double step = 1e-6 * now.exhaustPressure;
    const auto passed = [&](double pressure) {
        return turbineFlow(turbine, {pressure, now.behind}, model_->settings.exhaustPressure, 0.0)
            .mass;
    };
    answer += (passed(now.exhaustPressure + step) - passed(now.exhaustPressure - step)) /
              (2.0 * step * model_->omega);
    return answer * now.behind.gamma * now.exhaustPressure / p[exhaustPlenumMass];
}

/// Rate at which the plenum's pressure answers to what the cylinders draw and a compressor gives
/// [1/rad].
double Outside::plenumRelaxation(const double* p, const SupplyState& now, double answer) const {
    answer += model_->feeder.slope(now.pressure) / model_->omega;
    return answer * model_->gas.air.heatRatio(p[plenumTemperature]) * pressurePerState() *
           p[plenumTemperature];
}

double Outside::relaxation(double ofCylinders, double window, const double* p,
                           const SupplyState& now, const TrafficAnswer& answer) const {
    double fastest = model_->pumps()
                         ? ofCylinders + pumpRelaxation(window, p, now, answer.inlet)
                         : std::max(ofCylinders, plenumRelaxation(p, now, answer.fresh));
    if (model_->hasTurbine()) {
        fastest += exhaustRelaxation(p, now, answer.exhaust);
    }
    return fastest;
}

std::optional<Problem> Outside::impossible(const double* p) const {
    return whyImpossible(*model_, p);
}

} // namespace lobewright::gas
