#pragma once

#include "core/gas/models/settings.h"
#include "core/gas/properties/properties.h"

#include <optional>
#include <span>

namespace lobewright::gas {

/// What engines usually have (common practice).
struct UsualRange {
    double usual, low, high;
};

/// A fuel CcHhOo.
struct FuelData {
    const char* name; ///< as in the files
    TextId label;     ///< as an input shows it, "Petrol (surrogate)"
    TextId word;      ///< in a list of fuels, "petrol"
    double carbon, hydrogen, oxygen;
    double lowerHeatingValue;           ///< [J/kg]
    std::optional<double> octaneNumber; ///< absent: the knock correlation does not apply
    TextId source;
    UsualRange compressionRatio; ///< geometric
    UsualRange airRatio;         ///< λ
};

const FuelData& fuelData(Fuel fuel);
/// Every fuel, in the order of Fuel.
std::span<const FuelData> allFuels();
/// Stoichiometric air–fuel ratio by mass, with dry air.
double stoichiometricAirFuelRatio(const FuelData& fuel);

/// The two gas groups of a cycle and what the fuel does to them.
struct WorkingGas {
    GasGroup air;
    GasGroup products;              ///< of stoichiometric combustion
    double airFuelRatio = 0.0;      ///< stoichiometric, by mass
    double lowerHeatingValue = 0.0; ///< [J/kg]
    std::optional<double> octaneNumber;
};

/// Air and the products of the fuel; the octane number is the fuel's own.
WorkingGas workingGas(Fuel fuel);

} // namespace lobewright::gas
