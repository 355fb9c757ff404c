#pragma once

#include <cmath>

namespace lobewright::editing {

/// Rounds away the dust of adding and sharing spans and lifts, so that files and fields stay
/// readable: nine decimals, far inside what the sum of spans may be off. Divided, not multiplied by
/// 1e-9, which no double holds exactly and would leave dust of its own.
inline double tidy(double value) {
    return std::round(value * 1e9) / 1e9;
}

} // namespace lobewright::editing
