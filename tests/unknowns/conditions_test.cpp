// What would have to be true, against toys whose answer is known in closed form.
#include "core/unknowns/consistent.h"
#include "tests/unknowns/toy.h"

#include <tbb/global_control.h>

namespace lobewright::unknowns::testing {
namespace {

/// Points of the unit cube of n unknowns with what they miss.
std::vector<Tried> possible(int unknowns, long count,
                            const std::function<double(const std::vector<double>&)>& missOf) {
    const Matrix points = sharesOf(library(), unknowns, 1, 0, count);
    std::vector<Tried> all;
    for (Eigen::Index i = 0; i < points.rows(); ++i) {
        std::vector<double> shares(points.row(i).begin(), points.row(i).end());
        const double miss = missOf(shares);
        all.push_back({std::move(shares), miss});
    }
    return all;
}

double mean(const Kept& kept, std::size_t unknown) {
    double sum = 0.0;
    for (const Tried& point : kept.points) {
        sum += point.shares[unknown];
    }
    return sum / static_cast<double>(kept.points.size());
}

/// x₁ + x₂ ≥ 1.9 keeps the corner of 0.1²/2 of the square: the mean of either is 1 − 0.1/3.
double corner(const std::vector<double>& x) {
    return std::max(0.0, 1.9 - x[0] - x[1]);
}

TEST(Conditions, ARareCornerIsFoundWithItsShareAndMeans) {
    const auto kept = keeping(possible(3, 512, corner), corner, {});
    ASSERT_TRUE(kept);
    EXPECT_GE(kept->points.size(), 200u);
    EXPECT_NEAR(kept->share, 0.005, 0.0015);
    EXPECT_NEAR(mean(*kept, 0), 1.0 - 0.1 / 3.0, 0.006);
    EXPECT_NEAR(mean(*kept, 1), 1.0 - 0.1 / 3.0, 0.006);
    EXPECT_NEAR(mean(*kept, 2), 0.5, 0.1); // has no say
    for (const Tried& point : kept->points) {
        EXPECT_GE(point.shares[0] + point.shares[1], 1.9);
        EXPECT_LE(std::ranges::max(point.shares), 1.0);
    }
}

// One unknown cut off at 0.7: uniform between there and 1, with mean 0.85 and deviation 0.3/√12.
TEST(Conditions, ATruncatedDistributionIsItself) {
    const auto above = [](const std::vector<double>& x) { return std::max(0.0, 0.7 - x[0]); };
    const auto kept = keeping(possible(2, 2048, above), above, {});
    ASSERT_TRUE(kept);
    EXPECT_EQ(kept->tries, 0u); // enough of the possible ones keep it
    EXPECT_NEAR(kept->share, 0.3, 0.002);
    EXPECT_NEAR(mean(*kept, 0), 0.85, 0.002);
    double squares = 0.0;
    for (const Tried& point : kept->points) {
        squares += std::pow(point.shares[0] - 0.85, 2);
    }
    EXPECT_NEAR(std::sqrt(squares / static_cast<double>(kept->points.size())),
                0.3 / std::sqrt(12.0), 0.003);
}

TEST(Conditions, WhatCannotBeIsNotFoundAndTheNearestIsTold) {
    const auto beyond = [](const std::vector<double>& x) { return 2.5 - x[0] - x[1]; };
    const auto kept = keeping(possible(2, 512, beyond), beyond, {});
    ASSERT_TRUE(kept);
    EXPECT_TRUE(kept->points.empty());
    EXPECT_EQ(kept->share, 0.0);
    EXPECT_GE(kept->nearest.miss, 0.5);
    EXPECT_LT(kept->nearest.miss, 0.56);
}

TEST(Conditions, NothingIsFoundWhereNoEngineRuns) {
    const auto never = [](const std::vector<double>&) {
        return std::numeric_limits<double>::infinity();
    };
    const auto kept = keeping(possible(2, 64, never), never, {});
    ASSERT_TRUE(kept);
    EXPECT_TRUE(kept->points.empty());
    EXPECT_EQ(kept->tries, 0u);
}

TEST(Conditions, TheWalksDoNotDependOnTheCores) {
    std::vector<Kept> all;
    for (const std::size_t threads : {1u, 2u, 7u}) {
        const tbb::global_control limit(tbb::global_control::max_allowed_parallelism, threads);
        all.push_back(*keeping(possible(3, 256, corner), corner, {}));
    }
    for (const Kept& other : all) {
        ASSERT_EQ(other.points.size(), all[0].points.size());
        EXPECT_EQ(other.share, all[0].share);
        for (std::size_t i = 0; i < other.points.size(); ++i) {
            EXPECT_EQ(other.points[i].shares, all[0].points[i].shares);
        }
    }
}

TEST(Conditions, AMissCountsBeyondTheToleranceAndBySense) {
    using enum Condition::Sense;
    const Condition power{"peak_power_kW", atLeast, 60.0, 0.5, "60 kW"};
    EXPECT_EQ(miss(power, 80.0), 0.0);
    EXPECT_EQ(miss(power, 59.5), 0.0);
    EXPECT_DOUBLE_EQ(miss(power, 53.5), 0.1);
    const Condition speed{"peak_torque_speed_rpm", about, 1000.0, 50.0, "1000 rpm"};
    EXPECT_EQ(miss(speed, 1050.0), 0.0);
    EXPECT_DOUBLE_EQ(miss(speed, 1150.0), 0.1);
    EXPECT_DOUBLE_EQ(miss(speed, 850.0), 0.1);
    EXPECT_TRUE(std::isinf(miss(speed, std::nan(""))));
}

TEST(Conditions, PublishedFiguresBecomeConditions) {
    study::Claims claims;
    claims.figures.power = study::amount(48.0, "kW");
    claims.figures.torqueSpeed = study::amount(1000.0, "rpm");
    const auto conditions = conditionsOf(claims);
    ASSERT_EQ(conditions.size(), 2u);
    EXPECT_EQ(conditions[0].result, "peak_power_kW");
    EXPECT_NEAR(conditions[0].target, 48.0, 1e-9);
    EXPECT_NEAR(conditions[0].tolerance, 0.24, 1e-9); // half of the last digit, 0.5 % at most
    EXPECT_EQ(conditions[1].sense, Condition::Sense::about);
    EXPECT_NEAR(conditions[1].target, 1000.0, 1e-9);
    EXPECT_NEAR(conditions[1].tolerance, 50.0, 1e-9);
}

} // namespace
} // namespace lobewright::unknowns::testing
