// Tasks that ask for a place of the shaft.
#include "core/lessons/recipes.h"
#include "core/units.h"

#include <array>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::lessons {

namespace {

constexpr double nearlyLargest = 0.97;          ///< of the largest value counts as found
constexpr double atEvent = 1.5 * units::degree; ///< of the shaft

/// Magnitude of a channel where the shaft stands, over its largest; absent without the channel.
struct Found {
    double share = 0.0;   ///< of the largest magnitude
    double largest = 0.0; ///< in the unit of the channel
    double angle = 0.0;   ///< where that is [rad]
};

std::optional<Found> find(const solution::Solution& solution, std::string_view name, double angle,
                          bool signedValue) {
    const auto* channel = solution.channel(name);
    if (!channel || channel->values.size() < 2) {
        return std::nullopt;
    }
    const double at = angle - units::turn * std::floor(angle / units::turn);
    Found found;
    double here = 0.0, nearest = units::turn;
    for (Eigen::Index i = 0; i < channel->values.size(); ++i) {
        const double value = signedValue ? channel->values[i] : std::abs(channel->values[i]);
        if (value > found.largest) {
            found.largest = value;
            found.angle = solution.theta[i];
        }
        if (std::abs(solution.theta[i] - at) < nearest && std::isfinite(value)) {
            nearest = std::abs(solution.theta[i] - at);
            here = value;
        }
    }
    if (found.largest <= 0.0) {
        return std::nullopt;
    }
    found.share = here / found.largest;
    return found;
}

Verdict verdictOf(const Found& found) {
    Verdict verdict;
    verdict.isRight = found.share >= nearlyLargest;
    verdict.answer = found.angle;
    return verdict;
}

std::optional<Task> tellTorque(const solution::Solution& start) {
    if (start.design.running.motored || !find(start, "torque_total_Nm", 0.0, true)) {
        return std::nullopt;
    }
    return Task{
        .title = LW_TEXT("Largest torque"),
        .question = LW_TEXT("Turn the shaft to where its torque is largest."),
        .hints = {LW_TEXT("Torque is force times lever arm. At the highest pressure the pistons "
                          "hardly move, so that the arm is short."),
                  LW_TEXT("Look a little after inner dead centre, where the track is steep and the "
                          "pressure still high.")}};
}

Result<Verdict> judgeTorque(const Attempt& attempt, Monitor&) {
    const Found found = *find(attempt.start, "torque_total_Nm", attempt.angle, true);
    Verdict verdict = verdictOf(found);
    verdict.text =
        Message(LW_TEXT("Here the torque is %1 of its largest value, %2, which it has at "
                        "%3 of the shaft."),
                Amount(found.share, in::percent, 3), Amount(found.largest, in::Nm),
                withDecimals(found.angle, in::degrees, 0));
    return verdict;
}

std::optional<Task> tellExhaustOpens(const solution::Solution&) {
    return Task{
        .title = LW_TEXT("Exhaust opens"),
        .question = LW_TEXT("Turn the shaft to where the exhaust ports of cylinder 1 begin to "
                            "open."),
        .hints = {LW_TEXT("The crown has to pass the inner edge of the exhaust ports, on the way "
                          "out."),
                  LW_TEXT("The chamber pressure begins to fall fast there.")}};
}

Result<Verdict> judgeExhaustOpens(const Attempt& attempt, Monitor&) {
    double off = units::turn;
    double opens = 0.0;
    for (const auto& cycle : attempt.start.timing.cycles()) {
        const double away =
            std::remainder(attempt.angle - cycle.exhaustOpens, attempt.start.pair.period());
        if (std::abs(away) < std::abs(off)) {
            off = away;
            opens = attempt.angle - away;
        }
    }
    Verdict verdict;
    verdict.answer = opens - units::turn * std::floor(opens / units::turn);
    verdict.isRight = std::abs(off) <= atEvent;
    verdict.text =
        off < 0.0 ? Message(LW_TEXT("The exhaust opens at %1 of the shaft, %2 later than here."),
                            withDecimals(verdict.answer, in::degrees, 1),
                            withDecimals(-off, in::degrees, 1))
                  : Message(LW_TEXT("The exhaust opens at %1 of the shaft, %2 earlier than here."),
                            withDecimals(verdict.answer, in::degrees, 1),
                            withDecimals(off, in::degrees, 1));
    return verdict;
}

std::optional<Task> tellSteepest(const solution::Solution& start) {
    if (!find(start, "pressure_angle_inlet_deg", 0.0, false)) {
        return std::nullopt;
    }
    return Task{
        .title = LW_TEXT("Steepest place"),
        .question = start.pair.mechanism().isOneSided()
                        ? LW_TEXT("Turn the shaft to where the roller of cylinder 1 runs on the "
                                  "steepest place of its track.")
                        : LW_TEXT("Turn the shaft to where the roller of the inlet piston of "
                                  "cylinder 1 runs on the steepest place of its track."),
        .hints = {LW_TEXT("Steep means that the piston moves far for a small turn of the shaft."),
                  LW_TEXT("Look for the place where the piston is fastest, about halfway.")}};
}

Result<Verdict> judgeSteepest(const Attempt& attempt, Monitor&) {
    const Found found = *find(attempt.start, "pressure_angle_inlet_deg", attempt.angle, false);
    Verdict verdict = verdictOf(found);
    verdict.text = Message(LW_TEXT("The track is %1 steep at most, at %2 of the shaft; there the "
                                   "piston is fastest, and a given force turns the shaft best."),
                           withDecimals(found.largest * units::degree, in::degrees, 1),
                           withDecimals(found.angle, in::degrees, 0));
    return verdict;
}

std::optional<Task> tellPressure(const solution::Solution& start) {
    if (!find(start, "pressure_bar", 0.0, false)) {
        return std::nullopt;
    }
    return Task{
        .title = LW_TEXT("Highest pressure"),
        .question = LW_TEXT("Turn the shaft to where the pressure in cylinder 1 is highest."),
        .hints = {LW_TEXT("Combustion takes time: the pressure still rises while the pistons begin "
                          "to part."),
                  LW_TEXT("Look shortly after inner dead centre.")}};
}

Result<Verdict> judgePressure(const Attempt& attempt, Monitor&) {
    const Found found = *find(attempt.start, "pressure_bar", attempt.angle, false);
    Verdict verdict = verdictOf(found);
    verdict.text = Message(LW_TEXT("The highest pressure is %1, at %2 of the shaft."),
                           Amount(found.largest * units::bar, in::bar),
                           withDecimals(found.angle, in::degrees, 0));
    return verdict;
}

} // namespace

std::span<const Recipe> places() {
    static constexpr std::array<Recipe, 4> all = {{
        {"exhaust-opens", TaskKind::point, tellExhaustOpens, judgeExhaustOpens},
        {"highest-pressure", TaskKind::point, tellPressure, judgePressure},
        {"steepest", TaskKind::point, tellSteepest, judgeSteepest},
        {"largest-torque", TaskKind::point, tellTorque, judgeTorque},
    }};
    return all;
}

} // namespace lobewright::lessons
