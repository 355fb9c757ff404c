#include "core/track/roller.h"

#include "core/units.h"

#include <fmt/format.h>

#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::track {
namespace {

bool positive(double value) {
    return value > 0.0 && std::isfinite(value);
}

} // namespace

Problems checkRoller(const Roller& roller, double pitchRadius) {
    Problems problems;
    const auto add = [&](const char* path, TextId what, double value, const Message& rule) {
        problems.push_back(
            {path, Message(LW_TEXT("%1 is %2, must %3"), what, Amount(value, in::mm, 9), rule)});
    };
    if (!positive(roller.radius))
        add("/roller/radius_mm", LW_TEXT("radius"), roller.radius, LW_TEXT("be positive"));
    if (!positive(roller.width)) {
        add("/roller/width_mm", LW_TEXT("width"), roller.width, LW_TEXT("be positive"));
    } else if (!(pitchRadius > 0.5 * roller.width) || !std::isfinite(pitchRadius)) {
        add("/pitch_radius_mm", LW_TEXT("pitch radius"), pitchRadius,
            Message(LW_TEXT("exceed half the roller width of %1"),
                    Amount(roller.width, in::mm, 9)));
    }
    if (roller.crownRadius && !positive(*roller.crownRadius)) {
        add("/roller/crown_radius_mm", LW_TEXT("crown radius"), *roller.crownRadius,
            LW_TEXT("be positive"));
    }
    if (!(roller.edgeRelief >= 0.0 && 2.0 * roller.edgeRelief < roller.width)) {
        add("/roller/edge_relief_mm", LW_TEXT("edge relief"), roller.edgeRelief,
            Message(LW_TEXT("be at least 0 and less than half the width of %1"),
                    Amount(roller.width, in::mm, 9)));
    }
    return problems;
}

} // namespace lobewright::track
