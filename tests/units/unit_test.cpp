#include "core/units/unit.h"

#include <gtest/gtest.h>

#include <set>
#include <string_view>

using namespace lobewright;

TEST(Units, SymbolsAreFoundAndNoneStandsTwice) {
    std::set<std::string_view> symbols;
    for (const Unit* unit : allUnits()) {
        EXPECT_TRUE(symbols.insert(unit->symbol).second) << unit->symbol;
        EXPECT_EQ(findUnit(unit->symbol), unit);
    }
    EXPECT_EQ(findUnit("furlong"), nullptr);
}

TEST(Units, ValuesComeBackAsTheyWereTyped) {
    for (const Unit* unit : allUnits()) {
        for (const double value : {0.1, 35.0, 82.55, 1234.567}) {
            EXPECT_EQ(fromSi(*unit, toSi(*unit, value)), value) << unit->symbol;
        }
    }
}

// NIST SP 811 (2008), appendix B.8: factors with seven digits.
TEST(Units, InchUnitsAgreeWithPublishedFactors) {
    const auto si = [](const Unit& unit, double shown) {
        return toSi(unit, (shown - unit.inchOffset) / unit.inchFactor);
    };
    EXPECT_NEAR(si(in::bar, 1.0), 6894.757, 5e-4);              // psi to Pa
    EXPECT_NEAR(si(in::MPa, 1.0), 6.894757e6, 0.5);             // ksi to Pa
    EXPECT_NEAR(si(in::N, 1.0), 4.448222, 5e-7);                // lbf to N
    EXPECT_NEAR(si(in::Nm, 1.0), 1.355818, 5e-7);               // lbf·ft to N·m
    EXPECT_NEAR(si(in::kW, 1.0), 745.6999, 5e-5);               // hp (550 ft·lbf/s) to W
    EXPECT_NEAR(si(in::kgm2, 1.0), 4.214011e-2, 5e-9);          // lb·ft² to kg·m²
    EXPECT_NEAR(si(in::cm3, 1.0), 1.638706e-5, 5e-12);          // in³ to m³
    EXPECT_NEAR(si(in::WPerM2K, 1.0), 5.678263, 5e-7);          // Btu/(h·ft²·°F) to W/(m²·K)
    EXPECT_NEAR(si(in::kJPerKg, 1.0), 2326.0, 5e-7);            // Btu/lb to J/kg
    EXPECT_NEAR(si(in::kelvin, 212.0), 373.15, 5e-7);           // °F to K
    EXPECT_NEAR(si(in::pascalSecond, 1.0), 6.894757e-3, 5e-10); // µreyn to Pa·s
}
