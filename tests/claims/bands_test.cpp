#include "core/claims/bands.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::study {
namespace {

constexpr auto four = StrokeCycle::fourStroke;
constexpr auto two = StrokeCycle::twoStroke;
constexpr auto spark = Ignition::spark;
constexpr auto compression = Ignition::compression;
constexpr auto natural = Charging::naturallyAspirated;
constexpr auto boosted = Charging::boosted;
constexpr auto bmep = BandQuantity::meanEffectivePressure;
constexpr double bar = 1e5;

struct Edge {
    const char* name;
    EngineClass engine;
    double value; ///< bar
    Verdict verdict;
};

void PrintTo(const Edge& each, std::ostream* out) {
    *out << each.name;
}

class PressureBand : public testing::TestWithParam<Edge> {};

TEST_P(PressureBand, JudgesAtItsEdges) {
    const Judgement judgement = judge(bmep, GetParam().value * bar, GetParam().engine);
    EXPECT_EQ(name(judgement.verdict), name(GetParam().verdict));
    ASSERT_NE(judgement.band, nullptr);
    EXPECT_FALSE(judgement.band->source.empty());
}

// Published values: 5 (encyclopedia page on brake mean effective pressure; read).
// Edges: encyclopedia page on brake mean effective pressure (8.5 … 10.5, 12.5 … 17, 7 … 9, 14 … 19,
// 28 bar); Heywood 1988, table 2.1, in atmospheres, from memory (5.5 atm = 5.572875 bar, 9 atm =
// 9.11925 bar, 17 atm = 17.22525 bar); Blair 1996, ch. 6, from memory (11 bar).
INSTANTIATE_TEST_SUITE_P(
    Published, PressureBand,
    testing::Values(
        Edge{"SparkNaturalInside", {four, spark, natural}, 9.0, Verdict::ordinary},
        Edge{"SparkNaturalAtUpperEdge", {four, spark, natural}, 10.5, Verdict::ordinary},
        Edge{"SparkNaturalAboveUpperEdge", {four, spark, natural}, 10.51, Verdict::ambitious},
        Edge{"SparkNaturalAtRacingEdge", {four, spark, natural}, 15.0, Verdict::ambitious},
        Edge{"SparkNaturalAboveRacing", {four, spark, natural}, 15.01, Verdict::onlyWithBoost},
        Edge{"SparkNaturalAtHighBoostEdge", {four, spark, natural}, 28.0, Verdict::onlyWithBoost},
        Edge{"SparkNaturalAboveEverything", {four, spark, natural}, 28.01, Verdict::outsideBand},
        Edge{"SparkBoostedAtUpperEdge", {four, spark, boosted}, 17.0, Verdict::ordinary},
        Edge{"SparkBoostedAboveUpperEdge", {four, spark, boosted}, 17.01, Verdict::ambitious},
        Edge{"SparkBoostedAboveEverything", {four, spark, boosted}, 28.01, Verdict::outsideBand},
        Edge{"SparkUnknownChargingIsTakenAsNatural",
             {four, spark, {}},
             15.01,
             Verdict::onlyWithBoost},
        Edge{"DieselNaturalAtUpperEdge", {four, compression, natural}, 9.0, Verdict::ordinary},
        Edge{"DieselNaturalTruck", {four, compression, natural}, 9.11, Verdict::ambitious},
        Edge{
            "DieselNaturalBeyondTruck", {four, compression, natural}, 9.13, Verdict::onlyWithBoost},
        Edge{"DieselBoostedAtUpperEdge", {four, compression, boosted}, 19.0, Verdict::ordinary},
        Edge{"DieselBoostedLarge", {four, compression, boosted}, 23.0, Verdict::ambitious},
        Edge{"TwoStrokeNaturalAtUpperEdge", {two, spark, natural}, 5.572875, Verdict::ordinary},
        Edge{"TwoStrokeNaturalTuned", {two, spark, natural}, 11.0, Verdict::ambitious},
        Edge{"TwoStrokeNaturalBeyondTuned", {two, spark, natural}, 11.01, Verdict::onlyWithBoost},
        Edge{
            "TwoStrokeDieselAtUpperEdge", {two, compression, boosted}, 17.22525, Verdict::ordinary},
        Edge{"TwoStrokeDieselLargest", {two, compression, boosted}, 19.0, Verdict::ambitious},
        Edge{"TwoStrokeDieselBeyond", {two, compression, boosted}, 19.01, Verdict::outsideBand}),
    [](const auto& test) { return std::string(test.param.name); });

TEST(Bands, PistonSpeedHasItsOwnEdges) {
    const auto verdict = [](double speed, Ignition ignition) {
        return judge(BandQuantity::meanPistonSpeed, speed, {four, ignition, natural}).verdict;
    };
    // 16 petrol, 20 … 25 sport, 25 … 30 racing; diesels to 14, engines in general to 15.
    EXPECT_EQ(verdict(16.0, spark), Verdict::ordinary);
    EXPECT_EQ(verdict(16.1, spark), Verdict::ambitious);
    EXPECT_EQ(verdict(30.0, spark), Verdict::ambitious);
    EXPECT_EQ(verdict(30.1, spark), Verdict::outsideBand);
    EXPECT_EQ(verdict(15.0, compression), Verdict::ordinary);
    EXPECT_EQ(verdict(15.1, compression), Verdict::outsideBand);
}

TEST(Bands, BelowAnOrdinaryBandIsOrdinaryAndSaysSo) {
    const Judgement judgement = judge(bmep, 4.0 * bar, {four, spark, natural});
    EXPECT_EQ(judgement.verdict, Verdict::ordinary);
    EXPECT_NE(judgement.note.english().find("modest"), std::string::npos);
}

TEST(Bands, WithoutAnyOfTheOwnIgnitionTheOtherIsTakenAndNamed) {
    const Judgement judgement = judge(bmep, 15.0 * bar, {two, spark, boosted});
    EXPECT_EQ(judgement.verdict, Verdict::ordinary);
    EXPECT_NE(judgement.note.english().find("no published band for this type with spark ignition"),
              std::string::npos);
}

TEST(Bands, UnknownClassIsComparedWithEveryKind) {
    const Judgement judgement = judge(bmep, 10.0 * bar, {});
    EXPECT_EQ(judgement.verdict, Verdict::ordinary);
    EXPECT_NE(judgement.note.english().find("cycle, ignition not given"), std::string::npos);
}

TEST(Bands, ABolderFigureNeverGetsAMilderVerdict) {
    for (const auto cycle : {two, four}) {
        for (const auto ignition : {spark, compression}) {
            for (const auto charging : {natural, boosted}) {
                int last = 0;
                for (double value = 1.0; value < 40.0; value += 0.05) {
                    const auto verdict =
                        judge(bmep, value * bar, {cycle, ignition, charging}).verdict;
                    EXPECT_GE(static_cast<int>(verdict), last) << value;
                    last = static_cast<int>(verdict);
                }
                EXPECT_TRUE(last == static_cast<int>(Verdict::outsideBand) ||
                            last == static_cast<int>(Verdict::outsideEstimate));
            }
        }
    }
}

TEST(Bands, TwoStrokesHavePowersOfTheirOwn) {
    const EngineClass tuned{two, spark, natural};
    EXPECT_EQ(judge(BandQuantity::specificPower, 130e6, tuned).verdict, Verdict::ambitious);
    EXPECT_EQ(judge(BandQuantity::specificPower, 50e6, tuned).verdict, Verdict::ordinary);
    EXPECT_EQ(judge(BandQuantity::powerPerMass, 1.0e3 / 0.5, tuned).verdict, Verdict::ambitious);
}

TEST(Bands, AnOwnEstimateIsNoNamedSource) {
    const Judgement beyond = judge(BandQuantity::specificPower, 900e6, {two, spark, natural});
    EXPECT_EQ(beyond.verdict, Verdict::outsideEstimate);
    EXPECT_EQ(describeSource(*beyond.band).english(), "own estimate");
}

TEST(Bands, EveryBandHasASourceAndAnOrder) {
    for (const Band& band : bands()) {
        EXPECT_LT(band.low, band.high) << band.what.text;
        EXPECT_GT(band.low, 0.0) << band.what.text;
        EXPECT_FALSE(band.source.empty()) << band.what.text;
        EXPECT_FALSE(band.what.empty());
    }
}

} // namespace
} // namespace lobewright::study
