#pragma once

#include "core/motion/pattern.h"

#include <cstddef>

namespace lobewright::motion {

/// How much y'' at a knot changes for 1 m more lift of that knot, all other knots and prescribed
/// slopes held [1/rad²]. A spline is linear in its lifts, so the rate holds for any change; it is
/// negative. Shape: as LiftCurve::make accepts for this many lobes; `knot` < number of knots.
double curvaturePerLift(const KnotShape& shape, int lobes, std::size_t knot);

} // namespace lobewright::motion
