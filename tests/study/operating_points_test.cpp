#include "core/exchange/table_csv.h"
#include "core/study/operating_points.h"
#include "core/study/phase_map.h"
#include "core/study/speed_sweep.h"
#include "core/units.h"
#include "tests/solution/solved_sample.h"

#include <algorithm>
#include <cmath>
#include <sstream>

namespace lobewright {
namespace {

using study::Shard;
using test::figure;
using test::sample;
using test::solved;

study::Table sweep(const design::Design& design, double from, double to, int points,
                   Shard shard = {}) {
    SilentMonitor monitor;
    auto table = study::speedSweep(design, from, to, points, shard, monitor);
    if (!table) {
        throw std::runtime_error(table.problems().front().message.english());
    }
    return *table;
}

TEST(EvenlySpaced, HoldsBothEndsExactly) {
    const auto values = study::evenlySpaced(600.0, 1800.0, 5);
    EXPECT_EQ(values, (std::vector<double>{600.0, 900.0, 1200.0, 1500.0, 1800.0}));
    EXPECT_EQ(study::evenlySpaced(3.0, 3.0, 7).size(), 1u);
}

TEST(SpeedSweep, GivesTheFiguresOfASingleSolve) {
    auto design = sample("biogas-pump-set");
    const auto table = sweep(design, 700.0, 1300.0, 3);
    ASSERT_EQ(table.points.size(), 3u);
    design.running.speed = 1000.0 * units::revPerMinute;
    const auto single = solved(design);
    for (const auto& column : table.columns) {
        const auto& swept = table.points[1].values[*table.column(column.name)];
        const auto* alone = single.figure(column.name);
        ASSERT_TRUE(alone) << column.name;
        // A study makes its figures of one period of the track: the last digit may differ.
        ASSERT_EQ(swept.has_value(), alone->value.has_value()) << column.name;
        if (swept) {
            EXPECT_NEAR(*swept, *alone->value, 1e-12 * std::abs(*alone->value)) << column.name;
        }
    }
}

/// Largest difference of figures, relative to the largest value in their column.
double farthest(const study::Table& a, const study::Table& b) {
    double largest = 0.0;
    for (const auto& column : a.columns) {
        const Samples x = a.values(column.name);
        const Samples y = b.values(column.name);
        for (Eigen::Index i = 0; i < x.size(); ++i) {
            EXPECT_EQ(std::isnan(x[i]), std::isnan(y[i])) << column.name << " " << i;
            if (!std::isnan(x[i]) && x[i] != y[i]) {
                largest = std::max(largest, std::abs(x[i] - y[i]) / x.abs().maxCoeff());
            }
        }
    }
    return largest;
}

class Sweeps : public testing::TestWithParam<const char*> {};

// Some fifty times what a search for the steady state leaves open: lowest forces are small
// differences of large ones.
TEST_P(Sweeps, FindTheCyclesOfSingleSolves) {
    const auto design = sample(GetParam());
    const auto together = sweep(design, 700.0, 1500.0, 9);
    study::Table alone = together;
    for (std::size_t i = 0; i < alone.points.size(); ++i) {
        alone.points[i] = sweep(design, 700.0, 1500.0, 9, {static_cast<int>(i), 9}).points.front();
    }
    EXPECT_LT(farthest(together, alone), 5e-5);
    EXPECT_EQ(farthest(together, sweep(design, 700.0, 1500.0, 9)), 0.0); // whatever the threads did
}

INSTANTIATE_TEST_SUITE_P(Samples, Sweeps,
                         testing::Values("biogas-pump-set", "classroom-model",
                                         "hydrogen-buoy-generator", "unequal-lobes"),
                         [](const auto& sampleInfo) {
                             std::string name = sampleInfo.param;
                             std::replace(name.begin(), name.end(), '-', '_');
                             return name;
                         });

// Close looks from places apart end within the 0.05° that the best start is known to, on a work
// that is flat there.
TEST(SweepOfBestBurnStarts, FindsThemBesideThoseOfItsNeighbours) {
    auto design = sample("biogas-pump-set");
    design.gas.burn.bestTorque = true;
    const auto together = sweep(design, 900.0, 1300.0, 5);
    const auto alone = sweep(design, 900.0, 1300.0, 5, {1, 5});
    const auto at = [&](const study::Table& table, std::size_t point, const char* name) {
        return *table.points[point].values[*table.column(name)];
    };
    EXPECT_NEAR(at(together, 1, "imep_bar"), at(alone, 0, "imep_bar"),
                1e-5 * at(alone, 0, "imep_bar"));
    EXPECT_NEAR(at(together, 1, "peak_pressure_bar"), at(alone, 0, "peak_pressure_bar"),
                2e-4 * at(alone, 0, "peak_pressure_bar"));
}

TEST(SpeedSweep, PartsConcatenateToTheWhole) {
    const auto design = sample("biogas-pump-set");
    const auto whole = sweep(design, 700.0, 1300.0, 7);
    study::Table joined = whole;
    std::size_t lines = 0;
    for (int part = 0; part < 3; ++part) {
        const auto table = sweep(design, 700.0, 1300.0, 7, {part, 3});
        for (const auto& point : table.points) {
            EXPECT_EQ(static_cast<int>(point.index) % 3, part);
            joined.points[point.index] = point;
        }
        std::istringstream text(exchange::tableCsv(table, part == 0));
        for (std::string line; std::getline(text, line);) {
            ++lines;
        }
    }
    EXPECT_EQ(lines, 1 + whole.points.size());
    EXPECT_LT(farthest(joined, whole), 1e-5);
}

/// Two figures in units of the last digit that the table prints.
double digitsApart(double a, double b) {
    if (a == b) {
        return 0.0;
    }
    const double size = std::max(std::abs(a), std::abs(b));
    const double last = std::pow(10.0, std::floor(std::log10(size)) - exchange::tableDigits + 1);
    return std::abs(a - b) / last;
}

// Other neighbours, the same figures: within a unit of the last digit printed, two for the lowest
// contact force, which is what is left of forces a thousand times as large.
class PartsOfSweeps : public testing::TestWithParam<const char*> {};

TEST_P(PartsOfSweeps, SayWhatTheWholeSays) {
    const auto design = sample(GetParam());
    const double speed = design.running.speed / units::revPerMinute;
    const auto whole = sweep(design, 0.4 * speed, 1.3 * speed, 12);
    for (int part = 0; part < 4; ++part) {
        for (const auto& point : sweep(design, 0.4 * speed, 1.3 * speed, 12, {part, 4}).points) {
            const auto& same = whole.points[point.index];
            ASSERT_EQ(point.values.size(), same.values.size());
            for (std::size_t i = 0; i < point.values.size(); ++i) {
                ASSERT_EQ(point.values[i].has_value(), same.values[i].has_value());
                if (point.values[i]) {
                    const bool isLeftOver =
                        whole.columns[i].name.starts_with("lowest_contact_force");
                    EXPECT_LT(digitsApart(*point.values[i], *same.values[i]),
                              isLeftOver ? 2.0 : 1.0)
                        << whole.columns[i].name << " at " << point.parameter << ": "
                        << *point.values[i] << ", " << *same.values[i];
                }
            }
        }
    }
}

INSTANTIATE_TEST_SUITE_P(Samples, PartsOfSweeps,
                         testing::Values("biogas-pump-set", "classroom-model",
                                         "fire-pump-geared-wheel", "harbour-crane-auxiliary",
                                         "hydrogen-buoy-generator", "sketched-lobes-blown",
                                         "turbocharged-works-generator", "unequal-lobes"));

TEST(SpeedSweep, ReportsEveryPointAsItComes) {
    SilentMonitor monitor;
    std::set<std::size_t> seen;
    const auto table =
        study::speedSweep(sample("biogas-pump-set"), 700.0, 1300.0, 6, {}, monitor,
                          [&](const study::Point& point) { seen.insert(point.index); });
    ASSERT_TRUE(table);
    EXPECT_EQ(seen.size(), 6u);
}

TEST(SpeedSweep, StopsWhenTheMonitorSaysSo) {
    class StopAtThird final : public Monitor {
        int calls_ = 0;
        bool step(double, const Message&) override { return ++calls_ < 3; }
    } monitor;
    const auto table = study::speedSweep(sample("biogas-pump-set"), 700.0, 1300.0, 40, {}, monitor);
    ASSERT_FALSE(table);
    EXPECT_EQ(table.problems().front().message.english(), "cancelled");
}

TEST(SpeedSweep, RefusesImpossibleRanges) {
    SilentMonitor monitor;
    const auto design = sample("biogas-pump-set");
    EXPECT_FALSE(study::speedSweep(design, -100.0, 1000.0, 5, {}, monitor));
    EXPECT_FALSE(study::speedSweep(design, 100.0, std::nan(""), 5, {}, monitor));
    EXPECT_FALSE(study::speedSweep(design, 100.0, 1000.0, 1, {}, monitor));
}

// Ring friction pulls below, inertia above: contact is kept in between only.
TEST(SpeedSweep, TellsAtWhichSpeedsTheRollersKeepContact) {
    const auto table = sweep(sample("biogas-pump-set"), 200.0, 2000.0, 10);
    EXPECT_EQ(table.columns.back().name, "keeps_contact");
    const Samples kept = table.values("keeps_contact");
    EXPECT_EQ(kept[0], 0.0);
    EXPECT_EQ(kept[4], 1.0); // 1,000 rpm
    EXPECT_EQ(kept[9], 0.0);
}

TEST(PhaseMap, ASettingThatCannotStandIsAPointWithAReason) {
    auto design = sample("biogas-pump-set");
    design.mechanism.adjuster.helixLead = -0.2; // drives the crowns together
    SilentMonitor monitor;
    const auto map =
        study::phaseMap(design, study::PhaseParameter::adjuster, 0.0, 40.0, 5, {}, monitor);
    ASSERT_TRUE(map);
    EXPECT_TRUE(map->points.front().failure.empty());
    EXPECT_FALSE(map->points.back().failure.empty());
    const auto text = exchange::tableCsv(*map);
    EXPECT_NE(text.find(map->points.back().failure.english().substr(0, 20)), std::string::npos);
}

// Trends that practice knows; common practice, see Heywood ch. 6 and 13 for the gas side.

TEST(Trends, ExhaustLeadNeverRaisesTheCompressionRatio) {
    SilentMonitor monitor;
    const auto map = study::phaseMap(sample("biogas-pump-set"), study::PhaseParameter::exhaustLead,
                                     0.0, 20.0, 9, {}, monitor);
    ASSERT_TRUE(map);
    const Samples ratio = map->values("compression_ratio");
    for (Eigen::Index i = 1; i < ratio.size(); ++i) {
        EXPECT_LE(ratio[i], ratio[i - 1] + 1e-12) << i;
    }
}

TEST(Trends, TorqueFallsAtHighSpeedAsTimeAreaRunsOut) {
    const auto table = sweep(sample("biogas-pump-set"), 700.0, 4200.0, 6);
    const Samples delivery = table.values("delivery_ratio");
    const Samples torque = table.values("brake_torque_Nm");
    EXPECT_LT(delivery[5], delivery[1]);
    EXPECT_LT(torque[5], 0.9 * torque.head(5).maxCoeff());
}

TEST(Trends, ABlowerThatIsTooSmallStarvesTheTopEnd) {
    auto design = sample("sketched-lobes-blown");
    ASSERT_EQ(design.gas.supply.kind, gas::SupplyKind::blower);
    const double speed = design.running.speed / units::revPerMinute;
    const auto full = sweep(design, speed, 2.0 * speed, 2);
    design.gas.supply.displacement *= 0.5;
    const auto small = sweep(design, speed, 2.0 * speed, 2);
    for (Eigen::Index i = 0; i < 2; ++i) {
        EXPECT_LT(small.values("delivery_ratio")[i], 0.75 * full.values("delivery_ratio")[i]);
        EXPECT_LT(small.values("brake_torque_Nm")[i], full.values("brake_torque_Nm")[i]);
    }
}

TEST(Trends, MoreLobesGiveMoreTorqueAtLowerShaftSpeedForEqualPistonSpeed) {
    // Torque per litre at equal bmep is c·bmep/2π: exact, from the work of a turn.
    auto design = sample("biogas-pump-set");
    const auto two = solved(design);
    for (auto& segment : std::get<motion::SegmentShape>(design.tracks.inlet.shape).segments) {
        segment.span *= 0.5;
    }
    design.tracks.inlet.lobes *= 2;
    design.mechanism.exhaustLead *= 0.5;
    design.running.speed *= 0.5;
    const auto four = solved(design);
    EXPECT_NEAR(figure(four, "mean_piston_speed_inlet_m_per_s"),
                figure(two, "mean_piston_speed_inlet_m_per_s"), 1e-12);
    EXPECT_NEAR(figure(four, "imep_bar"), figure(two, "imep_bar"), 1e-6 * figure(two, "imep_bar"))
        << "the gas sees the same cycle";
    const double ratio = figure(four, "indicated_power_kW") / figure(two, "indicated_power_kW");
    EXPECT_NEAR(ratio, 1.0, 1e-6) << "same power at half the shaft speed: twice the torque";
}

TEST(Trends, RingsOfManySmallCylindersCostMoreThanOfFewLargeOnes) {
    auto design = sample("biogas-pump-set");
    const auto few = solved(design);
    // Twice the cylinders, each of half the area: equal displacement and strokes.
    design.mechanism.cylinders *= 2;
    design.mechanism.bore /= std::sqrt(2.0);
    for (auto* rows : {&design.ports.inlet, &design.ports.exhaust}) {
        for (auto& row : *rows) {
            row.width *= 0.5;
            row.cornerRadius = std::min(row.cornerRadius, 0.45 * row.width);
        }
    }
    const auto many = solved(design);
    EXPECT_NEAR(figure(many, "displacement_cm3"), figure(few, "displacement_cm3"), 1e-6);
    EXPECT_GT(figure(many, "fmep_ring_bar"), 1.2 * figure(few, "fmep_ring_bar"));
}

} // namespace
} // namespace lobewright
