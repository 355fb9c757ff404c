#include "core/loads/loads.h"
#include "core/loads/quadrature.h"
#include "core/units.h"
#include "tests/laws.h"
#include "tests/machines.h"
#include "tests/traces.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::loads {
namespace {

using machines::Law;
using units::pi;

const Samples coarse = Samples::LinSpaced(64, 0.0, 6.2);

Friction frictionless() {
    Friction f;
    f.rings.clear();
    f.guide = f.rolling = f.rollerBearing = f.slip = f.shaftBearing = 0.0;
    return f;
}

TEST(PeriodQuadrature, WeightsAddUpToThePeriod) {
    const auto machine = machines::pair(machines::pumpMechanism(), machines::pumpTrack());
    const Quadrature q = periodQuadrature(machine, {0.1, 17.0, -3.0});
    EXPECT_NEAR(q.weight.sum(), pi, 1e-14);
    EXPECT_NEAR((q.weight * (2.0 * q.theta).sin().square()).sum(), pi / 2.0, 1e-14);
    EXPECT_NEAR((q.weight * q.theta.square()).sum(), pi * pi * pi / 3.0, 1e-13);
}

// |x − a| within a piece is beyond any rule until the piece is divided at a. Breaks count from any
// period; on a bound, or on the end of the period, they divide nothing.
TEST(PeriodQuadrature, PiecesAreDividedWhereAKinkMoves) {
    const auto machine = machines::pair(machines::pumpMechanism(), machines::pumpTrack());
    const Quadrature whole = periodQuadrature(machine, {0.1});
    for (const double kink : {0.7123, 2.9001}) {
        const double exact = 0.5 * (kink * kink + (pi - kink) * (pi - kink));
        const auto sum = [kink](const Samples& theta, const Samples& weight) {
            return (weight * (theta - kink).abs()).sum();
        };
        EXPECT_GT(std::abs(sum(whole.theta, whole.weight) - exact), 1e-7);
        const Division division =
            dividedAt(whole, {kink - pi, kink, kink + 0.003, 0.1, 0.1 - pi, pi});
        Samples weight = whole.weight;
        for (const std::size_t piece : division.pieces) {
            weight.segment(static_cast<Eigen::Index>(5 * piece), 5) = 0.0;
        }
        EXPECT_NEAR(sum(whole.theta, weight) + sum(division.theta, division.weight), exact, 1e-13);
        EXPECT_NEAR(weight.sum() + division.weight.sum(), pi, 1e-14);
    }
}

class EveryLaw : public testing::TestWithParam<Law> {
  protected:
    mechanism::OpposedPair machine() const {
        return machines::pair(machines::pumpMechanism(),
                              machines::lobe(2, 0.036, 82, 4, 78, 16, GetParam()),
                              machines::lobe(2, 0.034, 80, 2, 84, 14, GetParam()));
    }
};

// Gas work of the trace is known in closed form.
TEST_P(EveryLaw, ShaftWorkIsGasWorkWhenFrictionless) {
    auto m = machines::pumpMechanism();
    m.closedTrack = true;
    const auto pair = machines::pair(m, machines::lobe(2, 0.036, 82, 4, 78, 16, GetParam()),
                                     machines::lobe(2, 0.034, 80, 2, 84, 14, GetParam()));
    const traces::BurnAtIdc cycle{pair};
    const auto trace = cycle.trace();
    const Friction none = frictionless();
    const Loads loads =
        solveLoads({pair, none, 188.5, 1e5, coarse, &trace, nullptr, cycle.breaks()});
    const double work = 2 * 3 * cycle.work();
    EXPECT_NEAR(loads.work.gas, work, 1e-9 * work);
    EXPECT_NEAR(loads.work.shaft, work, 1e-6 * work);
    EXPECT_EQ(loads.work.friction, 0.0);
    EXPECT_NEAR(loads.meanTorque, work / (2 * pi), 1e-6 * work);
}

TEST_P(EveryLaw, ShaftWorkIsGasWorkLessFrictionWithEverythingOn) {
    for (const bool closed : {true, false}) {
        auto m = machines::pumpMechanism();
        m.closedTrack = closed;
        const auto pair = machines::pair(m, machines::lobe(2, 0.036, 82, 4, 78, 16, GetParam()),
                                         machines::lobe(2, 0.034, 80, 2, 84, 14, GetParam()));
        traces::BurnAtIdc cycle{pair};
        cycle.outer = 2.5e5; // enough to hold the pistons on an open track
        const auto trace = cycle.trace();
        const Friction all;
        const Loads loads =
            solveLoads({pair, all, 40.0, 1e5, coarse, &trace, nullptr, cycle.breaks()});
        const double work = 2 * 3 * cycle.work();
        const double friction = 2 * pi * loads.losses.total();
        EXPECT_GT(friction, 0.01 * work);
        EXPECT_GE(loads.lowestContactForce.inlet.value, 0.0);
        EXPECT_NEAR(loads.work.shaft, work - friction, 1e-6 * work);
        EXPECT_LT(loads.work.residual, 1e-6);
    }
}

TEST_P(EveryLaw, InertiaDoesNoWorkOverATurn) {
    const auto pair = machine();
    const Friction none = frictionless();
    const Loads loads = solveLoads({pair, none, 400.0, 1e5, coarse});
    const double moved =
        2 * 3 *
        (loads.nodes.weight *
         (loads.nodes.piston.inlet.inertiaForce * loads.nodes.piston.inlet.lift.y1).abs())
            .sum();
    EXPECT_GT(moved, 1.0);
    EXPECT_NEAR(loads.work.inertia, 0.0, 1e-9 * moved);
}

INSTANTIATE_TEST_SUITE_P(Laws, EveryLaw, testing::ValuesIn(motion::allLaws),
                         [](const auto& law) { return motion::testName(law.param); });

// Whatever the lever arm −y' does over the turn, the mean torque is the work of a turn over 2π.
TEST(MeanTorque, DoesNotDependOnTheLever) {
    const Friction none = frictionless();
    auto m = machines::pumpMechanism();
    m.exhaustLead = 0.0;
    m.closedTrack = true;
    std::vector<double> means;
    for (const Law law : {Law::harmonic, Law::modifiedSine, Law::polynomial4567}) {
        const auto pair = machines::pair(m, machines::wave(2, 0.036, law));
        const traces::BurnAtIdc cycle{pair};
        const auto trace = cycle.trace();
        const Loads loads =
            solveLoads({pair, none, 188.5, 1e5, coarse, &trace, nullptr, cycle.breaks()});
        means.push_back(loads.meanTorque);
        EXPECT_NEAR(loads.meanTorque, 6 * cycle.work() / (2 * pi), 1e-6 * loads.meanTorque);
    }
    EXPECT_NEAR(means[0], means[1], 1e-6 * means[0]);
    EXPECT_NEAR(means[0], means[2], 1e-6 * means[0]);
}

TEST(WorkBalance, StaysOpenWhereAPistonLiftsOff) {
    const auto pair = machines::pair(machines::pumpMechanism(), machines::pumpTrack());
    const Friction all;
    const Loads loads = solveLoads({pair, all, 600.0, 1e5, coarse});
    EXPECT_LT(loads.lowestContactForce.inlet.value, 0.0);
    EXPECT_GT(loads.work.residual, 1e-3);
}

TEST(WorkBalance, LossesAreMeanTorquesOfTheirParts) {
    const auto pair = machines::pair(machines::pumpMechanism(), machines::pumpTrack());
    const traces::BurnAtIdc cycle{pair};
    const auto trace = cycle.trace();
    const Friction all;
    const Samples fine = Samples::LinSpaced(20000, 0.0, 2 * pi * 19999 / 20000);
    const Loads loads = solveLoads({pair, all, 188.5, 1e5, fine, &trace, nullptr, cycle.breaks()});
    const auto mean = [&](Samples PistonLoads::*part) {
        return 3 * ((loads.piston.inlet.*part).mean() + (loads.piston.exhaust.*part).mean());
    };
    EXPECT_NEAR(loads.losses.ring, mean(&PistonLoads::ringLoss), 2e-4 * loads.losses.ring);
    EXPECT_NEAR(loads.losses.guide, mean(&PistonLoads::guideLoss), 2e-4 * loads.losses.guide);
    EXPECT_NEAR(loads.losses.slip, mean(&PistonLoads::slipLoss), 2e-4 * loads.losses.slip);
    EXPECT_NEAR(loads.losses.roller,
                mean(&PistonLoads::rollingLoss) + mean(&PistonLoads::rollerBearingLoss),
                2e-4 * loads.losses.roller);
    EXPECT_NEAR(loads.losses.shaftBearing, loads.shaftBearingLoss.mean(),
                1e-3 * loads.losses.shaftBearing);
    EXPECT_NEAR(loads.meanTorque, loads.totalTorque.mean(), 1e-3 * loads.meanTorque);
    EXPECT_NEAR(meanEffectivePressure(pair, loads.meanTorque),
                2 * pi * loads.meanTorque / (2 * 3 * pair.sweptVolume()), 1e-9);
}

TEST(WorkBalance, UnlikeCylindersAddUpOneByOne) {
    const auto pair = machines::pair(machines::pumpMechanism(), machines::pumpTrack());
    const traces::BurnAtIdc cycle{pair};
    const auto trace = cycle.trace();
    const Friction all;
    const Loads alike =
        solveLoads({pair, all, 188.5, 1e5, coarse, &trace, nullptr, cycle.breaks()});
    const Loads each =
        solveLoads({pair, all, 188.5, 1e5, coarse, &trace, nullptr, cycle.breaks(), true});
    EXPECT_NEAR(alike.meanTorque, each.meanTorque, 1e-10 * alike.meanTorque);
    EXPECT_NEAR(alike.losses.guide, each.losses.guide, 1e-10 * alike.losses.guide);
}

} // namespace
} // namespace lobewright::loads
