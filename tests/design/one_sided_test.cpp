#include "core/design/fields.h"
#include "core/design/schema.h"
#include "tests/design/sample.h"

#include <gtest/gtest.h>

namespace lobewright::design {
namespace {

using nlohmann::json;
using testing::listed;

constexpr const char* crane = "harbour-crane-auxiliary";

Problems problemsAfter(const char* patch) {
    const json tree = testing::sampleTree(crane).patch(json::parse(std::string("[") + patch + "]"));
    const auto read = readDesign(tree.dump());
    return read ? Problems() : read.problems();
}

bool names(const Problems& problems, std::string_view path) {
    return std::ranges::any_of(problems,
                               [path](const Problem& problem) { return problem.path == path; });
}

TEST(OneSided, InputsSpeakOfTheTrackAndThePiston) {
    for (const Field& field : fields(testing::sample(crane))) {
        if (field.path.starts_with("/ports")) {
            continue; // of which there are two sides
        }
        for (const std::string& text : {field.label.english(), field.groupLabel.english()}) {
            EXPECT_EQ(text.find("nlet track"), std::string::npos) << field.path << ": " << text;
            EXPECT_EQ(text.find("inlet side"), std::string::npos) << field.path << ": " << text;
        }
    }
}

TEST(OneSided, SampleIsReadAndWrittenAsItIs) {
    const Design design = testing::sample(crane);
    EXPECT_TRUE(design.mechanism.isOneSided());
    const json written = json::parse(writeDesign(design));
    EXPECT_FALSE(written["mechanism"].contains("exhaust_lead_deg"));
    EXPECT_FALSE(written["mechanism"]["adjuster"].contains("setting_deg"));
    EXPECT_FALSE(written["mechanism"]["piston_mass_kg"].contains("exhaust"));
    EXPECT_FALSE(written["tracks"].contains("exhaust"));
    EXPECT_FALSE(written["gas"]["wall_heat"].contains("exhaust_crown_K"));
    EXPECT_EQ(written["gas"]["wall_heat"]["head_K"], 450.0);
    const auto again = readDesign(written.dump());
    ASSERT_TRUE(again) << listed(again.problems());
    EXPECT_EQ(*again, design);
}

TEST(OneSided, WhatTheOtherPistonWouldHaveIsRefused) {
    for (const auto& [patch, path] :
         {std::pair(R"({"op":"add","path":"/mechanism/exhaust_lead_deg","value":5})",
                    "/mechanism/exhaust_lead_deg"),
          std::pair(R"({"op":"add","path":"/mechanism/adjuster/setting_deg","value":5})",
                    "/mechanism/adjuster/setting_deg"),
          std::pair(R"({"op":"add","path":"/mechanism/piston_mass_kg/exhaust","value":1.0})",
                    "/mechanism/piston_mass_kg/exhaust"),
          std::pair(R"({"op":"add","path":"/tracks/exhaust","value":"same"})", "/tracks/exhaust"),
          std::pair(R"({"op":"add","path":"/gas/wall_heat/exhaust_crown_K","value":500})",
                    "/gas/wall_heat/exhaust_crown_K")}) {
        const Problems problems = problemsAfter(patch);
        EXPECT_TRUE(names(problems, path)) << path << "\n" << listed(problems);
    }
}

TEST(OneSided, AnOpposedEngineHasNoHead) {
    const json tree = testing::sampleTree().patch(
        json::parse(R"([{"op":"add","path":"/gas/wall_heat","value":{"head_K":450}}])"));
    const auto read = readDesign(tree.dump());
    ASSERT_FALSE(read);
    EXPECT_TRUE(names(read.problems(), "/gas/wall_heat/head_K")) << listed(read.problems());
}

TEST(OneSided, ShortCircuitsUnlessTold) {
    EXPECT_EQ(testing::sample(crane).gas.scavenging.shortCircuitFraction,
              gas::oneSidedShortCircuit);
    EXPECT_EQ(testing::sample().gas.scavenging.shortCircuitFraction, 0.0);
}

TEST(OneSided, TurningOneIntoTheOtherLeavesADesignThatCanBeRead) {
    const auto opposed =
        withField(testing::sample(crane), "/mechanism/arrangement", std::string("opposed"));
    ASSERT_TRUE(opposed);
    const auto read = readDesign(writeDesign(*opposed));
    EXPECT_TRUE(read) << listed(read ? Problems() : read.problems());
    const auto oneSided = withField(testing::sample("unequal-lobes"), "/mechanism/arrangement",
                                    std::string("one-sided"));
    ASSERT_TRUE(oneSided);
    EXPECT_FALSE(json::parse(writeDesign(*oneSided))["tracks"].contains("exhaust"));
}

// Rows that overlap along the bore share it: 8 ports of 12 mm and 4 of 16 mm on a bore of 70 mm.
TEST(OneSided, WebsAreCheckedAcrossBothRows) {
    const Problems problems =
        problemsAfter(R"({"op":"replace","path":"/ports/inlet/0/count","value":16})");
    EXPECT_TRUE(names(problems, "/ports/inlet/0/count")) << listed(problems);
}

// The row that fills the pump must be one that the skirt uncovers and the crown does not.
TEST(OneSided, ARowUnderTheSkirtMustLieWithinItsReach) {
    const auto sprayer = [](const char* patch) {
        const json tree = testing::sampleTree("terrace-sprayer")
                              .patch(json::parse(std::string("[") + patch + "]"));
        const auto read = readDesign(tree.dump());
        return read ? Problems() : read.problems();
    };
    EXPECT_TRUE(sprayer("").empty()) << listed(sprayer(""));
    for (const auto& [patch, path] :
         {std::pair(R"({"op":"replace","path":"/gas/supply/skirt_row/edge_mm","value":44.5})",
                    "/gas/supply/skirt_row/edge_mm"),
          std::pair(R"({"op":"replace","path":"/gas/supply/skirt_row/height_mm","value":31})",
                    "/gas/supply/skirt_row/edge_mm"),
          std::pair(R"({"op":"replace","path":"/gas/supply/skirt_row/width_mm","value":53})",
                    "/gas/supply/skirt_row/width_mm"),
          std::pair(R"({"op":"replace","path":"/gas/supply/skirt_row/count","value":0})",
                    "/gas/supply/skirt_row/count"),
          std::pair(R"({"op":"replace","path":"/gas/supply/skirt_row/corner_radius_mm","value":8})",
                    "/gas/supply/skirt_row/corner_radius_mm"),
          std::pair(R"({"op":"add","path":"/gas/supply/transfer_cm3","value":0})",
                    "/gas/supply/transfer_cm3")}) {
        EXPECT_TRUE(names(sprayer(patch), path)) << path << "\n" << listed(sprayer(patch));
    }
}

} // namespace
} // namespace lobewright::design
