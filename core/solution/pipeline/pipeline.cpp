#include "core/design/file.h"
#include "core/design/gas_settings.h"
#include "core/design/schedules.h"
#include "core/gas/cycle/pair_chamber.h"
#include "core/loads/loads.h"
#include "core/mechanism/mechanism.h"
#include "core/parallel.h"
#include "core/solution/checks/checks.h"
#include "core/solution/figures/channels.h"
#include "core/solution/figures/figures.h"
#include "core/solution/pipeline/angles.h"
#include "core/solution/pipeline/motion_results.h"
#include "core/solution/pipeline/stage_results.h"
#include "core/solution/pipeline/stages.h"
#include "core/solution/solution.h"

#include <atomic>

LW_TEXTS_OF(Core)

namespace lobewright::solution {

namespace {

Problems below(const std::string& prefix, Problems problems) {
    for (auto& problem : problems) {
        problem.path = prefix + problem.path;
    }
    return problems;
}

/// The previous result when it came from equal inputs, otherwise a new one. `make(inputs)` returns
/// a Result of the output.
template <class Inputs, class Output, class Make>
Result<std::shared_ptr<const Stage<Inputs, Output>>>
reuse(const std::shared_ptr<const Stage<Inputs, Output>>& previous, Inputs inputs, Make&& make) {
    if (previous && previous->inputs == inputs) {
        return previous;
    }
    auto output = make(inputs);
    if (!output) {
        return output.problems();
    }
    return std::make_shared<const Stage<Inputs, Output>>(
        Stage<Inputs, Output>{std::move(inputs), std::move(output).value()});
}

Result<PerEnd<motion::LiftCurve>> makeLifts(const MotionInputs& inputs) {
    auto inlet = motion::LiftCurve::make(inputs.tracks.inlet);
    auto exhaust = motion::LiftCurve::make(inputs.tracks[End::exhaust]);
    Problems problems;
    if (!inlet) {
        problems = below("/tracks/inlet", inlet.problems());
    }
    if (!exhaust && inputs.tracks.exhaust) {
        const auto more = below("/tracks/exhaust", exhaust.problems());
        problems.insert(problems.end(), more.begin(), more.end());
    }
    if (!problems.empty()) {
        return problems;
    }
    return PerEnd<motion::LiftCurve>{*inlet, *exhaust};
}

Result<ports::PortTiming> makeTiming(const TimingInputs& inputs,
                                     const PerEnd<motion::LiftCurve>& lifts) {
    auto pair = mechanism::OpposedPair::make(inputs.mechanism, lifts);
    if (!pair) {
        return pair.problems();
    }
    auto timing = ports::PortTiming::make(inputs.ports, *pair);
    return timing ? timing : Result<ports::PortTiming>(below("/ports", timing.problems()));
}

/// The gas does not see roller, masses or pitch radius: changing them must not solve it again.
GasInputs gasInputs(const design::Design& design, const TimingInputs& timing) {
    GasInputs inputs{timing, design::gasSettings(design), design.running.speed,
                     design.running.motored};
    auto& mechanism = inputs.timing.mechanism;
    mechanism.roller = {};
    mechanism.pistonMass = {};
    mechanism.piston.reset();
    mechanism.pitchRadius = 0.0;
    mechanism.closedTrack = false;
    return inputs;
}

/// Passes the caller's monitor on and remembers whether it asked to stop.
class Relay final : public Monitor {
  public:
    explicit Relay(Monitor& caller) : caller_(caller) {}
    bool step(double fraction, const Message& what) override {
        if (!stopped_ && !caller_.step(fraction, what)) {
            stopped_ = true;
        }
        return !stopped_;
    }
    bool stopped() const { return stopped_; }

  private:
    Monitor& caller_;
    std::atomic<bool> stopped_ = false;
};

Result<gas::CycleSolution> solveGas(const GasInputs& inputs, const gas::PairChamber& chamber,
                                    Monitor& monitor, const gas::CycleOptions& options) {
    gas::RunConditions run;
    run.omega = inputs.speed;
    run.motored = inputs.motored;
    run.cylinders = inputs.timing.mechanism.cylinders;
    run.cylinderAngles = mechanism::cylinderAngles(inputs.timing.mechanism);
    return gas::solveCycle(chamber, inputs.settings, run, monitor, options);
}

/// What the eye can tell in a plot, with a reserve.
constexpr double liveTolerance = 3e-5, liveSteadiness = 3e-4;

/// Of the motored run beside a fired one.
constexpr double motoredTolerance = 3e-6, motoredSteadiness = 1e-5;

/// A gas stage, taken over from before where possible; a cycle that cannot be solved is an output
/// too.
std::shared_ptr<const GasStage> gasStage(const std::shared_ptr<const GasStage>& previous,
                                         GasInputs inputs, const gas::PairChamber& chamber,
                                         Monitor& monitor, const Request& request,
                                         gas::CycleOptions options = {}) {
    if (previous && previous->inputs == inputs && (request.live || !previous->live)) {
        return previous;
    }
    if (!request.live) {
        options.near = request.near;
    } else if (previous && previous->output) {
        options.near = previous->output->start;
        options.keepBurnStart = true;
        options.nearTolerance = liveTolerance;
        options.nearSteadiness = liveSteadiness;
    }
    auto output = solveGas(inputs, chamber, monitor, options);
    const bool live = request.live && output && output->near;
    return std::make_shared<GasStage>(GasStage{{std::move(inputs), std::move(output)}, live});
}

const gas::GasTrace* traceOf(const std::shared_ptr<const GasStage>& stage) {
    return stage && stage->output ? stage->output->trace.get() : nullptr;
}

/// Shaft angles where the burn begins and ends: the pressure is not smooth there.
void addBurnBreaks(std::vector<double>& breaks, const GasStage& stage,
                   const ports::PortTiming& timing) {
    if (stage.inputs.motored) {
        return;
    }
    const double perCycle = timing.pair().cyclesPerTurn();
    for (std::size_t i = 0; i < timing.cycles().size(); ++i) {
        const double start =
            timing.cycles()[i].centres.idc + stage.output->cycles[i].burnStart / perCycle;
        breaks.push_back(start);
        breaks.push_back(start + stage.inputs.settings.burn.duration / perCycle);
    }
}

/// Without kinematics.
loads::Inputs loadsInputs(const design::Design& design, const Pipeline& stages,
                          const Samples& theta) {
    const auto& timing = stages.timing->output;
    loads::Inputs inputs{.pair = timing.pair(),
                         .friction = design.friction,
                         .omega = design.running.speed,
                         .underPistonPressure = design.running.underPistonPressure,
                         .theta = theta,
                         .trace = traceOf(stages.gas),
                         .motoredTrace = traceOf(stages.motoredGas)};
    const gas::Supply& supply = design.gas.supply;
    if (supply.kind == gas::SupplyKind::underPiston) {
        for (const End end : timing.pair().pistons()) {
            const bool pumps = end == End::inlet || supply.pump.sides == gas::PumpSides::both;
            inputs.pumpArea[end] = pumps ? supply.pump.areaFactor : 0.0;
        }
    }
    inputs.breaks = timing.kinks();
    if (stages.gas->output) {
        addBurnBreaks(inputs.movingBreaks, *stages.gas, timing);
        inputs.cylindersDiffer = !stages.gas->output->cylinders.empty();
    }
    inputs.nodeMotion = stages.nodeMotion;
    return inputs;
}

contact::Inputs contactInputs(const design::Design& design, const mechanism::OpposedPair& pair,
                              const loads::Loads& loads) {
    return {pair,
            loads,
            design.materials,
            design.lubricant,
            design.rollerBearing,
            design.running.speed};
}

balance::Inputs balanceInputs(const design::Design& design, const balance::UnitBalance& unit,
                              const loads::Loads& loads) {
    return {.unit = unit,
            .evenTotalTorque = loads.evenTotalTorque,
            .omega = design.running.speed,
            .inertia = design.running.inertia};
}

/// Channels of the gas: of its state, and of its flows.
struct GasChannels {
    ChannelList state, flows;
};

GasChannels gasChannels(const StageResults& results) {
    const Eigen::Index samples = results.theta.size();
    GasChannels lists{ChannelList(samples), ChannelList(samples)};
    addGasChannels(lists.state, results.gas ? &*results.gas : nullptr, results.theta);
    addFlowChannels(lists.flows, results);
    return lists;
}

/// In the order of tables: motion and gas, which are made already, stand where they always do.
std::vector<Channel> makeChannels(ChannelList list, GasChannels gas, const StageResults& results,
                                  const contact::Contact& contact,
                                  const balance::Balance& balance) {
    list.append(std::move(gas.state));
    addLoadChannels(list, results);
    addContactChannels(list, contact, results.pair());
    addTorqueChannels(list, results);
    addBalanceChannels(list, balance);
    addForceDetailChannels(list, results);
    addContactDetailChannels(list, contact, results.pair());
    list.append(std::move(gas.flows));
    if (!results.pair().mechanism().isOneSided()) {
        addAdjusterChannels(list, results);
        addRemedyChannels(list, balance, results);
    } else {
        addThrustChannel(list, results);
    }
    return list.take();
}

bool isAnyWanted(const std::vector<std::string>& groups,
                 std::initializer_list<std::string_view> names) {
    return groups.empty() || std::ranges::any_of(names, [&](std::string_view name) {
               return std::ranges::find(groups, name) != groups.end();
           });
}

std::vector<Figure> makeFigures(const StageResults& results, const contact::Contact& contact,
                                const balance::Balance& balance,
                                const std::vector<std::string>& groups) {
    const auto wanted = [&groups](auto... names) { return isAnyWanted(groups, {names...}); };
    FigureList list;
    if (wanted("geometry")) {
        addGeometryFigures(list, results.timing, results.omega());
    }
    if (wanted("timing")) {
        addTimingFigures(list, results.timing, results.omega());
    }
    if (wanted("performance", "energy")) {
        addPerformanceFigures(list, results);
    }
    if (wanted("loads")) {
        addLoadFigures(list, results);
    }
    if (wanted("contact")) {
        addContactFigures(list, contact, results.pair());
    }
    if (wanted("balance")) {
        addBalanceFigures(list, balance, results);
    } else if (wanted("shaking")) {
        addShakingFigures(list, balance);
    }
    if (wanted("solver")) {
        addSolverFigures(list, results);
    }
    return list.take();
}

/// Those of the motion, which are made already, stand first.
std::vector<Check> makeChecks(CheckList list, const StageResults& results,
                              const contact::Contact& contact) {
    addGasChecks(list, results.gas, results.design);
    addLoadChecks(list, results);
    addContactChecks(list, contact, results.pair(), results.design.limits);
    addDutyChecks(list, results);
    return list.take();
}

/// What all solutions have.
Solution solutionOf(const design::Design& design, const std::shared_ptr<Pipeline>& stages) {
    const auto& timing = stages->timing->output;
    const auto& gas = stages->gas->output;
    return Solution{.design = design,
                    .pair = timing.pair(),
                    .timing = timing,
                    .gas = gas ? std::optional(*gas) : std::nullopt,
                    .theta = {},
                    .channels = {},
                    .figures = {},
                    .checks = {},
                    .stages = stages,
                    .live = stages->gas->live || (stages->motoredGas && stages->motoredGas->live)};
}

/// The angles of a complete solution.
struct Angles {
    Samples theta, chi;
};

Result<Solution> assemble(const design::Design& design, const std::shared_ptr<Pipeline>& stages,
                          const Angles& angles, MotionResults motion, const Request& request) {
    const auto& timing = stages->timing->output;
    const auto& pair = timing.pair();
    loads::Inputs inputs = loadsInputs(design, *stages, angles.theta);
    inputs.kinematics = stages->kinematics.get();
    const auto loads = std::make_shared<loads::Loads>();
    const StageResults results{design, timing,       stages->gas->output,
                               *loads, angles.theta, angles.chi};
    std::optional<Result<contact::Contact>> contact;
    std::optional<GasChannels> ofGas;
    allAtOnce(
        [&] {
            *loads = loads::solveLoads(inputs);
            contact = contact::solveContact(contactInputs(design, pair, *loads));
        },
        [&] { ofGas = gasChannels(results); });
    if (!*contact) {
        return contact->problems();
    }
    const auto balance = std::make_shared<const balance::Balance>(
        balance::solveBalance(balanceInputs(design, *stages->unitBalance, *loads)));
    stages->nodeMotion = loads->nodeMotion;
    stages->loads = loads;
    stages->contact = std::make_shared<const contact::Contact>(std::move(*contact).value());
    stages->balance = balance;
    Solution solution = solutionOf(design, stages);
    solution.theta = angles.theta;
    allAtOnce(
        [&] {
            solution.channels = makeChannels(std::move(motion.channels), std::move(*ofGas), results,
                                             *stages->contact, *balance);
        },
        [&] {
            solution.figures = makeFigures(results, *stages->contact, *balance, request.groups);
            solution.checks = makeChecks(std::move(motion.checks), results, *stages->contact);
        });
    return solution;
}

PeriodOfTrack periodOfTrack(const ports::PortTiming& timing) {
    const auto& pair = timing.pair();
    const Samples theta = onePeriodOf(sampleAngles(timing, pair.period()), pair.period());
    PeriodOfTrack result{
        theta, loads::kinematics(pair, theta), {}, balance::unitPeaks(pair, theta)};
    if (pair.mechanism().roller.crownRadius) {
        return result;
    }
    for (const End end : pair.pistons()) {
        result.contact[end] = {
            contact::rollingShape(pair.mechanism(), pair.lift(end, theta)),
            contact::rollingShape(pair.mechanism(), loads::liftBeforeJunctions(pair, end))};
    }
    return result;
}

/// No more than the figures: extremes and means, of one period of the track.
Result<Solution> assembleFigures(const design::Design& design,
                                 const std::shared_ptr<Pipeline>& stages, const Request& request) {
    const auto& timing = stages->timing->output;
    const auto& pair = timing.pair();
    if (!stages->period) {
        stages->period = std::make_shared<const PeriodOfTrack>(periodOfTrack(timing));
    }
    const PeriodOfTrack& period = *stages->period;
    const bool wantsBalance = isAnyWanted(request.groups, {"balance"});
    loads::Inputs inputs = loadsInputs(design, *stages, period.theta);
    inputs.kinematics = &period.kinematics;
    inputs.forStudy = true;
    inputs.wantsOrders = wantsBalance;
    const loads::Loads loads = loads::solveLoads(inputs);
    stages->nodeMotion = loads.nodeMotion;
    const contact::Inputs contactInputs = solution::contactInputs(design, pair, loads);
    const auto contact = pair.mechanism().roller.crownRadius
                             ? contact::solveContact(contactInputs)
                             : contact::worstContact(contactInputs, period.contact);
    if (!contact) {
        return contact.problems();
    }
    if (wantsBalance && !stages->unitBalance) {
        // Over the whole turn: it may be lent to a solution with channels.
        stages->unitBalance = std::make_shared<const balance::UnitBalance>(
            balance::unitBalance(pair, sampleAngles(timing, pair.period())));
    }
    const balance::Balance balance =
        wantsBalance ? balance::solveBalance(balanceInputs(design, *stages->unitBalance, loads))
                     : balance::peaksAt(period.peaks, design.running.speed);
    const Samples none; // no figure asks for cycle angles
    const StageResults results{design, timing, stages->gas->output, loads, period.theta, none};
    Solution solution = solutionOf(design, stages);
    solution.theta = period.theta;
    solution.figures = makeFigures(results, *contact, balance, request.groups);
    CheckList checks;
    addGasChecks(checks, stages->gas->output, design);
    solution.checks = checks.take();
    return solution;
}

/// A valid design whose inputs have the values of its speed.
Result<Solution> solveAtItsSpeed(const design::Design& design, Monitor& monitor,
                                 const Solution* previous, const Request& request) {
    const Pipeline none;
    const Pipeline& before = previous && previous->stages ? *previous->stages : none;
    auto stages = std::make_shared<Pipeline>();

    MotionInputs motionInputs{design.tracks};
    if (design.mechanism.isOneSided()) {
        motionInputs.tracks.exhaust.reset(); // of the other arrangement
    }
    auto motion = reuse(before.motion, std::move(motionInputs), makeLifts);
    if (!motion) {
        return motion.problems();
    }
    stages->motion = *motion;
    auto timing = reuse(
        before.timing, TimingInputs{stages->motion->inputs, design.mechanism, design.ports},
        [&](const TimingInputs& inputs) { return makeTiming(inputs, stages->motion->output); });
    if (!timing) {
        return timing.problems();
    }
    stages->timing = *timing;
    if (stages->timing == before.timing) {
        stages->unitBalance = before.unitBalance;
        stages->kinematics = before.kinematics;
        stages->chamber = before.chamber;
        stages->period = before.period;
        stages->nodeMotion = before.nodeMotion;
    }

    if (!stages->chamber) {
        stages->chamber = std::make_shared<const gas::PairChamber>(stages->timing->output);
    }
    Relay relay(monitor);
    const auto inputs = gasInputs(design, stages->timing->inputs);
    const auto solveFired = [&] {
        stages->gas = gasStage(before.gas, inputs, *stages->chamber, relay, request);
    };
    const auto solveMotored = [&] {
        if (inputs.motored) {
            return;
        }
        auto motored = inputs;
        motored.motored = true;
        // It only decides the speeds of contact: not worth a long search, nor more than five
        // digits.
        gas::CycleOptions options;
        options.maxEvaluations /= 2;
        options.relativeTolerance = motoredTolerance;
        options.steadyTolerance = motoredSteadiness;
        stages->motoredGas = gasStage(before.motoredGas, std::move(motored), *stages->chamber,
                                      relay, request, options);
    };
    if (request.detail == Detail::figures) {
        solveFired();
        return relay.stopped() ? Problem{"", LW_TEXT("cancelled")}
                               : assembleFigures(design, stages, request);
    }
    const mechanism::OpposedPair& pair = stages->timing->output.pair();
    const Samples theta = sampleAngles(stages->timing->output, pair.period());
    const Angles angles{
        theta, cycleAngles(theta, stages->timing->output, pair.period(), pair.cyclesPerTurn())};
    std::optional<MotionResults> motionResults;
    const auto lookAtMotion = [&] {
        if (!stages->kinematics) {
            stages->kinematics =
                std::make_shared<const loads::Kinematics>(loads::kinematics(pair, theta));
        }
        motionResults = solution::motionResults(design, stages->timing->output, *stages->kinematics,
                                                theta, angles.chi);
    };
    const auto lookAtBalance = [&] {
        if (!stages->unitBalance) {
            stages->unitBalance =
                std::make_shared<const balance::UnitBalance>(balance::unitBalance(pair, theta));
        }
    };
    // The two longest first.
    allAtOnce(solveFired, solveMotored, lookAtMotion, lookAtBalance);
    if (relay.stopped()) {
        return Problem{"", LW_TEXT("cancelled")};
    }
    return assemble(design, stages, angles, std::move(*motionResults), request);
}

} // namespace

Result<Solution> solve(const design::Design& design, Monitor& monitor, const Solution* previous,
                       const Request& request) {
    if (auto problems = request.valid ? Problems() : design::validateEngine(design);
        !problems.empty()) {
        return problems;
    }
    return design.schedules.empty()
               ? solveAtItsSpeed(design, monitor, previous, request)
               : solveAtItsSpeed(design::atItsSpeed(design), monitor, previous, request);
}

} // namespace lobewright::solution
