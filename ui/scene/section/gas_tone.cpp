#include "ui/scene/section/gas_tone.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace lobewright::ui {

namespace {

using Stops = std::array<QColor, 5>;

const Stops& stopsOf(const Palette& tones) {
    static const Stops light = {QColor("#dbe7f3"), QColor("#f3dfa6"), QColor("#f2b84b"),
                                QColor("#e2662c"), QColor("#b8321a")};
    static const Stops dark = {QColor("#2b4058"), QColor("#5d4f45"), QColor("#a35a2e"),
                               QColor("#e08a34"), QColor("#ffdc7a")};
    return tones.isDark ? dark : light;
}

} // namespace

QColor heatTone(const Palette& tones, double temperature) {
    if (!std::isfinite(temperature))
        return tones.panel;
    const Stops& stops = stopsOf(tones);
    const double share =
        std::clamp((temperature - HeatRange::cold) / (HeatRange::hot - HeatRange::cold), 0.0, 1.0);
    const double place = share * static_cast<double>(stops.size() - 1);
    const auto below = std::min(static_cast<std::size_t>(place), stops.size() - 2);
    const auto part = static_cast<float>(place - static_cast<double>(below));
    const QColor &a = stops[below], &b = stops[below + 1];
    const auto blend = [part](float from, float to) { return from + part * (to - from); };
    return QColor::fromRgbF(blend(a.redF(), b.redF()), blend(a.greenF(), b.greenF()),
                            blend(a.blueF(), b.blueF()));
}

} // namespace lobewright::ui
