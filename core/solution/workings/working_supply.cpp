#include "core/design/gas_settings.h"
#include "core/gas/models/feeder.h"
#include "core/gas/models/supply.h"
#include "core/gas/properties/properties.h"
#include "core/solution/workings/working_recipes.h"
#include "core/units.h"

#include <cmath>

LW_TEXTS_OF(Core)

/// How the figures of compressor and turbine come about.
namespace lobewright::solution {

namespace {

constexpr double samePassed = 1e-4; ///< ports and compressor pass the same in the steady state
constexpr TextId counted = LW_TEXT("Counted by the solver.");
constexpr TextId meanOverTurn = LW_TEXT("Mean over the revolution.");
constexpr TextId flowTimesWork =
    LW_TEXT("Mass flow times the specific work of compression; 1 g/s·kJ/kg is 1 W.");

constexpr Recipe supplyRows[] = {
    {"compressor_speed_rpm", "N", "i·n", "i=field:/gas/supply/ratio n",
     LW_TEXT("The gear turns the wheel.")},
    {"compressor_speed_rpm", "N", "N_b", "N_b=value:balanced_speed",
     LW_TEXT("Speed at which the turbine covers compressor and bearings: ∮P_t·η_m = ∮P_c.")},
    {"compressor_tip_speed_m_per_s", "u", "π·D·N/60000",
     "D=field:/gas/supply/wheel/diameter_mm N=figure:compressor_speed_rpm",
     LW_TEXT("Definition: circumference of the wheel times its revolutions per second.")},
    {"compressor_flow_coefficient", "φ", "B·R·T_a/(360·p_a·u·D^2)",
     "B R=value:gas_constant_air T_a p_a=value:intake_pressure "
     "u=figure:compressor_tip_speed_m_per_s D=field:/gas/supply/wheel/diameter_mm",
     LW_TEXT("Definition: mass flow divided by inlet density, tip speed and diameter squared "
             "(Dixon and Hall, Fluid Mechanics and Thermodynamics of Turbomachinery, ch. 2)."),
     samePassed, 0.0,
     LW_TEXT("In the steady state the flow through the ports equals that of the compressor.")},
    {"compressor_pressure_ratio", "π", "p_s/p_a",
     "p_s=figure:supply_pressure_bar p_a=value:intake_pressure alone=value:wheel_alone",
     LW_TEXT("Mean pressure in the plenum divided by that upstream of the wheel.")},
    {"compressor_pressure_ratio", "π", "(1 + ψ·u^2/(c·T_a))^κ",
     "ψ=value:head_coefficient u=figure:compressor_tip_speed_m_per_s c=value:heat_of_air T_a "
     "κ=value:exponent_of_air behind=value:blower_behind",
     LW_TEXT("Isentropic enthalpy rise ψ·u² from the ambient state."), samePassed},
    {"compressor_corrected_flow_kg_per_s", "m_c", "B/3600·(T_a/T_r)^0.5·p_r/p_a",
     "B T_a T_r=value:reference_temperature p_r=value:reference_pressure p_a=value:intake_pressure",
     LW_TEXT("Flow at the same flow coefficient and Mach number in the reference state (Cohen, "
             "Rogers and Saravanamuttoo, Gas Turbine Theory, ch. 4)."),
     samePassed},
    {"compressor_surge_margin", "s", "1 − φ_s/φ",
     "φ_s=value:surge_flow φ=figure:compressor_flow_coefficient",
     LW_TEXT("How much of the flow could be lost at this wheel speed before the wheel surges; "
             "below 0 it does.")},
    {"compressor_efficiency", "η", "η_b·max(0.2, 2·φ/φ_b − (φ/φ_b)^2)",
     "η_b=field:/gas/supply/wheel/best_efficiency φ=figure:compressor_flow_coefficient "
     "φ_b=field:/gas/supply/wheel/best_flow",
     LW_TEXT("Parabola about the best flow coefficient; never below a fifth of the best (own "
             "estimate).")},
    {"compressor_efficiency", "η", "η_p", "η_p=value:measured_efficiency",
     LW_TEXT("Read off the measured points, between speeds and flows."), samePassed},
    {"compressor_power_kW", "P_c", "∮(m·Δh, θ)/360000",
     "m=channel:compressor_flow_g_per_s Δh=channel:compression_work_kJ_per_kg θ "
     "alone=value:wheel_alone",
     flowTimesWork, sampledAtCorners, 1e-9},
    {"compressor_power_kW", "P_c", "B·Δh/3600", "B Δh=value:wheel_work behind=value:blower_behind",
     LW_TEXT("Mass flow times the work of the wheel on it, which is constant over the revolution."),
     samePassed, 1e-9},
    {"supply_power_kW", "P_s", "P_c", "P_c=figure:compressor_power_kW alone=value:geared_alone",
     LW_TEXT("The shaft drives the wheel through the gear.")},
    {"supply_power_kW", "P_s", "B/3600·∮(Δh, θ)/360",
     "B Δh=channel:compression_work_kJ_per_kg θ geared=value:geared_with_blower",
     LW_TEXT("The shaft drives wheel and blower: mass flow times the work of both."),
     sampledAtCorners, 1e-9},
    {"supply_power_kW", "P_s", "B/3600·(∮(Δh, θ)/360 − Δh_w)",
     "B Δh=channel:compression_work_kJ_per_kg θ Δh_w=value:wheel_work "
     "turbine=value:turbine_with_blower",
     LW_TEXT("The shaft drives the blower, the exhaust the wheel: only the work of the blower."),
     3.0 * sampledAtCorners, 1e-9},
    {"supply_power_kW", "P_s", "0", "turbine=value:turbine_alone",
     LW_TEXT("The exhaust drives the wheel; no shaft power is taken.")},
    {"supply_power_counted", "k", "1", "turbine=value:turbine_drives",
     LW_TEXT(
         "The exhaust drives the wheel; the power of everything on the shaft is always deducted.")},
    {"wheel_sustained", "s", "s_w", "s_w=value:wheel_state", counted},
    {"turbine_power_kW", "P_t", "P_c/η_m",
     "P_c=figure:compressor_power_kW η_m=field:/gas/supply/turbine/mechanical_efficiency "
     "balanced=value:wheel_in_balance",
     LW_TEXT(
         "At constant wheel speed the turbine power less bearing losses drives the compressor."),
     1e-5},
    {"turbine_power_kW", "P_t", "P_w", "P_w=value:turbine_power", counted},
    {"turbine_expansion_ratio", "π_t", "p_x/p_e",
     "p_x=figure:exhaust_plenum_pressure_bar p_e=field:/gas/exhaust_pressure_bar",
     LW_TEXT("Mean pressure upstream of the turbine divided by that downstream.")},
    {"turbine_speed_ratio", "ν", "π·D·N/(60000·c_0)",
     "D=field:/gas/supply/turbine/diameter_mm N=figure:compressor_speed_rpm "
     "c_0=value:spouting_velocity",
     LW_TEXT("Tip speed divided by spouting velocity (Dixon and Hall, ch. 8).")},
    {"turbine_efficiency", "η_t", "7200000·P_t/(m·c_0^2)",
     "P_t=figure:turbine_power_kW m=value:nozzle_flow c_0=value:spouting_velocity",
     LW_TEXT("Power divided by that of an isentropic expansion of the mean flow; pulses can raise "
             "it.")},
    {"exhaust_plenum_pressure_bar", "p_x", "∮(p, θ)/360", "p=channel:exhaust_plenum_pressure_bar θ",
     meanOverTurn, sampledAtCorners},
    {"exhaust_plenum_temperature_K", "T_x", "∮(T, θ)/360",
     "T=channel:exhaust_plenum_temperature_K θ", meanOverTurn, sampledAtCorners},
};

/// The compressor wheel as it runs.
struct Running {
    gas::Supply supply;
    const gas::CompressorFigures& figures;
    const gas::TurbineFigures* turbine; ///< null: none
    gas::TurningWheel wheel;
    bool isTurbo() const { return supply.hasTurbine(); }
    bool hasBlower() const { return supply.compressor.stages == gas::Stages::wheelThenBlower; }
};

constexpr InnerCondition<Running> arrangements[] = {
    {"wheel_alone", [](const Running& run) { return !run.hasBlower(); },
     LW_TEXT("a compressor wheel without a blower behind it")},
    {"blower_behind", [](const Running& run) { return run.hasBlower(); },
     LW_TEXT("a blower behind the compressor wheel")},
    {"geared_alone", [](const Running& run) { return !run.isTurbo() && !run.hasBlower(); },
     LW_TEXT("a geared wheel alone")},
    {"geared_with_blower", [](const Running& run) { return !run.isTurbo() && run.hasBlower(); },
     LW_TEXT("a geared wheel with a blower behind it")},
    {"turbine_with_blower", [](const Running& run) { return run.isTurbo() && run.hasBlower(); },
     LW_TEXT("a turbocharger with a blower behind it")},
    {"turbine_alone", [](const Running& run) { return run.isTurbo() && !run.hasBlower(); },
     LW_TEXT("a turbocharger alone")},
    {"turbine_drives", [](const Running& run) { return run.isTurbo(); },
     LW_TEXT("a wheel that the exhaust drives")},
    {"wheel_in_balance",
     [](const Running& run) { return run.turbine != nullptr && run.turbine->sustained; },
     LW_TEXT("a wheel that the exhaust keeps turning")}};

double heatExponent(const Running& run) {
    const double gamma = gas::dryAir().heatRatio(run.supply.ambientTemperature);
    return gamma / (gamma - 1.0);
}

constexpr InnerNumber<Running> ofWheel[] = {
    {"intake_pressure", LW_TEXT("Pressure before the compressor wheel"), "bar",
     [](const Running& run) { return gas::intakePressure(run.supply) / units::bar; },
     LW_TEXT("ambient, less what a throttle takes at part load")},
    {"reference_temperature", LW_TEXT("Reference temperature of the wheel"), "K",
     [](const Running& run) { return run.supply.compressor.wheel.referenceTemperature; },
     LW_TEXT("of its table; 298.15 K unless given")},
    {"reference_pressure", LW_TEXT("Reference pressure of the wheel"), "bar",
     [](const Running& run) { return run.supply.compressor.wheel.referencePressure / units::bar; },
     LW_TEXT("of its table; 1 bar unless given")},
    {"surge_flow", LW_TEXT("Flow coefficient at which the wheel surges"), "",
     [](const Running& run) { return run.figures.surgeFlow; },
     LW_TEXT("of the wheel at this speed")},
    {"head_coefficient", LW_TEXT("Head coefficient of the wheel"), "",
     [](const Running& run) { return run.wheel.headCoefficient(run.figures.flow); },
     LW_TEXT("ψ₀·(1 − ((φ − φ_p)/(φ_c − φ_p))²); left of φ_p nearly level")},
    {"measured_efficiency", LW_TEXT("Isentropic efficiency of the wheel"), "",
     [](const Running& run) { return run.wheel.efficiency(run.figures.flow); },
     LW_TEXT("of the table at this speed and flow")},
    {"wheel_work", LW_TEXT("Work of the wheel on the air"), "kJ/kg",
     [](const Running& run) { return run.wheel.compression(run.figures.flow).work / 1e3; },
     LW_TEXT("h(T₂) − h(T₁) with T₂ = T₁ + ψ·u²/(c_p·η)")},
    {"heat_of_air", LW_TEXT("Heat of air at constant pressure"), "J/(kg·K)",
     [](const Running& run) { return gas::dryAir().heat(run.supply.ambientTemperature); },
     LW_TEXT("in the ambient state")},
    {"exponent_of_air", LW_TEXT("γ/(γ − 1) of air"), "", heatExponent,
     LW_TEXT("in the ambient state")}};

constexpr InnerNumber<Running> ofTurbine[] = {
    {"wheel_state", LW_TEXT("A power balance of the wheel was found"), "",
     [](const Running& run) { return run.turbine->sustained ? 1.0 : 0.0; },
     LW_TEXT("1 yes, 0 no; found by the search")},
    {"balanced_speed", LW_TEXT("Speed of the wheel"), "1/min",
     [](const Running& run) { return run.figures.wheelSpeed / units::revPerMinute; },
     LW_TEXT("searched by the solver; it idles where the exhaust is too weak")},
    {"turbine_power", LW_TEXT("Power of the turbine"), "kW",
     [](const Running& run) { return run.turbine->power / units::kilowatt; },
     LW_TEXT("integrated by the solver")},
    {"nozzle_flow", LW_TEXT("Flow through the turbine"), "kg/h",
     [](const Running& run) { return run.turbine->flow * 3600.0; },
     LW_TEXT("integrated by the solver")},
    {"spouting_velocity", LW_TEXT("Spouting velocity"), "m/s",
     [](const Running& run) {
         return 0.5 * run.supply.compressor.turbine.diameter * run.figures.wheelSpeed /
                run.turbine->speedRatio;
     },
     LW_TEXT("√(2·c_p·T·(1 − (p_e/p_x)^((γ−1)/γ))) of the mean exhaust gas")}};

} // namespace

std::span<const Recipe> supplyRecipes() {
    return supplyRows;
}

std::optional<Operand> supplyValue(const Solution& solution, std::string_view name) {
    if (!solution.gas || !solution.gas->compressor) {
        return std::nullopt;
    }
    const gas::Supply supply = design::gasSettings(solution.design).supply;
    const gas::CompressorFigures& figures = *solution.gas->compressor;
    const auto& turbine = solution.gas->turbine;
    const Running run{supply, figures, turbine ? &*turbine : nullptr,
                      gas::TurningWheel(supply.compressor.wheel, gas::dryAir(),
                                        gas::intakePressure(supply), supply.ambientTemperature,
                                        figures.wheelSpeed)};
    if (auto found = rowOperand(arrangements, run, name)) {
        return found;
    }
    if (auto found = rowOperand(ofWheel, run, name)) {
        return found;
    }
    const bool isStill = name == "spouting_velocity" && turbine && turbine->speedRatio <= 0.0;
    return turbine && !isStill ? rowOperand(ofTurbine, run, name) : std::nullopt;
}

} // namespace lobewright::solution
