#pragma once

#include "core/solution/solution.h"
#include "core/study/operating_points.h"

namespace lobewright::study {

/// Groups of figures that beyondLimits() judges by.
inline constexpr const char* judgedGroups[] = {"performance", "loads", "contact"};

/// Why an engine that was solved could not be run like this: a roller lifts off, or a limit of the
/// design is passed. The solution must hold the judged groups; figures that are not available judge
/// nothing. Empty: nothing speaks against it.
Message beyondLimits(const solution::Solution& solved);

/// The same of a point of a study, which may not have been solved at all.
Message speaksAgainst(const Point& point);

} // namespace lobewright::study
