#include "core/loads/loads.h"

#include "core/loads/engine.h"
#include "core/loads/quadrature.h"
#include "core/loads/torque.h"
#include "core/units.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace lobewright::loads {

namespace {

Samples joined(const Samples& first, const Samples& second) {
    Samples both(first.size() + second.size());
    both << first, second;
    return both;
}

motion::LiftSamples joined(const motion::LiftSamples& first, const motion::LiftSamples& second) {
    return {joined(first.y, second.y), joined(first.y1, second.y1), joined(first.y2, second.y2),
            joined(first.y3, second.y3)};
}

PistonMotion joined(const PistonMotion& first, const PistonMotion& second) {
    return {joined(first.lift, second.lift),           joined(first.path, second.path),
            joined(first.cosine, second.cosine),       joined(first.sine, second.sine),
            joined(first.direction, second.direction), joined(first.slipArm, second.slipArm)};
}

/// The last `count` samples of a motion.
PistonMotion tail(const PistonMotion& motion, Eigen::Index count) {
    const auto last = [count](const Samples& f) { return Samples(f.tail(count)); };
    const motion::LiftSamples& lift = motion.lift;
    return {{last(lift.y), last(lift.y1), last(lift.y2), last(lift.y3)},
            last(motion.path),
            last(motion.cosine),
            last(motion.sine),
            last(motion.direction),
            last(motion.slipArm)};
}

/// Cylinder 1 just before every junction. Gives its pressure over the whole period.
Samples addEdges(Loads& loads, const Samples& evenPressure, const Engine& engine,
                 const Kinematics::Period& period) {
    loads.edgeTheta = period.theta.tail(period.junctions);
    const Samples pressure = engine.pressure(loads.edgeTheta, 0);
    for (const End end : bothEnds) {
        const Samples onPiston = engine.onPiston(end, pressure, loads.edgeTheta, 0);
        loads.edgePiston[end] =
            engine.isPiston(end)
                ? engine.piston(end, tail(period.motion[end], period.junctions), onPiston)
                : standingLoads(period.junctions);
    }
    return joined(evenPressure, pressure);
}

PistonMotion motionOf(const mechanism::OpposedPair& pair, End end,
                      const motion::LiftSamples& lift) {
    const mechanism::Mechanism& mechanism = pair.mechanism();
    return pistonMotion(mechanism.roller, mechanism.pitchRadius, pair.curve(end).stroke(), lift);
}

/// At the nodes that the motion has been kept for, and at others where a flank changes or a burn
/// begins or ends: these move with the speed, and only the pieces around them are divided anew.
void addNodes(Loads& loads, PerEnd<PistonMotion>& motion, const Engine& engine) {
    const mechanism::OpposedPair& pair = engine.inputs.pair;
    const auto& kept = engine.inputs.nodeMotion;
    loads.nodeMotion =
        kept && kept->breaks == engine.inputs.breaks
            ? kept
            : std::make_shared<const NodeMotion>(nodeMotion(pair, engine.inputs.breaks));
    const NodeMotion& whole = *loads.nodeMotion;
    std::vector<double> moving = engine.inputs.movingBreaks;
    for (const FlankChange& change : loads.flankChanges) {
        moving.push_back(change.theta);
    }
    const Division division = dividedAt(whole.nodes, moving);
    Samples weight = whole.nodes.weight;
    for (const std::size_t piece : division.pieces) {
        weight.segment<Quadrature::nodesOfPiece>(
            static_cast<Eigen::Index>(piece * Quadrature::nodesOfPiece)) = 0.0;
    }
    loads.nodes.theta = joined(whole.nodes.theta, division.theta);
    loads.nodes.weight = joined(weight, division.weight);
    loads.nodes.pressure = engine.pressure(loads.nodes.theta, 0);
    for (const End end : pair.pistons()) {
        motion[end] =
            joined(whole.motion[end], motionOf(pair, end, pair.lift(end, division.theta)));
    }
    for (const End end : bothEnds) {
        loads.nodes.piston[end] = engine.piston(
            end, motion[end], engine.onPiston(end, loads.nodes.pressure, loads.nodes.theta, 0));
    }
}

/// Adds one cylinder's work over one period, times `factor`, at the quadrature nodes.
void addWork(Loads& loads, const Engine& engine, const PerEnd<Samples>& pressure,
             const PerEnd<PistonLoads>& piston, double factor, double& moved) {
    const Samples weight = factor * loads.nodes.weight;
    const double area = engine.inputs.pair.pistonArea();
    for (const End end : bothEnds) {
        const PistonLoads& one = piston[end];
        const auto integral = [&weight](const Samples& f) { return (weight * f).sum(); };
        loads.work.gas -= area * integral(pressure[end] * one.lift.y1);
        loads.work.inertia -= integral(one.inertiaForce * one.lift.y1);
        loads.work.shaft += integral(one.torque);
        moved += integral(one.torque.abs());
        loads.losses.ring += integral(one.ringLoss);
        loads.losses.guide += integral(one.guideLoss);
        loads.losses.roller += integral(one.rollingLoss + one.rollerBearingLoss);
        loads.losses.slip += integral(one.slipLoss);
    }
}

void closeWork(Loads& loads, const PerEnd<PistonMotion>& motion, const Engine& engine) {
    const double lobes = engine.inputs.pair.curve(End::inlet).lobes();
    const auto cylinders = static_cast<int>(engine.psi.size());
    double moved = 0.0;
    if (engine.inputs.cylindersDiffer) {
        for (int k = 0; k < cylinders; ++k) {
            // Nodes count from cylinder 1; the same places of cylinder k pass later.
            const double behind = engine.lags[static_cast<std::size_t>(k)];
            const Samples theta = loads.nodes.theta + behind;
            const Samples pressure = engine.pressure(theta, k);
            PerEnd<PistonLoads> piston;
            PerEnd<Samples> onPiston;
            for (const End end : bothEnds) {
                onPiston[end] = engine.onPiston(end, pressure, theta, k);
                // The same places of the track as of cylinder 1.
                piston[end] = engine.piston(end, motion[end], onPiston[end]);
            }
            addWork(loads, engine, onPiston, piston, lobes, moved);
        }
    } else {
        PerEnd<Samples> onPiston;
        for (const End end : bothEnds) {
            onPiston[end] = engine.onPiston(end, loads.nodes.pressure, loads.nodes.theta, 0);
        }
        addWork(loads, engine, onPiston, loads.nodes.piston, lobes * cylinders, moved);
    }
    loads.losses.shaftBearing *= units::turn; // so far the mean torque
    loads.work.shaft -= loads.losses.shaftBearing;
    loads.work.friction = loads.losses.total();
    loads.work.moved = moved;
    const double open = loads.work.shaft - (loads.work.gas - loads.work.friction);
    loads.work.residual = moved > 0.0 ? std::abs(open) / moved : 0.0;
    for (double* loss : {&loads.losses.ring, &loads.losses.guide, &loads.losses.roller,
                         &loads.losses.slip, &loads.losses.shaftBearing}) {
        *loss /= units::turn;
    }
    loads.meanTorque = loads.work.shaft / units::turn;
}

/// The largest value over the samples and the left-hand limits at the junctions.
struct Place {
    Eigen::Index index = 0;
    bool atEdge = false;
};
Place placeOfHighest(const Samples& samples, const Samples& edges) {
    Place place;
    const double best = samples.maxCoeff(&place.index);
    Eigen::Index edge = 0;
    if (edges.size() > 0 && edges.maxCoeff(&edge) > best) {
        place = {edge, true};
    }
    return place;
}

Extremum extremum(const Loads& loads, const Samples& samples, const Samples& edges,
                  const Place& place) {
    return place.atEdge ? Extremum{edges(place.index), loads.edgeTheta(place.index)}
                        : Extremum{samples(place.index), loads.theta(place.index)};
}

Extremum highest(const Loads& loads, const Samples& samples, const Samples& edges) {
    return extremum(loads, samples, edges, placeOfHighest(samples, edges));
}

Extremum lowest(const Loads& loads, const Samples& samples, const Samples& edges) {
    return extremum(loads, samples, edges, placeOfHighest(-samples, -edges));
}

LowestContact lowestContact(const Loads& loads, End end) {
    const PistonLoads& piston = loads.piston[end];
    const PistonLoads& edge = loads.edgePiston[end];
    const Place place = placeOfHighest(-piston.demandedForce, -edge.demandedForce);
    const PistonLoads& there = place.atEdge ? edge : piston;
    return {extremum(loads, piston.demandedForce, edge.demandedForce, place),
            {there.inertiaForce(place.index), there.gasForce(place.index),
             there.ringFriction(place.index)}};
}

/// The guide bracket where friction of the guide adds to the load, 1 elsewhere.
Samples jamBracket(const PistonLoads& piston) {
    return (piston.axialDemand * piston.lift.y1 > 0.0).select(piston.guideBracket, 1.0);
}

void addExtremes(Loads& loads) {
    for (const End end : bothEnds) {
        if (loads.piston[end].contactForce.size() == 0) {
            loads.jamMargin[end] = {1.0, 0.0}; // no piston, in a study
            continue;
        }
        const PistonLoads& piston = loads.piston[end];
        const PistonLoads& edge = loads.edgePiston[end];
        loads.lowestContactForce[end] = lowestContact(loads, end);
        loads.highestContactForce[end] =
            highest(loads, piston.contactForce.abs(), edge.contactForce.abs());
        loads.highestSideForce[end] = highest(loads, piston.sideForce.abs(), edge.sideForce.abs());
        loads.jamMargin[end] = lowest(loads, jamBracket(piston), jamBracket(edge));
    }
}

void addTorqueFigures(Loads& loads) {
    loads.highestTorque = std::max(loads.totalTorque.maxCoeff(), loads.evenTotalTorque.maxCoeff());
    loads.lowestTorque = std::min(loads.totalTorque.minCoeff(), loads.evenTotalTorque.minCoeff());
    loads.peakToPeakTorque = loads.highestTorque - loads.lowestTorque;
    loads.ripple = torqueRipple(loads.highestTorque, loads.lowestTorque, loads.meanTorque);
}

/// `pressure`: of the trace over the period.
PerEnd<ContactSpeeds> speedsOfContact(const Engine& engine, const Kinematics::Period& period,
                                      const gas::GasTrace* trace, const Samples& pressure) {
    PerEnd<ContactSpeeds> result;
    result.exhaust.low = SpeedBound{}; // a head stays where it is at any speed
    const Inputs& inputs = engine.inputs;
    for (const End end : inputs.pair.pistons()) {
        const auto speeds = [&](const Samples& onPiston, const gas::GasTrace* net) {
            return contactSpeeds(inputs.pair, end, engine.setup[end], period.theta,
                                 period.motion[end], onPiston, net);
        };
        if (trace) {
            const NetPressure net = engine.net(end, *trace);
            result[end] = speeds(net.onPiston(pressure, period.theta, 0), &net);
        } else {
            result[end] = speeds(pressure, nullptr);
        }
    }
    return result;
}

void addContactSpeeds(Loads& loads, const Engine& engine, const Kinematics::Period& period,
                      const Samples& pressure) {
    const gas::GasTrace* motored = engine.inputs.motoredTrace;
    loads.contactSpeeds = speedsOfContact(engine, period, engine.inputs.trace, pressure);
    if (motored) {
        loads.contactSpeedsMotored =
            speedsOfContact(engine, period, motored, motored->sample(period.theta, 0).pressure);
    }
}

} // namespace

motion::LiftSamples liftBeforeJunctions(const mechanism::OpposedPair& pair, End end) {
    const std::vector<double>& junctions = pair.junctions();
    const auto count = static_cast<Eigen::Index>(junctions.size());
    motion::LiftSamples lift{Samples(count), Samples(count), Samples(count), Samples(count)};
    for (Eigen::Index i = 0; i < count; ++i) {
        const motion::Lift before =
            pair.curve(end).before(pair.trackAngle(end, junctions[static_cast<std::size_t>(i)]));
        lift.y(i) = before.y;
        lift.y1(i) = before.y1;
        lift.y2(i) = before.y2;
        lift.y3(i) = before.y3;
    }
    return lift;
}

Kinematics::Period motionOverPeriod(const mechanism::OpposedPair& pair, const Samples& even,
                                    const PerEnd<motion::LiftSamples>& lift) {
    const std::vector<double>& junctions = pair.junctions();
    Kinematics::Period period;
    period.junctions = static_cast<Eigen::Index>(junctions.size());
    period.theta = joined(even, Eigen::Map<const Samples>(junctions.data(), period.junctions));
    for (const End end : pair.pistons()) {
        period.motion[end] = motionOf(pair, end, joined(lift[end], liftBeforeJunctions(pair, end)));
    }
    return period;
}

NodeMotion nodeMotion(const mechanism::OpposedPair& pair, std::vector<double> breaks) {
    Quadrature nodes = periodQuadrature(pair, breaks);
    NodeMotion result{std::move(breaks), std::move(nodes), {}};
    for (const End end : pair.pistons()) {
        result.motion[end] = motionOf(pair, end, pair.lift(end, result.nodes.theta));
    }
    return result;
}

Loads solveLoads(const Inputs& inputs) {
    const Engine engine(inputs);
    std::optional<const Kinematics> own;
    if (!inputs.kinematics) {
        own.emplace(kinematics(inputs.pair, inputs.theta));
    }
    const Kinematics& known = own ? *own : *inputs.kinematics;
    Loads loads;
    const Samples evenPressure = addSampled(loads, engine, known);
    const Samples pressure = addEdges(loads, evenPressure, engine, known.period);
    PerEnd<PistonMotion> atNodes;
    addNodes(loads, atNodes, engine);
    closeWork(loads, atNodes, engine);
    addTorqueFigures(loads);
    addExtremes(loads);
    addContactSpeeds(loads, engine, known.period, pressure);
    loads.firing = firing(inputs.pair);
    return loads;
}

} // namespace lobewright::loads
