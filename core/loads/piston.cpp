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

// Loops of a few arrays each: the compiler takes four samples at once where it can tell that no two
// of them overlap.

/// Inertia, gas, rings and what they ask of the track.
LW_WIDE void addAxialForces(PistonLoads& loads, const PistonSetup& setup,
                            const PistonMotion& motion, const Samples& pressure) {
    const Eigen::Index count = pressure.size();
    const double omega = setup.omega;
    const double mass = setup.mass * omega * omega;
    const double area = pistonArea(setup.bore);
    const double rim = units::pi * setup.bore;
    const double *p = pressure.data(), *y1 = motion.lift.y1.data(), *y2 = motion.lift.y2.data(),
                 *sign = motion.direction.data();
    double *inertia = loads.inertiaForce.data(), *gas = loads.gasForce.data(),
           *rings = loads.ringFriction.data(), *demand = loads.axialDemand.data();
    for (Eigen::Index i = 0; i < count; ++i) {
        rings[i] = 0.0;
    }
    for (const PistonRing& ring : setup.friction.rings) {
        for (Eigen::Index i = 0; i < count; ++i) {
            rings[i] +=
                ofRing(ring, setup.friction, omega * y1[i], p[i] - setup.underPistonPressure);
        }
    }
    for (Eigen::Index i = 0; i < count; ++i) {
        rings[i] *= rim * sign[i];
        inertia[i] = mass * y2[i];
        gas[i] = area * (p[i] - setup.underPistonPressure);
        demand[i] = inertia[i] + gas[i] + rings[i];
    }
}

/// The contact force and its parts, the guide's friction among them.
LW_WIDE void addContactForces(PistonLoads& loads, const PistonSetup& setup,
                              const PistonMotion& motion) {
    const Eigen::Index count = loads.axialDemand.size();
    const double guide = effectiveGuideFriction(setup.friction, setup.roller.radius, setup.bore);
    const double least = setup.closedTrack ? -std::numeric_limits<double>::infinity() : 0.0;
    const double *cosine = motion.cosine.data(), *sine = motion.sine.data(),
                 *sign = motion.direction.data(), *demand = loads.axialDemand.data();
    double *bracket = loads.guideBracket.data(), *demanded = loads.demandedForce.data(),
           *contact = loads.contactForce.data();
    for (Eigen::Index i = 0; i < count; ++i) {
        const double way = demand[i] > 0.0 ? 1.0 : demand[i] < 0.0 ? -1.0 : 0.0;
        bracket[i] = cosine[i] - guide * std::fabs(sine[i]) * way * sign[i];
        demanded[i] = bracket[i] > 0.0 ? demand[i] / bracket[i] : 0.0;
        contact[i] = demanded[i] > least ? demanded[i] : least;
    }
    double *thrust = loads.trackThrust.data(), *side = loads.sideForce.data(),
           *friction = loads.guideFriction.data();
    for (Eigen::Index i = 0; i < count; ++i) {
        thrust[i] = contact[i] * cosine[i];
        side[i] = contact[i] * sine[i];
        friction[i] = guide * std::fabs(side[i]) * sign[i];
    }
}

/// Torques that friction takes.
LW_WIDE void addLosses(PistonLoads& loads, const Friction& friction, const PistonMotion& motion) {
    const Eigen::Index count = loads.contactForce.size();
    const double *y1 = motion.lift.y1.data(), *rings = loads.ringFriction.data(),
                 *guide = loads.guideFriction.data();
    double *ringLoss = loads.ringLoss.data(), *guideLoss = loads.guideLoss.data();
    for (Eigen::Index i = 0; i < count; ++i) {
        ringLoss[i] = std::fabs(rings[i] * y1[i]);
        guideLoss[i] = std::fabs(guide[i] * y1[i]);
    }
    const double *path = motion.path.data(), *arm = motion.slipArm.data(),
                 *contact = loads.contactForce.data();
    double *rolling = loads.rollingLoss.data(), *bearing = loads.rollerBearingLoss.data(),
           *slip = loads.slipLoss.data();
    for (Eigen::Index i = 0; i < count; ++i) {
        const double load = std::fabs(contact[i]);
        rolling[i] = friction.rolling * load * path[i];
        // Mean diameter of the roller's bearing taken as the roller's radius, so it cancels.
        bearing[i] = 0.5 * friction.rollerBearing * load * path[i];
        slip[i] = friction.slip * load * arm[i];
    }
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
    addLosses(loads, setup.friction, motion);
    loads.torque = -setup.pitchRadius * loads.sideForce - loads.rollingLoss -
                   loads.rollerBearingLoss - loads.slipLoss;
    return loads;
}

} // namespace lobewright::loads
