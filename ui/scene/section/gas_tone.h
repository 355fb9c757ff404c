#pragma once

#include "ui/base/palette.h"

namespace lobewright::ui {

/// Temperatures at the two ends of the colours of gas [K].
struct HeatRange {
    static constexpr double cold = 300.0, hot = 2700.0;
};

/// Colour of gas by its temperature [K], clipped to HeatRange; the lightness changes one way along
/// it, so that hotter is told from colder without colour vision. Not a number: the tone of no gas.
QColor heatTone(const Palette& tones, double temperature);

} // namespace lobewright::ui
