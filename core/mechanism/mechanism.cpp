#include "core/mechanism/mechanism.h"

#include "core/units.h"

#include <algorithm>

namespace lobewright::mechanism {

std::vector<double> cylinderAngles(const Mechanism& mechanism) {
    if (mechanism.cylinderAngles) {
        return *mechanism.cylinderAngles;
    }
    std::vector<double> angles;
    angles.reserve(static_cast<std::size_t>(std::max(mechanism.cylinders, 0)));
    for (int k = 0; k < mechanism.cylinders; ++k) {
        angles.push_back(units::turn * k / mechanism.cylinders);
    }
    return angles;
}

} // namespace lobewright::mechanism
