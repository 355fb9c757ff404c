#include "core/gas/models/supply.h"

#include "core/gas/models/elementary.h"
#include "core/units.h"

namespace lobewright::gas {

double intakePressure(const Supply& supply) {
    return supply.kind == SupplyKind::reservoir ? supply.ambientPressure
                                                : supply.ambientPressure * supply.throttle;
}

AdiabaticStage::AdiabaticStage(const GasGroup& air, const Inlet& inlet, double efficiency)
    : air_(air), inlet_(inlet), efficiency_(efficiency),
      enthalpy_(air.enthalpy(inlet.temperature)) {
    const double gamma = air.heatRatio(inlet.temperature);
    exponent_ = (gamma - 1.0) / gamma;
}

Compression AdiabaticStage::to(double pressure) const {
    if (pressure <= inlet_.pressure) {
        return {inlet_.temperature, 0.0};
    }
    const double rise = exponential(exponent_ * logarithm(pressure / inlet_.pressure)) - 1.0;
    const double outlet = inlet_.temperature * (1.0 + rise / efficiency_);
    return {outlet, air_.enthalpy(outlet) - enthalpy_};
}

Compression compress(const Supply& supply, const GasGroup& air, double pressure) {
    return AdiabaticStage(air, {intakePressure(supply), supply.ambientTemperature},
                          supply.isentropicEfficiency)
        .to(pressure);
}

double ambientDensity(const Supply& supply, const GasGroup& air) {
    return supply.ambientPressure / (air.gasConstant() * supply.ambientTemperature);
}

double blowerFlow(const Supply& supply, const GasGroup& air, double omega) {
    const double density = intakePressure(supply) / (air.gasConstant() * supply.ambientTemperature);
    return supply.volumetricEfficiency * density * supply.displacement * supply.driveRatio * omega /
           units::turn;
}

} // namespace lobewright::gas
