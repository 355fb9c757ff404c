#include "core/design/fields.h"
#include "core/design/ranged_inputs.h"
#include "core/design/snapshot.h"
#include "tests/design/sample.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace lobewright::design {
namespace {

using testing::listed;
using testing::sample;

const std::string bore = "/mechanism/bore_mm";
const std::string inletPort = "/ports/inlet/0/discharge_coefficient";
const std::string scavenging = "/gas/scavenging/model";

Design withKnowledge() {
    Design design = sample();
    design.knowledge[bore] = {
        .origin = Origin::measured, .low = 55.0, .high = 58.5, .source = "side view, p. 2"};
    design.knowledge[inletPort] = {.origin = Origin::assumed,
                                   .low = 0.6,
                                   .high = 0.8,
                                   .spread = Spread::triangular,
                                   .group = "ports"};
    design.knowledge[scavenging] = {
        .origin = Origin::assumed,
        .options = {"perfect-mixing", "displacement-then-mixing", "perfect-displacement"}};
    return design;
}

/// The sample with a section of knowledge as a person would write it.
Result<Design> readWith(const char* knowledge) {
    nlohmann::json tree = testing::sampleTree();
    tree["knowledge"] = nlohmann::json::parse(knowledge);
    return readDesign(tree.dump());
}

TEST(Knowledge, ReadsBackAsWritten) {
    const Design design = withKnowledge();
    const auto again = readDesign(writeDesign(design));
    ASSERT_TRUE(again) << listed(again.problems());
    EXPECT_EQ(*again, design);
    const auto entry = nlohmann::json::parse(writeDesign(design))["knowledge"][bore];
    EXPECT_EQ(entry.dump(), R"({"high":58.5,"low":55.0,"origin":"measured","shape":"uniform",)"
                            R"("source":"side view, p. 2"})");
}

TEST(Knowledge, OnlyTheOriginMustBeWritten) {
    const auto design = readWith(R"({"/mechanism/bore_mm": {"origin": "given"}})");
    ASSERT_TRUE(design) << listed(design.problems());
    EXPECT_EQ(design->knowledge.at(bore), Known{.origin = Origin::given});
    EXPECT_FALSE(readWith(R"({"/mechanism/bore_mm": {"low": 50, "high": 60}})"));
}

TEST(Knowledge, IsNotWrittenWithoutEntries) {
    EXPECT_FALSE(nlohmann::json::parse(writeDesign(sample())).contains("knowledge"));
}

TEST(Knowledge, DistinguishesDesigns) {
    EXPECT_NE(withKnowledge(), sample());
}

TEST(Knowledge, IsKeptInSnapshots) {
    Design design = withKnowledge();
    design.snapshots = *withSnapshot(design, "first guess", "");
    design.knowledge.clear();
    const auto again = readDesign(writeDesign(design));
    ASSERT_TRUE(again) << listed(again.problems());
    EXPECT_EQ(again->snapshots.front().design.knowledge, withKnowledge().knowledge);
    design.snapshots.front().design.knowledge[bore].high = 50.0;
    const Problems problems = validate(design);
    ASSERT_EQ(problems.size(), 1U) << listed(problems);
    EXPECT_EQ(problems.front().path, "/snapshots/0/design/knowledge/~1mechanism~1bore_mm/low");
}

TEST(Knowledge, RefusesWhatBreaksItsRulesAtItsPath) {
    struct Case {
        const char* knowledge;
        const char* path;
    };
    for (const Case& wrong : std::initializer_list<Case>{
             {R"({"/mechanism/boar_mm": {"origin": "given"}})", "/knowledge/~1mechanism~1boar_mm"},
             {R"({"/mechanism": {"origin": "given"}})", "/knowledge/~1mechanism"},
             {R"({"/title": {"origin": "given"}})", "/knowledge/~1title"},
             {R"({"/ports/inlet/9/edge_mm": {"origin": "given"}})",
              "/knowledge/~1ports~1inlet~19~1edge_mm"},
             {R"({"/mechanism/bore_mm": {"origin": "guessed"}})",
              "/knowledge/~1mechanism~1bore_mm/origin"},
             {R"({"/mechanism/bore_mm": {"origin": "given", "lo": 3}})",
              "/knowledge/~1mechanism~1bore_mm/lo"},
             {R"({"/mechanism/bore_mm": {"origin": "given", "low": 50}})",
              "/knowledge/~1mechanism~1bore_mm/low"},
             {R"({"/mechanism/bore_mm": {"origin": "given", "low": 60, "high": 50}})",
              "/knowledge/~1mechanism~1bore_mm/low"},
             {R"({"/mechanism/bore_mm": {"origin": "given", "low": 58, "high": 58}})",
              "/knowledge/~1mechanism~1bore_mm/low"},
             {R"({"/mechanism/bore_mm": {"origin": "given", "low": -1, "high": 60}})",
              "/knowledge/~1mechanism~1bore_mm/low"},
             {R"({"/mechanism/bore_mm": {"origin": "given", "low": 59, "high": 60}})",
              "/knowledge/~1mechanism~1bore_mm"},
             {R"({"/mechanism/bore_mm": {"origin": "given", "options": ["a"]}})",
              "/knowledge/~1mechanism~1bore_mm/options"},
             {R"({"/mechanism/bore_mm": {"origin": "given", "shape": "normal"}})",
              "/knowledge/~1mechanism~1bore_mm/shape"},
             {R"({"/gas/fuel": {"origin": "given", "low": 1, "high": 2}})",
              "/knowledge/~1gas~1fuel/low"},
             {R"({"/gas/fuel": {"origin": "given", "options": ["methane", "coal"]}})",
              "/knowledge/~1gas~1fuel/options/1"},
             {R"({"/gas/fuel": {"origin": "given", "options": ["methane", "methane"]}})",
              "/knowledge/~1gas~1fuel/options/1"},
             {R"({"/gas/fuel": {"origin": "given", "options": ["hydrogen"]}})",
              "/knowledge/~1gas~1fuel/options"},
             {R"({"/gas/fuel": 3})", "/knowledge/~1gas~1fuel"},
             {R"([])", "/knowledge"}}) {
        const auto design = readWith(wrong.knowledge);
        ASSERT_FALSE(design) << wrong.knowledge;
        EXPECT_EQ(design.problems().front().path, wrong.path) << listed(design.problems());
    }
}

TEST(Knowledge, OfAKindNotUsedAtPresentIsKept) {
    const auto design =
        readWith(R"({"/gas/supply/drive_ratio": {"origin": "assumed", "low": 0.5, "high": 4}})");
    ASSERT_TRUE(design) << listed(design.problems());
    EXPECT_EQ(settledKnowledge(*design), design->knowledge);
    EXPECT_TRUE(rangedInputs(*design).empty());
}

TEST(SettledKnowledge, WidensRangesAndOptionsToTheValue) {
    Design design = *withFields(withKnowledge(),
                                {{bore, 61.0}, {scavenging, std::string("perfect-displacement")}});
    design.knowledge[scavenging].options.pop_back();
    EXPECT_FALSE(brokenKnowledgeRules(design).empty());
    design.knowledge = settledKnowledge(design);
    EXPECT_EQ(listed(brokenKnowledgeRules(design)), "");
    EXPECT_EQ(design.knowledge.at(bore).low, 55.0);
    EXPECT_EQ(design.knowledge.at(bore).high, 61.0);
    EXPECT_EQ(design.knowledge.at(scavenging), withKnowledge().knowledge.at(scavenging));
}

TEST(SettledKnowledge, LeavesOutRowsThatAreGone) {
    Design design = withKnowledge();
    design.knowledge["/ports/inlet/1/edge_mm"] = {};
    design.knowledge = settledKnowledge(design);
    EXPECT_EQ(design, withKnowledge());
}

TEST(MovedRows, TakesTheEntriesWithTheirRows) {
    const Known first{.source = "first"}, second{.source = "second"}, other{.source = "other"};
    const Knowledge knowledge = {{"/ports/inlet/0/edge_mm", first},
                                 {"/ports/inlet/1/edge_mm", second},
                                 {"/ports/exhaust/0/edge_mm", other}};
    const auto swapped =
        movedRows(knowledge, "/ports/inlet", [](int row) { return std::optional(1 - row); });
    EXPECT_EQ(swapped, (Knowledge{{"/ports/inlet/0/edge_mm", second},
                                  {"/ports/inlet/1/edge_mm", first},
                                  {"/ports/exhaust/0/edge_mm", other}}));
    const auto removed = movedRows(knowledge, "/ports/inlet", [](int row) {
        return row == 0 ? std::nullopt : std::optional(row - 1);
    });
    EXPECT_EQ(removed,
              (Knowledge{{"/ports/inlet/0/edge_mm", second}, {"/ports/exhaust/0/edge_mm", other}}));
}

TEST(RangedInputs, AreThoseWithARangeOrOptionsInFileOrder) {
    Design design = withKnowledge();
    design.knowledge["/running/speed_rpm"] = {.origin = Origin::given};
    design.knowledge["/gas/burn/start_deg"] = {.low = -30.0, .high = 30.0};
    const auto inputs = rangedInputs(design);
    ASSERT_EQ(inputs.size(), 4U);
    EXPECT_EQ(inputs[0].field.path, bore);
    EXPECT_EQ(std::get<double>(inputs[0].field.value), 58.0);
    EXPECT_EQ(inputs[1].known.spread, Spread::triangular);
    EXPECT_EQ(inputs[1].known.group, "ports");
    EXPECT_TRUE(inputs[3].isChoice());
    design.gas.burn.bestTorque = true; // no number any more
    EXPECT_EQ(rangedInputs(design).size(), 3U);
}

TEST(OriginCounts, CountEveryInputOnce) {
    const OriginCounts counts = originCounts(withKnowledge());
    EXPECT_EQ(counts.measured, 1);
    EXPECT_EQ(counts.assumed, 2);
    const auto inputs = std::ranges::count_if(
        fields(sample()), [](const Field& field) { return field.kind != FieldKind::text; });
    EXPECT_EQ(counts.chosen, inputs - 3);
}

TEST(WithFields, ChangesSeveralValuesOrSaysWhichIsWrong) {
    const auto design = withFields(sample(), {{bore, 60.0}, {"/gas/lambda", 1.3}});
    ASSERT_TRUE(design);
    EXPECT_DOUBLE_EQ(design->mechanism.bore, 0.060);
    EXPECT_DOUBLE_EQ(design->gas.lambda, 1.3);
    const auto wrong = withFields(sample(), {{bore, 60.0}, {"/gas/lambda", -1.0}});
    ASSERT_FALSE(wrong);
    EXPECT_EQ(wrong.problems().front().path, "/gas/lambda");
}

} // namespace
} // namespace lobewright::design
