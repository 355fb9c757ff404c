#include "tests/claims/claims_text.h"

#include <functional>

/// Worked cases. Numbers beside each were got by hand from the figures in its text, with
/// 1 hp = 745.69987158 W, 1 PS = 735.49875 W, 1 lb·ft = 1.35581795 N·m, 1 cu in = 16.387064 cm³.
namespace lobewright::study {
namespace {

struct Expected {
    const char* id;
    double value;
    Verdict verdict = Verdict::computed;
    double tolerance = 5e-5; ///< relative: five digits of hand arithmetic
};

struct Case {
    const char* name;
    const char* groups;
    std::vector<Expected> expected{};
    std::size_t conflicts = 0;
};

void PrintTo(const Case& each, std::ostream* out) {
    *out << each.name;
}

class WorkedCase : public testing::TestWithParam<Case> {};

TEST_P(WorkedCase, GivesTheHandComputedFigures) {
    const ClaimsReport report = reportOf(GetParam().groups);
    for (const Expected& expected : GetParam().expected) {
        const Finding* finding = report.finding(expected.id);
        ASSERT_NE(finding, nullptr) << expected.id;
        EXPECT_NEAR(finding->value, expected.value, expected.tolerance * expected.value)
            << expected.id;
        EXPECT_EQ(name(finding->verdict), name(expected.verdict)) << expected.id;
        EXPECT_FALSE(finding->formula.empty());
        EXPECT_FALSE(finding->substituted.empty());
    }
    EXPECT_EQ(report.conflicts.size(), GetParam().conflicts);
}

constexpr const char* pressureAtTorque = "mean-effective-pressure-at-torque";
constexpr const char* pressureAtPower = "mean-effective-pressure-at-power";

// bmep = 2π·T/(c·V_d): the four rows of a handbook table.
INSTANTIATE_TEST_SUITE_P(
    MeanEffectivePressure, WorkedCase,
    testing::Values(
        Case{"OneCycleATurn", // 2π·1000/(1·0.004) = 15.707963e5
             R"("engine": {"cycle": "two-stroke", "drive": "crank", "displacement": "4 L"},
                "figures": {"torque": "1000 N·m"})",
             {{pressureAtTorque, 15.707963, Verdict::onlyWithBoost, 1e-7}}},
        Case{"TwoLobes", // half of it
             R"("engine": {"cycle": "two-stroke", "drive": "cam-track",
                           "reciprocations_per_turn": 2, "displacement": "4 L"},
                "figures": {"torque": "1 kN·m"})",
             {{pressureAtTorque, 7.853982, Verdict::ambitious, 1e-7}, {"cycles-per-turn", 2.0}}},
        Case{"HalfTheTorqueHalfTheVolume",
             R"("engine": {"cylinders": 3, "events_per_turn": 6, "displacement": "2000 cc"},
                "figures": {"torque": "500 N·m"})",
             {{pressureAtTorque, 7.853982, Verdict::ordinary, 1e-7}}},
        Case{"FourStroke", // 2π·300/(0.5·0.002) = 18.849556e5
             R"("engine": {"cycle": "four-stroke", "drive": "crank", "displacement": "2 L"},
                "figures": {"torque": "300 N·m"})",
             {{pressureAtTorque, 18.849556, Verdict::onlyWithBoost, 1e-7},
              {"four-stroke-equivalent", 2.0}}}),
    [](const auto& test) { return std::string(test.param.name); });

INSTANTIATE_TEST_SUITE_P(
    MixedUnits, WorkedCase,
    testing::Values(
        Case{"OrdinaryCar",
             // 4π·165/1.998e-3 = 10.37763e5; 95e3/(1.998e-3·0.5·96.6667) = 9.83742e5;
             // 95e3/(2π·165) = 91.6347 1/s = 5498.08 rpm; 95/1.998 = 47.5475;
             // 9.83742 + 0.97 + 0.15·5.8 + 0.05·33.64 = 13.35942
             R"("engine": {"cycle": "four-stroke", "drive": "crank", "ignition": "spark",
                           "charging": "naturally-aspirated", "displacement": "1998 cc"},
                "figures": {"power": "95 kW", "power_speed": "5800 rpm", "torque": "165 N·m",
                            "torque_speed": "4000 rpm"})",
             {{pressureAtTorque, 10.377633, Verdict::ordinary},
              {pressureAtPower, 9.837424, Verdict::ordinary},
              {"lowest-power-speed", 5498.08},
              {"specific-power", 47.5475, Verdict::ordinary},
              {"indicated-pressure-at-power", 13.359424}}},
        Case{"CubicInchesHorsepowerAndPoundFeet",
             // 350 cu in = 5.735472 L; 300 hp = 223.70996 kW; 380 lb·ft = 515.21082 N·m;
             // 4π·515.21082/5.735472e-3 = 11.28822e5; 223709.96/(5.735472e-3·0.5·83.3333) =
             // 9.36111e5; 223709.96/(2π·515.21082)·60 = 4146.41; 223.70996/5.735472 = 39.00463
             R"("engine": {"cycle": "four-stroke", "drive": "crank", "ignition": "spark",
                           "charging": "naturally-aspirated", "displacement": "350 cu in"},
                "figures": {"power": "300 hp", "power_speed": "5000 rpm", "torque": "380 lb·ft",
                            "torque_speed": "3200 rpm"})",
             {{"given-power", 223.70996},
              {"given-torque", 515.21082},
              {"given-displacement", 5.735472},
              {pressureAtTorque, 11.288225, Verdict::ambitious},
              {pressureAtPower, 9.361110, Verdict::ordinary},
              {"lowest-power-speed", 4146.405},
              {"specific-power", 39.004627, Verdict::ordinary}}},
        Case{"MetricHorsepowerDiesel",
             // 150 PS = 110.32481 kW; 4π·340/2e-3 = 21.36283e5 (large diesels: 23 atm = 23.30 bar);
             // 110324.81/(2e-3·0.5·66.6667) = 16.54872e5; 110324.81/(2π·340)·60 = 3098.60
             R"("engine": {"cycle": "four-stroke", "drive": "crank", "ignition": "compression",
                           "charging": "boosted", "displacement": "2.0 L"},
                "figures": {"power": "150 PS", "power_speed": "4000 rpm", "torque": "340 N·m",
                            "torque_speed": "2000 rpm"})",
             {{"given-power", 110.324813},
              {pressureAtTorque, 21.362830, Verdict::ambitious},
              {pressureAtPower, 16.548722, Verdict::ordinary},
              {"lowest-power-speed", 3098.601}}},
        Case{"KilogramForceMetres",
             // 15 kgf·m = 147.09975 N·m; 4π·147.09975/1.3e-3 = 14.21931e5
             R"("engine": {"cycle": "four-stroke", "drive": "crank", "ignition": "spark",
                           "displacement": "1300 ccm"},
                "figures": {"torque": "15 mkg"})",
             {{"given-torque", 147.09975}, {pressureAtTorque, 14.219308, Verdict::ambitious}}},
        Case{"InchesOfBoreAndStroke",
             // π/4·3²·4·8 = 226.19467 cu in = 3.7066666 L
             R"("engine": {"cylinders": 8, "pistons": 8, "bore": "3 in", "stroke": "4 in"})",
             {{"displacement", 3.7066666}}},
        Case{"PowerPerMassInPounds",
             // 100 hp = 74.569987 kW; 300 lb = 136.077711 kg; 0.5479956 kW/kg
             R"("engine": {"mass": "300 lb", "ignition": "spark"}, "figures": {"power": "100 hp"})",
             {{"power-per-mass", 0.5479956, Verdict::ambitious}, {"given-mass", 136.077711}}},
        Case{"PoundsOfFuelPerHorsepowerHour",
             // 0.4 lb/(hp·h) = 243.31096 g/kWh; 3.6e6/(0.24331096·44e6) = 0.3362700
             R"("engine": {"fuel": "petrol", "ignition": "spark"},
                "figures": {"fuel_consumption": "0.4 lb/hp-h"})",
             {{"given-fuel_consumption", 243.31096},
              {"efficiency-from-consumption", 33.627003, Verdict::ambitious}}}),
    [](const auto& test) { return std::string(test.param.name); });

INSTANTIATE_TEST_SUITE_P(
    PistonsAndGeometry, WorkedCase,
    testing::Values(
        Case{"SixOpposedPistons", // π/4·6.4²·3.6 = 115.81167 cm³; ·6 = 694.8700 cm³
             R"("engine": {"cylinders": 3, "pistons": 6, "bore": "64 mm", "stroke": "3.6 cm"})",
             {{"displacement", 0.6948700}}},
        Case{"TwoLobesDoubleThePistonSpeed", // 2·0.040·2·50 = 8
             R"("engine": {"cycle": "two-stroke", "drive": "cam-track", "stroke": "40 mm",
                           "reciprocations_per_turn": 2, "ignition": "spark"},
                "figures": {"maximum_speed": "3000 rpm"})",
             {{"mean-piston-speed", 8.0, Verdict::ordinary, 1e-12}}},
        Case{"CrankPistonSpeed", // 2·0.090·50 = 9, the example of the encyclopedia page
             R"("engine": {"cycle": "four-stroke", "drive": "crank", "stroke": "90 mm",
                           "ignition": "spark"},
                "figures": {"power": "60 kW", "power_speed": "3000 rpm"})",
             {{"mean-piston-speed", 9.0, Verdict::ordinary, 1e-12}}},
        Case{"FourStrokeOnACamTrack", // 8 events/4 chambers = 2 cycles; 2·2 = 4 reciprocations;
                                      // 2·0.05·4·25 = 10
             R"("engine": {"cycle": "four-stroke", "drive": "cam-track", "cylinders": 4,
                           "events_per_turn": 8, "stroke": "50 mm", "ignition": "spark"},
                "figures": {"maximum_speed": "1500 rpm"})",
             {{"cycles-per-turn", 2.0}, {"mean-piston-speed", 10.0, Verdict::ordinary, 1e-12}}},
        Case{"FastEngineIsOutsideTheBand", // 2·0.08·200 = 32
             R"("engine": {"cycle": "four-stroke", "drive": "crank", "stroke": "80 mm",
                           "ignition": "spark"},
                "figures": {"maximum_speed": "12000 rpm"})",
             {{"mean-piston-speed", 32.0, Verdict::outsideBand, 1e-12}}},
        Case{"EquivalentFourStroke", // 1.8·2/0.5 = 7.2
             R"("engine": {"cylinders": 4, "events_per_turn": 8, "displacement": "1.8 L"})",
             {{"four-stroke-equivalent", 7.2}}}),
    [](const auto& test) { return std::string(test.param.name); });

// ρ_amb = 1e5/(287.0607·298.15) = 1.168400 kg/m³ (1 bar, 25 °C, M = 28.96413 g/mol).
INSTANTIATE_TEST_SUITE_P(
    AirAndFuel, WorkedCase,
    testing::Values(
        Case{"AirOfAPetrolFourStroke",
             // 1e5/(0.3·44e6)·14.6004 = 0.1106091 kg/s; /(0.002·0.5·100·1.168400) = 0.946672
             R"("engine": {"cycle": "four-stroke", "drive": "crank", "displacement": "2 L",
                           "fuel": "petrol", "charging": "naturally-aspirated"},
                "figures": {"power": "100 kW", "power_speed": "6000 rpm"})",
             {{"air-needed", 0.1106091}, {"charging-ratio", 0.946672, Verdict::ambitious}}},
        Case{
            "ChargeOfATwoLobeTwoStroke",
            // 0.1106091/(0.001·2·50·1.168400) = 0.946672; /0.8 = 1.183339
            R"("engine": {"cycle": "two-stroke", "reciprocations_per_turn": 2,
                           "displacement": "1 L", "fuel": "petrol"},
                "figures": {"power": "100 kW", "power_speed": "3000 rpm"})",
            {{"charging-ratio", 0.946672, Verdict::ambitious}, {"charging-ratio-ports", 1.183339}}},
        Case{"LeanHydrogen", // 80e3/(0.35·120e6)·2·34.2891 = 0.1306251
             R"("engine": {"fuel": "hydrogen"},
                "figures": {"power": "80 kW", "efficiency": "35 %", "air_ratio": 2})",
             {{"air-needed", 0.1306251}}},
        Case{"TwiceTheAirNeedsBoost", // 2·0.946672 = 1.893343, boosted four-strokes to 2
             R"("engine": {"cycle": "four-stroke", "drive": "crank", "displacement": "1 L",
                           "fuel": "petrol"},
                "figures": {"power": "100 kW", "power_speed": "6000 rpm"})",
             {{"charging-ratio", 1.893343, Verdict::onlyWithBoost}}},
        Case{"ChargePressureTooLow",
             // 1.3/1 available; 1.893343 > 1.3·8/7 = 1.486
             R"("engine": {"cycle": "four-stroke", "drive": "crank", "displacement": "1 L",
                           "fuel": "petrol", "charging": "boosted", "charge_pressure": "1.3 bar"},
                "figures": {"power": "100 kW", "power_speed": "6000 rpm"})",
             {{"charge-available", 1.3, Verdict::implausible}}},
        Case{"ChargePressureHighEnough",
             R"("engine": {"cycle": "four-stroke", "drive": "crank", "displacement": "1 L",
                           "fuel": "petrol", "charging": "boosted", "charge_pressure": "2 bar"},
                "figures": {"power": "100 kW", "power_speed": "6000 rpm"})",
             {{"charge-available", 2.0, Verdict::ordinary}}},
        Case{"SupplyPowerNotCounted",
             // h = 1004.6·298.15/0.65·(1.5^0.285714 − 1) = 56598 J/kg with constant heat, a blower
             // in front of ports: 0.1106091/0.8·56598 = 7825 W; the heat of real air rises by
             // 0.3 % on the way to 350 K
             R"("engine": {"cycle": "two-stroke", "reciprocations_per_turn": 2,
                           "displacement": "1 L", "fuel": "petrol", "charging": "boosted",
                           "charge_pressure": "1500 mbar"},
                "figures": {"power": "100 kW", "power_speed": "3000 rpm"},
                "conditions": {"supply_power": "not-counted"})",
             {{"supply-power", 7.825, Verdict::computed, 5e-3}}},
        Case{"DieselEfficiency", // 3.6e6/(0.25·42.5e6) = 0.3388235
             R"("engine": {"fuel": "diesel", "ignition": "compression"},
                "figures": {"fuel_consumption": "250 g/kWh"})",
             {{"efficiency-from-consumption", 33.882353, Verdict::ordinary}}},
        Case{"GrossFigure", // 0.9·100
             R"("figures": {"power": "100 kW"}, "conditions": {"rating": "gross"})",
             {{"net-power", 90.0}}},
        Case{"CorrectedForAWarmHumidDay",
             // e_s(30 °C) = 4233.72 Pa; p_d = 100 − 0.6·4.23372 = 97.45977 kPa;
             // (99/97.45977)^1.2·(303.15/298)^0.6 = 1.029524
             R"("engine": {"ignition": "spark"}, "figures": {"power": "100 kW"},
                "conditions": {"air_pressure": "100 kPa", "air_temperature": "30 °C",
                               "relative_humidity": "60 %"})",
             {{"corrected-power", 102.95243}}},
        Case{"OldStandardFlatters", // 1013 mbar, 20 °C: (99/101.3)^1.2·(293.15/298)^0.6 = 0.9632856
             R"("engine": {"ignition": "spark"}, "figures": {"power": "100 PS"},
                "conditions": {"air_pressure": "1013 mbar", "air_temperature": "20 °C"})",
             {{"corrected-power", 70.849536}}}),
    [](const auto& test) { return std::string(test.param.name); });

INSTANTIATE_TEST_SUITE_P(
    Bounds, WorkedCase,
    testing::Values(
        Case{"PowerAndTorqueAloneGiveALowestSpeed", // 200e3/(2π·500)·60 = 3819.72
             R"("figures": {"power": "200 kW", "torque": "500 N·m"})",
             {{"lowest-power-speed", 3819.7186}}},
        Case{"HighestSpeedGivesALowerBoundOfPressure", // 50e3/(1e-3·1·50) = 10e5
             R"("engine": {"cycle": "two-stroke", "drive": "crank", "displacement": "1 L",
                           "ignition": "spark"},
                "figures": {"power": "50 kW", "maximum_speed": "3000 rpm"})",
             {{pressureAtPower, 10.0, Verdict::ambitious}}}),
    [](const auto& test) { return std::string(test.param.name); });

TEST(ClaimsCheck, NothingGivenGivesNothingButTheListOfWhatIsMissing) {
    const ClaimsReport report = reportOf("");
    EXPECT_TRUE(report.findings.empty());
    EXPECT_TRUE(report.conflicts.empty());
    EXPECT_GE(report.missing.size(), 14u);
    for (const MissingNumber& missing : report.missing) {
        EXPECT_FALSE(missing.decides.empty()) << missing.path;
    }
}

TEST(ClaimsCheck, WithoutDisplacementNoPressureIsMadeUp) {
    const ClaimsReport report = reportOf(R"("engine": {"cycle": "two-stroke", "drive": "crank"},
                    "figures": {"power": "50 kW", "power_speed": "3000 rpm"})");
    EXPECT_EQ(report.finding(pressureAtPower), nullptr);
    EXPECT_EQ(report.finding("charging-ratio"), nullptr);
    const bool isListed = std::ranges::any_of(report.missing, [](const MissingNumber& missing) {
        return missing.path == "/engine/displacement";
    });
    EXPECT_TRUE(isListed);
}

TEST(ClaimsCheck, APistonSpeedGivenWithoutAStrokeIsJudgedItself) {
    const auto report = reportOf(R"("engine": {"ignition": "spark"},
                                    "figures": {"mean_piston_speed": "32 m/s"})");
    const Finding* finding = report.finding("mean-piston-speed-given");
    ASSERT_NE(finding, nullptr);
    EXPECT_DOUBLE_EQ(finding->value, 32.0);
    EXPECT_EQ(finding->verdict, Verdict::outsideBand);
    EXPECT_FALSE(finding->source.empty());
    EXPECT_FALSE(std::ranges::any_of(report.missing, [](const MissingNumber& missing) {
        return missing.path == "/engine/stroke";
    }));
    const auto diesel = reportOf(R"("engine": {"ignition": "compression"},
                                    "figures": {"mean_piston_speed": "12 m/s"})");
    EXPECT_EQ(diesel.finding("mean-piston-speed-given")->verdict, Verdict::ordinary);
}

TEST(ClaimsCheck, CycleFollowsFromStrokesAndEventsWhereItIsNotGiven) {
    // Four chambers, 2 reciprocations, 4 events a turn: one cycle for two reciprocations.
    const ClaimsReport report = reportOf(
        R"("engine": {"cylinders": 4, "events_per_turn": 4, "reciprocations_per_turn": 2})");
    EXPECT_EQ(engineClass(report.claims).cycle, StrokeCycle::fourStroke);
}

TEST(ClaimsCheck, PointsForATorqueCurveCarryTheClaimedPower) {
    const auto points =
        claimedPoints(claimsOf(R"("figures": {"power": "90 kW", "power_speed": "3000 rpm",
                                "torque": "320 N·m", "torque_speed": "2000 rpm"})"));
    ASSERT_EQ(points.size(), 2u);
    EXPECT_NEAR(points[0].torque, 320.0, 1e-9);
    EXPECT_NEAR(points[1].torque * points[1].speed, 90e3, 1e-6);
}

} // namespace
} // namespace lobewright::study
