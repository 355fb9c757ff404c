#include "tests/claims/claims_text.h"

namespace lobewright::study {
namespace {

std::string powerTorqueSpeed(const std::string& speed) {
    return R"("figures": {"power": "200 kW", "torque": "500 N·m", "power_speed": ")" + speed +
           R"("})";
}

// 200e3/(2π·500)·60 = 3819.7186 rpm is the lowest speed that fits.
TEST(Conflicts, QuotedSpeedBelowPowerByTorqueIsImpossible) {
    const auto report = reportOf(powerTorqueSpeed("3000 rpm"));
    const Conflict* found = conflict(report, Verdict::contradictory, "/figures/power_speed");
    ASSERT_NE(found, nullptr);
    EXPECT_NE(found->message.english().find("Impossible"), std::string::npos);
    EXPECT_NE(found->arithmetic.english().find("3819.7"), std::string::npos);
}

TEST(Conflicts, EqualPeaksAreImplausibleUpToFivePerCent) {
    const auto at = [](const std::string& speed, Verdict verdict) {
        return conflict(reportOf(powerTorqueSpeed(speed)), verdict, "/figures/power_speed") !=
               nullptr;
    };
    EXPECT_TRUE(at("3781 rpm", Verdict::contradictory)); // 0.99·3819.72 = 3781.52
    EXPECT_TRUE(at("3782 rpm", Verdict::implausible));
    EXPECT_TRUE(at("3900 rpm", Verdict::implausible));
    EXPECT_TRUE(at("4010 rpm", Verdict::implausible)); // 1.05·3819.72 = 4010.70
    EXPECT_FALSE(at("4011 rpm", Verdict::implausible));
    EXPECT_FALSE(at("4011 rpm", Verdict::contradictory));
}

// The example of the program: 260 hp = 193.882 kW at 2400 rpm, 590 lb·ft = 799.933 N·m at 1600 rpm.
// 193882/(2π·40) = 771.431 N·m is 3.56 % below 799.933 N·m: a flat curve and no contradiction.
TEST(Conflicts, AFlatTorqueCurveIsToldAndNotCondemned) {
    const auto report = reportOf(R"("figures": {"power": "260 hp", "power_speed": "2400 rpm",
                                                "torque": "590 lb·ft", "torque_speed": "1600 rpm"})");
    EXPECT_TRUE(report.conflicts.empty());
    const Finding* there = report.finding("torque-at-power");
    ASSERT_NE(there, nullptr);
    EXPECT_NE(there->note.english().find("torque would fall only 3.6 % from 1600 to 2400 rpm"),
              std::string::npos)
        << there->note.english();
    // 100 kW at 3000 rpm is 318.3 N·m, 36.3 % below 500 N·m: nothing "only" about it.
    const auto steep = reportOf(R"("figures": {"power": "100 kW", "power_speed": "3000 rpm",
                                               "torque": "500 N·m", "torque_speed": "1800 rpm"})");
    EXPECT_NE(
        steep.finding("torque-at-power")->note.english().find("would fall 36 % from 1800 to 3000"),
        std::string::npos)
        << steep.finding("torque-at-power")->note.english();
}

TEST(Conflicts, PeaksThatReallyStandTogetherAreImplausible) {
    const auto at = [](const std::string& torqueSpeed) {
        return reportOf(R"("figures": {"power": "200 kW", "torque": "500 N·m",
                                       "power_speed": "3900 rpm", "torque_speed": ")" +
                        torqueSpeed + R"("})");
    };
    // 3900/3750 = 1.04; 3900/3600 = 1.083
    const auto near = at("3750 rpm");
    const Conflict* found = conflict(near, Verdict::implausible, "/figures/torque_speed");
    ASSERT_NE(found, nullptr);
    EXPECT_NE(found->message.english().find("within 5 % of each other"), std::string::npos);
    EXPECT_TRUE(at("3600 rpm").conflicts.empty());
}

TEST(Conflicts, TorquePeakMayNotExceedTheHighestPower) {
    // 2π·(4000/60)·500 = 209.44 kW > 200 kW
    const auto report = reportOf(R"("figures": {"power": "200 kW", "torque": "500 N·m",
                                                "torque_speed": "4000 rpm"})");
    const Conflict* found = conflict(report, Verdict::contradictory, "/figures/torque_speed");
    ASSERT_NE(found, nullptr);
    EXPECT_NE(found->arithmetic.english().find("209.44"), std::string::npos);
}

TEST(Conflicts, PowerPeakMayNotStandBelowTheTorquePeak) {
    const auto report = reportOf(
        R"("figures": {"power_speed": "2000 rpm", "torque_speed": "40 rev/s"})"); // 2400 rpm
    EXPECT_NE(conflict(report, Verdict::contradictory, "/figures/torque_speed"), nullptr);
}

TEST(Conflicts, SpeedsStayBelowTheHighestSpeed) {
    const auto report =
        reportOf(R"("figures": {"power_speed": "6000 rpm", "maximum_speed": "5500 rpm"})");
    EXPECT_NE(conflict(report, Verdict::contradictory, "/figures/maximum_speed"), nullptr);
}

TEST(Conflicts, DisplacementMustBeThatOfThePistons) {
    // 6·115.81167 cm³ = 694.87 cm³, not 800
    const std::string engine = R"("engine": {"pistons": 6, "bore": "64 mm", "stroke": "36 mm",
                                             "displacement": ")";
    EXPECT_NE(
        conflict(reportOf(engine + R"(800 cc"})"), Verdict::contradictory, "/engine/displacement"),
        nullptr);
    EXPECT_TRUE(reportOf(engine + R"(695 cc"})").conflicts.empty());
}

TEST(Conflicts, UnknownPistonsAllowOneOrTwoAChamber) {
    const std::string engine = R"("engine": {"cylinders": 3, "bore": "64 mm", "stroke": "36 mm",
                                             "displacement": ")";
    EXPECT_TRUE(reportOf(engine + R"(347 cc"})").conflicts.empty());
    EXPECT_TRUE(reportOf(engine + R"(695 cc"})").conflicts.empty());
    EXPECT_FALSE(reportOf(engine + R"(500 cc"})").conflicts.empty());
}

TEST(Conflicts, PowerStrokesMustFitChambersLobesAndCycle) {
    // 4 chambers·2 reciprocations/2 = 4 a turn, not 8
    const auto report =
        reportOf(R"("engine": {"cycle": "four-stroke", "cylinders": 4, "events_per_turn": 8,
                               "reciprocations_per_turn": 2})");
    const Conflict* found = conflict(report, Verdict::contradictory, "/engine/events_per_turn");
    ASSERT_NE(found, nullptr);
    EXPECT_NE(found->arithmetic.english().find("= 4 per revolution"), std::string::npos);
    EXPECT_TRUE(reportOf(R"("engine": {"cycle": "two-stroke", "cylinders": 4,
                                       "events_per_turn": 8, "reciprocations_per_turn": 2})")
                    .conflicts.empty());
}

TEST(Conflicts, ACrankGivesNoMoreThanItsTurns) {
    const auto report = reportOf(
        R"("engine": {"cycle": "two-stroke", "drive": "crank", "reciprocations_per_turn": 3})");
    EXPECT_NE(conflict(report, Verdict::contradictory, "/engine/drive"), nullptr);
    const auto events = reportOf(
        R"("engine": {"cycle": "four-stroke", "drive": "crank", "cylinders": 4,
                      "events_per_turn": 4})"); // four chambers fire twice a turn
    EXPECT_NE(conflict(events, Verdict::contradictory, "/engine/events_per_turn"), nullptr);
}

TEST(Conflicts, ThreePistonsAChamberAreImplausible) {
    EXPECT_NE(conflict(reportOf(R"("engine": {"cylinders": 2, "pistons": 6})"),
                       Verdict::implausible, "/engine/pistons"),
              nullptr);
}

TEST(Conflicts, WorkCannotExceedTheFuel) {
    EXPECT_NE(conflict(reportOf(R"("figures": {"efficiency": "105 %"})"), Verdict::contradictory,
                       "/figures/efficiency"),
              nullptr);
    // 3.6e6/(0.080·44e6) = 1.0227
    EXPECT_NE(conflict(reportOf(R"("engine": {"fuel": "petrol"},
                                   "figures": {"fuel_consumption": "80 g/kWh"})"),
                       Verdict::contradictory, "/figures/fuel_consumption"),
              nullptr);
    // The fuel is only assumed: it may have been another.
    EXPECT_NE(conflict(reportOf(R"("figures": {"fuel_consumption": "80 g/kWh"})"),
                       Verdict::implausible, "/figures/fuel_consumption"),
              nullptr);
}

TEST(Conflicts, EfficiencyBeyondPistonEnginesIsContradictory) {
    const auto stated = [](const std::string& efficiency) {
        return reportOf(R"("figures": {"efficiency": ")" + efficiency + R"("})");
    };
    const auto report = stated("81.8 %");
    const Conflict* found = conflict(report, Verdict::contradictory, "/figures/efficiency");
    ASSERT_NE(found, nullptr);
    EXPECT_NE(found->message.english().find("own estimate"), std::string::npos);
    EXPECT_EQ(report.finding("efficiency")->verdict, Verdict::contradictory);
    EXPECT_TRUE(stated("60 %").conflicts.empty());
    EXPECT_NE(conflict(stated("60.5 %"), Verdict::contradictory, "/figures/efficiency"), nullptr);
    // 3.6e6/(0.100·44e6) = 0.8182; with a fuel that is only assumed it may have been another.
    const std::string petrol = R"("engine": {"fuel": "petrol"}, )";
    const std::string spent = R"("figures": {"fuel_consumption": "100 g/kWh"})";
    EXPECT_NE(
        conflict(reportOf(petrol + spent), Verdict::contradictory, "/figures/fuel_consumption"),
        nullptr);
    EXPECT_NE(conflict(reportOf(spent), Verdict::implausible, "/figures/fuel_consumption"),
              nullptr);
}

TEST(Conflicts, EfficiencyAndConsumptionBelongTogether) {
    // 250 g/kWh of diesel are 33.88 %
    const std::string start = R"("engine": {"fuel": "diesel"},
                                 "figures": {"fuel_consumption": "250 g/kWh", "efficiency": ")";
    EXPECT_NE(
        conflict(reportOf(start + R"(42 %"})"), Verdict::contradictory, "/figures/efficiency"),
        nullptr);
    EXPECT_TRUE(reportOf(start + R"(34 %"})").conflicts.empty());
}

TEST(Conflicts, BoostAndChargePressureBelongTogether) {
    EXPECT_NE(conflict(reportOf(R"("engine": {"charging": "naturally-aspirated",
                                              "charge_pressure": "1.8 bar"})"),
                       Verdict::contradictory, "/engine/charge_pressure"),
              nullptr);
    EXPECT_NE(conflict(reportOf(R"("engine": {"charging": "boosted",
                                              "charge_pressure": "0.8 bar"})"),
                       Verdict::contradictory, "/engine/charge_pressure"),
              nullptr);
}

// 1 bar is the ambient that is assumed: neither boost nor, within rounding, above it.
TEST(Conflicts, ChargeAtAmbientPressureIsNoBoost) {
    const auto clashes = [](const std::string& charging) {
        return conflict(reportOf(R"("engine": {"charging": ")" + charging +
                                 R"(", "charge_pressure": "1 bar"},
                                   "conditions": {"air_pressure": "1 bar"})"),
                        Verdict::contradictory, "/engine/charge_pressure") != nullptr;
    };
    EXPECT_FALSE(clashes("naturally-aspirated"));
    EXPECT_TRUE(clashes("boosted"));
}

TEST(Conflicts, GivenPressureMustFollowFromTorque) {
    // 4π·165/1.998e-3 = 10.378 bar
    const std::string start =
        R"("engine": {"cycle": "four-stroke", "drive": "crank", "displacement": "1998 cc"},
           "figures": {"torque": "165 N·m", "mean_effective_pressure": ")";
    EXPECT_NE(conflict(reportOf(start + R"(14 bar"})"), Verdict::contradictory,
                       "/figures/mean_effective_pressure"),
              nullptr);
    EXPECT_TRUE(reportOf(start + R"(10.4 bar"})").conflicts.empty());
}

TEST(Conflicts, GivenPistonSpeedMustFollowFromTheStroke) {
    const auto report = reportOf( // 2·0.07·100 = 14 m/s
        R"("engine": {"drive": "crank", "stroke": "70 mm"},
           "figures": {"maximum_speed": "6000 rpm", "mean_piston_speed": "10 m/s"})");
    EXPECT_NE(conflict(report, Verdict::contradictory, "/figures/mean_piston_speed"), nullptr);
}

TEST(Conflicts, AnAssumptionContradictsNobody) {
    // Without lobes or a crank the cycles a turn are assumed; the figure may well be right.
    const auto report = reportOf(R"("engine": {"cycle": "two-stroke", "displacement": "1 L"},
                    "figures": {"torque": "300 N·m", "mean_effective_pressure": "9.4 bar"})");
    EXPECT_TRUE(report.conflicts.empty());
}

TEST(Conflicts, AirThatIsAllVapourIsNamed) {
    const auto report = reportOf(R"("figures": {"power": "50 kW"},
                    "conditions": {"air_pressure": "20 kPa", "air_temperature": "80 °C",
                                   "relative_humidity": "100 %"})"); // 47 kPa of vapour at 80 °C
    EXPECT_NE(conflict(report, Verdict::contradictory, "/conditions/relative_humidity"), nullptr);
    EXPECT_EQ(report.finding("corrected-power"), nullptr);
}

} // namespace
} // namespace lobewright::study
