#include "core/claims/claims_keys.h"
#include "core/claims/claims_report.h"
#include "tests/claims/claims_text.h"
#include "tests/solution/solved_sample.h"

namespace lobewright::study {
namespace {

StatementRow rowOf(const std::string& engineAndFigures, const std::string& statement) {
    const std::string groups =
        engineAndFigures + R"(, "statements": [{"claim": "words", "source": "s", "date": "d", )" +
        statement + "}]";
    const ClaimsReport report = reportOf(groups);
    EXPECT_EQ(report.statements.size(), 1u);
    return report.statements.empty() ? StatementRow{} : report.statements.front();
}

constexpr const char* barrel =
    R"("engine": {"cylinders": 4, "events_per_turn": 8, "reciprocations_per_turn": 2,
                  "ignition": "spark", "displacement": "1.8 L", "fuel": "petrol"},
       "figures": {"power": "90 kW", "power_speed": "2400 rpm", "torque": "400 N·m"})";

TEST(Statements, StrokesAreCountedFromMotionAndEvents) {
    // 2·2/(8/4) = 2
    const auto two = rowOf(barrel, R"("kind": "strokes", "value": 2)");
    EXPECT_EQ(two.outcome, Outcome::agrees);
    EXPECT_EQ(two.confidence, Confidence::high);
    const auto one = rowOf(barrel, R"("kind": "strokes", "value": 1)");
    EXPECT_EQ(one.outcome, Outcome::disagrees);
    EXPECT_NE(one.arithmetic.english().find("= 2"), std::string::npos);
}

TEST(Statements, EventsAreCountedIndependentlyOfWhatIsClaimed) {
    const char* engine = R"("engine": {"cycle": "four-stroke", "cylinders": 6,
                                       "reciprocations_per_turn": 2})"; // 6·2/2 = 6
    EXPECT_EQ(rowOf(engine, R"("kind": "events-per-turn", "value": 6)").outcome, Outcome::agrees);
    EXPECT_EQ(rowOf(engine, R"("kind": "events-per-turn", "value": 12)").outcome,
              Outcome::disagrees);
    EXPECT_EQ(rowOf(engine, R"("kind": "events-per-chamber-and-turn", "value": 1)").outcome,
              Outcome::agrees);
}

TEST(Statements, NoBoostIsHeldAgainstTheAirThatThePowerNeeds) {
    // 0.0995482 kg/s/(1.8e-3·2·40·1.1684) = 0.592: a crankcase engine may do that
    EXPECT_EQ(rowOf(barrel, R"("kind": "boosted", "holds": false)").outcome, Outcome::agrees);
    // Three times the power needs 1.77 times the displacement
    const char* strong =
        R"("engine": {"cylinders": 4, "events_per_turn": 8, "reciprocations_per_turn": 2,
                      "displacement": "1.8 L", "fuel": "petrol"},
           "figures": {"power": "270 kW", "power_speed": "2400 rpm"})";
    const auto row = rowOf(strong, R"("kind": "boosted", "holds": false)");
    EXPECT_EQ(row.outcome, Outcome::disagrees);
    EXPECT_EQ(row.confidence, Confidence::medium);
    EXPECT_NE(row.overturnedBy.english().find("efficiency"), std::string::npos);
}

TEST(Statements, NoBoostIsHeldAgainstPressureAndDeliveryToo) {
    // The example of the program: bmep 2π·799.93/(2·1.8e-3) = 13.96 bar, above the 11 bar of tuned
    // two-strokes; the air alone, at 38 %, would pass.
    const char* example =
        R"("engine": {"cylinders": 4, "events_per_turn": 8, "reciprocations_per_turn": 2,
                      "ignition": "spark", "displacement": "1.8 L", "fuel": "petrol"},
           "figures": {"power": "260 hp", "power_speed": "2400 rpm", "torque": "590 lb·ft",
                       "efficiency": "38 %"})";
    const auto denied = rowOf(example, R"("kind": "boosted", "holds": false)");
    EXPECT_EQ(denied.outcome, Outcome::disagrees);
    EXPECT_NE(denied.computed.english().find(
                  "at peak torque is 14 bar: more than engines reach without boost"),
              std::string::npos)
        << denied.computed.english();
    EXPECT_NE(denied.computed.english().find("a blower has to deliver it"), std::string::npos);
    EXPECT_EQ(rowOf(example, R"("kind": "boosted", "holds": true)").outcome, Outcome::agrees);
    // 145 kW at 30 %: charging 0.953, delivery 1.19, bmep 145e3/(1.8e-3·2·40) = 10.07 bar: nothing
    // excludes it, but ports lose a fifth of what they get.
    const char* between =
        R"("engine": {"cylinders": 4, "events_per_turn": 8, "reciprocations_per_turn": 2,
                      "ignition": "spark", "displacement": "1.8 L", "fuel": "petrol"},
           "figures": {"power": "145 kW", "power_speed": "2400 rpm"})";
    EXPECT_EQ(rowOf(between, R"("kind": "boosted", "holds": false)").outcome, Outcome::doubtful);
    EXPECT_EQ(name(Outcome::doubtful).text, std::string("doubtful"));
}

TEST(Statements, ExhaustLeadLeavesTheForceThatTheHandbookFigureSays) {
    // Equal masses, 6° of lead, two lobes: 2·sin(6°) = 0.209057 of one piston's force.
    const auto row = rowOf(barrel, R"("kind": "balanced", "holds": true, "exhaust_lead": "6 °",
                                      "inlet_piston_mass": "0.6 kg",
                                      "exhaust_piston_mass": "600 g")");
    EXPECT_EQ(row.outcome, Outcome::disagrees);
    EXPECT_EQ(row.confidence, Confidence::high);
    EXPECT_NE(row.arithmetic.english().find("0.2091"), std::string::npos)
        << row.arithmetic.english();
    const auto still = rowOf(barrel, R"("kind": "balanced", "exhaust_lead": "0 °",
                                        "inlet_piston_mass": "0.6 kg",
                                        "exhaust_piston_mass": "0.6 kg")");
    EXPECT_EQ(still.outcome, Outcome::agrees);
    EXPECT_EQ(rowOf(barrel, R"("kind": "balanced")").outcome, Outcome::open);
}

TEST(Statements, TimesAUsualEngineIsComparedWithTheBand) {
    // 90/1.8 = 50 kW/L against 20 … 60 kW/L: 0.83 … 2.5 times
    const std::string start = R"("kind": "times-usual", "measure": "power-per-displacement", )";
    EXPECT_EQ(rowOf(barrel, start + R"("value": 2)").outcome, Outcome::agrees);
    EXPECT_EQ(rowOf(barrel, start + R"("value": 4)").outcome, Outcome::disagrees);
    // 2 cycles a turn by ½
    EXPECT_EQ(
        rowOf(barrel, R"("kind": "times-usual", "measure": "power-strokes", "value": 4)").outcome,
        Outcome::agrees);
    EXPECT_EQ(rowOf(barrel, R"("kind": "times-usual", "value": 4)").outcome, Outcome::open);
}

// Two lobes give two power strokes a chamber and turn, a two-stroke on a crank one.
TEST(Statements, PowerStrokesAreComparedWithTheReferenceEngine) {
    const std::string twice = R"("kind": "times-usual", "measure": "power-strokes", "value": 2)";
    const auto open = rowOf(barrel, twice);
    EXPECT_EQ(open.outcome, Outcome::agrees);
    EXPECT_NE(open.computed.english().find("4 times the power strokes of a four-stroke"),
              std::string::npos);
    EXPECT_NE(open.computed.english().find("2 times those of a two-stroke"), std::string::npos);
    EXPECT_EQ(rowOf(barrel, twice + R"(, "usual_engine": "two-stroke")").outcome, Outcome::agrees);
    EXPECT_EQ(rowOf(barrel, twice + R"(, "usual_engine": "four-stroke")").outcome,
              Outcome::disagrees);
}

TEST(Statements, StrokesFollowFromTheCycleAlone) {
    const char* engine = R"("engine": {"cycle": "two-stroke"})";
    EXPECT_EQ(rowOf(engine, R"("kind": "strokes", "value": 1)").outcome, Outcome::disagrees);
    EXPECT_EQ(rowOf(engine, R"("kind": "strokes", "value": 2)").outcome, Outcome::agrees);
}

TEST(Statements, AnEvenFiringIntervalIsTheTurnByThePowerStrokes) {
    // 4 chambers with 8 power strokes a turn: 45°
    EXPECT_EQ(rowOf(barrel, R"("kind": "firing-interval", "interval": "45 deg")").outcome,
              Outcome::agrees);
    EXPECT_EQ(rowOf(barrel, R"("kind": "firing-interval", "interval": "90 deg")").outcome,
              Outcome::disagrees);
}

TEST(Statements, TorqueAtLowSpeedIsJudgedByItsPressure) {
    // 2π·250/(2·1.8e-3) = 4.36 bar, a small two-stroke's; 500 N·m: 8.73 bar, a racing one's
    EXPECT_EQ(rowOf(barrel, R"("kind": "low-speed-torque", "torque": "250 N·m")").outcome,
              Outcome::agrees);
    EXPECT_NE(rowOf(barrel, R"("kind": "low-speed-torque", "torque": "900 N·m")").outcome,
              Outcome::agrees);
}

TEST(Statements, EachKindHasItsOwnKeysOnly) {
    int value = 0, lead = 0;
    for (const auto& key : statementKeys()) {
        value += key.name == "value" && belongsTo(key, StatementKind::balanced) ? 1 : 0;
        lead += key.name == "exhaust_lead" && belongsTo(key, StatementKind::balanced) ? 1 : 0;
        EXPECT_EQ(key.name == "claim" || key.name == "source" || key.name == "date" ||
                      key.name == "kind",
                  belongsTo(key, StatementKind::other))
            << key.name;
    }
    EXPECT_EQ(value, 0);
    EXPECT_EQ(lead, 1);
}

// Opposed pistons stand and move on two strokes each: 4·80 mm = 320 mm; one piston on
// 2·80 mm. Both up to the rounding of figures.
TEST(Statements, LengthIsHeldAgainstStrokesAndPistons) {
    const auto outcome = [](const char* pistons, const char* length) {
        return rowOf(R"("engine": {"cylinders": 3, "stroke": "80 mm", "pistons": )" +
                         std::string(pistons) + "}",
                     R"("kind": "size", "length": ")" + std::string(length) + R"(")");
    };
    EXPECT_EQ(outcome("6", "290 mm").outcome, Outcome::disagrees);
    EXPECT_EQ(outcome("6", "322 mm").outcome, Outcome::open);
    EXPECT_EQ(outcome("3", "145 mm").outcome, Outcome::disagrees);
    EXPECT_EQ(outcome("3", "162 mm").outcome, Outcome::open);
}

// The open design is the engine claimed: balance and boost are answered from it.
TEST(Statements, AreAnsweredFromTheOpenDesignOfTheSameEngine) {
    const auto solved = lobewright::test::solved(lobewright::test::sample("biogas-pump-set"));
    const auto claimsWith = [](const char* engine) {
        return claimsOf(std::string(R"("engine": )") + engine + R"(,
            "statements": [
              {"claim": "Perfectly balanced", "kind": "balanced", "holds": true},
              {"claim": "Without a blower", "kind": "boosted", "holds": false},
              {"claim": "Fits a bucket", "kind": "size", "diameter": "200 mm"}])");
    };
    const auto same = claimsWith(
        R"({"cycle": "two-stroke", "cylinders": 3, "reciprocations_per_turn": 2, "bore": "58 mm"})");
    ASSERT_TRUE(isSameEngine(same, solved));
    const ClaimsReport report = checkClaims(same, &solved);
    // 2·sin(5°) of the equal part, and the masses 0.78 and 0.82 kg differ: not perfectly.
    EXPECT_EQ(report.statements[0].outcome, Outcome::disagrees);
    EXPECT_EQ(report.statements[1].outcome, Outcome::disagrees) << "supplied at 1.08 bar";
    EXPECT_EQ(report.statements[2].outcome, Outcome::disagrees) << "2·104 + 58 = 266 mm";
    EXPECT_EQ(checkClaims(same).statements[0].outcome, Outcome::open);

    const auto other = claimsWith(R"({"cycle": "two-stroke", "cylinders": 4, "bore": "58 mm"})");
    EXPECT_FALSE(isSameEngine(other, solved));
    EXPECT_EQ(checkClaims(other, &solved).statements[0].outcome, Outcome::open);
}

// Lobes not said: a reading for one lobe and for two, none of them the figure.
TEST(Findings, StandSideBySideWhereTheNumberOfLobesIsOpen) {
    const ClaimsReport report = reportOf(R"("engine": {"cycle": "two-stroke", "drive": "cam-track",
        "displacement": "2 L"}, "figures": {"torque": "300 N·m"})");
    const Finding* pressure = report.finding("mean-effective-pressure-at-torque");
    ASSERT_NE(pressure, nullptr);
    ASSERT_EQ(pressure->readings.size(), 2U);
    // 2π·300/(1·0.002) = 9.42 bar
    EXPECT_NEAR(pressure->readings[0].value, 9.42478, 1e-4);
    EXPECT_NEAR(pressure->readings[1].value, 4.71239, 1e-4);
    EXPECT_NE(claimsText(report).find("2 lobes: 4.7124 bar"), std::string::npos);
}

TEST(Findings, FrictionBeyondItsFitIsARange) {
    const ClaimsReport report = reportOf(R"("engine": {"cycle": "two-stroke",
        "reciprocations_per_turn": 4, "displacement": "2 L"},
        "figures": {"power": "60 kW", "power_speed": "3000 rpm"})");
    const Finding* pressure = report.finding("indicated-pressure-at-power");
    ASSERT_NE(pressure, nullptr);
    ASSERT_EQ(pressure->readings.size(), 2U);
    // 12,000 reciprocations a minute; the fit ends at 7,000: 0.97 + 1.05 + 2.45 = 4.47 bar, and
    // 0.97 + 1.8 + 7.2 = 9.97 bar extended
    EXPECT_NEAR(pressure->readings[1].value - pressure->readings[0].value, 9.97 - 4.47, 1e-9);
}

TEST(Statements, TorqueIsComparedATurnAndACycle) {
    // bmep 2π·400/(2·1.8e-3) = 6.98 bar; a turn and displacement ·4 = 27.9 bar of a four-stroke
    const auto row =
        rowOf(barrel, R"("kind": "times-usual", "measure": "torque-per-displacement", "value": 3)");
    EXPECT_EQ(row.outcome, Outcome::agrees);
    EXPECT_NE(row.computed.english().find("Per cycle and displacement"), std::string::npos);
}

TEST(Statements, EveryKindHasARowWithoutAnyNumberGiven) {
    for (const char* kind :
         {"strokes", "events-per-chamber-and-turn", "events-per-turn", "boosted", "balanced",
          "times-usual", "other", "firing-interval", "compression-range", "size", "friction",
          "low-speed-torque", "oil-consumption"}) {
        const auto row = rowOf(R"("notes": "")", std::string(R"("kind": ")") + kind + R"(")");
        EXPECT_EQ(row.outcome, Outcome::open) << kind;
        EXPECT_EQ(row.confidence, Confidence::low) << kind;
        EXPECT_FALSE(row.computed.empty()) << kind;
        EXPECT_FALSE(row.overturnedBy.empty()) << kind;
        EXPECT_EQ(row.statement.source, "s");
    }
}

} // namespace
} // namespace lobewright::study
