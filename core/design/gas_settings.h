#pragma once

#include "core/design/design.h"

namespace lobewright::design {

/// The gas side of a design as the gas model takes it: in a one-sided engine the head stands where
/// the exhaust crown would.
inline gas::Settings gasSettings(const Design& design) {
    gas::Settings settings = design.gas;
    if (design.mechanism.isOneSided()) {
        settings.wallHeat.exhaustCrownTemperature = settings.wallHeat.headTemperature;
    }
    return settings;
}

} // namespace lobewright::design
