#pragma once

#include "core/draft/brief.h"
#include "core/draft/rules.h"
#include "core/draft/tuning.h"

namespace lobewright::draft {

/// The size of the engine: what the figures and the first rules say. SI.
struct Size {
    int cylinders = 1, lobes = 1;
    int pistons = 2; ///< of one cylinder: opposed ones, or one against a head
    gas::Fuel fuel = gas::Fuel::petrol;
    bool isDiesel = false;
    double displacement = 0.0; ///< of the engine [m³]
    double bore = 0.0, stroke = 0.0;
    double meanPressure = 0.0;   ///< wanted at the rated point [Pa]
    double speed = 0.0;          ///< rated, of the shaft [rad/s]
    std::optional<double> power; ///< wanted at that speed [W]
};

/// Follows the rules from the brief to the size with this number of lobes; notes every step.
Size sizeOf(const Brief& brief, int lobes, const Tuning& tuning, Notebook& notebook);

} // namespace lobewright::draft
