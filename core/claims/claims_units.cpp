#include "core/claims/claims_units.h"

#include "core/design/nearest.h"
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
        {"kW", {"kilowatt", "kilowatts"}, power, 1e3, 0.0, si},
        {"W", {"watt", "watts"}, power, 1.0, 0.0, si},
        {"MW", {"megawatt", "megawatts"}, power, 1e6, 0.0, si},
        {"hp",
         {"bhp", "horsepower", "hp(i)"},
         power,
         550.0 * foot * poundForce,
         0.0,
         "550 ft·lbf/s"},
        {"PS",
         {"cv", "ch", "pk", "metrichp", "hp(m)"},
         power,
         75.0 * standardGravity,
         0.0,
         "75 kgf·m/s, g = 9.80665 m/s²"},
        {"N·m", {"nm", "newtonmetre", "newtonmetres"}, torque, 1.0, 0.0, si},
        {"kN·m", {"knm"}, torque, 1e3, 0.0, si},
        {"lb·ft",
         {"lbft", "ftlb", "lbfft", "ftlbf", "lb-ft", "ft-lb", "lbf-ft", "ft-lbf"},
         torque,
         poundForce * foot,
         0.0,
         yardPoundGravity},
        {"lb·in",
         {"lbin", "inlb", "lbfin", "inlbf", "lb-in", "in-lb"},
         torque,
         poundForce * inch,
         0.0,
         yardPoundGravity},
        {"kgf·m",
         {"kgfm", "mkgf", "kgm", "mkg", "kpm"},
         torque,
         standardGravity,
         0.0,
         "g = 9.80665 m/s²"},
        {"rpm",
         {"rev/min", "r/min", "1/min", "/min", "min-1", "min⁻¹", "u/min", "upm"},
         speed,
         units::revPerMinute,
         0.0,
         "2π/60 rad/s"},
        {"rev/s", {"r/s", "rps", "hz"}, speed, 2.0 * units::pi, 0.0, "2π rad/s"},
        {"rad/s", {}, speed, 1.0, 0.0, si},
        {"L",
         {"litre", "litres", "liter", "liters", "ltr", "dm3", "dm³"},
         volume,
         litre,
         0.0,
         "1 dm³ (CGPM 1964)"},
        {"cc", {"cm3", "cm³", "ccm", "ml"}, volume, 1e-6, 0.0, si},
        {"m³", {"m3"}, volume, 1.0, 0.0, si},
        {"cu in",
         {"cuin", "in3", "in³", "cid", "ci", "cubicinch", "cubicinches"},
         volume,
         inch * inch * inch,
         0.0,
         yardPound},
        {"mm", {"millimetre", "millimetres"}, length, 1e-3, 0.0, si},
        {"cm", {"centimetre", "centimetres"}, length, 1e-2, 0.0, si},
        {"m", {"metre", "metres"}, length, 1.0, 0.0, si},
        {"in", {"inch", "inches", "\""}, length, inch, 0.0, yardPound},
        {"kg", {"kilogram", "kilograms"}, mass, 1.0, 0.0, si},
        {"g", {"gram", "grams"}, mass, 1e-3, 0.0, si},
        {"t", {"tonne", "tonnes"}, mass, 1e3, 0.0, si},
        {"lb", {"lbs", "pound", "pounds"}, mass, pound, 0.0, yardPound},
        {"bar", {}, pressure, 1e5, 0.0, si},
        {"kPa", {}, pressure, 1e3, 0.0, si},
        {"MPa", {}, pressure, 1e6, 0.0, si},
        {"Pa", {}, pressure, 1.0, 0.0, si},
        {"mbar", {"hpa"}, pressure, 1e2, 0.0, si},
        {"atm", {}, pressure, atmosphere, 0.0, "101 325 Pa (CGPM 1954)"},
        {"psi",
         {"lb/in2", "lbf/in2", "psia"},
         pressure,
         poundForce / (inch * inch),
         0.0,
         yardPoundGravity},
        {"mmHg", {}, pressure, mercury * 1e-3, 0.0, mercuryColumn},
        {"inHg", {"in-hg"}, pressure, mercury * inch, 0.0, mercuryColumn},
        {"K", {"kelvin"}, temperature, 1.0, 0.0, si},
        {"°C", {"c", "degc"}, temperature, 1.0, 273.15, "t + 273.15 K"},
        {"°F", {"f", "degf"}, temperature, 5.0 / 9.0, 459.67, "(t + 459.67)·5/9 K"},
        {"m/s", {"metre/s", "mps"}, velocity, 1.0, 0.0, si},
        {"ft/min", {"fpm"}, velocity, foot / 60.0, 0.0, yardPound},
        {"ft/s", {"fps"}, velocity, foot, 0.0, yardPound},
        {"g/kWh", {"g/(kwh)", "g/kw-h"}, fuelConsumption, 1e-3 / 3.6e6, 0.0, si},
        {"lb/(hp·h)",
         {"lb/hph", "lb/hp-h", "lb/hp/h", "lb/(hph)", "lb/bhph", "lb/bhp-h"},
         fuelConsumption,
         pound / (550.0 * foot * poundForce * 3600.0),
         0.0,
         yardPoundGravity},
        {"°", {"deg", "degree", "degrees"}, angle, units::degree, 0.0, "π/180 rad"},
        {"rad", {}, angle, 1.0, 0.0, si},
        {"%", {"percent", "percents"}, fraction, 1e-2, 0.0, "1/100"},
    };
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
    switch (dimension) {
    case Dimension::power:
        return LW_TEXT("a power, e.g. \"90 kW\"");
    case Dimension::torque:
        return LW_TEXT("a torque, e.g. \"300 N·m\"");
    case Dimension::speed:
        return LW_TEXT("a shaft speed, e.g. \"2400 rpm\"");
    case Dimension::volume:
        return LW_TEXT("a volume, e.g. \"1.8 L\"");
    case Dimension::length:
        return LW_TEXT("a length, e.g. \"64 mm\"");
    case Dimension::mass:
        return LW_TEXT("a mass, e.g. \"85 kg\"");
    case Dimension::pressure:
        return LW_TEXT("a pressure, e.g. \"1.5 bar\"");
    case Dimension::temperature:
        return LW_TEXT("a temperature, e.g. \"25 °C\"");
    case Dimension::velocity:
        return LW_TEXT("a velocity, e.g. \"12 m/s\"");
    case Dimension::fuelConsumption:
        return LW_TEXT("a fuel consumption, e.g. \"250 g/kWh\"");
    case Dimension::angle:
        return LW_TEXT("an angle, e.g. \"6 °\"");
    case Dimension::fraction:
        return LW_TEXT("a number or a percentage, e.g. \"30 %\"");
    }
    assert(false);
    return {};
}

std::string_view siSymbol(Dimension dimension) {
    switch (dimension) {
    case Dimension::power:
        return "W";
    case Dimension::torque:
        return "N·m";
    case Dimension::speed:
        return "rad/s";
    case Dimension::volume:
        return "m³";
    case Dimension::length:
        return "m";
    case Dimension::mass:
        return "kg";
    case Dimension::pressure:
        return "Pa";
    case Dimension::temperature:
        return "K";
    case Dimension::velocity:
        return "m/s";
    case Dimension::fuelConsumption:
        return "kg/J";
    case Dimension::angle:
        return "rad";
    case Dimension::fraction:
        return "";
    }
    assert(false);
    return {};
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
