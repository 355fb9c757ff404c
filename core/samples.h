#pragma once

#include <Eigen/Core>

namespace lobewright {

/// One quantity at many angles: shape (samples).
using Samples = Eigen::ArrayXd;

} // namespace lobewright
