#include "core/gas/cycle/cylinder.h"

#include "core/gas/models/knock.h"
#include "core/gas/models/orifice.h"
#include "core/gas/models/wall_heat.h"
#include "core/gas/models/wiebe.h"
#include "core/units.h"

#include <algorithm>
#include <cmath>

namespace lobewright::gas {
namespace {

/// What passes a port, in the direction of the mode.
struct PortFlow {
    Stream stream;
    double conductance = 0.0; ///< [kg/rad] where ψ is 1
    FlowFunction psi;
    double mass() const { return conductance * psi.value; } ///< [kg/rad]
};

/// One cylinder at one angle: every formula of the rates, written once. Inline throughout; the
/// integrator asks thousands of times a cycle.
class Instant {
  public:
    Instant(const Model& model, const ChamberGeometry& geometry, const double* y,
            const Memory& memory)
        : model_(model), geometry_(geometry), y_(y), memory_(memory), mode_(memory.mode),
          temperature_(y[temperature]), mass_(y[airMass] + y[productsMass]),
          massTimesConstant_(y[airMass] * model.gas.air.gasConstant() +
                             y[productsMass] * model.gas.products.gasConstant()),
          pressure_(massTimesConstant_ * temperature_ / geometry.volume),
          heat_(model.groups.heat(temperature_)), enthalpy_(model.groups.enthalpy(temperature_)) {}

    void rates(double angle, const SupplyState& supply, double* dy);
    Responses responses(const SupplyState& supply) const;
    double margin(Event event, const SupplyState& supply) const;
    bool awaits(Event event) const;
    double wallCoefficient() const {
        return model_.settings.wallHeat.multiplier * coefficientOfLaw();
    }

  private:
    // rates
    void add(const Stream& stream, double mass); ///< to the chamber
    void burn(double angle, double* dy);
    void passInlet(const SupplyState& supply, double* dy);
    void passExhaust(const SupplyState& supply, double* dy);
    void wallLoss(double* dy);
    void countKnock(double* dy) const;
    // what they are made of
    Stream leaving() const;
    PortFlow throughInlet(const SupplyState& supply) const;
    PortFlow throughExhaust(const SupplyState& supply) const;
    PortFlow flow(const Stream& stream, double area, double upstream, double downstream) const;
    double bypassOffered(double freshIn) const {
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
    double constant(Eigen::Index group) const {
        return (group == 0 ? model_.gas.air : model_.gas.products).gasConstant();
    }
    double ownEnergy(Eigen::Index group) const {
        return enthalpy_[group] - constant(group) * temperature_;
    }
    double heatCapacity() const { ///< Σ m·c_v [J/K]
        return y_[airMass] * heat_[0] + y_[productsMass] * heat_[1] - massTimesConstant_;
    }

    const Model& model_;
    const ChamberGeometry& geometry_;
    const double* y_;
    const Memory& memory_;
    const Mode& mode_;
    double temperature_, mass_;
    double massTimesConstant_; ///< m·R [J/K]
    double pressure_;
    Eigen::Array2d heat_, enthalpy_; ///< of air and products
    // sums of what happens to the chamber in a radian
    double airRate_ = 0.0, productsRate_ = 0.0; ///< [kg]
    double energyRate_ = 0.0;                   ///< heat and enthalpy [J]
};

void Instant::rates(double angle, const SupplyState& supply, double* dy) {
    std::fill(dy, dy + cylinderVariables, 0.0);
    if (mode_.burning) {
        burn(angle, dy);
    }
    if (mode_.inlet != InletFlow::closed) {
        passInlet(supply, dy);
    }
    if (mode_.exhaust != ExhaustFlow::closed) {
        passExhaust(supply, dy);
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

void Instant::add(const Stream& stream, double mass) {
    airRate_ += mass * (1.0 - stream.products);
    productsRate_ += mass * stream.products;
    energyRate_ += mass * stream.enthalpy;
}

void Instant::burn(double angle, double* dy) {
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
    const double heat = air * heat_[0] + stream.products * heat_[1];
    stream.enthalpy = air * enthalpy_[0] + stream.products * enthalpy_[1];
    stream.gamma = heat / (heat - stream.gasConstant);
    return stream;
}

/// Inline wherever it is asked for, so that only what is used of it is worked out.
[[gnu::always_inline]] inline PortFlow Instant::flow(const Stream& stream, double area,
                                                     double upstream, double downstream) const {
    return {stream,
            orificeFlow(area, upstream, stream.temperature, stream.gasConstant, 1.0) / model_.omega,
            flowFunction(downstream / upstream, stream.gamma)};
}

[[gnu::always_inline]] inline PortFlow Instant::throughInlet(const SupplyState& supply) const {
    if (mode_.inlet == InletFlow::back) {
        return flow(leaving(), geometry_.inletArea, pressure_, supply.pressure);
    }
    return flow(mode_.inlet == InletFlow::slug ? memory_.slug : supply.fresh, geometry_.inletArea,
                supply.pressure, pressure_);
}

[[gnu::always_inline]] inline PortFlow Instant::throughExhaust(const SupplyState& supply) const {
    const double outside = supply.exhaustPressure;
    return mode_.exhaust == ExhaustFlow::back
               ? flow(model_.hasTurbine() ? supply.behind : memory_.exhaustBack,
                      geometry_.exhaustArea, outside, pressure_)
               : flow(leaving(), geometry_.exhaustArea, pressure_, outside);
}

void Instant::passInlet(const SupplyState& supply, double* dy) {
    const PortFlow flow = throughInlet(supply);
    const Stream& stream = flow.stream;
    const bool back = mode_.inlet == InletFlow::back;
    const double in = back ? -flow.mass() : flow.mass();
    add(stream, in);
    dy[inletMass] = in;
    dy[inletEnthalpy] = in * stream.enthalpy;
    if (mode_.inlet == InletFlow::fresh) {
        dy[freshMass] += in * (1.0 - stream.products);
        dy[deliveredMass] = in;
        return;
    }
    if (!model_.pumps()) { // a pump chamber mixes it in at once
        dy[slugMass] = -in;
        dy[slugProducts] = -in * stream.products;
        dy[slugEnthalpy] = -in * stream.enthalpy;
    }
    if (back) {
        if (mode_.displacing) {
            dy[residualMass] += in;
        } else {
            dy[freshMass] += in * y_[freshMass] / mass_;
        }
    }
}

void Instant::passExhaust(const SupplyState& supply, double* dy) {
    const PortFlow flow = throughExhaust(supply);
    const Stream& stream = flow.stream;
    if (mode_.exhaust == ExhaustFlow::back) {
        const double in = flow.mass();
        add(stream, in);
        dy[exhaustMass] = -in;
        dy[exhaustEnthalpy] = -in * stream.enthalpy;
        return;
    }
    const double out = flow.mass();
    const double bypass = std::clamp(bypassOffered(dy[deliveredMass]), 0.0, std::max(out, 0.0));
    const double rest = out - bypass;
    add(stream, -rest);
    add(supply.fresh, -bypass);
    dy[exhaustMass] = out;
    dy[exhaustEnthalpy] = rest * stream.enthalpy + bypass * supply.fresh.enthalpy;
    dy[outflowMass] = out;
    dy[outflowProducts] = rest * stream.products + bypass * supply.fresh.products;
    dy[outflowTemperature] = rest * stream.temperature + bypass * supply.fresh.temperature;
    dy[freshMass] -= bypass * (1.0 - supply.fresh.products);
    if (mode_.displacing) {
        dy[residualMass] -= rest;
    } else {
        dy[freshMass] -= rest * y_[freshMass] / mass_;
    }
}

double Instant::coefficientOfLaw() const {
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
        speed += woschniCombustion * model_.chamber->sweptVolume() * memory_.trappedTemperature /
                 (memory_.trappedPressure * memory_.trappedVolume) *
                 std::max(pressure_ - motoredPressure(), 0.0);
    }
    return model_.woschniFactor * woschniOfGas(pressure_, temperature_, speed);
}

void Instant::wallLoss(double* dy) {
    const WallHeat& wall = model_.settings.wallHeat;
    const double areaTimesDrop =
        model_.crownArea * (2.0 * temperature_ - wall.crownTemperature - model_.exhaustCrown) +
        units::pi * model_.bore * geometry_.linerLength * (temperature_ - wall.linerTemperature);
    dy[wallHeat] = wallCoefficient() * areaTimesDrop / model_.omega;
    energyRate_ -= dy[wallHeat];
}

void Instant::countKnock(double* dy) const {
    double unburnt = temperature_;
    if (mode_.burnStarted) {
        // isentropic with the trapped mixture: dT/dp = R·T/(c_p·p); p = m·R·T/V gives dp/p
        unburnt = y_[unburntTemperature];
        const double air = memory_.trappedAir / memory_.trappedMass;
        const double mixed = air * constant(0) + (1.0 - air) * constant(1);
        const Eigen::Array2d heats = model_.groups.heat(unburnt);
        const double pressureRise =
            (airRate_ * constant(0) + productsRate_ * constant(1)) / massTimesConstant_ +
            dy[temperature] / temperature_ - geometry_.volumeRate / geometry_.volume;
        dy[unburntTemperature] =
            mixed * unburnt / (air * heats[0] + (1.0 - air) * heats[1]) * pressureRise;
    }
    dy[knockIntegral] = 1.0 / (model_.delayFactor * delayOfGas(pressure_, unburnt) * model_.omega);
}

PortResponse Instant::response(const PortFlow& flow, bool inward, double outside) const {
    const Stream& stream = flow.stream;
    const double energy = energyBeyond(stream.products, stream.enthalpy);
    if (inward) {
        const double ratio = pressure_ / outside;
        return {flow.conductance * flow.psi.slope / outside,
                flow.conductance / outside * (flow.psi.value - ratio * flow.psi.slope),
                stream.products, energy};
    }
    return {flow.conductance * outside * flow.psi.slope / (pressure_ * pressure_),
            -flow.conductance / pressure_ * flow.psi.slope, stream.products, energy};
}

Responses Instant::responses(const SupplyState& supply) const {
    Responses seen;
    seen.heatCapacity = heatCapacity();
    seen.pressurePerAir = constant(0) * temperature_ / geometry_.volume;
    seen.pressurePerProducts = constant(1) * temperature_ / geometry_.volume;
    seen.pressurePerKelvin = massTimesConstant_ / geometry_.volume;
    double freshIn = 0.0;
    if (mode_.inlet != InletFlow::closed) {
        const PortFlow flow = throughInlet(supply);
        seen.inlet = response(flow, mode_.inlet != InletFlow::back, supply.pressure);
        freshIn = mode_.inlet == InletFlow::fresh ? flow.mass() : 0.0;
    }
    if (mode_.exhaust == ExhaustFlow::closed) {
        return seen;
    }
    const PortFlow flow = throughExhaust(supply);
    const bool out = mode_.exhaust == ExhaustFlow::out;
    seen.exhaust = response(flow, !out, supply.exhaustPressure);
    const double offered = out ? bypassOffered(freshIn) : 0.0;
    if (offered > 0.0 && flow.mass() > 0.0) {
        if (offered < flow.mass()) {
            // a share of what comes in leaves at once, in place of chamber gas
            const double share = model_.settings.scavenging.shortCircuitFraction;
            seen.inlet.products += share * (seen.exhaust.products - seen.inlet.products);
            seen.inlet.energy += share * (seen.exhaust.energy - seen.inlet.energy);
        } else {
            seen.exhaust.products = supply.fresh.products;
            seen.exhaust.energy = energyBeyond(supply.fresh.products, supply.fresh.enthalpy);
        }
    }
    return seen;
}

bool Instant::awaits(Event event) const {
    const Settings& settings = model_.settings;
    switch (event) {
    case Event::inletTurns:
    case Event::inletChokes:
        return mode_.inlet != InletFlow::closed;
    case Event::slugReturned:
        return mode_.inlet == InletFlow::slug;
    case Event::exhaustTurns:
    case Event::exhaustChokes:
        return mode_.exhaust != ExhaustFlow::closed;
    case Event::displacementEnds:
        return mode_.displacing;
    case Event::motoredPressureCrossed:
        return mode_.combustionHeat && settings.wallHeat.model == WallHeatModel::woschni;
    case Event::fitBreakCrossed:
        return true;
    case Event::shortCircuitLimited:
        return settings.scavenging.shortCircuitFraction > 0.0 &&
               mode_.exhaust == ExhaustFlow::out && mode_.inlet == InletFlow::fresh;
    case Event::knockReached:
        return mode_.knockCounting && !mode_.knockReached;
    case Event::airUsedUp:
        return mode_.burning && mode_.portsOpen();
    }
    return false;
}

double Instant::margin(Event event, const SupplyState& supply) const {
    const auto signedBy = [](bool positive, double value) { return positive ? value : -value; };
    switch (event) {
    case Event::inletTurns:
        return signedBy(mode_.inlet != InletFlow::back, 1.0 - pressure_ / supply.pressure);
    case Event::inletChokes:
        return signedBy(!mode_.inletChoked, throughInlet(supply).psi.choking);
    case Event::slugReturned:
        return y_[slugMass] / model_.massScale;
    case Event::exhaustTurns:
        return signedBy(mode_.exhaust != ExhaustFlow::back,
                        pressure_ / supply.exhaustPressure - 1.0);
    case Event::exhaustChokes:
        return signedBy(!mode_.exhaustChoked, throughExhaust(supply).psi.choking);
    case Event::displacementEnds:
        return (y_[residualMass] - memory_.displacedUntil) / model_.massScale;
    case Event::motoredPressureCrossed:
        return signedBy(mode_.pressureExcess, pressure_ / motoredPressure() - 1.0);
    case Event::fitBreakCrossed:
        return signedBy(mode_.hot, temperature_ / fitBreak - 1.0);
    case Event::shortCircuitLimited:
        return signedBy(
            mode_.freshLimitsShortCircuit,
            (throughExhaust(supply).mass() - bypassOffered(throughInlet(supply).mass())) /
                model_.massScale);
    case Event::knockReached:
        return 1.0 - y_[knockIntegral];
    case Event::airUsedUp:
        return y_[airMass] / model_.massScale;
    }
    return 1.0;
}

/// Pascal that a kilogram through the port adds to the chamber.
double rise(const Responses& seen, const PortResponse& port) {
    return (1.0 - port.products) * seen.pressurePerAir + port.products * seen.pressurePerProducts +
           port.energy / seen.heatCapacity * seen.pressurePerKelvin;
}

} // namespace

double Responses::relaxation() const {
    return -inlet.slope * rise(*this, inlet) - exhaust.slope * rise(*this, exhaust);
}

bool isBend(Event event) {
    switch (event) {
    case Event::inletChokes:
    case Event::exhaustChokes:
    case Event::motoredPressureCrossed:
    case Event::fitBreakCrossed:
    case Event::shortCircuitLimited:
    case Event::knockReached:
        return true;
    default:
        return false;
    }
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

/// p = m·R·T/V, each factor by its own rate.
double Cylinder::pressureRise(double angle, const double* y, const double* dy) {
    const double air = model_->gas.air.gasConstant();
    const double products = model_->gas.products.gasConstant();
    const ChamberGeometry& g = geometry(angle);
    return (dy[airMass] * air + dy[productsMass] * products) /
               (y[airMass] * air + y[productsMass] * products) +
           dy[temperature] / y[temperature] - g.volumeRate / g.volume;
}

double Cylinder::internalEnergy(const double* y) const {
    return y[airMass] * model_->gas.air.internalEnergy(y[temperature]) +
           y[productsMass] * model_->gas.products.internalEnergy(y[temperature]);
}

void Cylinder::rates(double angle, const double* y, const Memory& memory, const SupplyState& supply,
                     double* dy) {
    Instant(*model_, geometry(angle), y, memory).rates(angle, supply, dy);
}

Responses Cylinder::responses(double angle, const double* y, const Memory& memory,
                              const SupplyState& supply) {
    return Instant(*model_, geometry(angle), y, memory).responses(supply);
}

Margins Cylinder::margins(double angle, const double* y, const Memory& memory,
                          const SupplyState& supply, bool bends) {
    const Instant now(*model_, geometry(angle), y, memory);
    Margins margins;
    for (int i = 0; i < eventCount; ++i) {
        const auto event = static_cast<Event>(i);
        margins[static_cast<std::size_t>(i)] =
            (bends || !isBend(event)) && now.awaits(event) ? now.margin(event, supply) : 1.0;
    }
    return margins;
}

double Cylinder::margin(Event event, double angle, const double* y, const Memory& memory,
                        const SupplyState& supply) {
    return Instant(*model_, geometry(angle), y, memory).margin(event, supply);
}

double Cylinder::wallCoefficient(double angle, const double* y, const Memory& memory) {
    return Instant(*model_, geometry(angle), y, memory).wallCoefficient();
}

} // namespace lobewright::gas
