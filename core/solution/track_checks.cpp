#include "core/solution/checks.h"
#include "core/track/undercut.h"
#include "core/units.h"

#include <fmt/format.h>

#include <cmath>
#include <tuple>

namespace lobewright::solution {

namespace {

/// Shaft angle in [0, period) at which a track shows this pattern angle to cylinder 1.
double shaftAngle(const mechanism::OpposedPair& pair, End end, double phi) {
    const double theta = phi - pair.trackAngle(end, 0.0);
    return theta - pair.period() * std::floor(theta / pair.period());
}

/// A jump counts from this share of the largest value that the motion has over the whole track.
constexpr double visibleJump = 1e-9;

struct Scale {
    double velocity, acceleration, jerk;
};

/// Order of magnitude of the derivatives: one stroke over one lobe.
Scale scaleOf(const motion::LiftCurve& curve) {
    const double perRadian = 1.0 / curve.period();
    const double velocity = curve.stroke() * perRadian;
    return {velocity, velocity * perRadian, velocity * perRadian * perRadian};
}

/// The largest jump of one derivative over all junctions of a track.
struct WorstJump {
    double jump = 0.0;  ///< signed [m/radⁿ]
    double angle = 0.0; ///< track angle [rad]
    int count = 0;

    void see(double candidate, double visible, double at) {
        if (std::abs(candidate) <= visible) {
            return;
        }
        ++count;
        if (std::abs(candidate) > std::abs(jump)) {
            jump = candidate;
            angle = at;
        }
    }
};

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

void addJump(CheckList& list, const mechanism::OpposedPair& pair, End end, const WorstJump& worst,
             const JumpKind& kind) {
    if (worst.count == 0) {
        return;
    }
    const double jump = worst.jump / units::millimetre;
    list.add({kind.id, kind.severity,
              fmt::format("{} of the {} track jumps at {} junction{}, most by {:.4g} {} at track "
                          "angle {:.4g}°: {}.",
                          kind.quantity, name(end), worst.count, worst.count == 1 ? "" : "s", jump,
                          kind.unit, worst.angle / units::degree, kind.advice),
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
        const auto scale = scaleOf(pair.curve(end));
        WorstJump velocity, acceleration, jerk;
        for (const auto& junction : pair.curve(end).junctions()) {
            const auto& [before, after] = std::tie(junction.before, junction.after);
            velocity.see(after.y1 - before.y1, visibleJump * scale.velocity, junction.angle);
            acceleration.see(after.y2 - before.y2, visibleJump * scale.acceleration,
                             junction.angle);
            jerk.see(after.y3 - before.y3, visibleJump * scale.jerk, junction.angle);
        }
        addJump(list, pair, end, velocity, velocityJump);
        addJump(list, pair, end, acceleration, accelerationJump);
        addJump(list, pair, end, jerk, jerkJump);
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
        list.atMost({"pressure-angle", fmt::format("Pressure angle, {} side", name(end)), "°",
                     "/mechanism/pitch_radius_mm",
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
