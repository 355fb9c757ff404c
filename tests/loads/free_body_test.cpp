#include "core/loads/free_body.h"
#include "core/loads/loads.h"
#include "core/loads/orders.h"
#include "core/units.h"
#include "tests/machines.h"
#include "tests/traces.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::loads {
namespace {

using units::pi;

struct Engine {
    mechanism::OpposedPair pair;
    Friction friction;
    Samples theta = evenAngles(360);
    Loads loads;

    explicit Engine(const mechanism::Mechanism& m, double omega = 188.5)
        : pair(machines::pair(m, machines::pumpTrack())), loads(solve(omega)) {}
    Loads solve(double omega) const {
        const traces::BurnAtIdc cycle{pair};
        const auto trace = cycle.trace();
        return solveLoads({pair, friction, omega, 1e5, theta, &trace, nullptr, cycle.breaks()});
    }
};

Engine closedEngine() {
    auto m = machines::pumpMechanism();
    m.closedTrack = true;
    m.piston = mechanism::PistonGeometry{0.070, {0.004}};
    return Engine(m);
}

TEST(PistonPolygon, ClosesOnAClosedTrack) {
    const Engine engine = closedEngine();
    for (const End end : bothEnds) {
        const PistonLoads& piston = engine.loads.piston[end];
        for (Eigen::Index j = 0; j < engine.theta.size(); ++j) {
            const PistonPolygon polygon = pistonPolygon(piston, j);
            const double scale = polygon.gas.norm() + polygon.inertia.norm();
            EXPECT_LE(polygon.sum().norm(), 1e-12 * scale) << j;
        }
    }
}

TEST(PistonPolygon, StaysOpenWhereAnOpenTrackLetsGo) {
    const Engine engine(machines::pumpMechanism(), 400.0);
    const PistonLoads& piston = engine.loads.piston.inlet;
    int open = 0;
    for (Eigen::Index j = 0; j < engine.theta.size(); ++j) {
        const PistonPolygon polygon = pistonPolygon(piston, j);
        const double missing = polygon.sum().norm();
        if (piston.demandedForce(j) < 0.0) {
            EXPECT_GT(missing, 0.0);
            ++open;
        } else {
            EXPECT_LE(missing, 1e-12 * (polygon.gas.norm() + polygon.inertia.norm()));
        }
    }
    EXPECT_GT(open, 0);
}

// Rollers placed as points in space: force by force, moment by moment.
TEST(TrackForces, AreTheWrenchOfAllRollers) {
    const Engine engine = closedEngine();
    const Eigen::Vector3d z = Eigen::Vector3d::UnitZ();
    const double r = 0.095;
    for (const End end : bothEnds) {
        const double in = end == End::inlet ? 1.0 : -1.0;
        for (const Eigen::Index j : {0, 37, 101, 222}) {
            Wrench expected;
            for (int k = 0; k < 3; ++k) {
                const Eigen::Index i = (j - 120 * k + 360) % 360; // this cylinder lags by 120°
                const PistonLoads& piston = engine.loads.piston[end];
                const double psi = 2 * pi * k / 3;
                const Eigen::Vector3d er(std::cos(psi), std::sin(psi), 0.0);
                const Eigen::Vector3d et(-std::sin(psi), std::cos(psi), 0.0);
                const double n = piston.contactForce(i), alpha = piston.pressureAngle(i);
                const Eigen::Vector3d force =
                    -in * n * std::cos(alpha) * z - n * std::sin(alpha) * et;
                const Eigen::Vector3d point = r * er + in * piston.lift.y(i) * z;
                expected.force += force;
                expected.moment += point.cross(force);
                expected.moment.z() -=
                    piston.rollingLoss(i) + piston.rollerBearingLoss(i) + piston.slipLoss(i);
            }
            const Wrench found = trackWrench(engine.loads.track[end], end, j);
            const double scale = engine.loads.highestContactForce[end].value;
            EXPECT_NEAR((found.force - expected.force).norm(), 0.0, 1e-9 * scale);
            EXPECT_NEAR((found.moment - expected.moment).norm(), 0.0, 1e-9 * scale * r);
        }
    }
}

// Sum of forces and moments on shaft and tracks, about the inlet plane, is zero.
TEST(ShaftReactions, BalanceShaftAndTracks) {
    const Engine engine = closedEngine();
    const double distance = *trackDistance(engine.pair);
    EXPECT_NEAR(distance, 0.0075 + 2 * 0.036 + 2 * 0.070, 1e-15);
    const ShaftReactions reactions = shaftReactions(engine.loads.track, distance);
    const double scale = engine.loads.highestContactForce.inlet.value;
    for (Eigen::Index j = 0; j < engine.theta.size(); ++j) {
        const Wrench inlet = trackWrench(engine.loads.track.inlet, End::inlet, j);
        const Wrench exhaust = trackWrench(engine.loads.track.exhaust, End::exhaust, j);
        const Eigen::Vector3d arm(0.0, 0.0, distance);
        const Eigen::Vector3d atInlet(reactions.radialX.inlet(j), reactions.radialY.inlet(j), 0.0);
        const Eigen::Vector3d atExhaust(reactions.radialX.exhaust(j), reactions.radialY.exhaust(j),
                                        0.0);
        const Eigen::Vector3d force = inlet.force + exhaust.force + atInlet + atExhaust +
                                      reactions.thrust(j) * Eigen::Vector3d::UnitZ();
        const Eigen::Vector3d moment = inlet.moment + exhaust.moment + arm.cross(exhaust.force) +
                                       arm.cross(atExhaust) +
                                       reactions.loadTorque(j) * Eigen::Vector3d::UnitZ();
        EXPECT_LE(force.norm(), 1e-12 * scale) << j;
        EXPECT_LE(moment.norm(), 1e-12 * scale * distance) << j;
    }
}

TEST(TrackDistance, IsUnknownWithoutAPistonLength) {
    EXPECT_FALSE(trackDistance(machines::pair(machines::pumpMechanism(), machines::pumpTrack())));
}

// What guides, rings and the thrust bearing pass to the frame is the inertia force of the pistons:
// gas forces end at the pistons and cancel.
TEST(Frame, FeelsTheInertiaOfThePistons) {
    const Engine engine = closedEngine();
    const ShaftReactions reactions = shaftReactions(engine.loads.track, 1.0);
    Samples frame = -reactions.thrust;
    Samples inertia = Samples::Zero(360);
    for (int k = 0; k < 3; ++k) {
        for (const End end : bothEnds) {
            const PistonLoads& piston = engine.loads.piston[end];
            PistonLoads shifted;
            const auto shift = [k](const Samples& f) {
                Samples g(360);
                g << f.tail(120 * k), f.head(360 - 120 * k);
                return g;
            };
            shifted.ringFriction = shift(piston.ringFriction);
            shifted.guideFriction = shift(piston.guideFriction);
            addFrameFriction(frame, end, shifted);
            inertia += (end == End::inlet ? -1.0 : 1.0) * shift(piston.inertiaForce);
        }
    }
    const double scale = engine.loads.highestContactForce.inlet.value;
    EXPECT_NEAR((frame - inertia).abs().maxCoeff(), 0.0, 1e-9 * scale);
}

TrackForces forces(double thrust, double torque) {
    TrackForces f = TrackForces::zero(1);
    f.thrust(0) = thrust;
    f.torque(0) = torque;
    return f;
}

// Square-thread screw [Shigley, power screws]: an axial load alone is held where the lead angle is
// below the friction angle, tan λ = L/(2π·r) < μ.
TEST(Adjuster, HoldsAnAxialLoadBelowTheFrictionAngle) {
    const Spline spline{0.03, 0.1};
    const double limit = 0.1 * 2 * pi * 0.03;
    EXPECT_TRUE(adjusterLoads(forces(5000.0, 0.0), 0.99 * limit, spline).holdsItself);
    EXPECT_FALSE(adjusterLoads(forces(5000.0, 0.0), 1.01 * limit, spline).holdsItself);
}

// The same screw backwards: a torque alone turns it unless the flanks are steeper than the
// complement of the friction angle.
TEST(Adjuster, HoldsATorqueOnlyOnAlmostStraightFlanks) {
    const Spline spline{0.03, 0.1};
    const double limit = 2 * pi * 0.03 / 0.1;
    EXPECT_FALSE(adjusterLoads(forces(0.0, 200.0), 0.99 * limit, spline).holdsItself);
    EXPECT_TRUE(adjusterLoads(forces(0.0, 200.0), 1.01 * limit, spline).holdsItself);
}

// Virtual work over a small turn: torque·dΔ + axial force·ds of track and adjuster cancel.
TEST(Adjuster, LoadsDoNoWorkAlongTheHelix) {
    const double lead = 0.05, perRadian = lead / (2 * pi);
    const AdjusterLoads loads = adjusterLoads(forces(5000.0, -120.0), lead, {0.03, 0.1});
    EXPECT_NEAR(loads.torque(0) + -120.0 + 5000.0 * perRadian, 0.0, 1e-12);
    ASSERT_TRUE(loads.axialForce);
    EXPECT_NEAR(((*loads.axialForce)(0) + 5000.0) * perRadian + -120.0, 0.0, 1e-12);
}

TEST(Adjuster, PurePhaseChangeCarriesTheTorqueOfItsTrack) {
    const AdjusterLoads loads = adjusterLoads(forces(5000.0, -120.0), 0.0, {0.03, 0.1});
    EXPECT_EQ(loads.torque(0), 120.0);
    EXPECT_FALSE(loads.axialForce);
    EXPECT_FALSE(loads.holdsItself);
    EXPECT_NEAR(defaultSpline(machines::pumpMechanism()).radius, 0.0475, 1e-15);
}

} // namespace
} // namespace lobewright::loads
