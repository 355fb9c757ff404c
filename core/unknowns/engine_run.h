#pragma once

#include "core/unknowns/ensemble.h"

namespace lobewright::unknowns {

/// Value and place of the highest of some points: a parabola through it and its neighbours; at an
/// end that end. Absent where a value is missing (NaN) beside the highest, or all are.
struct Peak {
    double place = 0.0, value = 0.0;
};
std::optional<Peak> peakOf(const std::vector<double>& places, const std::vector<double>& values);

} // namespace lobewright::unknowns
