#include "core/solution/working_recipes.h"

#include <fmt/format.h>

#include <charconv>

namespace lobewright::solution {

namespace {

constexpr double sampled = 1e-3;
constexpr double rootMeanSquare = 1e-2; ///< accelerations may jump between samples
constexpr const char* leastSquares =
    "Least squares of the axial force of one cylinder over a turn.";

constexpr Recipe recipes[] = {
    {"shaking_force_peak_N", "F_max", "max(abs(F))", "F=channel:shaking_force_N",
     "Largest over the turn.", sampled, 1e-6},
    {"rocking_moment_peak_Nm", "M_max", "√(max(M_x² + M_y²))",
     "M_x=channel:rocking_moment_x_Nm M_y=channel:rocking_moment_y_Nm",
     "Largest magnitude over the turn.", sampled, 1e-6},
    {"piston_inertia_force_peak_N", "F_m", "max(abs(F_i), abs(F_e))",
     "F_i=channel:inertia_force_inlet_N F_e=channel:inertia_force_exhaust_N",
     "Largest over the turn, either piston.", sampled},
    {"coefficient_of_fluctuation", "C_s", "E/(J·(2·π·n/60)²)",
     "E=figure:energy_fluctuation_J J=field:/running/inertia_kg_m2 n=field:/running/speed_rpm",
     "Energy stored and given back over twice the energy of rotation (Norton, Design of "
     "Machinery, flywheels)."},
    {"shaking_residual", "r", "√(∮((m_e·a_e − m_i·a_i)², θ)/∮((m_i·a_i)², θ))",
     "m_e=field:/mechanism/piston_mass_kg/exhaust a_e=channel:acceleration_exhaust_m_per_s2 "
     "m_i=field:/mechanism/piston_mass_kg/inlet a_i=channel:acceleration_inlet_m_per_s2 "
     "θ=channel:shaft_angle_deg",
     "Root mean square of the axial force over that of the inlet piston alone.", rootMeanSquare,
     1e-3},
    {"best_exhaust_mass_kg", "m", "m_i·∮(a_i·a_e, θ)/∮(a_e², θ)",
     "m_i=field:/mechanism/piston_mass_kg/inlet a_i=channel:acceleration_inlet_m_per_s2 "
     "a_e=channel:acceleration_exhaust_m_per_s2 θ=channel:shaft_angle_deg",
     leastSquares, rootMeanSquare},
    {"best_exhaust_mass_residual", "r", "√(∮((m·a_e − m_i·a_i)², θ)/∮((m_i·a_i)², θ))",
     "m=figure:best_exhaust_mass_kg a_e=channel:acceleration_exhaust_m_per_s2 "
     "m_i=field:/mechanism/piston_mass_kg/inlet a_i=channel:acceleration_inlet_m_per_s2 "
     "θ=channel:shaft_angle_deg",
     leastSquares, rootMeanSquare, 1e-3}};

/// The channel whose orders these figures are.
const char* channelOf(std::string_view key) {
    return key == "shaking_force"      ? "shaking_force_N"
           : key == "rocking_moment_x" ? "rocking_moment_x_Nm"
           : key == "rocking_moment_y" ? "rocking_moment_y_Nm"
           : key == "torque"           ? "torque_total_Nm"
                                       : nullptr;
}

Operand named(Operand operand, std::string symbol) {
    operand.symbol = std::move(symbol);
    return operand;
}

} // namespace

std::span<const Recipe> balanceRecipes() {
    return recipes;
}

std::optional<Working> orderWorking(const Solution& solution, const Figure& figure) {
    constexpr std::string_view mark = "_order_";
    const std::size_t at = figure.name.find(mark);
    if (at == std::string::npos) {
        return std::nullopt;
    }
    const char* channel = channelOf(std::string_view(figure.name).substr(0, at));
    int order = 0;
    std::from_chars(figure.name.data() + at + mark.size(), figure.name.data() + figure.name.size(),
                    order);
    const auto values = channel != nullptr ? channelOperand(solution, channel) : std::nullopt;
    const auto angles = channelOperand(solution, "shaft_angle_deg");
    if (!values || !angles) {
        return std::nullopt;
    }
    // A column of half degrees tells an order to a share of the whole swing, not of itself.
    const double swing = values->values.maxCoeff() - values->values.minCoeff();
    Working working{.figure = figure.name,
                    .symbol = fmt::format("F{}", order),
                    .operands = {named(*values, "F"), named(*angles, "θ")},
                    .unit = figure.unit,
                    .value = *figure.value,
                    .source = "Fourier sum over the turn, in shaft orders.",
                    .tolerance = sampled,
                    .absolute = 2e-4 * swing};
    working.formula = order == 0
                          ? "abs(∮(F, θ))/360"
                          : fmt::format("√(∮(F·cos({0}·θ), θ)² + ∮(F·sin({0}·θ), θ)²)/180", order);
    return working;
}

} // namespace lobewright::solution
