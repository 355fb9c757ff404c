#include "core/study/line.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>
#include <numeric>

namespace lobewright {
namespace {

using study::beside;
using study::bisectingRounds;

class Rounds : public testing::TestWithParam<std::size_t> {};

TEST_P(Rounds, HoldEveryPointOnceAndLaterOnesLieBetweenEarlier) {
    std::vector<std::size_t> known;
    std::vector<double> places(GetParam());
    std::iota(places.begin(), places.end(), 0.0);
    const auto rounds = bisectingRounds(GetParam());
    for (std::size_t round = 0; round < rounds.size(); ++round) {
        for (const std::size_t point : rounds[round]) {
            EXPECT_EQ(beside(point, known, places).points.empty(), round == 0) << point;
        }
        known.insert(known.end(), rounds[round].begin(), rounds[round].end());
        std::sort(known.begin(), known.end());
    }
    std::vector<std::size_t> all(GetParam());
    std::iota(all.begin(), all.end(), std::size_t{0});
    EXPECT_EQ(known, all);
}

INSTANTIATE_TEST_SUITE_P(Counts, Rounds, testing::Values(0, 1, 2, 3, 4, 5, 6, 9, 25, 41, 100));

TEST(Rounds, BeginWithAFewPointsFarApart) {
    EXPECT_EQ(bisectingRounds(41).front(), (std::vector<std::size_t>{0, 16, 32, 40}));
    EXPECT_EQ(bisectingRounds(41).back().size(), 20u);
}

// Six points determine a polynomial of the fifth degree (Lagrange).
TEST(Beside, WeighsSixPointsAsTheirPolynomialDoes) {
    const std::vector<double> places = {1.0, 1.7, 2.0, 3.1, 4.0, 4.4, 6.0, 7.0, 9.0};
    const auto value = [](double x) {
        return 2.0 - x + 0.3 * std::pow(x, 3) - 0.01 * std::pow(x, 5);
    };
    const auto found = beside(4, {0, 1, 2, 3, 5, 6, 7, 8}, places);
    ASSERT_EQ(found.points.size(), 6u);
    EXPECT_EQ(found.points.front(), 5u); // the nearest
    double sum = 0.0;
    double between = 0.0;
    for (std::size_t i = 0; i < found.points.size(); ++i) {
        sum += found.weights[i];
        between += found.weights[i] * value(places[found.points[i]]);
    }
    EXPECT_NEAR(sum, 1.0, 1e-12);
    EXPECT_NEAR(between, value(places[4]), 1e-10);
}

TEST(Beside, HasNothingToSayOutside) {
    const std::vector<double> places = {0.0, 1.0, 2.0};
    EXPECT_TRUE(beside(0, {1, 2}, places).points.empty());
    EXPECT_TRUE(beside(2, {0, 1}, places).points.empty());
    EXPECT_EQ(beside(1, {0, 2}, places).weights, (std::vector<double>{0.5, 0.5}));
}

} // namespace
} // namespace lobewright
