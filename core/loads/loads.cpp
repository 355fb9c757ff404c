#include "core/loads/loads.h"

#include "core/loads/net_pressure.h"
#include "core/loads/orders.h"
#include "core/loads/quadrature.h"
#include "core/loads/torque.h"
#include "core/mechanism/bracketed_root.h"
#include "core/mechanism/folded_angles.h"
#include "core/units.h"

#include <algorithm>
#include <cmath>

namespace lobewright::loads {

namespace {

constexpr int evenSamplesPerTurn = 720;
constexpr int highestOrder = 48;

/// Everything that is asked again and again during one solve.
struct Engine {
    const Inputs& inputs;
    PerEnd<PistonSetup> setup;
    std::vector<double> psi, lags;

    explicit Engine(const Inputs& given)
        : inputs(given), psi(mechanism::cylinderAngles(given.pair.mechanism())),
          lags(mechanism::cylinderLags(given.pair.mechanism())) {
        for (const End end : given.pair.pistons()) {
            setup[end] = pistonSetup(given.pair, end, given.friction, given.omega,
                                     given.underPistonPressure);
        }
    }

    /// Whether a piston runs there, not a head stands.
    bool isPiston(End end) const { return inputs.pair.uncovers(end) == end; }
    Samples pressure(const Samples& theta, int cylinder) const {
        return inputs.trace ? inputs.trace->sample(theta, cylinder).pressure
                            : Samples::Constant(theta.size(), inputs.underPistonPressure);
    }
    /// What acts on the piston of this end, from the chamber pressure at these angles.
    Samples onPiston(End end, const Samples& pressures, const Samples& theta, int cylinder) const {
        return inputs.trace ? net(end, *inputs.trace).onPiston(pressures, theta, cylinder)
                            : pressures;
    }
    double onPiston(End end, double theta) const {
        return inputs.trace ? net(end, *inputs.trace).pressure(theta) : inputs.underPistonPressure;
    }
    NetPressure net(End end, const gas::GasTrace& trace) const {
        return {trace, inputs.pumpArea[end], inputs.underPistonPressure};
    }
    PistonLoads piston(End end, const motion::LiftSamples& lift, const Samples& pressures) const {
        return isPiston(end) ? pistonLoads(setup[end], lift, pressures)
                             : standingLoads(pressures.size());
    }
    PistonLoads piston(End end, const Samples& theta, int cylinder,
                       const Samples& pressures) const {
        const double behind = lags[static_cast<std::size_t>(cylinder)];
        return isPiston(end)
                   ? pistonLoads(setup[end], inputs.pair.lift(end, theta - behind), pressures)
                   : standingLoads(pressures.size());
    }
    double demand(End end, double theta) const {
        return axialDemand(setup[end], inputs.pair.lift(end, theta), onPiston(end, theta));
    }
};

/// The whole engine at some shaft angles.
struct EngineSamples {
    Samples pressure;
    PerEnd<PistonLoads> piston; ///< cylinder 1
    PerEnd<TrackForces> track;
    Samples bearingLoss, torque;
};

/// Friction of the shaft bearings: the thrusts of both tracks cancel inside the shaft as far as
/// they are equal, each track's radial pull is carried beside it; mean diameter R. That of an only
/// track rests on the thrust bearing whole.
Samples shaftBearingLoss(const PerEnd<TrackForces>& track, const Engine& engine) {
    return 0.5 * engine.inputs.friction.shaftBearing * engine.setup.inlet.pitchRadius *
           ((track.inlet.thrust - track.exhaust.thrust).abs() + track.inlet.radial() +
            track.exhaust.radial());
}

RollerForces rollerForces(const PistonLoads& piston) {
    return {piston.trackThrust, piston.sideForce, piston.lift.y, piston.torque};
}

/// Cylinders alike: every place of the lift curves is evaluated once.
void addAlikeCylinders(EngineSamples& result, const Engine& engine, const Kinematics& kinematics) {
    const mechanism::FoldedAngles& folded = kinematics.folded;
    const Samples pressure = engine.pressure(folded.places(), 0);
    result.pressure = folded.unfolded(pressure, 0);
    result.piston.exhaust = standingLoads(result.pressure.size()); // where there is a piston: below
    for (const End end : engine.inputs.pair.pistons()) {
        const PistonLoads places = engine.piston(
            end, kinematics.lift[end], engine.onPiston(end, pressure, folded.places(), 0));
        for (std::size_t k = 0; k < engine.psi.size(); ++k) {
            const auto unfold = [&](const Samples& values) { return folded.unfolded(values, k); };
            if (k == 0) {
                result.piston[end] = transformed(places, unfold);
            }
            addRoller(result.track[end], end, engine.psi[k], engine.setup[end].pitchRadius,
                      {unfold(places.trackThrust), unfold(places.sideForce), unfold(places.lift.y),
                       unfold(places.torque)});
        }
    }
}

void addDifferentCylinders(EngineSamples& result, const Engine& engine, const Samples& theta) {
    for (std::size_t k = 0; k < engine.psi.size(); ++k) {
        const int cylinder = static_cast<int>(k);
        Samples pressure = engine.pressure(theta, cylinder);
        for (const End end : bothEnds) {
            PistonLoads piston = engine.piston(end, theta, cylinder,
                                               engine.onPiston(end, pressure, theta, cylinder));
            addRoller(result.track[end], end, engine.psi[k], engine.setup[end].pitchRadius,
                      rollerForces(piston));
            if (k == 0) {
                result.piston[end] = std::move(piston);
            }
        }
        if (k == 0) {
            result.pressure = std::move(pressure);
        }
    }
}

Samples joined(const Samples& first, const Samples& second) {
    Samples both(first.size() + second.size());
    both << first, second;
    return both;
}

int evenSamplesPerPeriod(const mechanism::OpposedPair& pair) {
    const int lobes = pair.curve(End::inlet).lobes();
    return (evenSamplesPerTurn + lobes - 1) / lobes;
}

/// The angles wanted, then one even period.
Samples allAngles(const mechanism::OpposedPair& pair, const Samples& theta) {
    const int perPeriod = evenSamplesPerPeriod(pair);
    const int lobes = pair.curve(End::inlet).lobes();
    return joined(theta, evenAngles(perPeriod * lobes).head(perPeriod));
}

EngineSamples sampleEngine(const Engine& engine) {
    const Inputs& inputs = engine.inputs;
    const Samples theta = allAngles(inputs.pair, inputs.theta);
    EngineSamples result;
    for (const End end : bothEnds) {
        result.track[end] = TrackForces::zero(theta.size());
    }
    if (inputs.cylindersDiffer) {
        addDifferentCylinders(result, engine, theta);
    } else if (inputs.kinematics) {
        addAlikeCylinders(result, engine, *inputs.kinematics);
    } else {
        addAlikeCylinders(result, engine, kinematics(inputs.pair, inputs.theta));
    }
    result.bearingLoss = shaftBearingLoss(result.track, engine);
    result.torque = result.track.inlet.torque + result.track.exhaust.torque - result.bearingLoss;
    return result;
}

/// Places where the track's demand changes sign, from ascending samples over one period.
std::vector<FlankChange> flankChanges(const Engine& engine, const Samples& theta,
                                      const PerEnd<Samples>& demands) {
    std::vector<FlankChange> changes;
    const Eigen::Index count = theta.size();
    const double period = engine.inputs.pair.period();
    for (const End end : engine.inputs.pair.pistons()) {
        const Samples& demand = demands[end];
        std::optional<Eigen::Index> last;
        for (Eigen::Index i = 0; i < 2 * count; ++i) {
            const double now = demand(i % count);
            if (now == 0.0) {
                continue;
            }
            if (last && i >= count && demand(*last % count) * now < 0.0) {
                const auto unrolled = [&](Eigen::Index j) {
                    const Eigen::Index turns = j / count;
                    return theta(j % count) + period * static_cast<double>(turns);
                };
                const double angle =
                    mechanism::bracketedRoot([&](double at) { return engine.demand(end, at); },
                                             unrolled(*last), unrolled(i));
                changes.push_back({end, mechanism::wrapped(angle, period), now < 0.0});
            }
            last = i;
        }
    }
    std::sort(changes.begin(), changes.end(),
              [](const FlankChange& a, const FlankChange& b) { return a.theta < b.theta; });
    return changes;
}

motion::LiftSamples joined(const motion::LiftSamples& first, const motion::LiftSamples& second) {
    return {joined(first.y, second.y), joined(first.y1, second.y1), joined(first.y2, second.y2),
            joined(first.y3, second.y3)};
}

/// Cylinder 1 over one period: even samples, then just before every junction.
struct OnePeriod {
    Samples theta, pressure;
    PerEnd<motion::LiftSamples> lift;
};

/// Cylinder 1 just before every junction.
void addEdges(Loads& loads, OnePeriod& period, const Engine& engine) {
    const mechanism::OpposedPair& pair = engine.inputs.pair;
    const std::vector<double>& junctions = pair.junctions();
    const auto count = static_cast<Eigen::Index>(junctions.size());
    loads.edgeTheta = Eigen::Map<const Samples>(junctions.data(), count);
    const Samples pressure = engine.pressure(loads.edgeTheta, 0);
    for (const End end : bothEnds) {
        motion::LiftSamples lift{Samples(count), Samples(count), Samples(count), Samples(count)};
        for (Eigen::Index i = 0; i < count; ++i) {
            const motion::Lift before =
                pair.curve(end).before(pair.trackAngle(end, loads.edgeTheta(i)));
            lift.y(i) = before.y;
            lift.y1(i) = before.y1;
            lift.y2(i) = before.y2;
            lift.y3(i) = before.y3;
        }
        loads.edgePiston[end] =
            engine.piston(end, lift, engine.onPiston(end, pressure, loads.edgeTheta, 0));
        period.lift[end] = joined(period.lift[end], lift);
    }
    period.theta = joined(period.theta, loads.edgeTheta);
    period.pressure = joined(period.pressure, pressure);
}

void addNodes(Loads& loads, const Engine& engine) {
    std::vector<double> breaks = engine.inputs.breaks;
    for (const FlankChange& change : loads.flankChanges) {
        breaks.push_back(change.theta);
    }
    const Quadrature quadrature = periodQuadrature(engine.inputs.pair, breaks);
    loads.nodes.theta = quadrature.theta;
    loads.nodes.weight = quadrature.weight;
    loads.nodes.pressure = engine.pressure(quadrature.theta, 0);
    for (const End end : bothEnds) {
        loads.nodes.piston[end] =
            engine.piston(end, quadrature.theta, 0,
                          engine.onPiston(end, loads.nodes.pressure, quadrature.theta, 0));
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
                piston[end] = engine.piston(end, theta, k, onPiston[end]);
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

/// Splits samples of the whole engine: first those asked for, then one even period.
OnePeriod addSamples(Loads& loads, const Engine& engine) {
    const int lobes = engine.inputs.pair.curve(End::inlet).lobes();
    const int perPeriod = evenSamplesPerPeriod(engine.inputs.pair);
    loads.theta = engine.inputs.theta;
    loads.evenTheta = evenAngles(perPeriod * lobes);
    const Samples onePeriod = loads.evenTheta.head(perPeriod);
    const EngineSamples all = sampleEngine(engine);
    const auto wanted = [&loads](const Samples& f) { return Samples(f.head(loads.theta.size())); };
    const auto even = [perPeriod](const Samples& f) { return Samples(f.tail(perPeriod)); };

    loads.pressure = wanted(all.pressure);
    OnePeriod period{onePeriod, even(all.pressure), {}};
    PerEnd<Samples> demands;
    for (const End end : bothEnds) {
        const TrackForces& track = all.track[end];
        const motion::LiftSamples& lift = all.piston[end].lift;
        loads.piston[end] = transformed(all.piston[end], wanted);
        loads.track[end] = {wanted(track.thrust), wanted(track.radialX), wanted(track.radialY),
                            wanted(track.tiltX),  wanted(track.tiltY),   wanted(track.torque)};
        period.lift[end] = {even(lift.y), even(lift.y1), even(lift.y2), even(lift.y3)};
        demands[end] = even(all.piston[end].axialDemand);
    }
    loads.cylinderTorque = loads.piston.inlet.torque + loads.piston.exhaust.torque;
    loads.shaftBearingLoss = wanted(all.bearingLoss);
    loads.totalTorque = wanted(all.torque);
    loads.losses.shaftBearing = even(all.bearingLoss).mean();
    const Samples evenTorque = even(all.torque);
    loads.evenTotalTorque = evenTorque.replicate(lobes, 1);
    loads.torqueOrders = orders(evenTorque, highestOrder, lobes).abs();
    loads.flankChanges = flankChanges(engine, onePeriod, demands);
    return period;
}

} // namespace

Kinematics kinematics(const mechanism::OpposedPair& pair, const Samples& theta) {
    Kinematics result{
        {pair.period(), allAngles(pair, theta), mechanism::cylinderLags(pair.mechanism())}, {}};
    for (const End end : bothEnds) {
        result.lift[end] = pair.lift(end, result.folded.places());
    }
    return result;
}

Loads solveLoads(const Inputs& inputs) {
    const Engine engine(inputs);
    Loads loads;
    OnePeriod period = addSamples(loads, engine);
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
