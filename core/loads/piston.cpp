#include "core/loads/piston.h"

#include "core/units.h"
#include "core/wide.h"

#include <boost/math/quadrature/gauss.hpp>

#include <array>
#include <cmath>

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

PistonLoads pistonLoads(const PistonSetup& setup, const motion::LiftSamples& lift,
                        const Samples& pressure) {
    PistonLoads loads = pistonLoads(
        setup, pistonMotion(setup.roller, setup.pitchRadius, setup.stroke, lift), pressure);
    loads.pressureAngle = pressureAngle(lift.y1, setup.pitchRadius);
    return loads;
}

PistonLoads pistonLoads(const PistonSetup& setup, const PistonMotion& motion,
                        const Samples& pressure) {
    const motion::LiftSamples& lift = motion.lift;
    const double radius = setup.pitchRadius;
    const double omega = setup.omega;
    const Friction& friction = setup.friction;
    const double guide = effectiveGuideFriction(friction, setup.roller.radius, setup.bore);
    const Samples gauge = pressure - setup.underPistonPressure;
    const Samples& sign = motion.direction;

    PistonLoads loads;
    loads.lift = lift;
    loads.inertiaForce = setup.mass * omega * omega * lift.y2;
    loads.gasForce = pistonArea(setup.bore) * gauge;
    loads.ringFriction = ringFriction(friction, setup.bore, omega * lift.y1, gauge) * sign;
    loads.axialDemand = loads.inertiaForce + loads.gasForce + loads.ringFriction;
    loads.guideBracket =
        motion.cosine - guide * motion.sine.abs() * loads.axialDemand.sign() * sign;
    loads.demandedForce =
        (loads.guideBracket > 0.0).select(loads.axialDemand / loads.guideBracket, 0.0);
    loads.contactForce =
        setup.closedTrack ? loads.demandedForce : Samples(loads.demandedForce.max(0.0));
    const Samples magnitude = loads.contactForce.abs();
    loads.trackThrust = loads.contactForce * motion.cosine;
    loads.sideForce = loads.contactForce * motion.sine;
    loads.guideFriction = guide * loads.sideForce.abs() * sign;
    loads.ringLoss = (loads.ringFriction * lift.y1).abs();
    loads.guideLoss = (loads.guideFriction * lift.y1).abs();
    loads.rollingLoss = friction.rolling * magnitude * motion.path;
    // Mean diameter of the roller's bearing taken as the roller's radius, so it cancels.
    loads.rollerBearingLoss = 0.5 * friction.rollerBearing * magnitude * motion.path;
    loads.slipLoss = friction.slip * magnitude * motion.slipArm;
    loads.torque =
        -radius * loads.sideForce - loads.rollingLoss - loads.rollerBearingLoss - loads.slipLoss;
    return loads;
}

} // namespace lobewright::loads
