// The commands on part load and on inputs that follow the speed.
#include "core/design/schedules.h"
#include "tests/cli/run_cli.h"
#include "tests/design/sample.h"

#include <gmock/gmock.h>

#include <algorithm>

namespace lobewright::cli::testing {
namespace {

using ::testing::HasSubstr;

class Map : public CliTest {};

TEST_F(Map, WritesEveryLoadAtEverySpeed) {
    const auto outcome = run("map " + sample("biogas-pump-set") +
                             " --speeds 800:1200:3 --loads 0.4:1:2 --out map.csv");
    EXPECT_EQ(outcome.status, 0) << outcome.err;
    std::stringstream lines(contents(folder_ / "map.csv"));
    std::vector<std::string> starts;
    for (std::string line; std::getline(lines, line);) {
        if (!line.starts_with('#')) {
            starts.push_back(line.substr(0, line.find(',', line.find(',') + 1)));
        }
    }
    EXPECT_THAT(starts, ::testing::ElementsAre("speed_rpm,load", "800,0.4", "1000,0.4", "1200,0.4",
                                               "800,1", "1000,1", "1200,1"));
}

TEST_F(Map, RefusesStepsThatAreNone) {
    for (const char* speeds : {"800:1200", "800:1200:1", "800:1200:3:4", "a:1200:3", ":1200:3",
                               "800:1200:2.5", "800,1200,3", "0:1200:3"}) {
        const auto outcome = run("map " + sample("biogas-pump-set") + " --speeds " + speeds +
                                 " --loads 0.4:1:2 --out map.csv");
        EXPECT_EQ(outcome.status, 2) << speeds << outcome.err;
    }
    const auto outcome = run("map " + sample("biogas-pump-set") +
                             " --speeds 800:1200:2 --loads 0.4:1.2:2 --out map.csv");
    EXPECT_EQ(outcome.status, 2);
    EXPECT_THAT(outcome.err, HasSubstr("between 0 and 1"));
    EXPECT_FALSE(std::filesystem::exists(folder_ / "map.csv"));
}

TEST_F(Map, StoppedByCtrlCKeepsThePointsThatAreDone) {
    const auto outcome =
        run("map " + sample("biogas-pump-set") +
            " --speeds 300:1000:1000 --loads 0.3:1:100 --out map.csv 2>/dev/null & pid=$!; "
            "sleep 0.5; while kill -INT $pid 2>/dev/null; do sleep 0.2; done; wait $pid");
    EXPECT_EQ(outcome.status, 130) << outcome.err;
    EXPECT_FALSE(std::filesystem::exists(folder_ / "map.csv"));
    if (filesIn(folder_) > 0) { // a slow machine has no point yet
        const std::string kept = contents(folder_ / "map.unfinished.csv");
        EXPECT_TRUE(kept.starts_with("speed_rpm,load,brake_torque_Nm,")) << kept.substr(0, 80);
        EXPECT_THAT(kept, ::testing::EndsWith(",\r\n"));
    }
}

TEST_F(Map, ScheduleWritesTheDesignWithWhatItFound) {
    const auto outcome =
        run("schedule " + sample("biogas-pump-set") +
            " --vary /mechanism/adjuster/setting_deg --from -8 --to 12 --speeds 800:1200:2 "
            "--out found.json");
    EXPECT_EQ(outcome.status, 0) << outcome.err;
    EXPECT_THAT(outcome.out, HasSubstr("The schedule "));
    const auto found = design::readDesign(contents(folder_ / "found.json"));
    ASSERT_TRUE(found) << design::testing::listed(found.problems());
    ASSERT_EQ(found->schedules.size(), 1U);
    EXPECT_EQ(found->schedules[0].speed.size(), 2U);
    EXPECT_LE(std::ranges::max(found->schedules[0].value), 12.0);
    EXPECT_GE(std::ranges::min(found->schedules[0].value), -8.0);
    // What it found is used by every other command, and can be searched for anew.
    EXPECT_EQ(run("solve found.json --out solved").status, 0);
    EXPECT_EQ(run("schedule found.json --vary /mechanism/adjuster/setting_deg --from -8 --to 12 "
                  "--speeds 800:1200:2 --out again.json")
                  .status,
              0);
    EXPECT_EQ(contents(folder_ / "again.json"), contents(folder_ / "found.json"));
}

TEST_F(Map, ScheduleRefusesWhatCannotFollowTheSpeed) {
    const auto outcome = run("schedule " + sample("biogas-pump-set") +
                             " --vary /mechanism/bore_mm --from 50 --to 60 --speeds 800:1200:2 "
                             "--out found.json");
    EXPECT_EQ(outcome.status, 2);
    EXPECT_THAT(outcome.err, HasSubstr("can follow the speed"));
    EXPECT_FALSE(std::filesystem::exists(folder_ / "found.json"));
}

TEST_F(Map, BadSchedulesAreToldWithTheirPath) {
    auto tree = design::testing::sampleTree();
    tree["schedules"] = nlohmann::json::parse(
        R"([{"input": "/gas/lambda", "speed_rpm": [900, 800], "value": [1, 1.2]}])");
    put("bad.json", tree.dump());
    const auto outcome = run("check bad.json");
    EXPECT_EQ(outcome.status, 3);
    EXPECT_THAT(outcome.err, HasSubstr("/schedules/0/speed_rpm/1"));
}

} // namespace
} // namespace lobewright::cli::testing
