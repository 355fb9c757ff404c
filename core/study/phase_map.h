#pragma once

#include "core/study/operating_points.h"

namespace lobewright::study {

/// What a phase map turns.
enum class PhaseParameter {
    exhaustLead, ///< δ as built
    adjuster     ///< Δ along the spline, with the axial shift that its helix brings
};

/// Figures of the phase map, by name.
const std::vector<std::string>& phaseMapFigures();

/// What a phase map varies.
Column phaseMapParameter(PhaseParameter parameter);

/// A design over a range of exhaust lead or adjuster setting [shaft °]; points ≥ 2.
/// Errors: range or count out of bounds (path ""), cancelled. A setting at which crowns meet or a
/// port never opens is a point with a failure that says so.
Result<Table> phaseMap(const design::Design& design, PhaseParameter parameter, double from,
                       double to, int points, const Shard& shard, Monitor& monitor,
                       const PointSink& sink = {});

} // namespace lobewright::study
