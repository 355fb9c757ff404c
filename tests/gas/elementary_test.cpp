#include "core/gas/models/elementary.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::gas {
namespace {

TEST(Logarithm, IsThatOfTheStandardLibrary) {
    double worst = 0.0;
    for (double x = 1e-12; x < 1e12; x *= 1.00037) {
        const double exact = std::log(x);
        worst = std::max(worst, std::fabs(logarithm(x) - exact) / std::max(1.0, std::fabs(exact)));
    }
    EXPECT_LT(worst, 4e-16);
    EXPECT_EQ(logarithm(1.0), 0.0);
}

TEST(Exponential, IsThatOfTheStandardLibrary) {
    double worst = 0.0;
    for (double x = -600.0; x < 600.0; x += 0.00731) {
        worst = std::max(worst, std::fabs(exponential(x) / std::exp(x) - 1.0));
    }
    EXPECT_LT(worst, 5e-16);
    EXPECT_EQ(exponential(0.0), 1.0);
    EXPECT_EQ(exponential(-1e9), exponential(-700.0));
    EXPECT_EQ(exponential(1e9), exponential(700.0));
    EXPECT_LT(exponential(-700.0), 1e-304);
}

} // namespace
} // namespace lobewright::gas
