#include "core/claims/claims_units.h"

#include <gtest/gtest.h>

namespace lobewright::study {
namespace {

double si(const char* text, Dimension dimension) {
    const auto amount = parseAmount(text, dimension);
    EXPECT_TRUE(amount) << text << ": "
                        << (amount ? "" : amount.problems().front().message.english());
    return amount ? amount->si : 0.0;
}

std::string problem(const char* text, Dimension dimension) {
    const auto amount = parseAmount(text, dimension);
    EXPECT_FALSE(amount) << text;
    return amount ? "" : amount.problems().front().message.english();
}

// Factors as printed in NIST SP 811 (2008), appendix B.8, to its digits.
TEST(TradeUnits, FactorsAreThoseOfTheStandardsTables) {
    EXPECT_NEAR(si("1 hp", Dimension::power), 745.6999, 5e-5);      // horsepower (550 ft·lbf/s)
    EXPECT_NEAR(si("1 PS", Dimension::power), 735.4988, 5e-5);      // horsepower (metric)
    EXPECT_NEAR(si("1 lb·ft", Dimension::torque), 1.355818, 5e-7);  // pound-force foot
    EXPECT_NEAR(si("1 lb·in", Dimension::torque), 0.1129848, 5e-8); // pound-force inch
    EXPECT_NEAR(si("1 kgf·m", Dimension::torque), 9.80665, 1e-12);
    EXPECT_NEAR(si("1 cu in", Dimension::volume), 1.638706e-5, 5e-12); // cubic inch
    EXPECT_NEAR(si("1 psi", Dimension::pressure), 6894.757, 5e-4);
    EXPECT_NEAR(si("1 inHg", Dimension::pressure), 3386.389, 5e-4);
    EXPECT_NEAR(si("1 lb", Dimension::mass), 0.45359237, 1e-15);
    EXPECT_NEAR(si("1 lb/(hp·h)", Dimension::fuelConsumption), 1.689659e-7, 5e-14);
}

// A number ends with the text that was given, whatever stands behind it in memory.
TEST(TradeUnits, NumbersEndWithTheirText) {
    const std::string_view line = "1234";
    const auto amount = parseAmount(line.substr(0, 2), Dimension::fraction);
    ASSERT_TRUE(amount);
    EXPECT_EQ(amount->number, 12.0);
}

TEST(TradeUnits, SpellingsOfTheSameUnitAgree) {
    const double pound = si("100 lb·ft", Dimension::torque);
    for (const char* other : {"100 lb-ft", "100 ft·lb", "100 lbf.ft", "100lb ft", "100 FT-LB"}) {
        EXPECT_DOUBLE_EQ(si(other, Dimension::torque), pound) << other;
    }
    const double litres = si("1.8 L", Dimension::volume);
    for (const char* other : {"1800 cc", "1800 cm³", "1.8 litres", "1.8e3 ccm", "+1.8 l"}) {
        EXPECT_DOUBLE_EQ(si(other, Dimension::volume), litres) << other;
    }
    EXPECT_DOUBLE_EQ(si("90 bhp", Dimension::power), si("90 HP", Dimension::power));
    EXPECT_DOUBLE_EQ(si("90 CV", Dimension::power), si("90 PS", Dimension::power));
}

TEST(TradeUnits, SpeedsAndTemperaturesReachSi) {
    EXPECT_NEAR(si("3000 rpm", Dimension::speed), 314.15926535897931, 1e-12);
    EXPECT_NEAR(si("50 rev/s", Dimension::speed), 314.15926535897931, 1e-12);
    EXPECT_NEAR(si("25 °C", Dimension::temperature), 298.15, 1e-12);
    EXPECT_NEAR(si("77 °F", Dimension::temperature), 298.15, 1e-12);
    EXPECT_NEAR(si("38 %", Dimension::fraction), 0.38, 1e-15);
    EXPECT_NEAR(si("0.38", Dimension::fraction), 0.38, 1e-15);
}

TEST(TradeUnits, TurnsAMinuteAreReadAsAxesAndLeafletsWriteThem) {
    const double speed = si("3000 rpm", Dimension::speed);
    for (const char* other : {"3000 1/min", "3000 /min", "3000/min", "3000 U/min", "3000U/min",
                              "3000 rev/min", "3000 min-1", "3000 min⁻¹", "3e3 r/min"}) {
        EXPECT_DOUBLE_EQ(si(other, Dimension::speed), speed) << other;
    }
    // 3000 1/min without its space, or 30001 /min?
    EXPECT_NE(problem("30001/min", Dimension::speed).find("put a space"), std::string::npos);
    EXPECT_NE(problem("1 500 1/min", Dimension::speed).find("no thousands separators"),
              std::string::npos);
}

TEST(TradeUnits, SmallMIsNeverMega) {
    EXPECT_NE(problem("5 mW", Dimension::power), "");
    EXPECT_NE(problem("5 mPa", Dimension::pressure), "");
    EXPECT_DOUBLE_EQ(si("5 MW", Dimension::power), 5e6);
}

TEST(TradeUnits, ProblemsSayTheValueAndTheRule) {
    EXPECT_EQ(problem("300", Dimension::torque),
              "\"300\" has no unit; it must be a torque, e.g. \"300 N·m\"");
    EXPECT_EQ(problem("300 hp", Dimension::torque),
              "\"hp\" is a power, e.g. \"90 kW\"; it must be a torque, e.g. \"300 N·m\"");
    EXPECT_NE(problem("300 kv", Dimension::power).find("the nearest is \"kW\""), std::string::npos);
    EXPECT_NE(problem("1,500 rpm", Dimension::speed).find("no thousands separators"),
              std::string::npos);
    EXPECT_NE(problem("1 500 rpm", Dimension::speed).find("no thousands separators"),
              std::string::npos);
    for (const char* nonsense : {"", "   ", "fast", "nan kW", "inf kW", "1e999 kW", "- 5 kW"}) {
        EXPECT_NE(problem(nonsense, Dimension::power), "") << nonsense;
    }
}

TEST(TradeUnits, EverySymbolReadsBackAsItself) {
    for (const TradeUnit& unit : tradeUnits()) {
        const Amount one = amount(2.5, unit.symbol);
        const auto read = parseAmount(text(one), unit.dimension);
        ASSERT_TRUE(read) << unit.symbol;
        EXPECT_EQ(*read, one) << unit.symbol;
    }
}

} // namespace
} // namespace lobewright::study
