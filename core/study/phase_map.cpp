#include "core/study/phase_map.h"

#include "core/design/schedules.h"
#include "core/units.h"

#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::study {

const std::vector<std::string>& phaseMapFigures() {
    static const std::vector<std::string> names = {"compression_ratio",
                                                   "trapped_compression_ratio",
                                                   "exhaust_opens_deg",
                                                   "inlet_opens_deg",
                                                   "inlet_closes_deg",
                                                   "exhaust_closes_deg",
                                                   "blowdown_deg",
                                                   "overlap_deg",
                                                   "after_charge_deg",
                                                   "brake_torque_Nm",
                                                   "brake_power_kW",
                                                   "imep_bar",
                                                   "bmep_bar",
                                                   "indicated_efficiency",
                                                   "brake_efficiency",
                                                   "delivery_ratio",
                                                   "trapping_efficiency",
                                                   "scavenging_efficiency",
                                                   "charging_efficiency",
                                                   "peak_pressure_bar",
                                                   "knock_integral",
                                                   "shaking_force_peak_N",
                                                   "rocking_moment_peak_Nm",
                                                   "peak_contact_pressure_inlet_MPa",
                                                   "peak_contact_pressure_exhaust_MPa",
                                                   "lowest_contact_force_inlet_N",
                                                   "lowest_contact_force_exhaust_N",
                                                   "keeps_contact"};
    return names;
}

Column phaseMapParameter(PhaseParameter parameter) {
    return parameter == PhaseParameter::exhaustLead
               ? Column{"exhaust_lead_deg", LW_TEXT("Exhaust lead"), "shaft °"}
               : Column{"adjuster_setting_deg", LW_TEXT("Adjuster setting"), "shaft °"};
}

Result<Table> phaseMap(const design::Design& design, PhaseParameter parameter, double from,
                       double to, int points, const Shard& shard, Monitor& monitor,
                       const PointSink& sink) {
    if (!(std::abs(from) <= 360.0 && std::abs(to) <= 360.0)) {
        return Problem{"", Message(LW_TEXT("angles are %1 and %2, must lie within ±360°"),
                                   asTyped(from, in::degrees).bare(), asTyped(to, in::degrees))};
    }
    if (design.mechanism.isOneSided()) {
        return Problem{"/mechanism/arrangement",
                       LW_TEXT("a one-sided engine has no second track to turn against the first")};
    }
    if (points < 2) {
        return Problem{"",
                       Message(LW_TEXT("the number of points is %1, must be at least 2"), points)};
    }
    const bool lead = parameter == PhaseParameter::exhaustLead;
    // A setting that follows the speed is turned here all the same.
    const auto turned =
        lead ? design : design::withoutSchedule(design, "/mechanism/adjuster/setting_deg");
    std::vector<Variant> variants;
    for (const double angle : evenlySpaced(from, to, points)) {
        variants.push_back({angle, turned});
        auto& mechanism = variants.back().design.mechanism;
        (lead ? mechanism.exhaustLead : mechanism.adjuster.setting) = angle * units::degree;
    }
    return solveVariants(phaseMapParameter(parameter), variants, shard, phaseMapFigures(), monitor,
                         sink, Course::smooth);
}

} // namespace lobewright::study
