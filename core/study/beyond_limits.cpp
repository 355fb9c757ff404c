#include "core/study/beyond_limits.h"

#include "core/units.h"

LW_TEXTS_OF(Core)

namespace lobewright::study {

Message beyondLimits(const solution::Solution& solved) {
    const design::Limits& limits = solved.design.limits;
    if (solved.valueOf({"keeps_contact"}) == 0.0) {
        return LW_TEXT("a roller lifts off");
    }
    if (solved.valueOf({"peak_pressure", &in::bar}).value_or(0.0) > limits.peakPressure.error) {
        return LW_TEXT("peak pressure above its limit");
    }
    if (solved.valueOf({"knock_integral"}).value_or(0.0) > limits.knockIntegral.error) {
        return LW_TEXT("knock");
    }
    const double turnsPerSecond = solved.design.running.speed / units::turn;
    for (const End end : solved.pair.pistons()) {
        const auto film = solved.valueOf({"lowest_film_ratio", &in::pure, end});
        if (film && *film < limits.filmRatio.error) {
            return LW_TEXT("oil film below its limit");
        }
        const auto safety = solved.valueOf({"contact_safety", &in::pure, end});
        if (safety && *safety < limits.contactSafety.error) {
            return LW_TEXT("contact stress above its limit");
        }
        const double strokes = 2.0 * solved.pair.cyclesPerTurn() * turnsPerSecond;
        if (solved.pair.curve(end).stroke() * strokes > limits.meanPistonSpeed.error) {
            return LW_TEXT("mean piston speed above its limit");
        }
    }
    return {};
}

Message speaksAgainst(const Point& point) {
    return point.failure.empty() ? point.beyond : Message(LW_TEXT("not solved: %1"), point.failure);
}

} // namespace lobewright::study
