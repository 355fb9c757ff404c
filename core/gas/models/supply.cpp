#include "core/gas/models/supply.h"

#include "core/units.h"

#include <algorithm>
#include <cmath>

namespace lobewright::gas {

double intakePressure(const Supply& supply) {
    return supply.kind == SupplyKind::reservoir ? supply.ambientPressure
                                                : supply.ambientPressure * supply.throttle;
}

Compression compress(const Supply& supply, const GasGroup& air, double pressure) {
    const double ambient = supply.ambientTemperature;
    const double intake = intakePressure(supply);
    if (pressure <= intake) {
        return {ambient, 0.0};
    }
    const double gamma = air.heatRatio(ambient);
    const double rise = std::expm1((gamma - 1.0) / gamma * std::log(pressure / intake));
    const double outlet = ambient * (1.0 + rise / supply.isentropicEfficiency);
    return {outlet, air.enthalpy(outlet) - air.enthalpy(ambient)};
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
