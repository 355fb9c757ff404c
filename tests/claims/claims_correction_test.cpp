#include "core/claims/claims_correction.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::study {
namespace {

constexpr AmbientAir reference{99e3, 298.0, 0.0};

TEST(PowerCorrection, ReferenceAirNeedsNone) {
    EXPECT_DOUBLE_EQ(sparkCorrection(reference).factor, 1.0);
    EXPECT_TRUE(sparkCorrection(reference).outsideLimits.empty());
    for (const auto charger : {Charger::none, Charger::turbo, Charger::turboAfterCooled}) {
        EXPECT_DOUBLE_EQ(compressionCorrection(reference, charger, 0.05).factor, 1.0);
    }
}

// ISO 15550: 100 kPa at 30 % humidity and 298 K; the vapour takes 0.3·3.17 kPa (steam tables:
// 3.169 kPa at 25 °C), which is the same dry air to 0.1 %.
TEST(PowerCorrection, BothStandardsShareTheReferenceState) {
    EXPECT_NEAR(sparkCorrection({100e3, 298.0, 0.30}).factor, 1.0, 1e-3);
    EXPECT_NEAR(saturationPressure(298.15), 3169.0, 10.0);
    EXPECT_NEAR(saturationPressure(273.16), 611.7, 1.0);
    EXPECT_NEAR(saturationPressure(333.15), 19946.0, 100.0);
}

TEST(PowerCorrection, SparkIgnitionByHand) {
    // (99/95)^1.2·(308/298)^0.6 = 1.071753: outside 0.93 … 1.07
    const auto thin = sparkCorrection({95e3, 308.0, 0.0});
    EXPECT_NEAR(thin.factor, 1.0717527, 1e-7);
    EXPECT_NE(thin.outsideLimits.english().find("factor"), std::string::npos);
    EXPECT_NE(sparkCorrection({99e3, 280.0, 0.0}).outsideLimits.english().find('K'),
              std::string::npos);
}

TEST(PowerCorrection, CompressionIgnitionByHand) {
    const AmbientAir thin{95e3, 308.0, 0.0};
    // q_c 50: f_m = 0.66; [(99/95)·(308/298)^0.7]^0.66
    EXPECT_NEAR(compressionCorrection(thin, Charger::none, 0.050).factor,
                std::pow(99.0 / 95.0 * std::pow(308.0 / 298.0, 0.7), 0.66), 1e-12);
    // q_c 30: f_m = 0.2, 1.0129526
    EXPECT_NEAR(compressionCorrection(thin, Charger::mechanical, 0.030).factor, 1.0129526, 1e-7);
    // q_c 70, turbocharged: f_m = 1.2, [(99/95)^0.7·(308/298)^1.5]^1.2 = 1.0986206
    EXPECT_NEAR(compressionCorrection(thin, Charger::turbo, 0.070).factor, 1.0986206, 1e-7);
}

TEST(PowerCorrection, EngineFactorIsContinuousAtItsLimits) {
    const AmbientAir thin{95e3, 308.0, 0.0};
    const auto factor = [&](double q) {
        return *compressionCorrection(thin, Charger::none, q).engineFactor;
    };
    EXPECT_NEAR(factor(0.0371999), factor(0.0372001), 1e-3);
    EXPECT_NEAR(factor(0.0649999), factor(0.0650001), 1e-4);
}

} // namespace
} // namespace lobewright::study
