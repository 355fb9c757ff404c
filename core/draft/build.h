#pragma once

#include "core/design/design.h"
#include "core/draft/size.h"

namespace lobewright::draft {

/// The whole design of an engine of this size; notes every step.
design::Design build(const Brief& brief, const Size& size, const Tuning& tuning,
                     Notebook& notebook);

/// Smallest and largest volume of a chamber over a cycle, both tracks as this one [m³]. Absent
/// where the crowns would meet or the lift is none.
struct ChamberVolumes {
    double smallest = 0.0, largest = 0.0;
};
std::optional<ChamberVolumes> chamberVolumes(const mechanism::Mechanism& mechanism,
                                             const motion::Pattern& track);

/// The clearance at which the compression ratio is this one [m]; absent where there is none.
std::optional<double> clearanceFor(double ratio, mechanism::Mechanism mechanism,
                                   const motion::Pattern& track, double stroke);

/// What the pitch radius must be at least [m]: room for the bores, room for the rollers.
double radiusForBores(const mechanism::Mechanism& mechanism);
double radiusForRollers(const mechanism::Mechanism& mechanism);

/// Wall around a bore, to its neighbour or to the outside [m].
Span wallAround(double bore);

/// Outer diameter and length of the engine over everything, estimated [m] [own estimate].
double outerDiameter(const design::Design& design);
double overallLength(const design::Design& design);

} // namespace lobewright::draft
