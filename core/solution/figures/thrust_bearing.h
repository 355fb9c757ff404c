#pragma once

#include "core/solution/pipeline/stage_results.h"

#include <optional>

namespace lobewright::solution {

/// What the thrust of the track asks of the bearing of a one-sided engine [ISO 281].
struct ThrustBearingDuty {
    double equivalentLoad = 0.0; ///< power mean of the thrust over the turn [N]
    std::optional<double> life;  ///< basic rating life [s]; absent: no rating given, or no load
};
ThrustBearingDuty thrustBearingDuty(const StageResults& results);

} // namespace lobewright::solution
