#include "core/track/roller.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <limits>

using namespace lobewright;
using namespace lobewright::track;

namespace {

void expectProblem(const Roller& roller, double pitchRadius, const std::string& path,
                   const std::string& words) {
    const Problems problems = checkRoller(roller, pitchRadius);
    ASSERT_EQ(problems.size(), 1u);
    EXPECT_EQ(problems[0].path, path);
    EXPECT_THAT(problems[0].message.english(), testing::HasSubstr(words));
}

} // namespace

TEST(RollerCheck, PassesAnOrdinaryRoller) {
    EXPECT_TRUE(checkRoller({0.016, 0.014, {}, 0.0005}, 0.095).empty());
    EXPECT_TRUE(checkRoller({0.016, 0.014, 0.5, 0.0}, 0.095).empty());
}

TEST(RollerCheck, NamesTheBrokenRule) {
    constexpr double nothing = std::numeric_limits<double>::quiet_NaN();
    expectProblem({-0.016, 0.014, {}, 0.0}, 0.095, "/roller/radius_mm",
                  "radius is -16 mm, must be positive");
    expectProblem({nothing, 0.014, {}, 0.0}, 0.095, "/roller/radius_mm", "must be positive");
    expectProblem({0.016, 0.014, {}, 0.0}, 0.007, "/pitch_radius_mm",
                  "pitch radius is 7 mm, must exceed half the roller width of 14 mm");
    expectProblem({0.016, 0.014, 0.0, 0.0}, 0.095, "/roller/crown_radius_mm",
                  "crown radius is 0 mm, must be positive");
    expectProblem({0.016, 0.014, {}, 0.007}, 0.095, "/roller/edge_relief_mm",
                  "edge relief is 7 mm, must be at least 0 and less than half the width of 14 mm");
}

TEST(Roller, KnowsItsEdges) {
    const Roller roller{0.016, 0.014, {}, 0.0005};
    EXPECT_DOUBLE_EQ(roller.innerEdge(0.095), 0.088);
    EXPECT_DOUBLE_EQ(roller.outerEdge(0.095), 0.102);
    EXPECT_DOUBLE_EQ(roller.loadedWidth(), 0.013);
}
