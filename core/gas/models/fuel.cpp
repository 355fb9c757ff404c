#include "core/gas/models/fuel.h"

LW_TEXTS_OF(Core)

namespace lobewright::gas {
namespace {

constexpr UsualRange range(double usual, double low, double high) {
    return {usual, low, high};
}

// Surrogate compositions, lower heating values and the octane number: Heywood, Internal Combustion
// Engine Fundamentals, table D.4 (from memory); usual ratios of compression and air: common
// practice.
constexpr FuelData fuels[] = {
    {"petrol", LW_TEXT("Petrol (surrogate)"), LW_TEXT("petrol"), 8.0, 14.96, 0.0, 44.0e6, 95.0,
     LW_TEXT("Heywood, table D.4 (gasoline)"), range(9.0, 7.5, 11.0), range(1.0, 0.9, 1.15)},
    {"methane", LW_TEXT("Methane"), LW_TEXT("methane"), 1.0, 4.0, 0.0, 50.0e6, std::nullopt,
     LW_TEXT("Heywood, table D.4"), range(11.0, 9.0, 13.0), range(1.1, 1.0, 1.5)},
    {"hydrogen", LW_TEXT("Hydrogen"), LW_TEXT("hydrogen"), 0.0, 2.0, 0.0, 120.0e6, std::nullopt,
     LW_TEXT("Heywood, table D.4"), range(10.0, 8.0, 12.5), range(2.0, 1.5, 2.6)},
    {"diesel", LW_TEXT("Diesel (surrogate)"), LW_TEXT("diesel"), 12.0, 21.6, 0.0, 42.5e6,
     std::nullopt, LW_TEXT("Heywood, table D.4 (light diesel)"), range(17.0, 14.0, 20.0),
     range(1.6, 1.3, 2.2)},
    {"ethanol", LW_TEXT("Ethanol"), LW_TEXT("ethanol"), 2.0, 6.0, 1.0, 26.9e6, std::nullopt,
     LW_TEXT("Heywood, table D.4"), range(11.0, 9.0, 13.0), range(1.0, 0.9, 1.15)},
};

// Conventional atomic masses [kg/mol].
constexpr double massOfCarbon = 12.011e-3;
constexpr double massOfHydrogen = 1.008e-3;
constexpr double massOfOxygen = 15.999e-3;

/// Air that burns one mole of fuel completely [mol].
double airDemand(const FuelData& fuel) {
    return (fuel.carbon + fuel.hydrogen / 4 - fuel.oxygen / 2) / oxygenShareOfAir;
}

} // namespace

const FuelData& fuelData(Fuel fuel) {
    return fuels[static_cast<std::size_t>(fuel)];
}

std::span<const FuelData> allFuels() {
    return fuels;
}

double stoichiometricAirFuelRatio(const FuelData& fuel) {
    const double massOfFuel =
        fuel.carbon * massOfCarbon + fuel.hydrogen * massOfHydrogen + fuel.oxygen * massOfOxygen;
    return airDemand(fuel) * molarMassOfAir() / massOfFuel;
}

WorkingGas workingGas(Fuel fuel) {
    const FuelData& data = fuelData(fuel);
    const std::array<Portion, 4> air = portionsOfAir(airDemand(data));
    const Portion products[] = {air[0],
                                air[2],
                                {Species::carbonDioxide, data.carbon + air[3].amount},
                                {Species::water, data.hydrogen / 2}};
    return {dryAir(), GasGroup::mixture(products), stoichiometricAirFuelRatio(data),
            data.lowerHeatingValue, data.octaneNumber};
}

} // namespace lobewright::gas
