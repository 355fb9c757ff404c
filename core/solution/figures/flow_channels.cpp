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
    list.add({"compression_work", &in::kJPerKg}, LW_TEXT("Specific work of compressing the supply"),
             "Δh", pressure.unaryExpr([&](double p) {
                 if (!hasWheel) {
                     return gas::compress(supply, gas::dryAir(), p).work;
                 }
                 const gas::Feed feed = feeder.feed(p);
                 return feed.wheelWork + feed.blowerWork;
             }));
    if (supply.kind == gas::SupplyKind::compressor) {
        list.add({"compressor_flow", &in::gPerSecond}, LW_TEXT("Flow through the compressor"), "ṁ",
                 pressure.unaryExpr([&](double p) { return feeder.feed(p).flow; }));
    }
}

void addPump(ChannelList& list, const StageResults& results) {
    const bool isSolved = results.gas && results.gas->trace;
    list.add({"pump_pressure", &in::bar}, LW_TEXT("Pressure in the pump chamber"), "p",
             isSolved ? results.gas->trace->pumpPressure(results.theta)
                      : Samples::Constant(results.theta.size(),
                                          std::numeric_limits<double>::quiet_NaN()));
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
    list.add({"port_area_skirt", &in::mm2}, LW_TEXT("Open area of the row under the skirt"), "A",
             open);
}

} // namespace

void addFlowChannels(ChannelList& list, const StageResults& results) {
    const gas::GasFlows flows = flowsOf(results);
    list.add({"supply_pressure", &in::bar}, LW_TEXT("Supply pressure at the inlet ports"), "p",
             flows.supplyPressure);
    list.add({"supply_temperature", &in::kelvin}, LW_TEXT("Supply temperature at the inlet ports"),
             "T", flows.supplyTemperature);
    if (results.design.gas.supply.kind == gas::SupplyKind::underPiston) {
        addPump(list, results);
    }
    addCompression(list, results, flows.supplyPressure);
    list.add({"inlet_flow", &in::gPerSecond}, LW_TEXT("Flow through the inlet ports, inward"), "ṁ",
             flows.inlet);
    list.add({"inlet_enthalpy", &in::kJPerKg},
             LW_TEXT("Enthalpy of what passes the inlet ports, from 25 °C"), "h",
             flows.inletEnthalpy);
    list.add({"fresh_flow", &in::gPerSecond}, LW_TEXT("Fresh gas through the inlet ports"), "ṁ",
             flows.fresh);
    list.add({"supply_enthalpy", &in::kJPerKg}, LW_TEXT("Enthalpy of the fresh gas, from 25 °C"),
             "h", flows.supplyTemperature.unaryExpr([](double temperature) {
                 return gas::dryAir().enthalpy(temperature);
             }));
    list.add({"exhaust_flow", &in::gPerSecond}, LW_TEXT("Flow through the exhaust ports, outward"),
             "ṁ", flows.exhaust);
    list.add({"exhaust_enthalpy", &in::kJPerKg},
             LW_TEXT("Enthalpy of what passes the exhaust ports, from 25 °C"), "h",
             flows.exhaustEnthalpy);
    list.add({"wall_coefficient", &in::WPerM2K}, LW_TEXT("Heat transfer coefficient of the walls"),
             "h", flows.wallCoefficient);
    if (results.design.gas.supply.hasTurbine()) {
        list.add({"exhaust_plenum_pressure", &in::bar}, LW_TEXT("Pressure in the exhaust plenum"),
                 "p", flows.exhaustPressure);
        list.add({"exhaust_plenum_temperature", &in::kelvin},
                 LW_TEXT("Temperature in the exhaust plenum"), "T", flows.exhaustTemperature);
    }
    list.add({"unburnt_temperature", &in::kelvin}, LW_TEXT("Temperature of the unburnt gas"), "T",
             flows.unburntTemperature);
}

} // namespace lobewright::solution
