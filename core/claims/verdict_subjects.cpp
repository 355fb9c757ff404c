#include "core/claims/claims_keys.h"
#include "core/claims/verdict_rows.h"

#include <algorithm>

LW_TEXTS_OF(Core)

/// Which published figures make a row, and where a design and its bands answer them.
namespace lobewright::study {

namespace {

constexpr RowSubject subjects[] = {
    {.path = "/figures/power",
     .at = "/figures/power_speed",
     .findings = {"mean-effective-pressure-at-power", "specific-power", "charging-ratio",
                  "lowest-power-speed"},
     .figure = "brake_power_kW",
     .result = "peak_power_kW",
     .resultUnit = &in::kW},
    {.path = "/figures/power_speed",
     .findings = {"lowest-power-speed"},
     .field = "/running/speed_rpm",
     .result = "peak_power_speed_rpm",
     .resultUnit = &in::turnsPerMinute,
     .partOf = "/figures/power"},
    {.path = "/figures/torque",
     .at = "/figures/torque_speed",
     .findings = {"mean-effective-pressure-at-torque", "power-at-torque", "lowest-power-speed"},
     .figure = "brake_torque_Nm",
     .result = "peak_torque_Nm",
     .resultUnit = &in::Nm},
    {.path = "/figures/torque_speed",
     .findings = {},
     .field = "/running/speed_rpm",
     .result = "peak_torque_speed_rpm",
     .resultUnit = &in::turnsPerMinute,
     .partOf = "/figures/torque"},
    {.path = "/figures/maximum_speed",
     .findings = {"mean-piston-speed"},
     .field = "/running/speed_rpm"},
    {.path = "/figures/mean_effective_pressure",
     .findings = {"mean-effective-pressure-at-torque", "mean-effective-pressure-at-power"},
     .figure = "bmep_bar",
     .result = "bmep_bar",
     .resultUnit = &in::bar},
    {.path = "/figures/mean_piston_speed",
     .findings = {"mean-piston-speed", "mean-piston-speed-given"},
     .figure = "mean_piston_speed_inlet_m_per_s",
     .result = "mean_piston_speed_inlet_m_per_s",
     .resultUnit = &in::metrePerSecond},
    {.path = "/figures/efficiency",
     .findings = {"efficiency"},
     .figure = "brake_efficiency",
     .result = "brake_efficiency",
     .isPercent = true},
    {.path = "/figures/fuel_consumption",
     .findings = {"efficiency-from-consumption"},
     .figure = "brake_specific_fuel_g_per_kWh",
     .result = "brake_specific_fuel_g_per_kWh",
     .resultUnit = &in::gPerKWh},
    {.path = "/figures/friction_pressure",
     .findings = {"indicated-pressure-at-torque", "indicated-pressure-at-power"},
     .figure = "fmep_bar",
     .result = "fmep_bar",
     .resultUnit = &in::bar},
    {.path = "/figures/air_ratio", .findings = {"air-needed"}, .field = "/gas/lambda"},
    {.path = "/engine/displacement",
     .findings = {"specific-power"},
     .figure = "displacement_cm3",
     .result = "displacement_cm3",
     .resultUnit = &in::cm3},
    {.path = "/engine/events_per_turn",
     .findings = {"cycles-per-turn"},
     .figure = "power_strokes_per_turn"},
    {.path = "/engine/charge_pressure",
     .findings = {"charge-available", "supply-power"},
     .figure = "supply_pressure_bar",
     .result = "supply_pressure_bar",
     .resultUnit = &in::bar},
    {.path = "/engine/mass", .findings = {"power-per-mass"}},
    {.path = "/engine/compression_ratio",
     .figure = "compression_ratio",
     .result = "compression_ratio"},
    {.path = "/engine/highest_compression_ratio",
     .figure = "compression_ratio",
     .result = "compression_ratio"},
    {.path = "/engine/diameter", .field = "/mechanism/pitch_radius_mm"},
    {.path = "/engine/length", .field = "/mechanism/piston/length_mm"},
};

} // namespace

std::span<const RowSubject> rowSubjects() {
    return subjects;
}

namespace {

/// Where the published figure at this path is looked up, without what stands beside it.
RowSubject placesOf(std::string_view path) {
    const RowSubject& row = *std::ranges::find(subjects, path, &RowSubject::path);
    return {.figure = row.figure,
            .field = row.field,
            .result = row.result,
            .resultUnit = row.resultUnit,
            .isPercent = row.isPercent};
}

} // namespace

RowSubject subjectOf(const Statement& statement) {
    switch (statement.kind) {
    case StatementKind::strokes:
    case StatementKind::eventsPerChamberAndTurn:
        return {.figure = "cycles_per_turn"};
    case StatementKind::eventsPerTurn:
        return placesOf("/engine/events_per_turn");
    case StatementKind::boosted:
        return placesOf("/engine/charge_pressure");
    case StatementKind::balanced:
        return {.figure = "shaking_force_peak_N",
                .result = "shaking_force_peak_N",
                .resultUnit = &in::N};
    case StatementKind::timesUsual:
        return placesOf(statement.measure == UsualMeasure::powerStrokes ? "/engine/events_per_turn"
                        : statement.measure == UsualMeasure::efficiency ? "/figures/efficiency"
                        : statement.measure == UsualMeasure::torquePerDisplacement
                            ? "/figures/mean_effective_pressure"
                            : "/figures/power");
    case StatementKind::firingInterval:
        return {.figure = "shortest_firing_interval_deg"};
    case StatementKind::compressionRange:
        return placesOf("/engine/compression_ratio");
    case StatementKind::size:
        return placesOf("/engine/diameter");
    case StatementKind::friction:
        return placesOf("/figures/friction_pressure");
    case StatementKind::lowSpeedTorque:
        return placesOf("/figures/torque");
    case StatementKind::oilConsumption:
    case StatementKind::other:
        break;
    }
    return {};
}

Message publishedText(const Claims& claims, std::string_view path) {
    Message said;
    withKey(claims, path, [&said](const auto& key, const auto& group) {
        if (key.amount != nullptr && group.*(key.amount)) {
            said = Message(study::text(*(group.*(key.amount))));
        } else if (key.count != nullptr && group.*(key.count)) {
            said = Message(LW_TEXT("%1"), asTyped(*(group.*(key.count))));
        } else if (key.chosen) {
            const auto chosen = key.chosen(group);
            said = chosen ? Message(key.words[*chosen].label) : Message();
        }
    });
    return said;
}

std::optional<double> publishedValue(const Claims& claims, std::string_view path) {
    std::optional<double> value;
    withKey(claims, path, [&value](const auto& key, const auto& group) {
        if (key.amount != nullptr && group.*(key.amount)) {
            value = (group.*(key.amount))->si;
        } else if (key.count != nullptr) {
            value = group.*(key.count);
        }
    });
    return value;
}

} // namespace lobewright::study
