#include "core/gas/cycle/flows.h"

#include <algorithm>
#include <cmath>
#include <limits>

namespace lobewright::gas {
namespace {

constexpr double gap = std::numeric_limits<double>::quiet_NaN();
constexpr double sameWindow = 1e-11; ///< [rad]

GasFlows gaps(Eigen::Index count) {
    const Samples none = Samples::Constant(count, gap);
    return {none, none, none, none, none, none, none, none, none, none, none};
}

double perMass(double flow, double mass) {
    return mass != 0.0 ? flow / mass : gap;
}

} // namespace

RecordedFlows::RecordedFlows(const Model& model, std::shared_ptr<const RecordedTrace> trace,
                             std::vector<ModeChange> changes)
    : trace_(std::move(trace)), model_(model), changes_(std::move(changes)) {
    model_.pumpSpace.chamber = model_.chamber = trace_->setup().chamber.get();
}

/// The local angle of cylinder 1 within the period that the angles of the cycles count from.
double RecordedFlows::localOf(double theta) const {
    const double period = model_.period();
    const double into = theta - trace_->setup().cylinderLag.front() - model_.start;
    return model_.start + into - std::floor(into / period) * period;
}

const Memory& RecordedFlows::memoryAt(double window) const {
    const auto after = std::upper_bound(
        changes_.begin(), changes_.end(), window + sameWindow,
        [](double angle, const ModeChange& change) { return angle < change.window; });
    return after == changes_.begin() ? after->memory : std::prev(after)->memory;
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
    double y[cylinderVariables] = {}, dy[cylinderVariables];
    for (Eigen::Index i = 0; i < theta.size(); ++i) {
        const double local = localOf(theta[i]);
        const double window = trace_->windowOf(local);
        const Memory& memory = memoryAt(window);
        const RecordedTrace::State state = trace_->stateAt(local, 0);
        const bool isClosed = !memory.mode.portsOpen();
        y[airMass] = state.airMass;
        y[productsMass] = state.productsMass;
        y[temperature] = state.temperature;
        y[unburntTemperature] = isClosed ? unburnt(memory, state) : state.temperature;
        const SupplyState supply = trace_->setup().supply.at(window, model_);
        cylinder.rates(local, y, memory, supply, dy);
        flows.inlet[i] = dy[inletMass] * model_.omega;
        flows.inletEnthalpy[i] = perMass(dy[inletEnthalpy], dy[inletMass]);
        flows.fresh[i] = dy[deliveredMass] * model_.omega;
        flows.exhaust[i] = dy[exhaustMass] * model_.omega;
        flows.exhaustEnthalpy[i] = perMass(dy[exhaustEnthalpy], dy[exhaustMass]);
        flows.wallCoefficient[i] = cylinder.wallCoefficient(local, y, memory);
        flows.unburntTemperature[i] = model_.fired && isClosed ? y[unburntTemperature] : gap;
        flows.supplyPressure[i] = supply.pressure;
        flows.supplyTemperature[i] = supply.fresh.temperature;
        flows.exhaustPressure[i] = supply.exhaustPressure;
        flows.exhaustTemperature[i] = model_.hasTurbine() ? supply.behind.temperature : gap;
    }
    return flows;
}

} // namespace lobewright::gas
