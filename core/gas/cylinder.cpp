#include "core/gas/cylinder.h"

#include "core/gas/knock.h"
#include "core/gas/orifice.h"
#include "core/gas/wall_heat.h"
#include "core/gas/wiebe.h"
#include "core/units.h"

#include <algorithm>
#include <cmath>

namespace lobewright::gas {

struct Cylinder::Gas {
    const ChamberGeometry& geometry;
    double air, products, mass, temperature, pressure;
    double massTimesConstant; ///< m·R [J/K]
    double heatAir, heatProducts, enthalpyAir, enthalpyProducts;
    double fresh;                         ///< tracer share
    double constantAir, constantProducts; ///< R [J/(kg·K)]
    /// u of a mixture at the chamber's temperature [J/kg].
    double internalEnergy(double share) const {
        return (1.0 - share) * (enthalpyAir - constantAir * temperature) +
               share * (enthalpyProducts - constantProducts * temperature);
    }
};

/// Pascal that a kilogram through the port adds to the chamber.
static double rise(const Observed& seen, const PortResponse& port) {
    return (1.0 - port.products) * seen.pressurePerAir + port.products * seen.pressurePerProducts +
           port.energy / seen.heatCapacity * seen.pressurePerKelvin;
}

double Observed::relaxation() const {
    return -inletResponse.slope * rise(*this, inletResponse) -
           exhaustResponse.slope * rise(*this, exhaustResponse);
}

const ChamberGeometry& Cylinder::geometry(double angle) {
    if (angle != geometryAngle_) {
        geometry_ = model_->chamber->at(angle);
        geometryAngle_ = angle;
    }
    return geometry_;
}

double Cylinder::pressure(double angle, const double* y) {
    return (y[airMass] * model_->gas.air.gasConstant() +
            y[productsMass] * model_->gas.products.gasConstant()) *
           y[temperature] / geometry(angle).volume;
}

double Cylinder::internalEnergy(const double* y) const {
    return y[airMass] * model_->gas.air.internalEnergy(y[temperature]) +
           y[productsMass] * model_->gas.products.internalEnergy(y[temperature]);
}

void Cylinder::rates(double angle, const double* y, const Memory& memory, const SupplyState& supply,
                     double* dy, Observed& observed) {
    const WorkingGas& gas = model_->gas;
    const double t = y[temperature];
    const double air = y[airMass];
    const double products = y[productsMass];
    const double massTimesConstant =
        air * gas.air.gasConstant() + products * gas.products.gasConstant();
    const ChamberGeometry& g = geometry(angle);
    const double mass = air + products;
    const Gas charge{g,
                     air,
                     products,
                     mass,
                     t,
                     massTimesConstant * t / g.volume,
                     massTimesConstant,
                     gas.air.heat(t),
                     gas.products.heat(t),
                     gas.air.enthalpy(t),
                     gas.products.enthalpy(t),
                     y[freshMass] / mass,
                     gas.air.gasConstant(),
                     gas.products.gasConstant()};
    std::fill(dy, dy + cylinderVariables, 0.0);
    observed = {};
    observed.angle = angle;
    observed.pressure = charge.pressure;
    Balance balance;
    const Mode& mode = memory.mode;
    if (mode.burning) {
        burn(angle, memory, dy, balance);
    }
    if (mode.inlet == InletFlow::back) {
        inletBackFlow(charge, memory, supply, dy, balance, observed);
    } else if (mode.inlet != InletFlow::closed) {
        passInlet(charge, memory, supply, dy, balance, observed);
    }
    if (mode.exhaust != ExhaustFlow::closed) {
        passExhaust(charge, memory, supply, dy, balance, observed);
    }
    if (model_->settings.wallHeat.model != WallHeatModel::none) {
        wallLoss(charge, memory, dy, balance, observed);
    }
    dy[work] = charge.pressure * g.volumeRate;
    const double heatCapacity =
        air * charge.heatAir + products * charge.heatProducts - massTimesConstant;
    observed.heatCapacity = heatCapacity;
    observed.pressurePerAir = charge.constantAir * t / g.volume;
    observed.pressurePerProducts = charge.constantProducts * t / g.volume;
    observed.pressurePerKelvin = massTimesConstant / g.volume;
    dy[airMass] = balance.air;
    dy[productsMass] = balance.products;
    dy[temperature] =
        (balance.energy - dy[work] -
         (charge.enthalpyAir - gas.air.gasConstant() * t) * balance.air -
         (charge.enthalpyProducts - gas.products.gasConstant() * t) * balance.products) /
        heatCapacity;
    if (mode.knockCounting) {
        countKnock(charge, memory, y, dy);
    }
}

void Cylinder::burn(double angle, const Memory& memory, double* dy, Balance& balance) const {
    const Burn& law = model_->settings.burn;
    const double start =
        model_->chamber->cycles()[static_cast<std::size_t>(memory.cycle)].idc + model_->burnStart;
    const double xi = std::clamp((angle - start) / model_->burnDuration, 0.0, 1.0);
    const double fuel =
        memory.burnableFuel * wiebeRate(xi, law.wiebeA, law.wiebeM) / model_->burnDuration;
    dy[burntFuel] = fuel;
    // fuel vapour of a mixture is in the chamber already, as air
    balance.air -= (model_->gas.airFuelRatio + (model_->premixed() ? 1.0 : 0.0)) * fuel;
    balance.products += (1.0 + model_->gas.airFuelRatio) * fuel;
    balance.energy += model_->settings.combustionEfficiency * model_->gas.lowerHeatingValue * fuel;
}

/// The gas that leaves through a port: that of before the inlet opened while it is displaced, then
/// the mean of the chamber (after Benson & Brandham 1969).
Stream Cylinder::leaving(const Gas& charge, const Memory& memory) const {
    Stream stream;
    stream.temperature = charge.temperature;
    double heat = 0.0;
    if (memory.mode.displacing) {
        stream.products = memory.residual.products;
        stream.gasConstant = memory.residual.gasConstant;
        heat = (1.0 - stream.products) * charge.heatAir + stream.products * charge.heatProducts;
    } else {
        stream.products = charge.products / charge.mass;
        stream.gasConstant = charge.massTimesConstant / charge.mass;
        heat = (charge.air * charge.heatAir + charge.products * charge.heatProducts) / charge.mass;
    }
    stream.enthalpy =
        (1.0 - stream.products) * charge.enthalpyAir + stream.products * charge.enthalpyProducts;
    stream.gamma = heat / (heat - stream.gasConstant);
    return stream;
}

void Cylinder::passInlet(const Gas& charge, const Memory& memory, const SupplyState& supply,
                         double* dy, Balance& balance, Observed& observed) const {
    const bool slug = memory.mode.inlet == InletFlow::slug;
    const Stream& stream = slug ? memory.slug : supply.fresh;
    const FlowFunction psi = flowFunction(charge.pressure / supply.pressure, stream.gamma);
    const double conductance = orificeFlow(charge.geometry.inletArea, supply.pressure,
                                           stream.temperature, stream.gasConstant, 1.0) /
                               model_->omega;
    const double in = conductance * psi.value;
    observed.inletDrop = (supply.pressure - charge.pressure) / supply.pressure;
    observed.inletChoking = psi.choking;
    const double ratio = charge.pressure / supply.pressure;
    observed.inletResponse = {conductance * psi.slope / supply.pressure,
                              conductance / supply.pressure * (psi.value - ratio * psi.slope),
                              stream.products,
                              stream.enthalpy - charge.internalEnergy(stream.products)};
    balance.air += in * (1.0 - stream.products);
    balance.products += in * stream.products;
    balance.energy += in * stream.enthalpy;
    dy[inletMass] = in;
    dy[inletEnthalpy] = in * stream.enthalpy;
    observed.inletProducts = in * stream.products;
    if (slug) {
        dy[slugMass] = -in;
        dy[slugProducts] = -in * stream.products;
        dy[slugEnthalpy] = -in * stream.enthalpy;
    } else {
        dy[freshMass] += in * (1.0 - stream.products);
        dy[deliveredMass] = in;
        observed.freshRate = in;
    }
}

void Cylinder::inletBackFlow(const Gas& charge, const Memory& memory, const SupplyState& supply,
                             double* dy, Balance& balance, Observed& observed) const {
    const Stream stream = leaving(charge, memory);
    const FlowFunction psi = flowFunction(supply.pressure / charge.pressure, stream.gamma);
    const double conductance = orificeFlow(charge.geometry.inletArea, charge.pressure,
                                           stream.temperature, stream.gasConstant, 1.0) /
                               model_->omega;
    const double out = conductance * psi.value;
    observed.inletResponse = {conductance * supply.pressure * psi.slope /
                                  (charge.pressure * charge.pressure),
                              -conductance / charge.pressure * psi.slope, stream.products,
                              stream.enthalpy - charge.internalEnergy(stream.products)};
    observed.inletDrop = (supply.pressure - charge.pressure) / supply.pressure;
    observed.inletChoking = psi.choking;
    balance.air -= out * (1.0 - stream.products);
    balance.products -= out * stream.products;
    balance.energy -= out * stream.enthalpy;
    dy[inletMass] = -out;
    dy[inletEnthalpy] = -out * stream.enthalpy;
    observed.inletProducts = -out * stream.products;
    if (!model_->pumps()) { // a pump chamber mixes it in at once
        dy[slugMass] = out;
        dy[slugProducts] = out * stream.products;
        dy[slugEnthalpy] = out * stream.enthalpy;
    }
    if (memory.mode.displacing) {
        dy[residualMass] -= out;
    } else {
        dy[freshMass] -= out * charge.fresh;
    }
}

void Cylinder::passExhaust(const Gas& charge, const Memory& memory, const SupplyState& supply,
                           double* dy, Balance& balance, Observed& observed) const {
    const double exhaustPressure = model_->settings.exhaustPressure;
    observed.exhaustDrop = (charge.pressure - exhaustPressure) / exhaustPressure;
    const double area = charge.geometry.exhaustArea;
    if (memory.mode.exhaust == ExhaustFlow::back) {
        const Stream& stream = memory.exhaustBack;
        const FlowFunction psi = flowFunction(charge.pressure / exhaustPressure, stream.gamma);
        const double conductance =
            orificeFlow(area, exhaustPressure, stream.temperature, stream.gasConstant, 1.0) /
            model_->omega;
        const double in = conductance * psi.value;
        observed.exhaustResponse = {conductance * psi.slope / exhaustPressure, 0.0, stream.products,
                                    stream.enthalpy - charge.internalEnergy(stream.products)};
        observed.exhaustChoking = psi.choking;
        balance.air += in * (1.0 - stream.products);
        balance.products += in * stream.products;
        balance.energy += in * stream.enthalpy;
        dy[exhaustMass] = -in;
        dy[exhaustEnthalpy] = -in * stream.enthalpy;
        return;
    }
    const Stream stream = leaving(charge, memory);
    const FlowFunction psi = flowFunction(exhaustPressure / charge.pressure, stream.gamma);
    const double conductance =
        orificeFlow(area, charge.pressure, stream.temperature, stream.gasConstant, 1.0) /
        model_->omega;
    const double out = conductance * psi.value;
    observed.exhaustResponse = {
        conductance * exhaustPressure * psi.slope / (charge.pressure * charge.pressure), 0.0,
        stream.products, stream.enthalpy - charge.internalEnergy(stream.products)};
    observed.exhaustChoking = psi.choking;
    const double offered =
        model_->settings.scavenging.shortCircuitFraction * std::max(observed.freshRate, 0.0);
    observed.shortCircuit = out - offered;
    const double bypass = std::clamp(offered, 0.0, std::max(out, 0.0));
    const double rest = out - bypass;
    const Stream& fresh = supply.fresh;
    if (bypass > 0.0 && bypass < out) {
        // a share of what comes in leaves at once, in place of chamber gas
        const double share = model_->settings.scavenging.shortCircuitFraction;
        PortResponse& inlet = observed.inletResponse;
        inlet.products += share * (observed.exhaustResponse.products - inlet.products);
        inlet.energy += share * (observed.exhaustResponse.energy - inlet.energy);
    } else if (bypass > 0.0) {
        observed.exhaustResponse.products = fresh.products;
        observed.exhaustResponse.energy = fresh.enthalpy - charge.internalEnergy(fresh.products);
    }
    balance.air -= rest * (1.0 - stream.products) + bypass * (1.0 - fresh.products);
    balance.products -= rest * stream.products + bypass * fresh.products;
    const double enthalpy = rest * stream.enthalpy + bypass * fresh.enthalpy;
    balance.energy -= enthalpy;
    dy[exhaustMass] = out;
    dy[exhaustEnthalpy] = enthalpy;
    dy[outflowMass] = out;
    dy[outflowProducts] = rest * stream.products + bypass * fresh.products;
    dy[outflowTemperature] = rest * stream.temperature + bypass * fresh.temperature;
    dy[freshMass] -= bypass * (1.0 - fresh.products);
    if (memory.mode.displacing) {
        dy[residualMass] -= rest;
    } else {
        dy[freshMass] -= rest * charge.fresh;
    }
}

double Cylinder::wallCoefficient(const Gas& charge, const Memory& memory,
                                 Observed& observed) const {
    const double p = charge.pressure;
    if (model_->settings.wallHeat.model == WallHeatModel::hohenberg) {
        return hohenbergCoefficient(charge.geometry.volume, p, charge.temperature,
                                    model_->meanPistonSpeed);
    }
    double speed =
        (memory.mode.portsOpen() ? woschniExchange : woschniClosed) * model_->meanPistonSpeed;
    if (memory.mode.combustionHeat) {
        const double motored = memory.startPressure *
                               exponential(memory.motoredIndex *
                                           logarithm(memory.startVolume / charge.geometry.volume));
        observed.excess = (p - motored) / motored;
        speed += woschniCombustion * model_->chamber->sweptVolume() * memory.trappedTemperature /
                 (memory.trappedPressure * memory.trappedVolume) * std::max(p - motored, 0.0);
    }
    return model_->woschniFactor * woschniOfGas(p, charge.temperature, speed);
}

void Cylinder::wallLoss(const Gas& charge, const Memory& memory, double* dy, Balance& balance,
                        Observed& observed) const {
    const WallHeat& wall = model_->settings.wallHeat;
    const double coefficient = wall.multiplier * wallCoefficient(charge, memory, observed);
    observed.wallCoefficient = coefficient;
    const double t = charge.temperature;
    const double areaTimesDrop =
        model_->crownArea * (2.0 * t - wall.crownTemperature - model_->exhaustCrown) +
        units::pi * model_->bore * charge.geometry.linerLength * (t - wall.linerTemperature);
    dy[wallHeat] = coefficient * areaTimesDrop / model_->omega;
    balance.energy -= dy[wallHeat];
}

void Cylinder::countKnock(const Gas& charge, const Memory& memory, const double* y,
                          double* dy) const {
    double unburnt = charge.temperature;
    if (memory.mode.burnStarted) {
        // isentropic with the trapped mixture: dT/dp = R·T/(c_p·p); p = m·R·T/V gives dp/p
        unburnt = y[unburntTemperature];
        const WorkingGas& gas = model_->gas;
        const double airShare = memory.trappedAir / memory.trappedMass;
        const double constant =
            airShare * gas.air.gasConstant() + (1.0 - airShare) * gas.products.gasConstant();
        const double heat =
            airShare * gas.air.heat(unburnt) + (1.0 - airShare) * gas.products.heat(unburnt);
        const double pressureRise =
            (dy[airMass] * gas.air.gasConstant() + dy[productsMass] * gas.products.gasConstant()) /
                charge.massTimesConstant +
            dy[temperature] / charge.temperature -
            charge.geometry.volumeRate / charge.geometry.volume;
        dy[unburntTemperature] = constant * unburnt / heat * pressureRise;
    }
    dy[knockIntegral] =
        1.0 / (model_->delayFactor * delayOfGas(charge.pressure, unburnt) * model_->omega);
}

Margins Cylinder::margins(const double* y, const Memory& memory, const Observed& observed) const {
    Margins margins;
    margins.fill(1.0);
    const auto set = [&](Event event, double value) {
        margins[static_cast<std::size_t>(event)] = value;
    };
    const Mode& mode = memory.mode;
    if (mode.inlet != InletFlow::closed) {
        set(Event::inletTurns,
            mode.inlet == InletFlow::back ? -observed.inletDrop : observed.inletDrop);
        set(Event::inletChokes, mode.inletChoked ? -observed.inletChoking : observed.inletChoking);
        if (mode.inlet == InletFlow::slug) {
            set(Event::slugReturned, y[slugMass] / model_->massScale);
        }
    }
    if (mode.exhaust != ExhaustFlow::closed) {
        set(Event::exhaustTurns,
            mode.exhaust == ExhaustFlow::back ? -observed.exhaustDrop : observed.exhaustDrop);
        set(Event::exhaustChokes,
            mode.exhaustChoked ? -observed.exhaustChoking : observed.exhaustChoking);
        if (model_->settings.scavenging.shortCircuitFraction > 0.0 &&
            mode.exhaust == ExhaustFlow::out && mode.inlet == InletFlow::fresh) {
            const double spare = observed.shortCircuit / model_->massScale;
            set(Event::shortCircuitLimited, mode.freshLimitsShortCircuit ? spare : -spare);
        }
    }
    if (mode.displacing) {
        set(Event::displacementEnds, (y[residualMass] - memory.displacedUntil) / model_->massScale);
    }
    if (mode.combustionHeat && model_->settings.wallHeat.model == WallHeatModel::woschni) {
        set(Event::motoredPressureCrossed,
            mode.pressureExcess ? observed.excess : -observed.excess);
    }
    const double hot = (y[temperature] - fitBreak) / fitBreak;
    set(Event::fitBreakCrossed, mode.hot ? hot : -hot);
    if (mode.knockCounting && !mode.knockReached) {
        set(Event::knockReached, 1.0 - y[knockIntegral]);
    }
    if (mode.burning && mode.portsOpen()) {
        set(Event::airUsedUp, y[airMass] / model_->massScale);
    }
    return margins;
}

} // namespace lobewright::gas
