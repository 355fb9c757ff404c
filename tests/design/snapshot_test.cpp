#include "core/design/fields.h"
#include "core/design/snapshot.h"
#include "core/solution/pipeline/stages.h"
#include "core/solution/solution.h"
#include "tests/design/sample.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace lobewright::design {
namespace {

using ::testing::HasSubstr;
using testing::listed;
using testing::sample;
using testing::sampleTree;

/// The sample that keeps a wider and a motored one.
Design keeping() {
    Design design = sample();
    Design wide = design;
    wide.mechanism.bore = 0.060;
    Design motored = design;
    motored.running.motored = true;
    design.snapshots = {{"wide", "2026-03-01T14:05:00Z", wide}, {"motored", "", motored}};
    return design;
}

nlohmann::json keepingTree() {
    return nlohmann::json::parse(writeDesign(keeping()));
}

TEST(Snapshot, ReadsBackBitForBit) {
    const auto again = readDesign(writeDesign(keeping()));
    ASSERT_TRUE(again) << listed(again.problems());
    EXPECT_EQ(*again, keeping());
    EXPECT_EQ(again->snapshots[1].design.running.motored, true);
}

TEST(Snapshot, DesignsEqualByValueWithTheirSnapshots) {
    Design other = keeping();
    EXPECT_EQ(other, keeping());
    other.snapshots[0].design.mechanism.bore = 0.061;
    EXPECT_NE(other, keeping());
    EXPECT_EQ(withoutSnapshots(other), withoutSnapshots(keeping()));
}

TEST(Snapshot, FileWithoutAnySaysNothingOfThem) {
    EXPECT_EQ(writeDesign(sample()).find("snapshots"), std::string::npos);
    EXPECT_TRUE(sample().snapshots.empty());
}

TEST(Snapshot, KeepsNoSnapshotsOfItsOwn) {
    const auto list = withSnapshot(keeping(), "both", "");
    ASSERT_TRUE(list);
    EXPECT_TRUE(list->back().design.snapshots.empty());
    auto tree = keepingTree();
    tree["snapshots"][0]["design"]["snapshots"] = nlohmann::json::array();
    const auto result = readDesign(tree.dump());
    ASSERT_FALSE(result);
    EXPECT_EQ(result.problems().front().path, "/snapshots/0/design/snapshots");
    Design nested = keeping();
    nested.snapshots[0].design.snapshots = nested.snapshots;
    EXPECT_EQ(validate(nested).front().path, "/snapshots/0/design/snapshots");
}

struct Broken {
    const char* name;
    const char* patch;
    const char* path;
};

void PrintTo(const Broken& broken, std::ostream* out) {
    *out << broken.name;
}

class BrokenSnapshot : public ::testing::TestWithParam<Broken> {};

TEST_P(BrokenSnapshot, IsRefusedWithItsPath) {
    const auto tree = keepingTree().patch(nlohmann::json::parse(GetParam().patch));
    const auto result = readDesign(tree.dump());
    ASSERT_FALSE(result);
    EXPECT_EQ(result.problems().size(), 1U) << listed(result.problems());
    EXPECT_EQ(result.problems().front().path, GetParam().path) << listed(result.problems());
}

INSTANTIATE_TEST_SUITE_P(
    Everywhere, BrokenSnapshot,
    ::testing::Values(
        Broken{"NegativeBore",
               R"([{"op":"replace","path":"/snapshots/0/design/mechanism/bore_mm","value":-1}])",
               "/snapshots/0/design/mechanism/bore_mm"},
        Broken{"NoMechanism", R"([{"op":"remove","path":"/snapshots/1/design/mechanism"}])",
               "/snapshots/1/design/mechanism"},
        Broken{"NoDesign", R"([{"op":"remove","path":"/snapshots/1/design"}])",
               "/snapshots/1/design"},
        Broken{"NoName", R"([{"op":"remove","path":"/snapshots/1/name"}])", "/snapshots/1/name"},
        Broken{"BlankName", R"([{"op":"replace","path":"/snapshots/1/name","value":" "}])",
               "/snapshots/1/name"},
        Broken{"NameTakenTwice", R"([{"op":"replace","path":"/snapshots/1/name","value":"wide"}])",
               "/snapshots/1/name"},
        Broken{"NoDate", R"([{"op":"replace","path":"/snapshots/0/taken","value":"yesterday"}])",
               "/snapshots/0/taken"},
        Broken{"UnknownKey", R"([{"op":"add","path":"/snapshots/0/colour","value":"red"}])",
               "/snapshots/0/colour"},
        Broken{"FormatOfItsOwn",
               R"([{"op":"add","path":"/snapshots/0/design/format_version","value":1}])",
               "/snapshots/0/design/format_version"},
        Broken{"NoList", R"([{"op":"replace","path":"/snapshots","value":7}])", "/snapshots"},
        // A rule between values: the ports do not fit the stroke.
        Broken{
            "PortsThatDoNotFit",
            R"([{"op":"replace","path":"/snapshots/0/design/ports/inlet/0/edge_mm","value":90}])",
            "/snapshots/0/design/ports/inlet/0/edge_mm"}),
    [](const auto& each) { return std::string(each.param.name); });

TEST(Snapshot, UnknownKeyInsideNamesTheNearestOne) {
    auto tree = keepingTree();
    tree["snapshots"][0]["design"]["mechanism"]["boer_mm"] = 3;
    const auto result = readDesign(tree.dump());
    ASSERT_FALSE(result);
    EXPECT_THAT(result.problems().front().message.english(), HasSubstr("\"bore_mm\""));
}

TEST(Snapshot, NameMustBeNewAndNotEmpty) {
    const Design design = keeping();
    EXPECT_FALSE(withSnapshot(design, "wide", ""));
    EXPECT_FALSE(withSnapshot(design, "  ", ""));
    EXPECT_FALSE(withSnapshot(design, "late", "noon"));
    EXPECT_FALSE(withName(design.snapshots, 1, "wide"));
    EXPECT_FALSE(withName(design.snapshots, 2, "third"));
    const auto renamed = withName(design.snapshots, 1, "driven from outside");
    ASSERT_TRUE(renamed);
    EXPECT_EQ((*renamed)[1].design, design.snapshots[1].design);
    EXPECT_TRUE(withName(design.snapshots, 0, "wide")); // its own name is no other's
}

TEST(Snapshot, FreeNameIsTakenByNone) {
    Design design = keeping();
    EXPECT_EQ(freeName(design.snapshots, "Snapshot"), "Snapshot 3");
    design.snapshots[0].name = "Snapshot 3";
    EXPECT_EQ(freeName(design.snapshots, "Snapshot"), "Snapshot 4");
}

TEST(Snapshot, FileHoldsAtMostAHundred) {
    Design design = sample();
    for (std::size_t i = 0; i < mostSnapshots; ++i) {
        auto list = withSnapshot(design, freeName(design.snapshots, "No."), "2026-03-01");
        ASSERT_TRUE(list);
        design.snapshots = std::move(list).value();
    }
    EXPECT_FALSE(withSnapshot(design, "one more", ""));
    EXPECT_TRUE(validate(design).empty());
}

// ISO 8601-1:2019, calendar date and time of day in the extended format.
TEST(Snapshot, TimeIsThatOfTheStandard) {
    for (const char* good : {"2026-03-01", "2024-02-29", "2026-03-01T14:05", "2026-12-31T23:59:60Z",
                             "2026-03-01T14:05:09+01:00"}) {
        EXPECT_TRUE(isDateTime(good)) << good;
    }
    for (const char* bad :
         {"", "2026", "2026-13-01", "2025-02-29", "2026-03-00", "2026-03-01 14:05",
          "2026-03-01T24:05", "2026-03-01T14:5", "2026-03-01T14:05:61", "2026-03-01T14:05:09+1",
          "2026-03-01T", "-026-03-01", "01.03.2026"}) {
        EXPECT_FALSE(isDateTime(bad)) << bad;
    }
}

TEST(Snapshot, ValuesInsideAreNoFields) {
    EXPECT_EQ(fields(keeping()).size(), fields(sample()).size());
    EXPECT_FALSE(withField(keeping(), "/snapshots/0/design/mechanism/bore_mm", 61.0));
    const auto changed = withField(keeping(), "/mechanism/bore_mm", 59.0);
    ASSERT_TRUE(changed);
    EXPECT_EQ(changed->snapshots, keeping().snapshots);
}

TEST(Snapshot, ChangesNothingThatIsComputed) {
    SilentMonitor monitor;
    const auto plain = solution::solve(sample(), monitor);
    ASSERT_TRUE(plain);
    const auto kept = solution::solve(keeping(), monitor, &*plain);
    ASSERT_TRUE(kept);
    ASSERT_EQ(kept->figures.size(), plain->figures.size());
    for (std::size_t i = 0; i < plain->figures.size(); ++i) {
        EXPECT_EQ(kept->figures[i].value, plain->figures[i].value) << plain->figures[i].name;
    }
    EXPECT_EQ(kept->stages->gas, plain->stages->gas); // taken over, not solved again
}

} // namespace
} // namespace lobewright::design
