#include "core/gas/cycle.h"

#include "core/gas/best_torque.h"
#include "core/gas/figures.h"
#include "core/gas/flows.h"
#include "core/gas/fuel.h"
#include "core/gas/model.h"
#include "core/gas/phases.h"
#include "core/gas/ring.h"
#include "core/gas/start.h"
#include "core/gas/steady.h"
#include "core/gas/supply.h"
#include "core/gas/trace.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <limits>
#include <numeric>

LW_TEXTS_OF(Core)

namespace lobewright::gas {
namespace {

constexpr long stiffSteps = 100; ///< implicit steps of the start above which they are, too
/// Windows that the acceleration combines; in a search for the best burn start about as many as a
/// state has numbers.
constexpr int remembered = 6, rememberedInSearch = 10;
constexpr int nearPeriods = 30;      ///< after which a similar engine's cycle is no help
constexpr int followingPeriods = 80; ///< after which cylinders are integrated together

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
    solution.flows = std::make_shared<const RecordedFlows>(model, trace, ring.modeChanges());
    solution.cycles = figuresOf(model, ring.records().front(), *trace, 0);
    if (!ring.alike()) {
        for (std::size_t k = 0; k < phases.ofCylinder.size(); ++k) {
            solution.cylinders.push_back(
                figuresOf(model, ring.records()[static_cast<std::size_t>(phases.ofCylinder[k])],
                          *trace, static_cast<int>(k)));
        }
    }
    for (const CycleFigures& cycle : solution.cycles) {
        if (!std::isfinite(cycle.work) || !std::isfinite(cycle.peakPressure)) {
            return Problem{"", LW_TEXT("the gas cycle has no finite solution")};
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

Problem notSteady(const SteadySearch& search) {
    return {"", Message(LW_TEXT("no cyclic steady state after %1 cycles: the state still changes "
                                "by %2 from one to the next"),
                        search.windows, number(search.change, 2))};
}

void count(CycleSolution& solution, const SteadySearch& search, const Ring& ring) {
    solution.periods = search.windows;
    solution.near = search.near;
    solution.rhsEvaluations = ring.rhsEvaluations();
    solution.steps = ring.stepCount();
    solution.effort = ring.effort();
    solution.effort.unsteadyPeriods = search.unsteady;
    solution.effort.lastChange = search.change;
    solution.effort.askedChange = search.asked;
}

/// As exact as a search near another cycle is to be.
CycleOptions asNear(CycleOptions options) {
    options.relativeTolerance = options.nearTolerance;
    options.steadyTolerance = options.nearSteadiness;
    return options;
}

/// Takes the burn start of a similar engine where that will do.
bool keepsBurnStart(Model& model, const CycleOptions& options) {
    const CycleStart* near = startNear(model, options);
    return near && options.keepBurnStart && model.searchesBurnStart() &&
           !model.setBurnStart(near->burnStart);
}

/// Moves the burn start to the best torque where that is asked for, looking first with `scout`;
/// then finds the steady state.
Result<SteadySearch> settle(Model& model, Ring& scout, Ring& ring, const CycleOptions& options,
                            Monitor& monitor, AndersonAcceleration& acceleration) {
    if (!model.searchesBurnStart()) {
        return findSteadyState(ring, options, monitor, acceleration);
    }
    if (keepsBurnStart(model, options)) {
        Result<SteadySearch> search = findSteadyState(ring, asNear(options), monitor, acceleration);
        if (!search) {
            return search;
        }
        SteadySearch found = std::move(search).value();
        found.near = true;
        return found;
    }
    CycleOptions left = options;
    const Result<bool> learnt = findBestStart(model, scout, ring, left, monitor, acceleration);
    if (!learnt) {
        return learnt.problems();
    }
    return *learnt ? findSteadyStateNear(ring, left, monitor, acceleration)
                   : findSteadyState(ring, left, monitor, acceleration);
}

/// The steady state from where a similar engine's was. Absent where that leads nowhere: whoever
/// asks searches as if there were no such engine.
std::optional<SteadySearch> settleNear(Model& model, Ring& ring, const CycleOptions& options,
                                       Monitor& monitor, AndersonAcceleration& acceleration) {
    const CycleStart* near = startNear(model, options);
    if (!near || (model.searchesBurnStart() && model.setBurnStart(near->burnStart)) ||
        !ring.assume(near->pose) || !ring.setRepeating(ring.repeating())) { // what can be, of sums
        return std::nullopt;
    }
    acceleration = near->acceleration;
    CycleOptions limited = asNear(options);
    limited.maxPeriods = std::min(options.maxPeriods, nearPeriods);
    if (model.searchesBurnStart() && !options.keepBurnStart) {
        const Result<bool> found = findBestStartNear(model, ring, limited, monitor, acceleration);
        if (!found || !*found) {
            model.burnStartRough = false;
            return std::nullopt;
        }
    }
    Result<SteadySearch> search = findSteadyStateNear(ring, limited, monitor, acceleration);
    if (!search || !search->steady) {
        return std::nullopt;
    }
    SteadySearch found = std::move(search).value();
    found.near = true;
    return found;
}

AndersonAcceleration newAcceleration(const Model& model) {
    return AndersonAcceleration(model.searchesBurnStart() ? rememberedInSearch : remembered);
}

Result<CycleSolution> compileReservoir(const Model& model, const Ring& ring,
                                       const RunConditions& run, const SteadySearch& search,
                                       const AndersonAcceleration& acceleration) {
    Result<CycleSolution> compiled = compile(model, ring, phasesOf(run, model.period()), run);
    if (!compiled) {
        return compiled;
    }
    CycleSolution solution = std::move(compiled).value();
    count(solution, search, ring);
    solution.start = cycleStart(model, ring, acceleration);
    const SupplyState supply = constantSupply(model, 0.0);
    solution.supplyPower = reservoirPower(model, solution, run.cylinders);
    solution.supplyPaid = !model.settings.supply.unpaid;
    solution.plenumPressure = supply.pressure;
    solution.plenumTemperature = supply.fresh.temperature;
    return solution;
}

Result<CycleSolution> solveReservoir(Model& model, const RunConditions& run, Monitor& monitor,
                                     const CycleOptions& options) {
    const SupplyState supply = constantSupply(model, 0.0);
    AndersonAcceleration acceleration = newAcceleration(model);
    Ring near(model, supply);
    if (const auto found = settleNear(model, near, options, monitor, acceleration)) {
        return compileReservoir(model, near, run, *found, acceleration);
    }
    Ring ring(model, supply);
    ring.place(0, guessedCharge(model, supply));
    acceleration = newAcceleration(model);
    const Result<SteadySearch> search = settle(model, ring, ring, options, monitor, acceleration);
    if (!search) {
        return search.problems();
    }
    if (!search->steady) {
        return notSteady(*search);
    }
    return compileReservoir(model, ring, run, *search, acceleration);
}

/// What a blower's ring found, with its plenum.
Result<CycleSolution> compileBlown(const Model& model, const Ring& ring, const Phases& phases,
                                   const RunConditions& run, const SteadySearch& search,
                                   const AndersonAcceleration& acceleration) {
    Result<CycleSolution> compiled = compile(model, ring, phases, run);
    if (!compiled) {
        return compiled;
    }
    CycleSolution solution = std::move(compiled).value();
    count(solution, search, ring);
    solution.start = cycleStart(model, ring, acceleration);
    solution.supplyPower = ring.meanBlowerPower();
    solution.plenumPressure = ring.meanPlenumPressure();
    solution.plenumTemperature = ring.meanPlenumTemperature();
    return solution;
}

/// Evenly phased cylinders run alike: one is integrated, the others follow it. Absent when that
/// finds no steady state; all together they may. Takes its work from what `options` allow.
Result<std::optional<CycleSolution>> solveFollowing(Model& model, const Phases& phases,
                                                    const RunConditions& run, Monitor& monitor,
                                                    CycleOptions& options) {
    const auto compiled =
        [&](const Ring& ring, const SteadySearch& search,
            const AndersonAcceleration& acceleration) -> Result<std::optional<CycleSolution>> {
        auto solution = compileBlown(model, ring, phases, run, search, acceleration);
        return solution ? Result<std::optional<CycleSolution>>(std::move(solution).value())
                        : solution.problems();
    };
    AndersonAcceleration acceleration = newAcceleration(model);
    Ring near(model, phases.lags, phases.weights.front());
    if (const auto found = settleNear(model, near, options, monitor, acceleration)) {
        return compiled(near, *found, acceleration);
    }
    acceleration = newAcceleration(model);
    Result<ConstantSupplyStart> started = startOnConstantSupply(model, run.cylinders, {0.0});
    if (!started) {
        return started.problems();
    }
    ConstantSupplyStart start = std::move(started).value();
    if (start.ring.implicitSteps() > stiffSteps) {
        return std::optional<CycleSolution>{}; // pressures too nearly equal to be remembered
    }
    Ring ring(model, phases.lags, phases.weights.front());
    ring.followWindowOf(start.ring);
    placeOn(ring, model, start, {0});
    CycleOptions limited = options;
    limited.maxPeriods = std::min(options.maxPeriods, followingPeriods);
    limited.maxEvaluations = options.maxEvaluations / 2;
    const Result<SteadySearch> search =
        settle(model, start.ring, ring, limited, monitor, acceleration);
    options.maxEvaluations -= ring.work() + start.ring.work();
    if (!search) {
        return search.problems();
    }
    return search->steady ? compiled(ring, *search, acceleration) : std::optional<CycleSolution>{};
}

Result<CycleSolution> solveTogether(Model& model, const Phases& phases, const RunConditions& run,
                                    Monitor& monitor, const CycleOptions& options) {
    AndersonAcceleration acceleration = newAcceleration(model);
    Ring near(model, phases.lags, phases.weights, phases.even);
    if (const auto found = settleNear(model, near, options, monitor, acceleration)) {
        return compileBlown(model, near, phases, run, *found, acceleration);
    }
    Ring ring(model, phases.lags, phases.weights, phases.even);
    std::vector<int> order(static_cast<std::size_t>(ring.cylinders()));
    std::iota(order.begin(), order.end(), 0);
    std::sort(order.begin(), order.end(),
              [&](int a, int b) { return ring.localStart(a) < ring.localStart(b); });
    std::vector<double> angles;
    for (const int k : order) {
        angles.push_back(std::max(0.0, ring.localStart(k) - model.start));
    }
    Result<ConstantSupplyStart> started = startOnConstantSupply(model, run.cylinders, angles);
    if (!started) {
        return started.problems();
    }
    ConstantSupplyStart start = std::move(started).value();
    placeOn(ring, model, start, order);
    acceleration = newAcceleration(model);
    const Result<SteadySearch> search =
        settle(model, start.ring, ring, options, monitor, acceleration);
    if (!search) {
        return search.problems();
    }
    if (!search->steady) {
        return notSteady(*search);
    }
    return compileBlown(model, ring, phases, run, *search, acceleration);
}

Result<CycleSolution> solveBlower(Model& model, const RunConditions& run, Monitor& monitor,
                                  const CycleOptions& options) {
    const Phases phases = phasesOf(run, model.period());
    CycleOptions left = options;
    const CycleStart* near = startNear(model, options);
    const bool nearTogether = near && near->pose.members.size() > 1;
    if (phases.even && phases.lags.size() > 1 && !options.integrateTogether && !nearTogether) {
        Result<std::optional<CycleSolution>> following =
            solveFollowing(model, phases, run, monitor, left);
        if (!following) {
            return following.problems();
        }
        if (*following) {
            return **following;
        }
    }
    return solveTogether(model, phases, run, monitor, left);
}

} // namespace

Result<CycleSolution> solveCycle(const Chamber& chamber, const Settings& settings,
                                 const WorkingGas& gas, const RunConditions& run, Monitor& monitor,
                                 const CycleOptions& options) {
    Result<Model> made = makeModel(chamber, settings, gas, run);
    if (!made) {
        return made.problems();
    }
    Model model = std::move(made).value();
    Result<CycleSolution> solved = settings.supply.kind == SupplyKind::reservoir
                                       ? solveReservoir(model, run, monitor, options)
                                       : solveBlower(model, run, monitor, options);
    if (!solved) {
        return solved;
    }
    CycleSolution solution = std::move(solved).value();
    solution.remarks = remarksOn(model, solution);
    return solution;
}

Result<CycleSolution> solveCycle(const Chamber& chamber, const Settings& settings,
                                 const RunConditions& run, Monitor& monitor,
                                 const CycleOptions& options) {
    return solveCycle(chamber, settings, workingGas(settings.fuel), run, monitor, options);
}

} // namespace lobewright::gas
