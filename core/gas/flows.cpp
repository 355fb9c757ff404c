#include "core/gas/flows.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace lobewright::gas {
namespace {

constexpr double gap = std::numeric_limits<double>::quiet_NaN();
constexpr double sameAngle = 1e-11; ///< [rad]

GasFlows gaps(Eigen::Index count) {
    const Samples none = Samples::Constant(count, gap);
    return {none, none, none, none, none, none, none, none, none};
}

double perMass(double flow, double mass) {
    return mass != 0.0 ? flow / mass : gap;
}

} // namespace

RecordedFlows::RecordedFlows(const Model& model, std::shared_ptr<const RecordedTrace> trace,
                             std::vector<ModeChange> changes)
    : trace_(std::move(trace)), model_(model), changes_(std::move(changes)) {
    model_.chamber = trace_->setup().chamber.get();
}

RecordedFlows::Place RecordedFlows::placeOf(double theta) const {
    const RecordedTrace::Setup& setup = trace_->setup();
    const double period = model_.period();
    Place place;
    place.local = theta - setup.cylinderLag.front();
    const double start = setup.alike ? setup.start : setup.stretches.front().localStart;
    double into = place.local - start;
    into -= std::floor(into / period) * period;
    // angles of the cycles count from the start of the period
    place.local = start + into;
    if (place.local >= model_.start + period) {
        place.local -= period;
    }
    if (setup.alike) {
        const auto last = static_cast<double>(setup.stretches.size() - 1);
        const double stretch = std::clamp(std::floor(into / setup.window), 0.0, last);
        place.member = static_cast<std::size_t>(stretch);
        place.window = into - stretch * setup.window;
    } else {
        place.member = static_cast<std::size_t>(setup.cylinderStretch.front());
        place.window = into;
    }
    return place;
}

const Memory& RecordedFlows::memoryAt(const Place& place) const {
    const ModeChange* last = &changes_.front();
    for (const ModeChange& change : changes_) {
        if (change.theta > place.window + sameAngle) {
            break;
        }
        if (change.member == place.member) {
            last = &change;
        }
    }
    return last->memory;
}

double RecordedFlows::unburnt(const Memory& memory, const RecordedTrace::State& state) const {
    if (!memory.mode.burnStarted) {
        return state.temperature;
    }
    const auto& cycle = model_.chamber->cycles()[static_cast<std::size_t>(memory.cycle)];
    const double share = memory.trappedAir / memory.trappedMass;
    const GasGroup &air = model_.gas.air, &products = model_.gas.products;
    const double constant = share * air.gasConstant() + (1.0 - share) * products.gasConstant();
    // d ln T = R/c_p·d ln p from the start of burn, by the classical Runge–Kutta method
    const auto slope = [&](double logarithm) {
        const double t = std::exp(logarithm);
        return constant / (share * air.heat(t) + (1.0 - share) * products.heat(t));
    };
    constexpr int steps = 4;
    const double step = std::log(state.pressure / memory.startPressure) / steps;
    double logarithm = std::log(trace_->stateAt(cycle.idc + model_.burnStart, 0).temperature);
    for (int i = 0; i < steps; ++i) {
        const double a = slope(logarithm), b = slope(logarithm + 0.5 * step * a),
                     c = slope(logarithm + 0.5 * step * b), d = slope(logarithm + step * c);
        logarithm += step / 6.0 * (a + 2.0 * b + 2.0 * c + d);
    }
    return std::exp(logarithm);
}

GasFlows RecordedFlows::sample(const Samples& theta) const {
    GasFlows flows = gaps(theta.size());
    Cylinder cylinder(model_);
    Observed observed;
    double y[cylinderVariables] = {}, dy[cylinderVariables];
    for (Eigen::Index i = 0; i < theta.size(); ++i) {
        const Place place = placeOf(theta[i]);
        const Memory& memory = memoryAt(place);
        const RecordedTrace::State state = trace_->stateAt(place.local, 0);
        y[airMass] = state.airMass;
        y[productsMass] = state.productsMass;
        y[temperature] = state.temperature;
        y[unburntTemperature] = unburnt(memory, state);
        const SupplyState supply = supplyAt(model_, trace_->setup().steps, place.window);
        cylinder.rates(place.local, y, memory, supply, dy, observed);
        flows.inlet[i] = dy[inletMass] * model_.omega;
        flows.inletEnthalpy[i] = perMass(dy[inletEnthalpy], dy[inletMass]);
        flows.fresh[i] = observed.freshRate * model_.omega;
        flows.exhaust[i] = dy[exhaustMass] * model_.omega;
        flows.exhaustEnthalpy[i] = perMass(dy[exhaustEnthalpy], dy[exhaustMass]);
        flows.wallCoefficient[i] = observed.wallCoefficient;
        flows.unburntTemperature[i] =
            model_.fired && !memory.mode.portsOpen() ? y[unburntTemperature] : gap;
        flows.supplyPressure[i] = supply.pressure;
        flows.supplyTemperature[i] = supply.fresh.temperature;
    }
    return flows;
}

} // namespace lobewright::gas
