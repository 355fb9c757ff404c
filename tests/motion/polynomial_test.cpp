#include "core/motion/polynomial.h"

#include <gtest/gtest.h>

using namespace lobewright::motion;

namespace {

/// Expanded Π (x − root).
Polynomial withRoots(const std::vector<double>& roots) {
    Polynomial result{1.0};
    for (double root : roots) {
        Polynomial next(result.size() + 1, 0.0);
        for (std::size_t i = 0; i < result.size(); ++i) {
            next[i + 1] += result[i];
            next[i] -= root * result[i];
        }
        result = next;
    }
    return result;
}

} // namespace

TEST(SignChanges, FindEverySimpleRootInside) {
    const std::vector<double> roots{-0.5, 0.1, 0.11, 0.5, 0.999, 1.2};
    const std::vector<double> found = signChanges(withRoots(roots), 0.0, 1.0);
    ASSERT_EQ(found.size(), 4u);
    EXPECT_NEAR(found[0], 0.1, 1e-12);
    EXPECT_NEAR(found[1], 0.11, 1e-12);
    EXPECT_NEAR(found[2], 0.5, 1e-12);
    EXPECT_NEAR(found[3], 0.999, 1e-12);
}

TEST(SignChanges, SkipRootsThatOnlyTouch) {
    const std::vector<double> found = signChanges(withRoots({0.25, 0.25, 0.75}), 0.0, 1.0);
    ASSERT_EQ(found.size(), 1u);
    EXPECT_NEAR(found[0], 0.75, 1e-14);
}

TEST(SignChanges, FindATripleRootOnce) {
    const std::vector<double> found = signChanges({-0.125, 0.75, -1.5, 1.0}, 0.0, 1.0);
    ASSERT_EQ(found.size(), 1u);
    EXPECT_NEAR(found[0], 0.5, 1e-5);
}

TEST(SignChanges, OfAConstantAreNone) {
    EXPECT_TRUE(signChanges({3.0}, 0.0, 1.0).empty());
    EXPECT_TRUE(signChanges({0.0, 0.0, 0.0}, 0.0, 1.0).empty());
}
