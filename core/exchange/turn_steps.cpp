#include "core/exchange/turn_steps.h"

#include "core/units.h"

#include <fmt/format.h>

#include <cmath>
#include <utility>

LW_TEXTS_OF(Core)

namespace lobewright::exchange {

Result<std::vector<double>> turnSteps(double step) {
    constexpr double least = 0.001 * units::degree, most = 90.0 * units::degree;
    constexpr double rounding = 1e-9; // of a step given in degrees
    if (!(step >= least * (1.0 - rounding) && step <= most * (1.0 + rounding))) {
        return Problem{"/step_deg",
                       Message(LW_TEXT("step is %1; it must lie within 0.001° and 90°"),
                               Amount(step, in::degrees, 6))};
    }
    const auto count = static_cast<std::size_t>(std::ceil(units::turn / step * (1.0 - rounding)));
    std::vector<double> angles(count);
    for (std::size_t i = 0; i < count; ++i) {
        angles[i] = static_cast<double>(i) * step;
    }
    return angles;
}

Result<std::vector<double>> closedTurn(double step) {
    auto angles = turnSteps(step);
    if (!angles) {
        return angles;
    }
    std::vector<double> closed = std::move(angles).value();
    closed.push_back(units::turn);
    return closed;
}

} // namespace lobewright::exchange
