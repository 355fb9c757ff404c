#include "core/claims/claims_file.h"
#include "core/claims/claims_keys.h"
#include "core/claims/claims_report.h"
#include "tests/claims/claims_text.h"
#include "tests/places.h"

#include <nlohmann/json.hpp>

#include <algorithm>
#include <filesystem>
#include <sstream>

namespace lobewright::study {
namespace {

const std::string example = test::sourceFolder() + "/samples/claims/irrigation-set.claims.json";

Problems problemsOf(const std::string& groups) {
    const auto read = readClaims(claimsFile(groups));
    EXPECT_FALSE(read) << groups;
    return read ? Problems{} : read.problems();
}

TEST(ClaimsFile, ExampleReadsBackAsItself) {
    const auto claims = loadClaims(example);
    ASSERT_TRUE(claims) << claims.problems().front().path
                        << claims.problems().front().message.english();
    const auto again = readClaims(writeClaims(*claims));
    ASSERT_TRUE(again);
    EXPECT_EQ(*again, *claims);
    EXPECT_EQ(claims->engine.displacement->unit, "L");
    EXPECT_EQ(claims->statements.size(), 5u);
}

TEST(ClaimsFile, ExampleIsNotContradictory) {
    const auto claims = loadClaims(example);
    ASSERT_TRUE(claims);
    for (const Conflict& conflict : checkClaims(*claims).conflicts) {
        EXPECT_NE(conflict.verdict, Verdict::contradictory) << conflict.message.english();
    }
}

TEST(ClaimsFile, UnknownKeysNameTheNearest) {
    const auto problems = problemsOf(
        R"("engine": {"displacment": "2 L"}, "figure": {}, "figures": {"Power": "1 kW"})");
    ASSERT_EQ(problems.size(), 3u);
    EXPECT_EQ(problems[0].path, "/figure");
    EXPECT_NE(problems[0].message.english().find("\"figures\""), std::string::npos);
    EXPECT_EQ(problems[1].path, "/engine/displacment");
    EXPECT_NE(problems[1].message.english().find("\"displacement\""), std::string::npos);
    EXPECT_EQ(problems[2].path, "/figures/Power");
    EXPECT_NE(problems[2].message.english().find("\"power\""), std::string::npos);
}

TEST(ClaimsFile, ProblemsGivePathValueAndRule) {
    const auto problems = problemsOf(
        R"("engine": {"cylinders": 2.5, "cycle": "two stroke", "bore": 64, "stroke": "-3 mm"},
           "statements": [{"claim": "", "holds": "yes"}, 7])");
    ASSERT_EQ(problems.size(), 7u);
    EXPECT_EQ(problems[0].path, "/engine/bore");
    EXPECT_EQ(problems[0].message.english(), "Bore is 64; it must be a length, e.g. \"64 mm\"");
    EXPECT_EQ(problems[1].path, "/engine/cycle");
    EXPECT_NE(problems[1].message.english().find("the nearest is \"two-stroke\""),
              std::string::npos);
    EXPECT_EQ(problems[2].path, "/engine/cylinders");
    EXPECT_EQ(problems[2].message.english(), "Chambers is 2.5; it must be a whole number");
    EXPECT_EQ(problems[3].path, "/engine/stroke");
    EXPECT_EQ(problems[4].path, "/statements/0/holds");
    EXPECT_EQ(problems[5].path, "/statements/0/claim");
    EXPECT_EQ(problems[6].path, "/statements/1");
}

TEST(ClaimsFile, FormatAndVersionAreChecked) {
    EXPECT_FALSE(readClaims("{}"));
    EXPECT_FALSE(readClaims(R"({"format": "lobewright-design", "format_version": 1})"));
    EXPECT_FALSE(readClaims(R"({"format": "lobewright-claims", "format_version": 2})"));
    EXPECT_FALSE(readClaims("[1, 2]"));
    EXPECT_FALSE(readClaims(""));
    EXPECT_FALSE(readClaims(R"({"format": "lobewright-claims")"));
    EXPECT_TRUE(readClaims(claimsFile("")));
}

TEST(ClaimsFile, MissingFileIsAProblem) {
    EXPECT_FALSE(loadClaims("/no/such/file.claims.json"));
}

TEST(ClaimsFile, SavedFileLoadsEqual) {
    const auto file = std::filesystem::path(testing::TempDir()) / "saved.claims.json";
    const Claims claims = claimsOf(R"("engine": {"charging": "boosted", "cylinders": 3,
        "events_per_turn": 1.5}, "figures": {"power": "100.5 PS", "air_ratio": 1.1},
        "conditions": {"charger": "turbo-after-cooled", "relative_humidity": "0 %"})");
    ASSERT_FALSE(saveClaims(claims, file));
    const auto loaded = loadClaims(file);
    ASSERT_TRUE(loaded);
    EXPECT_EQ(*loaded, claims);
    std::filesystem::remove(file);
}

TEST(ClaimsFile, EveryKeyIsWrittenAndReadBack) {
    Claims claims;
    forEachGroup([&](const char*, const auto& keys, auto member) {
        auto& group = claims.*member;
        for (const auto& key : keys) {
            if (key.amount != nullptr) {
                group.*(key.amount) = amount(0.5, shownUnit(key.dimension).symbol);
            } else if (key.count != nullptr) {
                group.*(key.count) = 2.0;
            } else if (key.choose) {
                key.choose(group, key.words.size() - 1);
            }
        }
    });
    const auto again = readClaims(writeClaims(claims));
    ASSERT_TRUE(again) << again.problems().front().path
                       << again.problems().front().message.english();
    EXPECT_EQ(*again, claims);
}

TEST(ClaimsReport, TextShowsArithmeticVerdictSourceAndCaution) {
    const auto claims = loadClaims(example);
    ASSERT_TRUE(claims);
    const std::string text = claimsText(checkClaims(*claims), 80);
    for (const char* part : {"2π·T/(c·V_d)", "only with boost", "Heywood", "Estimates only",
                             "disagrees", "cannot be judged", "confidence"}) {
        EXPECT_NE(text.find(part), std::string::npos) << part;
    }
}

/// Characters of UTF-8 text, each as wide as a column here.
std::size_t columnsOf(const std::string& line) {
    return static_cast<std::size_t>(
        std::ranges::count_if(line, [](char c) { return (c & 0xc0) != 0x80; }));
}

TEST(ClaimsReport, LinesKeepTheWidthAndLabelledTextsOneMargin) {
    const auto claims = loadClaims(example);
    ASSERT_TRUE(claims);
    for (const std::size_t width : {60U, 61U, 62U, 63U, 80U, 81U, 82U, 83U}) {
        std::istringstream text(claimsText(checkClaims(*claims), width));
        int labelled = 0;
        for (std::string line; std::getline(text, line);) {
            // headings are not broken, and a word longer than the line stands alone
            const bool isOneWord = line.find(' ', line.find_first_not_of(' ')) == std::string::npos;
            EXPECT_TRUE(columnsOf(line) <= width || isOneWord || !line.starts_with(' '))
                << width << ": " << line;
            for (const std::string label : {"arithmetic", "band", "source", "confidence"}) {
                if (line.starts_with("    " + label + "  ")) {
                    EXPECT_EQ(line.find_first_not_of(' ', 4 + label.size()), 16U) << line;
                    ++labelled;
                }
            }
        }
        EXPECT_GT(labelled, 3);
    }
}

TEST(ClaimsReport, JsonHoldsEveryRowWithFiniteNumbers) {
    const auto claims = loadClaims(example);
    ASSERT_TRUE(claims);
    const ClaimsReport report = checkClaims(*claims);
    const auto root = nlohmann::json::parse(claimsJson(report));
    EXPECT_EQ(root["findings"].size(), report.findings.size());
    EXPECT_EQ(root["statements"].size(), 5u);
    for (const auto& finding : root["findings"]) {
        EXPECT_TRUE(finding["value"].is_number()) << finding;
    }
}

TEST(ClaimsReport, ExtremeNumbersStayFinite) {
    for (const char* size : {"1e-12", "1e12"}) {
        const std::string n = size;
        // NOLINTBEGIN(performance-inefficient-string-concatenation): twice
        const auto claims = readClaims(claimsFile(
            R"("engine": {"cycle": "two-stroke", "displacement": ")" + n + R"( m³", "mass": ")" +
            n + R"( kg", "charge_pressure": ")" + n + R"( Pa", "stroke": ")" + n +
            R"( m", "bore": "1e12 m", "pistons": 1}, "figures": {"power": "1e12 W", "torque": ")" +
            n + R"( N·m", "efficiency": )" + n +
            R"(}, "conditions": {"air_pressure": "1e-12 Pa", "air_temperature": "1e12 K"})"));
        // NOLINTEND(performance-inefficient-string-concatenation)
        ASSERT_TRUE(claims) << claims.problems().front().message.english();
        for (const Finding& finding : checkClaims(*claims).findings) {
            EXPECT_TRUE(std::isfinite(finding.value)) << finding.id;
        }
    }
}

} // namespace
} // namespace lobewright::study
