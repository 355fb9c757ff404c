#include "core/gas/models/supply.h"

#include "core/units.h"

#include <cmath>

namespace lobewright::gas {

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
    return compress(air, {supply.ambientPressure, supply.ambientTemperature}, pressure,
                    supply.isentropicEfficiency);
}

double ambientDensity(const Supply& supply, const GasGroup& air) {
    return supply.ambientPressure / (air.gasConstant() * supply.ambientTemperature);
}

double blowerFlow(const Supply& supply, const GasGroup& air, double omega) {
    return supply.volumetricEfficiency * ambientDensity(supply, air) * supply.displacement *
           supply.driveRatio * omega / units::turn;
}

} // namespace lobewright::gas
