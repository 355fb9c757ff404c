#include "core/solution/figures/figures.h"
#include "core/solution/sides.h"
#include "core/solution/workings/working_recipes.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>

LW_TEXTS_OF(Core)

namespace lobewright::solution {

namespace {

constexpr Recipe geometryRows[] = {
    {"displacement_cm3", "V_d", "z·V_s", "z V_s",
     LW_TEXT("Definition: each cylinder counts once.")},
    {"swept_volume_cm3", "V_s", "π/4·D²·(S_i + S_e)/1000",
     "D S_i=figure:stroke_inlet_mm S_e=figure:stroke_exhaust_mm",
     LW_TEXT(
         "Definition: both pistons sweep the one chamber, whatever the lead. 1000 mm³ are 1 cm³.")},
    {"compression_ratio", "ε", "V_max/V_min",
     "V_max=value:only_maximum_volume V_min=value:only_minimum_volume",
     LW_TEXT("Definition (Heywood, Internal Combustion Engine Fundamentals, § 2.2).")},
    {"compression_ratio", "ε", "min(V_1/v_1, V_2/v_2)",
     "V_1=value:largest_volume_1 v_1=value:smallest_volume_1 V_2=value:largest_volume_2 "
     "v_2=value:smallest_volume_2",
     LW_TEXT("Definition (Heywood, § 2.2); of unequal lobes the lower one.")},
    {"trapped_compression_ratio", "ε_t", "V_c/V_min",
     "V_c=value:only_closing_volume V_min=value:only_minimum_volume",
     LW_TEXT("Definition: volume at the last port closing divided by the smallest volume.")},
    {"trapped_compression_ratio", "ε_t", "min(V_1/v_1, V_2/v_2)",
     "V_1=value:closing_volume_1 v_1=value:smallest_volume_1 V_2=value:closing_volume_2 "
     "v_2=value:smallest_volume_2",
     LW_TEXT("Definition; of unequal lobes the lower one.")},
    {"minimum_volume_cm3", "V_min", "π/4·D²·(c + S_i − y_i + S_e − y_e + s)/1000 + V_r",
     "D c=field:/mechanism/clearance_mm S_i=figure:stroke_inlet_mm y_i=value:lift_inlet_idc "
     "S_e=figure:stroke_exhaust_mm y_e=value:lift_exhaust_idc s=value:adjuster_shift "
     "V_r=field:/mechanism/recess_cm3",
     LW_TEXT("Geometry of the pair at inner dead centre.")},
    {"maximum_volume_cm3", "V_max", "π/4·D²·(c + S_i − y_i + S_e − y_e + s)/1000 + V_r",
     "D c=field:/mechanism/clearance_mm S_i=figure:stroke_inlet_mm y_i=value:lift_inlet_odc "
     "S_e=figure:stroke_exhaust_mm y_e=value:lift_exhaust_odc s=value:adjuster_shift "
     "V_r=field:/mechanism/recess_cm3",
     LW_TEXT("Geometry of the pair at outer dead centre.")},
    {"surface_to_volume_per_mm", "A/V", "(2·π/4·D² + π·D·g)/(1000·V)",
     "D g=value:gap_idc V=value:smallest_volume_1",
     LW_TEXT("Two crowns and the liner between them; a piston bowl adds volume only.")},
    {"cycles_per_turn", "c", "L·r", "L=field:/tracks/inlet/lobes r=value:rises_per_pattern",
     LW_TEXT("Definition: each rise and return is one two-stroke cycle.")},
    {"power_strokes_per_turn", "P", "c·z", "c z", LW_TEXT("Definition.")},
    {"stroke_{side}_mm", "S", "S_t", "S_t=value:stroke_field_{side}",
     LW_TEXT("Given in the design.")},
    {"stroke_{side}_mm", "S", "max(y) − min(y)", "y=channel:lift_{side}_mm",
     LW_TEXT("Definition: maximum less minimum lift."), sampled},
    {"mean_piston_speed_{side}_m_per_s", "v_m", "2·S·c·n/60000", "S=figure:stroke_{side}_mm c n",
     LW_TEXT("Heywood, § 2.2, with c reciprocations per revolution instead of one.")},
    {"compression_ratio_unadjusted", "ε_0", "ε − Δ_p − Δ_a",
     "ε=figure:compression_ratio Δ_p=figure:compression_ratio_change_phase "
     "Δ_a=figure:compression_ratio_change_axial",
     LW_TEXT("The value without both shares of the adjuster.")},
    // Differences of near values: told to as many digits as cancel.
    {"compression_ratio_change_phase", "Δ_p", "ε_p − ε_0",
     "ε_p=value:compression_turned ε_0=value:compression_rest",
     LW_TEXT(
         "The engine with the exhaust track only turned, less the same with the adjuster at rest."),
     1e-9, 1e-9, "", 8},
    {"compression_ratio_change_axial", "Δ_a", "ε − ε_p",
     "ε=figure:compression_ratio ε_p=value:compression_turned",
     LW_TEXT("The engine as it is, less the same with the exhaust track only turned."), 1e-9, 1e-9,
     "", 8},
    {"trapped_compression_ratio_change_phase", "Δ_p", "ε_p − ε_0",
     "ε_p=value:trapped_turned ε_0=value:trapped_rest",
     LW_TEXT(
         "The engine with the exhaust track only turned, less the same with the adjuster at rest."),
     1e-9, 1e-9, "", 8},
    {"trapped_compression_ratio_change_axial", "Δ_a", "ε − ε_p",
     "ε=figure:trapped_compression_ratio ε_p=value:trapped_turned",
     LW_TEXT("The engine as it is, less the same with the exhaust track only turned."), 1e-9, 1e-9,
     "", 8},
    {"overlap_change_phase_deg", "Δ_p", "o_p − o_0",
     "o_p=value:overlap_turned o_0=value:overlap_rest",
     LW_TEXT(
         "The engine with the exhaust track only turned, less the same with the adjuster at rest."),
     1e-9, 1e-9, "", 8},
    {"overlap_change_axial_deg", "Δ_a", "o − o_p", "o=figure:overlap_deg o_p=value:overlap_turned",
     LW_TEXT("The engine as it is, less the same with the exhaust track only turned."), 1e-9, 1e-9,
     "", 8},
    {"blowdown_change_phase_deg", "Δ_p", "b_p − b_0",
     "b_p=value:blowdown_turned b_0=value:blowdown_rest",
     LW_TEXT(
         "The engine with the exhaust track only turned, less the same with the adjuster at rest."),
     1e-9, 1e-9, "", 8},
    {"blowdown_change_axial_deg", "Δ_a", "b − b_p",
     "b=figure:blowdown_deg b_p=value:blowdown_turned",
     LW_TEXT("The engine as it is, less the same with the exhaust track only turned."), 1e-9, 1e-9,
     "", 8}};

Operand volumeAt(const Solution& solution, const Message& label, double theta) {
    return reading(label, "cm³", solution.pair.volume(theta) / units::cubicCentimetre, theta, {},
                   "chamber_volume_cm3");
}

/// The cycle with the smallest (largest) volume at its dead centre.
const ports::CycleEvents& extremeCycle(const Solution& solution, bool isSmallest) {
    const auto& cycles = solution.timing.cycles();
    return *std::ranges::min_element(cycles, {}, [&](const ports::CycleEvents& cycle) {
        return isSmallest ? solution.pair.volume(cycle.centres.idc)
                          : -solution.pair.volume(cycle.centres.odc);
    });
}

std::optional<Operand> liftAt(const Solution& solution, End end, bool isInner) {
    const auto& centres = extremeCycle(solution, isInner).centres;
    const double theta = isInner ? centres.idc : centres.odc;
    const TextId label =
        isInner ? LW_TEXT("Lift at inner dead centre") : LW_TEXT("Lift at outer dead centre");
    return reading(ofTrack(solution.pair, label, end), "mm",
                   solution.pair.lift(end, theta).y / units::millimetre, theta, {},
                   fmt::format("lift_{}_mm", name(end)));
}

std::optional<Operand> cycleVolume(const Solution& solution, std::string_view wanted) {
    const auto& cycles = solution.timing.cycles();
    const std::size_t index = wanted.ends_with("_2") ? 1 : 0;
    if (index >= cycles.size() || cycles.size() > 2) {
        return std::nullopt;
    }
    const auto& cycle = cycles[index];
    const auto which = [&](TextId what) {
        return cycles.size() > 1 ? Message(LW_TEXT("%1, cycle %2"), what, index + 1)
                                 : Message(what);
    };
    if (wanted.starts_with("largest")) {
        return volumeAt(solution, which(LW_TEXT("Largest chamber volume")), cycle.centres.odc);
    }
    if (wanted.starts_with("smallest")) {
        return volumeAt(solution, which(LW_TEXT("Smallest chamber volume")), cycle.centres.idc);
    }
    return volumeAt(solution, which(LW_TEXT("Chamber volume when the last port closes")),
                    cycle.lastClosing());
}

/// Values of the same engine with its adjuster at rest or only turned.
std::optional<Operand> adjustedValue(const Solution& solution, std::string_view name) {
    const bool isTurned = name.ends_with("_turned");
    auto adjuster = solution.pair.mechanism().adjuster;
    adjuster.axial = 0.0;
    (isTurned ? adjuster.helixLead : adjuster.setting) = 0.0;
    const auto timing = withAdjuster(solution.timing, adjuster);
    if (!timing) {
        return std::nullopt;
    }
    const auto how = [&](TextId what) {
        return Message(isTurned ? LW_TEXT("%1, exhaust track only turned")
                                : LW_TEXT("%1, adjuster at rest"),
                       what);
    };
    const auto& cycle = timing->cycles().front();
    if (name.starts_with("compression")) {
        return inner(how(LW_TEXT("Compression ratio")), "", compressionRatio(*timing));
    }
    if (name.starts_with("trapped")) {
        return inner(how(LW_TEXT("Trapped compression ratio")), "",
                     trappedCompressionRatio(*timing));
    }
    if (name.starts_with("overlap")) {
        return inner(how(LW_TEXT("Overlap")), "shaft °", cycle.overlap() / units::degree);
    }
    return inner(how(LW_TEXT("Blowdown")), "shaft °", cycle.blowdown() / units::degree);
}

std::optional<Operand> strokeField(const Solution& solution, End end) {
    const bool isShared = end == End::exhaust && !solution.design.tracks.exhaust;
    return fieldOperand(solution,
                        fmt::format("/tracks/{}/stroke_mm", isShared ? "inlet" : name(end)));
}

} // namespace

std::span<const Recipe> geometryRecipes() {
    return geometryRows;
}

std::optional<Operand> geometryValue(const Solution& solution, std::string_view name) {
    const bool isOnly = solution.timing.cycles().size() == 1;
    if (name.starts_with("only_")) {
        if (!isOnly) {
            return std::nullopt;
        }
        return name == "only_maximum_volume"   ? figureOperand(solution, "maximum_volume_cm3")
               : name == "only_minimum_volume" ? figureOperand(solution, "minimum_volume_cm3")
                                               : cycleVolume(solution, "closing_volume_1");
    }
    if (name.ends_with("_volume_1") || name.ends_with("_volume_2")) {
        return cycleVolume(solution, name);
    }
    if (name.ends_with("_turned") || name.ends_with("_rest")) {
        return adjustedValue(solution, name);
    }
    if (name.starts_with("stroke_field_")) {
        return strokeField(solution, endOf(name));
    }
    if (name.starts_with("lift_inlet_") || name.starts_with("lift_exhaust_")) {
        return liftAt(solution, name.starts_with("lift_inlet") ? End::inlet : End::exhaust,
                      name.ends_with("idc"));
    }
    if (name == "gap_idc") {
        const double theta = solution.timing.cycles().front().centres.idc;
        return inner(LW_TEXT("Gap between the crowns at inner dead centre"), "mm",
                     solution.pair.gap(theta) / units::millimetre);
    }
    if (name == "adjuster_shift") {
        return inner(LW_TEXT("Shift of the exhaust track, outward"), "mm",
                     solution.pair.shift(solution.pair.pistons().back()) / units::millimetre,
                     LW_TEXT("helix pitch × setting/360° + axial shift of the adjuster"));
    }
    if (name == "rises_per_pattern") {
        return inner(LW_TEXT("Rises per pattern"), "",
                     static_cast<double>(solution.timing.cycles().size()));
    }
    return std::nullopt;
}

} // namespace lobewright::solution
