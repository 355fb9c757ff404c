#include "core/loads/torque.h"

#include "core/units.h"

#include <algorithm>
#include <cmath>

namespace lobewright::loads {

std::optional<double> torqueRipple(double highest, double lowest, double mean) {
    const double peak = std::max(std::abs(highest), std::abs(lowest));
    if (!(std::abs(mean) >= 0.01 * peak) || peak == 0.0) {
        return std::nullopt;
    }
    return (highest - lowest) / std::abs(mean);
}

double meanEffectivePressure(const mechanism::OpposedPair& pair, double meanTorque) {
    return units::turn * meanTorque /
           (pair.cyclesPerTurn() * pair.mechanism().cylinders * pair.sweptVolume());
}

Firing firing(const mechanism::OpposedPair& pair) {
    constexpr double sameAngle = 1e-9;
    const std::vector<double> angles = mechanism::cylinderAngles(pair.mechanism());
    Firing result;
    for (const double psi : angles) {
        for (const mechanism::DeadCentres& centres : pair.deadCentres()) {
            for (int lobe = 0; lobe < pair.curve(End::inlet).lobes(); ++lobe) {
                result.angles.push_back(mechanism::wrapped(
                    centres.idc + psi - angles.front() + lobe * pair.period(), units::turn));
            }
        }
    }
    std::sort(result.angles.begin(), result.angles.end());
    std::vector<double> different;
    int together = 0;
    for (const double angle : result.angles) {
        const bool again = !different.empty() && angle - different.back() < sameAngle;
        together = again ? together + 1 : 1;
        result.together = std::max(result.together, together);
        if (!again) {
            different.push_back(angle);
        }
    }
    result.shortestInterval = units::turn;
    for (std::size_t i = 0; i < different.size(); ++i) {
        const double next =
            i + 1 < different.size() ? different[i + 1] : different.front() + units::turn;
        result.shortestInterval = std::min(result.shortestInterval, next - different[i]);
        result.longestInterval = std::max(result.longestInterval, next - different[i]);
    }
    return result;
}

} // namespace lobewright::loads
