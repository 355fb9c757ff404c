#include "core/solution/pipeline/closer_look.h"
#include "core/units.h"
#include "tests/solution/solved_sample.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace lobewright::solution {
namespace {

using test::figure;
using test::fires;
using test::sample;
using test::solved;

constexpr const char* generator = "turbocharged-works-generator";

/// A sample with a geared wheel in place of its reservoir.
design::Design geared(double diameter) {
    design::Design design = sample("biogas-pump-set");
    gas::Supply& supply = design.gas.supply;
    supply.kind = gas::SupplyKind::compressor;
    supply.compressor.gearRatio = 30.0;
    supply.compressor.wheel.diameter = diameter;
    return design;
}

TEST(Turbocharged, ConvergesFromFivePercentToHalfAsFastAgain) {
    design::Design design = sample(generator);
    const double rated = design.running.speed;
    for (const double share : {0.05, 0.1, 0.25, 0.5, 0.75, 1.0, 1.25, 1.5}) {
        design.running.speed = share * rated;
        const Solution solution = solved(design);
        ASSERT_TRUE(solution.gas) << share;
        EXPECT_GT(figure(solution, "delivery_ratio"), 0.3) << share;
        EXPECT_EQ(fires(solution, "turbocharger-idles"), figure(solution, "wheel_sustained") == 0.0)
            << share;
    }
}

// The exhaust pays for the wheel, the shaft for the blower behind it; brake values deduct the
// latter only.
TEST(Turbocharged, SaysWhoPays) {
    const Solution solution = solved(sample(generator));
    EXPECT_EQ(figure(solution, "wheel_sustained"), 1.0);
    EXPECT_GT(figure(solution, "compressor_pressure_ratio"), 1.1);
    EXPECT_GT(figure(solution, "exhaust_plenum_pressure_bar"), 1.05);
    const double kept = sample(generator).gas.supply.compressor.turbine.mechanicalEfficiency;
    EXPECT_NEAR(kept * figure(solution, "turbine_power_kW") /
                    figure(solution, "compressor_power_kW"),
                1.0, 1e-6);
    const auto path = supplyPath(solution);
    ASSERT_TRUE(path && path->wheel && path->wheel->behind && path->turbine);
    EXPECT_GT(path->wheel->behind->pressure, path->ambient.pressure);
    EXPECT_GT(path->compressed.pressure, path->wheel->behind->pressure);
    EXPECT_LT(path->turbine->behind.temperature, path->turbine->before.temperature);
    EXPECT_EQ(path->power / units::kilowatt, figure(solution, "supply_power_kW"));
    const double perPower =
        figure(solution, "fmep_supply_bar") / figure(solution, "supply_power_kW");
    EXPECT_NEAR(figure(solution, "bmep_bar") / figure(solution, "brake_power_kW"), perPower,
                1e-9 * perPower);
    EXPECT_LT(figure(solution, "audit_residual"), 1e-6);
}

TEST(GearedWheel, IsPaidByTheShaft) {
    const Solution solution = solved(geared(0.075));
    EXPECT_GT(figure(solution, "compressor_power_kW"), 0.0);
    EXPECT_EQ(figure(solution, "supply_power_kW"), figure(solution, "compressor_power_kW"));
    EXPECT_EQ(figure(solution, "supply_power_counted"), 1.0);
    EXPECT_EQ(solution.figure("turbine_power_kW"), nullptr);
    EXPECT_EQ(solution.channel("exhaust_plenum_pressure_bar"), nullptr);
    const auto* flow = solution.channel("compressor_flow_g_per_s");
    ASSERT_TRUE(flow);
    // mean over the turn is what the ports pass in an hour
    double turn = 0.0; // trapezoids between samples, which events make uneven
    const Eigen::Index n = flow->values.size();
    for (Eigen::Index i = 0; i < n; ++i) {
        const Eigen::Index next = (i + 1) % n;
        const double step =
            solution.theta[next] - solution.theta[i] + (next == 0 ? units::turn : 0.0);
        turn += 0.5 * (flow->values[i] + flow->values[next]) * step;
    }
    EXPECT_NEAR(turn / units::turn * 3.6 / figure(solution, "air_flow_kg_per_h"), 1.0, 2e-3);
}

// Too large a wheel surges, too small a one chokes; both are said, with the speed, and solved.
TEST(GearedWheel, SaysSurgeAndChoke) {
    // behind a small wheel a blower draws more than the wheel lets through
    design::Design drawn = geared(0.034);
    drawn.gas.supply.compressor.stages = gas::Stages::wheelThenBlower;
    drawn.gas.supply.displacement = 0.9e-3;
    const Solution large = solved(geared(0.13)), small = solved(drawn);
    ASSERT_TRUE(large.gas && small.gas);
    EXPECT_TRUE(fires(large, "compressor-surge"));
    EXPECT_FALSE(fires(large, "compressor-choke"));
    EXPECT_TRUE(fires(small, "compressor-choke"));
    EXPECT_FALSE(fires(small, "compressor-surge"));
}

// What the new inputs say is nothing to a design of another supply: not a digit changes.
TEST(OtherSupplies, KeepEveryDigit) {
    for (const char* name :
         {"biogas-pump-set", "sketched-lobes-blown", "harbour-crane-auxiliary"}) {
        const Solution before = solved(sample(name));
        design::Design design = sample(name);
        gas::Compressor& compressor = design.gas.supply.compressor;
        compressor.drive = gas::WheelDrive::turbine;
        compressor.stages = gas::Stages::wheelThenBlower;
        compressor.gearRatio = 3.0;
        compressor.wheel.diameter = 0.2;
        compressor.turbine.nozzleArea = 1e-5;
        compressor.interCoolerTemperature = 280.0;
        if (design.gas.supply.kind != gas::SupplyKind::underPiston) {
            design.gas.supply.pump.transferVolume = 1e-4;
            design.gas.supply.pump.skirtRow = ports::Row{0.1, 1e-3, 1e-3, 1, 0.0, 0.7};
        }
        const Solution after = solved(design);
        ASSERT_EQ(before.figures.size(), after.figures.size());
        for (std::size_t i = 0; i < before.figures.size(); ++i) {
            EXPECT_EQ(before.figures[i].name, after.figures[i].name);
            EXPECT_EQ(before.figures[i].value, after.figures[i].value) << before.figures[i].name;
        }
    }
}

// A poor turbine behind too large a nozzle, an engine that is only turned: the wheel is said to
// idle.
TEST(Turbocharged, SaysThatItIdles) {
    design::Design design = sample(generator);
    design.running.speed *= 0.05;
    design.running.motored = true;
    design.gas.supply.compressor.turbine.nozzleArea = 4e-3;
    design.gas.supply.compressor.turbine.bestEfficiency = 0.05;
    const Solution idle = solved(design);
    ASSERT_TRUE(idle.gas);
    EXPECT_EQ(figure(idle, "wheel_sustained"), 0.0);
    const auto check = std::ranges::find(idle.checks, "turbocharger-idles", &Check::id);
    ASSERT_NE(check, idle.checks.end());
    EXPECT_EQ(check->severity, Severity::warning);
    EXPECT_EQ(check->path, "/gas/supply/turbine/nozzle_mm2");
    EXPECT_FALSE(fires(solved(sample(generator)), "turbocharger-idles"));
}

TEST(Turbocharged, AnIntercoolerGivesMoreAir) {
    design::Design design = sample(generator);
    const Solution hot = solved(design);
    design.gas.supply.compressor.interCoolerTemperature = 300.0;
    const Solution cold = solved(design);
    EXPECT_GT(figure(cold, "trapped_mass_mg"), figure(hot, "trapped_mass_mg"));
    const auto path = supplyPath(cold);
    ASSERT_TRUE(path && path->wheel && path->wheel->behind && path->wheel->cooled);
    EXPECT_EQ(path->wheel->cooled->temperature, 300.0);
    EXPECT_GT(path->wheel->behind->temperature, 300.0);
    EXPECT_LT(figure(cold, "audit_residual"), 1e-6);
    EXPECT_FALSE(supplyPath(hot)->wheel->cooled);
}

TEST(OtherSupplies, HaveNoWheel) {
    for (const char* name :
         {"biogas-pump-set", "sketched-lobes-blown", "harbour-crane-auxiliary"}) {
        const Solution solution = solved(sample(name));
        EXPECT_EQ(solution.figure("compressor_power_kW"), nullptr) << name;
        EXPECT_EQ(solution.channel("compressor_flow_g_per_s"), nullptr) << name;
        EXPECT_FALSE(supplyPath(solution)->wheel) << name;
    }
}

} // namespace
} // namespace lobewright::solution
