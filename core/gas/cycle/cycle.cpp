#include "core/gas/cycle/cycle.h"

#include "core/gas/cycle/best_torque.h"
#include "core/gas/cycle/figures.h"
#include "core/gas/cycle/flows.h"
#include "core/gas/cycle/model.h"
#include "core/gas/cycle/steady_state.h"
#include "core/gas/cycle/trace.h"
#include "core/gas/cycle/wheel_balance.h"
#include "core/gas/models/fuel.h"
#include "core/gas/models/supply.h"
#include "core/units.h"

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::gas {
namespace {

/// Windows that the acceleration combines: about as many as a charge has numbers.
constexpr int remembered = 10;
/// A doubt about the best burn start that does not show in the four digits of a table [rad].
constexpr double doubtIgnored = 0.2 * burnStartAccuracy;
constexpr int nearPeriods = 30; ///< after which a similar engine's cycle is no help

/// Figures, trace and remarks of a ring whose last window is the solution.
Result<CycleSolution> compile(const Model& model, const CoupledCylinders& cylinders,
                              const Phases& phases, const RunConditions& run) {
    CycleSolution solution;
    RecordedTrace::Setup setup;
    setup.chamber = model.chamber->clone();
    setup.airConstant = model.gas.air.gasConstant();
    setup.productsConstant = model.gas.products.gasConstant();
    setup.start = model.start;
    setup.cylinderLag = cylinderLags(run);
    setup.ofCylinder = phases.ofCylinder;
    if (cylinders.alike()) {
        setup.ofCylinder.assign(setup.cylinderLag.size(), 0);
    }
    for (const CylinderRecord& record : cylinders.records()) {
        setup.records.push_back(record.steps);
    }
    setup.supply = cylinders.supply();
    if (model.pumps()) {
        setup.supply.pump.chamber = setup.chamber.get();
    }
    const std::vector<int> ofCylinder = setup.ofCylinder;
    auto trace = std::make_shared<const RecordedTrace>(std::move(setup));
    solution.trace = trace;
    const std::vector<CylinderRecord>& records = cylinders.records();
    solution.flows =
        std::make_shared<const RecordedFlows>(model, trace, records.front().modeChanges);
    solution.cycles = figuresOf(model, records.front().cycles, *trace, 0);
    if (!cylinders.alike()) {
        for (std::size_t k = 0; k < ofCylinder.size(); ++k) {
            const CylinderRecord& record = records[static_cast<std::size_t>(ofCylinder[k])];
            solution.cylinders.push_back(
                figuresOf(model, record.cycles, *trace, static_cast<int>(k)));
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

void count(CycleSolution& solution, const SteadySearch& search, const CoupledCylinders& cylinders) {
    solution.periods = search.windows;
    solution.near = search.near;
    solution.effort = cylinders.effort();
    solution.effort.unsteadyPeriods = search.unsteady;
    solution.effort.lastChange = search.change;
    solution.effort.askedChange = search.asked;
    solution.rhsEvaluations = solution.effort.stepEvaluations + solution.effort.restartEvaluations;
    solution.steps = solution.effort.explicitSteps + solution.effort.implicitSteps;
}

/// As exact as a search near another cycle is to be.
CycleOptions asNear(CycleOptions options) {
    options.relativeTolerance = options.nearTolerance;
    options.steadyTolerance = options.nearSteadiness;
    return options;
}

/// options.near where it is of an engine like this one, otherwise null.
const CycleStart* startNear(const Model& model, const CycleOptions& options) {
    const CycleStart* near = options.near.get();
    const bool fits = near && near->period == model.period() && near->fired == model.fired &&
                      near->supply == model.settings.supply.kind &&
                      (near->wheelSpeed > 0.0) == model.hasTurbine();
    return fits ? near : nullptr;
}

/// The steady state at the burn start at hand; with a turbine at the speed where its wheel is in
/// balance, looked for from `wheelSpeed` on.
Result<SteadySearch> findSteady(Model& model, SteadyState& search, const CycleOptions& options,
                                Monitor& monitor, double wheelSpeed, bool near) {
    if (!model.hasTurbine()) {
        return search.find(options, monitor, near);
    }
    return balanceWheel(model, search, wheelSpeed, near, options, monitor, model.isWheelSustained);
}

/// The steady state from where a similar engine's was. Absent where that leads nowhere: whoever
/// asks searches as if there were no such engine.
std::optional<SteadySearch> settleNear(Model& model, SteadyState& search,
                                       const CycleOptions& options, Monitor& monitor) {
    const CycleStart* near = startNear(model, options);
    if (!near || !search.cylinders().fits(near->state) ||
        (model.searchesBurnStart() && model.setBurnStart(near->burnStart))) {
        return std::nullopt;
    }
    const auto possible = near->state.with(near->state.scaled(model), model);
    if (!possible) {
        return std::nullopt;
    }
    if (model.hasTurbine()) {
        model.setWheelSpeed(near->wheelSpeed);
    }
    search.state = *possible;
    search.acceleration = near->acceleration;
    CycleOptions limited = asNear(options);
    limited.maxPeriods = std::min(options.maxPeriods, nearPeriods);
    if (model.searchesBurnStart() && !options.keepBurnStart &&
        !(near->burnStartDoubt < doubtIgnored)) {
        const Result<bool> found = findBestStartNear(model, search, limited, monitor);
        if (!found || !*found) {
            model.burnStartRough = false;
            return std::nullopt;
        }
    }
    Result<SteadySearch> searched =
        findSteady(model, search, limited, monitor, near->wheelSpeed, true);
    if (!searched || !searched->steady) {
        return std::nullopt;
    }
    SteadySearch found = std::move(searched).value();
    found.near = true;
    return found;
}

/// The steady state from nowhere, at the best burn start where that is asked for.
Result<SteadySearch> settle(Model& model, SteadyState& search, const CycleOptions& options,
                            Monitor& monitor) {
    double wheelSpeed = likelySpeed(model.settings.supply, model.gas.air);
    if (model.hasTurbine()) {
        model.setWheelSpeed(wheelSpeed); // wherever a search nearby has left it
    }
    Result<CoupledCylinders::State> guess = search.cylinders().guess();
    if (!guess) {
        return guess.problems();
    }
    search.state = std::move(guess).value();
    if (!model.searchesBurnStart()) {
        return findSteady(model, search, options, monitor, wheelSpeed, false);
    }
    if (model.hasTurbine()) {
        // the best start is looked for while the wheel turns as it does at an ordinary one
        Result<SteadySearch> balanced =
            findSteady(model, search, options, monitor, wheelSpeed, false);
        if (!balanced) {
            return balanced;
        }
        wheelSpeed = model.feeder.wheel()->speed();
    }
    // a similar engine's burn start may do
    const CycleStart* near = startNear(model, options);
    if (near && options.keepBurnStart && !model.setBurnStart(near->burnStart)) {
        Result<SteadySearch> searched =
            findSteady(model, search, asNear(options), monitor, wheelSpeed, model.hasTurbine());
        if (!searched) {
            return searched;
        }
        SteadySearch found = std::move(searched).value();
        found.near = true;
        return found;
    }
    // on a plenum a cylinder on a constant supply tells as much of the starts far apart
    std::optional<CoupledCylinders> single;
    std::optional<SteadyState> scout;
    if (model.hasPlenum()) {
        single.emplace(model, search.cylinders().meanSupply(search.state));
        scout.emplace(model, *single, remembered);
        scout->state = single->guess().value();
    }
    CycleOptions left = options;
    const Result<bool> learnt =
        findBestStart(model, scout ? *scout : search, search, left, monitor);
    if (!learnt) {
        return learnt.problems();
    }
    return findSteady(model, search, left, monitor, wheelSpeed, *learnt || model.hasTurbine());
}

/// What the cylinders hold after the search.
Result<CycleSolution> solutionOf(const Model& model, SteadyState& search, const SteadySearch& found,
                                 const Phases& phases, const RunConditions& run) {
    CoupledCylinders& cylinders = search.cylinders();
    cylinders.sortRecords();
    Result<CycleSolution> compiled = compile(model, cylinders, phases, run);
    if (!compiled) {
        return compiled;
    }
    CycleSolution solution = std::move(compiled).value();
    count(solution, found, cylinders);
    solution.start = std::make_shared<const CycleStart>(
        CycleStart{.period = model.period(),
                   .burnStart = model.burnStart * model.chamber->cyclesPerTurn(),
                   .fired = model.fired,
                   .supply = model.settings.supply.kind,
                   .state = search.state,
                   .acceleration = search.acceleration,
                   .wheelSpeed = model.hasTurbine() ? model.feeder.wheel()->speed() : 0.0});
    if (model.settings.supply.kind == SupplyKind::reservoir) {
        const SupplyState supply = constantSupply(model, 0.0);
        solution.supplyPower = reservoirPower(model, solution, run.cylinders);
        solution.supplyPaid = !model.settings.supply.unpaid;
        solution.plenumPressure = supply.pressure;
        solution.plenumTemperature = supply.fresh.temperature;
    } else {
        solution.supplyPower = cylinders.meanBlowerPower();
        if (model.pumps()) {
            const bool isShared = model.settings.supply.pump.shared;
            solution.supplyPower *= isShared ? 1.0 : run.cylinders;
            solution.pump = cylinders.pump();
        }
        if (model.feeder.wheel()) {
            solution.compressor = cylinders.compressor();
        }
        if (model.hasTurbine()) {
            solution.turbine = cylinders.turbine();
            solution.turbine->sustained = model.isWheelSustained;
        }
        solution.plenumPressure = cylinders.meanPlenumPressure();
        solution.plenumTemperature = cylinders.meanPlenumTemperature();
    }
    if (found.rough) {
        solution.remarks.push_back(
            {LW_TEXT("The cycle repeats itself to %1 and no better."), number(found.change, 1)});
    }
    return solution;
}

/// The speed of a turbine's wheel is where two powers meet, which are as good as the cycle repeats;
/// and cylinders that run differently are work each.
CycleOptions fitted(CycleOptions options, const Model& model, const Phases& phases) {
    constexpr double closer = 0.1;
    constexpr std::size_t cylindersAllowedFor = 4;
    if (model.hasTurbine()) {
        options.relativeTolerance *= closer;
        options.nearTolerance *= closer;
        options.steadyTolerance *= closer;
        options.nearSteadiness *= closer;
    }
    if (!phases.even && model.settings.supply.kind != SupplyKind::reservoir) {
        options.maxEvaluations *= 1 + static_cast<long>(phases.lags.size() / cylindersAllowedFor);
    }
    return options;
}

Result<CycleSolution> solve(Model& model, const RunConditions& run, Monitor& monitor,
                            const CycleOptions& asked) {
    RunConditions followed = run;
    if (model.pumps() && !model.settings.supply.pump.shared) {
        followed.cylinders = 1; // each has a pump chamber of its own: one stands for all
        followed.cylinderAngles.clear();
    }
    const Phases phases = phasesOf(followed, model.period());
    const CycleOptions options = fitted(asked, model, phases);
    if (options.near) {
        CoupledCylinders cylinders(model, phases, options.integrateTogether);
        SteadyState search(model, cylinders, remembered);
        if (const auto found = settleNear(model, search, options, monitor)) {
            return solutionOf(model, search, *found, phases, run);
        }
    }
    CoupledCylinders cylinders(model, phases, options.integrateTogether);
    SteadyState search(model, cylinders, remembered);
    const Result<SteadySearch> found = settle(model, search, options, monitor);
    if (!found) {
        return found.problems();
    }
    if (!found->steady) {
        return notSteady(*found);
    }
    return solutionOf(model, search, *found, phases, run);
}

} // namespace

std::shared_ptr<const CycleStart>
startBetween(const std::vector<std::shared_ptr<const CycleStart>>& starts,
             const std::vector<double>& weights, const std::vector<double>& fewer) {
    if (starts.empty() || std::any_of(starts.begin(), starts.end(),
                                      [](const auto& start) { return start == nullptr; })) {
        return nullptr;
    }
    std::vector<const CoupledCylinders::State*> states;
    states.reserve(starts.size());
    for (const auto& start : starts) {
        states.push_back(&start->state);
    }
    auto between = std::make_shared<CycleStart>(*starts.front());
    between->state = blend(states, weights);
    between->burnStart = between->wheelSpeed = 0.0;
    between->burnStartDoubt = std::numeric_limits<double>::infinity();
    for (std::size_t i = 0; i < starts.size(); ++i) {
        between->burnStart += weights[i] * starts[i]->burnStart;
        between->wheelSpeed += weights[i] * starts[i]->wheelSpeed;
    }
    if (!fewer.empty()) {
        double other = 0.0;
        for (std::size_t i = 0; i < fewer.size(); ++i) {
            other += fewer[i] * starts[i]->burnStart;
        }
        between->burnStartDoubt = std::fabs(other - between->burnStart);
    }
    return between;
}

Result<CycleSolution> solveCycle(const Chamber& chamber, const Settings& settings,
                                 const WorkingGas& gas, const RunConditions& run, Monitor& monitor,
                                 const CycleOptions& options) {
    Result<Model> made = makeModel(chamber, settings, gas, run);
    if (!made) {
        return made.problems();
    }
    Model model = std::move(made).value();
    Result<CycleSolution> solved = solve(model, run, monitor, options);
    if (!solved) {
        return solved;
    }
    CycleSolution solution = std::move(solved).value();
    const std::vector<Message> remarks = remarksOn(model, solution);
    solution.remarks.insert(solution.remarks.end(), remarks.begin(), remarks.end());
    return solution;
}

Result<CycleSolution> solveCycle(const Chamber& chamber, const Settings& settings,
                                 const RunConditions& run, Monitor& monitor,
                                 const CycleOptions& options) {
    return solveCycle(chamber, settings, workingGas(settings.fuel), run, monitor, options);
}

} // namespace lobewright::gas
