#pragma once

// The second calls isnan() by the global name that the first gives it.
// clang-format off
#include <math.h> // NOLINT
#include <boost/math/interpolators/pchip.hpp>
// clang-format on
