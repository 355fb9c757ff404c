#include "core/solution/figures/thrust_bearing.h"

#include "core/contact/bearing_life.h"
#include "core/solution/pipeline/angles.h"
#include "core/units.h"

#include <cmath>

namespace lobewright::solution {

ThrustBearingDuty thrustBearingDuty(const StageResults& results) {
    constexpr double exponent = contact::rollerLifeExponent;
    const Samples thrust = results.loads.track.inlet.thrust.abs();
    ThrustBearingDuty duty;
    duty.equivalentLoad =
        std::pow(meanOverTurn(thrust.pow(exponent), results.theta), 1.0 / exponent);
    const auto& rating = results.design.thrustBearing.dynamicRating;
    if (rating && duty.equivalentLoad > 0.0) {
        const double turns = 1e6 * contact::ratingLife(*rating, duty.equivalentLoad);
        duty.life = turns * units::turn / results.omega();
    }
    return duty;
}

} // namespace lobewright::solution
