#include "core/design/fields.h"
#include "core/design/schedule_edits.h"
#include "core/design/schedules.h"
#include "core/pchip.h"
#include "core/units.h"
#include "tests/design/sample.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <algorithm>
#include <random>

namespace lobewright::design {
namespace {

using ::testing::Contains;
using testing::listed;
using testing::sample;

const std::string setting = "/mechanism/adjuster/setting_deg";
constexpr double rpm = units::revPerMinute;

/// The sample with schedules as a person would write them.
Result<Design> readWith(const char* schedules) {
    nlohmann::json tree = testing::sampleTree();
    tree["schedules"] = nlohmann::json::parse(schedules);
    return readDesign(tree.dump());
}

std::vector<std::string> pathsOf(const Problems& problems) {
    std::vector<std::string> paths;
    for (const Problem& problem : problems) {
        paths.push_back(problem.path);
    }
    return paths;
}

Schedule randomSchedule(std::mt19937& random, std::size_t points) {
    std::uniform_real_distribution<double> step(0.1, 50.0), value(-30.0, 30.0);
    Schedule schedule{setting, {}, {}};
    double speed = 10.0;
    for (std::size_t i = 0; i < points; ++i) {
        schedule.speed.push_back(speed += step(random));
        schedule.value.push_back(value(random));
    }
    return schedule;
}

TEST(ScheduleCurve, IsTheMonotoneCubicOfTheLibrary) {
    std::mt19937 random(7);
    for (int trial = 0; trial < 50; ++trial) {
        const Schedule schedule = randomSchedule(random, 4 + static_cast<std::size_t>(trial % 5));
        auto speeds = schedule.speed, values = schedule.value;
        const boost::math::interpolators::pchip<std::vector<double>> curve(std::move(speeds),
                                                                           std::move(values));
        for (int i = 0; i <= 100; ++i) {
            const double speed = schedule.speed.front() +
                                 (schedule.speed.back() - schedule.speed.front()) * i / 100.0;
            EXPECT_NEAR(valueAt(schedule, speed), curve(std::min(speed, schedule.speed.back())),
                        1e-11);
        }
    }
}

// The published property: an interpolant whose slopes lie in the region of Fritsch and Carlson
// (SIAM J. Numer. Anal. 17, 1980) rises and falls with its data, so that it passes no value of
// theirs.
TEST(ScheduleCurve, NeverPassesTheValuesBesideIt) {
    std::mt19937 random(11);
    for (int trial = 0; trial < 200; ++trial) {
        const Schedule schedule = randomSchedule(random, 2 + static_cast<std::size_t>(trial % 7));
        for (std::size_t k = 1; k < schedule.speed.size(); ++k) {
            const double from = schedule.value[k - 1], to = schedule.value[k];
            double before = from;
            for (int i = 0; i <= 40; ++i) {
                const double speed =
                    schedule.speed[k - 1] + (schedule.speed[k] - schedule.speed[k - 1]) * i / 40.0;
                const double value = valueAt(schedule, speed);
                EXPECT_GE((value - before) * (to - from), -1e-9);
                before = value;
            }
            EXPECT_DOUBLE_EQ(before, to);
        }
    }
}

TEST(ScheduleCurve, StandsStillOutsideAndRunsStraightThroughTwoPoints) {
    const Schedule schedule{setting, {100.0, 200.0}, {5.0, -3.0}};
    EXPECT_EQ(valueAt(schedule, 10.0), 5.0);
    EXPECT_EQ(valueAt(schedule, 100.0), 5.0);
    EXPECT_NEAR(valueAt(schedule, 150.0), 1.0, 1e-12);
    EXPECT_NEAR(valueAt(schedule, 175.0), -1.0, 1e-12);
    EXPECT_EQ(valueAt(schedule, 200.0), -3.0);
    EXPECT_EQ(valueAt(schedule, 900.0), -3.0);
    EXPECT_EQ(valueAt({setting, {100.0}, {7.0}}, 50.0), 7.0);
    EXPECT_EQ(valueAt({setting, {100.0}, {7.0}}, 500.0), 7.0);
}

TEST(Schedules, ReadBackAsWritten) {
    Design design = sample();
    design.schedules = {{setting, {600.0 * rpm, 1500.0 * rpm}, {6.0, -2.0}},
                        {"/gas/lambda", {900.0 * rpm}, {1.2}}};
    const auto again = readDesign(writeDesign(design));
    ASSERT_TRUE(again) << listed(again.problems());
    EXPECT_EQ(*again, design);
    const auto entry = nlohmann::json::parse(writeDesign(design))["schedules"][0];
    EXPECT_EQ(entry.dump(),
              R"({"input":"/mechanism/adjuster/setting_deg","speed_rpm":[600.0,1500.0],)"
              R"("value":[6.0,-2.0]})");
}

TEST(Schedules, AreNotWrittenWithoutEntries) {
    EXPECT_FALSE(nlohmann::json::parse(writeDesign(sample())).contains("schedules"));
}

TEST(Schedules, AreKeptInSnapshots) {
    Design design = sample();
    design.schedules = {{setting, {600.0 * rpm, 1500.0 * rpm}, {6.0, -2.0}}};
    design.snapshots.push_back({"with a schedule", "", design});
    design.schedules.clear();
    const auto again = readDesign(writeDesign(design));
    ASSERT_TRUE(again) << listed(again.problems());
    EXPECT_EQ(again->snapshots.front().design.schedules, design.snapshots[0].design.schedules);
}

struct BadSchedule {
    const char *name, *schedules, *path;
};
void PrintTo(const BadSchedule& bad, std::ostream* out) {
    *out << bad.name;
}

class BadSchedules : public ::testing::TestWithParam<BadSchedule> {};

TEST_P(BadSchedules, AreRefusedWithTheirPath) {
    const auto design = readWith(GetParam().schedules);
    ASSERT_FALSE(design);
    EXPECT_THAT(pathsOf(design.problems()), Contains(GetParam().path)) << listed(design.problems());
}

INSTANTIATE_TEST_SUITE_P(
    Each, BadSchedules,
    ::testing::Values(
        BadSchedule{"unknown input", R"([{"input":"/gas/lamda","speed_rpm":[900],"value":[1]}])",
                    "/schedules/0/input"},
        BadSchedule{"input that stands still by nature",
                    R"([{"input":"/mechanism/bore_mm","speed_rpm":[900],"value":[58]}])",
                    "/schedules/0/input"},
        BadSchedule{"the speed itself",
                    R"([{"input":"/running/speed_rpm","speed_rpm":[900],"value":[900]}])",
                    "/schedules/0/input"},
        BadSchedule{"a choice", R"([{"input":"/gas/fuel","speed_rpm":[900],"value":[1]}])",
                    "/schedules/0/input"},
        BadSchedule{"a flag", R"([{"input":"/running/motored","speed_rpm":[900],"value":[1]}])",
                    "/schedules/0/input"},
        BadSchedule{"lengths that differ",
                    R"([{"input":"/gas/lambda","speed_rpm":[900,1200],"value":[1]}])",
                    "/schedules/0/value"},
        BadSchedule{"no points", R"([{"input":"/gas/lambda","speed_rpm":[],"value":[]}])",
                    "/schedules/0/speed_rpm"},
        BadSchedule{"speeds that fall",
                    R"([{"input":"/gas/lambda","speed_rpm":[900,800],"value":[1,1.1]}])",
                    "/schedules/0/speed_rpm/1"},
        BadSchedule{"speeds that stand",
                    R"([{"input":"/gas/lambda","speed_rpm":[900,900],"value":[1,1.1]}])",
                    "/schedules/0/speed_rpm/1"},
        BadSchedule{"a value outside the range of its input",
                    R"([{"input":"/gas/lambda","speed_rpm":[900,1000],"value":[1,21]}])",
                    "/schedules/0/value/1"},
        BadSchedule{"two of one input",
                    R"([{"input":"/gas/lambda","speed_rpm":[900],"value":[1]},)"
                    R"({"input":"/gas/lambda","speed_rpm":[900],"value":[1.2]}])",
                    "/schedules/1/input"},
        BadSchedule{"no input", R"([{"speed_rpm":[900],"value":[1]}])", "/schedules/0/input"},
        BadSchedule{"an unknown key",
                    R"([{"input":"/gas/lambda","speeds":[1],"speed_rpm":[900],"value":[1]}])",
                    "/schedules/0/speeds"}));

TEST(Schedules, OfAnInputThatIsNotUsedAtPresentAreKept) {
    const auto design =
        readWith(R"([{"input":"/gas/supply/drive_ratio","speed_rpm":[900,1200],"value":[1.5,2]}])");
    ASSERT_TRUE(design) << listed(design.problems());
    EXPECT_EQ(atItsSpeed(*design), *design);
}

TEST(AtItsSpeed, SetsTheInputsAndNothingElseAndDoesItOnce) {
    Design design = sample();
    const Schedule schedule{setting, {600.0 * rpm, 1000.0 * rpm, 1600.0 * rpm}, {6.0, 1.0, -2.0}};
    design.schedules = {schedule, {"/gas/burn/duration_deg", {500.0 * rpm}, {44.0}}};
    design.running.speed = 1200.0 * rpm;
    const Design running = atItsSpeed(design);
    Design expected = design;
    expected.mechanism.adjuster.setting =
        toSi(in::degrees, valueAt(schedule, design.running.speed));
    expected.gas.burn.duration = toSi(in::cycleDegrees, 44.0);
    EXPECT_EQ(running, expected);
    EXPECT_EQ(atItsSpeed(running), running);
    Design faster = running; // and again at another speed
    faster.running.speed = 1500.0 * rpm;
    expected.running.speed = faster.running.speed;
    expected.mechanism.adjuster.setting =
        toSi(in::degrees, valueAt(schedule, faster.running.speed));
    EXPECT_EQ(atItsSpeed(faster), expected);
}

TEST(AtItsSpeed, IsTheDesignItselfWithoutSchedules) {
    EXPECT_EQ(atItsSpeed(sample()), sample());
}

TEST(Schedules, AreJudgedAtTheSpeedOfTheDesign) {
    // So far out that the crowns meet, but at another speed only.
    const std::string axial = "/mechanism/adjuster/axial_mm";
    Design design = sample();
    design.schedules = {{axial, {600.0 * rpm, 700.0 * rpm}, {0.0, -400.0}}};
    design.running.speed = 600.0 * rpm;
    EXPECT_TRUE(validateEngine(design).empty()) << listed(validateEngine(design));
    design.running.speed = 700.0 * rpm;
    EXPECT_FALSE(validateEngine(design).empty());
}

TEST(Schedules, LeaveTheFixedValueForTheDayTheyGo) {
    Design design = sample();
    design.mechanism.adjuster.setting = toSi(in::degrees, 2.0);
    design.schedules = {{setting, {600.0 * rpm}, {6.0}}};
    Design edited = atItsSpeed(design);
    edited.title = "edited";
    const Design kept = withFixedValuesOf(edited, design);
    EXPECT_EQ(kept.title, "edited");
    EXPECT_EQ(kept.mechanism.adjuster.setting, design.mechanism.adjuster.setting);
    const Design still = withoutSchedule(kept, setting);
    EXPECT_TRUE(still.schedules.empty());
    EXPECT_EQ(atItsSpeed(still).mechanism.adjuster.setting, design.mechanism.adjuster.setting);
}

TEST(Schedules, OnlyNumbersOfAdjusterGasAndOperatingPointCanFollowTheSpeed) {
    std::vector<std::string> paths;
    for (const Field& field : inputsThatCanFollowSpeed(sample())) {
        paths.push_back(field.path);
    }
    for (const char* path : {"/mechanism/adjuster/setting_deg", "/mechanism/adjuster/axial_mm",
                             "/gas/lambda", "/gas/burn/start_deg", "/gas/supply/pressure_bar",
                             "/running/under_piston_pressure_bar", "/running/load"}) {
        EXPECT_THAT(paths, Contains(path));
    }
    for (const char* path : {"/running/speed_rpm", "/mechanism/bore_mm", "/gas/fuel"}) {
        EXPECT_THAT(paths, ::testing::Not(Contains(path)));
    }
}

TEST(ScheduleEdits, KeepTheSpeedsRising) {
    const Schedule schedule{setting, {600.0 * rpm, 1000.0 * rpm, 1600.0 * rpm}, {6.0, 1.0, -2.0}};
    const SpeedRange room = roomOf(schedule, 1);
    EXPECT_NEAR(room.min / rpm, 601.0, 1e-9);
    EXPECT_NEAR(room.max / rpm, 1599.0, 1e-9);
    EXPECT_NEAR(roomOf(schedule, 0).min / rpm, 5.0, 1e-9);
    EXPECT_NEAR(roomOf(schedule, 2).max / rpm, 30000.0, 1e-6);
    const auto more = withPoint(schedule, 1300.0 * rpm);
    ASSERT_TRUE(more);
    EXPECT_EQ(more->speed.size(), 4U);
    EXPECT_EQ(more->value[2], valueAt(schedule, 1300.0 * rpm));
    EXPECT_FALSE(withPoint(schedule, 1000.4 * rpm));
    EXPECT_FALSE(withPoint(schedule, 0.0));
    EXPECT_EQ(*withoutPoint(*more, 2), schedule);
    EXPECT_FALSE(withoutPoint({setting, {100.0}, {1.0}}, 0));
    const Schedule level = levelSchedule(setting, 3.0, 60.0, 200.0);
    EXPECT_EQ(valueAt(level, 130.0), 3.0);
}

} // namespace
} // namespace lobewright::design
