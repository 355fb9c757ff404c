#include "core/study/supply_columns.h"

namespace lobewright::study {

std::vector<std::string> withSupplyColumns(std::vector<std::string> names,
                                           const design::Design& design) {
    const auto add = [&names](std::initializer_list<const char*> more) {
        names.insert(names.end(), more.begin(), more.end());
    };
    const gas::Supply& supply = design.gas.supply;
    if (supply.kind == gas::SupplyKind::compressor) {
        add({"compressor_speed_rpm", "compressor_corrected_flow_kg_per_s",
             "compressor_pressure_ratio", "compressor_efficiency", "compressor_surge_margin",
             "compressor_power_kW"});
    }
    if (supply.hasTurbine()) {
        add({"wheel_sustained", "turbine_power_kW", "turbine_expansion_ratio", "turbine_efficiency",
             "exhaust_plenum_pressure_bar", "exhaust_plenum_temperature_K"});
    }
    if (supply.kind == gas::SupplyKind::underPiston) {
        add({"pump_work_J", "pump_pressure_low_bar", "pump_pressure_high_bar"});
    }
    if (design.gas.mixture == gas::Mixture::premixed) {
        add({"fuel_lost_share"});
    }
    return names;
}

} // namespace lobewright::study
