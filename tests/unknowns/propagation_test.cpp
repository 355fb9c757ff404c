// Distributions carried through functions, against the worked examples of JCGM 101:2008, Supplement
// 1 to the Guide to the Expression of Uncertainty in Measurement, section 9. Its figures are from
// memory where a closed form does not give them.
#include "core/unknowns/bands.h"
#include "tests/unknowns/toy.h"

#include <algorithm>
#include <random>

namespace lobewright::unknowns::testing {
namespace {

constexpr long many = 1L << 16;

std::vector<double> sorted(const Samples& y) {
    std::vector<double> values(y.begin(), y.end());
    std::ranges::sort(values);
    return values;
}

double deviation(const Samples& y) {
    return std::sqrt((y - y.mean()).square().mean());
}

double sum(const double* x) {
    return x[0] + x[1] + x[2] + x[3];
}

// 9.2.2: four standard normal inputs added; 95 % between ∓3.92.
TEST(Propagation, SumOfFourNormalsIsThatOfJcgm) {
    const Samples y = evaluated(drawn(std::vector<Marginal>(4, normal(0.0, 1.0)), many), sum);
    const auto values = sorted(y);
    EXPECT_NEAR(y.mean(), 0.0, 0.005);
    EXPECT_NEAR(deviation(y), 2.0, 0.005);
    EXPECT_NEAR(quantile(values, 0.025), -3.92, 0.02);
    EXPECT_NEAR(quantile(values, 0.975), 3.92, 0.02);
}

// 9.2.3: four rectangular inputs of unit deviation; 95 % between ∓3.88.
TEST(Propagation, SumOfFourRectanglesIsThatOfJcgm) {
    const double half = std::sqrt(3.0);
    const Samples y = evaluated(drawn(std::vector<Marginal>(4, uniform(-half, half)), many), sum);
    const auto values = sorted(y);
    EXPECT_NEAR(deviation(y), 2.0, 0.005);
    EXPECT_NEAR(quantile(values, 0.025), -3.88, 0.02);
    EXPECT_NEAR(quantile(values, 0.975), 3.88, 0.02);
}

// 9.2.4: the same with a fourth of deviation 10: 10.1, 95 % between ∓17.0.
TEST(Propagation, OneDominantRectangleIsThatOfJcgm) {
    const double half = std::sqrt(3.0);
    std::vector<Marginal> marginals(4, uniform(-half, half));
    marginals.back() = uniform(-10.0 * half, 10.0 * half);
    const Samples y = evaluated(drawn(marginals, many), sum);
    const auto values = sorted(y);
    EXPECT_NEAR(deviation(y), 10.1, 0.1);
    EXPECT_NEAR(quantile(values, 0.025), -17.0, 0.1);
    EXPECT_NEAR(quantile(values, 0.975), 17.0, 0.1);
}

// 9.3, mass calibration in air: 1.234 mg, 0.0754 mg, 95 % from 1.0834 to 1.3825 mg.
TEST(Propagation, MassCalibrationIsThatOfJcgm) {
    const std::vector<Marginal> marginals = {normal(100000.0, 0.05), normal(1.234, 0.02),
                                             uniform(1.1, 1.3), uniform(7000.0, 9000.0),
                                             uniform(7950.0, 8050.0)};
    const Samples y = evaluated(drawn(marginals, many), [](const double* x) {
        return (x[0] + x[1]) * (1.0 + (x[2] - 1.2) * (1.0 / x[3] - 1.0 / x[4])) - 100000.0;
    });
    const auto values = sorted(y);
    EXPECT_NEAR(y.mean(), 1.2341, 0.0005);
    EXPECT_NEAR(deviation(y), 0.0754, 0.0003);
    EXPECT_NEAR(quantile(values, 0.025), 1.0834, 0.002);
    EXPECT_NEAR(quantile(values, 0.975), 1.3825, 0.002);
}

// 9.4, comparison loss in microwave power measurement, X₁² + X₂² about zero: mean and deviation
// both 50·10⁻⁶, 95 % below 149.8·10⁻⁶ (chi-squared with two degrees of freedom: −2·u²·ln 0.05).
TEST(Propagation, ComparisonLossIsThatOfJcgm) {
    const Samples y = evaluated(drawn(std::vector<Marginal>(2, normal(0.0, 0.005)), many),
                                [](const double* x) { return x[0] * x[0] + x[1] * x[1]; });
    EXPECT_NEAR(y.mean(), 50e-6, 0.1e-6);
    EXPECT_NEAR(deviation(y), 50e-6, 0.5e-6);
    EXPECT_NEAR(quantile(sorted(y), 0.95), -2.0 * 25e-6 * std::log(0.05), 0.7e-6);
}

TEST(Propagation, QuantilesAreLinearBetweenOrderedValues) {
    const std::vector<double> values = {1.0, 2.0, 4.0, 8.0, 16.0};
    EXPECT_EQ(quantile(values, 0.0), 1.0);
    EXPECT_EQ(quantile(values, 0.5), 4.0);
    EXPECT_EQ(quantile(values, 1.0), 16.0);
    EXPECT_DOUBLE_EQ(quantile(values, 0.125), 1.5);
    const auto band = quantiles({16.0, 1.0, std::nan(""), 4.0, 2.0, 8.0});
    ASSERT_TRUE(band);
    EXPECT_EQ(band->count, 5u);
    EXPECT_EQ(band->p50, 4.0);
    EXPECT_FALSE(quantiles({std::nan("")}));
}

// Of a new engine of the same kind, nine of ten lie in the band, whatever the seed.
TEST(Propagation, BandsCoverNineOfTen) {
    const std::vector<Marginal> marginals = {uniform(0.0, 1.0), normal(0.0, 1.0),
                                             uniform(2.0, 3.0)};
    const auto toy = [](const double* x) { return std::exp(x[0]) + 0.3 * x[1] * x[2]; };
    std::mt19937_64 truth(42);
    std::uniform_real_distribution<double> share(0.0, 1.0);
    int inside = 0, all = 0;
    for (std::uint64_t seed = 1; seed <= 200; ++seed) {
        const Samples y = evaluated(drawn(marginals, 256, seed), toy);
        const auto band = quantiles({y.begin(), y.end()});
        for (int k = 0; k < 20; ++k) {
            double x[3];
            for (std::size_t i = 0; i < 3; ++i) {
                x[i] = marginals[i].value(share(truth));
            }
            ++all;
            inside += toy(x) >= band->p05 && toy(x) <= band->p95 ? 1 : 0;
        }
    }
    EXPECT_NEAR(static_cast<double>(inside) / all, 0.90, 0.03);
}

TEST(Propagation, MarginalsHaveTheQuantilesTheyAreGiven) {
    const Marginal bell = {.kind = Marginal::Kind::normal, .low = 10.0, .high = 20.0};
    EXPECT_NEAR(bell.value(0.05), 10.0, 1e-9);
    EXPECT_NEAR(bell.value(0.95), 20.0, 1e-9);
    const Marginal cut = {.kind = Marginal::Kind::normal, .low = 0.1, .high = 2.0, .least = 0.0};
    EXPECT_TRUE(cut.isCut());
    EXPECT_GE(cut.value(0.0), 0.0);
    EXPECT_LT(cut.value(0.001), 0.01);
    const Marginal roof = {
        .kind = Marginal::Kind::triangular, .low = 1.0, .high = 5.0, .mode = 2.0};
    EXPECT_DOUBLE_EQ(roof.value(0.0), 1.0);
    EXPECT_DOUBLE_EQ(roof.value(0.25), 2.0); // the rise holds (2 − 1)/(5 − 1) of it
    EXPECT_DOUBLE_EQ(roof.value(1.0), 5.0);
    const Marginal word = {.kind = Marginal::Kind::choice, .options = 3};
    EXPECT_EQ(word.value(0.0), 0.0);
    EXPECT_EQ(word.value(0.34), 1.0);
    EXPECT_EQ(word.value(1.0), 2.0);
}

} // namespace
} // namespace lobewright::unknowns::testing
