#include "core/gas/cycle/phases.h"
#include "core/gas/integrators/acceleration.h"
#include "core/units.h"

#include <Eigen/Dense>
#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace lobewright::gas {
namespace {

// A linear map of n variables is solved exactly once n + 1 changes are known [Walker & Ni 2011:
// equivalence with GMRES].
TEST(AndersonAcceleration, SolvesALinearMapInAsManyStepsAsVariables) {
    Eigen::Matrix3d map;
    map << 0.5, 0.2, -0.1, 0.1, 0.9, 0.05, -0.2, 0.1, -0.6;
    const Eigen::Vector3d constant(1.0, -2.0, 0.5);
    const Eigen::Vector3d fixed = (Eigen::Matrix3d::Identity() - map).lu().solve(constant);
    AndersonAcceleration acceleration(5);
    Eigen::VectorXd x = Eigen::Vector3d::Zero();
    for (int i = 0; i < 4; ++i) {
        x = acceleration.next(x, map * x + constant);
    }
    EXPECT_LT((x - fixed).norm(), 1e-10);
}

// A diverging iteration is turned into a converging one.
TEST(AndersonAcceleration, FindsARepellingFixedPoint) {
    AndersonAcceleration acceleration(3);
    Eigen::VectorXd x = Eigen::VectorXd::Constant(1, 0.3);
    for (int i = 0; i < 12; ++i) {
        x = acceleration.next(x, (1.0 - 1.5 * x.array().sin()).matrix());
    }
    EXPECT_NEAR(x[0] + 1.5 * std::sin(x[0]), 1.0, 1e-10);
}

/// Farthest that a search strays from the answer once it is there: a map that all but forgets where
/// it began, good to 1e-7 and no better.
double farthestAfterwards(double toldNoise) {
    constexpr double noise = 1e-7;
    std::mt19937_64 random(5);
    std::uniform_real_distribution<double> off(-noise, noise);
    AndersonAcceleration acceleration(6);
    Eigen::VectorXd x = Eigen::VectorXd::Zero(4);
    double farthest = 0.0;
    for (int i = 0; i < 60; ++i) {
        Eigen::VectorXd mapped = (0.05 * x.array() + 0.95 + 0.01 * x.reverse().array()).matrix();
        for (double& value : mapped) {
            value += off(random);
        }
        x = acceleration.next(x, mapped, toldNoise);
        if (i >= 12) {
            farthest = std::max(farthest, (x.array() - 0.95 / 0.94).abs().maxCoeff());
        }
    }
    return farthest;
}

// What the last windows differ by is noise, and to combine it would make more of it.
TEST(AndersonAcceleration, DoesNotAmplifyNoiseThatItIsToldOf) {
    EXPECT_LT(farthestAfterwards(1e-7), 3e-7);
    EXPECT_GT(farthestAfterwards(0.0), 6e-7);
}

RunConditions atAngles(const std::vector<double>& degrees) {
    RunConditions run;
    run.omega = 100.0;
    run.cylinders = static_cast<int>(degrees.size());
    for (const double angle : degrees) {
        run.cylinderAngles.push_back(angle * units::degree);
    }
    return run;
}

// Three cylinders on a two-lobe track stand at 0°, 120° and 60° of its half-turn: evenly spaced.
TEST(Phases, ThreeCylindersOnTwoLobesAreEven) {
    const Phases phases = phasesOf(atAngles({0, 120, 240}), units::pi);
    ASSERT_EQ(phases.lags.size(), 3u);
    EXPECT_TRUE(phases.even);
    EXPECT_NEAR(phases.lags[1], 60 * units::degree, 1e-12);
    EXPECT_EQ(phases.ofCylinder, (std::vector<int>{0, 2, 1}));
}

// Four cylinders on two lobes fire in pairs.
TEST(Phases, CylindersThatFireTogetherShareAPhase) {
    const Phases phases = phasesOf(atAngles({0, 90, 180, 270}), units::pi);
    ASSERT_EQ(phases.lags.size(), 2u);
    EXPECT_TRUE(phases.even);
    EXPECT_EQ(phases.weights, (std::vector<double>{2.0, 2.0}));
}

TEST(Phases, UnequalSpacingOrWeightsAreUneven) {
    EXPECT_FALSE(phasesOf(atAngles({0, 100, 240}), units::pi).even);
    EXPECT_FALSE(phasesOf(atAngles({0, 180, 270}), units::pi).even);
    EXPECT_TRUE(phasesOf(atAngles({0}), units::pi).even);
}

// Rounding of a whole period must not make a phase of its own.
TEST(Phases, WholePeriodsAreNoPhase) {
    const Phases phases = phasesOf(atAngles({0, 360.0 / 7, 720.0 / 7}), units::turn / 7);
    EXPECT_EQ(phases.lags.size(), 1u);
}

} // namespace
} // namespace lobewright::gas
