#include "core/design/gas_settings.h"
#include "core/gas/models/supply.h"
#include "core/solution/figures/channels.h"
#include "core/solution/pipeline/stage_results.h"
#include "core/units.h"

#include <limits>

LW_TEXTS_OF(Core)

namespace lobewright::solution {

namespace {

constexpr double gram = 1e-3;     // [kg]
constexpr double kilojoule = 1e3; // [J]

gas::GasFlows flowsOf(const StageResults& results) {
    if (results.gas && results.gas->flows) {
        return results.gas->flows->sample(results.theta);
    }
    const Samples gap =
        Samples::Constant(results.theta.size(), std::numeric_limits<double>::quiet_NaN());
    return {gap, gap, gap, gap, gap, gap, gap, gap, gap};
}

} // namespace

void addFlowChannels(ChannelList& list, const StageResults& results) {
    const gas::GasFlows flows = flowsOf(results);
    list.add("supply_pressure_bar", LW_TEXT("Pressure before the inlet ports"), "p", "bar",
             flows.supplyPressure, units::bar);
    list.add("supply_temperature_K", LW_TEXT("Temperature before the inlet ports"), "T", "K",
             flows.supplyTemperature);
    const auto supply = design::gasSettings(results.design).supply;
    list.add("compression_work_kJ_per_kg", LW_TEXT("Work to compress the air of the supply"), "Δh",
             "kJ/kg", flows.supplyPressure.unaryExpr([&](double pressure) {
                 return gas::compress(supply, gas::dryAir(), pressure).work;
             }),
             kilojoule);
    list.add("inlet_flow_g_per_s", LW_TEXT("Flow through the inlet ports, inward"), "ṁ", "g/s",
             flows.inlet, gram);
    list.add("inlet_enthalpy_kJ_per_kg",
             LW_TEXT("Enthalpy of what passes the inlet ports, from 25 °C"), "h", "kJ/kg",
             flows.inletEnthalpy, kilojoule);
    list.add("fresh_flow_g_per_s", LW_TEXT("Fresh gas through the inlet ports"), "ṁ", "g/s",
             flows.fresh, gram);
    list.add("supply_enthalpy_kJ_per_kg", LW_TEXT("Enthalpy of the fresh gas, from 25 °C"), "h",
             "kJ/kg", flows.supplyTemperature.unaryExpr([](double temperature) {
                 return gas::dryAir().enthalpy(temperature);
             }),
             kilojoule);
    list.add("exhaust_flow_g_per_s", LW_TEXT("Flow through the exhaust ports, outward"), "ṁ", "g/s",
             flows.exhaust, gram);
    list.add("exhaust_enthalpy_kJ_per_kg",
             LW_TEXT("Enthalpy of what passes the exhaust ports, from 25 °C"), "h", "kJ/kg",
             flows.exhaustEnthalpy, kilojoule);
    list.add("wall_coefficient_W_per_m2K", LW_TEXT("Heat transfer coefficient of the walls"), "h",
             "W/(m²·K)", flows.wallCoefficient);
    list.add("unburnt_temperature_K", LW_TEXT("Temperature ahead of the flame"), "T", "K",
             flows.unburntTemperature);
}

} // namespace lobewright::solution
