#include "core/gas/cycle.h"

#include "core/gas/figures.h"
#include "core/gas/fuel.h"
#include "core/gas/model.h"
#include "core/gas/phases.h"
#include "core/gas/ring.h"
#include "core/gas/steady.h"
#include "core/gas/supply.h"
#include "core/gas/trace.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

namespace lobewright::gas {
namespace {

constexpr double leastPurity = 1e-3; ///< less air than this share of the charge is none

/// The pressure that the search starts from and that the trapped charge is guessed by.
double guessedSupplyPressure(const Settings& settings) {
    return settings.supply.kind == SupplyKind::reservoir
               ? settings.supply.pressure
               : std::max(settings.supply.ambientPressure, 1.15 * settings.exhaustPressure);
}

SupplyState constantSupply(const Model& model, double pressure) {
    const Supply& supply = model.settings.supply;
    if (supply.kind == SupplyKind::reservoir) {
        return {supply.pressure, model.freshStream(supply.temperature)};
    }
    const double outlet = compress(supply, model.gas.air, pressure).outletTemperature;
    return {pressure,
            model.freshStream(std::min(outlet, supply.afterCoolerTemperature.value_or(outlet)))};
}

/// A charge to start the search from.
Ring::Snapshot guessedCharge(const Model& model, const SupplyState& supply) {
    Ring::Snapshot guess;
    const double products = model.fired ? 0.15 : 0.0;
    const double t = supply.fresh.temperature * (model.fired ? 1.2 : 1.05);
    const Stream charge = model.stream(products, t);
    const double pressure = 0.5 * (supply.pressure + model.settings.exhaustPressure);
    const double mass = pressure * model.chamber->at(model.start).volume / (charge.gasConstant * t);
    guess.y[airMass] = (1.0 - products) * mass;
    guess.y[productsMass] = products * mass;
    guess.y[temperature] = t;
    guess.memory.exhaustBack =
        model.fired ? model.stream(0.6, 900.0) : model.stream(0.0, supply.fresh.temperature);
    return guess;
}

/// Figures, trace and remarks of a ring whose last window is the solution.
Result<CycleSolution> compile(const Model& model, const Ring& ring, const Phases& phases,
                              const RunConditions& run) {
    CycleSolution solution;
    RecordedTrace::Setup setup;
    setup.chamber = model.chamber->clone();
    setup.airConstant = model.gas.air.gasConstant();
    setup.productsConstant = model.gas.products.gasConstant();
    setup.start = model.start;
    setup.window = ring.window();
    setup.alike = ring.alike();
    setup.stretches = ring.stretches();
    setup.cylinderLag = cylinderLags(run);
    setup.cylinderStretch = phases.ofCylinder;
    setup.steps = ring.steps();
    auto trace = std::make_shared<const RecordedTrace>(std::move(setup));
    solution.trace = trace;
    solution.cycles = figuresOf(model, ring.records().front(), *trace, 0);
    if (!ring.alike()) {
        for (std::size_t k = 0; k < phases.ofCylinder.size(); ++k) {
            solution.cylinders.push_back(
                figuresOf(model, ring.records()[static_cast<std::size_t>(phases.ofCylinder[k])],
                          *trace, static_cast<int>(k)));
        }
    }
    for (const CycleFigures& cycle : solution.cycles) {
        if (model.fired && cycle.purity < leastPurity) {
            return Problem{"", fmt::format("no air in the chamber at the last port closing (purity "
                                           "{:.2g}): nothing can burn; look at the ports and the "
                                           "supply pressure",
                                           cycle.purity)};
        }
        if (!std::isfinite(cycle.work) || !std::isfinite(cycle.peakPressure)) {
            return Problem{"", "the gas cycle has no finite solution"};
        }
    }
    return solution;
}

/// Power to compress the air that a reservoir gives away [W].
double reservoirPower(const Model& model, const CycleSolution& solution, int cylinders) {
    double delivered = 0.0;
    for (const CycleFigures& cycle : solution.cycles) {
        delivered += std::max(cycle.deliveredMass, 0.0);
    }
    const Supply& supply = model.settings.supply;
    const double flow = delivered * cylinders * model.omega / model.period();
    return flow * compress(supply, model.gas.air, supply.pressure).work;
}

Result<CycleSolution> solveReservoir(const Model& model, const RunConditions& run, Monitor& monitor,
                                     const CycleOptions& options) {
    const SupplyState supply = constantSupply(model, 0.0);
    Ring ring(model, supply);
    ring.place(0, guessedCharge(model, supply));
    const Result<SteadySearch> search = findSteadyState(ring, options, monitor);
    if (!search) {
        return search.problems();
    }
    Result<CycleSolution> compiled = compile(model, ring, phasesOf(run, model.period()), run);
    if (!compiled) {
        return compiled;
    }
    CycleSolution solution = std::move(compiled).value();
    solution.periods = search->windows;
    solution.rhsEvaluations = ring.rhsEvaluations();
    solution.steps = ring.stepCount();
    solution.supplyPower = reservoirPower(model, solution, run.cylinders);
    solution.supplyPaid = !model.settings.supply.unpaid;
    solution.plenumPressure = supply.pressure;
    solution.plenumTemperature = supply.fresh.temperature;
    return solution;
}

/// Air that the cylinders of a ring with a constant supply took in its last window [kg].
double deliveredInWindow(const Ring& ring) {
    double mass = 0.0;
    for (const CycleRecord& record : ring.records().front()) {
        mass += record.of(deliveredMass);
    }
    return mass;
}

/// Starts a ring with a plenum near its steady state: a cylinder on a constant supply whose
/// pressure is moved until it takes what the blower gives.
std::optional<Problem> seedFromConstantSupply(const Model& model, Ring& ring, int cylinders) {
    constexpr int rounds = 6;
    constexpr double looseTolerance = 1e-4;
    const Supply& settings = model.settings.supply;
    const double exhaust = model.settings.exhaustPressure;
    const double share = blowerFlow(settings, model.gas.air, model.omega) * model.period() /
                         (model.omega * cylinders);
    double pressure = guessedSupplyPressure(model.settings);
    Ring single(model, constantSupply(model, pressure));
    single.place(0, guessedCharge(model, constantSupply(model, pressure)));
    std::vector<std::size_t> order(static_cast<std::size_t>(ring.cylinders()));
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
        return ring.localStart(static_cast<int>(a)) < ring.localStart(static_cast<int>(b));
    });
    for (const std::size_t k : order) {
        single.snapshotAngles.push_back(
            std::max(0.0, ring.localStart(static_cast<int>(k)) - model.start));
    }
    for (int i = 0; i < rounds; ++i) {
        if (auto problem = single.advance(looseTolerance)) {
            return problem;
        }
        if (i + 1 < rounds) {
            const double taken = std::max(deliveredInWindow(single), 0.01 * share);
            // orifice flow grows about as the root of the pressure difference
            const double factor = std::clamp((share / taken) * (share / taken), 0.25, 4.0);
            const double above = std::max(pressure - exhaust, 0.01 * exhaust);
            pressure = exhaust + above * factor;
            single.setSupply(constantSupply(model, pressure));
        }
    }
    for (std::size_t i = 0; i < order.size(); ++i) {
        ring.place(static_cast<int>(order[i]), single.snapshots[i]);
    }
    const SupplyState supply = constantSupply(model, pressure);
    ring.setPlenum(pressure * settings.plenumVolume /
                       (model.gas.air.gasConstant() * supply.fresh.temperature),
                   supply.fresh.temperature);
    return std::nullopt;
}

Result<CycleSolution> solveBlower(const Model& model, const RunConditions& run, Monitor& monitor,
                                  const CycleOptions& options) {
    const Phases phases = phasesOf(run, model.period());
    Ring ring(model, phases.lags, phases.weights, phases.even);
    if (auto problem = seedFromConstantSupply(model, ring, run.cylinders)) {
        return *problem;
    }
    const Result<SteadySearch> search = findSteadyState(ring, options, monitor);
    if (!search) {
        return search.problems();
    }
    Result<CycleSolution> compiled = compile(model, ring, phases, run);
    if (!compiled) {
        return compiled;
    }
    CycleSolution solution = std::move(compiled).value();
    solution.periods = search->windows;
    solution.rhsEvaluations = ring.rhsEvaluations();
    solution.steps = ring.stepCount();
    solution.supplyPower = ring.meanBlowerPower();
    solution.plenumPressure = ring.meanPlenumPressure();
    solution.plenumTemperature = ring.meanPlenumTemperature();
    return solution;
}

} // namespace

Result<CycleSolution> solveCycle(const Chamber& chamber, const Settings& settings,
                                 const WorkingGas& gas, const RunConditions& run, Monitor& monitor,
                                 const CycleOptions& options) {
    const Result<Model> model = makeModel(chamber, settings, gas, run);
    if (!model) {
        return model.problems();
    }
    Result<CycleSolution> solved = settings.supply.kind == SupplyKind::reservoir
                                       ? solveReservoir(*model, run, monitor, options)
                                       : solveBlower(*model, run, monitor, options);
    if (!solved) {
        return solved;
    }
    CycleSolution solution = std::move(solved).value();
    solution.remarks = remarksOn(*model, solution);
    return solution;
}

Result<CycleSolution> solveCycle(const Chamber& chamber, const Settings& settings,
                                 const RunConditions& run, Monitor& monitor,
                                 const CycleOptions& options) {
    return solveCycle(chamber, settings, workingGas(settings.fuel), run, monitor, options);
}

} // namespace lobewright::gas
