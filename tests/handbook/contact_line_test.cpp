// Line contact, worked cases. Formulas: Johnson, Contact Mechanics, ch. 4 (from memory); figures
// evaluated from them in double precision, printed figures where a book has them.
#include "core/contact/line_contact.h"
#include "core/units.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::contact {
namespace {

struct LineCase {
    const char* name;
    double load, length, radius; // N, m, m
    Elastic steel;
    double modulus, halfWidth, pressure, shear, depth; // GPa, mm, MPa, MPa, mm
};

void PrintTo(const LineCase& each, std::ostream* out) {
    *out << each.name;
}

class HertzLineHandbook : public testing::TestWithParam<LineCase> {};

TEST_P(HertzLineHandbook, IsMetToItsDigits) {
    const LineCase c = GetParam();
    const double modulus = contactModulus(c.steel, c.steel);
    const double p = linePeakPressure(c.load, c.length, c.radius, modulus);
    const double b = lineHalfWidth(c.load, c.length, c.radius, modulus);
    const DeepestShear deepest = lineDeepestShear();
    EXPECT_NEAR(modulus / 1e9, c.modulus, 1e-7 * c.modulus);
    EXPECT_NEAR(b * 1e3, c.halfWidth, 1e-6 * c.halfWidth);
    EXPECT_NEAR(p / 1e6, c.pressure, 1e-6 * c.pressure);
    EXPECT_NEAR(deepest.ratio * p / 1e6, c.shear, 1e-5 * c.shear);
    EXPECT_NEAR(deepest.depth * b * 1e3, c.depth, 3e-4 * c.depth); // tabulated with 0.786
}

constexpr double inch = 0.0254, poundForce = 4.4482216152605;
const double psi = poundForce / (inch * inch);
const Elastic roller206{206e9, 0.3};

INSTANTIATE_TEST_SUITE_P(
    Cases, HertzLineHandbook,
    testing::Values(LineCase{"L1ConvexOnConvex", 5000, 0.02, 1 / (1 / 0.015 + 1 / 0.125), roller206,
                             113.186813, 0.194072395, 820.080275, 246.2562, 0.15254},
                    LineCase{"L2OnFlat", 5000, 0.02, 0.015, roller206, 113.186813, 0.205386918,
                             774.903022, 232.6902, 0.16143},
                    LineCase{"L3InTrough", 5000, 0.02, 1 / (1 / 0.015 - 1 / 0.125), roller206,
                             113.186813, 0.218943190, 726.923469, 218.2828, 0.17209},
                    LineCase{"L4InchUnits", 2000 * poundForce, inch,
                             1 / (1 / (0.5 * inch) + 1 / (1.5 * inch)), Elastic{30e6 * psi, 0.3},
                             113.649841, 0.193327877, 1153.36916, 346.337, 0.15196},
                    LineCase{"L5ParallelCylinders", 5, 0.01, 0.006, Elastic{210e9, 0.3}, 115.384615,
                             0.005753627, 55.32334, 16.61266, 0.0045224}),
    [](const auto& each) { return std::string(each.param.name); });

// Published values: 2 (Roark, table 14.1; from memory).
// Roark, table 14.1 case 2 (from memory): σ = 0.591·√(p·E/K_D), width 2.15·√(p·K_D/E),
// K_D = D₁D₂/(D₁ + D₂): 167 160 psi and 0.0152 in for case L4; the rounded factors are good to
// 0.2 %.
TEST(HertzLineHandbook, RoarkFormulaAgreesWithinItsRounding) {
    const Elastic steel{30e6 * psi, 0.3};
    const double radius = 1 / (1 / (0.5 * inch) + 1 / (1.5 * inch));
    const double modulus = contactModulus(steel, steel);
    const double load = 2000 * poundForce;
    EXPECT_NEAR(linePeakPressure(load, inch, radius, modulus) / psi, 167160.0, 0.002 * 167160.0);
    EXPECT_NEAR(2 * lineHalfWidth(load, inch, radius, modulus) / inch, 0.0152028, 0.002 * 0.0152);
}

// Published values: 3 (Stachowiak and Batchelor, ch. 7; from memory).
// Stachowiak and Batchelor, Engineering Tribology, ch. 7, parallel cylinders (from memory): printed
// b = 5.75e-6 m, p_max = 55.4 MPa, τ_max = 16.8 MPa with a factor 0.304.
TEST(HertzLineHandbook, PrintedTextbookExampleIsMetToItsDigits) {
    const Elastic steel{210e9, 0.3};
    const double modulus = contactModulus(steel, steel);
    EXPECT_NEAR(lineHalfWidth(5, 0.01, 0.006, modulus), 5.75e-6, 0.01e-6);
    EXPECT_NEAR(linePeakPressure(5, 0.01, 0.006, modulus), 55.4e6, 0.1e6);
    EXPECT_NEAR(lineDeepestShear().ratio * linePeakPressure(5, 0.01, 0.006, modulus), 16.8e6,
                0.25e6);
}

// Published values: 2 (Johnson, Contact Mechanics, ch. 4; from memory, rounded 0.30 and 0.78).
// Johnson: 0.300283·p₀ at 0.7862 half-widths whatever Poisson's ratio.
TEST(HertzLineHandbook, DeepestShearHasTheTabulatedPlace) {
    EXPECT_NEAR(lineDeepestShear().ratio, 0.300283, 5e-7);
    EXPECT_NEAR(lineDeepestShear().depth, 0.7862, 5e-5);
}

// Published values: 3 (Norton, Machine Design, table of surface fatigue; from memory).
// Load-stress factors of hardened steel on a hardened roll, K = (F/L)·(1/R₁ + 1/R₂) in psi, and the
// stress printed beside them [Norton, Machine Design, surface fatigue, after Talbourdet] (from
// memory, doubtful): they belong together through p₀ = √(K·E*/π).
TEST(HertzLineHandbook, LoadStressFactorsAndStressesBelongTogether) {
    const struct {
        double factor, stress; // psi, MPa
    } rows[] = {{12711, 1769}, {13016, 1789}, {10464, 1600}};
    const Elastic steel{206.8e9, 0.28};
    for (const auto& row : rows) {
        const double lineLoadOverRadius = row.factor * psi;
        const double p =
            linePeakPressure(lineLoadOverRadius, 1.0, 1.0, contactModulus(steel, steel));
        EXPECT_NEAR(p / 1e6, row.stress, 0.006 * row.stress);
    }
}

} // namespace
} // namespace lobewright::contact
