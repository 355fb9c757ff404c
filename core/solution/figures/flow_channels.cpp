#include "core/design/gas_settings.h"
#include "core/gas/models/feeder.h"
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
    return {gap, gap, gap, gap, gap, gap, gap, gap, gap, gap, gap};
}

/// What it takes to compress the air to a pressure before the inlet ports; of a compressor what it
/// then gives as well.
void addCompression(ChannelList& list, const StageResults& results, const Samples& pressure) {
    const gas::Supply supply = design::gasSettings(results.design).supply;
    const bool hasWheel = results.gas && results.gas->compressor;
    const gas::Feeder feeder(supply, gas::dryAir(), results.omega(),
                             hasWheel ? results.gas->compressor->wheelSpeed
                                      : gas::gearedSpeed(supply, results.omega()));
    list.add("compression_work_kJ_per_kg", LW_TEXT("Specific work of compressing the supply"), "Δh",
             "kJ/kg", pressure.unaryExpr([&](double p) {
                 if (!hasWheel) {
                     return gas::compress(supply, gas::dryAir(), p).work;
                 }
                 const gas::Feed feed = feeder.feed(p);
                 return feed.wheelWork + feed.blowerWork;
             }),
             kilojoule);
    if (supply.kind == gas::SupplyKind::compressor) {
        list.add("compressor_flow_g_per_s", LW_TEXT("Flow through the compressor"), "ṁ", "g/s",
                 pressure.unaryExpr([&](double p) { return feeder.feed(p).flow; }), gram);
    }
}

} // namespace

void addFlowChannels(ChannelList& list, const StageResults& results) {
    const gas::GasFlows flows = flowsOf(results);
    list.add("supply_pressure_bar", LW_TEXT("Supply pressure at the inlet ports"), "p", "bar",
             flows.supplyPressure, units::bar);
    list.add("supply_temperature_K", LW_TEXT("Supply temperature at the inlet ports"), "T", "K",
             flows.supplyTemperature);
    addCompression(list, results, flows.supplyPressure);
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
    if (results.design.gas.supply.hasTurbine()) {
        list.add("exhaust_plenum_pressure_bar", LW_TEXT("Pressure in the exhaust plenum"), "p",
                 "bar", flows.exhaustPressure, units::bar);
        list.add("exhaust_plenum_temperature_K", LW_TEXT("Temperature in the exhaust plenum"), "T",
                 "K", flows.exhaustTemperature);
    }
    list.add("unburnt_temperature_K", LW_TEXT("Temperature of the unburnt gas"), "T", "K",
             flows.unburntTemperature);
}

} // namespace lobewright::solution
