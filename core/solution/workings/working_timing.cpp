#include "core/solution/workings/working_recipes.h"
#include "core/units.h"

#include <fmt/format.h>

LW_TEXTS_OF(Core)

namespace lobewright::solution {

namespace {

constexpr double summed = 2e-3; ///< areas summed at half degrees
constexpr TextId byDefinition = LW_TEXT("Definition (usual for two-strokes).");
constexpr TextId cycleDegrees =
    LW_TEXT("Definition: cycle degrees are c times shaft degrees, counted from inner dead centre.");

constexpr Recipe timingRows[] = {
    {"{event}_deg", "θ", "mod(θ_r, 360/c)", "θ_r=value:{event}_at c",
     LW_TEXT(
         "Root, to 1e−10 rad, of lift less shift = inner edge of the port for an event, of dV/dθ = "
         "0 "
         "or "
         "the middle of the common dwell for a dead centre; here brought into the first cycle."),
     1e-9, 1e-9},
    {"{event}_cycle_deg", "χ", "wrap(c·(θ − θ_i))",
     "c θ=figure:{event}_deg θ_i=figure:inner_dead_centre_deg", cycleDegrees, 1e-9, 1e-7,
     LW_TEXT("wrap brings an angle into −180° … 180°.")},
    {"blowdown_deg", "Δ", "wrap(χ_IO − χ_EO)/c",
     "χ_IO=figure:inlet_opens_cycle_deg χ_EO=figure:exhaust_opens_cycle_deg c "
     "near=value:events_near",
     LW_TEXT("Definition: from exhaust opens to inlet opens, signed."), 1e-9, 1e-9, "", 9},
    {"after_charge_deg", "Δ", "wrap(χ_IC − χ_EC)/c",
     "χ_IC=figure:inlet_closes_cycle_deg χ_EC=figure:exhaust_closes_cycle_deg c "
     "near=value:events_near",
     LW_TEXT("Definition: from exhaust closes to inlet closes, signed."), 1e-9, 1e-9, "", 9},
    {"overlap_deg", "Δ", "max(0, min(wrap(χ_IO − χ_EO) + s_i, s_e) − max(wrap(χ_IO − χ_EO), 0))/c",
     "χ_IO=figure:inlet_opens_cycle_deg χ_EO=figure:exhaust_opens_cycle_deg "
     "s_i=figure:inlet_open_cycle_deg s_e=figure:exhaust_open_cycle_deg c near=value:events_near",
     LW_TEXT("Definition: inlet and exhaust ports both open."), 1e-9, 1e-9, "", 9},
    {"blowdown_deg", "Δ", "θ_IO − θ_EO", "θ_IO=value:inlet_opens_at θ_EO=value:exhaust_opens_at",
     LW_TEXT("Definition: from exhaust opens to inlet opens, signed."), 1e-9, 1e-7, "", 9},
    {"after_charge_deg", "Δ", "θ_IC − θ_EC",
     "θ_IC=value:inlet_closes_at θ_EC=value:exhaust_closes_at",
     LW_TEXT("Definition: from exhaust closes to inlet closes, signed."), 1e-9, 1e-7, "", 9},
    {"overlap_deg", "Δ", "max(0, min(θ_IC, θ_EC) − max(θ_IO, θ_EO))",
     "θ_IC=value:inlet_closes_at θ_EC=value:exhaust_closes_at θ_IO=value:inlet_opens_at "
     "θ_EO=value:exhaust_opens_at",
     LW_TEXT("Definition: inlet and exhaust ports both open."), 1e-9, 1e-7, "", 9},
    {"{side}_open_deg", "Δ", "mod(χ_c − χ_o, 360)/c",
     "χ_c=figure:{side}_closes_cycle_deg χ_o=figure:{side}_opens_cycle_deg c", byDefinition},
    {"{span}_cycle_deg", "Δχ", "c·Δ", "c Δ=figure:{span}_deg", cycleDegrees},
    {"{span}_ms", "t", "Δ/(0.006·n)", "Δ=figure:{span}_deg n",
     LW_TEXT("The shaft turns 0.006·n degrees per millisecond.")},
    {"blowdown_time_area_s_per_m", "Ψ", "∫(A, θ, a, a + max(0, Δ))/(6·n·V_s)",
     "A=channel:port_area_exhaust_mm2 θ a=value:exhaust_opens_at Δ=figure:blowdown_deg n V_s",
     LW_TEXT("Blair, Design and Simulation of Two-Stroke Engines; geometric area, no coefficient."),
     2.0 * summed},
    {"{side}_time_area_s_per_m", "Ψ", "∫(A, θ, a, b)/(6·n·V_s)",
     "A=channel:port_area_{side}_mm2 θ a=value:{side}_opens_at b=value:{side}_closes_at n V_s",
     LW_TEXT("Blair, Design and Simulation of Two-Stroke Engines; geometric area, no coefficient."),
     summed}};

} // namespace

std::span<const Recipe> timingRecipes() {
    return timingRows;
}

std::optional<Working> portAreaWorking(const Solution& solution, const Figure& figure) {
    for (const End end : bothEnds) {
        if (figure.name != fmt::format("full_port_area_{}_mm2", name(end))) {
            continue;
        }
        Working working{.figure = figure.name,
                        .symbol = "A",
                        .unit = figure.symbolOfUnit(),
                        .value = *figure.value,
                        .source = LW_TEXT("Rectangles less their rounded corners, all rows.")};
        for (std::size_t i = 0; i < solution.design.ports[end].size(); ++i) {
            working.formula +=
                fmt::format("{0}n{1}·(w{1}·h{1} − (4 − π)·r{1}²)", i == 0 ? "" : " + ", i + 1);
            for (const auto& [symbol, key] :
                 {std::pair("n", "count"), std::pair("w", "width_mm"), std::pair("h", "height_mm"),
                  std::pair("r", "corner_radius_mm")}) {
                auto field =
                    fieldOperand(solution, fmt::format("/ports/{}/{}/{}", name(end), i, key));
                if (!field) {
                    return std::nullopt;
                }
                field->symbol = fmt::format("{}{}", symbol, i + 1);
                field->label = {LW_TEXT("%1, port row %2"), field->label, i + 1};
                working.operands.push_back(std::move(*field));
            }
        }
        return working;
    }
    return std::nullopt;
}

} // namespace lobewright::solution
