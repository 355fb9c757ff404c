#include "core/solution/figures/figures.h"
#include "core/solution/pipeline/stage_results.h"
#include "core/units.h"

LW_TEXTS_OF(Core)

namespace lobewright::solution {

void addCompressorFigures(FigureList& list, const gas::CompressorFigures& compressor) {
    list.add("compressor_speed_rpm", LW_TEXT("Speed of the compressor wheel"), "1/min",
             compressor.wheelSpeed / units::revPerMinute);
    list.add("compressor_tip_speed_m_per_s", LW_TEXT("Tip speed of the compressor wheel"), "m/s",
             compressor.tipSpeed);
    list.add("compressor_flow_coefficient", LW_TEXT("Flow coefficient of the compressor wheel"), "",
             compressor.flowCoefficient);
    list.add("compressor_pressure_ratio", LW_TEXT("Pressure ratio of the compressor, mean"), "",
             compressor.pressureRatio);
    list.add("compressor_efficiency", LW_TEXT("Isentropic efficiency of the compressor"), "",
             compressor.efficiency);
    list.add("compressor_power_kW", LW_TEXT("Power that the compressor takes"), "kW",
             compressor.power / units::kilowatt);
}

} // namespace lobewright::solution
