#include "core/design/gas_settings.h"
#include "core/gas/models/compressor.h"
#include "core/solution/figures/figures.h"
#include "core/solution/pipeline/stage_results.h"
#include "core/units.h"

LW_TEXTS_OF(Core)

namespace lobewright::solution {

namespace {

void addTurbine(FigureList& list, const gas::TurbineFigures& turbine, double exhaustPressure) {
    list.addYesNo("wheel_sustained", LW_TEXT("The exhaust sustains the wheel"), turbine.sustained);
    list.add({"turbine_power", &in::kW}, LW_TEXT("Power of the turbine"), turbine.power);
    list.add({"turbine_expansion_ratio"}, LW_TEXT("Expansion ratio of the turbine, mean"),
             turbine.pressure / exhaustPressure);
    list.add({"turbine_speed_ratio"}, LW_TEXT("Speed ratio of the turbine"), turbine.speedRatio);
    list.add({"turbine_efficiency"},
             LW_TEXT("Power of the turbine divided by that of an ideal one in the mean state"),
             turbine.efficiency);
    list.add({"exhaust_plenum_pressure", &in::bar}, LW_TEXT("Mean pressure in the exhaust plenum"),
             turbine.pressure);
    list.add({"exhaust_plenum_temperature", &in::kelvin},
             LW_TEXT("Mean temperature in the exhaust plenum"), turbine.temperature);
}

} // namespace

void addSupplyFigures(FigureList& list, const gas::CycleSolution& gas,
                      const design::Design& design) {
    if (!gas.compressor) {
        return;
    }
    const gas::CompressorFigures& compressor = *gas.compressor;
    list.add({"compressor_speed", &in::rpm}, LW_TEXT("Speed of the compressor wheel"),
             compressor.wheelSpeed);
    list.add({"compressor_tip_speed", &in::metrePerSecond},
             LW_TEXT("Tip speed of the compressor wheel"), compressor.tipSpeed);
    list.add({"compressor_flow_coefficient"}, LW_TEXT("Flow coefficient of the compressor wheel"),
             compressor.flowCoefficient);
    list.add({"compressor_pressure_ratio"}, LW_TEXT("Pressure ratio of the compressor, mean"),
             compressor.pressureRatio);
    const gas::Wheel& wheel = design.gas.supply.compressor.wheel;
    const gas::Supply supply = design::gasSettings(design).supply;
    list.add({"compressor_corrected_flow", &in::kgPerSecond},
             LW_TEXT("Flow through the compressor, corrected to the reference state"),
             gas::correctedFlow(compressor.flow, gas::intakePressure(supply),
                                supply.ambientTemperature, wheel));
    list.add({"compressor_surge_margin"},
             LW_TEXT("Share of its flow by which the compressor is clear of surge"),
             compressor.flowCoefficient > 0.0
                 ? std::optional(1.0 - compressor.surgeFlow / compressor.flowCoefficient)
                 : std::nullopt);
    list.add({"compressor_efficiency"}, LW_TEXT("Isentropic efficiency of the compressor"),
             compressor.efficiency);
    list.add({"compressor_power", &in::kW}, LW_TEXT("Power that the compressor takes"),
             compressor.power);
    if (gas.turbine) {
        addTurbine(list, *gas.turbine, design.gas.exhaustPressure);
    }
}

} // namespace lobewright::solution
