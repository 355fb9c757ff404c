#include "core/exchange/solution_files.h"
#include "tests/solution/solved_sample.h"

#include <nlohmann/json.hpp>

#include <filesystem>
#include <fstream>
#include <sstream>

namespace lobewright {
namespace {

using test::sample;
using test::solved;

std::vector<std::string> split(const std::string& line) {
    std::vector<std::string> fields;
    std::istringstream in(line);
    for (std::string field; std::getline(in, field, ',');) {
        fields.push_back(field);
    }
    return fields;
}

TEST(ChannelsCsv, ReadsBackToNineDigits) {
    const auto solution = solved(sample("biogas-pump-set"));
    std::istringstream in(exchange::channelsCsv(solution));
    std::string line;
    ASSERT_TRUE(std::getline(in, line));
    ASSERT_EQ(line.back(), '\r') << "RFC 4180 ends lines with CR LF";
    line.pop_back();
    const auto names = split(line);
    ASSERT_EQ(names.size(), solution.channels.size());
    Eigen::Index row = 0;
    while (std::getline(in, line)) {
        line.pop_back();
        const auto fields = split(line + ",x"); // keeps a last empty field
        ASSERT_EQ(fields.size(), names.size() + 1);
        for (std::size_t i = 0; i < names.size(); ++i) {
            const double value = solution.channels[i].values[row];
            if (fields[i].empty()) {
                EXPECT_FALSE(std::isfinite(value)) << names[i];
            } else {
                EXPECT_NEAR(std::stod(fields[i]), value, 1e-8 * std::abs(value)) << names[i];
            }
        }
        ++row;
    }
    EXPECT_EQ(row, solution.theta.size());
}

TEST(SummaryJson, HasTheAgreedGroupsAndFigures) {
    const auto summary =
        nlohmann::json::parse(exchange::summaryJson(solved(sample("biogas-pump-set"))));
    const std::vector<std::string> agreed = {"/geometry/displacement_cm3",
                                             "/geometry/compression_ratio",
                                             "/geometry/trapped_compression_ratio",
                                             "/timing/exhaust_opens_deg",
                                             "/timing/inlet_opens_deg",
                                             "/timing/inlet_closes_deg",
                                             "/timing/exhaust_closes_deg",
                                             "/timing/exhaust_opens_cycle_deg",
                                             "/timing/blowdown_deg",
                                             "/timing/blowdown_cycle_deg",
                                             "/timing/overlap_deg",
                                             "/timing/overlap_cycle_deg",
                                             "/performance/imep_bar",
                                             "/performance/bmep_bar",
                                             "/performance/brake_torque_Nm",
                                             "/performance/brake_power_kW",
                                             "/performance/indicated_efficiency",
                                             "/performance/delivery_ratio",
                                             "/solver/cycles"};
    for (const auto& path : agreed) {
        const nlohmann::json::json_pointer pointer(path);
        ASSERT_TRUE(summary.contains(pointer)) << path;
        EXPECT_TRUE(summary[pointer].is_number()) << path;
    }
    for (const char* group : {"loads", "contact", "balance"}) {
        EXPECT_TRUE(summary.contains(group)) << group;
    }
    ASSERT_TRUE(summary["checks"].is_array());
    for (const auto& check : summary["checks"]) {
        for (const char* key : {"id", "severity", "message", "value", "limit"}) {
            EXPECT_TRUE(check.contains(key)) << key;
        }
    }
}

TEST(SolutionFiles, LeaveNothingHalfWrittenWhereTheFolderCannotBe) {
    const auto solution = solved(sample("classroom-model"));
    const auto blocked = std::filesystem::temp_directory_path() / "lobewright-blocked-folder";
    std::filesystem::remove_all(blocked);
    { std::ofstream(blocked) << "a file where the folder should be"; }
    const auto problem = exchange::writeSolution(solution, blocked);
    ASSERT_TRUE(problem);
    EXPECT_NE(problem->message.english().find("lobewright-blocked-folder"), std::string::npos);
    std::filesystem::remove_all(blocked);
}

} // namespace
} // namespace lobewright
