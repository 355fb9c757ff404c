#include "core/track/roller.h"

#include "core/units.h"

#include <fmt/format.h>

#include <cmath>

namespace lobewright::track {
namespace {

double millimetres(double metres) {
    return metres / units::millimetre;
}

bool positive(double value) {
    return value > 0.0 && std::isfinite(value);
}

} // namespace

Problems checkRoller(const Roller& roller, double pitchRadius) {
    Problems problems;
    const auto add = [&](const char* path, const char* what, double value,
                         const std::string& rule) {
        problems.push_back(
            {path, fmt::format("{} is {:.9g} mm, must {}", what, millimetres(value), rule)});
    };
    if (!positive(roller.radius))
        add("/roller/radius_mm", "radius", roller.radius, "be positive");
    if (!positive(roller.width)) {
        add("/roller/width_mm", "width", roller.width, "be positive");
    } else if (!(pitchRadius > 0.5 * roller.width) || !std::isfinite(pitchRadius)) {
        add("/pitch_radius_mm", "pitch radius", pitchRadius,
            fmt::format("exceed half the roller width of {:.9g} mm", millimetres(roller.width)));
    }
    if (roller.crownRadius && !positive(*roller.crownRadius))
        add("/roller/crown_radius_mm", "crown radius", *roller.crownRadius, "be positive");
    if (!(roller.edgeRelief >= 0.0 && 2.0 * roller.edgeRelief < roller.width)) {
        add("/roller/edge_relief_mm", "edge relief", roller.edgeRelief,
            fmt::format("be at least 0 and less than half the width of {:.9g} mm",
                        millimetres(roller.width)));
    }
    return problems;
}

} // namespace lobewright::track
