#include "core/loads/free_body.h"

#include <cmath>

namespace lobewright::loads {

namespace {

/// Direction along z of inward motion at this end.
double inward(End end) {
    return end == End::inlet ? 1.0 : -1.0;
}

} // namespace

TrackForces TrackForces::zero(Eigen::Index samples) {
    const Samples none = Samples::Zero(samples);
    return {none, none, none, none, none, none};
}

void addRoller(TrackForces& sum, End end, double psi, double pitchRadius,
               const RollerForces& roller) {
    const double cosine = std::cos(psi);
    const double sine = std::sin(psi);
    // Roller on track at radius R, height ζ above the plane: axial force F_z and tangential force
    // −N·sin α; r × F = −R·F_z·e_t + ζ·N·sin α·e_r + (torque)·e_z.
    const Samples axialMoment = inward(end) * pitchRadius * roller.thrust;
    const Samples heightMoment = inward(end) * roller.lift * roller.side;
    sum.thrust += roller.thrust;
    sum.radialX += sine * roller.side;
    sum.radialY -= cosine * roller.side;
    sum.tiltX += cosine * heightMoment - sine * axialMoment;
    sum.tiltY += sine * heightMoment + cosine * axialMoment;
    sum.torque += roller.torque;
}

Wrench trackWrench(const TrackForces& forces, End end, Eigen::Index sample) {
    Wrench wrench;
    wrench.force = {forces.radialX(sample), forces.radialY(sample),
                    -inward(end) * forces.thrust(sample)};
    wrench.moment = {forces.tiltX(sample), forces.tiltY(sample), forces.torque(sample)};
    return wrench;
}

PistonPolygon pistonPolygon(const PistonLoads& piston, Eigen::Index sample) {
    const double side = piston.sideForce(sample);
    PistonPolygon polygon;
    polygon.gas = {0.0, -piston.gasForce(sample)};
    polygon.inertia = {0.0, -piston.inertiaForce(sample)};
    polygon.rings = {0.0, -piston.ringFriction(sample)};
    polygon.guide = {-side, -piston.guideFriction(sample)};
    polygon.track = {side, piston.trackThrust(sample)};
    return polygon;
}

ShaftReactions shaftReactions(const PerEnd<TrackForces>& track, double distance) {
    const TrackForces& inlet = track.inlet;
    const TrackForces& exhaust = track.exhaust;
    ShaftReactions reactions;
    reactions.thrust = inlet.thrust - exhaust.thrust;
    reactions.radialX.exhaust = -(inlet.tiltY + exhaust.tiltY) / distance - exhaust.radialX;
    reactions.radialY.exhaust = (inlet.tiltX + exhaust.tiltX) / distance - exhaust.radialY;
    reactions.radialX.inlet = -inlet.radialX - exhaust.radialX - reactions.radialX.exhaust;
    reactions.radialY.inlet = -inlet.radialY - exhaust.radialY - reactions.radialY.exhaust;
    reactions.loadTorque = -(inlet.torque + exhaust.torque);
    return reactions;
}

std::optional<double> trackDistance(const mechanism::OpposedPair& pair) {
    const mechanism::Mechanism& mechanism = pair.mechanism();
    if (!mechanism.piston) {
        return std::nullopt;
    }
    return mechanism.clearance + pair.curve(End::inlet).stroke() +
           pair.curve(End::exhaust).stroke() + pair.shift(pair.pistons().back()) +
           static_cast<double>(pair.pistons().size()) *
               mechanism.piston->rollerAxis.value_or(mechanism.piston->length);
}

void addFrameFriction(Samples& sum, End end, const PistonLoads& piston) {
    sum += inward(end) * (piston.ringFriction + piston.guideFriction);
}

} // namespace lobewright::loads
