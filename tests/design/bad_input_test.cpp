#include "core/design/file.h"
#include "tests/design/bad_designs.h"
#include "tests/design/sample.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <set>

namespace lobewright::design {
namespace {

using testing::badDesigns;
using testing::listed;
using testing::sampleTree;

const Problem* at(const Problems& problems, const std::string& path) {
    const auto found = std::ranges::find_if(problems, [&path](const Problem& problem) {
        return path.empty() ? problem.path.empty() : problem.path.starts_with(path);
    });
    return found == problems.end() ? nullptr : &*found;
}

TEST(BadInput, EveryBadDesignIsRefusedWithItsPathNamed) {
    const auto designs = badDesigns();
    EXPECT_GE(designs.size(), 60U);
    for (const auto& bad : designs) {
        SCOPED_TRACE(bad.name);
        const auto result = readDesign(bad.text);
        ASSERT_FALSE(result);
        EXPECT_NE(at(result.problems(), bad.path), nullptr) << "expected " << bad.path << " among\n"
                                                            << listed(result.problems());
        for (const Problem& problem : result.problems()) {
            EXPECT_FALSE(problem.message.english().empty());
            EXPECT_LT(problem.message.english().size(), 400U) << problem.message.english();
        }
    }
}

// One mistake must not be drowned in consequences.
TEST(BadInput, OneWrongValueGivesFewProblems) {
    for (const auto& bad : badDesigns()) {
        if (bad.breaksSchema) {
            const auto result = readDesign(bad.text);
            ASSERT_FALSE(result) << bad.name;
            EXPECT_LE(result.problems().size(), 3U) << bad.name << "\n"
                                                    << listed(result.problems());
        }
    }
}

// Whichever of the two is typed first is refused: the refusal names the other as well.
TEST(BadInput, RefusalOfARingBeyondThePistonNamesBothInputs) {
    auto tree = sampleTree();
    tree["mechanism"]["piston"]["length_mm"] = 50.0;
    const auto result = readDesign(tree.dump());
    ASSERT_FALSE(result);
    const Problem* problem = at(result.problems(), "/mechanism/piston/ring_distances_mm/2");
    ASSERT_NE(problem, nullptr) << listed(result.problems());
    const std::string said = problem->message.english();
    EXPECT_NE(said.find("ring 3 stands 60 mm"), std::string::npos) << said;
    EXPECT_NE(said.find("piston length, 50 mm"), std::string::npos) << said;
}

TEST(BadInput, AllProblemsAreListedAtOnce) {
    auto tree = sampleTree();
    tree["mechanism"]["bore_mm"] = -1;
    tree["mechanism"].erase("clearance_mm");
    tree["mechanism"]["colour"] = "red";
    tree["tracks"]["inlet"]["segments"][0]["span_deg"] = "wide";
    tree["ports"]["exhaust"][0]["count"] = 2.5;
    tree["gas"]["fuel"] = "coal";
    tree["running"]["speed_rpm"] = -5;
    tree["limits"] = {{"film_ratio", {{"warning", 0.2}}}};
    const auto result = readDesign(tree.dump());
    ASSERT_FALSE(result);
    std::set<std::string> paths;
    for (const Problem& problem : result.problems()) {
        paths.insert(problem.path);
    }
    EXPECT_EQ(paths, (std::set<std::string>{
                         "/mechanism/bore_mm", "/mechanism/clearance_mm", "/mechanism/colour",
                         "/tracks/inlet/segments/0/span_deg", "/ports/exhaust/0/count", "/gas/fuel",
                         "/running/speed_rpm", "/limits/film_ratio/warning"}))
        << listed(result.problems());
}

TEST(BadInput, RulesBetweenValuesAreCheckedWhereTheirSectionsAreSound) {
    auto tree = sampleTree();
    tree["gas"]["fuel"] = "coal";
    tree["tracks"]["inlet"]["segments"][1]["span_deg"] = 30.0;
    tree["ports"]["inlet"][0]["corner_radius_mm"] = 5.0;
    const auto result = readDesign(tree.dump());
    ASSERT_FALSE(result);
    EXPECT_TRUE(at(result.problems(), "/gas/fuel"));
    EXPECT_TRUE(at(result.problems(), "/tracks/inlet/segments"));
    EXPECT_TRUE(at(result.problems(), "/ports/inlet/0/corner_radius_mm"));
}

TEST(BadInput, UnknownKeysNameTheNearestKnownKey) {
    auto tree = sampleTree();
    tree["mechanism"]["pitch_radius"] = 95.0;
    const auto result = readDesign(tree.dump());
    ASSERT_FALSE(result);
    EXPECT_THAT(result.problems().front().message.english(),
                ::testing::HasSubstr("\"pitch_radius_mm\""));
}

TEST(BadInput, KeysOfAnotherSectionNameThatSection) {
    auto tree = sampleTree();
    tree["running"]["bore_mm"] = 58.0;
    const auto result = readDesign(tree.dump());
    ASSERT_FALSE(result);
    EXPECT_THAT(result.problems().front().message.english(), ::testing::HasSubstr("/mechanism"));
}

TEST(BadInput, MessagesCarryTheValueAndTheRule) {
    auto tree = sampleTree();
    tree["mechanism"]["bore_mm"] = -3;
    const auto result = readDesign(tree.dump());
    ASSERT_FALSE(result);
    EXPECT_EQ(result.problems().front().message.english(),
              "Bore is -3 mm; it must be ≥ 2 and ≤ 1000 mm");
}

TEST(BadInput, SyntaxProblemsNameLineAndColumn) {
    const auto result = readDesign("{\n  \"format\": \"lobewright-design\",\n  \"title\": oops\n}");
    ASSERT_FALSE(result);
    EXPECT_EQ(result.problems().front().path, "/title");
    EXPECT_THAT(result.problems().front().message.english(),
                ::testing::HasSubstr("line 3, column 1"));
}

// A design changed in memory never saw the reader.
TEST(BadInput, ValuesOutOfRangeInMemoryAreFoundByValidate) {
    Design design = testing::sample();
    design.mechanism.bore = std::nan("");
    design.running.speed = -1.0;
    design.ports.inlet.clear();
    const Problems problems = validate(design);
    EXPECT_TRUE(at(problems, "/mechanism/bore_mm")) << listed(problems);
    EXPECT_TRUE(at(problems, "/running/speed_rpm")) << listed(problems);
    EXPECT_TRUE(at(problems, "/ports/inlet")) << listed(problems);
}

// Damage at any byte gives a problem or a design, never a crash or an endless run.
TEST(BadInput, DamagedBytesNeverCrash) {
    const std::string good = testing::sampleText();
    unsigned state = 12345U;
    const auto next = [&state](std::size_t bound) {
        state = state * 1664525U + 1013904223U; // Numerical Recipes' quick generator
        return static_cast<std::size_t>(state >> 8U) % bound;
    };
    for (int round = 0; round < 3000; ++round) {
        std::string text = good;
        for (std::size_t i = 0; i <= next(3); ++i) {
            text[next(text.size())] = static_cast<char>(next(256));
        }
        const auto result = readDesign(text);
        EXPECT_TRUE(result || !result.problems().empty());
    }
}

} // namespace
} // namespace lobewright::design
