#include "core/motion/jumps.h"
#include "core/solution/checks/checks.h"
#include "core/solution/sides.h"
#include "core/track/undercut.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::solution {

namespace {

/// Shaft angle in [0, period) at which a track shows this pattern angle to cylinder 1.
double shaftAngle(const mechanism::OpposedPair& pair, End end, double phi) {
    const double theta = phi - pair.trackAngle(end, 0.0);
    return theta - pair.period() * std::floor(theta / pair.period());
}

/// How a jump of one derivative is judged and told.
struct JumpKind {
    const char* id;
    Severity severity;
    TextId quantity;
    const Unit* unit;
    TextId advice;
};
constexpr JumpKind velocityJump{
    "velocity-jump", Severity::error, LW_TEXT("Velocity"), &in::mmPerRad,
    LW_TEXT("the piston would be struck; give neighbouring segments equal slope where they meet")};
constexpr JumpKind accelerationJump{
    "acceleration-jump", Severity::warning, LW_TEXT("Acceleration"), &in::mmPerRad2,
    LW_TEXT("infinite jerk; use a law with continuous acceleration")};
constexpr JumpKind jerkJump{"jerk-jump", Severity::remark, LW_TEXT("Jerk"), &in::mmPerRad3,
                            LW_TEXT("usual for most laws and harmless at moderate speed")};

void addJump(CheckList& list, const mechanism::OpposedPair& pair, End end, int derivative,
             const JumpKind& kind) {
    const std::vector<motion::Jump> jumps = motion::jumps(pair.curve(end), derivative);
    if (jumps.empty()) {
        return;
    }
    const auto& worst = *std::ranges::max_element(
        jumps, {}, [](const motion::Jump& jump) { return std::abs(jump.change()); });
    const double jump = worst.change() / units::millimetre;
    const Message places = jumps.size() == 1 ? Message(LW_TEXT("one junction"))
                                             : Message(LW_TEXT("%1 junctions"), jumps.size());
    list.add(
        {kind.id, kind.severity,
         Message(LW_TEXT("%1 of the %2 jumps at %3, by up to %4 at track angle %5: %6."),
                 kind.quantity, trackWord(pair, end), places, Amount(worst.change(), *kind.unit),
                 Amount(worst.angle, in::degrees), kind.advice),
         jump, 0.0, kind.unit, fmt::format("/tracks/{}", name(end)),
         shaftAngle(pair, end, worst.angle), std::nullopt, end});
}

void addUndercut(CheckList& list, const mechanism::OpposedPair& pair, End end, track::Flank flank) {
    const auto& mechanism = pair.mechanism();
    const auto smallest = track::smallestRelativeRadius(pair.curve(end), mechanism.pitchRadius,
                                                        mechanism.roller, flank);
    if (smallest.value > 0.0) {
        return;
    }
    const auto limit = track::largestRollerRadius(pair.curve(end), mechanism.pitchRadius,
                                                  mechanism.roller.width, flank);
    const Message advice =
        limit
            ? Message(LW_TEXT("use a roller radius below %1"), Amount(limit->value, in::mm))
            : Message(LW_TEXT("increase the pitch radius or reduce the acceleration of the lobe"));
    list.add({"undercut", Severity::error,
              Message(LW_TEXT("The %1 flank of the %2 is undercut: relative radius of "
                              "curvature %3 at track angle %4 and %5 from the shaft axis; %6."),
                      flank == track::Flank::push ? LW_TEXT("push") : LW_TEXT("pull"),
                      trackWord(pair, end), Amount(smallest.value, in::mm),
                      Amount(smallest.place.phi, in::degrees), Amount(smallest.place.rho, in::mm),
                      advice),
              smallest.value / units::millimetre, 0.0, &in::mm, "/mechanism/roller/radius_mm",
              shaftAngle(pair, end, smallest.place.phi), std::nullopt, end});
}

} // namespace

void addJunctionChecks(CheckList& list, const ports::PortTiming& timing) {
    const auto& pair = timing.pair();
    for (const End end : pair.pistons()) {
        addJump(list, pair, end, 1, velocityJump);
        addJump(list, pair, end, 2, accelerationJump);
        addJump(list, pair, end, 3, jerkJump);
    }
}

void addTrackChecks(CheckList& list, const ports::PortTiming& timing, const design::Limits& limits,
                    const PerEnd<motion::LiftSamples>& lifts, const Samples& theta) {
    const auto& pair = timing.pair();
    const auto& mechanism = pair.mechanism();
    for (const End end : pair.pistons()) {
        Eigen::Index steepest = 0;
        const double angle =
            track::contactAngle(lifts[end], mechanism.pitchRadius).abs().maxCoeff(&steepest);
        list.atMost({"pressure-angle",
                     ofTrack(pair, LW_TEXT("Pressure angle at the middle of the width"), end),
                     &in::degrees, "/mechanism/pitch_radius_mm",
                     LW_TEXT("increase the pitch radius, lengthen the span or shorten the stroke"),
                     theta[steepest], QuantityId{"peak_pressure_angle", &in::degrees, end}, end},
                    angle / units::degree,
                    {limits.pressureAngle.warning / units::degree,
                     limits.pressureAngle.error / units::degree});
        addUndercut(list, pair, end, track::Flank::push);
        if (mechanism.closedTrack) {
            addUndercut(list, pair, end, track::Flank::pull);
        }
    }
}

} // namespace lobewright::solution
