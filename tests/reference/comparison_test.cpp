#include "core/design/file.h"
#include "core/reference/comparison.h"
#include "core/units.h"
#include "tests/places.h"

#include <gtest/gtest.h>

#include <cmath>

namespace lobewright::study {
namespace {

design::Design sample(const std::string& name) {
    const auto design =
        design::loadDesign(test::sourceFolder() + "/samples/" + name + ".lobewright.json");
    EXPECT_TRUE(design);
    return *design;
}

/// Burn starts are given, so that nothing has to be searched.
design::Design pumpSet() {
    design::Design design = sample("biogas-pump-set");
    design.reference.fourStroke.bestTorque = false;
    return design;
}

Comparison compared(const design::Design& design, Basis basis = Basis::displacement) {
    SilentMonitor monitor;
    const auto result = compare(design, basis, monitor);
    EXPECT_TRUE(result) << (result ? "" : result.problems().front().message.english());
    for (const ComparedEngine& engine : result->engines) {
        EXPECT_TRUE(engine.problem.empty()) << key(engine.engine);
    }
    return *result;
}

double value(const Comparison& comparison, Compared engine, std::string_view name) {
    const solution::Figure* figure =
        comparison.engines[static_cast<std::size_t>(engine)].figure(name);
    EXPECT_NE(figure, nullptr) << name;
    EXPECT_TRUE(figure->value) << name << " " << key(engine);
    return figure->value.value_or(std::nan(""));
}

constexpr auto cam = Compared::camTrack;
constexpr auto slow = Compared::cranksSameSpeed;
constexpr auto fast = Compared::cranksSamePistonSpeed;
constexpr auto ambient = Compared::fourStrokeAmbient;
constexpr auto fed = Compared::fourStrokeSameSupply;

TEST(Comparison, TheDesignsRowIsItsSolution) {
    const design::Design design = pumpSet();
    const Comparison comparison = compared(design);
    SilentMonitor monitor;
    const auto solution = solution::solve(design, monitor);
    ASSERT_TRUE(solution);
    for (const char* name :
         {"imep_bar", "bmep_bar", "brake_torque_Nm", "brake_power_kW", "displacement_cm3",
          "compression_ratio", "indicated_efficiency", "brake_efficiency", "delivery_ratio",
          "peak_pressure_bar", "peak_to_peak_torque_Nm", "torque_ripple", "shaking_force_peak_N"}) {
        const double expected = *solution->figure(name)->value;
        EXPECT_NEAR(value(comparison, cam, name), expected, 1e-9 * std::abs(expected)) << name;
    }
}

TEST(Comparison, AllEnginesHaveTheSameFiguresInTheSameOrder) {
    const Comparison comparison = compared(pumpSet());
    ASSERT_EQ(comparison.engines.size(), 5U);
    const auto& first = comparison.engines.front().figures;
    for (const ComparedEngine& engine : comparison.engines) {
        ASSERT_EQ(engine.figures.size(), first.size());
        for (std::size_t i = 0; i < first.size(); ++i) {
            EXPECT_EQ(engine.figures[i].name, first[i].name);
            if (engine.figures[i].value) {
                EXPECT_TRUE(std::isfinite(*engine.figures[i].value)) << first[i].name;
            } else {
                EXPECT_FALSE(engine.figures[i].note.empty()) << first[i].name;
            }
        }
    }
}

TEST(Comparison, PowerStrokesAreCountedPerCylinderAndTurn) {
    // Two lobes, three cylinders: 2, 1, 2 (geared) and ½ a cylinder and turn.
    const Comparison comparison = compared(pumpSet());
    const char* name = "power_strokes_per_cylinder_and_turn";
    EXPECT_DOUBLE_EQ(value(comparison, cam, name), 2.0);
    EXPECT_DOUBLE_EQ(value(comparison, slow, name), 1.0);
    EXPECT_DOUBLE_EQ(value(comparison, fast, name), 2.0);
    EXPECT_DOUBLE_EQ(value(comparison, ambient, name), 0.5);
    EXPECT_DOUBLE_EQ(value(comparison, cam, "power_strokes_per_turn"), 6.0);
    EXPECT_DOUBLE_EQ(value(comparison, ambient, "power_strokes_per_turn"), 1.5);
}

TEST(Comparison, GearedCranksKeepPistonSpeedAndMultiplyTorque) {
    const Comparison comparison = compared(pumpSet());
    EXPECT_NEAR(value(comparison, fast, "mean_piston_speed_m_per_s"),
                value(comparison, cam, "mean_piston_speed_m_per_s"), 1e-12);
    EXPECT_NEAR(value(comparison, fast, "crank_speed_rpm"),
                2.0 * value(comparison, cam, "crank_speed_rpm"), 1e-9);
    for (const Compared engine : {slow, fast}) {
        const double omega = value(comparison, engine, "shaft_speed_rpm") * units::revPerMinute;
        EXPECT_NEAR(value(comparison, engine, "brake_power_kW"),
                    value(comparison, engine, "brake_torque_Nm") * omega / 1e3, 1e-9);
    }
}

TEST(Comparison, TorqueCurveOfEachReferenceHoldsItsBrakeTorque) {
    // Mean torque of the curve less what is deducted outside it (supply, auxiliaries) is the brake
    // torque; samples of a degree hold it to half a per cent.
    const Comparison comparison = compared(pumpSet());
    for (const Compared engine : {cam, slow, fast, ambient, fed}) {
        const auto& row = comparison.engines[static_cast<std::size_t>(engine)];
        ASSERT_TRUE(row.curves) << key(engine);
        const Samples& torque = row.curves->totalTorque;
        const double mean = torque.head(torque.size() - 1).mean();
        const double omega = value(comparison, engine, "shaft_speed_rpm") * units::revPerMinute;
        const double auxiliary = row.figure("fmep_auxiliary_bar")->value.value_or(0.0);
        const double share = (value(comparison, engine, "fmep_supply_bar") + auxiliary) /
                             value(comparison, engine, "bmep_bar");
        const double brake = value(comparison, engine, "brake_power_kW") * 1e3 / omega;
        EXPECT_NEAR(mean, brake * (1.0 + share), 0.005 * brake) << key(engine);
        // Ripple is from the lowest torque to the highest, over that mean.
        const double ripple = value(comparison, engine, "peak_to_peak_torque_Nm") / mean;
        EXPECT_NEAR(value(comparison, engine, "torque_ripple"), ripple, 0.005 * ripple)
            << key(engine);
    }
}

TEST(Comparison, EachBasisMakesEqualWhatItSays) {
    const design::Design design = pumpSet();
    const auto equal = [&](Basis basis, const char* name, double tolerance) {
        Comparison comparison = compared(design, basis);
        const double own = value(comparison, cam, name);
        for (const Compared engine : {ambient, fed}) {
            EXPECT_NEAR(value(comparison, engine, name), own, tolerance * own)
                << label(basis).text << " " << key(engine);
        }
        return comparison;
    };
    equal(Basis::displacement, "displacement_cm3", 1e-9);
    equal(Basis::displacement, "shaft_speed_rpm", 1e-12);
    equal(Basis::displacedVolume, "displaced_volume_L_per_s", 1e-9);
    equal(Basis::pistonSpeed, "mean_piston_speed_m_per_s", 1e-9);
    const Comparison power = equal(Basis::power, "brake_power_kW", 1e-9);
    for (const Compared engine : {slow, fast}) {
        EXPECT_NEAR(value(power, engine, "brake_power_kW"), value(power, cam, "brake_power_kW"),
                    1e-9);
    }
    EXPECT_GT(value(power, ambient, "enlarged_by"), 1.0);
    EXPECT_NEAR(value(power, ambient, "displacement_cm3"),
                value(power, cam, "displacement_cm3") * value(power, ambient, "enlarged_by"), 1e-6);
}

TEST(Comparison, HeatKeptAndFrictionAddedAreWeighedInOneFigure) {
    const Comparison comparison = compared(pumpSet());
    // Against itself nothing is kept and nothing added.
    EXPECT_DOUBLE_EQ(value(comparison, fed, "heat_kept_share"), 0.0);
    EXPECT_DOUBLE_EQ(value(comparison, fed, "heat_kept_less_friction_share"), 0.0);
    for (const Compared engine : {cam, slow, fast}) {
        const double kept = value(comparison, fed, "wall_heat_share") -
                            value(comparison, engine, "wall_heat_share");
        const double added =
            value(comparison, engine, "friction_share") - value(comparison, fed, "friction_share");
        EXPECT_NEAR(value(comparison, engine, "heat_kept_share"), kept, 1e-12);
        EXPECT_NEAR(value(comparison, engine, "friction_added_share"), added, 1e-12);
        EXPECT_NEAR(value(comparison, engine, "heat_kept_less_friction_share"),
                    kept * value(comparison, engine, "indicated_efficiency") - added, 1e-12);
    }
}

TEST(Comparison, FrictionPartsAddUpToTheDifferenceOfIndicatedAndBrake) {
    const Comparison comparison = compared(pumpSet());
    for (const Compared engine : {cam, slow, fast, ambient, fed}) {
        double sum = 0.0;
        for (const char* part : {"fmep_ring_bar", "fmep_guide_bar", "fmep_drive_bar",
                                 "fmep_supply_bar", "fmep_auxiliary_bar"}) {
            sum +=
                comparison.engines[static_cast<std::size_t>(engine)].figure(part)->value.value_or(
                    0.0);
        }
        EXPECT_NEAR(value(comparison, engine, "imep_bar") - value(comparison, engine, "bmep_bar"),
                    sum, 1e-9);
    }
}

// The fit of the four-stroke does not tell rings, guides and auxiliaries apart: no figure, not 0.
TEST(Comparison, FrictionWithinTheFitIsNoFigure) {
    const Comparison comparison = compared(pumpSet());
    for (const Compared engine : {ambient, fed}) {
        for (const char* part : {"fmep_ring_bar", "fmep_guide_bar", "fmep_auxiliary_bar"}) {
            const auto* figure = comparison.engines[static_cast<std::size_t>(engine)].figure(part);
            ASSERT_NE(figure, nullptr);
            EXPECT_FALSE(figure->value) << part;
            EXPECT_EQ(figure->note, withinTheFit);
        }
        EXPECT_GT(value(comparison, engine, "fmep_drive_bar"), 0.5);
    }
    EXPECT_GT(value(comparison, slow, "fmep_ring_bar"), 0.0);
}

TEST(Comparison, TheDesignsRowTakesTheLargerOfBothEnds) {
    design::Design design = pumpSet();
    design.mechanism.pistonMass.exhaust = 3.0 * design.mechanism.pistonMass.inlet;
    const Comparison comparison = compared(design);
    SilentMonitor monitor;
    const auto solution = solution::solve(design, monitor);
    ASSERT_TRUE(solution);
    const double inlet = *solution->figure("highest_side_force_inlet_N")->value;
    const double exhaust = *solution->figure("highest_side_force_exhaust_N")->value;
    EXPECT_GT(std::abs(exhaust - inlet), 1e-3 * inlet);
    EXPECT_NEAR(value(comparison, cam, "highest_side_force_N"), std::max(inlet, exhaust),
                1e-9 * inlet);
    std::swap(design.mechanism.pistonMass.inlet, design.mechanism.pistonMass.exhaust);
    EXPECT_NEAR(
        value(compared(design), cam, "highest_side_force_N"),
        [&] {
            const auto other = solution::solve(design, monitor);
            return std::max(*other->figure("highest_side_force_inlet_N")->value,
                            *other->figure("highest_side_force_exhaust_N")->value);
        }(),
        1e-9 * inlet);
}

// Three cylinders alike, evenly phased: the torque repeats with each firing, every 120° of the slow
// cranks, every 60° of the output of cranks geared twice as fast, every 240° of the four-stroke.
TEST(Comparison, TorqueOfTheReferencesRepeatsWithEachFiring) {
    const Comparison comparison = compared(pumpSet());
    for (const auto& [engine, interval] :
         {std::pair(slow, 120), std::pair(fast, 60), std::pair(ambient, 240)}) {
        const auto& row = comparison.engines[static_cast<std::size_t>(engine)];
        const Samples& torque = row.curves->totalTorque;
        const Eigen::Index rest = torque.size() - interval;
        EXPECT_LT((torque.head(rest) - torque.tail(rest)).abs().maxCoeff(),
                  1e-5 * value(comparison, engine, "peak_to_peak_torque_Nm"))
            << key(engine);
    }
}

TEST(Comparison, TheFourStrokeBurnsFromTheAngleGiven) {
    design::Design design = pumpSet();
    design.reference.fourStroke.burnStart = -7.0 * units::degree;
    const Comparison comparison = compared(design);
    EXPECT_NEAR(value(comparison, ambient, "burn_start_deg"), -7.0, 1e-9);
    EXPECT_NEAR(value(comparison, fed, "burn_start_deg"), -7.0, 1e-9);
}

// One cylinder shakes with its mass times its acceleration; masses of like pistons go with the cube
// of the bore.
TEST(Comparison, PistonsOfTheFourStrokeWeighAsTheCubeOfTheirBore) {
    design::Design design = pumpSet();
    design.mechanism.cylinders = 1;
    const Comparison comparison = compared(design);
    const double own =
        0.5 * (design.mechanism.pistonMass.inlet + design.mechanism.pistonMass.exhaust);
    const double bores = value(comparison, ambient, "bore_mm") / value(comparison, cam, "bore_mm");
    EXPECT_GT(bores, 1.02);
    const double force =
        own * std::pow(bores, 3) * value(comparison, ambient, "peak_acceleration_m_per_s2");
    EXPECT_NEAR(value(comparison, ambient, "shaking_force_peak_N"), force, 1e-3 * force);
}

TEST(Comparison, LeverArmOfTheCranksIsHalfTheStrokeAndABit) {
    // r·ω·1.039: peak speed of a slider-crank with λ = 0.28 (between 1.032 for ¼ and 1.040244 for
    // 2/7), referred to the output shaft.
    const Comparison comparison = compared(pumpSet());
    const double radius = 0.5 * value(comparison, slow, "stroke_mm");
    EXPECT_NEAR(value(comparison, slow, "largest_lever_arm_mm") / radius, 1.0387, 0.001);
    EXPECT_NEAR(value(comparison, fast, "largest_lever_arm_mm") / radius, 2.0 * 1.0387, 0.002);
}

TEST(Comparison, UnpaidSupplyStaysUnpaidBesideTheFourStroke) {
    design::Design design = pumpSet();
    design.gas.supply.unpaid = true;
    const Comparison comparison = compared(design);
    for (const Compared engine : {cam, slow, fast, fed}) {
        EXPECT_EQ(value(comparison, engine, "fmep_supply_bar"), 0.0) << key(engine);
        EXPECT_GT(value(comparison, engine, "supply_power_kW"), 0.0) << key(engine);
        EXPECT_EQ(value(comparison, engine, "supply_power_counted"), 0.0) << key(engine);
    }
    EXPECT_EQ(value(comparison, ambient, "supply_power_kW"), 0.0);
}

TEST(Comparison, MotoredAndBlownSamplesCompareToo) {
    for (const char* name : {"classroom-model", "sketched-lobes-blown", "unequal-lobes"}) {
        design::Design design = sample(name);
        design.reference.fourStroke.bestTorque = false;
        SCOPED_TRACE(name);
        compared(design);
    }
}

TEST(Comparison, AReferenceThatCannotBeBuiltIsARowWithItsReason) {
    design::Design design = pumpSet();
    design.reference.rodRatio = 0.9;
    design.friction.guide = 0.9;
    SilentMonitor monitor;
    const auto result = compare(design, Basis::displacement, monitor);
    ASSERT_TRUE(result);
    EXPECT_NE(result->engines[1].problem.english().find("blocks"), std::string::npos);
    EXPECT_FALSE(result->engines[1].curves);
    EXPECT_TRUE(result->engines[3].problem.empty());
}

TEST(Comparison, StopsWhenAsked) {
    class Impatient final : public Monitor {
      public:
        bool step(double, const Message&) override { return false; }
    } monitor;
    const auto result = compare(pumpSet(), Basis::displacement, monitor);
    ASSERT_FALSE(result);
    EXPECT_EQ(result.problems().front().message.english(), "cancelled");
}

TEST(Comparison, TableHasALineForEachEngineAndSpeed) {
    SilentMonitor monitor;
    const auto result = compareSpeeds(pumpSet(), {90.0, 120.0}, Basis::displacement, monitor);
    ASSERT_TRUE(result);
    ASSERT_EQ(result->size(), 2U);
    const std::string csv = comparisonCsv(*result);
    EXPECT_EQ(std::ranges::count(csv, '\n'), 11);
    const auto columns = [&](std::size_t from) {
        return std::count(csv.begin() + static_cast<std::ptrdiff_t>(from),
                          csv.begin() + static_cast<std::ptrdiff_t>(csv.find('\n', from)), ',');
    };
    EXPECT_EQ(columns(0), columns(csv.find('\n') + 1));
    EXPECT_NE(csv.find("\r\n859.4366927,displacement,cam-track,,"), std::string::npos);
}

// A one-sided engine stands beside the ordinary two-stroke: same pump, same ports, same
// compression.
TEST(Comparison, AOneSidedEngineStandsBesideTheOrdinaryTwoStroke) {
    design::Design design = sample("harbour-crane-auxiliary");
    design.reference.fourStroke.bestTorque = false;
    const Comparison comparison = compared(design);
    EXPECT_NEAR(value(comparison, fast, "compression_ratio"),
                value(comparison, cam, "compression_ratio"), 1e-9);
    EXPECT_NEAR(value(comparison, fast, "mean_piston_speed_m_per_s"),
                value(comparison, cam, "mean_piston_speed_m_per_s"), 1e-9);
    EXPECT_NEAR(value(comparison, fast, "delivery_ratio") /
                    value(comparison, cam, "delivery_ratio"),
                1.0, 0.1);
}

} // namespace
} // namespace lobewright::study
