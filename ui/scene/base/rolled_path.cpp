#include "ui/scene/base/rolled_path.h"

#include "core/units.h"

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

namespace {
constexpr int steps = 720;
}

// Trapezoidal.
RolledPath::RolledPath(const motion::LiftCurve& curve, double pitchRadius) : path_(steps + 1, 0.0) {
    const double step = units::turn / steps;
    double before = std::hypot(pitchRadius, curve.at(0.0).y1);
    for (int i = 1; i <= steps; ++i) {
        const double now = std::hypot(pitchRadius, curve.at(i * step).y1);
        const auto k = static_cast<std::size_t>(i);
        path_[k] = path_[k - 1] + 0.5 * step * (before + now);
        before = now;
    }
}

double RolledPath::at(double phi) const {
    if (path_.size() < 2)
        return 0.0;
    const double turns = phi / units::turn;
    const double place = (turns - std::floor(turns)) * steps;
    const auto i = std::min(static_cast<std::size_t>(place), path_.size() - 2);
    return path_[i] + (place - static_cast<double>(i)) * (path_[i + 1] - path_[i]);
}

} // namespace lobewright::ui
