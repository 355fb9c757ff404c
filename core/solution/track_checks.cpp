#include "core/motion/jumps.h"
#include "core/solution/checks.h"
#include "core/track/undercut.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

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
    const char* quantity;
    const char* unit;
    const char* advice;
};
constexpr JumpKind velocityJump{
    "velocity-jump", Severity::error, "Velocity", "mm/rad",
    "the piston would be struck; let neighbouring segments meet with equal slope"};
constexpr JumpKind accelerationJump{
    "acceleration-jump", Severity::warning, "Acceleration", "mm/rad²",
    "infinite jerk; a law with continuous acceleration runs quieter"};
constexpr JumpKind jerkJump{"jerk-jump", Severity::remark, "Jerk", "mm/rad³",
                            "usual for most laws, and harmless at moderate speed"};

void addJump(CheckList& list, const mechanism::OpposedPair& pair, End end, int derivative,
             const JumpKind& kind) {
    const std::vector<motion::Jump> jumps = motion::jumps(pair.curve(end), derivative);
    if (jumps.empty()) {
        return;
    }
    const auto& worst = *std::ranges::max_element(
        jumps, {}, [](const motion::Jump& jump) { return std::abs(jump.change()); });
    const double jump = worst.change() / units::millimetre;
    const std::string places =
        jumps.size() == 1 ? std::string("one junction") : fmt::format("{} junctions", jumps.size());
    list.add({kind.id, kind.severity,
              fmt::format("{} of the {} track jumps at {}, most by {:.4g} {} at track angle "
                          "{:.4g}°: {}.",
                          kind.quantity, name(end), places, jump, kind.unit,
                          worst.angle / units::degree, kind.advice),
              jump, 0.0, kind.unit, fmt::format("/tracks/{}", name(end)),
              shaftAngle(pair, end, worst.angle)});
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
    const std::string advice =
        limit ? fmt::format("a roller radius below {:.4g} mm cuts no cusp",
                            limit->value / units::millimetre)
              : std::string("a larger pitch radius or a gentler lobe avoids it");
    list.add(
        {"undercut", Severity::error,
         fmt::format(
             "The {} flank of the {} track is undercut: relative radius {:.4g} mm at track angle "
             "{:.4g}° and {:.4g} mm from the shaft; {}.",
             flank == track::Flank::push ? "push" : "pull", name(end),
             smallest.value / units::millimetre, smallest.place.phi / units::degree,
             smallest.place.rho / units::millimetre, advice),
         smallest.value / units::millimetre, 0.0, "mm", "/mechanism/roller/radius_mm",
         shaftAngle(pair, end, smallest.place.phi)});
}

} // namespace

void addJunctionChecks(CheckList& list, const ports::PortTiming& timing) {
    const auto& pair = timing.pair();
    for (const End end : bothEnds) {
        addJump(list, pair, end, 1, velocityJump);
        addJump(list, pair, end, 2, accelerationJump);
        addJump(list, pair, end, 3, jerkJump);
    }
}

void addTrackChecks(CheckList& list, const ports::PortTiming& timing, const design::Limits& limits,
                    const Samples& theta) {
    const auto& pair = timing.pair();
    const auto& mechanism = pair.mechanism();
    for (const End end : bothEnds) {
        Eigen::Index steepest = 0;
        const double angle = track::contactAngle(pair.lift(end, theta), mechanism.pitchRadius)
                                 .abs()
                                 .maxCoeff(&steepest);
        list.atMost({"pressure-angle",
                     fmt::format("Pressure angle at the middle of the width, {} side", name(end)),
                     "°", "/mechanism/pitch_radius_mm",
                     "a larger pitch radius, a longer span or a shorter stroke makes it flatter",
                     theta[steepest]},
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
