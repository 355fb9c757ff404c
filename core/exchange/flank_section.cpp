#include "core/exchange/flank_section.h"

#include <cassert>
#include <cmath>

namespace lobewright::exchange {

namespace {

using std::sqrt;

/// ρ² from ρ² + r²·y'²/(ρ² + y'²) = s².
template <class T>
T positionSquared(const T& slope2, double radius, double rollerRadius) {
    const T half = radius * radius - slope2;
    const double excess = radius * radius - rollerRadius * rollerRadius;
    return 0.5 * (half + sqrt(half * half + 4.0 * excess * slope2));
}

} // namespace

Section section(const FlankForm& form, double phi, double radius, Limit limit) {
    const motion::Lift lift = limit == Limit::after ? form.curve.at(phi) : form.curve.before(phi);
    const double r = form.rollerRadius;
    const Jet y{lift.y, lift.y1, lift.y2}, slope{lift.y1, lift.y2, lift.y3};
    const Jet slope2 = slope * slope;
    const Jet rho2 = positionSquared(slope2, radius, r);
    assert(rho2.value > 0.0);
    const Jet rho = sqrt(rho2), path = sqrt(rho2 + slope2);
    const double side = track::sign(form.flank) * r;
    const Jet beta{form.placement.polarAngle(phi), -1.0, 0.0};
    return {beta - atan(side * slope / (path * rho)), y - side * rho / path, rho};
}

SpacePoint spacePoint(const FlankForm& form, double phi, double radius, Limit limit) {
    const Section at = section(form, phi, radius, limit);
    const Jet x = radius * cos(at.angle), y = radius * sin(at.angle);
    const double up = form.placement.end == End::inlet ? 1.0 : -1.0;
    return {{x.value, y.value, form.placement.axial(at.height.value)},
            {x.first, y.first, up * at.height.first},
            {x.second, y.second, up * at.height.second}};
}

Eigen::Vector3d normal(const FlankForm& form, double phi, double radius) {
    const double slope = form.curve.at(phi).y1;
    const double rho = contactPosition(slope, radius, form.rollerRadius);
    const double side = track::sign(form.flank) / std::hypot(rho, slope);
    const double beta = form.placement.polarAngle(phi);
    const double up = form.placement.end == End::inlet ? 1.0 : -1.0;
    return {-side * slope * std::sin(beta), side * slope * std::cos(beta), up * side * rho};
}

double contactDistance(double slope, double rho, double rollerRadius) {
    return std::hypot(rho, rollerRadius * slope / std::hypot(rho, slope));
}

double contactPosition(double slope, double radius, double rollerRadius) {
    return std::sqrt(positionSquared(slope * slope, radius, rollerRadius));
}

double smallestSection(double steepestSlope, double rollerRadius) {
    const double slope = std::abs(steepestSlope);
    return slope >= rollerRadius ? rollerRadius : std::sqrt(slope * (2.0 * rollerRadius - slope));
}

} // namespace lobewright::exchange
