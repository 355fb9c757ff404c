#include "tests/cli/run_cli.h"
#include "tests/places.h"

#include <gmock/gmock.h>
#include <nlohmann/json.hpp>

#include <map>
#include <vector>

namespace lobewright::cli::testing {
namespace {

using ::testing::HasSubstr;
using CompareCommand = CliTest;
using ClaimsCommand = CliTest;

std::string claims() {
    return fmt::format("'{}/samples/claims/irrigation-set.claims.json'", test::sourceFolder());
}

/// Lines of a table without quoted fields, each by the names of the first.
std::vector<std::map<std::string, std::string>> table(const std::string& text) {
    std::vector<std::vector<std::string>> lines;
    std::stringstream stream(text);
    for (std::string line; std::getline(stream, line);) {
        lines.emplace_back();
        std::stringstream fields(line.substr(0, line.find('\r')));
        for (std::string field; std::getline(fields, field, ',');) {
            lines.back().push_back(field);
        }
    }
    std::vector<std::map<std::string, std::string>> rows;
    for (std::size_t i = 1; i < lines.size(); ++i) {
        rows.emplace_back();
        for (std::size_t j = 0; j < lines[i].size(); ++j) {
            rows.back()[lines[0][j]] = lines[i][j];
        }
    }
    return rows;
}

TEST_F(CompareCommand, WritesFiveEnginesAtTheSpeedOfTheDesign) {
    const auto outcome = run("compare " + sample("biogas-pump-set") + " --out table.csv");
    EXPECT_EQ(outcome.status, 0) << outcome.err;
    const auto rows = table(contents(folder_ / "table.csv"));
    ASSERT_EQ(rows.size(), 5U);
    EXPECT_EQ(rows[0].at("engine"), "cam-track");
    EXPECT_EQ(rows[2].at("engine"), "cranks-same-piston-speed");
    EXPECT_EQ(rows[4].at("engine"), "four-stroke-same-supply");
    for (const auto& row : rows) {
        EXPECT_EQ(row.at("problem"), "") << row.at("engine");
        EXPECT_EQ(row.at("basis"), "displacement");
        EXPECT_GT(std::stod(row.at("brake_power_kW")), 0.0) << row.at("engine");
    }
}

TEST_F(CompareCommand, TakesARangeAndABasis) {
    const auto outcome = run("compare " + sample("biogas-pump-set") +
                             " --from 800 --to 1200 --points 2 --basis power --out table.csv");
    EXPECT_EQ(outcome.status, 0) << outcome.err;
    const auto rows = table(contents(folder_ / "table.csv"));
    ASSERT_EQ(rows.size(), 10U);
    EXPECT_EQ(rows[0].at("design_speed_rpm"), "800");
    EXPECT_EQ(rows[9].at("design_speed_rpm"), "1200");
    for (std::size_t i = 0; i < 5; ++i) {
        EXPECT_NEAR(std::stod(rows[i].at("brake_power_kW")),
                    std::stod(rows[0].at("brake_power_kW")), 1e-6);
    }
}

TEST_F(CompareCommand, WrongUsageEndsInStatus2AndWritesNothing) {
    for (const char* arguments :
         {"--out t.csv --from 800", "--out t.csv --speed 800 --from 700 --to 900 --points 3",
          "--out t.csv --basis weight", "--speed 900", "--out t.csv --speed -3",
          "--out t.csv --from 0 --to 900 --points 3"}) {
        const auto outcome =
            run(fmt::format("compare {} {}", sample("biogas-pump-set"), arguments));
        EXPECT_EQ(outcome.status, 2) << arguments << outcome.err;
        EXPECT_NE(outcome.err, "") << arguments;
    }
    EXPECT_EQ(filesIn(folder_), 0U);
}

TEST_F(ClaimsCommand, PrintsTheReportForPeopleAndForMachines) {
    const auto text = run("claims " + claims());
    EXPECT_EQ(text.status, 0) << text.err;
    EXPECT_THAT(text.out, HasSubstr("Lowest possible speed of peak power"));
    const auto json = run("claims --json " + claims());
    EXPECT_EQ(json.status, 0);
    const auto root = nlohmann::json::parse(json.out);
    EXPECT_GT(root["findings"].size(), 10U);
    EXPECT_EQ(root["statements"].size(), 5U);
}

TEST_F(ClaimsCommand, InvalidFileListsEveryProblemWithStatus3) {
    put("bad.json", R"({"format": "lobewright-claims", "format_version": 1,
                        "engine": {"bore": "64 N·m"}, "figures": {"torqe": "300 N·m"}})");
    const auto outcome = run("claims bad.json");
    EXPECT_EQ(outcome.status, 3);
    EXPECT_THAT(outcome.err, HasSubstr("/engine/bore"));
    EXPECT_THAT(outcome.err, HasSubstr("\"torque\""));
    EXPECT_THAT(outcome.err, HasSubstr("2 problems"));
    EXPECT_EQ(run("claims nothing.json").status, 5);
}

} // namespace
} // namespace lobewright::cli::testing
