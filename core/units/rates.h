#pragma once

#include "core/units/unit.h"

/// Rows of the table of units that comparisons of engines need.
namespace lobewright::in {

inline constexpr Unit perSecond{"1/s"};
inline constexpr Unit litrePerSecond{"L/s", 1.0, 1e3};

} // namespace lobewright::in
