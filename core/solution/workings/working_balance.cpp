#include "core/solution/pipeline/stages.h"
#include "core/solution/workings/working_recipes.h"
#include "core/units.h"

#include <fmt/format.h>

#include <charconv>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::solution {

namespace {

constexpr double rootMeanSquare = 1e-2; ///< accelerations may jump between samples
constexpr TextId leastSquares =
    LW_TEXT("Least squares of the axial force of one cylinder over the revolution.");

constexpr TextId inertiaSource =
    LW_TEXT("Energy fluctuation divided by the coefficient of fluctuation and the square of the "
            "speed (Norton, Design of Machinery, flywheels).");

constexpr Recipe balanceRows[] = {
    {"shaking_force_peak_N", "F_max", "max(abs(F))", "F=channel:shaking_force_N",
     LW_TEXT("Maximum over the revolution."), sampled, 1e-6},
    {"rocking_moment_peak_Nm", "M_max", "√(max(M_x² + M_y²))",
     "M_x=channel:rocking_moment_x_Nm M_y=channel:rocking_moment_y_Nm",
     LW_TEXT("Largest magnitude over the revolution."), sampled, 1e-6},
    {"piston_inertia_force_peak_N", "F_m", "max(abs(F_i), abs(F_e))",
     "F_i=channel:inertia_force_inlet_N F_e=channel:inertia_force_exhaust_N",
     LW_TEXT("Maximum over the revolution, either piston."), sampled},
    {"piston_inertia_force_peak_N", "F_m", "max(abs(F))", "F=channel:inertia_force_inlet_N",
     LW_TEXT("Maximum over the revolution."), sampled},
    {"coefficient_of_fluctuation", "C_s", "E/(J·(2·π·n/60)²)",
     "E=figure:energy_fluctuation_J J=field:/running/inertia_kg_m2 n",
     LW_TEXT("Energy fluctuation divided by twice the kinetic energy of rotation (Norton, Design "
             "of Machinery, flywheels).")},
    {"shaking_residual", "r", "√(∮((m_e·a_e − m_i·a_i)², θ)/∮((m_i·a_i)², θ))",
     "m_e=field:/mechanism/piston_mass_kg/exhaust a_e=channel:acceleration_exhaust_m_per_s2 "
     "m_i=field:/mechanism/piston_mass_kg/inlet a_i=channel:acceleration_inlet_m_per_s2 θ",
     LW_TEXT("Root mean square of the axial force divided by that of the inlet piston alone."),
     rootMeanSquare, 1e-3},
    {"best_exhaust_mass_kg", "m", "m_i·max(0, ∮(a_i·a_e, θ))/∮(a_e², θ)",
     "m_i=field:/mechanism/piston_mass_kg/inlet a_i=channel:acceleration_inlet_m_per_s2 "
     "a_e=channel:acceleration_exhaust_m_per_s2 θ",
     leastSquares, rootMeanSquare},
    {"best_exhaust_mass_residual", "r", "√(∮((m·a_e − m_i·a_i)², θ)/∮((m_i·a_i)², θ))",
     "m=figure:best_exhaust_mass_kg a_e=channel:acceleration_exhaust_m_per_s2 "
     "m_i=field:/mechanism/piston_mass_kg/inlet a_i=channel:acceleration_inlet_m_per_s2 θ",
     leastSquares, rootMeanSquare, 1e-3},
    {"best_exhaust_lead_deg", "δ", "δ_0 + max(−h, min(h, h/2·(K_m − K_p)/(K_m − 2·K_0 + K_p)))",
     "δ_0=value:lead_grid h=value:lead_step K_m=value:likeness_before K_0=value:likeness_at "
     "K_p=value:likeness_after",
     LW_TEXT("Vertex of the parabola through the correlation of both accelerations at three leads, "
             "no farther than the outer two: the closer to 1, the smaller the residual force."),
     1e-9, 1.0,
     LW_TEXT("The search compares 180 positions per pattern. Where accelerations jump, the lead is "
             "uncertain by up to half of that step."),
     9},
    {"best_exhaust_lead_residual", "r", "√(∮((m_e·a_b − m_i·a_i)², θ)/∮((m_i·a_i)², θ))",
     "m_e=field:/mechanism/piston_mass_kg/exhaust "
     "a_b=channel:acceleration_exhaust_best_lead_m_per_s2 "
     "m_i=field:/mechanism/piston_mass_kg/inlet a_i=channel:acceleration_inlet_m_per_s2 θ",
     LW_TEXT("Root mean square of the axial force divided by that of the inlet piston alone."),
     rootMeanSquare, 1e-3},
    {"both_residual", "r", "√(max(0, 1 − max(0, ∮(a_i·a_b, θ))²/(∮(a_i², θ)·∮(a_b², θ))))",
     "a_i=channel:acceleration_inlet_m_per_s2 a_b=channel:acceleration_exhaust_best_lead_m_per_s2 "
     "θ",
     LW_TEXT("Least squares: what the best mass leaves of the inlet piston's force."),
     rootMeanSquare, 1e-3},
    {"energy_fluctuation_J", "E", "π/180·(max(∫(T − T_m, θ)) − min(∫(T − T_m, θ)))",
     "T=channel:torque_total_Nm T_m=figure:mean_torque_Nm θ",
     LW_TEXT("Energy method: the load takes the mean torque; the difference accelerates and "
             "decelerates the shaft (Norton, Design of Machinery, flywheels)."),
     5.0 * sampled, 1e-6},
    {"inertia_for_1_percent_kg_m2", "J", "E/(0.01·(2·π·n/60)²)", "E=figure:energy_fluctuation_J n",
     inertiaSource},
    {"inertia_for_2_percent_kg_m2", "J", "E/(0.02·(2·π·n/60)²)", "E=figure:energy_fluctuation_J n",
     inertiaSource},
    {"inertia_for_5_percent_kg_m2", "J", "E/(0.05·(2·π·n/60)²)", "E=figure:energy_fluctuation_J n",
     inertiaSource}};

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

constexpr double leadStep = 0.2; ///< [shaft °]; small, as jumps of acceleration make a sharp peak

/// How alike the accelerations of both pistons are with another total lead of the exhaust track
/// [rad]: 1 where they are proportional.
double likeness(const Solution& solution, double lead) {
    constexpr Eigen::Index count = 1440;
    const auto& mechanism = solution.pair.mechanism();
    const double further = lead - mechanism.exhaustLead - mechanism.adjuster.setting;
    const Samples theta =
        Samples::LinSpaced(count, 0.0, units::turn * static_cast<double>(count - 1) / count);
    const Samples inlet = solution.pair.lift(End::inlet, theta).y2;
    const Samples exhaust = solution.pair.lift(End::exhaust, theta + further).y2;
    return (inlet * exhaust).sum() / std::sqrt(inlet.square().sum() * exhaust.square().sum());
}

} // namespace

std::optional<Operand> balanceValue(const Solution& solution, std::string_view name) {
    if (!solution.stages->balance) {
        return std::nullopt;
    }
    const double grid = leadStep * std::round(solution.stages->balance->remedy.exhaustLead /
                                              units::degree / leadStep);
    if (name == "lead_grid") {
        return inner(LW_TEXT("Exhaust lead at the middle place"), "shaft °", grid,
                     LW_TEXT("a multiple of 0.2°"));
    }
    if (name == "lead_step") {
        return inner(LW_TEXT("Distance of the leads"), "shaft °", leadStep, "chosen");
    }
    if (!name.starts_with("likeness_")) {
        return std::nullopt;
    }
    const double lead = grid + (name == "likeness_before"  ? -leadStep
                                : name == "likeness_after" ? leadStep
                                                           : 0.0);
    return inner(LW_TEXT("Correlation of both accelerations"), "",
                 likeness(solution, lead * units::degree),
                 Message(LW_TEXT("correlation over the revolution, exhaust lead %1"),
                         withDecimals(toSi(in::degrees, lead), in::degrees, 1)));
}

std::span<const Recipe> balanceRecipes() {
    return balanceRows;
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
                    .unit = figure.symbolOfUnit(),
                    .value = *figure.value,
                    .source = LW_TEXT("Fourier sum over the revolution, in shaft orders."),
                    .tolerance = sampled,
                    .absolute = 2e-4 * swing};
    working.formula = order == 0
                          ? "abs(∮(F, θ))/360"
                          : fmt::format("√(∮(F·cos({0}·θ), θ)² + ∮(F·sin({0}·θ), θ)²)/180", order);
    return working;
}

} // namespace lobewright::solution
