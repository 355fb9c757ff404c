#include "core/study/speed_sweep.h"

#include "core/design/file.h"
#include "core/study/supply_columns.h"
#include "core/units.h"

#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::study {

const std::vector<std::string>& speedSweepFigures() {
    static const std::vector<std::string> names = {"brake_torque_Nm",
                                                   "brake_power_kW",
                                                   "indicated_power_kW",
                                                   "imep_bar",
                                                   "bmep_bar",
                                                   "fmep_bar",
                                                   "fmep_ring_bar",
                                                   "fmep_guide_bar",
                                                   "fmep_roller_bar",
                                                   "fmep_slip_bar",
                                                   "fmep_shaft_bearing_bar",
                                                   "fmep_supply_bar",
                                                   "fmep_auxiliary_bar",
                                                   "indicated_efficiency",
                                                   "brake_efficiency",
                                                   "delivery_ratio",
                                                   "trapping_efficiency",
                                                   "scavenging_efficiency",
                                                   "charging_efficiency",
                                                   "trapped_mass_mg",
                                                   "peak_pressure_bar",
                                                   "peak_temperature_K",
                                                   "knock_integral",
                                                   "supply_power_kW",
                                                   "supply_pressure_bar",
                                                   "torque_ripple",
                                                   "peak_contact_pressure_inlet_MPa",
                                                   "peak_contact_pressure_exhaust_MPa",
                                                   "lowest_contact_force_inlet_N",
                                                   "lowest_contact_force_exhaust_N",
                                                   "shaking_force_peak_N",
                                                   "lowest_film_ratio_inlet",
                                                   "lowest_film_ratio_exhaust",
                                                   "keeps_contact"};
    return names;
}

std::vector<std::string> speedSweepFigures(const design::Design& design) {
    return withSupplyColumns(speedSweepFigures(), design);
}

Column speedSweepParameter() {
    return {"speed_rpm", LW_TEXT("Shaft speed"), "1/min"};
}

Result<Table> speedSweep(const design::Design& design, double from, double to, int points,
                         const Shard& shard, Monitor& monitor, const PointSink& sink) {
    if (!(from > 0.0 && to > 0.0 && std::isfinite(from) && std::isfinite(to))) {
        return Problem{"", Message(LW_TEXT("speeds are %1 and %2, both must be positive"),
                                   asTyped(from, in::rpm).bare(), asTyped(to, in::rpm))};
    }
    if (points < 2) {
        return Problem{"",
                       Message(LW_TEXT("the number of points is %1, must be at least 2"), points)};
    }
    std::vector<Variant> variants;
    for (const double speed : evenlySpaced(from, to, points)) {
        variants.push_back({speed, design});
        variants.back().design.running.speed = speed * units::revPerMinute;
    }
    // Only the speed differs where nothing follows it, and a range whose ends are allowed has
    // nothing else inside.
    if (design.schedules.empty() && design::validateEngine(variants.front().design).empty() &&
        design::validateEngine(variants.back().design).empty()) {
        for (auto& variant : variants) {
            variant.valid = true;
        }
    }
    return solveVariants(speedSweepParameter(), variants, shard, speedSweepFigures(design), monitor,
                         sink, Course::smooth);
}

} // namespace lobewright::study
