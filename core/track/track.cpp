#include "core/track/track.h"

#include <cassert>
#include <cmath>
#include <limits>

namespace lobewright::track {
namespace {

/// Square of D.
Samples pathSquared(const motion::LiftSamples& lift, double rho) {
    assert(rho > 0.0);
    return rho * rho + lift.y1.square();
}

double pathSquared(const motion::Lift& lift, double rho) {
    assert(rho > 0.0);
    return rho * rho + lift.y1 * lift.y1;
}

} // namespace

Samples contactAngle(const motion::LiftSamples& lift, double rho) {
    assert(rho > 0.0);
    return (lift.y1 / rho).atan();
}

double contactAngle(const motion::Lift& lift, double rho) {
    assert(rho > 0.0);
    return std::atan(lift.y1 / rho);
}

Samples pitchCurvature(const motion::LiftSamples& lift, double rho) {
    const Samples d2 = pathSquared(lift, rho);
    return -rho * lift.y2 / (d2 * d2.sqrt());
}

double pitchCurvature(const motion::Lift& lift, double rho) {
    const double d2 = pathSquared(lift, rho);
    return -rho * lift.y2 / (d2 * std::sqrt(d2));
}

Samples relativeRadius(const motion::LiftSamples& lift, double rho, double rollerRadius,
                       Flank flank) {
    assert(rollerRadius > 0.0);
    const double r = rollerRadius;
    const Samples d2 = pathSquared(lift, rho);
    const Samples offset2 = r * r * lift.y1.square() / d2; // (r·sin α)²
    const Samples bend = sign(flank) * r * rho * lift.y2 / d2.sqrt();
    return r * (d2 - offset2 + bend) / (d2 + offset2);
}

double relativeRadius(const motion::Lift& lift, double rho, double rollerRadius, Flank flank) {
    assert(rollerRadius > 0.0);
    const double r = rollerRadius;
    const double d2 = pathSquared(lift, rho);
    const double offset2 = r * r * lift.y1 * lift.y1 / d2;
    const double bend = sign(flank) * r * rho * lift.y2 / std::sqrt(d2);
    return r * (d2 - offset2 + bend) / (d2 + offset2);
}

Samples planarRelativeRadius(const motion::LiftSamples& lift, double rho, double rollerRadius,
                             Flank flank) {
    assert(rollerRadius > 0.0);
    return rollerRadius * (1.0 - sign(flank) * rollerRadius * pitchCurvature(lift, rho));
}

Samples areaFactor(const motion::LiftSamples& lift, double rho, double rollerRadius, Flank flank) {
    assert(rollerRadius > 0.0);
    const double r = rollerRadius;
    const Samples d2 = pathSquared(lift, rho);
    const Samples d = d2.sqrt();
    return d + sign(flank) * r * rho * lift.y2 / d2 - r * r * lift.y1.square() / (d2 * d);
}

double rollerRadiusLimit(const motion::Lift& lift, double rho, Flank flank) {
    const double d2 = pathSquared(lift, rho);
    const double bend = sign(flank) * rho * lift.y2;
    const double root = std::hypot(bend, 2.0 * lift.y1 * std::sqrt(d2));
    // The form with a difference would lose all digits where y' is small and the bend positive.
    if (bend > 0.0) {
        const double slope2 = 2.0 * lift.y1 * lift.y1;
        return slope2 == 0.0 ? std::numeric_limits<double>::infinity()
                             : (root + bend) * std::sqrt(d2) / slope2;
    }
    return root - bend == 0.0 ? std::numeric_limits<double>::infinity()
                              : 2.0 * d2 * std::sqrt(d2) / (root - bend);
}

} // namespace lobewright::track
