#include "core/solution/figures/figures.h"
#include "core/solution/pipeline/stage_results.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::solution {

namespace {

using Cycles = std::vector<gas::CycleFigures>;

/// Every cycle of a period: of cylinder 1 where all run alike, otherwise of all cylinders.
Cycles everyCycle(const gas::CycleSolution& gas) {
    if (gas.cylinders.empty()) {
        return gas.cycles;
    }
    Cycles all;
    for (const auto& cylinder : gas.cylinders) {
        all.insert(all.end(), cylinder.begin(), cylinder.end());
    }
    return all;
}

double mean(const Cycles& cycles, double gas::CycleFigures::*member) {
    double sum = 0.0;
    for (const auto& cycle : cycles) {
        sum += cycle.*member;
    }
    return sum / static_cast<double>(cycles.size());
}

double largest(const Cycles& cycles, double gas::CycleFigures::*member) {
    double result = cycles.front().*member;
    for (const auto& cycle : cycles) {
        result = std::max(result, cycle.*member);
    }
    return result;
}

/// Figures that only a fired engine has.
void addEfficiencies(FigureList& list, const StageResults& results, const Brake& brake) {
    const auto cycles = everyCycle(*results.gas);
    // of a mixture, what leaves unburnt is paid for too
    const double mass = mean(cycles, &gas::CycleFigures::fuelMass);
    const double supplied = mean(cycles, &gas::CycleFigures::suppliedFuelMass);
    const double lost = supplied > 0.0 && mass > 0.0 ? supplied / mass : 1.0;
    const double heat = lost * mean(cycles, &gas::CycleFigures::fuelHeat) * brake.cyclesPerSecond;
    const bool fired = heat > 0.0;
    const TextId why = LW_TEXT("no fuel is burnt");
    const auto whenFired = [&](double value) {
        return fired ? std::optional(value) : std::nullopt;
    };
    list.add({"indicated_efficiency"}, LW_TEXT("Indicated thermal efficiency"),
             whenFired(brake.indicatedPower / heat), why);
    list.add({"brake_efficiency"}, LW_TEXT("Brake thermal efficiency"),
             whenFired(brake.power / heat), why);
    const double fuelFlow =
        mean(cycles, &gas::CycleFigures::suppliedFuelMass) * brake.cyclesPerSecond; // kg/s
    list.add({"fuel_flow", &in::kgPerHour}, LW_TEXT("Fuel flow"), whenFired(fuelFlow), why);
    list.add({"brake_specific_fuel", &in::gPerKWh}, LW_TEXT("Brake specific fuel consumption"),
             fired && brake.power > 0.0 ? std::optional(fuelFlow / brake.power) : std::nullopt,
             fired ? LW_TEXT("the engine delivers no brake power") : why);
}

/// What of a mixture leaves through the exhaust before it can burn.
void addFuelLost(FigureList& list, const Cycles& cycles) {
    const double supplied = mean(cycles, &gas::CycleFigures::suppliedFuelMass);
    const double burns = mean(cycles, &gas::CycleFigures::fuelMass);
    list.add({"fuel_lost_share"},
             LW_TEXT("Fuel lost through the exhaust, share of the fuel supplied"),
             supplied > 0.0 ? std::optional(1.0 - burns / supplied) : std::nullopt,
             LW_TEXT("no fuel is burnt"));
}

void addPump(FigureList& list, const gas::PumpFigures& pump) {
    list.add({"pump_work", &in::J},
             LW_TEXT("Work of a pump chamber on its pistons per cycle (negative: absorbed)"),
             pump.work);
    list.add({"pump_pressure_low", &in::bar}, LW_TEXT("Lowest pressure in the pump chamber"),
             pump.lowPressure);
    list.add({"pump_pressure_high", &in::bar}, LW_TEXT("Highest pressure in the pump chamber"),
             pump.highPressure);
    list.add({"crankcase_compression_ratio"}, LW_TEXT("Compression ratio of the pump chamber"),
             pump.compressionRatio);
}

/// Gas exchange efficiencies, with the reference stated in the label.
void addGasExchange(FigureList& list, const Cycles& cycles, double cyclesPerSecond) {
    using F = gas::CycleFigures;
    list.add({"delivery_ratio"}, LW_TEXT("Delivery ratio (to ambient density × swept volume)"),
             mean(cycles, &F::deliveryRatio));
    list.add({"scavenge_ratio"}, LW_TEXT("Scavenge ratio (to the trapped mass)"),
             mean(cycles, &F::scavengeRatio));
    list.add({"trapping_efficiency"}, LW_TEXT("Trapping efficiency"),
             mean(cycles, &F::trappingEfficiency));
    list.add({"scavenging_efficiency"}, LW_TEXT("Scavenging efficiency"),
             mean(cycles, &F::scavengingEfficiency));
    list.add({"charging_efficiency"},
             LW_TEXT("Charging efficiency (to ambient density × swept volume)"),
             mean(cycles, &F::chargingEfficiency));
    list.add({"purity"}, LW_TEXT("Air share of the trapped charge"), mean(cycles, &F::purity));
    list.add({"trapped_mass", &in::mg}, LW_TEXT("Trapped mass"), mean(cycles, &F::trappedMass));
    list.add({"trapped_pressure", &in::bar}, LW_TEXT("Pressure at the last port closing"),
             mean(cycles, &F::trappedPressure));
    list.add({"trapped_temperature", &in::kelvin}, LW_TEXT("Temperature at the last port closing"),
             mean(cycles, &F::trappedTemperature));
    list.add({"air_flow", &in::kgPerHour}, LW_TEXT("Air through the inlet ports"),
             mean(cycles, &F::deliveredMass) * cyclesPerSecond);
}

/// The first law over a mean cycle: fuel heat + supply = work + walls + exhaust + unburnt.
void addEnergyAudit(FigureList& list, const Cycles& cycles) {
    using F = gas::CycleFigures;
    const double fuel = mean(cycles, &F::fuelHeat);
    const double released = mean(cycles, &F::heatReleased);
    const double work = mean(cycles, &F::work);
    const double walls = mean(cycles, &F::wallHeat);
    const double exhaust = mean(cycles, &F::exhaustEnthalpy);
    const double supply = mean(cycles, &F::supplyEnthalpy);
    const double unburnt = fuel - released;
    list.group("energy");
    list.add({"fuel_heat", &in::J}, LW_TEXT("Heat of the fuel per cycle"), fuel);
    list.add({"supply_enthalpy", &in::J}, LW_TEXT("Enthalpy with the supply, from 25 °C"), supply);
    list.add({"indicated_work", &in::J}, LW_TEXT("Indicated work"), work);
    list.add({"wall_heat", &in::J}, LW_TEXT("Heat to the walls"), walls);
    list.add({"exhaust_enthalpy", &in::J}, LW_TEXT("Enthalpy with the exhaust, from 25 °C"),
             exhaust);
    list.add({"unburnt_heat", &in::J}, LW_TEXT("Fuel heat not released"), unburnt);
    const double scale = fuel > 0.0 ? fuel : std::abs(work) + std::abs(walls) + std::abs(exhaust);
    list.add({"audit_residual"}, LW_TEXT("Energy-balance residual, share of the fuel heat"),
             (fuel + supply - work - walls - exhaust - unburnt) / scale);
}

void addFrictionParts(FigureList& list, const StageResults& results, const Brake& brake) {
    const auto& losses = results.loads.losses;
    const auto add = [&](const std::string& part, const Message& label, double torque) {
        list.add({"fmep_" + part, &in::bar},
                 Message(LW_TEXT("Mean effective pressure of %1"), label),
                 loads::meanEffectivePressure(results.pair(), torque));
    };
    list.add({"fmep", &in::bar}, LW_TEXT("All losses as mean effective pressure"), brake.fmep);
    add("ring", LW_TEXT("the piston rings"), losses.ring);
    add("guide", LW_TEXT("the guides"), losses.guide);
    add("roller", LW_TEXT("rolling and roller bearings"), losses.roller);
    add("slip", LW_TEXT("slip across the rollers"), losses.slip);
    add("shaft_bearing", LW_TEXT("the shaft bearings"), losses.shaftBearing);
    add("supply", LW_TEXT("the blower or compressor"), brake.supplyTorque);
    add("auxiliary", LW_TEXT("auxiliaries"), brake.auxiliaryTorque);
}

} // namespace

Brake brakeOf(const StageResults& results) {
    const auto& pair = results.pair();
    const double omega = results.omega();
    const auto mep = [&](double torque) { return loads::meanEffectivePressure(pair, torque); };
    Brake brake;
    brake.cyclesPerSecond = pair.mechanism().cylinders * pair.cyclesPerTurn() * omega / units::turn;
    brake.auxiliaryTorque = results.design.friction.auxiliaryPower / omega;
    if (results.gas) {
        brake.imep = mean(everyCycle(*results.gas), &gas::CycleFigures::imep);
        brake.supplyTorque = results.gas->supplyPaid ? results.gas->supplyPower / omega : 0.0;
    }
    brake.fmep = mep(results.loads.losses.total() + brake.supplyTorque + brake.auxiliaryTorque);
    brake.bmep = brake.imep - brake.fmep;
    const double perMep = 1.0 / mep(1.0); // torque for a mean effective pressure of 1 Pa
    brake.torque = brake.bmep * perMep;
    brake.power = brake.torque * omega;
    brake.indicatedPower = brake.imep * perMep * omega;
    return brake;
}

void addPerformanceFigures(FigureList& list, const StageResults& results) {
    list.group("performance");
    if (!results.gas) {
        const TextId why = LW_TEXT("the gas cycle could not be solved");
        list.add({"imep", &in::bar}, LW_TEXT("Indicated mean effective pressure"), std::nullopt,
                 why);
        list.add({"bmep", &in::bar}, LW_TEXT("Brake mean effective pressure"), std::nullopt, why);
        list.add({"fmep", &in::bar}, LW_TEXT("All losses as mean effective pressure"), std::nullopt,
                 why);
        list.add({"brake_torque", &in::Nm}, LW_TEXT("Brake torque"), std::nullopt, why);
        list.add({"brake_power", &in::kW}, LW_TEXT("Brake power"), std::nullopt, why);
        return;
    }
    using F = gas::CycleFigures;
    const auto cycles = everyCycle(*results.gas);
    const auto brake = brakeOf(results);
    list.add({"brake_torque", &in::Nm}, LW_TEXT("Brake torque"), brake.torque);
    list.add({"brake_power", &in::kW}, LW_TEXT("Brake power"), brake.power);
    list.add({"indicated_power", &in::kW}, LW_TEXT("Indicated power"), brake.indicatedPower);
    list.add({"imep", &in::bar}, LW_TEXT("Indicated mean effective pressure"), brake.imep);
    list.add({"bmep", &in::bar}, LW_TEXT("Brake mean effective pressure"), brake.bmep);
    addFrictionParts(list, results, brake);
    addEfficiencies(list, results, brake);
    addGasExchange(list, cycles, brake.cyclesPerSecond);
    list.add({"peak_pressure", &in::bar}, LW_TEXT("Peak pressure"),
             largest(cycles, &F::peakPressure));
    list.add({"peak_temperature", &in::kelvin}, LW_TEXT("Peak mean temperature"),
             largest(cycles, &F::peakTemperature), "");
    list.add(
        {"burn_start", &in::degreesOfCycle}, LW_TEXT("Start of combustion from inner dead centre"),
        results.design.running.motored ? std::nullopt : std::optional(cycles.front().burnStart),
        LW_TEXT("the engine is motored"));
    std::optional<double> knock;
    for (const auto& cycle : cycles) {
        if (cycle.knockIntegral) {
            knock = std::max(knock.value_or(0.0), *cycle.knockIntegral);
        }
    }
    list.add({"knock_integral"}, LW_TEXT("Knock integral (knock from 1)"), knock,
             LW_TEXT("no correlation for this fuel, or motored"));
    if (results.design.gas.mixture == gas::Mixture::premixed) {
        addFuelLost(list, cycles);
    }
    if (results.gas->pump) {
        addPump(list, *results.gas->pump);
    }
    addSupplyFigures(list, *results.gas, results.design);
    list.add({"supply_power", &in::kW}, LW_TEXT("Power of the blower or compressor"),
             results.gas->supplyPower);
    list.addYesNo("supply_power_counted", LW_TEXT("Supply power deducted from brake values"),
                  results.gas->supplyPaid);
    list.add({"supply_pressure", &in::bar}, LW_TEXT("Mean supply pressure"),
             results.gas->plenumPressure);
    list.add({"supply_temperature", &in::kelvin}, LW_TEXT("Mean supply temperature"),
             results.gas->plenumTemperature);
    addEnergyAudit(list, cycles);
}

void addSolverFigures(FigureList& list, const StageResults& results) {
    using F = gas::CycleFigures;
    list.group("solver");
    const bool solved = static_cast<bool>(results.gas);
    const TextId why = LW_TEXT("the gas cycle could not be solved");
    const auto whenSolved = [&](auto&& value) {
        return solved ? std::optional<double>(value()) : std::nullopt;
    };
    list.add({"cycles"}, LW_TEXT("Cycles to convergence"),
             whenSolved([&] { return results.gas->periods; }), why);
    list.add({"steps"}, LW_TEXT("Steps of the integrator"),
             whenSolved([&] { return static_cast<double>(results.gas->steps); }), why);
    list.add({"evaluations"}, LW_TEXT("Evaluations of the equations"),
             whenSolved([&] { return static_cast<double>(results.gas->rhsEvaluations); }), why);
    list.add({"mass_residual"}, LW_TEXT("Mass-balance residual, share of the trapped mass"),
             whenSolved([&] { return largest(everyCycle(*results.gas), &F::massResidual); }), why);
    list.add(
        {"energy_residual"}, LW_TEXT("Energy-balance residual, share of the fuel heat of a cycle"),
        whenSolved([&] { return largest(everyCycle(*results.gas), &F::energyResidual); }), why);
    list.add({"work_residual"},
             LW_TEXT("Work-balance residual at the shaft, share of the work moved"),
             results.loads.work.residual);
}

} // namespace lobewright::solution
