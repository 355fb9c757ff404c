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

} // namespace

void PortTraffic::add(double weight, const double* y, const double* dy, const Memory& memory,
                      const SupplyState& supply) {
    fresh += weight * dy[deliveredMass];
    in += weight * dy[inletMass];
    inEnthalpy += weight * dy[inletEnthalpy];
    inProducts += weight * dy[inletMass] * shareThroughInlet(y, memory, supply);
    out += weight * dy[exhaustMass];
    outEnthalpy += weight * dy[exhaustEnthalpy];
    outProducts += weight * (memory.mode.exhaust == ExhaustFlow::back
                                 ? dy[exhaustMass] * supply.behind.products
                                 : dy[outflowProducts]);
}

void TrafficAnswer::add(double weight, const Mode& mode, const Responses& responses) {
    fresh += mode.inlet == InletFlow::fresh ? weight * responses.inlet.outerSlope : 0.0;
    inlet += mode.inlet != InletFlow::closed ? weight * responses.inlet.outerSlope : 0.0;
    exhaust += mode.exhaust != ExhaustFlow::closed ? weight * responses.exhaust.outerSlope : 0.0;
}

std::vector<int> Outside::coupled() const {
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
    PlenumState scales{};
    scales[plenumMass] = ambientDensity(supply, model_->gas.air) * supply.plenumVolume;
    scales[plenumTemperature] = scales[temperatureSum] = supply.ambientTemperature;
    scales[blowerWork] = model_->energyScale;
    scales[pressureSum] = supply.ambientPressure;
    scales[plenumProducts] = scales[intakeMass] = scales[portMass] = model_->massScale;
    scales[intakeEnthalpy] = scales[portEnthalpy] = model_->energyScale;
    if (model_->pumps()) {
        scales[plenumMass] = model_->massScale;
    }
    if (model_->hasTurbine()) {
        for (const PlenumVariable variable :
             {exhaustPlenumMass, exhaustPlenumProducts, exhaustInMass, nozzleMass}) {
            scales[variable] = model_->massScale;
        }
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

SupplyState Outside::state(double window, const double* p) const {
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
        pumpRates(window, p, now, traffic, rate);
        return;
    }
    plenumRates(p, now, traffic.fresh, rate);
    if (model_->hasTurbine()) {
        exhaustRates(p, now, traffic, rate);
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
void Outside::exhaustRates(const double* p, const SupplyState& now, const PortTraffic& traffic,
                           double* rate) const {
    const GasGroup &air = model_->gas.air, &products = model_->gas.products;
    const ExhaustState before{now.exhaustPressure, now.behind};
    const TurbineFlow turbine =
        turbineFlow(model_->settings.supply.compressor.turbine, before,
                    model_->settings.exhaustPressure, model_->feeder.wheel()->speed());
    const double out = turbine.mass / model_->omega;
    const double t = p[exhaustPlenumTemperature];
    const double share = now.behind.products;
    const double heat = (1.0 - share) * (air.heat(t) - air.gasConstant()) +
                        share * (products.heat(t) - products.gasConstant());
    const double gained = traffic.out - out, gainedProducts = traffic.outProducts - out * share;
    rate[exhaustPlenumMass] = gained;
    rate[exhaustPlenumProducts] = gainedProducts;
    rate[exhaustPlenumTemperature] = (traffic.outEnthalpy - out * now.behind.enthalpy -
                                      air.internalEnergy(t) * (gained - gainedProducts) -
                                      products.internalEnergy(t) * gainedProducts) /
                                     (p[exhaustPlenumMass] * heat);
    rate[turbineWork] = turbine.power / model_->omega;
    rate[exhaustInMass] = traffic.out;
    rate[exhaustInEnthalpy] = traffic.outEnthalpy;
    rate[nozzleMass] = out;
    rate[nozzleEnthalpy] = out * now.behind.enthalpy;
    rate[exhaustPressureSum] = now.exhaustPressure;
    rate[exhaustTemperatureSum] = t;
}

/// dm = ṁ_in − Σ ṁ_k, dU = (ṁ·h)_in + α·A·(T_w − T) − Σ (ṁ·h)_k − p_u dV_u; what cylinders push
/// back mixes in at once, and a row under the skirt lets out what it would let in.
void Outside::pumpRates(double window, const double* p, const SupplyState& now,
                        const PortTraffic& traffic, double* rate) const {
    const Supply& settings = model_->settings.supply;
    const GasGroup &air = model_->gas.air, &products = model_->gas.products;
    const double intake = pumpIntake(window, now) / model_->omega;
    const double in = std::max(intake, 0.0), back = std::max(-intake, 0.0);
    const double t = p[plenumTemperature];
    const double share = now.fresh.products;
    const double heat = (1.0 - share) * (air.heat(t) - air.gasConstant()) +
                        share * (products.heat(t) - products.gasConstant());
    const Pump& pump = settings.pump;
    const double heated =
        pump.wallArea * pump.wallCoefficient * (pump.wallTemperature - t) / model_->omega;
    // What the walls give is counted with what the reed brings.
    const double enthalpy =
        in * air.enthalpy(settings.ambientTemperature) - back * now.fresh.enthalpy + heated;
    const double mass = in - back - traffic.in, productsIn = -(traffic.inProducts + back * share);
    const double moved = now.pressure * model_->pumpSpace.at(window).rate;
    rate[plenumMass] = mass;
    rate[plenumProducts] = productsIn;
    rate[plenumTemperature] =
        (enthalpy - traffic.inEnthalpy - moved - air.internalEnergy(t) * (mass - productsIn) -
         products.internalEnergy(t) * productsIn) /
        (p[plenumMass] * heat);
    rate[blowerWork] = -moved;
    rate[pressureSum] = now.pressure;
    rate[temperatureSum] = t;
    rate[intakeMass] = in - back;
    rate[intakeEnthalpy] = enthalpy;
    rate[portMass] = traffic.in;
    rate[portEnthalpy] = traffic.inEnthalpy;
}

/// What comes from ambient into the pump chamber, less what goes back there [kg/s].
double Outside::pumpIntake(double window, const SupplyState& inside) const {
    const Supply& settings = model_->settings.supply;
    const GasGroup& air = model_->gas.air;
    return settings.pump.skirtRow ? skirtFlow(settings, air, model_->pumpSpace.skirtArea(window),
                                              inside.fresh, inside.pressure)
                                  : reedFlow(settings, air, inside.pressure);
}

/// Rate at which the pump's pressure answers to its reed and to the ports [1/rad].
double Outside::pumpRelaxation(double window, const double* p, const SupplyState& now,
                               double answer) const {
    const double step = 1e-6 * now.pressure;
    const auto intakeAt = [&](double pressure) {
        SupplyState at = now;
        at.pressure = pressure;
        return pumpIntake(window, at);
    };
    answer += (intakeAt(now.pressure - step) - intakeAt(now.pressure + step)) /
              (2.0 * step * model_->omega);
    return answer * now.fresh.gamma * now.pressure / p[plenumMass];
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
    if (model_->pumps()) {
        if (!(p[plenumMass] > 0.0 && p[plenumTemperature] > coldest &&
              p[plenumTemperature] < hottest)) {
            return Problem{"/gas/supply/dead_cm3",
                           LW_TEXT("the gas under the piston left the range of the model: enlarge "
                                   "the pump chamber")};
        }
        return std::nullopt;
    }
    if (model_->hasTurbine()) {
        if (!(p[exhaustPlenumMass] > 0.0 && p[exhaustPlenumTemperature] > coldest &&
              p[exhaustPlenumTemperature] < hottest)) {
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

} // namespace lobewright::gas
