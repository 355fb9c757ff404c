#include "core/design/gas_settings.h"
#include "core/gas/models/fuel.h"
#include "core/gas/properties/properties.h"
#include "core/solution/pipeline/stages.h"
#include "core/solution/workings/working_recipes.h"
#include "core/units.h"

#include <fmt/format.h>

#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::solution {

namespace {

constexpr double steady = 1e-6; ///< from one cycle to the next, as the search for them ends
constexpr TextId meanPressure = LW_TEXT("Heywood, Internal Combustion Engine Fundamentals, § 2.7, "
                                        "with c cycles per revolution; 1 bar·cm³ is 0.1 J.");
constexpr TextId exchange = LW_TEXT("Heywood, § 6.6, ratios to ambient density × swept volume.");
constexpr TextId lossTorque =
    LW_TEXT("2·π·torque divided by the volume swept per revolution; 1 N·m/cm³ is 10 bar.");

constexpr Recipe performanceRows[] = {
    {"brake_torque_Nm", "T", "0.1·p_e·c·V_d/(2·π)", "p_e=figure:bmep_bar c V_d", meanPressure},
    {"brake_power_kW", "P", "T·2·π·n/60000", "T=figure:brake_torque_Nm n",
     LW_TEXT("Power is torque times speed.")},
    {"indicated_power_kW", "P_i", "p_i·c·V_d·n/600000", "p_i=figure:imep_bar c V_d n",
     meanPressure},
    {"imep_bar", "p_i", "∮(p, V)/(c·V_s)",
     "p=channel:pressure_bar V=channel:chamber_volume_cm3 c V_s alike",
     LW_TEXT("Heywood, § 2.7: work per cycle divided by the swept volume, gas exchange included."),
     sampled, 0.0,
     LW_TEXT("The solver integrates the work itself; the columns reproduce it to the accuracy of "
             "their step.")},
    {"bmep_bar", "p_e", "p_i − p_f", "p_i=figure:imep_bar p_f=figure:fmep_bar",
     LW_TEXT("Heywood, § 13.1."), 1e-9, 1e-9},
    {"fmep_bar", "p_f", "r + g + w + s + b + l + x",
     "r=figure:fmep_ring_bar g=figure:fmep_guide_bar w=figure:fmep_roller_bar "
     "s=figure:fmep_slip_bar b=figure:fmep_shaft_bearing_bar l=figure:fmep_supply_bar "
     "x=figure:fmep_auxiliary_bar",
     LW_TEXT("Sum of the losses.")},
    {"fmep_{loss}_bar", "p", "20·π·M/(c·V_d)", "M=value:loss_{loss} c V_d", lossTorque},
    {"fmep_supply_bar", "p", "600000·k·P_s/(n·c·V_d)",
     "k=figure:supply_power_counted P_s=figure:supply_power_kW n c V_d",
     LW_TEXT("Power divided by the volume swept per second.")},
    {"fmep_auxiliary_bar", "p", "600000·P_a/(n·c·V_d)",
     "P_a=field:/friction/auxiliary_power_kW n c V_d",
     LW_TEXT("Power divided by the volume swept per second.")},
    {"indicated_efficiency", "η_i", "W·(1 − l)/Q",
     "W=figure:indicated_work_J Q l=figure:fuel_lost_share",
     LW_TEXT("Work divided by the lower heating value of the fuel supplied, lost fuel included.")},
    {"indicated_efficiency", "η_i", "W/Q", "W=figure:indicated_work_J Q",
     LW_TEXT("Heywood, § 2.8: work divided by the lower heating value of the fuel.")},
    {"brake_efficiency", "η_e", "60000·P·(1 − l)/(Q·z·c·n)",
     "P=figure:brake_power_kW Q l=figure:fuel_lost_share z c n",
     LW_TEXT("Work divided by the lower heating value of the fuel supplied, lost fuel included.")},
    {"brake_efficiency", "η_e", "60000·P/(Q·z·c·n)", "P=figure:brake_power_kW Q z c n",
     LW_TEXT("Heywood, § 2.8.")},
    {"fuel_flow_kg_per_h", "B", "60·z·c·n·Q/(1000000·H·(1 − l))",
     "z c n Q H=value:lower_heating_value l=figure:fuel_lost_share",
     LW_TEXT("Heat per cycle divided by the lower heating value, lost fuel included, times the "
             "cycles per hour.")},
    {"fuel_flow_kg_per_h", "B", "60·z·c·n·Q/(1000000·H)", "z c n Q H=value:lower_heating_value",
     LW_TEXT("Heat per cycle divided by the lower heating value, times the cycles per hour.")},
    {"brake_specific_fuel_g_per_kWh", "b_e", "1000·B/P",
     "B=figure:fuel_flow_kg_per_h P=figure:brake_power_kW", LW_TEXT("Heywood, § 2.8.")},
    {"delivery_ratio", "DR", "B·R·T_a/(6·z·c·n·p_a·V_s)",
     "B R=value:gas_constant_air T_a z c n p_a=field:/gas/supply/ambient_pressure_bar V_s",
     exchange},
    {"scavenge_ratio", "SR", "1000000·B/(60·z·c·n·m)", "B z c n m=figure:trapped_mass_mg one",
     exchange, steady},
    {"trapping_efficiency", "η_t", "η_ch/DR",
     "η_ch=figure:charging_efficiency DR=figure:delivery_ratio one", exchange, steady},
    {"trapping_efficiency", "η_t", "0·DR", "DR=figure:delivery_ratio one",
     LW_TEXT("Nothing is delivered, so nothing is trapped.")},
    {"scavenging_efficiency", "η_s", "m_r/m", "m_r=value:fresh_mass m=figure:trapped_mass_mg one",
     exchange, steady},
    {"charging_efficiency", "η_ch", "m_r·R·T_a/(100000·p_a·V_s)",
     "m_r=value:fresh_mass R=value:gas_constant_air T_a p_a=field:/gas/supply/ambient_pressure_bar "
     "V_s one",
     exchange, steady},
    {"purity", "Y", "m_a/(m_a + m_p)", "m_a=value:air_at_closing m_p=value:products_at_closing one",
     LW_TEXT("Definition: mass of air divided by the mass of all gas in the chamber at the last "
             "port closing."),
     1e-5},
    {"trapped_mass_mg", "m", "m_a + m_p",
     "m_a=value:air_at_closing m_p=value:products_at_closing one",
     LW_TEXT("All gas in the chamber at the last port closing."), 1e-5},
    {"trapped_pressure_bar", "p", "p_c", "p_c=value:pressure_at_closing one",
     LW_TEXT("Read where the last port closes."), 1e-5},
    {"trapped_temperature_K", "T", "T_c", "T_c=value:temperature_at_closing one",
     LW_TEXT("Read where the last port closes."), 1e-5},
    {"air_flow_kg_per_h", "B", "60·z·c·n·m_d/1000000", "z c n m_d=value:delivered_mass",
     LW_TEXT("Mass through the inlet ports per cycle, times the cycles per hour.")},
    {"peak_pressure_bar", "p_max", "max(p)", "p=channel:pressure_bar alike",
     LW_TEXT("Maximum over the revolution."), sampled, 0.0,
     LW_TEXT("The solver also evaluates between the samples.")},
    {"peak_temperature_K", "T_max", "max(T)", "T=channel:temperature_K alike",
     LW_TEXT("Maximum over the revolution."), sampled, 0.0,
     LW_TEXT("No dissociation: high by 100 to 250 K near λ = 1 (Heywood, ch. 4).")},
    {"burn_start_cycle_deg", "χ_b", "χ_0", "χ_0=field:/gas/burn/start_deg",
     LW_TEXT("Given in the design.")},
    {"supply_pressure_bar", "p", "p_s", "p_s=field:/gas/supply/pressure_bar",
     LW_TEXT("Given in the design.")},
    {"supply_temperature_K", "T", "T_s", "T_s=field:/gas/supply/temperature_K",
     LW_TEXT("Given in the design.")},
    {"supply_power_kW", "P_s", "B·Δh/3600", "B Δh=value:compression_heat",
     LW_TEXT("Mass flow times the enthalpy rise to the supply pressure.")},
    {"fuel_heat_J", "Q", "m·Y·H/(λ·L)",
     "m=figure:trapped_mass_mg Y=figure:purity H=value:lower_heating_value λ=field:/gas/lambda "
     "L=value:air_fuel_ratio one=value:single_fired_cycle injected=value:injected_fuel",
     LW_TEXT(
         "The fuel is the air divided by λ and by the stoichiometric ratio; 1 mg·MJ/kg is 1 J.")},
    {"indicated_work_J", "W", "0.1·p_i·V_s", "p_i=figure:imep_bar V_s", meanPressure},
    {"unburnt_heat_J", "Q_u", "Q·(1 − η·min(1, λ)·(1 − exp(−a)))",
     "Q η=field:/gas/combustion_efficiency λ=field:/gas/lambda a=field:/gas/burn/wiebe_a",
     LW_TEXT("Combustion efficiency, the oxygen there is, and the rest of the Wiebe function."),
     steady, 1e-9},
    {"audit_residual", "r", "(Q + H_s − W − Q_w − H_e − Q_u)/Q",
     "Q H_s=figure:supply_enthalpy_J W=figure:indicated_work_J Q_w=figure:wall_heat_J "
     "H_e=figure:exhaust_enthalpy_J Q_u=figure:unburnt_heat_J fired=value:fired",
     LW_TEXT("First law over one cycle."), 1e-9, 1e-12, "", 15}};

double meanOf(const gas::CycleSolution& gas, double gas::CycleFigures::*member) {
    double sum = 0.0;
    double count = 0.0;
    const auto add = [&](const std::vector<gas::CycleFigures>& cycles) {
        for (const auto& cycle : cycles) {
            sum += cycle.*member;
            count += 1.0;
        }
    };
    if (gas.cylinders.empty()) {
        add(gas.cycles);
    }
    for (const auto& cylinder : gas.cylinders) {
        add(cylinder);
    }
    return sum / count;
}

bool hasOneCycle(const Solution& solution) {
    return solution.gas->cylinders.empty() && solution.gas->cycles.size() == 1;
}

bool isFired(const Solution& solution) {
    return !solution.design.running.motored;
}

constexpr InnerCondition<Solution> conditions[] = {
    {"cylinders_alike", [](const Solution& solution) { return solution.gas->cylinders.empty(); },
     LW_TEXT("identical operation of all cylinders")},
    {"single_cycle", hasOneCycle, LW_TEXT("equal cycles in all cylinders")},
    {"single_fired_cycle",
     [](const Solution& solution) { return isFired(solution) && hasOneCycle(solution); },
     LW_TEXT("equal fired cycles")},
    {"fired", isFired, LW_TEXT("a fired engine")}};

/// What the cycles of the solver hold.
constexpr InnerNumber<gas::CycleSolution> ofCycles[] = {
    {"delivered_mass", LW_TEXT("Fresh gas through the inlet ports per cycle"), "mg",
     [](const gas::CycleSolution& gas) {
         return meanOf(gas, &gas::CycleFigures::deliveredMass) / units::milligram;
     },
     LW_TEXT("flow integrated by the solver, what flowed back deducted")},
    {"fresh_mass", LW_TEXT("Fresh gas kept at the last port closing"), "mg",
     [](const gas::CycleSolution& gas) {
         const auto& cycle = gas.cycles.front();
         return cycle.scavengingEfficiency * cycle.trappedMass / units::milligram;
     },
     LW_TEXT("a tracer that enters with the supply and leaves with the outflow")}};

std::optional<Operand> lossValue(const Solution& solution, std::string_view part) {
    const auto& loads = solution.stages->loads;
    if (!loads) {
        return std::nullopt;
    }
    const auto& losses = loads->losses;
    const double torque = part == "ring"     ? losses.ring
                          : part == "guide"  ? losses.guide
                          : part == "roller" ? losses.roller
                          : part == "slip"   ? losses.slip
                                             : losses.shaftBearing;
    return inner(
        LW_TEXT("Mean torque lost, all cylinders"), "N·m", torque,
        LW_TEXT(
            "friction force times lever arm over the revolution, by quadrature between events"));
}

/// Rise of enthalpy that the compressor of a reservoir gives the air [kJ/kg].
std::optional<Operand> compressionHeat(const Solution& solution) {
    const auto supply = design::gasSettings(solution.design).supply;
    if (supply.kind != gas::SupplyKind::reservoir || supply.pressure <= supply.ambientPressure) {
        return std::nullopt;
    }
    const auto& air = gas::dryAir();
    const double gamma = air.heatRatio(supply.ambientTemperature);
    const double rise =
        std::pow(supply.pressure / supply.ambientPressure, (gamma - 1.0) / gamma) - 1.0;
    const double after = supply.ambientTemperature * (1.0 + rise / supply.isentropicEfficiency);
    return inner(LW_TEXT("Enthalpy rise in the compressor"), "kJ/kg",
                 (air.enthalpy(after) - air.enthalpy(supply.ambientTemperature)) / 1e3,
                 Message(LW_TEXT("h(%1) − h(%2) of air; outlet from the pressure ratio, γ = %3 and "
                                 "the isentropic efficiency"),
                         withDecimals(after, in::kelvin, 1),
                         withDecimals(supply.ambientTemperature, in::kelvin, 1),
                         withDecimals(gamma, in::pure, 4)));
}

std::optional<Operand> atClosing(const Solution& solution, const char* channel) {
    return readingOperand(solution, channel, solution.timing.cycles().front().lastClosing());
}

} // namespace

std::span<const Recipe> performanceRecipes() {
    return performanceRows;
}

std::optional<Operand> gasValue(const Solution& solution, std::string_view name) {
    if (name.starts_with("loss_")) {
        return lossValue(solution, name.substr(5));
    }
    if (!solution.gas) {
        return std::nullopt;
    }
    const auto& fuel = gas::fuelData(solution.design.gas.fuel);
    if (name == "lower_heating_value") {
        return constant(LW_TEXT("Lower heating value of the fuel"), "MJ/kg",
                        fuel.lowerHeatingValue / 1e6, fuel.source);
    }
    if (name == "air_fuel_ratio") {
        return constant(LW_TEXT("Stoichiometric air–fuel ratio"), "",
                        gas::stoichiometricAirFuelRatio(fuel),
                        LW_TEXT("from the composition of fuel and dry air"));
    }
    if (name == "gas_constant_air") {
        return constant(LW_TEXT("Gas constant of dry air"), "J/(kg·K)", gas::dryAir().gasConstant(),
                        LW_TEXT("8.314462618 J/(mol·K) over the molar mass of air"));
    }
    if (name == "compression_heat") {
        return compressionHeat(solution);
    }
    if (name.ends_with("_at_closing")) {
        return atClosing(solution, name.starts_with("air")        ? "air_mass_mg"
                                   : name.starts_with("products") ? "products_mass_mg"
                                   : name.starts_with("pressure") ? "pressure_bar"
                                                                  : "temperature_K");
    }
    if (auto found = rowOperand(ofCycles, *solution.gas, name)) {
        return found;
    }
    return rowOperand(conditions, solution, name);
}

} // namespace lobewright::solution
