#include "core/claims/claims_keys.h"
#include "core/claims/verdict_rows.h"

#include <fmt/format.h>

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

/// Calls f(key, group) for the key at this path.
template <class ClaimsType, class F>
void withKey(ClaimsType& claims, std::string_view path, F f) {
    forEachGroup([&](std::string_view group, const auto& keys, auto member) {
        for (const auto& key : keys) {
            if (path == fmt::format("/{}/{}", group, key.name)) {
                f(key, claims.*member);
            }
        }
    });
}

} // namespace

std::span<const RowSubject> rowSubjects() {
    return subjects;
}

RowSubject subjectOf(const Statement& statement) {
    RowSubject subject;
    switch (statement.kind) {
    case StatementKind::strokes:
    case StatementKind::eventsPerChamberAndTurn:
        subject.figure = "cycles_per_turn";
        break;
    case StatementKind::eventsPerTurn:
        subject.figure = "power_strokes_per_turn";
        break;
    case StatementKind::boosted:
        subject.figure = subject.result = "supply_pressure_bar";
        subject.resultUnit = &in::bar;
        break;
    case StatementKind::balanced:
        subject.figure = subject.result = "shaking_force_peak_N";
        subject.resultUnit = &in::N;
        break;
    case StatementKind::timesUsual:
        if (statement.measure == UsualMeasure::powerStrokes) {
            subject.figure = "power_strokes_per_turn";
        } else if (statement.measure == UsualMeasure::efficiency) {
            subject.figure = subject.result = "brake_efficiency";
            subject.isPercent = true;
        } else if (statement.measure == UsualMeasure::torquePerDisplacement) {
            subject.figure = subject.result = "bmep_bar";
            subject.resultUnit = &in::bar;
        } else {
            subject.figure = "brake_power_kW";
            subject.result = "peak_power_kW";
            subject.resultUnit = &in::kW;
        }
        break;
    case StatementKind::firingInterval:
        subject.figure = "shortest_firing_interval_deg";
        break;
    case StatementKind::compressionRange:
        subject.figure = subject.result = "compression_ratio";
        break;
    case StatementKind::size:
        subject.field = "/mechanism/pitch_radius_mm";
        break;
    case StatementKind::friction:
        subject.figure = subject.result = "fmep_bar";
        subject.resultUnit = &in::bar;
        break;
    case StatementKind::lowSpeedTorque:
        subject.figure = "brake_torque_Nm";
        subject.result = "peak_torque_Nm";
        subject.resultUnit = &in::Nm;
        break;
    case StatementKind::oilConsumption:
    case StatementKind::other:
        break;
    }
    return subject;
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
