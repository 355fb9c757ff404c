#include "core/track/speeds.h"

#include <cassert>

namespace lobewright::track {

Samples surfaceSpeed(const motion::LiftSamples& lift, double rho, double omega) {
    assert(rho > 0.0);
    return omega * (rho * rho + lift.y1.square()).sqrt();
}

Slip slip(const motion::LiftSamples& lift, double rho, double pitchRadius, double rollerRadius,
          double omega, Flank flank) {
    const Samples atRho = surfaceSpeed(lift, rho, omega);
    return {atRho - surfaceSpeed(lift, pitchRadius, omega),
            sign(flank) * rollerRadius * omega * lift.y1 / (rho * rho + lift.y1.square()).sqrt()};
}

Samples entrainmentSpeed(const motion::LiftSamples& lift, double rho, double pitchRadius,
                         double rollerRadius, double omega, Flank flank) {
    const Samples mean =
        0.5 * (surfaceSpeed(lift, rho, omega) + surfaceSpeed(lift, pitchRadius, omega));
    return mean +
           sign(flank) * omega * rollerRadius * rho * lift.y2 / (rho * rho + lift.y1.square());
}

Samples rollerSpin(const motion::LiftSamples& lift, double pitchRadius, double rollerRadius,
                   double omega) {
    assert(rollerRadius > 0.0);
    return surfaceSpeed(lift, pitchRadius, omega) / rollerRadius;
}

} // namespace lobewright::track
