#include "core/loads/free_body.h"
#include "core/units.h"

#include <cmath>

namespace lobewright::loads {

Spline defaultSpline(const mechanism::Mechanism& mechanism) {
    Spline spline;
    spline.radius = 0.5 * mechanism.pitchRadius;
    return spline;
}

AdjusterLoads adjusterLoads(const TrackForces& exhaust, double helixLead, const Spline& spline) {
    const double perRadian = helixLead / units::turn; // axial travel per radian
    AdjusterLoads loads;
    // Virtual work: a forward turn moves the track outward by perRadian.
    loads.torque = -(exhaust.torque + perRadian * exhaust.thrust);
    if (helixLead != 0.0) {
        loads.axialForce = -(exhaust.thrust + exhaust.torque / perRadian);
    }
    const double slope = std::atan(perRadian / spline.radius);
    const Samples tangential = exhaust.torque / spline.radius;
    const Samples along = exhaust.thrust * std::sin(slope) + tangential * std::cos(slope);
    const Samples normal = exhaust.thrust * std::cos(slope) - tangential * std::sin(slope);
    loads.holdingMargin = spline.friction * normal.abs() - along.abs();
    loads.holdsItself = (loads.holdingMargin >= 0.0).all();
    return loads;
}

} // namespace lobewright::loads
