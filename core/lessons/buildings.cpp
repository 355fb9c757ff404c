// Tasks that are done by changing the design.
#include "core/lessons/recipes.h"
#include "core/track/undercut.h"
#include "core/units.h"

#include <algorithm>
#include <array>

LW_TEXTS_OF(Core)

namespace lobewright::lessons {

namespace {

constexpr double wantedAfterCharge = 10.0 * units::degree; ///< of the cycle
constexpr double keptTorque = 0.95;
constexpr double nearLimit = 1.0 * units::millimetre;

double afterCharge(const solution::Solution& solution) {
    return solution.pair.cyclesPerTurn() * solution.timing.cycles().front().afterCharge();
}

std::optional<Task> tellAfterCharge(const solution::Solution& start) {
    if (start.pair.mechanism().isOneSided() || start.design.running.motored ||
        torqueOf(start) <= 0.0 || afterCharge(start) > wantedAfterCharge) {
        return std::nullopt;
    }
    return Task{
        .title = LW_TEXT("After-charge"),
        .question = Message(
            LW_TEXT(
                "The inlet closes %1 of the cycle after the exhaust. Change the design until it is "
                "more than %2, and do not lose more than a twentieth of the %3."),
            withDecimals(afterCharge(start), in::degrees, 1),
            Amount(wantedAfterCharge, in::degrees), Amount(torqueOf(start), in::Nm)),
        .hints = {
            LW_TEXT("The further the exhaust piston runs ahead, the earlier the exhaust closes."),
            LW_TEXT("Inlet ports that reach further inward close later: compare what each of "
                    "the two costs in torque.")}};
}

Result<Verdict> judgeAfterCharge(const Attempt& attempt, Monitor&) {
    const double share = torqueOf(attempt.now) / torqueOf(attempt.start);
    Verdict verdict;
    verdict.before = afterCharge(attempt.start);
    verdict.answer = afterCharge(attempt.now);
    verdict.isRight = verdict.answer > wantedAfterCharge && share >= keptTorque;
    verdict.text =
        Message(LW_TEXT("After-charge %1 of the cycle, torque %2 of the earlier value."),
                withDecimals(verdict.answer, in::degrees, 1), Amount(share, in::percent, 3));
    return verdict;
}

/// Largest roller that the tracks of a design bear without undercut [m].
std::optional<double> rollerLimit(const solution::Solution& solution) {
    const auto& mechanism = solution.design.mechanism;
    std::optional<double> least;
    for (const End end : solution.pair.pistons()) {
        const auto limit =
            track::largestRollerRadius(solution.pair.curve(end), mechanism.pitchRadius,
                                       mechanism.roller.width, track::Flank::push);
        if (limit && !track::isAnyRadius(limit->value, mechanism.pitchRadius)) {
            least = std::min(least.value_or(limit->value), limit->value);
        }
    }
    return least;
}

std::optional<Task> tellUndercut(const solution::Solution& start) {
    const auto limit = rollerLimit(start);
    if (!limit || *limit < start.design.mechanism.roller.radius + nearLimit) {
        return std::nullopt;
    }
    Task task;
    task.title = LW_TEXT("The roller carves the lobe");
    task.question =
        Message(LW_TEXT("The track is what the roller leaves as it is led along the lift curve. "
                        "Enlarge the roller, now %1, to within %2 of the radius at which it begins "
                        "to carve the lobe away (undercut), but not beyond."),
                Amount(start.design.mechanism.roller.radius, in::mm), Amount(nearLimit, in::mm));
    task.hints = {LW_TEXT("Watch the unrolled track: a lobe that is undercut grows a pointed tip."),
                  LW_TEXT("A relative radius of curvature of 0 at the tip is the limit.")};
    return task;
}

Result<Verdict> judgeUndercut(const Attempt& attempt, Monitor&) {
    Verdict verdict;
    const double radius = attempt.now.design.mechanism.roller.radius;
    const auto limit = rollerLimit(attempt.now);
    verdict.before = attempt.start.design.mechanism.roller.radius;
    verdict.answer = limit.value_or(radius);
    verdict.isRight = limit && radius <= *limit && radius >= *limit - nearLimit;
    verdict.text = radius <= verdict.answer
                       ? Message(LW_TEXT("A roller of %1 cuts no undercut; the limit is %2."),
                                 Amount(radius, in::mm), Amount(verdict.answer, in::mm))
                       : Message(LW_TEXT("A roller of %1 carves into the lobe that it should run "
                                         "on; the limit is %2."),
                                 Amount(radius, in::mm), Amount(verdict.answer, in::mm));
    return verdict;
}

} // namespace

std::span<const Recipe> buildings() {
    static constexpr std::array<Recipe, 2> all = {{
        {"after-charge", TaskKind::build, tellAfterCharge, judgeAfterCharge},
        {"undercut", TaskKind::build, tellUndercut, judgeUndercut},
    }};
    return all;
}

} // namespace lobewright::lessons
