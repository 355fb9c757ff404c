#include "core/solution/angles.h"
#include "core/solution/channels.h"
#include "core/solution/figures.h"
#include "core/solution/solution.h"
#include "core/solution/stages.h"

namespace lobewright::solution {

namespace {

Problems below(const std::string& prefix, Problems problems) {
    for (auto& problem : problems) {
        problem.path = prefix + problem.path;
    }
    return problems;
}

/// The previous result when it came from equal inputs, otherwise a new one. `make(inputs)` returns a
/// Result of the output.
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
    return std::shared_ptr<const Stage<Inputs, Output>>(
        std::make_shared<Stage<Inputs, Output>>(std::move(inputs), std::move(output).value()));
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

Result<ports::PortTiming> makeTiming(const TimingInputs& inputs, const PerEnd<motion::LiftCurve>& lifts) {
    auto pair = mechanism::OpposedPair::make(inputs.mechanism, lifts);
    if (!pair) {
        return pair.problems();
    }
    auto timing = ports::PortTiming::make(inputs.ports, *pair);
    return timing ? timing : Result<ports::PortTiming>(below("/ports", timing.problems()));
}

/// The gas does not see roller, masses or pitch radius: changing them must not solve it again.
GasInputs gasInputs(const design::Design& design, const TimingInputs& timing) {
    GasInputs inputs{timing, design.gas, design.running.speed, design.running.motored};
    auto& mechanism = inputs.timing.mechanism;
    mechanism.roller = {};
    mechanism.pistonMass = {};
    mechanism.piston.reset();
    mechanism.pitchRadius = 0.0;
    mechanism.closedTrack = false;
    return inputs;
}

Result<gas::CycleSolution> solveGas(const GasInputs& inputs, const ports::PortTiming& timing,
                                    Monitor& monitor) {
    const gas::PairChamber chamber(timing);
    gas::RunConditions run;
    run.omega = inputs.speed;
    run.motored = inputs.motored;
    run.cylinders = inputs.timing.mechanism.cylinders;
    run.cylinderAngles = mechanism::cylinderAngles(inputs.timing.mechanism);
    return gas::solveCycle(chamber, inputs.settings, run, monitor);
}

} // namespace

Result<Solution> solve(const design::Design& design, Monitor& monitor, const Solution* previous) {
    if (auto problems = design::validate(design); !problems.empty()) {
        return problems;
    }
    const Pipeline none;
    const Pipeline& before = previous && previous->stages ? *previous->stages : none;
    auto stages = std::make_shared<Pipeline>();

    auto motion = reuse(before.motion, MotionInputs{design.tracks}, makeLifts);
    if (!motion) {
        return motion.problems();
    }
    stages->motion = *motion;
    const TimingInputs timingInputs{stages->motion->inputs, design.mechanism, design.ports};
    auto timing = reuse(before.timing, timingInputs, [&](const TimingInputs& inputs) {
        return makeTiming(inputs, stages->motion->output);
    });
    if (!timing) {
        return timing.problems();
    }
    stages->timing = *timing;

    return Problem{"", "cancelled"};
}

} // namespace lobewright::solution
