#pragma once

#include "core/solution/solution.h"
#include "core/study/operating_points.h"

namespace lobewright::study {

/// Why an engine that was solved could not be run like this: a roller lifts off, or a limit of the
/// design errs. Judges by the figures that there are; empty: nothing speaks against it.
Message beyondLimits(const solution::Solution& solved);

/// The same of a point of a study, which may not have been solved at all.
Message speaksAgainst(const Point& point);

} // namespace lobewright::study
