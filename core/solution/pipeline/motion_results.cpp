#include "core/solution/pipeline/motion_results.h"

namespace lobewright::solution {

namespace {

/// Lifts of cylinder 1 at the first `count` angles of the kinematics.
PerEnd<motion::LiftSamples> liftsOf(const mechanism::OpposedPair& pair,
                                    const loads::Kinematics& kinematics, Eigen::Index count) {
    const Samples none = Samples::Zero(count);
    PerEnd<motion::LiftSamples> lifts{{none, none, none, none}, {none, none, none, none}};
    for (const End end : pair.pistons()) {
        const motion::LiftSamples& known = kinematics.motion[end].lift;
        const auto unfolded = [&](const Samples& values) {
            return kinematics.folded.unfolded(values, 0, count);
        };
        lifts[end] = {unfolded(known.y), unfolded(known.y1), unfolded(known.y2),
                      unfolded(known.y3)};
    }
    return lifts;
}

} // namespace

MotionResults motionResults(const design::Design& design, const ports::PortTiming& timing,
                            const loads::Kinematics& kinematics, const Samples& theta,
                            const Samples& chi) {
    const mechanism::OpposedPair& pair = timing.pair();
    const design::Limits& limits = design.limits;
    const double speed = design.running.speed;
    const PerEnd<motion::LiftSamples> lifts = liftsOf(pair, kinematics, theta.size());
    MotionResults results{ChannelList(theta.size()), {}};
    addMotionChannels(results.channels, timing, lifts, theta, chi, speed);
    CheckList& checks = results.checks;
    addTrackChecks(checks, timing, limits, lifts, theta);
    addJunctionChecks(checks, timing);
    addClearanceChecks(checks, pair,
                       track::rimThickness(design.trackBlank, design.mechanism.roller));
    addPortChecks(checks, timing);
    addOpeningOrderCheck(checks, timing);
    addLinerChecks(checks, timing, lifts, theta);
    addSpeedChecks(checks, timing, limits, speed);
    return results;
}

} // namespace lobewright::solution
