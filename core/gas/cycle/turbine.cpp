#include "core/gas/cycle/turbine.h"

#include "core/gas/models/orifice.h"

#include <algorithm>
#include <cmath>

namespace lobewright::gas {

ExhaustState exhaustState(const Model& model, double mass, double temperature, double products) {
    const Stream stream = model.stream(std::clamp(products / mass, 0.0, 1.0), temperature);
    const double volume = model.settings.supply.compressor.turbine.exhaustVolume;
    return {mass * stream.gasConstant * temperature / volume, stream};
}

double spoutingVelocity(const ExhaustState& before, double outletPressure) {
    if (before.pressure <= outletPressure) {
        return 0.0;
    }
    const Stream& gas = before.stream;
    const double exponent = (gas.gamma - 1.0) / gas.gamma;
    const double heat = gas.gasConstant / exponent; // c_p
    const double drop = -std::expm1(exponent * std::log(outletPressure / before.pressure));
    return std::sqrt(2.0 * heat * gas.temperature * drop);
}

TurbineFlow turbineFlow(const Turbine& turbine, const ExhaustState& before, double outletPressure,
                        double wheelSpeed) {
    const Stream& gas = before.stream;
    const double psi = flowFunction(outletPressure / before.pressure, gas.gamma).value;
    TurbineFlow flow;
    flow.mass =
        orificeFlow(turbine.nozzleArea, before.pressure, gas.temperature, gas.gasConstant, psi);
    const double best = 0.5 * turbine.diameter * wheelSpeed / turbine.bestSpeedRatio;
    const double velocity = spoutingVelocity(before, outletPressure);
    flow.power = std::max(flow.mass, 0.0) * turbine.bestEfficiency * best * (velocity - 0.5 * best);
    return flow;
}

} // namespace lobewright::gas
