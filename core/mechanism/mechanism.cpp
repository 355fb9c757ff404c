#include "core/mechanism/mechanism.h"

#include "core/units.h"

namespace lobewright::mechanism {

std::vector<double> cylinderAngles(const Mechanism& mechanism) {
    if (mechanism.cylinderAngles) {
        return *mechanism.cylinderAngles;
    }
    std::vector<double> angles;
    for (int k = 0; k < mechanism.cylinders; ++k) {
        angles.push_back(units::turn * k / mechanism.cylinders);
    }
    return angles;
}

} // namespace lobewright::mechanism
