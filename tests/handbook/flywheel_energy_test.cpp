// Speed fluctuation by the energy method, ΔE = I·C_s·ω² [Shigley, Mechanical Engineering Design,
// §16-6; Norton, Design of Machinery, §11.11] (from memory).
#include "core/balance/speed_fluctuation.h"
#include "core/loads/orders.h"
#include "core/units.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::balance {
namespace {

const Samples theta = loads::evenAngles(720);

// Published values: 2 (Khurmi and Gupta, example 16.1; from memory).
// Khurmi and Gupta, Theory of Machines, example 16.1 (from memory): 6500 kg at 1.8 m, 56 kJ,
// 120 rpm: printed 121 and 119 rpm.
TEST(FlywheelHandbook, F1SpeedsOfAKnownFluctuationOfEnergy) {
    const double inertia = 6500 * 1.8 * 1.8;
    const double omega = 120 * units::revPerMinute;
    EXPECT_NEAR(fluctuation(56e3, inertia, omega), 0.016839, 5e-7);
    const SpeedRange range = speedRange(56e3, inertia, omega);
    EXPECT_NEAR(range.highest / units::revPerMinute, 121.0103, 5e-5);
    EXPECT_NEAR(range.lowest / units::revPerMinute, 118.9897, 5e-5);
    EXPECT_NEAR(0.5 * inertia * (range.highest * range.highest - range.lowest * range.lowest), 56e3,
                1e-6);
}

// Published values: 2 (Uicker, Pennock and Shigley, P18.1 and P18.2; a page with the solutions).
// Uicker, Pennock and Shigley, P18.1 and P18.2: 890.7 J, C_s 0.025, and 394.38 J, C_s 0.0125, at
// 4600 rpm: 0.154 and 0.136 kg·m².
TEST(FlywheelHandbook, F2F3InertiaForAFluctuation) {
    const double omega = 4600 * units::revPerMinute;
    EXPECT_NEAR(inertiaFor(890.7, 0.025, omega), 0.153539, 5e-7);
    EXPECT_NEAR(inertiaFor(394.38, 0.0125, omega), 0.135967, 5e-7);
}

// Three-crank engine: T = 25 − 7.5·sin 3t, load 25 + 3.6·sin t kN·m, 360 kg·m², 450 rpm:
// 1178.097 kW, 12.2 kJ, 1.52607 %; under a constant load 5.0 kJ.
TEST(FlywheelHandbook, F5ThreeCrankEngineUnderASwingingLoad) {
    const double omega = 450 * units::revPerMinute;
    const Samples engine = 25e3 - 7.5e3 * (3 * theta).sin();
    const EnergyFluctuation constant = energyFluctuation(engine);
    EXPECT_NEAR(constant.meanTorque * omega / 1e3, 1178.097, 5e-4);
    EXPECT_NEAR(constant.energy, 5.0e3, 1e-5 * 5e3);
    const EnergyFluctuation swinging = energyFluctuation(engine - 3.6e3 * theta.sin());
    EXPECT_NEAR(swinging.energy, 12.2e3, 1e-5 * 12.2e3);
    EXPECT_NEAR(100 * fluctuation(swinging.energy, 360, omega), 1.52607, 2e-5);
}

// T = T_m + T_a·sin(N·t): ΔE = 2·T_a/N; 800 N·m, N = 4, 0.5 kg·m², 3000 rpm: C_s = 0.00810569.
TEST(FlywheelHandbook, F6SineTorque) {
    const EnergyFluctuation found = energyFluctuation(300 + 800 * (4 * theta).sin());
    EXPECT_NEAR(found.energy, 400.0, 1e-5 * 400);
    EXPECT_NEAR(fluctuation(found.energy, 0.5, 3000 * units::revPerMinute), 0.00810569, 1e-7);
    for (int n = 1; n <= 12; ++n) {
        const double energy = energyFluctuation(800 * (n * theta).sin()).energy;
        EXPECT_NEAR(energy, 1600.0 / n, 1e-4 * energy) << n;
    }
}

} // namespace
} // namespace lobewright::balance
