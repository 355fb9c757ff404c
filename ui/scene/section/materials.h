#pragma once

#include "ui/base/palette.h"

namespace lobewright::ui {

/// Tones of what the parts are made of, in drawings of the machine. Quiet, so that the colours of
/// sides and gas carry the meaning.
struct Materials {
    QColor steel;   ///< shaft, rollers, pins, forks
    QColor iron;    ///< cut faces of track drums and liners
    QColor ironFar; ///< cast iron seen behind the cut
    QColor hatch;   ///< lines over cut iron
    QColor bronze;  ///< shoes and bushes
    QColor alloy;   ///< pistons

    explicit Materials(const Palette& tones)
        : steel(tones.isDark ? "#8d97a3" : "#b3bcc7"), iron(tones.isDark ? "#4d4f52" : "#d4d0c9"),
          ironFar(tones.isDark ? "#383b3f" : "#e6e3dd"),
          hatch(tones.isDark ? "#70747a" : "#9d9890"), bronze(tones.isDark ? "#94713f" : "#cfa566"),
          alloy(tones.isDark ? "#69727c" : "#d9dee2") {}
};

} // namespace lobewright::ui
