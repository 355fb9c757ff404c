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

/// Cylinder 1 just before every junction.
void addEdges(Loads& loads, OnePeriod& period, const Engine& engine) {
    const mechanism::OpposedPair& pair = engine.inputs.pair;
    const std::vector<double>& junctions = pair.junctions();
    const auto count = static_cast<Eigen::Index>(junctions.size());
    loads.edgeTheta = Eigen::Map<const Samples>(junctions.data(), count);
    const Samples pressure = engine.pressure(loads.edgeTheta, 0);
    for (const End end : bothEnds) {
        const motion::LiftSamples lift = liftBeforeJunctions(pair, end);
        loads.edgePiston[end] =
            engine.piston(end, lift, engine.onPiston(end, pressure, loads.edgeTheta, 0));
        if (period.lift[end].y.size() > 0) {
            period.lift[end] = joined(period.lift[end], lift);
        }
    }
    period.theta = joined(period.theta, loads.edgeTheta);
    period.pressure = joined(period.pressure, pressure);
}

/// Where each of the wanted angles stands among the known ones, both ascending; none: −1.
std::vector<Eigen::Index> placesIn(const Samples& known, const Samples& wanted) {
    std::vector<Eigen::Index> places;
    Eigen::Index place = 0;
    for (const double angle : wanted) {
        while (place < known.size() && known(place) < angle) {
            ++place;
        }
        places.push_back(place < known.size() && known(place) == angle ? place : -1);
    }
    return places;
}

/// `values` where the places tell, and from there on those of `rest` in turn.
Samples merged(const Samples& values, const std::vector<Eigen::Index>& places,
               const Samples& rest) {
    Samples result(static_cast<Eigen::Index>(places.size()));
    Eigen::Index next = 0;
    for (Eigen::Index i = 0; i < result.size(); ++i) {
        const Eigen::Index place = places[static_cast<std::size_t>(i)];
        result(i) = place >= 0 ? values(place) : rest(next++);
    }
    return result;
}

PistonMotion motionAt(const mechanism::OpposedPair& pair, End end, const Samples& theta) {
    const mechanism::Mechanism& mechanism = pair.mechanism();
    return pistonMotion(mechanism.roller, mechanism.pitchRadius, pair.curve(end).stroke(),
                        pair.lift(end, theta));
}

/// Every array of a motion.
template <class Motion>
auto partsOf(Motion& m) {
    return std::array{&m.lift.y, &m.lift.y1, &m.lift.y2,   &m.lift.y3, &m.path,
                      &m.cosine, &m.sine,    &m.direction, &m.slipArm};
}

/// Motion at the nodes between these breaks, taken over from `kept` wherever a node is the same:
/// between most breaks they are, for only those where the flank changes move with the speed.
NodeMotion motionFrom(const NodeMotion& kept, const mechanism::OpposedPair& pair,
                      std::vector<double> breaks) {
    Quadrature quadrature = periodQuadrature(pair, breaks);
    const std::vector<Eigen::Index> places = placesIn(kept.theta, quadrature.theta);
    Samples left(std::count(places.begin(), places.end(), -1));
    Eigen::Index count = 0;
    for (std::size_t i = 0; i < places.size(); ++i) {
        if (places[i] < 0) {
            left(count++) = quadrature.theta(static_cast<Eigen::Index>(i));
        }
    }
    NodeMotion nodes{std::move(breaks), quadrature.theta, quadrature.weight, {}};
    for (const End end : pair.pistons()) {
        nodes.motion[end] = motionAt(pair, end, left);
        const auto parts = partsOf(nodes.motion[end]);
        const auto known = partsOf(kept.motion[end]);
        for (std::size_t i = 0; i < parts.size(); ++i) {
            *parts[i] = merged(*known[i], places, *parts[i]);
        }
    }
    return nodes;
}

void addNodes(Loads& loads, const Engine& engine) {
    std::vector<double> breaks = engine.inputs.breaks;
    for (const FlankChange& change : loads.flankChanges) {
        breaks.push_back(change.theta);
    }
    const auto& kept = engine.inputs.nodeMotion;
    if (kept && kept->breaks == breaks) {
        loads.nodeMotion = kept;
    } else {
        const mechanism::OpposedPair& pair = engine.inputs.pair;
        loads.nodeMotion =
            std::make_shared<const NodeMotion>(kept ? motionFrom(*kept, pair, std::move(breaks))
                                                    : nodeMotion(pair, std::move(breaks)));
    }
    const NodeMotion& nodes = *loads.nodeMotion;
    loads.nodes.theta = nodes.theta;
    loads.nodes.weight = nodes.weight;
    loads.nodes.pressure = engine.pressure(nodes.theta, 0);
    for (const End end : bothEnds) {
        loads.nodes.piston[end] = engine.piston(
            end, nodes.motion[end], engine.onPiston(end, loads.nodes.pressure, nodes.theta, 0));
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

void closeWork(Loads& loads, const Engine& engine) {
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
                piston[end] = engine.piston(end, loads.nodeMotion->motion[end], onPiston[end]);
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

PerEnd<ContactSpeeds> speedsOfContact(const Engine& engine, const OnePeriod& period,
                                      const gas::GasTrace* trace, const Samples& pressure) {
    PerEnd<ContactSpeeds> result;
    result.exhaust.low = SpeedBound{}; // a head stays where it is at any speed
    for (const End end : engine.inputs.pair.pistons()) {
        if (!trace) {
            result[end] = contactSpeeds(engine.inputs.pair, end, engine.setup[end], period.theta,
                                        period.lift[end], pressure, nullptr);
            continue;
        }
        const NetPressure net = engine.net(end, *trace);
        result[end] =
            contactSpeeds(engine.inputs.pair, end, engine.setup[end], period.theta,
                          period.lift[end], net.onPiston(pressure, period.theta, 0), &net);
    }
    return result;
}

void addContactSpeeds(Loads& loads, const Engine& engine, const OnePeriod& period) {
    const gas::GasTrace* motored = engine.inputs.motoredTrace;
    loads.contactSpeeds = speedsOfContact(engine, period, engine.inputs.trace, period.pressure);
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

NodeMotion nodeMotion(const mechanism::OpposedPair& pair, std::vector<double> breaks) {
    Quadrature quadrature = periodQuadrature(pair, breaks);
    NodeMotion nodes{std::move(breaks), quadrature.theta, quadrature.weight, {}};
    for (const End end : pair.pistons()) {
        nodes.motion[end] = motionAt(pair, end, nodes.theta);
    }
    return nodes;
}

Loads solveLoads(const Inputs& inputs) {
    const Engine engine(inputs);
    Loads loads;
    OnePeriod period = sampled(loads, engine);
    addEdges(loads, period, engine);
    addNodes(loads, engine);
    closeWork(loads, engine);
    addTorqueFigures(loads);
    addExtremes(loads);
    addContactSpeeds(loads, engine, period);
    loads.firing = firing(inputs.pair);
    return loads;
}

} // namespace lobewright::loads
