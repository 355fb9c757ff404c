#include "core/loads/piston.h"

#include "core/units.h"
#include "core/wide.h"

#include <boost/math/quadrature/gauss.hpp>

#include <array>
#include <cmath>
#include <limits>

namespace lobewright::loads {

namespace {

/// Slopes below this share of the stroke per radian are dwells that rounding has touched.
constexpr double restingSlope = 1e-12;
/// A piston this near to its stop [m] counts as standing: a gap between roller and track could not
/// open further than film and elastic approach take up [own estimate].
constexpr double restingTravel = 1e-6;

/// −1, 0 or 1; y'²/(2·y'') is the travel in which the present acceleration stops the piston.
double signOfMotion(double y1, double y2, double stroke) {
    const bool moves =
        std::abs(y1) > restingSlope * stroke && y1 * y1 > 2.0 * restingTravel * std::abs(y2);
    return moves ? (y1 > 0.0 ? 1.0 : -1.0) : 0.0;
}

double pistonArea(double bore) {
    return units::pi * bore * bore / 4.0;
}

/// Friction of a ring by length of its rim [N/m]: f·p with p = q + c·Δp and duty D = η·|ẏ|/(h·p),
/// written without dividing by p.
inline double ofRing(const PistonRing& ring, const Friction& friction, double speed,
                     double gaugePressure) {
    const double contact = ring.tensionPressure + ring.gasFactor * std::max(gaugePressure, 0.0);
    const double duty = friction.linerViscosity * std::abs(speed) / ring.height;
    return ring.height *
           (friction.ringHydrodynamic * std::sqrt(duty * contact) +
            friction.ringBoundary * std::max(contact - duty / friction.ringCriticalDuty, 0.0));
}

} // namespace

PistonSetup pistonSetup(const mechanism::OpposedPair& pair, End end, const Friction& friction,
                        double omega, double underPistonPressure) {
    const mechanism::Mechanism& mechanism = pair.mechanism();
    PistonSetup setup;
    setup.omega = omega;
    setup.mass = mechanism.pistonMass[end];
    setup.bore = mechanism.bore;
    setup.stroke = pair.curve(end).stroke();
    setup.pitchRadius = mechanism.pitchRadius;
    setup.underPistonPressure = underPistonPressure;
    setup.closedTrack = mechanism.closedTrack;
    setup.roller = mechanism.roller;
    setup.friction = friction;
    return setup;
}

double effectiveGuideFriction(const Friction& friction, double rollerRadius, double bore) {
    const double overhang = friction.guideOverhang.value_or(rollerRadius);
    const double length = friction.guideLength.value_or(bore);
    return friction.guide * (1.0 + 2.0 * overhang / length);
}

Samples motionSign(const Samples& y1, const Samples& y2, double stroke) {
    return y1.binaryExpr(
        y2, [stroke](double slope, double bend) { return signOfMotion(slope, bend, stroke); });
}

double ringFriction(const Friction& friction, double bore, double speed, double gaugePressure) {
    double sum = 0.0;
    for (const PistonRing& ring : friction.rings) {
        sum += ofRing(ring, friction, speed, gaugePressure);
    }
    return units::pi * bore * sum;
}

LW_WIDE Samples ringFriction(const Friction& friction, double bore, const Samples& speed,
                             const Samples& gaugePressure) {
    Samples sum = Samples::Zero(speed.size());
    for (const PistonRing& ring : friction.rings) {
        for (Eigen::Index i = 0; i < sum.size(); ++i) {
            sum[i] += ofRing(ring, friction, speed[i], gaugePressure[i]);
        }
    }
    return units::pi * bore * sum;
}

Samples meanSlipArm(const track::Roller& roller, double pitchRadius, const Samples& y1) {
    using Rule = boost::math::quadrature::gauss<double, 4>;
    const double half = 0.5 * roller.loadedWidth();
    const Samples square = y1.square();
    const Samples middle = (pitchRadius * pitchRadius + square).sqrt();
    const double r2 = roller.radius * roller.radius;
    Samples sum = Samples::Zero(y1.size());
    for (const double side : {-1.0, 1.0}) {
        for (std::size_t i = 0; i < Rule::abscissa().size(); ++i) {
            for (const double mirror : {-1.0, 1.0}) {
                const double share = 0.5 * (1.0 + mirror * Rule::abscissa()[i]);
                const double rho = pitchRadius + side * half * share;
                const Samples d2 = rho * rho + square;
                sum += 0.25 * Rule::weights()[i] *
                       ((d2.sqrt() - middle).square() + r2 * square / d2).sqrt();
            }
        }
    }
    return sum;
}

PistonLoads standingLoads(Eigen::Index samples) {
    const Samples none = Samples::Zero(samples);
    PistonLoads loads;
    loads.lift = {none, none, none, none};
    for (const auto part : pistonParts) {
        loads.*part = none;
    }
    loads.guideBracket = Samples::Ones(samples); // nothing to jam
    return loads;
}

AxialShares axialShares(const PistonSetup& setup, const motion::Lift& lift, double pressure) {
    const double gauge = pressure - setup.underPistonPressure;
    const double sign = signOfMotion(lift.y1, lift.y2, setup.stroke);
    const double rings =
        sign == 0.0 ? 0.0 : ringFriction(setup.friction, setup.bore, setup.omega * lift.y1, gauge);
    return {setup.mass * setup.omega * setup.omega * lift.y2, gauge * pistonArea(setup.bore),
            rings * sign};
}

double axialDemand(const PistonSetup& setup, const motion::Lift& lift, double pressure) {
    return axialShares(setup, lift, pressure).total();
}

Samples pressureAngle(const Samples& y1, double pitchRadius) {
    return (y1 / pitchRadius).atan();
}

PistonMotion pistonMotion(const track::Roller& roller, double pitchRadius, double stroke,
                          const motion::LiftSamples& lift) {
    PistonMotion motion;
    motion.lift = lift;
    motion.path = (pitchRadius * pitchRadius + lift.y1.square()).sqrt();
    motion.cosine = pitchRadius / motion.path;
    motion.sine = lift.y1 / motion.path;
    motion.direction = motionSign(lift.y1, lift.y2, stroke);
    motion.slipArm = meanSlipArm(roller, pitchRadius, lift.y1);
    return motion;
}

namespace {

/// One array at a time from a few others: the compiler then takes four samples at once.
template <class Value>
void fill(Samples& samples, Value&& value) {
    double* const to = samples.data();
    const Eigen::Index count = samples.size();
    for (Eigen::Index i = 0; i < count; ++i) {
        to[i] = value(i);
    }
}

/// Inertia, gas, rings and what they ask of the track.
LW_WIDE void addAxialForces(PistonLoads& loads, const PistonSetup& setup,
                            const PistonMotion& motion, const Samples& pressure) {
    using Index = Eigen::Index;
    const double omega = setup.omega, under = setup.underPistonPressure;
    const double mass = setup.mass * omega * omega;
    const double area = pistonArea(setup.bore), rim = units::pi * setup.bore;
    const double *p = pressure.data(), *y1 = motion.lift.y1.data(), *y2 = motion.lift.y2.data(),
                 *sign = motion.direction.data();
    fill(loads.inertiaForce, [=](Index i) { return mass * y2[i]; });
    fill(loads.gasForce, [=](Index i) { return area * (p[i] - under); });
    double* const rings = loads.ringFriction.data();
    fill(loads.ringFriction, [](Index) { return 0.0; });
    const Friction& friction = setup.friction;
    for (const PistonRing one : friction.rings) {
        fill(loads.ringFriction, [=, &friction](Index i) {
            return rings[i] + ofRing(one, friction, omega * y1[i], p[i] - under);
        });
    }
    fill(loads.ringFriction, [=](Index i) { return rim * sign[i] * rings[i]; });
    const double *inertia = loads.inertiaForce.data(), *gas = loads.gasForce.data();
    fill(loads.axialDemand, [=](Index i) { return inertia[i] + gas[i] + rings[i]; });
}

/// The contact force and its parts, the guide's friction among them.
LW_WIDE void addContactForces(PistonLoads& loads, const PistonSetup& setup,
                              const PistonMotion& motion) {
    using Index = Eigen::Index;
    const double guide = effectiveGuideFriction(setup.friction, setup.roller.radius, setup.bore);
    const double least = setup.closedTrack ? -std::numeric_limits<double>::max() : 0.0;
    const double *cosine = motion.cosine.data(), *sine = motion.sine.data(),
                 *sign = motion.direction.data(), *demand = loads.axialDemand.data();
    fill(loads.guideBracket, [=](Index i) {
        const double way = demand[i] > 0.0 ? 1.0 : demand[i] < 0.0 ? -1.0 : 0.0;
        return cosine[i] - guide * std::fabs(sine[i]) * way * sign[i];
    });
    const double* bracket = loads.guideBracket.data();
    fill(loads.demandedForce, [=](Index i) {
        const double force = demand[i] / bracket[i];
        return bracket[i] > 0.0 ? force : 0.0;
    });
    const double *demanded = loads.demandedForce.data(), *contact = loads.contactForce.data();
    fill(loads.contactForce, [=](Index i) { return demanded[i] > least ? demanded[i] : least; });
    fill(loads.trackThrust, [=](Index i) { return contact[i] * cosine[i]; });
    fill(loads.sideForce, [=](Index i) { return contact[i] * sine[i]; });
    const double* side = loads.sideForce.data();
    fill(loads.guideFriction, [=](Index i) { return guide * std::fabs(side[i]) * sign[i]; });
}

/// Torques that friction takes, and what is left for the shaft.
LW_WIDE void addTorque(PistonLoads& loads, const PistonSetup& setup, const PistonMotion& motion) {
    using Index = Eigen::Index;
    const double *y1 = motion.lift.y1.data(), *rings = loads.ringFriction.data(),
                 *guide = loads.guideFriction.data();
    fill(loads.ringLoss, [=](Index i) { return std::fabs(rings[i] * y1[i]); });
    fill(loads.guideLoss, [=](Index i) { return std::fabs(guide[i] * y1[i]); });
    const double *path = motion.path.data(), *arm = motion.slipArm.data(),
                 *contact = loads.contactForce.data();
    const double onTrack = setup.friction.rolling, across = setup.friction.slip;
    // Mean diameter of the roller's bearing taken as the roller's radius, so it cancels.
    const double inRoller = 0.5 * setup.friction.rollerBearing;
    fill(loads.rollingLoss, [=](Index i) { return onTrack * std::fabs(contact[i]) * path[i]; });
    fill(loads.rollerBearingLoss,
         [=](Index i) { return inRoller * std::fabs(contact[i]) * path[i]; });
    fill(loads.slipLoss, [=](Index i) { return across * std::fabs(contact[i]) * arm[i]; });
    const double radius = setup.pitchRadius;
    const double *side = loads.sideForce.data(), *rolling = loads.rollingLoss.data(),
                 *bearing = loads.rollerBearingLoss.data(), *slip = loads.slipLoss.data();
    fill(loads.torque,
         [=](Index i) { return -radius * side[i] - rolling[i] - bearing[i] - slip[i]; });
}

} // namespace

PistonLoads pistonLoads(const PistonSetup& setup, const motion::LiftSamples& lift,
                        const Samples& pressure) {
    PistonLoads loads = pistonLoads(
        setup, pistonMotion(setup.roller, setup.pitchRadius, setup.stroke, lift), pressure);
    loads.pressureAngle = pressureAngle(lift.y1, setup.pitchRadius);
    return loads;
}

PistonLoads pistonLoads(const PistonSetup& setup, const PistonMotion& motion,
                        const Samples& pressure) {
    PistonLoads loads;
    loads.lift = motion.lift;
    for (const auto part : pistonParts) {
        if (part != &PistonLoads::pressureAngle) {
            (loads.*part).resize(pressure.size());
        }
    }
    addAxialForces(loads, setup, motion, pressure);
    addContactForces(loads, setup, motion);
    addTorque(loads, setup, motion);
    return loads;
}

} // namespace lobewright::loads
