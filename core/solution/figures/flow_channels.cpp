#include "core/design/gas_settings.h"
#include "core/design/skirt_row.h"
#include "core/gas/models/feeder.h"
#include "core/gas/models/supply.h"
#include "core/ports/skirt_row.h"
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
    list.add("compression_work_kJ_per_kg", LW_TEXT("Work to compress the air of the supply"), "Δh",
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

void addPump(ChannelList& list, const StageResults& results) {
    const bool isSolved = results.gas && results.gas->trace;
    list.add("pump_pressure_bar", LW_TEXT("Pressure in the pump chamber"), "p", "bar",
             isSolved ? results.gas->trace->pumpPressure(results.theta)
                      : Samples::Constant(results.theta.size(),
                                          std::numeric_limits<double>::quiet_NaN()),
             units::bar);
    if (!design::skirtRow(results.design, End::inlet)) {
        return;
    }
    const mechanism::OpposedPair& pair = results.timing.pair();
    Samples open = Samples::Zero(results.theta.size());
    for (const End end : pair.pistons()) {
        if (const auto* row = design::skirtRow(results.design, end)) {
            open += ports::skirtArea(*row, pair, end, results.theta);
        }
    }
    list.add("port_area_skirt_mm2", LW_TEXT("Open area of the row under the skirt"), "A", "mm²",
             open, units::squareMillimetre);
}

} // namespace

void addFlowChannels(ChannelList& list, const StageResults& results) {
    const gas::GasFlows flows = flowsOf(results);
    list.add("supply_pressure_bar", LW_TEXT("Pressure before the inlet ports"), "p", "bar",
             flows.supplyPressure, units::bar);
    list.add("supply_temperature_K", LW_TEXT("Temperature before the inlet ports"), "T", "K",
             flows.supplyTemperature);
    if (results.design.gas.supply.kind == gas::SupplyKind::underPiston) {
        addPump(list, results);
    }
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
    list.add("unburnt_temperature_K", LW_TEXT("Temperature ahead of the flame"), "T", "K",
             flows.unburntTemperature);
}

} // namespace lobewright::solution
