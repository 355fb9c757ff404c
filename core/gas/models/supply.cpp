#include "core/gas/models/supply.h"

#include "core/units.h"

#include <cmath>

namespace lobewright::gas {

double intakePressure(const Supply& supply) {
    return supply.kind == SupplyKind::reservoir ? supply.ambientPressure
                                                : supply.ambientPressure * supply.throttle;
}

Compression compress(const GasGroup& air, const Inlet& inlet, double pressure, double efficiency) {
    const double before = inlet.temperature;
    if (pressure <= inlet.pressure) {
        return {before, 0.0};
    }
    const double gamma = air.heatRatio(before);
    const double rise = std::expm1((gamma - 1.0) / gamma * std::log(pressure / inlet.pressure));
    const double outlet = before * (1.0 + rise / efficiency);
    return {outlet, air.enthalpy(outlet) - air.enthalpy(before)};
}

Compression compress(const Supply& supply, const GasGroup& air, double pressure) {
    return compress(air, {intakePressure(supply), supply.ambientTemperature}, pressure,
                    supply.isentropicEfficiency);
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
