#include "core/gas/models/supply.h"

#include "core/units.h"

#include <algorithm>
#include <cmath>

namespace lobewright::gas {

Compression compress(const Supply& supply, const GasGroup& air, double pressure) {
    const double ambient = supply.ambientTemperature;
    if (pressure <= supply.ambientPressure) {
        return {ambient, 0.0};
    }
    const double gamma = air.heatRatio(ambient);
    const double rise =
        std::expm1((gamma - 1.0) / gamma * std::log(pressure / supply.ambientPressure));
    const double outlet = ambient * (1.0 + rise / supply.isentropicEfficiency);
    return {outlet, air.enthalpy(outlet) - air.enthalpy(ambient)};
}

double ambientDensity(const Supply& supply, const GasGroup& air) {
    return supply.ambientPressure / (air.gasConstant() * supply.ambientTemperature);
}

double blowerFlow(const Supply& supply, const GasGroup& air, double omega) {
    return supply.volumetricEfficiency * ambientDensity(supply, air) * supply.displacement *
           supply.driveRatio * omega / units::turn;
}

} // namespace lobewright::gas
