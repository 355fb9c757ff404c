#include "core/loads/lift_off.h"

#include "core/units.h"

#include <boost/math/tools/minima.hpp>

#include <algorithm>
#include <cmath>
#include <limits>
#include <utility>

namespace lobewright::loads {

namespace {

/// Accelerations nearer to zero than this share of the largest count as none.
constexpr double noAcceleration = 1e-9;

} // namespace

LiftOff liftOff(const mechanism::OpposedPair& pair, End end, const PistonSetup& setup,
                const Samples& theta, const motion::LiftSamples& lift, const Samples& pressure,
                const gas::GasTrace* trace) {
    const Samples gauge = pressure - setup.underPistonPressure;
    const Samples holding = pair.pistonArea() * gauge +
                            ringFriction(setup.friction, setup.bore, setup.omega * lift.y1, gauge) *
                                motionSign(lift.y1, setup.stroke);
    const double negligible = noAcceleration * lift.y2.abs().maxCoeff();
    const Samples square = (lift.y2 < -negligible)
                               .select(-holding / (setup.mass * lift.y2.min(-1e-300)),
                                       std::numeric_limits<double>::infinity());
    Eigen::Index lowest = 0;
    const double best = square.minCoeff(&lowest);
    if (!std::isfinite(best)) {
        return {};
    }
    if (best <= 0.0) {
        return {0.0, theta(lowest)};
    }
    const auto at = [&](double angle) {
        const motion::Lift here = pair.lift(end, angle);
        if (here.y2 >= -negligible) {
            return std::numeric_limits<double>::max();
        }
        const double p = trace ? trace->pressure(angle, 0) : setup.underPistonPressure;
        const double inertia = setup.mass * setup.omega * setup.omega * here.y2;
        return -(axialDemand(setup, here, p) - inertia) / (setup.mass * here.y2);
    };
    const double step = units::degree;
    constexpr int digits = 30; // a minimum cannot be placed better in double precision
    const auto refined = boost::math::tools::brent_find_minima(at, theta(lowest) - step,
                                                               theta(lowest) + step, digits);
    const auto [angle, value] = refined.second < best ? refined : std::pair(theta(lowest), best);
    return {std::sqrt(std::max(value, 0.0)), angle};
}

} // namespace lobewright::loads
