#pragma once

#include "ui/base/palette.h"

namespace lobewright::ui {

/// Tones of the parts in space, where light alone would make all metals one grey: what turns with
/// the shaft is dark iron, what slides is pale, rollers are the palest.
struct SolidTones {
    QColor steel; ///< shaft
    QColor iron;  ///< track blanks
    QColor rail;  ///< what stands still round a cylinder
    QColor fork;  ///< what holds the rollers
    QColor roller;
    QColor bronze; ///< pins and shoes
    QColor alloy;  ///< pistons
    QColor glass;  ///< liners
    QColor dark;   ///< piston rings, marks on what turns

    explicit SolidTones(const Palette& tones)
        : steel(tones.isDark ? "#8d97a3" : "#b3bcc7"), iron(tones.isDark ? "#66625c" : "#a29c92"),
          rail(tones.isDark ? "#8b877f" : "#d5d1c9"), fork(tones.isDark ? "#5c6672" : "#75808d"),
          roller(tones.isDark ? "#e2e8ee" : "#f4f7fa"),
          bronze(tones.isDark ? "#a9803f" : "#cf9a45"), alloy(tones.isDark ? "#c3cad1" : "#e9edf0"),
          glass(tones.isDark ? "#7f9bb5" : "#9db4c8"), dark("#1d2329") {}
};

} // namespace lobewright::ui
