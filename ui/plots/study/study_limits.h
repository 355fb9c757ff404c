#pragma once

#include "core/study/operating_points.h"
#include "ui/base/shown.h"

#include <QString>

namespace lobewright::ui {

/// Why a point of a study could not be run: it was not solved, for the reason that it gives itself;
/// the roller lifts off; or a limit of the design errs.
/// Empty: nothing that the figures of the study tell speaks against it. `names`: of the point's
/// values; `speedShare`: its shaft speed over that of the solution.
QString beyondLimits(const solution::Solution& solution, const std::vector<std::string>& names,
                     const study::Point& point, double speedShare);

} // namespace lobewright::ui
