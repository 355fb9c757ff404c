#include "core/contact/contact.h"
#include "core/contact/line_contact.h"
#include "core/contact/track_materials.h"
#include "core/loads/free_body.h"
#include "core/loads/loads.h"
#include "core/solution/pipeline/stages.h"
#include "core/solution/workings/working_recipes.h"
#include "core/track/track.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <tuple>

LW_TEXTS_OF(Core)

namespace lobewright::solution {

namespace {

constexpr TextId virtualWork =
    LW_TEXT("Virtual work: turning the track by a radian moves it axially by the helix pitch/2π.");
constexpr TextId searched = LW_TEXT("Maximum over the revolution.");
constexpr TextId hertz =
    LW_TEXT("Hertz, line contact (Johnson, Contact Mechanics, § 4.2); load spread "
            "evenly over the width, so nominal.");
constexpr TextId contactSource = LW_TEXT("Maximum over the revolution and the width.");

constexpr TextId noSpeed = LW_TEXT("Gas and rings pull the piston off where inertia does not press "
                                   "it on: no speed keeps contact.");
constexpr const char* highestSpeed = "n·√(max(0, (F_g + F_r)/(−F_m)))";
constexpr TextId firedHigh = LW_TEXT(
    "The speed at which the deceleration outweighs gas and rings, with this pressure trace held.");
constexpr TextId motoredHigh = LW_TEXT(
    "The speed at which the deceleration outweighs gas and rings, with the pressure trace of the "
    "motored engine held.");
constexpr TextId firedLow = LW_TEXT(
    "The speed below which inertia presses less than gas and rings pull, with this pressure trace "
    "held.");
constexpr TextId motoredLow = LW_TEXT(
    "The speed below which inertia presses less than gas and rings pull, with the pressure trace "
    "of the motored engine held.");

constexpr const char* withinBounds =
    "max(0, (n − n_l + 1e-9)/abs(n − n_l + 1e-9))·max(0, (n_h − n + 1e-9)/abs(n_h − n + 1e-9))";
constexpr TextId boundsSource =
    LW_TEXT("Definition: 1 where the speed is between its limits for this pressure trace.");

constexpr Recipe loadTable[] = {
    {"mean_torque_Nm", "T_m", "W/(2·π)", "W=figure:shaft_work_J",
     LW_TEXT("Work per revolution divided by 2π.")},
    {"highest_torque_Nm", "T_max", "max(T)", "T=channel:torque_total_Nm", searched, sampled},
    {"lowest_torque_Nm", "T_min", "min(T)", "T=channel:torque_total_Nm",
     LW_TEXT("Minimum over the revolution."), sampled, 0.05},
    {"peak_to_peak_torque_Nm", "ΔT", "T_max − T_min",
     "T_max=figure:highest_torque_Nm T_min=figure:lowest_torque_Nm", LW_TEXT("Definition.")},
    {"torque_ripple", "r", "ΔT/abs(T_m)",
     "ΔT=figure:peak_to_peak_torque_Nm T_m=figure:mean_torque_Nm",
     LW_TEXT("Definition: (max − min)/|mean|.")},
    {"shortest_firing_interval_deg", "Δ", "360·k/(z·c)",
     "k=figure:cylinders_firing_together z c even=value:even_firing",
     LW_TEXT("Evenly spaced: the revolution divided by its power strokes.")},
    {"longest_firing_interval_deg", "Δ", "360·k/(z·c)",
     "k=figure:cylinders_firing_together z c even=value:even_firing",
     LW_TEXT("Evenly spaced: the revolution divided by its power strokes.")},
    {"thrust_bearing_force_peak_N", "F_max", "max(abs(F))", "F=channel:inlet_track_thrust_N",
     searched, sampled},
    {"thrust_bearing_force_mean_N", "F_m", "∮(F, θ)/360", "F=channel:inlet_track_thrust_N θ",
     LW_TEXT("Mean over the revolution."), sampled, 1.0},
    {"thrust_bearing_equivalent_load_N", "P", "(∮(abs(F)^(10/3), θ)/360)^(3/10)",
     "F=channel:inlet_track_thrust_N θ",
     LW_TEXT("ISO 281: power mean with exponent 10/3 over the revolution."), sampled},
    {"thrust_bearing_life_h", "L_h", "(1000·C/P)^(10/3)·1000000/(60·n)",
     "C=field:/thrust_bearing/dynamic_rating_kN P=figure:thrust_bearing_equivalent_load_N n",
     LW_TEXT("ISO 281: basic rating life, a₁ = 1, no lubrication factor.")},
    {"highest_contact_force_{side}_N", "N_max", "max(abs(N))", "N=channel:contact_force_{side}_N",
     searched, sampled},
    {"lowest_contact_force_{side}_N", "N_min", "min(N)", "N=channel:demanded_force_{side}_N",
     LW_TEXT("Minimum over the revolution, demanded by the motion."), sampled, 1.0},
    {"off_track_share_{side}", "s", "0", "closed=value:closed_track",
     LW_TEXT("Definition: a closed track also carries the roller on its outer flank.")},
    {"off_track_share_{side}", "s", "∮((1 − N/(abs(N) + 1e-9))/2, θ)/360",
     "N=channel:demanded_force_{side}_N θ",
     LW_TEXT("Definition: share of the revolution over which the track would have to pull."),
     sampled, 1e-3},
    {"highest_side_force_{side}_N", "F_max", "max(abs(F))", "F=channel:side_force_{side}_N",
     searched, sampled},
    {"guide_bracket_{side}", "k", "cos(α) − μ·(1 + 2·o/l)·sin(abs(α))",
     "α=value:jam_angle_{side} μ=field:/friction/guide_coefficient o=value:guide_overhang "
     "l=value:guide_length",
     LW_TEXT("Norton, Cam Design and Manufacturing Handbook, jamming of a guided follower, at the "
             "angle of its minimum."),
     1e-5},
    {"guide_bracket_{side}", "k", "1", "never=value:never_pushed_{side}",
     LW_TEXT("Definition: 1 where the track never pushes a moving piston.")},
    {"adjuster_torque_peak_Nm", "T_max", "max(abs(T + l/(2000·π)·F))",
     "T=channel:exhaust_track_torque_Nm l=field:/mechanism/adjuster/helix_lead_mm_per_turn "
     "F=channel:exhaust_track_thrust_N",
     virtualWork, sampled, 1e-6},
    {"adjuster_torque_mean_Nm", "T_m", "−∮(T + l/(2000·π)·F, θ)/360",
     "T=channel:exhaust_track_torque_Nm l=field:/mechanism/adjuster/helix_lead_mm_per_turn "
     "F=channel:exhaust_track_thrust_N θ",
     virtualWork, sampled, 1e-6},
    {"adjuster_axial_force_peak_N", "F_max", "max(abs(F + 2000·π·T/l))",
     "F=channel:exhaust_track_thrust_N T=channel:exhaust_track_torque_Nm "
     "l=field:/mechanism/adjuster/helix_lead_mm_per_turn",
     virtualWork, sampled},
    {"adjuster_holding_margin_N", "M",
     "min(μ·abs(F·cos(atan(l/(π·R))) − 2000·T/R·sin(atan(l/(π·R)))) − "
     "abs(F·sin(atan(l/(π·R))) + 2000·T/R·cos(atan(l/(π·R)))))",
     "μ=value:spline_friction F=channel:exhaust_track_thrust_N "
     "l=field:/mechanism/adjuster/helix_lead_mm_per_turn R=field:/mechanism/pitch_radius_mm "
     "T=channel:exhaust_track_torque_Nm",
     LW_TEXT("Helix at half the pitch radius: friction across it less the force along it, minimum "
             "over the revolution."),
     sampled, 1e-6},
    {"adjuster_holds_itself", "k", "max(0, (M + 1e-9)/abs(M + 1e-9))",
     "M=figure:adjuster_holding_margin_N", LW_TEXT("Definition: the margin is never negative.")},
    {"peak_piston_speed_{side}_m_per_s", "v_max", "max(abs(v))",
     "v=channel:velocity_{side}_m_per_s", searched, sampled},
    {"peak_pressure_angle_{side}_deg", "α_max", "max(abs(α))",
     "α=channel:pressure_angle_{side}_deg", searched, sampled},
    {"{highest}_fired_rpm", "n_h", "0", "F=value:contact_high_fired_pull", noSpeed},
    {"{highest}_fired_rpm", "n_h", highestSpeed,
     "n F_g=value:contact_high_fired_gas F_r=value:contact_high_fired_ring "
     "F_m=value:contact_high_fired_inertia",
     firedHigh, 1e-5, 1e-6, LW_TEXT("0: gas and rings do not press the piston on.")},
    {"{highest}_motored_rpm", "n_h", "0", "F=value:contact_high_motored_pull", noSpeed},
    {"{highest}_motored_rpm", "n_h", highestSpeed,
     "n F_g=value:contact_high_motored_gas F_r=value:contact_high_motored_ring "
     "F_m=value:contact_high_motored_inertia",
     motoredHigh, 1e-5, 1e-6, LW_TEXT("0: gas and rings do not press the piston on.")},
    {"contact_speed_low_fired_rpm", "n_l", "n·√(max(0, −(F_g + F_r)/F_m))",
     "n F_g=value:contact_low_fired_gas F_r=value:contact_low_fired_ring "
     "F_m=value:contact_low_fired_inertia",
     firedLow, 1e-5, 1e-6, LW_TEXT("0: gas and rings press the piston on at any speed.")},
    {"contact_speed_low_motored_rpm", "n_l", "n·√(max(0, −(F_g + F_r)/F_m))",
     "n F_g=value:contact_low_motored_gas F_r=value:contact_low_motored_ring "
     "F_m=value:contact_low_motored_inertia",
     motoredLow, 1e-5, 1e-6, LW_TEXT("0: gas and rings press the piston on at any speed.")},
    {"keeps_contact", "k", "1", "closed=value:closed_track",
     LW_TEXT("Definition: a closed track also carries the roller on its outer flank.")},
    {"keeps_contact", "k", withinBounds,
     "n n_l=figure:contact_speed_low_fired_rpm n_h=figure:contact_speed_high_fired_rpm",
     boundsSource, 1e-9, 0.0, "", 12},
    {"keeps_contact", "k", withinBounds,
     "n n_l=figure:contact_speed_low_motored_rpm n_h=figure:contact_speed_high_motored_rpm",
     boundsSource, 1e-9, 0.0, "", 12},
    {"keeps_contact", "k", "0", "F=value:contact_high_own_pull", noSpeed},
    {"gas_work_J", "W_g", "0.1·z·∮(p, V) + z·c·W",
     "z p=channel:pressure_bar V=channel:chamber_volume_cm3 c W=figure:pump_work_J alike",
     LW_TEXT("∮p dV of all cylinders, less what their pumps take; 1 bar·cm³ is 0.1 J."), sampled},
    {"gas_work_J", "W_g", "z·c·(W + U)", "z c W=figure:indicated_work_J U=figure:pump_work_J",
     LW_TEXT("Mean work per cycle, less that of the pump, times the cycles per revolution."),
     sampled},
    {"gas_work_J", "W_g", "0.1·z·∮(p, V)",
     "z p=channel:pressure_bar V=channel:chamber_volume_cm3 alike",
     LW_TEXT("∮p dV of all cylinders; 1 bar·cm³ is 0.1 J."), sampled},
    {"gas_work_J", "W_g", "z·c·W", "z c W=figure:indicated_work_J",
     LW_TEXT("Mean work per cycle times the cycles per revolution."), sampled},
    {"gas_work_J", "W_g", "0.1·z·∮(p, V)",
     "z p=field:/running/under_piston_pressure_bar V=channel:chamber_volume_cm3",
     LW_TEXT("Without a gas cycle the chamber stands at the under-piston pressure."), sampled,
     1e-6},
    {"friction_work_J", "W_f", "0.1·c·V_d·(r + g + w + s + b)",
     "c V_d r=figure:fmep_ring_bar g=figure:fmep_guide_bar w=figure:fmep_roller_bar "
     "s=figure:fmep_slip_bar b=figure:fmep_shaft_bearing_bar",
     LW_TEXT("Mean effective pressure times the volume swept per revolution.")},
    {"friction_work_J", "W_f", "2·π·(r + g + w + s + b)",
     "r=value:loss_ring g=value:loss_guide w=value:loss_roller s=value:loss_slip "
     "b=value:loss_shaft_bearing",
     LW_TEXT("Mean torque lost times 2π.")},
    {"shaft_work_J", "W", "π/180·∮(T, θ)", "T=channel:torque_total_Nm θ",
     LW_TEXT("Torque integrated over the shaft angle of one revolution."), sampled}};

constexpr Recipe contactTable[] = {
    {"peak_contact_pressure_{side}_MPa", "p_0",
     "√(1000·N/(π·(b − 2·k)·R·((1 − ν_t²)/E_t + (1 − ν_r²)/E_r)))",
     "N=value:worst_force_{side} b=field:/mechanism/roller/width_mm "
     "k=field:/mechanism/roller/edge_relief_mm R=value:worst_radius_{side} ν_t E_t ν_r E_r",
     hertz},
    {"peak_contact_pressure_{side}_MPa", "p_0", "max(p)", "p=channel:contact_pressure_{side}_MPa",
     contactSource, sampled},
    {"deepest_shear_{side}_MPa", "τ", "t·max(p)",
     "t=value:shear_ratio p=channel:contact_pressure_{side}_MPa",
     LW_TEXT("Johnson, Contact Mechanics, § 4.2: largest shear on the axis of a line contact.")},
    {"deepest_shear_{side}_MPa", "τ_max", "max(τ)", "τ=channel:deepest_shear_{side}_MPa",
     contactSource, sampled},
    {"contact_safety_{side}", "S", "σ/p_0",
     "σ=value:allowable_stress p_0=figure:peak_contact_pressure_{side}_MPa",
     LW_TEXT("Ratio of stresses; allowable stress after ISO 6336-5 unless given.")},
    {"lowest_film_{side}_um", "h", "min(f)", "f=channel:film_{side}_um",
     LW_TEXT("Minimum over the revolution; Dowson 1968 or Hamrock and Dowson 1977."), 5e-3},
    {"lowest_film_ratio_{side}", "Λ", "h/√(R_t² + R_r²)",
     "h=figure:lowest_film_{side}_um R_t=field:/materials/track/roughness_um "
     "R_r=field:/materials/roller/roughness_um",
     LW_TEXT("Film thickness divided by the combined roughness of both surfaces (Hamrock, Fluid "
             "Film Lubrication).")},
    {"highest_slip_{side}_m_per_s", "v", "max(s)", "s=channel:slip_{side}_m_per_s", contactSource,
     sampled},
    {"highest_pressure_slip_{side}_W_per_mm2", "q", "max(s)",
     "s=channel:pressure_slip_{side}_W_per_mm2", contactSource, sampled},
    {"roller_passes_per_hour_{side}", "f", "60·n·z", "n z",
     LW_TEXT("Each roller passes every point of the track once per revolution.")},
    {"roller_equivalent_load_{side}_N", "P",
     "(∮(abs(N)^(10/3)·√(R² + l²), θ)/∮(√(R² + l²), θ))^(3/10)",
     "N=channel:contact_force_{side}_N R=field:/mechanism/pitch_radius_mm "
     "l=channel:lever_arm_{side}_mm θ",
     LW_TEXT("ISO 281: power mean with exponent 10/3 over the revolutions of the roller."),
     sampled},
    {"roller_speed_{side}_rpm", "n_r", "n·∮(√(R² + l²), θ)/(360·r)",
     "n R=field:/mechanism/pitch_radius_mm l=channel:lever_arm_{side}_mm θ "
     "r=field:/mechanism/roller/radius_mm",
     LW_TEXT("Path along the track divided by the circumference of the roller."), sampled},
    {"roller_life_{side}_h", "L_h", "(1000·C/P)^(10/3)·1000000/(60·n_r)",
     "C=field:/roller_bearing/dynamic_rating_kN P=figure:roller_equivalent_load_{side}_N "
     "n_r=figure:roller_speed_{side}_rpm",
     LW_TEXT("ISO 281: basic rating life, a₁ = 1, no lubrication factor.")},
    {"roller_static_safety_{side}", "s_0", "1000·C_0/N",
     "C_0=field:/roller_bearing/static_rating_kN N=figure:highest_contact_force_{side}_N",
     "ISO 76."},
    {"roller_static_stress_{side}_MPa", "σ", "4000/√(s_0)",
     "s_0=figure:roller_static_safety_{side}",
     LW_TEXT("ISO 76: 4000 MPa under the static rating; the stress is proportional to the root of "
             "the load.")}};

/// A field, or where it is not given the one that stands in for it.
std::optional<Operand> fieldOr(const Solution& solution, const char* path, const char* standIn,
                               TextId note) {
    if (auto field = fieldOperand(solution, path)) {
        return field;
    }
    auto field = fieldOperand(solution, standIn);
    if (field) {
        field->note = note;
    }
    return field;
}

/// Force and radius where the nominal pressure is highest, straight rollers only.
std::optional<Operand> worstContact(const Solution& solution, std::string_view name) {
    const End end = endOf(name);
    const auto& track = solution.stages->contact->track[end];
    const bool isCrowned = solution.design.mechanism.roller.crownRadius.has_value();
    Eigen::Index i = 0;
    const double highest = track.peakPressure.maxCoeff(&i);
    if (isCrowned || !track.highestPressure || highest != track.highestPressure->value) {
        return std::nullopt;
    }
    const auto& station = *std::ranges::max_element(
        track.stations, {}, [i](const contact::StationContact& s) { return s.pressure[i]; });
    const double theta = solution.theta[i];
    if (name.starts_with("worst_force")) {
        return reading(LW_TEXT("Contact force there"), "N",
                       std::abs(solution.stages->loads->piston[end].contactForce[i]), theta, {},
                       fmt::format("contact_force_{}_N", lobewright::name(end)));
    }
    return reading(
        LW_TEXT("Relative radius of curvature of roller and track there"), "mm",
        station.relativeRadius[i] / units::millimetre, theta,
        Message(LW_TEXT("at %1 from the shaft axis, from the exact contact of roller and track"),
                Amount(station.rho, in::mm)));
}

std::optional<Operand> allowableStress(const Solution& solution) {
    if (auto field = fieldOperand(solution, "/materials/allowable_stress_MPa")) {
        return field;
    }
    const auto* material = contact::findTrackMaterial(solution.design.materials.track);
    if (material == nullptr) {
        return std::nullopt;
    }
    return constant(Message(LW_TEXT("Allowable stress of %1"), material->label), "MPa",
                    material->allowableStress / units::megapascal, material->source);
}

std::optional<Operand> jamAngle(const Solution& solution, End end) {
    const auto& margin = solution.stages->loads->jamMargin[end];
    if (margin.value >= 1.0) {
        return std::nullopt; // the track never pushes a moving piston
    }
    const Samples theta = Samples::Constant(1, margin.theta);
    const Samples angle =
        track::contactAngle(solution.pair.lift(end, theta), solution.pair.mechanism().pitchRadius);
    return reading(LW_TEXT("Pressure angle there"), "°", angle[0] / units::degree, margin.theta, {},
                   fmt::format("pressure_angle_{}_deg", name(end)));
}

/// Angles of the first cycle's events.
std::optional<Operand> eventAngle(const Solution& solution, std::string_view name) {
    const auto& cycle = solution.timing.cycles().front();
    const std::tuple<std::string_view, TextId, double> events[] = {
        {"inner_dead_centre_at", LW_TEXT("Inner dead centre"), cycle.centres.idc},
        {"outer_dead_centre_at", LW_TEXT("Outer dead centre"), cycle.centres.odc},
        {"exhaust_opens_at", LW_TEXT("Exhaust opens"), cycle.exhaustOpens},
        {"inlet_opens_at", LW_TEXT("Inlet opens"), cycle.inletOpens},
        {"inlet_closes_at", LW_TEXT("Inlet closes"), cycle.inletCloses},
        {"exhaust_closes_at", LW_TEXT("Exhaust closes"), cycle.exhaustCloses}};
    for (const auto& [key, label, theta] : events) {
        if (key == name) {
            return angleReading(label, theta, LW_TEXT("of the first cycle"));
        }
    }
    return std::nullopt;
}

} // namespace

std::span<const Recipe> loadRecipes() {
    return loadTable;
}

std::span<const Recipe> contactRecipes() {
    return contactTable;
}

std::optional<Operand> loadValue(const Solution& solution, std::string_view name) {
    if (name.ends_with("_at") && !name.starts_with("worst")) {
        return eventAngle(solution, name);
    }
    if (name == "events_near") {
        const auto& cycle = solution.timing.cycles().front();
        const double half = units::pi / solution.pair.cyclesPerTurn();
        return condition(std::abs(cycle.inletOpens - cycle.exhaustOpens) < half &&
                             std::abs(cycle.inletCloses - cycle.exhaustCloses) < half,
                         LW_TEXT("port events less than half a cycle apart"));
    }
    if (!solution.stages->loads || !solution.stages->contact) {
        return std::nullopt;
    }
    if (name == "even_firing") {
        const auto& firing = solution.stages->loads->firing;
        const bool isEven = firing.longestInterval - firing.shortestInterval < 1e-9;
        return condition(isEven, LW_TEXT("evenly spaced firing"));
    }
    if (name.starts_with("jam_angle_")) {
        return jamAngle(solution, endOf(name));
    }
    if (name.starts_with("never_pushed_")) {
        return condition(solution.stages->loads->jamMargin[endOf(name)].value >= 1.0,
                         LW_TEXT("a piston that is never pushed"));
    }
    if (name == "closed_track") {
        return condition(solution.design.mechanism.closedTrack, LW_TEXT("a closed track"));
    }
    if (name == "spline_friction") {
        return constant(LW_TEXT("Friction of the spline"), "", loads::Spline().friction,
                        LW_TEXT("lubricated steel on steel (common practice)"));
    }
    if (name == "guide_overhang") {
        return fieldOr(solution, "/friction/guide_overhang_mm", "/mechanism/roller/radius_mm",
                       LW_TEXT("not given: the roller radius"));
    }
    if (name == "guide_length") {
        return fieldOr(solution, "/friction/guide_length_mm", "/mechanism/bore_mm",
                       LW_TEXT("not given: the bore"));
    }
    if (name.starts_with("contact_high_") || name.starts_with("contact_low_")) {
        return contactSpeedValue(solution, name);
    }
    if (name.starts_with("worst_")) {
        return worstContact(solution, name);
    }
    if (name == "allowable_stress") {
        return allowableStress(solution);
    }
    if (name == "shear_ratio") {
        const bool isCrowned = solution.design.mechanism.roller.crownRadius.has_value();
        return isCrowned ? std::nullopt
                         : std::optional(
                               constant(LW_TEXT("Maximum shear stress divided by peak pressure"),
                                        "", contact::lineDeepestShear().ratio,
                                        LW_TEXT("Johnson, Contact Mechanics, § 4.2")));
    }
    return std::nullopt;
}

} // namespace lobewright::solution
