#include "core/gas/cycle/coupled_cylinders.h"
#include "core/gas/integrators/dormand_prince.h"
#include "core/gas/integrators/radau.h"
#include "tests/gas/engines.h"

#include <gtest/gtest.h>

namespace lobewright::gas {
namespace {

/// y₁' = y₀·cos x, y₀' = −y₁·cos x: (cos sin x, sin sin x) from (1, 0).
void turning(double x, const double* y, double* dy) {
    dy[0] = -y[1] * std::cos(x);
    dy[1] = y[0] * std::cos(x);
}

double explicitError(int steps) {
    DormandPrince step(2);
    double y[2] = {1.0, 0.0};
    double dy[2];
    const double h = 2.0 / steps;
    for (int i = 0; i < steps; ++i) {
        turning(i * h, y, dy);
        step.attempt(turning, i * h, h, y, dy);
        std::copy_n(step.end(), 2, y);
    }
    return std::hypot(y[0] - std::cos(std::sin(2.0)), y[1] - std::sin(std::sin(2.0)));
}

double implicitError(int steps) {
    Radau step(2, {0, 1});
    const Eigen::MatrixXd none = Eigen::MatrixXd::Zero(2, 2);
    const double weights[2] = {1e-13, 1e-13};
    double y[2] = {1.0, 0.0};
    double dy[2];
    const double h = 2.0 / steps;
    for (int i = 0; i < steps; ++i) {
        turning(i * h, y, dy);
        EXPECT_TRUE(step.attempt(turning, i * h, h, y, dy, none, weights));
        std::copy_n(step.end(), 2, y);
    }
    return std::hypot(y[0] - std::cos(std::sin(2.0)), y[1] - std::sin(std::sin(2.0)));
}

// Halving the step divides the error of a method of order 5 by 32.
TEST(DormandPrince, IsOfFifthOrder) {
    for (const int steps : {16, 32, 64}) {
        EXPECT_NEAR(explicitError(steps) / explicitError(2 * steps), 32.0, 6.0);
    }
}

// A variable that nothing depends on is integrated alike whether its stages are formed or not.
TEST(DormandPrince, MereIntegralsNeedNoStages) {
    const auto rates = [](double x, const double* y, double* dy) {
        turning(x, y, dy);
        dy[2] = y[0] * y[1];
    };
    DormandPrince all(3), some(3, {{0, 2}});
    const double y[3] = {1.0, 0.2, 5.0};
    double dy[3];
    rates(0.1, y, dy);
    all.attempt(rates, 0.1, 0.3, y, dy);
    some.attempt(rates, 0.1, 0.3, y, dy);
    for (int i = 0; i < 3; ++i) {
        EXPECT_EQ(some.end()[i], all.end()[i]);
    }
    EXPECT_NE(some.end()[2], y[2]);
}

// The integrators form stages of the coupled variables only; so no rate may look at another, in
// whatever mode: ports open, slug, burn, knock.
TEST(Rates, DependOnTheCoupledVariablesOnly) {
    Engine engine = pumpEngine();
    engine.settings.fuel = Fuel::petrol;
    engine.settings.scavenging = {ScavengingModel::displacementThenMixing, 0.4, 0.1};
    const Model model =
        makeModel(engine.chamber, engine.settings, workingGas(Fuel::petrol), engine.run).value();
    const SupplyState supply = constantSupply(model, 0.0);
    CoupledCylinders cylinders(model, supply);
    CoupledCylinders::State state;
    state.charges = {guessedCharge(model, supply)};
    ASSERT_FALSE(cylinders.advance(state, 1e-5));
    cylinders.alone().keepRestarts = true;
    ASSERT_FALSE(cylinders.advance(state, 1e-5));
    const auto& restarts = cylinders.alone().restarts;
    ASSERT_GT(restarts.size(), 20u);
    Cylinder cylinder(model);
    for (const Integration::Restart& restart : restarts) {
        std::array<double, cylinderVariables> y = restart.y, before{}, after{};
        cylinder.rates(restart.angle, y.data(), restart.memory, supply, before.data());
        for (int i = coupledVariables; i < cylinderVariables; ++i) {
            y[static_cast<std::size_t>(i)] += 0.3;
        }
        cylinder.rates(restart.angle, y.data(), restart.memory, supply, after.data());
        EXPECT_EQ(before, after) << restart.angle;
    }
}

/// Largest relative difference of the charge after a period, at a tolerance and a thousandth of it.
double errorOfAPeriod(const Engine& engine, double tolerance) {
    const Model model =
        makeModel(engine.chamber, engine.settings, workingGas(engine.settings.fuel), engine.run)
            .value();
    const SupplyState supply = constantSupply(model, 0.0);
    CoupledCylinders cylinders(model, supply);
    CoupledCylinders::State state;
    state.charges = {guessedCharge(model, supply)};
    EXPECT_FALSE(cylinders.advance(state, 1e-5));
    CoupledCylinders::State loose = state, tight = state;
    EXPECT_FALSE(cylinders.advance(loose, tolerance));
    EXPECT_FALSE(cylinders.advance(tight, 1e-3 * tolerance));
    const Charge &a = loose.charges.front(), &b = tight.charges.front();
    return std::max({std::fabs(a.air / b.air - 1.0), std::fabs(a.products / b.products - 1.0),
                     std::fabs(a.temperature / b.temperature - 1.0)});
}

// A flow falls as the root of the pressure drop before it turns; a step over that stretch is wrong
// unseen, by thirty tolerances and more. Every engine here has two such turns a cycle.
TEST(Integration, FollowsFlowsToWhereTheyTurn) {
    for (const double speed : {0.6, 0.8, 1.0, 1.2}) {
        for (Engine engine : {pumpEngine(), buoyEngine()}) {
            engine.run.omega *= speed;
            EXPECT_LT(errorOfAPeriod(engine, 3e-7), 20 * 3e-7) << speed;
        }
    }
}

// Steps towards a turn are cut to what the pressure's rise allows, which is that of the place where
// the step begins; of an earlier place it is another, and steps fail.
TEST(Integration, FewStepsFailOnTheWayToATurn) {
    constexpr int evaluationsPerStep = 6;
    for (const Engine& engine : {pumpEngine(), buoyEngine()}) {
        const Model model =
            makeModel(engine.chamber, engine.settings, workingGas(engine.settings.fuel), engine.run)
                .value();
        const SupplyState supply = constantSupply(model, 0.0);
        CoupledCylinders cylinders(model, supply);
        CoupledCylinders::State state;
        state.charges = {guessedCharge(model, supply)};
        for (int i = 0; i < 3; ++i) {
            ASSERT_FALSE(cylinders.advance(state, 3e-7));
        }
        const Effort before = cylinders.effort();
        ASSERT_FALSE(cylinders.advance(state, 3e-7));
        const Effort after = cylinders.effort();
        ASSERT_EQ(after.implicitSteps, before.implicitSteps);
        const auto steps = static_cast<double>(after.explicitSteps - before.explicitSteps);
        const auto tried = static_cast<double>(after.stepEvaluations - before.stepEvaluations) /
                           evaluationsPerStep;
        EXPECT_LT(tried, 1.12 * steps);
    }
}

TEST(Radau, IsOfFifthOrder) {
    for (const int steps : {8, 16, 32}) {
        EXPECT_NEAR(implicitError(steps) / implicitError(2 * steps), 32.0, 8.0);
    }
}

/// Largest error of the continuous extension over one step of y' = y·cos x.
template <class Take>
double denseError(double h, Take&& take) {
    double worst = 0.0;
    double r[DenseStep::denseTerms];
    take(h, r);
    for (double s = 0.05; s < 1.0; s += 0.05) {
        worst = std::max(worst, std::fabs(denseValue(r, s) - std::exp(std::sin(s * h))));
    }
    return worst;
}

void growing(double x, const double* y, double* dy) {
    dy[0] = y[0] * std::cos(x);
}

// Between the ends the explicit method is of order 4, so that its error falls by 2⁵ in one step;
// the collocation polynomial of the implicit one is of order 3 and falls by 2⁴.
TEST(DormandPrince, ContinuousExtensionIsOfFourthOrder) {
    const auto take = [](double h, double* r) {
        DormandPrince step(1);
        const double y = 1.0, dy = 1.0;
        step.attempt(growing, 0.0, h, &y, &dy);
        step.denseCoefficients(0, r);
    };
    EXPECT_NEAR(denseError(0.2, take) / denseError(0.1, take), 32.0, 8.0);
}

TEST(Radau, ContinuousExtensionIsOfThirdOrder) {
    const auto take = [](double h, double* r) {
        Radau step(1, {0});
        const double y = 1.0, dy = 1.0, weight = 1e-13;
        EXPECT_TRUE(step.attempt(growing, 0.0, h, &y, &dy, Eigen::MatrixXd::Ones(1, 1), &weight));
        step.denseCoefficients(0, r);
    };
    EXPECT_NEAR(denseError(0.2, take) / denseError(0.1, take), 16.0, 5.0);
}

// A polynomial of fifth degree in x is integrated exactly by both.
TEST(Integrators, QuadratureOfAQuinticIsExact) {
    const auto quintic = [](double x, const double*, double* dy) { dy[0] = 6.0 * std::pow(x, 4); };
    const double y = 0.0, dy = 0.0, weight = 1e-10;
    DormandPrince explicitStep(1);
    explicitStep.attempt(quintic, 0.0, 1.5, &y, &dy);
    EXPECT_NEAR(explicitStep.end()[0], 1.2 * std::pow(1.5, 5), 1e-13);
    Radau implicitStep(1, {0});
    ASSERT_TRUE(
        implicitStep.attempt(quintic, 0.0, 1.5, &y, &dy, Eigen::MatrixXd::Zero(1, 1), &weight));
    EXPECT_NEAR(implicitStep.end()[0], 1.2 * std::pow(1.5, 5), 1e-13);
}

// y' = −10⁶·(y − cos x): an implicit step ten thousand relaxation times long stays on the slow
// solution, and its error estimate does not see the fast one.
TEST(Radau, FollowsASlowSolutionThroughAStiffEquation) {
    const double rate = 1e6;
    const auto stiff = [rate](double x, const double* y, double* dy) {
        dy[0] = -rate * (y[0] - std::cos(x));
    };
    Radau step(1, {0});
    double y = std::cos(0.3) + std::sin(0.3) / rate;
    double dy = 0.0;
    const double weight = 1e-7;
    stiff(0.3, &y, &dy);
    ASSERT_TRUE(
        step.attempt(stiff, 0.3, 0.01, &y, &dy, Eigen::MatrixXd::Constant(1, 1, -rate), &weight));
    EXPECT_NEAR(step.end()[0], std::cos(0.31), 1e-6);
    EXPECT_LT(step.error(&weight), 1.0);
}

// The difference of the two orders is a fair estimate: within a factor of a hundred above the error
// of the fifth order, and never below it here.
TEST(DormandPrince, ErrorEstimateBoundsTheError) {
    for (const double h : {0.05, 0.2, 0.5}) {
        DormandPrince step(1);
        const double y = 1.0, dy = 1.0, weight = 1.0;
        step.attempt(growing, 0.0, h, &y, &dy);
        const double error = std::fabs(step.end()[0] - std::exp(std::sin(h)));
        EXPECT_GT(step.error(&weight), error);
        EXPECT_LT(step.error(&weight), 1000.0 * error);
    }
}

} // namespace
} // namespace lobewright::gas
