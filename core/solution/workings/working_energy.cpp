#include "core/design/gas_settings.h"
#include "core/gas/cycle/cycle.h"
#include "core/gas/cycle/pair_chamber.h"
#include "core/gas/cycle/phases.h"
#include "core/gas/cycle/pump_space.h"
#include "core/gas/models/fuel.h"
#include "core/gas/models/supply.h"
#include "core/gas/models/wiebe.h"
#include "core/solution/pipeline/stages.h"
#include "core/solution/workings/working_recipes.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::solution {

namespace {

constexpr TextId enthalpyFlow =
    LW_TEXT("Mass flow times its enthalpy, integrated over the revolution; 1 g/s·kJ/kg is 1 W, and "
            "the shaft turns 6·n degrees per second.");
constexpr TextId firstLaw = LW_TEXT("First law for the contents of the chamber over one cycle.");
constexpr TextId counted = LW_TEXT("Counted by the solver.");
constexpr const char* workAtShaft =
    "W=figure:shaft_work_J W_g=figure:gas_work_J W_f=figure:friction_work_J W_m=value:work_moved";
constexpr TextId workSource =
    LW_TEXT("Work per revolution: gas work less friction work must equal shaft work.");
constexpr int allDigits = 15; ///< of sums that nearly cancel

constexpr Recipe energyRows[] = {
    {"wall_heat_J", "Q_w",
     "∮(h·(π/4·D²·(2·T − T_i − T_e) + 4000·(V − V_r)/D·(T − T_l)), θ)/(6000000·n·c)",
     "h=channel:wall_coefficient_W_per_m2K D T=channel:temperature_K "
     "T_i=field:/gas/wall_heat/crown_K T_e=value:exhaust_crown V=channel:chamber_volume_cm3 "
     "V_r=field:/mechanism/recess_cm3 T_l=field:/gas/wall_heat/liner_K θ n c alike",
     LW_TEXT("Newton's law of cooling for two crowns and the liner between them; coefficient of "
             "Woschni "
             "1967 or Hohenberg 1979 (Heywood, § 12.4)."),
     sampledAtCorners, 1e-9,
     LW_TEXT("The coefficient is a column; the shaft turns 6·n degrees per second.")},
    {"wall_heat_J", "Q_w", "∮(h, θ)",
     "h=channel:wall_coefficient_W_per_m2K θ none=value:no_wall_heat",
     LW_TEXT("The walls of the design are adiabatic."), sampledAtCorners, 1e-9},
    {"exhaust_enthalpy_J", "H_e", "∮(m·h, θ)/(6·n·c)",
     "m=channel:exhaust_flow_g_per_s h=channel:exhaust_enthalpy_kJ_per_kg θ n c alike",
     enthalpyFlow, sampledAtCorners, 0.02},
    {"supply_enthalpy_J", "H_s", "m·∮(f·h, θ)/(1000·∮(f, θ))",
     "m=value:delivered_mass f=channel:fresh_flow_g_per_s h=channel:supply_enthalpy_kJ_per_kg θ "
     "alike none=value:no_pump",
     LW_TEXT("Fresh gas per cycle times its mean enthalpy; 1 mg·kJ/kg is 1 mJ."), sampledAtCorners,
     1e-4,
     LW_TEXT("Gas pushed back into the inlet returns with its enthalpy and cancels from the sum.")},
    {"supply_enthalpy_J", "H_s", "∮(m·h, θ)/(6·n·c)",
     "m=channel:inlet_flow_g_per_s h=channel:inlet_enthalpy_kJ_per_kg θ n c alike", enthalpyFlow,
     sampledAtCorners, 0.02},
    {"fuel_heat_J", "Q", "m_f·H", "m_f=value:fuel_mass H=value:lower_heating_value",
     LW_TEXT("Fuel per cycle times its lower heating value; 1 mg·MJ/kg is 1 J.")},
    {"audit_residual", "r", "(Q + H_s − W − Q_w − H_e − Q_u)/(abs(W) + abs(Q_w) + abs(H_e))",
     "Q H_s=figure:supply_enthalpy_J W=figure:indicated_work_J Q_w=figure:wall_heat_J "
     "H_e=figure:exhaust_enthalpy_J Q_u=figure:unburnt_heat_J",
     firstLaw, 1e-9, 1e-12,
     LW_TEXT("No fuel burns: the residual is a share of the heat and work exchanged."), allDigits},
    {"knock_integral", "I", "∫((p/1.01325)^1.7/exp(3800/T), θ, a, b)/(6·n·0.01768·(O/100)^3.402)",
     "p=channel:pressure_bar T=channel:unburnt_temperature_K θ a=value:knock_from b=value:knock_to "
     "n O=value:octane_number alike",
     LW_TEXT("Livengood and Wu 1955 with the delay of Douaud and Eyzat 1978 (Heywood, eq. 9.59)."),
     2.0 * sampledAtCorners, 0.0, LW_TEXT("Of the cycle that comes closest to knock.")},
    {"burn_start_cycle_deg", "χ_b", "max(−60, min(20, χ_0 + h/2·(p_m − p_p)/(p_m − 2·p_0 + p_p)))",
     "χ_0=value:burn_grid h=value:burn_step p_m=value:burn_imep_before p_0=value:burn_imep_at "
     "p_p=value:burn_imep_after searched=value:burn_searched",
     LW_TEXT("Vertex of the parabola through the indicated mean effective pressures of three "
             "starts of combustion."),
     1e-9, 3.0,
     LW_TEXT("The solver searches between −60° and 20° of the cycle to 0.05°; three starts show "
             "the same "
             "to "
             "within their distance."),
     9},
    {"burn_start_cycle_deg", "χ_b", "wrap(c·(θ_b − θ_i))",
     "c θ_b=value:ignition_at θ_i=value:inner_dead_centre_at",
     LW_TEXT("Cycle degrees are c times shaft degrees, counted from inner dead centre."), 1e-9,
     1e-7,
     LW_TEXT(
         "Found by search; a neighbouring start of combustion gives no cycle to compare with.")},
    {"supply_pressure_bar", "p", "∮(p_s, θ)/360", "p_s=channel:supply_pressure_bar θ",
     LW_TEXT("Mean over the revolution."), sampledAtCorners},
    {"supply_temperature_K", "T", "∮(T_s, θ)/360", "T_s=channel:supply_temperature_K θ",
     LW_TEXT("Mean over the revolution."), sampledAtCorners},
    {"supply_power_kW", "P_s", "η·p_a·V·i·n/(600·R·T_a)·∮(Δh, θ)/360",
     "η=field:/gas/supply/volumetric_efficiency p_a=value:intake_pressure "
     "V=field:/gas/supply/displacement_cm3_per_turn i=field:/gas/supply/drive_ratio n "
     "R=value:gas_constant_air T_a Δh=channel:compression_work_kJ_per_kg θ",
     LW_TEXT("Mass flow of the blower times the mean specific work of compression."),
     sampledAtCorners, 1e-9},
    {"supply_power_kW", "P_s", "−W·z·c·n/60000", "W=figure:pump_work_J z c n",
     LW_TEXT(
         "Work per cycle that the pump takes from the backs of the pistons, times the cycles.")},
    {"pump_work_J", "W_u", "f·π/4·D²·∮(p·v, θ)/(60·n·c)",
     "f=field:/gas/supply/area_factor D p=channel:pump_pressure_bar "
     "v=channel:velocity_inlet_m_per_s θ n c one=value:inlet_pumps",
     LW_TEXT("∮p_u dV_u with dV_u = f·A·v dt; bar·mm²·m/s are 0.1 W."), sampledAtCorners, 1e-2},
    {"pump_work_J", "W_u", "f·π/4·D²·∮(p·(v_i + v_e), θ)/(60·n·c)",
     "f=field:/gas/supply/area_factor D p=channel:pump_pressure_bar "
     "v_i=channel:velocity_inlet_m_per_s v_e=channel:velocity_exhaust_m_per_s θ n c "
     "both=value:both_pump",
     LW_TEXT("∮p_u dV_u with dV_u = f·A·v dt; bar·mm²·m/s are 0.1 W."), sampledAtCorners, 1e-2},
    {"pump_pressure_low_bar", "p_l", "min(p)", "p=channel:pump_pressure_bar",
     LW_TEXT("Minimum over the revolution."), 2.0 * sampledAtCorners},
    {"pump_pressure_high_bar", "p_h", "max(p)", "p=channel:pump_pressure_bar",
     LW_TEXT("Maximum over the revolution."), 2.0 * sampledAtCorners},
    {"crankcase_compression_ratio", "ε_u", "V_max/V_min",
     "V_max=value:pump_largest V_min=value:pump_smallest",
     LW_TEXT("Definition: largest volume of the pump chamber divided by the smallest.")},
    {"fuel_lost_share", "l", "1 − m_f/m_s", "m_f=value:fuel_mass m_s=value:supplied_fuel_mass",
     LW_TEXT("Definition: share of the fuel supplied that does not remain in the chamber.")},
    {"supply_power_kW", "P_s", "B/3600·∮(Δh, θ)/360",
     "B Δh=channel:compression_work_kJ_per_kg θ none=value:no_pump",
     LW_TEXT("Mass flow times the specific work of compression; none below ambient pressure."),
     sampledAtCorners, 1e-9},
    {"supply_power_counted", "k", "1 − u", "u=field:/gas/supply/unpaid",
     LW_TEXT("The design says whether supply power is counted.")},
    {"supply_power_counted", "k", "1", "",
     LW_TEXT("The shaft drives the blower: its power is always deducted.")},
    {"mass_residual", "r", "abs(m_i − m_e − Δm)/m",
     "m_i=value:worst_inlet_mass m_e=value:worst_exhaust_mass Δm=value:worst_mass_change "
     "m=value:worst_trapped_mass premixed=value:premixed_fuel",
     LW_TEXT("Conservation of mass over a cycle; the fuel comes in with the air."), 1e-6, 1e-13,
     LW_TEXT("Of the cycle with the largest residual."), allDigits},
    {"mass_residual", "r", "abs(m_i − m_e + m_f − Δm)/m",
     "m_i=value:worst_inlet_mass m_e=value:worst_exhaust_mass m_f=value:worst_burnt_fuel "
     "Δm=value:worst_mass_change m=value:worst_trapped_mass injected=value:injected_fuel",
     LW_TEXT("Conservation of mass over a cycle."), 1e-6, 1e-13,
     LW_TEXT("Of the cycle with the largest residual."), allDigits},
    {"energy_residual", "r", "abs(Q_b − Q_w − W + H_s − H_e − ΔU)/Q",
     "Q_b=value:worst_heat_released Q_w=value:worst_wall_heat W=value:worst_work "
     "H_s=value:worst_supply_enthalpy H_e=value:worst_exhaust_enthalpy "
     "ΔU=value:worst_energy_change Q=value:worst_energy_reference",
     firstLaw, 1e-6, 1e-13, LW_TEXT("Of the cycle with the largest residual."), allDigits},
    {"work_residual", "r", "abs(W − (W_g − W_f))/W_m", workAtShaft, workSource, 1e-6, 1e-13, "",
     allDigits},
    {"work_balance_residual", "r", "abs(W − (W_g − W_f))/W_m", workAtShaft, workSource, 1e-6, 1e-13,
     "", allDigits},
    {"cycles", "N", "N_u + 1", "N_u=value:unsteady_periods", counted, 1e-9, 0.0,
     LW_TEXT(
         "The cycle that repeats its initial state is the solution, and the last one computed.")},
    {"steps", "S", "S_e + S_i", "S_e=value:explicit_steps S_i=value:implicit_steps", counted},
    {"evaluations", "E", "E_s + E_r", "E_s=value:step_evaluations E_r=value:restart_evaluations",
     counted}};

using Cycle = gas::CycleFigures;

/// The cycle, of any cylinder, with the largest of something.
template <class Quantity>
const Cycle& worst(const gas::CycleSolution& gas, Quantity&& quantity) {
    const Cycle* found = &gas.cycles.front();
    for (const auto& cylinder : gas.cylinders) {
        for (const Cycle& cycle : cylinder) {
            found = quantity(cycle) > quantity(*found) ? &cycle : found;
        }
    }
    for (const Cycle& cycle : gas.cycles) {
        found = quantity(cycle) > quantity(*found) ? &cycle : found;
    }
    return *found;
}

constexpr TextId integrated = LW_TEXT("integrated by the solver");
constexpr TextId endLessBeginning = LW_TEXT("end less beginning of the cycle");

constexpr InnerNumber<Cycle> ofMass[] = {
    {"worst_inlet_mass", LW_TEXT("In through the inlet ports, net"), "mg",
     [](const Cycle& cycle) { return cycle.inletMass / units::milligram; }, integrated},
    {"worst_exhaust_mass", LW_TEXT("Out through the exhaust ports, net"), "mg",
     [](const Cycle& cycle) { return cycle.exhaustMass / units::milligram; }, integrated},
    {"worst_burnt_fuel", LW_TEXT("Fuel burnt"), "mg",
     [](const Cycle& cycle) { return cycle.burntFuelMass / units::milligram; }, integrated},
    {"worst_mass_change", LW_TEXT("Change of the mass in the chamber"), "mg",
     [](const Cycle& cycle) { return cycle.massChange / units::milligram; }, endLessBeginning},
    {"worst_trapped_mass", LW_TEXT("Trapped mass"), "mg",
     [](const Cycle& cycle) { return cycle.trappedMass / units::milligram; },
     LW_TEXT("at the last port closing")}};

constexpr InnerNumber<Cycle> ofEnergy[] = {
    {"worst_heat_released", LW_TEXT("Heat released"), "J",
     [](const Cycle& cycle) { return cycle.heatReleased; }, integrated},
    {"worst_wall_heat", LW_TEXT("Heat to the walls"), "J",
     [](const Cycle& cycle) { return cycle.wallHeat; }, integrated},
    {"worst_work", LW_TEXT("Indicated work"), "J", [](const Cycle& cycle) { return cycle.work; },
     integrated},
    {"worst_supply_enthalpy", LW_TEXT("Enthalpy with the supply"), "J",
     [](const Cycle& cycle) { return cycle.supplyEnthalpy; }, integrated},
    {"worst_exhaust_enthalpy", LW_TEXT("Enthalpy with the exhaust"), "J",
     [](const Cycle& cycle) { return cycle.exhaustEnthalpy; }, integrated},
    {"worst_energy_change", LW_TEXT("Change of the internal energy"), "J",
     [](const Cycle& cycle) { return cycle.energyChange; }, endLessBeginning},
    {"worst_energy_reference", LW_TEXT("Reference energy"), "J",
     [](const Cycle& cycle) { return cycle.energyReference; },
     LW_TEXT("fuel heat; motored: pressure times volume at the last port closing")}};

std::optional<Operand> worstValue(const gas::CycleSolution& gas, std::string_view name) {
    const Cycle& byMass = worst(gas, [](const Cycle& cycle) { return cycle.massResidual; });
    if (auto found = rowOperand(ofMass, byMass, name)) {
        return found;
    }
    const Cycle& byEnergy = worst(gas, [](const Cycle& cycle) { return cycle.energyResidual; });
    return rowOperand(ofEnergy, byEnergy, name);
}

constexpr InnerNumber<gas::Effort> efforts[] = {
    {"explicit_steps", LW_TEXT("Steps of the explicit method"), "",
     [](const gas::Effort& effort) { return static_cast<double>(effort.explicitSteps); },
     LW_TEXT("Dormand and Prince, where the equations are not stiff")},
    {"implicit_steps", LW_TEXT("Steps of the implicit method"), "",
     [](const gas::Effort& effort) { return static_cast<double>(effort.implicitSteps); },
     LW_TEXT("Radau, where a port equalises pressures at once")},
    {"step_evaluations", LW_TEXT("Evaluations within steps"), "",
     [](const gas::Effort& effort) { return static_cast<double>(effort.stepEvaluations); },
     LW_TEXT("rejected steps included")},
    {"restart_evaluations", LW_TEXT("Evaluations at events"), "",
     [](const gas::Effort& effort) { return static_cast<double>(effort.restartEvaluations); },
     LW_TEXT("at port events, start and end of combustion, kinks of the motion and flow "
             "reversals")}};

std::optional<Operand> effortValue(const gas::Effort& effort, std::string_view name) {
    if (name == "unsteady_periods") {
        return inner(
            LW_TEXT("Cycles that did not repeat their state"), "",
            static_cast<double>(effort.unsteadyPeriods),
            Message(LW_TEXT("the last one changed it by %1 of its size; at most %2 is allowed"),
                    number(effort.lastChange, 2), number(effort.askedChange, 2)));
    }
    return rowOperand(efforts, effort, name);
}

/// Cycle and index in the period that comes nearest to knock.
std::optional<Operand> knockValue(const Solution& solution, std::string_view name) {
    const auto& cycles = solution.gas->cycles;
    const auto& events = solution.timing.cycles();
    std::size_t index = 0;
    for (std::size_t i = 0; i < cycles.size(); ++i) {
        index = cycles[i].knockIntegral.value_or(0.0) > cycles[index].knockIntegral.value_or(0.0)
                    ? i
                    : index;
    }
    if (!cycles[index].knockIntegral) {
        return std::nullopt;
    }
    if (name == "knock_from") {
        const double closing = index > 0 ? events[index - 1].lastClosing()
                                         : events.back().lastClosing() - solution.pair.period();
        return angleReading(LW_TEXT("Last port closing"), closing,
                            LW_TEXT("the integral counts from here"));
    }
    const auto& burn = solution.design.gas.burn;
    const double share = gas::wiebeProgress(0.9, burn.wiebeA, burn.wiebeM);
    const double end =
        events[index].centres.idc +
        (cycles[index].burnStart + share * burn.duration) / solution.pair.cyclesPerTurn();
    return angleReading(
        LW_TEXT("90 % burnt"), end,
        LW_TEXT("too little unburnt gas is left to knock beyond it; from the Wiebe function"));
}

std::optional<Operand> octane(const Solution& solution) {
    if (auto field = fieldOperand(solution, "/gas/octane_number")) {
        return field;
    }
    const auto& fuel = gas::fuelData(solution.design.gas.fuel);
    if (!fuel.octaneNumber) {
        return std::nullopt;
    }
    return constant(LW_TEXT("Octane number of the fuel"), "", *fuel.octaneNumber, fuel.source);
}

constexpr double burnStep = 3.0; ///< [cycle °]

/// What other burn starts would give; the one in the middle is the nearest whole degree.
std::optional<Operand> burnNeighbour(const Solution& solution, std::string_view name) {
    const auto& gas = *solution.gas;
    const double grid = std::round(gas.cycles.front().burnStart / units::degree);
    if (name == "burn_searched") {
        return condition(true, LW_TEXT("a start of combustion that is searched for"));
    }
    if (name == "burn_grid") {
        return inner(LW_TEXT("Mean start of combustion"), "cycle °", grid,
                     LW_TEXT("a whole degree"));
    }
    if (name == "burn_step") {
        return inner(LW_TEXT("Distance between the starts of combustion"), "cycle °", burnStep,
                     "chosen");
    }
    const double start = grid + (name == "burn_imep_before"  ? -burnStep
                                 : name == "burn_imep_after" ? burnStep
                                                             : 0.0);
    gas::Settings settings = design::gasSettings(solution.design);
    settings.burn.bestTorque = false;
    settings.burn.start = start * units::degree;
    gas::RunConditions run;
    run.omega = solution.design.running.speed;
    run.cylinders = solution.pair.mechanism().cylinders;
    run.cylinderAngles = mechanism::cylinderAngles(solution.pair.mechanism());
    gas::CycleOptions options;
    options.near = gas.start;
    SilentMonitor monitor;
    const auto other =
        gas::solveCycle(gas::PairChamber(solution.timing), settings, run, monitor, options);
    if (!other) {
        return std::nullopt;
    }
    double sum = 0.0, count = 0.0;
    const auto add = [&](const std::vector<Cycle>& cycles) {
        for (const Cycle& cycle : cycles) {
            sum += cycle.imep / units::bar;
            count += 1.0;
        }
    };
    for (const auto& cylinder : other->cylinders) {
        add(cylinder);
    }
    if (other->cylinders.empty()) {
        add(other->cycles);
    }
    return inner(LW_TEXT("Indicated mean effective pressure"), "bar", sum / count,
                 Message(LW_TEXT("same engine, combustion from %1 of the cycle"),
                         withDecimals(toSi(in::degrees, start), in::degrees, 0)));
}

Operand pumpVolume(const Solution& solution, bool isLargest) {
    const gas::PairChamber chamber(solution.timing);
    gas::RunConditions run;
    run.cylinders = solution.pair.mechanism().cylinders;
    run.cylinderAngles = mechanism::cylinderAngles(solution.pair.mechanism());
    const gas::Pump& pump = solution.design.gas.supply.pump;
    gas::PumpSpace space{
        &chamber, pump, chamber.cycles().back().lastClosing - chamber.period(), {0.0}};
    if (pump.shared) {
        space.lags = gas::cylinderLags(run);
    }
    const gas::PumpSpace::Bounds bounds = space.bounds();
    return inner(isLargest ? LW_TEXT("Largest volume of the pump chamber")
                           : LW_TEXT("Smallest volume of the pump chamber"),
                 "cm³", (isLargest ? bounds.largest : bounds.smallest) / units::cubicCentimetre,
                 LW_TEXT("dead volume + area factor · bore area · travel, searched over a period"));
}

bool isPumped(const Solution& solution) {
    return solution.design.gas.supply.kind == gas::SupplyKind::underPiston;
}

bool bothPump(const Solution& solution) {
    return isPumped(solution) && solution.design.gas.supply.pump.sides == gas::PumpSides::both &&
           !solution.design.mechanism.isOneSided();
}

constexpr InnerCondition<Solution> conditionsOfGas[] = {
    {"no_pump", [](const Solution& solution) { return !isPumped(solution); },
     LW_TEXT("a supply that the pistons do not pump")},
    {"inlet_pumps",
     [](const Solution& solution) { return isPumped(solution) && !bothPump(solution); },
     LW_TEXT("inlet pistons that pump alone")},
    {"both_pump", bothPump, LW_TEXT("both pistons pumping")},
    {"premixed_fuel",
     [](const Solution& solution) { return solution.design.gas.mixture == gas::Mixture::premixed; },
     LW_TEXT("fuel that comes with the air")},
    {"injected_fuel",
     [](const Solution& solution) { return solution.design.gas.mixture == gas::Mixture::injected; },
     LW_TEXT("fuel injected after the ports have closed")},
    {"no_wall_heat",
     [](const Solution& solution) {
         return solution.design.gas.wallHeat.model == gas::WallHeatModel::none;
     },
     LW_TEXT("adiabatic walls")}};

/// Of cylinders that are alike.
std::optional<Operand> meanMass(const gas::CycleSolution& gas, TextId label, double Cycle::*member,
                                TextId note) {
    if (!gas.cylinders.empty()) {
        return std::nullopt;
    }
    double sum = 0.0;
    for (const Cycle& cycle : gas.cycles) {
        sum += cycle.*member;
    }
    return inner(label, "mg", sum / static_cast<double>(gas.cycles.size()) / units::milligram,
                 note);
}

std::optional<Operand> gasSideValue(const Solution& solution, std::string_view name) {
    const auto& gas = *solution.gas;
    const auto& walls = solution.design.gas.wallHeat;
    if (name == "exhaust_crown") {
        const bool isHead = solution.design.mechanism.isOneSided();
        const bool isGiven =
            (isHead ? walls.headTemperature : walls.exhaustCrownTemperature).has_value();
        return fieldOperand(solution, !isGiven ? "/gas/wall_heat/crown_K"
                                      : isHead ? "/gas/wall_heat/head_K"
                                               : "/gas/wall_heat/exhaust_crown_K");
    }
    if (name == "intake_pressure") {
        const gas::Supply run = design::gasSettings(solution.design).supply;
        return run.throttle == 1.0
                   ? fieldOperand(solution, "/gas/supply/ambient_pressure_bar")
                   : std::optional(inner(LW_TEXT("Pressure before the intake"), "bar",
                                         gas::intakePressure(run) / units::bar,
                                         LW_TEXT("ambient, throttled as the load says")));
    }
    if (name == "pump_largest" || name == "pump_smallest") {
        return isPumped(solution) ? std::optional(pumpVolume(solution, name == "pump_largest"))
                                  : std::nullopt;
    }
    if (name == "supplied_fuel_mass") {
        return meanMass(gas, LW_TEXT("Mean fuel mass supplied per cycle"), &Cycle::suppliedFuelMass,
                        LW_TEXT("its share of the fresh gas taken in"));
    }
    if (name == "fuel_mass") {
        return meanMass(gas, LW_TEXT("Mean fuel mass per cycle"), &Cycle::fuelMass,
                        LW_TEXT("air at the last port closing over λ and the stoichiometric ratio; "
                                "none when motored"));
    }
    if (name.starts_with("knock_")) {
        return knockValue(solution, name);
    }
    if (name == "ignition_at") {
        const double theta = solution.timing.cycles().front().centres.idc +
                             gas.cycles.front().burnStart / solution.pair.cyclesPerTurn();
        return angleReading(LW_TEXT("Combustion starts"), theta, LW_TEXT("found by search"));
    }
    if (name == "octane_number") {
        return octane(solution);
    }
    if (name.starts_with("burn_")) {
        return solution.design.gas.burn.bestTorque && !solution.design.running.motored
                   ? burnNeighbour(solution, name)
                   : std::nullopt;
    }
    if (name.starts_with("worst_")) {
        return worstValue(gas, name);
    }
    if (auto found = rowOperand(conditionsOfGas, solution, name)) {
        return found;
    }
    return effortValue(gas.effort, name);
}

} // namespace

std::span<const Recipe> energyRecipes() {
    return energyRows;
}

std::optional<Operand> energyValue(const Solution& solution, std::string_view name) {
    if (name == "work_moved" && solution.stages->loads) {
        return inner(LW_TEXT("Work exchanged"), "J", solution.stages->loads->work.moved,
                     LW_TEXT("absolute torque of every piston, integrated over the revolution"));
    }
    return solution.gas ? gasSideValue(solution, name) : std::nullopt;
}

} // namespace lobewright::solution
