#include "core/solution/checks.h"
#include "core/units.h"
#include "tests/solution/solved_sample.h"

namespace lobewright {
namespace {

using solution::Severity;
using test::fires;
using test::sample;
using test::solved;

TEST(CheckList, KeepsQuietWithinTheLimitAndNamesTheThresholdThatBroke) {
    solution::CheckList list;
    const solution::CheckSubject subject{"id", "Quantity", "bar", "/path", "advice", std::nullopt};
    list.atMost(subject, 1.0, {1.0, 2.0});
    list.atMost(subject, 1.5, {1.0, 2.0});
    list.atMost(subject, 2.5, {1.0, 2.0});
    list.atLeast(subject, 0.4, {0.5, 0.3});
    const auto checks = list.take();
    ASSERT_EQ(checks.size(), 3u);
    EXPECT_EQ(checks[0].severity, Severity::error);
    EXPECT_EQ(checks[0].limit, 2.0);
    EXPECT_EQ(checks[1].severity, Severity::warning);
    EXPECT_EQ(checks[1].limit, 1.0);
    EXPECT_EQ(checks[2].limit, 0.5);
    EXPECT_NE(checks[2].message.find("below 0.5 bar: advice"), std::string::npos);
}

TEST(Checks, ParabolicLawWarnsOfInfiniteJerk) {
    auto design = sample("biogas-pump-set");
    EXPECT_FALSE(fires(solved(design), "acceleration-jump"));
    for (auto& segment : std::get<motion::SegmentShape>(design.tracks.inlet.shape).segments) {
        segment.law = motion::Law::parabolic;
    }
    EXPECT_TRUE(fires(solved(design), "acceleration-jump"));
}

TEST(Checks, AHugeRollerUndercutsAndTheAdviceIsARadiusThatDoesNot) {
    auto design = sample("biogas-pump-set");
    design.mechanism.roller.radius = 1.4 * design.mechanism.pitchRadius;
    const auto solution = solved(design);
    ASSERT_TRUE(fires(solution, "undercut"));
    for (const auto& check : solution.checks) {
        if (check.id == "undercut") {
            EXPECT_LE(check.value, 0.0);
            EXPECT_TRUE(check.angle);
            EXPECT_EQ(check.path, "/mechanism/roller/radius_mm");
        }
    }
}

TEST(Checks, OverspeedLiftsTheRollerAndSaysSo) {
    auto design = sample("biogas-pump-set");
    design.running.speed *= 4.0;
    EXPECT_TRUE(fires(solved(design), "lift-off"));
}

TEST(Checks, AnUnpaidSupplyIsSaidBesideTheBrakeValues) {
    auto design = sample("biogas-pump-set");
    design.gas.supply.kind = gas::SupplyKind::reservoir;
    design.gas.supply.pressure = 1.4e5;
    design.gas.supply.unpaid = true;
    EXPECT_TRUE(fires(solved(design), "supply-power-not-counted"));
    design.gas.supply.unpaid = false;
    EXPECT_FALSE(fires(solved(design), "supply-power-not-counted"));
}

TEST(Checks, StandErrorsFirst) {
    auto design = sample("biogas-pump-set");
    design.running.speed *= 4.0;
    const auto solution = solved(design);
    ASSERT_FALSE(solution.checks.empty());
    for (std::size_t i = 1; i < solution.checks.size(); ++i) {
        EXPECT_GE(solution.checks[i - 1].severity, solution.checks[i].severity);
    }
}

} // namespace
} // namespace lobewright
