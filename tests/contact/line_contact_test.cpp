#include "core/contact/line_contact.h"
#include "core/units.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::contact {
namespace {

TEST(ContactModulus, OfEqualBodiesIsHalfTheirPlaneStrainModulus) {
    const Elastic steel{210e9, 0.3};
    EXPECT_NEAR(contactModulus(steel, steel), 210e9 / (2 * (1 - 0.09)), 1.0);
    const Elastic rigid{1e30, 0.0};
    EXPECT_NEAR(contactModulus(steel, rigid), 210e9 / 0.91, 1e3);
}

// p₀ ∝ √N: four times the load, twice the pressure, to the last place.
TEST(LineContact, PeakPressureGrowsWithRootOfForce) {
    const double once = linePeakPressure(1234.0, 0.014, 0.016, 115e9);
    EXPECT_DOUBLE_EQ(linePeakPressure(4 * 1234.0, 0.014, 0.016, 115e9), 2 * once);
}

// The ellipse of pressure carries the load: N = π/2·p₀·b·L.
TEST(LineContact, PressureOverTheStripIsTheLoad) {
    const double p = linePeakPressure(5000, 0.02, 0.0134, 113e9);
    const double b = lineHalfWidth(5000, 0.02, 0.0134, 113e9);
    EXPECT_NEAR(0.5 * units::pi * p * b * 0.02, 5000.0, 1e-9);
}

TEST(LineContact, ArraysEqualScalars) {
    Samples n(3), r(3);
    n << 0.0, 100.0, 5000.0;
    r << 0.01, 0.02, 0.03;
    const Samples p = linePeakPressure(n, 0.014, r, 113e9);
    const Samples b = lineHalfWidth(n, 0.014, r, 113e9);
    EXPECT_EQ(p(0), 0.0);
    for (Eigen::Index i = 0; i < 3; ++i) {
        EXPECT_NEAR(p(i), linePeakPressure(n(i), 0.014, r(i), 113e9), 1e-6);
        EXPECT_NEAR(b(i), lineHalfWidth(n(i), 0.014, r(i), 113e9), 1e-15);
    }
}

// On the axis τ/p₀ = ζ − ζ²/√(1 + ζ²) [Johnson 1985, eq. 4.46]: no depth has more.
TEST(LineContact, DeepestShearIsTheMaximumOnTheAxis) {
    const DeepestShear deepest = lineDeepestShear();
    const auto shear = [](double z) { return z - z * z / std::sqrt(1 + z * z); };
    EXPECT_NEAR(shear(deepest.depth), deepest.ratio, 1e-15);
    for (double z = 0.0; z < 3.0; z += 1e-3) {
        EXPECT_LE(shear(z), deepest.ratio + 1e-15);
    }
}

} // namespace
} // namespace lobewright::contact
