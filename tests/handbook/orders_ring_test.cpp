// Orders of wave tracks: harmonic content of the laws (exact, by integration of their definitions)
// and the rules of a ring of M equal cylinders on N lobes (sums of M phases).
#include "core/balance/shaking.h"
#include "core/units.h"
#include "tests/machines.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::balance {
namespace {

using machines::Law;
using units::pi;

mechanism::Mechanism ring(int cylinders, double inletMass, double exhaustMass, double lead) {
    auto m = machines::pumpMechanism();
    m.cylinders = cylinders;
    m.pistonMass = {inletMass, exhaustMass};
    m.exhaustLead = lead;
    return m;
}

struct LawOrders {
    Law law;
    double first, third, fifth, seventh;
};

// s'' = Σ A_k·cos(kπx), so order k·N of the force is m·A_k·h·(ω/β)², β = π/N.
TEST(OrdersHandbook, ForceOfOnePistonHasTheOrdersOfItsLaw) {
    const LawOrders rows[] = {{Law::harmonic, 4.934802, 0, 0, 0},
                              {Law::cycloidal, 5.333333, -3.200000, -0.761905, -0.355556},
                              {Law::polynomial345, 5.248945, -2.336886, -0.925378, -0.483953},
                              {Law::polynomial4567, 5.468702, -4.534879, -0.635438, -0.168832},
                              {Law::modifiedSine, 5.160396, -1.465997, -0.915694, -0.681065},
                              {Law::modifiedTrapezoid, 5.252489, -2.639170, 0.125168, -0.987694}};
    const double stroke = 0.04, omega = 200.0;
    const int lobes = 2;
    for (const LawOrders& row : rows) {
        const auto pair =
            machines::pair(ring(1, 0.5, 0.0, 0.0), machines::wave(lobes, stroke, row.law));
        const ShakingOrders found = shakingOrders(pair, omega, 24);
        const double unit = 0.5 * stroke * std::pow(omega * lobes / pi, 2);
        const double expected[] = {row.first, row.third, row.fifth, row.seventh};
        for (int k = 0; k < 4; ++k) {
            EXPECT_NEAR(found.cylinder(lobes * (2 * k + 1)) / unit, std::abs(expected[k]), 1e-6)
                << static_cast<int>(row.law) << " " << 2 * k + 1;
        }
        EXPECT_NEAR(found.cylinder(2 * lobes), 0.0, 1e-9 * unit);
    }
}

// Axial force of order q survives only if M divides q; a couple turning with the shaft only if M
// divides q − 1, against it only if M divides q + 1.
TEST(OrdersHandbook, RingRulesHoldForOneToFourLobesAndOneToEightCylinders) {
    for (int lobes = 1; lobes <= 4; ++lobes) {
        for (int cylinders = 1; cylinders <= 8; ++cylinders) {
            const auto pair = machines::pair(ring(cylinders, 0.6, 0.0, 0.0),
                                             machines::wave(lobes, 0.03, Law::cycloidal));
            const ShakingOrders found = shakingOrders(pair, 100.0, 24);
            for (int q = lobes; q <= 24; q += lobes) {
                const double one = found.cylinder(q);
                const double couple = 0.5 * 0.095 * one;
                const double tolerance = 1e-12 * found.cylinder.maxCoeff();
                const double axial = q % cylinders == 0 ? cylinders : 0;
                const double forward = (q - 1) % cylinders == 0 ? cylinders : 0;
                const double backward = (q + 1) % cylinders == 0 ? cylinders : 0;
                EXPECT_NEAR(found.force(q), axial * one, tolerance);
                EXPECT_NEAR(found.forward(q), forward * couple, tolerance);
                EXPECT_NEAR(found.backward(q), backward * couple, tolerance);
            }
        }
    }
}

TEST(OrdersHandbook, RingTableIsMet) {
    const struct {
        int lobes, cylinders;
        double axial, forward, backward; // in units of one cylinder
    } rows[] = {
        {2, 3, 0, 0, 3}, {2, 4, 0, 0, 0}, {2, 6, 0, 0, 0}, {3, 4, 0, 0, 4}, {1, 3, 0, 3, 0}};
    for (const auto& row : rows) {
        const auto pair =
            machines::pair(ring(row.cylinders, 0.6, 0.0, 0.0), machines::wave(row.lobes, 0.03));
        const ShakingOrders found = shakingOrders(pair, 100.0, 24);
        const double one = found.cylinder(row.lobes), couple = 0.5 * 0.095 * one;
        EXPECT_NEAR(found.force(row.lobes) / one, row.axial, 1e-12);
        EXPECT_NEAR(found.forward(row.lobes) / couple, row.forward, 1e-12);
        EXPECT_NEAR(found.backward(row.lobes) / couple, row.backward, 1e-12);
    }
}

// Equal opposed pistons with a lead d leave 2·sin(N·d/2) of one piston's order N: 0.209057 at 6° on
// two lobes.
TEST(OrdersHandbook, LeadLeavesTwiceTheSineOfHalfTheLead) {
    const auto one =
        shakingOrders(machines::pair(ring(1, 0.6, 0.0, 0.0), machines::wave(2, 0.04)), 100.0, 4);
    const auto both = shakingOrders(
        machines::pair(ring(1, 0.6, 0.6, 6 * units::degree), machines::wave(2, 0.04)), 100.0, 4);
    EXPECT_NEAR(both.force(2) / one.force(2), 0.209057, 5e-7);
    for (int lobes = 1; lobes <= 4; ++lobes) {
        for (const double lead : {1.0, 4.0, 11.0}) {
            const double d = lead * units::degree;
            const auto single = shakingOrders(
                machines::pair(ring(1, 0.6, 0.0, 0.0), machines::wave(lobes, 0.04)), 100.0, 4);
            const auto pair = shakingOrders(
                machines::pair(ring(1, 0.6, 0.6, d), machines::wave(lobes, 0.04)), 100.0, 4);
            EXPECT_NEAR(pair.force(lobes) / single.force(lobes), 2 * std::sin(lobes * d / 2),
                        1e-12);
        }
    }
}

} // namespace
} // namespace lobewright::balance
