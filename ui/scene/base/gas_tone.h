#pragma once

#include "ui/base/palette.h"
#include "ui/scene/base/shown_engine.h"

namespace lobewright::ui {

/// Of the gas in a chamber; without a solved gas that of an empty panel.
inline QColor gasTone(const Palette& tones, const std::optional<GasMoment>& gas) {
    if (!gas)
        return tones.panel;
    return gas->burning ? tones.burning : tones.gas(gas->burntShare);
}

} // namespace lobewright::ui
