// Printed tables of gases beside the program's fits: JANAF, air tables, tables of isentropic flow.
#include "core/gas/models/fuel.h"
#include "core/gas/models/orifice.h"
#include "core/gas/properties/properties.h"

#include <gtest/gtest.h>

namespace lobewright::gas {
namespace {

struct Printed {
    Species species;
    double temperature; // K
    double heat;        // J/(mol·K)
    double enthalpy;    // kJ/mol from 298.15 K
};

// Published values: 40 (JANAF Thermochemical Tables, 4th edition, 1998; from memory). A table and a
// fit that were not made from each other confirm each other to the bound;
// the fit of hot steam is known to lie higher.
constexpr Printed janaf[] = {
    {Species::nitrogen, 400, 29.249, 2.971},        {Species::nitrogen, 500, 29.580, 5.911},
    {Species::nitrogen, 600, 30.110, 8.894},        {Species::nitrogen, 800, 31.433, 15.046},
    {Species::nitrogen, 1500, 34.843, 38.405},      {Species::oxygen, 400, 30.106, 3.025},
    {Species::oxygen, 500, 31.091, 6.084},          {Species::oxygen, 600, 32.090, 9.244},
    {Species::oxygen, 800, 33.733, 15.835},         {Species::oxygen, 1500, 36.544, 40.599},
    {Species::carbonDioxide, 400, 41.325, 4.003},   {Species::carbonDioxide, 500, 44.627, 8.305},
    {Species::carbonDioxide, 600, 47.321, 12.907},  {Species::carbonDioxide, 800, 51.434, 22.806},
    {Species::carbonDioxide, 1500, 58.379, 61.705}, {Species::water, 400, 34.262, 3.452},
    {Species::water, 500, 35.226, 6.925},           {Species::water, 600, 36.325, 10.501},
    {Species::water, 800, 38.721, 18.002},          {Species::water, 1500, 47.090, 48.151},
};

TEST(GasTables, JanafAgreesWithTheFits) {
    for (const Printed& row : janaf) {
        const bool hotSteam = row.species == Species::water && row.temperature == 1500;
        EXPECT_NEAR(molarHeat(row.species, row.temperature) / row.heat, 1.0,
                    hotSteam ? 5e-3 : 2.5e-3)
            << static_cast<int>(row.species) << " at " << row.temperature;
        EXPECT_NEAR(1e-3 * molarEnthalpy(row.species, row.temperature) / row.enthalpy, 1.0, 2e-3)
            << static_cast<int>(row.species) << " at " << row.temperature;
    }
}

// Published values: 29 (air at low pressure, c_p in J/kg·K and h in kJ/kg, the tables of
// textbooks after Keenan and Kaye, Gas Tables; secondary: seen copied into public sources, not in
// print). Enthalpies are counted from the 300.19 kJ/kg at 300 K.
TEST(GasTables, AirIsThatOfTheAirTables) {
    const double table[][3] = {{300, 1005, 300.19},   {400, 1013, 400.98},   {500, 1030, 503.02},
                               {600, 1051, 607.02},   {700, 1075, 713.27},   {800, 1099, 821.95},
                               {900, 1121, 932.93},   {1000, 1141, 1046.04}, {1100, 1159, 1161.07},
                               {1200, 1175, 1277.79}, {1300, 1189, 1395.97}, {1400, 1202, 1515.42},
                               {1500, 1214, 1635.97}, {1600, 1225, 1757.57}, {1800, 1244, 2003.30}};
    const GasGroup& air = dryAir();
    for (const auto& [temperature, heat, enthalpy] : table) {
        EXPECT_NEAR(air.heat(temperature) / heat, 1.0, temperature > 1400 ? 7e-3 : 3e-3)
            << temperature;
        const double rise = 1e-3 * (air.enthalpy(temperature) - air.enthalpy(300.0));
        EXPECT_NEAR(rise, enthalpy - 300.19, 2e-3 * (enthalpy - 300.19) + 0.01) << temperature;
    }
}

// The fit of another laboratory to the same tables, NIST Chemistry WebBook, nitrogen, gas phase
// heat capacity (Chase 1998), https://webbook.nist.gov/cgi/cbook.cgi?Source=1981ARM%2FTAR2788
// (read): c_p = A + B·t + C·t² + D·t³ + E/t², t in 1000 K, from 500 to 2000 K.
TEST(GasTables, NitrogenFollowsTheFitOfAnotherLaboratory) {
    for (const double temperature : {500.0, 700.0, 1000.0, 1300.0, 1600.0, 2000.0}) {
        const double t = temperature / 1000.0;
        const double heat =
            19.50583 + t * (19.88705 + t * (-8.598535 + t * 1.369784)) + 0.527601 / (t * t);
        EXPECT_NEAR(molarHeat(Species::nitrogen, temperature) / heat, 1.0, 2.5e-3) << temperature;
    }
}

// Published values: 16 (NACA Report 1135, 1953, table I, subsonic flow with a heat ratio of 1.4:
// p/p_t and A/A* by Mach number; from memory). Flow through an area A at p/p_t is that of the
// throat A*, so the flow function times A/A* is that of the choked orifice.
TEST(GasTables, FlowFunctionFollowsTheIsentropicTables) {
    const double table[][3] = {{0.2, 0.9725, 2.9635}, {0.3, 0.9395, 2.0351}, {0.4, 0.8956, 1.5901},
                               {0.5, 0.8430, 1.3398}, {0.6, 0.7840, 1.1882}, {0.7, 0.7209, 1.0944},
                               {0.8, 0.6560, 1.0382}, {0.9, 0.5913, 1.0089}};
    const double choked = flowFunction(0.1, 1.4).value;
    for (const auto& [mach, ratio, area] : table) {
        // the last digit of p/p_t weighs most at small Mach numbers
        EXPECT_NEAR(flowFunction(ratio, 1.4).value * area / choked, 1.0, 3e-4) << mach;
    }
}

// Published values: 4 (lower and higher heating values of fuels, after the GREET tables,
// https://www.scribd.com/document/649439033/lower-and-higher-heating-values, secondary; MJ/kg).
TEST(GasTables, HeatingValuesOfAnotherListLieWithinTwoPercent) {
    const struct {
        Fuel fuel;
        double heatingValue;
    } list[] = {{Fuel::hydrogen, 119.96},
                {Fuel::ethanol, 26.945},
                {Fuel::diesel, 42.781},
                {Fuel::petrol, 43.438}};
    for (const auto& [fuel, heatingValue] : list) {
        EXPECT_NEAR(1e-6 * fuelData(fuel).lowerHeatingValue / heatingValue, 1.0, 0.02)
            << fuelData(fuel).name;
    }
}

} // namespace
} // namespace lobewright::gas
