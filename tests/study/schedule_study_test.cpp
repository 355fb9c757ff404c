#include "core/design/fields.h"
#include "core/design/gas_settings.h"
#include "core/design/schedules.h"
#include "core/study/load_map.h"
#include "core/study/schedule_search.h"
#include "core/study/speed_sweep.h"
#include "core/units.h"
#include "tests/solution/solved_sample.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace lobewright::study {
namespace {

using test::figure;
using test::sample;
using test::solved;

constexpr double rpm = units::revPerMinute;

/// Largest difference of the figures of both [relative]; those of the search for the cycle apart.
double farthest(const solution::Solution& a, const solution::Solution& b) {
    EXPECT_EQ(a.figures.size(), b.figures.size());
    double largest = 0.0;
    for (std::size_t i = 0; i < a.figures.size(); ++i) {
        const auto &x = a.figures[i], &y = b.figures[i];
        EXPECT_EQ(x.value.has_value(), y.value.has_value()) << x.name;
        if (x.value && y.value && *x.value != *y.value) {
            largest = std::max(largest, std::abs(*x.value - *y.value) /
                                            std::max(std::abs(*x.value), std::abs(*y.value)));
        }
    }
    return largest;
}

struct Followed {
    const char *name, *input;
    double slow, fast; ///< values at 700 and 1500 rpm
};
void PrintTo(const Followed& followed, std::ostream* out) {
    *out << followed.name;
}

class FollowedInputs : public testing::TestWithParam<Followed> {};

TEST_P(FollowedInputs, GiveTheFiguresOfASingleSolve) {
    const auto& [name, input, slow, fast] = GetParam();
    auto design = sample("biogas-pump-set");
    design.schedules = {{input,
                         {700.0 * rpm, 1000.0 * rpm, 1500.0 * rpm},
                         {slow, slow + 0.3 * (fast - slow), fast}}};
    for (const double speed : {600.0, 830.0, 1320.0}) {
        design.running.speed = speed * rpm;
        auto fixed = design;
        fixed.schedules.clear();
        fixed = *design::withField(fixed, input, design::valueAt(design.schedules[0], speed * rpm));
        EXPECT_LT(farthest(solved(design), solved(fixed)), 1e-9) << speed;
    }
}

INSTANTIATE_TEST_SUITE_P(
    Each, FollowedInputs,
    testing::Values(Followed{"adjuster", "/mechanism/adjuster/setting_deg", 4.0, -3.0},
                    Followed{"axial", "/mechanism/adjuster/axial_mm", 0.0, 1.0},
                    Followed{"lambda", "/gas/lambda", 1.05, 1.6},
                    Followed{"combustion", "/gas/burn/start_deg", -14.0, -8.0},
                    Followed{"supply", "/gas/supply/pressure_bar", 1.2, 1.7},
                    Followed{"back", "/running/under_piston_pressure_bar", 1.0, 1.4},
                    Followed{"load", "/running/load", 1.0, 0.6}),
    [](const auto& one) { return std::string(one.param.name); });

TEST(Schedules, AreFollowedByASweep) {
    auto design = sample("biogas-pump-set");
    design.schedules = {
        {"/mechanism/adjuster/setting_deg", {700.0 * rpm, 1500.0 * rpm}, {4.0, -3.0}}};
    SilentMonitor monitor;
    const auto table = speedSweep(design, 700.0, 1500.0, 5, {}, monitor);
    ASSERT_TRUE(table);
    for (const Point& point : table->points) {
        auto fixed = design;
        fixed.schedules.clear();
        fixed.running.speed = point.parameter * rpm;
        fixed.mechanism.adjuster.setting =
            design::valueAt(design.schedules[0], fixed.running.speed) * units::degree;
        const auto single = solved(fixed);
        for (const char* name : {"brake_torque_Nm", "peak_pressure_bar", "delivery_ratio"}) {
            const double alone = figure(single, name);
            EXPECT_NEAR(*point.values[*table->column(name)], alone, 1e-5 * std::abs(alone))
                << name << " at " << point.parameter;
        }
    }
}

TEST(Schedules, OfASpeedAtWhichCrownsMeetAreAFailureThere) {
    auto design = sample("biogas-pump-set");
    design.schedules = {
        {"/mechanism/adjuster/axial_mm", {1000.0 * rpm, 1500.0 * rpm}, {0.0, -400.0}}};
    design.running.speed = 900.0 * rpm;
    SilentMonitor monitor;
    const auto table = speedSweep(design, 900.0, 1500.0, 3, {}, monitor);
    ASSERT_TRUE(table);
    EXPECT_TRUE(table->points.front().failure.empty());
    EXPECT_FALSE(table->points.back().failure.empty());
}

TEST(Load, OfOneChangesNothing) {
    for (const char* name :
         {"biogas-pump-set", "sketched-lobes-blown", "harbour-crane-auxiliary"}) {
        auto design = sample(name);
        const auto without = solved(design);
        for (const auto by : {design::LoadBy::supply, design::LoadBy::mixture}) {
            design.running.load = 1.0;
            design.running.loadBy = by;
            EXPECT_EQ(farthest(solved(design), without), 0.0) << name;
        }
    }
}

TEST(Load, BySupplyScalesThePressureFromItsFloor) {
    auto design = sample("biogas-pump-set");
    design.gas.supply.pressure = 1.6e5;
    design.gas.exhaustPressure = 1.05e5;
    design.running.load = 0.4;
    EXPECT_NEAR(figure(solved(design), "supply_pressure_bar"), 1.05 + 0.4 * 0.55, 1e-12);
    design.running.loadFloor = 1.2e5;
    EXPECT_NEAR(figure(solved(design), "supply_pressure_bar"), 1.2 + 0.4 * 0.4, 1e-12);
}

TEST(Load, BySupplyThrottlesWhatABlowerTakesIn) {
    auto design = sample("sketched-lobes-blown");
    const auto full = solved(design);
    design.running.load = 0.5;
    design.running.loadFloor = 0.4 * design.gas.supply.ambientPressure;
    const auto part = solved(design);
    // A blower of constant volume takes in mass in proportion to the pressure before it.
    EXPECT_NEAR(figure(part, "delivery_ratio") / figure(full, "delivery_ratio"), 0.7, 1e-4);
}

// A row under the skirt lets gas back to a low intake: without a floor of its own the load does not
// draw the exhaust through the engine.
TEST(Load, BySupplyStillFillsAPumpThatDrawsUnderItsSkirt) {
    auto design = sample("terrace-sprayer");
    design.running.load = 0.5;
    EXPECT_NEAR(design::gasSettings(design).supply.throttle, 0.9, 1e-12);
    EXPECT_GT(figure(solved(design), "delivery_ratio"), 0.2);
    design = sample("harbour-crane-auxiliary"); // a reed lets nothing back
    design.running.load = 0.5;
    EXPECT_NEAR(design::gasSettings(design).supply.throttle, 0.625, 1e-12);
}

TEST(Load, ByMixtureTakesFuelFromTheSameAir) {
    auto design = sample("biogas-pump-set");
    const auto full = solved(design);
    design.running.loadBy = design::LoadBy::mixture;
    design.running.load = 0.5;
    auto lean = design;
    lean.running.load = 1.0;
    lean.gas.lambda *= 2.0;
    EXPECT_EQ(farthest(solved(design), solved(lean)), 0.0);
    EXPECT_LT(figure(solved(design), "brake_torque_Nm"), figure(full, "brake_torque_Nm"));
}

TEST(Load, OfNoughtByMixtureIsRefused) {
    auto design = sample("biogas-pump-set");
    design.running.loadBy = design::LoadBy::mixture;
    design.running.load = 0.0;
    const auto problems = design::validateEngine(design);
    ASSERT_FALSE(problems.empty());
    EXPECT_EQ(problems.front().path, "/running/load");
}

TEST(Load, WithAFloorAboveTheFullPressureIsRefused) {
    auto design = sample("biogas-pump-set");
    design.running.loadFloor = design.gas.supply.pressure * 1.1;
    const auto problems = design::validateEngine(design);
    ASSERT_FALSE(problems.empty());
    EXPECT_EQ(problems.front().path, "/running/load_floor_bar");
}

TEST(LoadMap, HasTheFiguresOfSingleSolvesInItsCorners) {
    auto design = sample("biogas-pump-set");
    // The load of the map counts, not that of the design.
    design.running.load = 0.7;
    design.schedules = {
        {"/running/load", {800.0 * rpm}, {0.3}},
        {"/mechanism/adjuster/setting_deg", {700.0 * rpm, 1500.0 * rpm}, {4.0, -3.0}}};
    SilentMonitor monitor;
    std::vector<Point> seen;
    const auto map = loadMap(design, {700.0, 1500.0, 5}, {1.0, 0.4, 4}, monitor,
                             [&](const Point& point) { seen.push_back(point); });
    ASSERT_TRUE(map);
    ASSERT_EQ(map->points.size(), 20U);
    EXPECT_EQ(seen.size(), 20U);
    for (const std::size_t corner : {0, 4, 15, 19}) {
        const Point& point = map->points[corner];
        EXPECT_EQ(point.index, corner);
        auto single = design;
        single.schedules.erase(single.schedules.begin());
        single.running.speed = point.parameter * rpm;
        single.running.load = *point.values[*map->column("load")];
        EXPECT_EQ(single.running.load, corner < 5 ? 1.0 : 0.4);
        const auto alone = solved(single);
        for (std::size_t i = 1; i < map->columns.size(); ++i) {
            const auto* wanted = alone.figure(map->columns[i].name);
            ASSERT_TRUE(wanted) << map->columns[i].name;
            ASSERT_EQ(point.values[i].has_value(), wanted->value.has_value());
            if (wanted->value) {
                EXPECT_NEAR(*point.values[i], *wanted->value, 1e-5 * std::abs(*wanted->value))
                    << map->columns[i].name << " in corner " << corner;
            }
        }
    }
}

TEST(LoadMap, RefusesWhatIsNoMap) {
    const auto design = sample("biogas-pump-set");
    SilentMonitor monitor;
    EXPECT_FALSE(loadMap(design, {0.0, 1500.0, 5}, {0.2, 1.0, 3}, monitor));
    EXPECT_FALSE(loadMap(design, {500.0, 1500.0, 1}, {0.2, 1.0, 3}, monitor));
    EXPECT_FALSE(loadMap(design, {500.0, 1500.0, 5}, {0.2, 1.1, 3}, monitor));
}

ScheduleGoal adjusterGoal() {
    return {"/mechanism/adjuster/setting_deg", -12.0, 16.0, {800.0, 1300.0}, {}, {}};
}

ScheduleAnswer found(const design::Design& design, const ScheduleGoal& goal) {
    SilentMonitor monitor;
    auto answer = findSchedule(design, goal, monitor);
    if (!answer) {
        throw std::runtime_error(answer.problems().front().message.english());
    }
    return *answer;
}

struct Values {
    double torque, peak;
};
Values at(design::Design design, double speed, double setting) {
    design.running.speed = speed * rpm;
    design.mechanism.adjuster.setting = setting * units::degree;
    SilentMonitor monitor;
    const auto one = solution::solve(design, monitor, nullptr, solution::Detail::figures);
    const auto* torque = one ? one->figure("brake_torque_Nm") : nullptr;
    return torque && torque->value ? Values{*torque->value, figure(*one, "peak_pressure_bar")}
                                   : Values{-1e9, 1e9};
}

TEST(ScheduleSearch, FindsWhatAFineSweepFinds) {
    const auto design = sample("biogas-pump-set");
    const auto answer = found(design, adjusterGoal());
    ASSERT_EQ(answer.rows.size(), 2U);
    for (const ScheduleRow& row : answer.rows) {
        double most = -1e9;
        for (int i = 0; i <= 112; ++i) {
            most = std::max(most, at(design, row.speed, -12.0 + 0.25 * i).torque);
        }
        ASSERT_TRUE(row.best && row.fixed);
        EXPECT_GT(row.best->torque, most - 1e-4 * std::abs(most)) << row.speed;
        EXPECT_NEAR(row.fixed->torque,
                    at(design, row.speed, design.mechanism.adjuster.setting / units::degree).torque,
                    1e-9 * std::abs(row.fixed->torque));
    }
}

TEST(ScheduleSearch, StaysBelowALimitThatDecides) {
    const auto design = sample("biogas-pump-set");
    auto goal = adjusterGoal();
    const auto free = found(design, goal);
    goal.peakPressure =
        0.9 * std::min(free.rows[0].best->peakPressure, free.rows[1].best->peakPressure);
    for (const ScheduleRow& row : found(design, goal).rows) {
        ASSERT_TRUE(row.best);
        EXPECT_TRUE(row.best->isWithin);
        EXPECT_LE(row.best->peakPressure, *goal.peakPressure);
        double most = -1e9;
        for (int i = 0; i <= 112; ++i) {
            const auto values = at(design, row.speed, -12.0 + 0.25 * i);
            if (values.peak <= *goal.peakPressure) {
                most = std::max(most, values.torque);
            }
        }
        EXPECT_GT(row.best->torque, most - 0.01 * std::abs(most)) << row.speed;
    }
}

TEST(ScheduleSearch, TakesTheLeastBadValueWhereNoneKeepsTheLimit) {
    auto goal = adjusterGoal();
    goal.peakPressure = 1.5;
    const auto answer = found(sample("biogas-pump-set"), goal);
    for (const ScheduleRow& row : answer.rows) {
        ASSERT_TRUE(row.best);
        EXPECT_FALSE(row.best->isWithin);
    }
    EXPECT_NE(scheduleInWords(answer).english().find("no value of the range keeps the limits"),
              std::string::npos);
}

TEST(ScheduleSearch, RefusesWhatCannotFollowTheSpeed) {
    SilentMonitor monitor;
    const auto design = sample("biogas-pump-set");
    auto goal = adjusterGoal();
    goal.input = "/mechanism/bore_mm";
    EXPECT_FALSE(findSchedule(design, goal, monitor));
    goal = adjusterGoal();
    goal.from = 20.0;
    EXPECT_FALSE(findSchedule(design, goal, monitor));
    goal = adjusterGoal();
    goal.speeds = {900.0, 800.0};
    EXPECT_FALSE(findSchedule(design, goal, monitor));
    goal = adjusterGoal();
    goal.peakPressure = 0.0;
    EXPECT_FALSE(findSchedule(design, goal, monitor));
}

ScheduleAnswer answerWith(const std::vector<double>& gains) {
    ScheduleAnswer answer;
    double speed = 900.0;
    for (const double gain : gains) {
        ScheduleRow row;
        row.speed = speed;
        row.fixed = ScheduledValue{0.0, 100.0, {}, 50.0};
        row.best = ScheduledValue{1.0, 100.0 * (1.0 + gain), {}, 50.0};
        answer.rows.push_back(row);
        speed += 300.0;
    }
    return answer;
}

TEST(ScheduleWords, SayWhatIsBoughtAndWhatItCosts) {
    EXPECT_EQ(scheduleInWords(answerWith({0.11, 0.05, 0.01, -0.01, -0.04})).english(),
              "The schedule buys up to 11 % torque below 1650 rpm and costs up to 4 % above.");
    EXPECT_EQ(scheduleInWords(answerWith({-0.02, 0.02})).english(),
              "The schedule costs up to 2 % torque below 1050 rpm and buys up to 2 % above.");
    EXPECT_EQ(scheduleInWords(answerWith({0.03, 0.02})).english(),
              "The schedule buys up to 3 % torque over the whole range.");
    EXPECT_EQ(scheduleInWords(answerWith({0.001, -0.001})).english(),
              "The schedule changes the torque by less than half a per cent.");
    EXPECT_EQ(scheduleInWords(answerWith({0.10, 0.0, 0.0, -0.05})).english(),
              "The schedule buys up to 10 % torque below 1200 rpm and costs up to 5 % above 1550 "
              "rpm.");
    auto limited = answerWith({0.03, 0.02});
    limited.rows[1].fixed->isWithin = false;
    EXPECT_EQ(scheduleInWords(limited).english(),
              "The schedule buys up to 3 % torque over the whole range. The fixed value exceeds a "
              "limit at 1 of 2 speeds.");
}

} // namespace
} // namespace lobewright::study
