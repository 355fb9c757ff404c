#include "core/study/load_map.h"
#include "core/study/speed_sweep.h"
#include "core/study/supply_columns.h"
#include "core/units.h"
#include "tests/solution/solved_sample.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace lobewright::study {
namespace {

using test::sample;
using test::solved;

/// Every value of a point is that of a single solve.
void expectSingle(const Table& table, const Point& point, const solution::Solution& single) {
    ASSERT_EQ(point.values.size(), table.columns.size());
    for (std::size_t i = 0; i < table.columns.size(); ++i) {
        const std::string& name = table.columns[i].name;
        const auto* wanted = single.figure(name);
        if (!wanted) {
            EXPECT_EQ(name, "load");
            continue;
        }
        ASSERT_EQ(point.values[i].has_value(), wanted->value.has_value()) << name;
        if (wanted->value) {
            EXPECT_NEAR(*point.values[i], *wanted->value,
                        1e-5 * std::max(std::abs(*wanted->value), 1e-3))
                << name;
        }
    }
}

TEST(SupplyColumns, AreNoneOfASimpleSupply) {
    for (const char* name : {"biogas-pump-set", "sketched-lobes-blown", "classroom-model"}) {
        EXPECT_TRUE(withSupplyColumns({}, sample(name)).empty()) << name;
        EXPECT_EQ(speedSweepFigures(sample(name)), speedSweepFigures()) << name;
    }
}

// The operating line of the compressor: what a single solve says at each speed.
TEST(SupplyColumns, TellTheOperatingLineOfATurbocharger) {
    design::Design design = sample("turbocharged-works-generator");
    const double rated = design.running.speed / units::revPerMinute;
    SilentMonitor monitor;
    const auto table = speedSweep(design, 0.5 * rated, 1.2 * rated, 4, {}, monitor);
    ASSERT_TRUE(table);
    for (const char* name :
         {"compressor_speed_rpm", "compressor_corrected_flow_kg_per_s", "compressor_pressure_ratio",
          "compressor_efficiency", "compressor_surge_margin", "compressor_power_kW",
          "turbine_power_kW", "exhaust_plenum_pressure_bar", "wheel_sustained"}) {
        ASSERT_TRUE(table->column(name)) << name;
    }
    for (const Point& point : table->points) {
        design.running.speed = point.parameter * units::revPerMinute;
        expectSingle(*table, point, solved(design));
    }
    const Samples flow = table->values("compressor_corrected_flow_kg_per_s");
    const Samples ratio = table->values("compressor_pressure_ratio");
    EXPECT_GT(flow[3], flow[0]);
    EXPECT_GT(ratio[3], ratio[0]);
}

TEST(SupplyColumns, StandBehindTheOthersInAMap) {
    design::Design design = sample("fire-pump-geared-wheel");
    design.schedules.clear();
    const double rated = design.running.speed / units::revPerMinute;
    SilentMonitor monitor;
    const auto map = loadMap(design, {0.8 * rated, rated, 2}, {1.0, 0.7, 2}, monitor);
    ASSERT_TRUE(map);
    EXPECT_EQ(map->columns.front().name, "load");
    const auto names = loadMapColumns(design);
    ASSERT_EQ(names.size(), map->columns.size());
    for (std::size_t i = 0; i < names.size(); ++i) {
        EXPECT_EQ(names[i], map->columns[i].name);
    }
    EXPECT_EQ(names.back(), "compressor_power_kW");
    for (const Point& point : map->points) {
        design.running.speed = point.parameter * units::revPerMinute;
        design.running.load = *point.values.front();
        expectSingle(*map, point, solved(design));
    }
}

TEST(SupplyColumns, TellOfPumpAndMixture) {
    const auto names = withSupplyColumns({}, sample("terrace-sprayer"));
    EXPECT_EQ(names, (std::vector<std::string>{"pump_work_J", "pump_pressure_low_bar",
                                               "pump_pressure_high_bar", "fuel_lost_share"}));
}

} // namespace
} // namespace lobewright::study
