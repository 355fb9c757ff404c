#include "core/gas/models/orifice.h"

#include <gtest/gtest.h>

// Flow function of the isentropic orifice [Heywood, appendix C], tabulated from its closed form.
namespace lobewright::gas {
namespace {

double psi(double ratio, double gamma) {
    return flowFunction(ratio, gamma).value;
}

TEST(Orifice, SubsonicFlowFunctionOfAir) {
    const double table[][2] = {{0.98, 0.197846}, {0.95, 0.307641}, {0.90, 0.422581},
                               {0.80, 0.560661}, {0.70, 0.638317}, {0.60, 0.676915}};
    for (const auto& [ratio, value] : table) {
        EXPECT_NEAR(psi(ratio, 1.4), value, 6e-7) << ratio;
    }
}

TEST(Orifice, ChokedFlowFunctionAndCriticalRatio) {
    const double table[][3] = {{1.40, 0.528282, 0.684731},
                               {1.35, 0.536851, 0.676145},
                               {1.30, 0.545728, 0.667262},
                               {1.25, 0.554929, 0.658065},
                               {1.667, 0.487092, 0.726232}};
    for (const auto& [gamma, critical, choked] : table) {
        EXPECT_NEAR(psi(0.1, gamma), choked, 6e-7);
        EXPECT_NEAR(psi(0.5 * critical, gamma), choked, 6e-7);
        EXPECT_GT(flowFunction(critical + 1e-6, gamma).choking, 0.0);
        EXPECT_LT(flowFunction(critical - 1e-6, gamma).choking, 0.0);
    }
}

// 2 bar, 300 K, R = 287 J/(kg·K): mass flux in kg/(s·m²); with C_d 0.7 and 1 cm² choked
// 0.03266982 kg/s.
TEST(Orifice, MassFluxOfAirAtTwoBar) {
    const double table[][2] = {
        {0.98, 134.8512}, {0.90, 288.0303}, {0.60, 461.3842}, {0.50, 466.7121}};
    for (const auto& [ratio, flux] : table) {
        EXPECT_NEAR(orificeFlow(1.0, 2e5, 300.0, 287.0, psi(ratio, 1.4)), flux, 5e-4);
    }
    EXPECT_NEAR(orificeFlow(0.7e-4, 2e5, 300.0, 287.0, psi(0.3, 1.4)), 0.03266982, 5e-9);
}

// For a small drop the flow is that of an incompressible fluid, √(2·Δp/p): the first correction is
// of the order of the drop. Below 1e-4 the program's orifice is laminar.
TEST(Orifice, SmallDropsFlowIncompressibly) {
    for (const double drop : {1.01e-4, 3e-4, 1e-3}) {
        EXPECT_NEAR(psi(1.0 - drop, 1.4) / std::sqrt(2.0 * drop), 1.0, 2.0 * drop);
    }
}

} // namespace
} // namespace lobewright::gas
