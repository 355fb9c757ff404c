#include "core/exchange/table_csv.h"
#include "core/study/beyond_limits.h"
#include "core/study/load_map.h"
#include "core/study/speed_sweep.h"
#include "tests/solution/solved_sample.h"

#include <functional>

namespace lobewright {
namespace {

using test::sample;
using test::solved;

/// The sample with one limit set so that its error is passed for certain.
struct Tightened {
    const char* why;
    std::function<void(design::Limits&)> tighten;
};

TEST(BeyondLimits, EachLimitIsNamedWhereItErrsAndNothingWhereNoneDoes) {
    design::Design design = sample("biogas-pump-set");
    design.gas.fuel = gas::Fuel::petrol; // whose knock there is a correlation for
    // Wide enough for this engine, whose rollers keep contact.
    design.limits.peakPressure.error = 1e8;
    design.limits.knockIntegral.error = design.limits.meanPistonSpeed.error = 100.0;
    design.limits.filmRatio.error = design.limits.contactSafety.error = 0.0;
    ASSERT_EQ(study::beyondLimits(solved(design)), Message());
    const std::vector<Tightened> cases = {{"peak pressure above its limit",
                                           [](auto& limits) {
                                               limits.peakPressure = {1e5, 1e5};
                                           }},
                                          {"knock",
                                           [](auto& limits) {
                                               limits.knockIntegral = {1e-9, 1e-9};
                                           }},
                                          {"oil film below its limit",
                                           [](auto& limits) {
                                               limits.filmRatio = {100.0, 100.0};
                                           }},
                                          {"contact stress above its limit",
                                           [](auto& limits) {
                                               limits.contactSafety = {100.0, 100.0};
                                           }},
                                          {"mean piston speed above its limit", [](auto& limits) {
                                               limits.meanPistonSpeed = {0.1, 0.1};
                                           }}};
    for (const Tightened& one : cases) {
        design::Design tight = design;
        one.tighten(tight.limits);
        EXPECT_EQ(study::beyondLimits(solved(tight)).english(), one.why);
    }
}

TEST(BeyondLimits, EachPointOfASweepIsJudgedByItselfAndTheTableSaysSo) {
    design::Design design = sample("biogas-pump-set");
    design.limits.peakPressure.error = 1e8;
    design.limits.knockIntegral.error = 100.0;
    design.limits.filmRatio.error = design.limits.contactSafety.error = 0.0;
    const auto pair = solved(design).pair;
    // Twice the stroke a cycle: at 1000 rpm just allowed.
    const double justAllowed =
        2.0 * pair.curve(End::inlet).stroke() * pair.cyclesPerTurn() * 1001.0 / 60.0;
    design.limits.meanPistonSpeed = {justAllowed, justAllowed};
    SilentMonitor monitor;
    const auto table = study::speedSweep(design, 900.0, 1100.0, 3, {}, monitor);
    ASSERT_TRUE(table);
    EXPECT_TRUE(table->points[0].beyond.empty());
    EXPECT_TRUE(table->points[1].beyond.empty());
    EXPECT_EQ(table->points[2].beyond.english(), "mean piston speed above its limit");
    EXPECT_EQ(study::speaksAgainst(table->points[2]), table->points[2].beyond);
    const std::string text = exchange::tableCsv(*table);
    EXPECT_NE(text.find(",failure,beyond_limits\r\n"), std::string::npos);
    EXPECT_NE(text.find(",,mean piston speed above its limit\r\n"), std::string::npos);
}

// What a point is judged by is made at every point, whatever figures the map shows and whichever
// thread came first.
TEST(BeyondLimits, EveryPointOfAMapIsJudged) {
    design::Design design = sample("biogas-pump-set");
    design.limits.filmRatio = {100.0, 100.0};
    SilentMonitor monitor;
    const auto map = study::loadMap(design, {800.0, 1200.0, 3}, {0.6, 1.0, 3}, monitor);
    ASSERT_TRUE(map);
    for (const study::Point& point : map->points) {
        EXPECT_TRUE(point.failure.empty());
        EXPECT_FALSE(point.beyond.empty());
    }
}

TEST(BeyondLimits, APointThatWasNotSolvedSaysWhy) {
    study::Point point;
    point.failure = LW_TEXT("there is none");
    EXPECT_EQ(study::speaksAgainst(point).english(), "not solved: there is none");
}

} // namespace
} // namespace lobewright
