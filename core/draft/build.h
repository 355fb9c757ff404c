#pragma once

#include "core/design/design.h"
#include "core/draft/size.h"

namespace lobewright::draft {

/// The whole design of an engine of this size; notes every step.
design::Design build(const Brief& brief, const Size& size, const Tuning& tuning,
                     Notebook& notebook);

/// Wall around a bore, to its neighbour or to the outside [m].
Span wallAround(double bore);

/// Outer diameter and length of the engine over everything, estimated [m] [own estimate].
double outerDiameter(const design::Design& design);
double overallLength(const design::Design& design);

} // namespace lobewright::draft
