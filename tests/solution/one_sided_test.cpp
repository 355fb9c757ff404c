#include "core/ports/skirt_row.h"
#include "core/solution/pipeline/closer_look.h"
#include "core/units.h"
#include "tests/solution/solved_sample.h"

#include <gtest/gtest.h>

#include <algorithm>
#include <cmath>

namespace lobewright::solution {
namespace {

using test::figure;
using test::sample;
using test::solved;

constexpr const char* crane = "harbour-crane-auxiliary";
constexpr const char* sprayer = "terrace-sprayer";

TEST(OneSidedEngine, HasFiguresOfItsOnePistonOnly) {
    const Solution solution = solved(sample(crane));
    EXPECT_EQ(solution.figure("stroke_exhaust_mm"), nullptr);
    EXPECT_EQ(solution.channel("lift_exhaust_mm"), nullptr);
    EXPECT_NE(solution.channel("port_area_exhaust_mm2"), nullptr);
    EXPECT_NEAR(figure(solution, "swept_volume_cm3"), units::pi / 4.0 * 7.0 * 7.0 * 6.0, 1e-9);
    EXPECT_NEAR(figure(solution, "compression_ratio"), 65.2 / 5.2, 1e-12);
    EXPECT_LT(figure(solution, "after_charge_deg"), 0.0);
    EXPECT_NEAR(figure(solution, "after_charge_deg"), -figure(solution, "blowdown_deg"), 1e-8);
    EXPECT_GT(figure(solution, "thrust_bearing_force_mean_N"), 0.0);
    for (const Figure& each : solution.figures) {
        EXPECT_TRUE(!each.value || std::isfinite(*each.value)) << each.name;
    }
}

// A side is named where there are two: of the ports, not of the one track with its piston.
TEST(OneSidedEngine, NamesNoSideOfItsOneTrack) {
    for (const char* name : {crane, sprayer}) {
        const Solution solution = solved(sample(name));
        for (const Figure& each : solution.figures) {
            const std::string label = each.label.english();
            const bool isOfPorts = each.name.find("port") != std::string::npos;
            EXPECT_EQ(label.find("inlet side") != std::string::npos,
                      isOfPorts && each.end == End::inlet)
                << each.name << ": " << label;
        }
        for (const Channel& each : solution.channels) {
            const std::string label = each.label.english();
            EXPECT_EQ(label.find("inlet side") != std::string::npos,
                      each.name.starts_with("port_area") && each.end == End::inlet)
                << each.name << ": " << label;
        }
        for (const Check& check : solution.checks) {
            for (const char* word : {"inlet track", "inlet piston", "inlet side"}) {
                EXPECT_EQ(check.message.english().find(word), std::string::npos)
                    << check.message.english();
            }
        }
    }
}

TEST(OneSidedEngine, OpposedPistonsAreNamedByTheirSides) {
    const Solution solution = solved(sample("biogas-pump-set"));
    EXPECT_EQ(solution.channel("lift_inlet_mm")->label.english(), "Lift, inlet side");
    EXPECT_EQ(solution.channel("lift_exhaust_mm")->label.english(), "Lift, exhaust side");
}

// ISO 281: L₁₀ = (C/P)^(10/3) million turns, P the power mean of the thrust over the turn.
TEST(OneSidedEngine, RatesItsThrustBearing) {
    auto design = sample(crane);
    EXPECT_FALSE(solved(design).figure("thrust_bearing_life_h")->value) << "no rating given";
    design.thrustBearing.dynamicRating = 60e3;
    const Solution solution = solved(design);
    const double load = figure(solution, "thrust_bearing_equivalent_load_N");
    EXPECT_GT(load, std::abs(figure(solution, "thrust_bearing_force_mean_N")));
    EXPECT_LT(load, figure(solution, "thrust_bearing_force_peak_N"));
    const double turns = 1e6 * std::pow(60e3 / load, 10.0 / 3.0);
    const double perHour = design.running.speed / units::turn * 3600.0;
    EXPECT_NEAR(figure(solution, "thrust_bearing_life_h"), turns / perHour, 1e-9 * turns / perHour);
    const auto warns = [](const Solution& of) {
        return std::ranges::find(of.checks, "thrust-bearing-life", &Check::id) != of.checks.end();
    };
    EXPECT_FALSE(warns(solution));
    design.thrustBearing.dynamicRating = 1.2 * load;
    EXPECT_TRUE(warns(solved(design)));
}

// What is not trapped of a mixture leaves unburnt, and the list of limits says so.
TEST(OneSidedEngine, SaysWhatFuelAMixtureLoses) {
    auto design = sample(crane);
    const auto remark = [](const Solution& of) {
        return std::ranges::find(of.checks, "fuel-lost", &Check::id);
    };
    const Solution injected = solved(design);
    EXPECT_EQ(remark(injected), injected.checks.end());
    design.gas.mixture = gas::Mixture::premixed;
    const Solution solution = solved(design);
    ASSERT_NE(remark(solution), solution.checks.end());
    EXPECT_NEAR(remark(solution)->value, 100.0 * figure(solution, "fuel_lost_share"), 1e-9);
    EXPECT_EQ(remark(solution)->severity, Severity::remark);
}

TEST(OneSidedEngine, SaysOnceThatItsTimingIsSymmetric) {
    const Solution solution = solved(sample(crane));
    int said = 0;
    for (const Check& check : solution.checks) {
        said += check.id == "symmetric-timing" ? 1 : 0;
        EXPECT_NE(check.id, "exhaust-closing-order");
    }
    EXPECT_EQ(said, 1);
}

// The pump's work is paid on the backs of the pistons: gas − friction = shaft, pump included, and
// shaft work less auxiliaries is the brake work.
TEST(OneSidedEngine, PaysForItsPump) {
    const Solution solution = solved(sample(crane));
    EXPECT_LT(figure(solution, "pump_work_J"), 0.0);
    EXPECT_GT(figure(solution, "pump_pressure_high_bar"), 1.1);
    EXPECT_LT(figure(solution, "pump_pressure_low_bar"), 1.0);
    EXPECT_LT(figure(solution, "work_balance_residual"), 1e-6);
    const double cycles = figure(solution, "power_strokes_per_turn");
    EXPECT_NEAR(figure(solution, "supply_power_kW") * 1e3,
                -figure(solution, "pump_work_J") * cycles * 1100.0 / 60.0,
                1e-6 * figure(solution, "supply_power_kW") * 1e3);
    EXPECT_NEAR(figure(solution, "mean_torque_Nm") -
                    sample(crane).friction.auxiliaryPower / sample(crane).running.speed,
                figure(solution, "brake_torque_Nm"), 1e-4 * figure(solution, "brake_torque_Nm"));
    // crankcase-scavenged engines: 0.5 to 0.8 [Heywood, ch. 6.6]
    EXPECT_GT(figure(solution, "delivery_ratio"), 0.5);
    EXPECT_LT(figure(solution, "delivery_ratio"), 0.8);
    EXPECT_LT(figure(solution, "audit_residual"), 1e-6);
}

class OneSidedSample : public testing::TestWithParam<const char*> {};

TEST_P(OneSidedSample, ConvergesFromFivePercentToHalfAsFastAgain) {
    design::Design design = sample(GetParam());
    const double rated = design.running.speed;
    for (const double share : {0.05, 0.1, 0.25, 0.5, 0.75, 1.0, 1.25, 1.5}) {
        design.running.speed = share * rated;
        const Solution solution = solved(design);
        ASSERT_TRUE(solution.gas) << share;
        EXPECT_GT(figure(solution, "delivery_ratio"), 0.1) << share;
        EXPECT_LT(figure(solution, "audit_residual"), 1e-6) << share;
    }
}

INSTANTIATE_TEST_SUITE_P(Each, OneSidedSample, testing::Values(crane, sprayer),
                         [](const auto& given) {
                             std::string text = given.param;
                             std::erase(text, '-');
                             return text;
                         });

// The skirt lets the pump draw where it is lowest, and the mixture that leaves unburnt is said.
TEST(OneSidedEngine, DrawsItsMixtureThroughTheRowUnderTheSkirt) {
    const Solution solution = solved(sample(sprayer));
    EXPECT_LT(figure(solution, "pump_pressure_low_bar"), 0.95);
    EXPECT_GT(figure(solution, "pump_pressure_high_bar"), 1.1);
    EXPECT_GT(figure(solution, "delivery_ratio"), 0.4);
    EXPECT_LT(figure(solution, "delivery_ratio"), 0.9);
    EXPECT_GT(figure(solution, "fuel_lost_share"), 0.05);
    EXPECT_NEAR(figure(solution, "fuel_lost_share"), 1.0 - figure(solution, "trapping_efficiency"),
                1e-6);
    EXPECT_LT(figure(solution, "work_balance_residual"), 1e-6);
    EXPECT_TRUE(test::fires(solution, "fuel-lost"));
}

// The row stands open about inner dead centre, evenly on both sides, and as wide as it is cut.
TEST(OneSidedEngine, SkirtUncoversItsRowAboutInnerDeadCentre) {
    const Solution solution = solved(sample(sprayer));
    const ports::Row& row = *solution.design.gas.supply.pump.skirtRow;
    const auto* area = solution.channel("port_area_skirt_mm2");
    ASSERT_TRUE(area);
    const double corners = (4.0 - units::pi) * row.cornerRadius * row.cornerRadius;
    EXPECT_NEAR(area->values.maxCoeff(),
                row.count * (row.width * row.height - corners) / units::squareMillimetre, 1e-9);
    EXPECT_EQ(area->values.minCoeff(), 0.0);
    const auto& centres = solution.timing.cycles().front().centres;
    const auto open = ports::skirtOpening(row, solution.pair, End::inlet, centres);
    ASSERT_TRUE(open);
    EXPECT_NEAR(centres.idc - open->opens, open->closes - centres.idc, 1e-9);
    EXPECT_NEAR(solution.pair.lift(End::inlet, open->closes).y, row.edge, 1e-12);
    EXPECT_EQ(solved(sample(crane)).channel("port_area_skirt_mm2"), nullptr);
}

// The pistons feel the pump chamber, not the volume behind it; the air path tells of the volume.
TEST(OneSidedEngine, PaysForItsPumpThroughATransferVolume) {
    auto design = sample(crane);
    design.gas.supply.pump.transferVolume = 150e-6;
    design.gas.supply.pump.transferArea = 250e-6;
    const Solution solution = solved(design);
    EXPECT_LT(figure(solution, "work_balance_residual"), 1e-6);
    EXPECT_LT(figure(solution, "audit_residual"), 1e-6);
    const auto* chamber = solution.channel("pump_pressure_bar");
    const auto* volume = solution.channel("supply_pressure_bar");
    ASSERT_TRUE(chamber && volume);
    EXPECT_GT(chamber->values.maxCoeff(), volume->values.maxCoeff());
    EXPECT_NEAR(chamber->values.minCoeff(), volume->values.minCoeff(), 2e-3) << "filled together";
    EXPECT_NEAR(chamber->values.maxCoeff(), figure(solution, "pump_pressure_high_bar"), 5e-3);
    const auto path = supplyPath(solution);
    ASSERT_TRUE(path);
    EXPECT_TRUE(path->hasTransfer);
}

// Which orders of z evenly spaced cylinders add up: forces where z divides q, moments where it
// divides q ± 1 (sums of roots of unity); q is a multiple of the lobes.
TEST(OneSidedEngine, LeavesTheOrdersOfTheTable) {
    const Solution solution = solved(sample(crane)); // z = 3, c = 2
    for (const auto& [name, isThere] :
         {std::pair("shaking_force_order_6_N", true), std::pair("shaking_force_order_2_N", false),
          std::pair("shaking_force_order_4_N", false),
          std::pair("rocking_moment_x_order_2_Nm", true),
          std::pair("rocking_moment_x_order_4_Nm", true),
          std::pair("rocking_moment_x_order_6_Nm", false)}) {
        EXPECT_EQ(solution.figure(name) != nullptr, isThere) << name;
    }
}

} // namespace
} // namespace lobewright::solution
