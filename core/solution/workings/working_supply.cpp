#include "core/solution/workings/working_recipes.h"

LW_TEXTS_OF(Core)

/// How the figures of compressor and turbine come about.
namespace lobewright::solution {

namespace {

constexpr double sampled = 3e-3; ///< columns with corners where ports open and flows turn

constexpr Recipe recipes[] = {
    {"compressor_speed_rpm", "N", "i·n", "i=field:/gas/supply/ratio n=field:/running/speed_rpm",
     LW_TEXT("The gear turns the wheel.")},
    {"compressor_tip_speed_m_per_s", "u", "π·D·N/60000",
     "D=field:/gas/supply/wheel/diameter_mm N=figure:compressor_speed_rpm",
     LW_TEXT("Definition: circumference of the wheel times its turns in a second.")},
    {"compressor_flow_coefficient", "φ", "B·R·T_a/(360·p_a·u·D^2)",
     "B=figure:air_flow_kg_per_h R=value:gas_constant_air "
     "T_a=field:/gas/supply/ambient_temperature_K p_a=field:/gas/supply/ambient_pressure_bar "
     "u=figure:compressor_tip_speed_m_per_s D=field:/gas/supply/wheel/diameter_mm",
     LW_TEXT("Definition: mass flow over inlet density, tip speed and diameter squared (Dixon and "
             "Hall, Fluid Mechanics and Thermodynamics of Turbomachinery, ch. 2)."),
     1e-4, 0.0, LW_TEXT("In the steady state the ports pass what the compressor gives.")},
    {"compressor_pressure_ratio", "π", "p_s/p_a",
     "p_s=figure:supply_pressure_bar p_a=field:/gas/supply/ambient_pressure_bar",
     LW_TEXT("Mean pressure in the plenum over ambient pressure.")},
    {"compressor_efficiency", "η", "η_b·max(0.2, 2·φ/φ_b − (φ/φ_b)^2)",
     "η_b=field:/gas/supply/wheel/best_efficiency φ=figure:compressor_flow_coefficient "
     "φ_b=field:/gas/supply/wheel/best_flow",
     LW_TEXT("Parabola about the best flow coefficient; never below a fifth of the best (own "
             "estimate).")},
    {"compressor_power_kW", "P_c", "∮(m·Δh, θ)/360000",
     "m=channel:compressor_flow_g_per_s Δh=channel:compression_work_kJ_per_kg "
     "θ=channel:shaft_angle_deg",
     LW_TEXT("Mass flow times the work to compress it; g/s times kJ/kg are W."), sampled, 1e-9},
    {"supply_power_kW", "P_s", "P_c", "P_c=figure:compressor_power_kW",
     LW_TEXT("The shaft drives the wheel through the gear.")},
};

} // namespace

std::span<const Recipe> supplyRecipes() {
    return recipes;
}

} // namespace lobewright::solution
