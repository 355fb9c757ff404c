#pragma once

#include "core/gas/cycle/cylinder.h"
#include "core/gas/models/knock.h"
#include "core/gas/models/orifice.h"
#include "core/gas/models/wall_heat.h"
#include "core/gas/models/wiebe.h"
#include "core/units.h"

#include <algorithm>

namespace lobewright::gas {

/// One cylinder at one angle: every formula of the rates, written once. Inline throughout, and what
/// the equations share is worked out once; the integrator asks thousands of times a cycle.
class Instant {
  public:
    /// What is handed over must stand as long as this is asked.
    Instant(const Model& model, const ChamberGeometry& geometry, const double* y,
            const Memory& memory, const SupplyState& supply)
        : model_(model), geometry_(geometry), y_(y), memory_(memory), mode_(memory.mode),
          supply_(supply), temperature_(y[temperature]), mass_(y[airMass] + y[productsMass]),
          massTimesConstant_(y[airMass] * constant(0) + y[productsMass] * constant(1)),
          pressure_(massTimesConstant_ * temperature_ / geometry.volume),
          own_(model.groups.at(temperature_)) {}

    /// `ports`: what passes them, for whoever asks again at the same place.
    void rates(double angle, double* dy, PortFlows& ports);
    void findFlows(PortFlows& ports) const;
    Responses responses(const PortFlows& ports) const;
    Margins margins(const PortFlows& ports, bool bends) const;
    double wallCoefficient() const {
        return model_.settings.wallHeat.multiplier * coefficientOfLaw();
    }

  private:
    // rates
    void add(double products, double enthalpy, double mass); ///< to the chamber
    void burn(double angle, double* dy);
    void passInlet(const PortFlow& flow, double* dy);
    void passExhaust(const PortFlow& flow, double* dy);
    void wallLoss(double* dy);
    void countKnock(double* dy) const;
    // what they are made of
    Stream leaving() const;
    PortFlow flow(const Stream& stream, double area, double upstream, double downstream) const;
    double bypassOffered(double freshIn) const { ///< short-circuited, unless less leaves
        return model_.settings.scavenging.shortCircuitFraction * std::max(freshIn, 0.0);
    }
    double motoredPressure() const {
        return memory_.startPressure *
               exponential(memory_.motoredIndex *
                           logarithm(memory_.startVolume / geometry_.volume));
    }
    double coefficientOfLaw() const;
    PortResponse response(const PortFlow& flow, bool inward, double outside) const;
    /// What a kilogram of a stream adds to the internal energy beyond its own [J/kg].
    double energyBeyond(double share, double enthalpy) const {
        return enthalpy - (1.0 - share) * ownEnergy(0) - share * ownEnergy(1);
    }
    double constant(std::size_t group) const {
        return (group == 0 ? model_.gas.air : model_.gas.products).gasConstant();
    }
    double ownEnergy(std::size_t group) const {
        return own_.enthalpy[group] - constant(group) * temperature_;
    }
    double heatCapacity() const { ///< Σ m·c_v [J/K]
        return y_[airMass] * own_.heat[0] + y_[productsMass] * own_.heat[1] - massTimesConstant_;
    }

    const Model& model_;
    const ChamberGeometry& geometry_;
    const double* y_;
    const Memory& memory_;
    const Mode& mode_;
    const SupplyState& supply_;
    double temperature_, mass_;
    double massTimesConstant_; ///< m·R [J/K]
    double pressure_;
    PairProperties own_; ///< of air and products
    // sums of what happens to the chamber in a radian
    double airRate_ = 0.0, productsRate_ = 0.0; ///< [kg]
    double energyRate_ = 0.0;                   ///< heat and enthalpy [J]
};

inline void Instant::rates(double angle, double* dy, PortFlows& ports) {
    static_assert(cylinderVariables % 4 == 1);
    for (int i = 0; i + 4 <= cylinderVariables; i += 4) {
        fourAt(dy + i) = Four{};
    }
    dy[cylinderVariables - 1] = 0.0;
    findFlows(ports);
    if (mode_.burning) {
        burn(angle, dy);
    }
    if (mode_.inlet != InletFlow::closed) {
        passInlet(ports.inlet, dy);
    }
    if (mode_.exhaust != ExhaustFlow::closed) {
        passExhaust(ports.exhaust, dy);
    }
    if (model_.settings.wallHeat.model != WallHeatModel::none) {
        wallLoss(dy);
    }
    dy[work] = pressure_ * geometry_.volumeRate;
    dy[airMass] = airRate_;
    dy[productsMass] = productsRate_;
    dy[temperature] =
        (energyRate_ - dy[work] - ownEnergy(0) * airRate_ - ownEnergy(1) * productsRate_) /
        heatCapacity();
    if (mode_.knockCounting) {
        countKnock(dy);
    }
}

inline void Instant::add(double products, double enthalpy, double mass) {
    airRate_ += mass * (1.0 - products);
    productsRate_ += mass * products;
    energyRate_ += mass * enthalpy;
}

inline void Instant::burn(double angle, double* dy) {
    const Burn& law = model_.settings.burn;
    const double start =
        model_.chamber->cycles()[static_cast<std::size_t>(memory_.cycle)].idc + model_.burnStart;
    const double xi = std::clamp((angle - start) / model_.burnDuration, 0.0, 1.0);
    const double fuel =
        memory_.burnableFuel * wiebeRate(xi, law.wiebeA, law.wiebeM) / model_.burnDuration;
    dy[burntFuel] = fuel;
    // fuel vapour of a mixture is in the chamber already, as air
    airRate_ -= (model_.gas.airFuelRatio + (model_.premixed() ? 1.0 : 0.0)) * fuel;
    productsRate_ += (1.0 + model_.gas.airFuelRatio) * fuel;
    energyRate_ += model_.settings.combustionEfficiency * model_.gas.lowerHeatingValue * fuel;
}

/// The gas that leaves through a port: that of before the inlet opened while it is displaced, then
/// the mean of the chamber (after Benson & Brandham 1969).
inline Stream Instant::leaving() const {
    Stream stream;
    stream.temperature = temperature_;
    stream.products = mode_.displacing ? memory_.residual.products : y_[productsMass] / mass_;
    stream.gasConstant =
        mode_.displacing ? memory_.residual.gasConstant : massTimesConstant_ / mass_;
    const double air = 1.0 - stream.products;
    const double heat = air * own_.heat[0] + stream.products * own_.heat[1];
    stream.enthalpy = air * own_.enthalpy[0] + stream.products * own_.enthalpy[1];
    stream.gamma = heat / (heat - stream.gasConstant);
    return stream;
}

inline PortFlow Instant::flow(const Stream& stream, double area, double upstream,
                              double downstream) const {
    return {stream.products, stream.enthalpy,
            orificeFlow(area, upstream, stream.temperature, stream.gasConstant, 1.0) / model_.omega,
            flowFunction(downstream / upstream, stream.gamma)};
}

inline void Instant::findFlows(PortFlows& ports) const {
    if (mode_.inlet == InletFlow::back) {
        ports.inlet = flow(leaving(), geometry_.inletArea, pressure_, supply_.pressure);
    } else if (mode_.inlet != InletFlow::closed) {
        ports.inlet = flow(mode_.inlet == InletFlow::slug ? memory_.slug : supply_.fresh,
                           geometry_.inletArea, supply_.pressure, pressure_);
    }
    const double outside = supply_.exhaustPressure;
    if (mode_.exhaust == ExhaustFlow::out) {
        ports.exhaust = flow(leaving(), geometry_.exhaustArea, pressure_, outside);
    } else if (mode_.exhaust == ExhaustFlow::back) {
        ports.exhaust = flow(model_.hasTurbine() ? supply_.behind : memory_.exhaustBack,
                             geometry_.exhaustArea, outside, pressure_);
    }
}

inline void Instant::passInlet(const PortFlow& flow, double* dy) {
    const bool back = mode_.inlet == InletFlow::back;
    const double in = back ? -flow.mass() : flow.mass();
    add(flow.products, flow.enthalpy, in);
    dy[inletMass] = in;
    dy[inletEnthalpy] = in * flow.enthalpy;
    if (mode_.inlet == InletFlow::fresh) {
        dy[freshMass] += in * (1.0 - flow.products);
        dy[deliveredMass] = in;
        return;
    }
    if (!model_.pumps()) { // a pump chamber mixes it in at once
        dy[slugMass] = -in;
        dy[slugProducts] = -in * flow.products;
        dy[slugEnthalpy] = -in * flow.enthalpy;
    }
    if (back) {
        if (mode_.displacing) {
            dy[residualMass] += in;
        } else {
            dy[freshMass] += in * y_[freshMass] / mass_;
        }
    }
}

inline void Instant::passExhaust(const PortFlow& flow, double* dy) {
    if (mode_.exhaust == ExhaustFlow::back) {
        const double in = flow.mass();
        add(flow.products, flow.enthalpy, in);
        dy[exhaustMass] = -in;
        dy[exhaustEnthalpy] = -in * flow.enthalpy;
        return;
    }
    const double out = flow.mass();
    const double bypass = std::clamp(bypassOffered(dy[deliveredMass]), 0.0, std::max(out, 0.0));
    const double rest = out - bypass;
    const Stream& fresh = supply_.fresh;
    add(flow.products, flow.enthalpy, -rest);
    add(fresh.products, fresh.enthalpy, -bypass);
    dy[exhaustMass] = out;
    dy[exhaustEnthalpy] = rest * flow.enthalpy + bypass * fresh.enthalpy;
    dy[outflowMass] = out;
    dy[outflowProducts] = rest * flow.products + bypass * fresh.products;
    dy[outflowTemperature] = rest * temperature_ + bypass * fresh.temperature;
    dy[freshMass] -= bypass * (1.0 - fresh.products);
    if (mode_.displacing) {
        dy[residualMass] -= rest;
    } else {
        dy[freshMass] -= rest * y_[freshMass] / mass_;
    }
}

inline double Instant::coefficientOfLaw() const {
    const WallHeatModel law = model_.settings.wallHeat.model;
    if (law == WallHeatModel::none) {
        return 0.0;
    }
    if (law == WallHeatModel::hohenberg) {
        return hohenbergCoefficient(geometry_.volume, pressure_, temperature_,
                                    model_.meanPistonSpeed);
    }
    double speed = (mode_.portsOpen() ? woschniExchange : woschniClosed) * model_.meanPistonSpeed;
    if (mode_.combustionHeat) {
        speed += woschniCombustion * model_.sweptVolume * memory_.trappedTemperature /
                 (memory_.trappedPressure * memory_.trappedVolume) *
                 std::max(pressure_ - motoredPressure(), 0.0);
    }
    return model_.woschniFactor * woschniOfGas(pressure_, temperature_, speed);
}

inline void Instant::wallLoss(double* dy) {
    const WallHeat& wall = model_.settings.wallHeat;
    const double areaTimesDrop =
        model_.crownArea * (2.0 * temperature_ - wall.crownTemperature - model_.exhaustCrown) +
        units::pi * model_.bore * geometry_.linerLength * (temperature_ - wall.linerTemperature);
    dy[wallHeat] = wallCoefficient() * areaTimesDrop / model_.omega;
    energyRate_ -= dy[wallHeat];
}

inline void Instant::countKnock(double* dy) const {
    double unburnt = temperature_;
    if (mode_.burnStarted) {
        // isentropic with the trapped mixture: dT/dp = R·T/(c_p·p); p = m·R·T/V gives dp/p
        unburnt = y_[unburntTemperature];
        const double air = memory_.trappedAir / memory_.trappedMass;
        const double mixed = air * constant(0) + (1.0 - air) * constant(1);
        const std::array<double, 2> heats = model_.groups.at(unburnt).heat;
        const double pressureRise =
            (airRate_ * constant(0) + productsRate_ * constant(1)) / massTimesConstant_ +
            dy[temperature] / temperature_ - geometry_.volumeRate / geometry_.volume;
        dy[unburntTemperature] =
            mixed * unburnt / (air * heats[0] + (1.0 - air) * heats[1]) * pressureRise;
    }
    dy[knockIntegral] = 1.0 / (model_.delayFactor * delayOfGas(pressure_, unburnt) * model_.omega);
}

inline PortResponse Instant::response(const PortFlow& flow, bool inward, double outside) const {
    const double energy = energyBeyond(flow.products, flow.enthalpy);
    const double slope = flow.psi.slope();
    if (inward) {
        const double ratio = pressure_ / outside;
        return {flow.conductance * slope / outside,
                flow.conductance / outside * (flow.psi.value - ratio * slope), flow.products,
                energy};
    }
    return {flow.conductance * outside * slope / (pressure_ * pressure_),
            -flow.conductance / pressure_ * slope, flow.products, energy};
}

inline Responses Instant::responses(const PortFlows& ports) const {
    Responses seen;
    seen.heatCapacity = heatCapacity();
    seen.pressurePerAir = constant(0) * temperature_ / geometry_.volume;
    seen.pressurePerProducts = constant(1) * temperature_ / geometry_.volume;
    seen.pressurePerKelvin = massTimesConstant_ / geometry_.volume;
    double freshIn = 0.0;
    if (mode_.inlet != InletFlow::closed) {
        seen.inlet = response(ports.inlet, mode_.inlet != InletFlow::back, supply_.pressure);
        freshIn = mode_.inlet == InletFlow::fresh ? ports.inlet.mass() : 0.0;
    }
    if (mode_.exhaust == ExhaustFlow::closed) {
        return seen;
    }
    const PortFlow& flow = ports.exhaust;
    const bool out = mode_.exhaust == ExhaustFlow::out;
    seen.exhaust = response(flow, !out, supply_.exhaustPressure);
    const double offered = out ? bypassOffered(freshIn) : 0.0;
    if (offered > 0.0 && flow.mass() > 0.0) {
        if (offered < flow.mass()) {
            // a share of what comes in leaves at once, in place of chamber gas
            const double share = model_.settings.scavenging.shortCircuitFraction;
            seen.inlet.products += share * (seen.exhaust.products - seen.inlet.products);
            seen.inlet.energy += share * (seen.exhaust.energy - seen.inlet.energy);
        } else {
            seen.exhaust.products = supply_.fresh.products;
            seen.exhaust.energy = energyBeyond(supply_.fresh.products, supply_.fresh.enthalpy);
        }
    }
    return seen;
}

/// Of all events that may end the present mode; 1 of the others.
inline Margins Instant::margins(const PortFlows& ports, bool bends) const {
    Margins margins;
    margins.fill(1.0);
    const auto set = [&margins](Event event, bool positive, double value) {
        margins[static_cast<std::size_t>(event)] = positive ? value : -value;
    };
    if (mode_.inlet != InletFlow::closed) {
        set(Event::inletTurns, mode_.inlet != InletFlow::back, 1.0 - pressure_ / supply_.pressure);
    }
    if (mode_.inlet == InletFlow::slug) {
        set(Event::slugReturned, true, y_[slugMass] / model_.massScale);
    }
    if (mode_.exhaust != ExhaustFlow::closed) {
        set(Event::exhaustTurns, mode_.exhaust != ExhaustFlow::back,
            pressure_ / supply_.exhaustPressure - 1.0);
    }
    if (mode_.displacing) {
        set(Event::displacementEnds, true,
            (y_[residualMass] - memory_.displacedUntil) / model_.massScale);
    }
    if (mode_.burning && mode_.portsOpen()) {
        set(Event::airUsedUp, true, y_[airMass] / model_.massScale);
    }
    if (!bends) {
        return margins;
    }
    set(Event::fitBreakCrossed, mode_.hot, temperature_ / fitBreak - 1.0);
    if (mode_.inlet != InletFlow::closed) {
        set(Event::inletChokes, !mode_.inletChoked, ports.inlet.psi.choking);
    }
    if (mode_.exhaust != ExhaustFlow::closed) {
        set(Event::exhaustChokes, !mode_.exhaustChoked, ports.exhaust.psi.choking);
    }
    if (model_.settings.scavenging.shortCircuitFraction > 0.0 &&
        mode_.exhaust == ExhaustFlow::out && mode_.inlet == InletFlow::fresh) {
        set(Event::shortCircuitLimited, mode_.freshLimitsShortCircuit,
            (ports.exhaust.mass() - bypassOffered(ports.inlet.mass())) / model_.massScale);
    }
    if (mode_.combustionHeat && model_.settings.wallHeat.model == WallHeatModel::woschni) {
        set(Event::motoredPressureCrossed, mode_.pressureExcess,
            pressure_ / motoredPressure() - 1.0);
    }
    if (mode_.knockCounting && !mode_.knockReached) {
        set(Event::knockReached, true, 1.0 - y_[knockIntegral]);
    }
    return margins;
}

} // namespace lobewright::gas
