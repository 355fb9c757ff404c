#include "core/balance/shaking.h"
#include "core/loads/orders.h"
#include "core/units.h"
#include "tests/machines.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::balance {
namespace {

using units::degree;
using units::pi;

const Samples theta = loads::evenAngles(720);

TEST(Shaking, OfEqualOpposedPistonsWithoutLeadIsNothing) {
    for (const motion::Law law : motion::allLaws) {
        auto m = machines::pumpMechanism();
        m.exhaustLead = 0.0;
        m.pistonMass = {0.6, 0.6};
        const auto pair = machines::pair(m, machines::lobe(2, 0.036, 82, 4, 78, 16, law));
        const Shaking found = shaking(pair, 188.5, theta);
        const double one = 0.6 * 188.5 * 188.5 * pair.lift(End::inlet, theta).y2.abs().maxCoeff();
        EXPECT_LE(found.force.abs().maxCoeff(), 1e-12 * one);
        EXPECT_LE(found.momentX.abs().maxCoeff(), 1e-12 * one * 0.095);
        EXPECT_LE(found.momentY.abs().maxCoeff(), 1e-12 * one * 0.095);
    }
}

// Harmonic tracks in cosines: ÿ = ω²·S·N²/2·cos Nφ.
TEST(Shaking, OfHarmonicTracksIsASumOfCosines) {
    auto m = machines::pumpMechanism();
    m.cylinderAngles = {{0.0, 1.0, 2.5}};
    const auto pair = machines::pair(m, machines::wave(2, 0.036));
    const Shaking found = shaking(pair, 150.0, theta);
    const double unit = 150.0 * 150.0 * 0.036 * 2;
    for (Eigen::Index i = 0; i < 720; i += 7) {
        double force = 0.0, mx = 0.0, my = 0.0;
        for (const double psi : {0.0, 1.0, 2.5}) {
            const double phi = theta(i) - psi;
            const double one =
                unit * (-0.62 * std::cos(2 * phi) + 0.66 * std::cos(2 * (phi + 6 * degree)));
            force += one;
            mx += 0.095 * std::sin(psi) * one;
            my -= 0.095 * std::cos(psi) * one;
        }
        EXPECT_NEAR(found.force(i), force, 1e-11 * unit);
        EXPECT_NEAR(found.momentX(i), mx, 1e-11 * unit);
        EXPECT_NEAR(found.momentY(i), my, 1e-11 * unit);
    }
}

// Exact amplitudes against those of the sampled sums, which alias where the jerk jumps.
TEST(ShakingOrders, EqualTheOrdersOfTheSampledForces) {
    const auto pair = machines::pair(machines::pumpMechanism(), machines::pumpTrack());
    const Shaking sampled = shaking(pair, 188.5, theta);
    const ShakingOrders found = shakingOrders(pair, 188.5, 24);
    const double scale = found.cylinder.maxCoeff();
    const Samples force = loads::orders(sampled.force, 24).abs();
    const Samples mx = loads::orders(sampled.momentX, 24).abs();
    const Samples my = loads::orders(sampled.momentY, 24).abs();
    EXPECT_NEAR((found.force - force).abs().maxCoeff(), 0.0, 5e-3 * scale);
    EXPECT_NEAR((found.momentX - mx).abs().maxCoeff(), 0.0, 5e-3 * scale);
    EXPECT_NEAR((found.momentY - my).abs().maxCoeff(), 0.0, 5e-3 * scale);
}

TEST(ShakingOrders, RockingMomentThatTurnsForwardStaysForward) {
    auto m = machines::pumpMechanism();
    m.cylinders = 3;
    const auto pair = machines::pair(m, machines::wave(1, 0.036));
    const ShakingOrders found = shakingOrders(pair, 188.5, 4);
    EXPECT_GT(found.forward(1), 0.0);
    EXPECT_NEAR(found.backward(1), 0.0, 1e-12 * found.forward(1));
    EXPECT_NEAR(found.momentX(1), found.forward(1), 1e-12 * found.forward(1));
    EXPECT_NEAR(found.momentY(1), found.forward(1), 1e-12 * found.forward(1));
}

} // namespace
} // namespace lobewright::balance
