#pragma once

#include "core/loads/loads.h"

/// What a torque curve says.
namespace lobewright::loads {

/// (max − min)/|mean| of a torque curve; none where |mean| < 1 % of the largest |torque|.
std::optional<double> torqueRipple(double highest, double lowest, double mean);

} // namespace lobewright::loads
