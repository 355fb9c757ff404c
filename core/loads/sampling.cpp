// The engine at many shaft angles.
#include "core/loads/engine.h"
#include "core/loads/orders.h"
#include "core/mechanism/bracketed_root.h"
#include "core/mechanism/folded_angles.h"
#include "core/units.h"

#include <algorithm>
#include <cmath>

namespace lobewright::loads {

namespace {

constexpr int evenSamplesPerTurn = 720;
constexpr int highestOrder = 48;

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
        PistonLoads places = engine.piston(end, kinematics.motion[end],
                                           engine.onPiston(end, pressure, folded.places(), 0));
        places.pressureAngle = kinematics.pressureAngle[end];
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

int evenSamplesPerPeriod(const mechanism::OpposedPair& pair) {
    const int lobes = pair.curve(End::inlet).lobes();
    return (evenSamplesPerTurn + lobes - 1) / lobes;
}

EngineSamples sampleEngine(const Engine& engine, const Kinematics& kinematics) {
    EngineSamples result;
    for (const End end : bothEnds) {
        result.track[end] = TrackForces::zero(kinematics.theta.size());
    }
    if (engine.inputs.cylindersDiffer) {
        addDifferentCylinders(result, engine, kinematics.theta);
    } else {
        addAlikeCylinders(result, engine, kinematics);
    }
    result.bearingLoss = shaftBearingLoss(result.track, engine);
    result.torque = result.track.inlet.torque + result.track.exhaust.torque - result.bearingLoss;
    return result;
}

Samples picked(const Samples& values, const std::vector<Eigen::Index>& places) {
    Samples result(static_cast<Eigen::Index>(places.size()));
    for (Eigen::Index i = 0; i < result.size(); ++i) {
        result(i) = values(places[static_cast<std::size_t>(i)]);
    }
    return result;
}

motion::LiftSamples picked(const motion::LiftSamples& lift,
                           const std::vector<Eigen::Index>& places) {
    return {picked(lift.y, places), picked(lift.y1, places), picked(lift.y2, places),
            picked(lift.y3, places)};
}

/// Where one even period stands among ascending angles; those that are not there are put behind.
std::vector<Eigen::Index> placesOfEven(std::vector<double>& angles, const Samples& even) {
    constexpr double same = 1e-12;
    const auto asked = static_cast<std::ptrdiff_t>(angles.size());
    const bool isAscending = std::is_sorted(angles.begin(), angles.end());
    std::vector<Eigen::Index> places;
    for (const double angle : even) {
        const auto end = angles.begin() + asked;
        const auto found = isAscending ? std::lower_bound(angles.begin(), end, angle - same) : end;
        if (found != end && std::abs(*found - angle) <= same) {
            places.push_back(found - angles.begin());
        } else {
            places.push_back(static_cast<Eigen::Index>(angles.size()));
            angles.push_back(angle);
        }
    }
    return places;
}

/// Places where the track's demand changes sign, from ascending samples over one period.
std::vector<FlankChange> flankChanges(const Engine& engine, const Samples& theta,
                                      const PerEnd<Samples>& demands) {
    std::vector<FlankChange> changes;
    const Eigen::Index count = theta.size();
    const double period = engine.inputs.pair.period();
    for (const End end : engine.inputs.pair.pistons()) {
        const Samples& demand = demands[end];
        Eigen::Index last = count - 1; // the one before with a demand, first of the period before
        while (last >= 0 && demand(last) == 0.0) {
            --last;
        }
        double before = last >= 0 ? theta(last) - period : 0.0;
        for (Eigen::Index i = 0; i < count && last >= 0; ++i) {
            const double now = demand(i);
            if (now == 0.0) {
                continue;
            }
            if (demand(last) * now < 0.0) {
                const double angle = mechanism::bracketedRoot(
                    [&](double at) { return engine.demand(end, at); }, before, theta(i));
                changes.push_back({end, mechanism::wrapped(angle, period), now < 0.0});
            }
            last = i;
            before = theta(i);
        }
    }
    std::sort(changes.begin(), changes.end(),
              [](const FlankChange& a, const FlankChange& b) { return a.theta < b.theta; });
    return changes;
}

/// Whole-engine quantities of the samples asked for and of the even period.
void addTorques(Loads& loads, const Engine& engine, const Kinematics& kinematics,
                const Samples& torque, const Samples& bearingLoss, Eigen::Index wanted) {
    const int lobes = engine.inputs.pair.curve(End::inlet).lobes();
    const Samples evenTorque = picked(torque, kinematics.even);
    loads.totalTorque = torque.head(wanted);
    loads.losses.shaftBearing = picked(bearingLoss, kinematics.even).mean();
    loads.evenTotalTorque = evenTorque;
    if (engine.inputs.wantsOrders) {
        loads.evenTotalTorque = evenTorque.replicate(lobes, 1);
        loads.torqueOrders = orders(evenTorque, highestOrder, lobes).abs();
    }
}

Samples onePeriod(const mechanism::OpposedPair& pair) {
    const int perPeriod = evenSamplesPerPeriod(pair);
    return evenAngles(perPeriod * pair.curve(End::inlet).lobes()).head(perPeriod);
}

Samples addSamples(Loads& loads, const Engine& engine, const Kinematics& kinematics) {
    const mechanism::OpposedPair& pair = engine.inputs.pair;
    loads.theta = engine.inputs.theta;
    const Eigen::Index count = loads.theta.size();
    const EngineSamples all = sampleEngine(engine, kinematics);
    const auto wanted = [count](const Samples& f) { return Samples(f.head(count)); };

    loads.pressure = wanted(all.pressure);
    PerEnd<Samples> demands;
    for (const End end : bothEnds) {
        const TrackForces& track = all.track[end];
        loads.piston[end] = transformed(all.piston[end], wanted);
        loads.track[end] = {wanted(track.thrust), wanted(track.radialX), wanted(track.radialY),
                            wanted(track.tiltX),  wanted(track.tiltY),   wanted(track.torque)};
        demands[end] = picked(all.piston[end].axialDemand, kinematics.even);
    }
    loads.cylinderTorque = loads.piston.inlet.torque + loads.piston.exhaust.torque;
    loads.shaftBearingLoss = wanted(all.bearingLoss);
    loads.evenTheta = evenAngles(evenSamplesPerPeriod(pair) * pair.curve(End::inlet).lobes());
    addTorques(loads, engine, kinematics, all.torque, all.bearingLoss, count);
    loads.flankChanges = flankChanges(engine, onePeriod(pair), demands);
    return picked(all.pressure, kinematics.even);
}

/// Where cylinder 1 is at the even samples, among the folded places.
std::vector<Eigen::Index> evenPlaces(const Kinematics& kinematics) {
    std::vector<Eigen::Index> places;
    for (const Eigen::Index i : kinematics.even) {
        places.push_back(kinematics.folded.place(i, 0));
    }
    return places;
}

/// What extremes, contact and figures ask for, besides the lift.
constexpr Samples PistonLoads::*partsOfStudies[] = {
    &PistonLoads::pressureAngle, &PistonLoads::inertiaForce, &PistonLoads::gasForce,
    &PistonLoads::ringFriction,  &PistonLoads::axialDemand,  &PistonLoads::guideBracket,
    &PistonLoads::demandedForce, &PistonLoads::contactForce, &PistonLoads::sideForce};

/// Alike cylinders of a study: the tracks get no more than torque and bearings ask for.
Samples addPlaces(Loads& loads, const Engine& engine, const Kinematics& kinematics) {
    const mechanism::OpposedPair& pair = engine.inputs.pair;
    const mechanism::FoldedAngles& folded = kinematics.folded;
    const Eigen::Index wanted = engine.inputs.theta.size();
    const auto first = [&](const Samples& f) { return folded.unfolded(f, 0, wanted); };
    const std::vector<Eigen::Index> even = evenPlaces(kinematics);
    const Samples pressure = engine.pressure(folded.places(), 0);
    loads.theta = engine.inputs.theta;
    loads.pressure = first(pressure);
    PerEnd<Samples> demands;
    const Samples none = Samples::Zero(kinematics.theta.size());
    loads.track.inlet = loads.track.exhaust = {none, none, none, {}, {}, none};
    for (const End end : pair.pistons()) {
        PistonLoads places = engine.piston(end, kinematics.motion[end],
                                           engine.onPiston(end, pressure, folded.places(), 0));
        places.pressureAngle = kinematics.pressureAngle[end];
        for (std::size_t k = 0; k < engine.psi.size(); ++k) {
            const Samples side = folded.unfolded(places.sideForce, k);
            TrackForces& track = loads.track[end];
            track.thrust += folded.unfolded(places.trackThrust, k);
            track.radialX += std::sin(engine.psi[k]) * side;
            track.radialY -= std::cos(engine.psi[k]) * side;
            track.torque += folded.unfolded(places.torque, k);
        }
        for (const auto part : partsOfStudies) {
            loads.piston[end].*part = first(places.*part);
        }
        const motion::LiftSamples& lift = places.lift;
        loads.piston[end].lift = {first(lift.y), first(lift.y1), first(lift.y2), first(lift.y3)};
        demands[end] = picked(places.axialDemand, even);
    }
    const Samples bearingLoss = shaftBearingLoss(loads.track, engine);
    const Samples torque =
        Samples(loads.track.inlet.torque + loads.track.exhaust.torque - bearingLoss);
    addTorques(loads, engine, kinematics, torque, bearingLoss, wanted);
    for (const End end : bothEnds) {
        TrackForces& track = loads.track[end];
        for (Samples* part : {&track.thrust, &track.radialX, &track.radialY, &track.torque}) {
            part->conservativeResize(wanted);
        }
    }
    const Samples evenly = kinematics.period.theta.head(static_cast<Eigen::Index>(even.size()));
    loads.flankChanges = flankChanges(engine, evenly, demands);
    return picked(pressure, even);
}

} // namespace

Kinematics kinematics(const mechanism::OpposedPair& pair, const Samples& theta) {
    const int perPeriod = evenSamplesPerPeriod(pair);
    const int lobes = pair.curve(End::inlet).lobes();
    std::vector<double> angles(theta.begin(), theta.end());
    std::vector<Eigen::Index> even =
        placesOfEven(angles, evenAngles(perPeriod * lobes).head(perPeriod));
    const Samples all =
        Eigen::Map<const Samples>(angles.data(), static_cast<Eigen::Index>(angles.size()));
    const mechanism::Mechanism& mechanism = pair.mechanism();
    Kinematics result{
        all, std::move(even), {pair.period(), all, mechanism::cylinderLags(mechanism)}, {}, {}, {}};
    const std::vector<Eigen::Index> evenly = evenPlaces(result);
    PerEnd<motion::LiftSamples> lift;
    for (const End end : pair.pistons()) {
        result.motion[end] =
            pistonMotion(mechanism.roller, mechanism.pitchRadius, pair.curve(end).stroke(),
                         pair.lift(end, result.folded.places()));
        result.pressureAngle[end] =
            pressureAngle(result.motion[end].lift.y1, mechanism.pitchRadius);
        lift[end] = picked(result.motion[end].lift, evenly);
    }
    result.period = motionOverPeriod(pair, onePeriod(pair), lift);
    return result;
}

Samples addSampled(Loads& loads, const Engine& engine, const Kinematics& kinematics) {
    return engine.inputs.forStudy && !engine.inputs.cylindersDiffer
               ? addPlaces(loads, engine, kinematics)
               : addSamples(loads, engine, kinematics);
}

} // namespace lobewright::loads
