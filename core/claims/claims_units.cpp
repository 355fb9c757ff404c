#include "core/claims/claims_units.h"

#include "core/design/nearest.h"
#include "core/enum_table.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <charconv>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::study {

namespace {

constexpr double standardGravity = 9.80665; // [m/s²], exact [CGPM 1901]
constexpr double pound = 0.45359237;        // [kg], exact [international yard and pound 1959]
constexpr double inch = 0.0254;             // [m], exact [same]
constexpr double foot = 12.0 * inch;        // [m]
constexpr double poundForce = pound * standardGravity; // [N]
constexpr double litre = 1e-3;                         // [m³], exact [CGPM 1964]
constexpr double atmosphere = 101325.0;                // [Pa], exact [CGPM 1954]

/// Weight of conventional mercury [N/m³].
constexpr double mercury = 13595.1 * standardGravity;

constexpr std::string_view si = siUnit;
constexpr std::string_view yardPound =
    "1 in = 0.0254 m, 1 lb = 0.45359237 kg (international yard and pound, 1959)";
constexpr std::string_view yardPoundGravity =
    "1 lb = 0.45359237 kg, 1 in = 0.0254 m (1959), g = 9.80665 m/s² (CGPM 1901)";

constexpr std::string_view mercuryColumn = "conventional mercury, 13 595.1 kg/m³, g = 9.80665 m/s²";

std::vector<TradeUnit> makeUnits() {
    using enum Dimension;
    return {
        {"kW", power, 1e3, si, {"kilowatt", "kilowatts"}},
        {"W", power, 1.0, si, {"watt", "watts"}},
        {"MW", power, 1e6, si, {"megawatt", "megawatts"}},
        {"hp", power, 550.0 * foot * poundForce, "550 ft·lbf/s", {"bhp", "horsepower", "hp(i)"}},
        {"PS",
         power,
         75.0 * standardGravity,
         "75 kgf·m/s, g = 9.80665 m/s²",
         {"cv", "ch", "pk", "metrichp", "hp(m)"}},
        {"N·m", torque, 1.0, si, {"nm", "newtonmetre", "newtonmetres"}},
        {"kN·m", torque, 1e3, si, {"knm"}},
        {"lb·ft",
         torque,
         poundForce * foot,
         yardPoundGravity,
         {"lbft", "ftlb", "lbfft", "ftlbf", "lb-ft", "ft-lb", "lbf-ft", "ft-lbf"}},
        {"lb·in",
         torque,
         poundForce * inch,
         yardPoundGravity,
         {"lbin", "inlb", "lbfin", "inlbf", "lb-in", "in-lb"}},
        {"kgf·m",
         torque,
         standardGravity,
         "g = 9.80665 m/s²",
         {"kgfm", "mkgf", "kgm", "mkg", "kpm"}},
        {"rpm",
         speed,
         units::revPerMinute,
         "2π/60 rad/s",
         {"rev/min", "r/min", "1/min", "/min", "min-1", "min⁻¹", "u/min", "upm"}},
        {"rev/s", speed, 2.0 * units::pi, "2π rad/s", {"r/s", "rps", "hz"}},
        {"rad/s", speed, 1.0, si},
        {"L",
         volume,
         litre,
         "1 dm³ (CGPM 1964)",
         {"litre", "litres", "liter", "liters", "ltr", "dm3", "dm³"}},
        {"cc", volume, 1e-6, si, {"cm3", "cm³", "ccm", "ml"}},
        {"m³", volume, 1.0, si, {"m3"}},
        {"cu in",
         volume,
         inch * inch * inch,
         yardPound,
         {"cuin", "in3", "in³", "cid", "ci", "cubicinch", "cubicinches"}},
        {"mm", length, 1e-3, si, {"millimetre", "millimetres"}},
        {"cm", length, 1e-2, si, {"centimetre", "centimetres"}},
        {"m", length, 1.0, si, {"metre", "metres"}},
        {"in", length, inch, yardPound, {"inch", "inches", "\""}},
        {"kg", mass, 1.0, si, {"kilogram", "kilograms"}},
        {"g", mass, 1e-3, si, {"gram", "grams"}},
        {"t", mass, 1e3, si, {"tonne", "tonnes"}},
        {"lb", mass, pound, yardPound, {"lbs", "pound", "pounds"}},
        {"bar", pressure, 1e5, si},
        {"kPa", pressure, 1e3, si},
        {"MPa", pressure, 1e6, si},
        {"Pa", pressure, 1.0, si},
        {"mbar", pressure, 1e2, si, {"hpa"}},
        {"atm", pressure, atmosphere, "101 325 Pa (CGPM 1954)"},
        {"psi",
         pressure,
         poundForce / (inch * inch),
         yardPoundGravity,
         {"lb/in2", "lbf/in2", "psia"}},
        {"mmHg", pressure, mercury * 1e-3, mercuryColumn},
        {"inHg", pressure, mercury * inch, mercuryColumn, {"in-hg"}},
        {"K", temperature, 1.0, si, {"kelvin"}},
        {"°C", temperature, 1.0, "t + 273.15 K", {"c", "degc"}, 273.15},
        {"°F", temperature, 5.0 / 9.0, "(t + 459.67)·5/9 K", {"f", "degf"}, 459.67},
        {"m/s", velocity, 1.0, si, {"metre/s", "mps"}},
        {"ft/min", velocity, foot / 60.0, yardPound, {"fpm"}},
        {"ft/s", velocity, foot, yardPound, {"fps"}},
        {"g/kWh", fuelConsumption, 1e-3 / 3.6e6, si, {"g/(kwh)", "g/kw-h"}},
        {"lb/(hp·h)",
         fuelConsumption,
         pound / (550.0 * foot * poundForce * 3600.0),
         yardPoundGravity,
         {"lb/hph", "lb/hp-h", "lb/hp/h", "lb/(hph)", "lb/bhph", "lb/bhp-h"}},
        {"°", angle, units::degree, "π/180 rad", {"deg", "degree", "degrees"}},
        {"rad", angle, 1.0, si},
        {"%", fraction, 1e-2, "1/100", {"percent", "percents"}}};
}

/// Lower case, without spaces, dots and middle dots.
std::string folded(std::string_view spelling) {
    constexpr std::string_view middleDot = "·";
    std::string plain;
    for (std::size_t i = 0; i < spelling.size(); ++i) {
        if (spelling.substr(i, middleDot.size()) == middleDot) {
            i += middleDot.size() - 1;
            continue;
        }
        const char c = spelling[i];
        if (c != ' ' && c != '.' && c != '*' && c != '\t') {
            plain += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
        }
    }
    return plain;
}

const TradeUnit* findTradeUnit(std::string_view spelling) {
    const auto all = tradeUnits();
    const auto exact = std::ranges::find(all, spelling, &TradeUnit::symbol);
    if (exact != all.end()) {
        return &*exact;
    }
    const std::string plain = folded(spelling);
    // A small m is milli: read as mega it would be wrong by 1e9.
    const bool isMilli = spelling.starts_with('m') && (plain == "mw" || plain == "mpa");
    const auto alike = std::ranges::find_if(all, [&](const TradeUnit& unit) {
        return folded(unit.symbol) == plain ||
               std::ranges::find(unit.spoken, plain) != unit.spoken.end();
    });
    return alike == all.end() || isMilli ? nullptr : &*alike;
}

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos) {
        return {};
    }
    return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

std::string knownSymbols(Dimension dimension) {
    std::string list;
    for (const TradeUnit& unit : tradeUnits()) {
        if (unit.dimension == dimension) {
            list += fmt::format("{}{}", list.empty() ? "" : ", ", unit.symbol);
        }
    }
    return list;
}

Problem unknownUnit(std::string_view spelling, Dimension dimension) {
    std::vector<std::string> symbols;
    for (const TradeUnit& unit : tradeUnits()) {
        if (unit.dimension == dimension) {
            symbols.emplace_back(unit.symbol);
        }
    }
    return {"",
            Message(LW_TEXT("\"%1\" is not a unit known here; the nearest is \"%2\"; known: %3"),
                    spelling.substr(0, 40), design::nearest(spelling, symbols),
                    knownSymbols(dimension))};
}

} // namespace

TextId describe(Dimension dimension) {
    return entryOf<Dimension::fraction>(
        {LW_TEXT("a power, e.g. \"90 kW\""), LW_TEXT("a torque, e.g. \"300 N·m\""),
         LW_TEXT("a shaft speed, e.g. \"2400 rpm\""), LW_TEXT("a volume, e.g. \"1.8 L\""),
         LW_TEXT("a length, e.g. \"64 mm\""), LW_TEXT("a mass, e.g. \"85 kg\""),
         LW_TEXT("a pressure, e.g. \"1.5 bar\""), LW_TEXT("a temperature, e.g. \"25 °C\""),
         LW_TEXT("a velocity, e.g. \"12 m/s\""), LW_TEXT("a fuel consumption, e.g. \"250 g/kWh\""),
         LW_TEXT("an angle, e.g. \"6 °\""), LW_TEXT("a number or a percentage, e.g. \"30 %\"")},
        dimension);
}

std::string_view siSymbol(Dimension dimension) {
    return entryOf<Dimension::fraction>(
        {"W", "N·m", "rad/s", "m³", "m", "kg", "Pa", "K", "m/s", "kg/J", "rad", ""}, dimension);
}

std::span<const TradeUnit> tradeUnits() {
    static const std::vector<TradeUnit> units = makeUnits();
    return units;
}

const TradeUnit& shownUnit(Dimension dimension) {
    const auto all = tradeUnits();
    const auto first = std::ranges::find(all, dimension, &TradeUnit::dimension);
    assert(first != all.end());
    return *first;
}

Amount amount(double number, std::string_view symbol) {
    if (symbol.empty()) {
        return {number, "", number};
    }
    const TradeUnit* unit = findTradeUnit(symbol);
    assert(unit != nullptr);
    return {number, std::string(unit->symbol), (number + unit->offset) * unit->factor};
}

std::string text(const Amount& amount) {
    return amount.unit.empty() ? fmt::format("{}", amount.number)
                               : fmt::format("{} {}", amount.number, amount.unit);
}

Result<Amount> parseAmount(std::string_view given, Dimension dimension) {
    const std::string_view words = trimmed(given);
    const std::string_view digits = words.starts_with('+') ? words.substr(1) : words;
    double number = 0.0;
    const auto [end, error] = std::from_chars(digits.data(), digits.data() + digits.size(), number);
    if (error != std::errc{} || !std::isfinite(number)) {
        return Problem{"", Message(LW_TEXT("\"%1\" does not begin with a number; it must be %2"),
                                   words.substr(0, 40), describe(dimension))};
    }
    const auto used = static_cast<std::size_t>(end - digits.data());
    const std::string_view rest = trimmed(digits.substr(used));
    const char next = rest.empty() ? ' ' : rest.front();
    if (next == '/' && digits[used - 1] == '1' && digits[used] == '/') {
        return Problem{"", Message(LW_TEXT("\"%1\" could be read in two ways; put a space between "
                                           "the number and its unit"),
                                   words.substr(0, 40))};
    }
    // The unit may itself begin with a digit, as 1/min does.
    const TradeUnit* unit = findTradeUnit(rest);
    if (unit == nullptr && (next == ',' || next == '\'' || (next >= '0' && next <= '9'))) {
        return Problem{"", Message(LW_TEXT("\"%1\" has a separator in the number; write 1500.5, "
                                           "with a point and no thousands separators"),
                                   words.substr(0, 40))};
    }
    if (rest.empty()) {
        if (dimension == Dimension::fraction) {
            return amount(number, "");
        }
        return Problem{"", Message(LW_TEXT("\"%1\" has no unit; it must be %2"),
                                   words.substr(0, 40), describe(dimension))};
    }
    if (unit == nullptr) {
        return unknownUnit(rest, dimension);
    }
    if (unit->dimension != dimension) {
        return Problem{"", Message(LW_TEXT("\"%1\" is %2; it must be %3"), unit->symbol,
                                   describe(unit->dimension), describe(dimension))};
    }
    const Amount result = amount(number, unit->symbol);
    if (!std::isfinite(result.si)) {
        return Problem{"", Message(LW_TEXT("\"%1\" is too large"), words.substr(0, 40))};
    }
    return result;
}

} // namespace lobewright::study
