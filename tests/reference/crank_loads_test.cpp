#include "core/loads/piston.h"
#include "core/reference/crank_loads.h"
#include "core/units.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::study {
namespace {

/// A pressure that rises and falls smoothly once a turn.
class SmoothTrace final : public gas::GasTrace {
  public:
    gas::GasSamples sample(const Samples& theta, int) const override {
        return {theta.unaryExpr([this](double at) { return pressure(at, 0); }), theta, theta,
                theta};
    }
    double pressure(double theta, int) const override {
        return 1e5 + 40e5 * std::exp(6.0 * (std::cos(theta - 3.3) - 1.0));
    }
};

CrankEngine pairEngine(const loads::Friction* friction, const gas::GasTrace* trace) {
    CrankEngine engine;
    engine.pistons = {{SliderCrank(0.036, 0.28), -units::pi, 0.6, 0.064},
                      {SliderCrank(0.036, 0.28), -units::pi + 0.2, 0.6, 0.064}};
    engine.cylinderAngles = {0.0, 2.0 * units::pi / 3.0, 4.0 * units::pi / 3.0};
    engine.period = units::turn;
    engine.friction = friction;
    engine.omega = 300.0;
    engine.underPistonPressure = 1e5;
    engine.trace = trace;
    engine.firings = {3.0};
    return engine;
}

TEST(CrankLoads, WorkOfTheGasIsThatOfTheShaftPlusFriction) {
    const SmoothTrace trace;
    const loads::Friction friction;
    const CrankEngineLoads loads = crankEngineLoads(pairEngine(&friction, &trace), true);
    EXPECT_GT(loads.ringLoss, 0.0);
    EXPECT_GT(loads.guideLoss, 0.0);
    EXPECT_NEAR(loads.meanTorque, loads.gasTorque - loads.ringLoss - loads.guideLoss,
                1e-6 * loads.gasTorque);
    EXPECT_NEAR(loads.totalTorque.mean(), loads.meanTorque, 1e-3 * loads.meanTorque);
}

TEST(CrankLoads, InertiaDoesNoWorkOverATurn) {
    const CrankEngineLoads loads = crankEngineLoads(pairEngine(nullptr, nullptr), true);
    EXPECT_NEAR(loads.inertiaTorque, 0.0, 1e-9);
    EXPECT_NEAR(loads.meanTorque, 0.0, 1e-9);
    EXPECT_GT(loads.highestTorque, 1.0);
}

TEST(CrankLoads, SideForceAndTorqueAreThoseOfTheTextbookRod) {
    // Massless piston, no friction: N = F·tan β, T = F·r·sin(τ + β)/cos β (Norton, Design of
    // Machinery, ch. 13: gas force and gas torque, exact form).
    const CrankPiston piston{SliderCrank(0.08, 0.3), 0.0, 0.0, 0.1};
    const double force = 20e5 * units::pi * 0.01 / 4.0;
    for (const double tau : {0.3, 1.0, 1.5, 2.5, 4.0}) {
        const CrankPistonLoads loads = crankPistonLoads(
            piston, nullptr, 100.0, 1e5, Samples::Constant(1, tau), Samples::Constant(1, 21e5));
        const double beta = std::asin(0.3 * std::sin(tau));
        EXPECT_NEAR(loads.sideForce(0), force * std::tan(beta), 1e-9 * force);
        EXPECT_NEAR(loads.torque(0), force * 0.04 * std::sin(tau + beta) / std::cos(beta),
                    1e-12 * force);
    }
}

TEST(CrankLoads, ForcesOnAPistonCloseAPolygon) {
    const loads::Friction friction;
    const CrankPiston piston{SliderCrank(0.08, 0.3), 0.0, 0.7, 0.1};
    const Samples tau = Samples::LinSpaced(37, 0.0, units::turn);
    const CrankPistonLoads loads =
        crankPistonLoads(piston, &friction, 400.0, 1e5, tau, Samples::Constant(37, 8e5));
    const Samples sine = piston.crank.rodSine(tau);
    const Samples sign = loads::motionSign(loads.lift.y1, loads.lift.y2, 0.08);
    const Samples axial = loads.rodForce * (1.0 - sine.square()).sqrt() -
                          friction.guide * loads.sideForce.abs() * sign - loads.ringFriction -
                          loads.inertiaForce - 7e5 * units::pi * 0.01 / 4.0;
    EXPECT_LT(axial.abs().maxCoeff(), 1e-9);
    EXPECT_LT((loads.sideForce - loads.rodForce * sine).abs().maxCoeff(), 1e-12);
}

TEST(CrankLoads, FourInLineKeepTheEvenOrdersOfTheHandbook) {
    // λ = 0.25, orders of a/(r·ω²) by FFT: A2 0.25402504, A4 −0.00409811, A6 0.00007438, A8
    // −0.00000133. Cranks at 0, 180, 180, 360°: odd orders cancel, even ones add; largest at 90°:
    // A2 − A4 + A6 − A8 fourfold.
    CrankEngine engine;
    engine.pistons = {{SliderCrank(0.09, 0.25), 0.0, 0.5, 0.09}};
    engine.cylinderAngles = {0.0, units::pi, 2.0 * units::pi, 3.0 * units::pi};
    engine.period = 2.0 * units::turn;
    engine.omega = 300.0;
    engine.underPistonPressure = 1e5;
    engine.firings = {0.0};
    const CrankEngineLoads loads = crankEngineLoads(engine, false);
    const double unit = 0.5 * 0.045 * 300.0 * 300.0;
    EXPECT_NEAR(loads.shakingForce / unit,
                4.0 * (0.25402504 + 0.00409811 + 0.00007438 + 0.00000133), 1e-6);
    EXPECT_NEAR(loads.shortestInterval, units::pi, 1e-12);
    EXPECT_EQ(loads.together, 1);
}

TEST(CrankLoads, EqualOpposedPistonsInStepCancel) {
    CrankEngine engine = pairEngine(nullptr, nullptr);
    engine.pistons[1].phase = engine.pistons[0].phase;
    engine.cylinderAngles = {0.0};
    EXPECT_NEAR(crankEngineLoads(engine, true).shakingForce, 0.0, 1e-9);
    engine.pistons[1].phase += 0.2;
    EXPECT_GT(crankEngineLoads(engine, true).shakingForce, 100.0);
}

TEST(CrankLoads, FiringIntervalsCountCylindersThatFireTogether) {
    CrankEngine engine = pairEngine(nullptr, nullptr);
    engine.cylinderAngles = {0.0, 0.0, units::pi, units::pi};
    const CrankEngineLoads loads = crankEngineLoads(engine, true);
    EXPECT_EQ(loads.together, 2);
    EXPECT_NEAR(loads.shortestInterval, units::pi, 1e-12);
    EXPECT_NEAR(loads.longestInterval, units::pi, 1e-12);
}

TEST(CrankLoads, SteepRodsWithStickyGuidesJam) {
    loads::Friction sticky;
    sticky.guide = 0.6;
    EXPECT_TRUE(jams(SliderCrank(0.1, 0.9), sticky));
    EXPECT_FALSE(jams(SliderCrank(0.1, 0.28), sticky));
}

} // namespace
} // namespace lobewright::study
