#include "core/units/unit.h"

#include <fmt/format.h>

#include <algorithm>
#include <charconv>
#include <cmath>
#include <limits>

namespace lobewright {

double toSi(const Unit& unit, double value) {
    return value * unit.factor / unit.divisor;
}

double roundedTo(int digits, double value) {
    const std::string text = fmt::format("{:.{}e}", value, digits - 1);
    double shortened = value;
    std::from_chars(text.data(), text.data() + text.size(), shortened);
    return shortened;
}

double fromSi(const Unit& unit, double si) {
    const double guess = si * unit.divisor / unit.factor;
    // 15 digits always survive decimal → double → decimal; 17 tell every double from its
    // neighbours.
    constexpr double infinity = std::numeric_limits<double>::infinity();
    for (const int digits : {15, 16, 17}) {
        const double candidate = roundedTo(digits, guess);
        if (toSi(unit, candidate) == si) {
            return candidate;
        }
    }
    for (const double candidate :
         {guess, std::nextafter(guess, infinity), std::nextafter(guess, -infinity)}) {
        if (toSi(unit, candidate) == si) {
            return candidate;
        }
    }
    return roundedTo(15, guess);
}

std::span<const Unit* const> allUnits() {
    static constexpr const Unit* all[] = {&in::pure,
                                          &in::percent,
                                          &in::m,
                                          &in::mm,
                                          &in::um,
                                          &in::perMm,
                                          &in::mm2,
                                          &in::cm2,
                                          &in::cm3,
                                          &in::degrees,
                                          &in::shaftDegrees,
                                          &in::cycleDegrees,
                                          &in::degreesOfCycle,
                                          &in::mmPerRad,
                                          &in::mmPerRad2,
                                          &in::mmPerRad3,
                                          &in::mmPerDegree,
                                          &in::mmPerTurn,
                                          &in::seconds,
                                          &in::ms,
                                          &in::hours,
                                          &in::perSecond,
                                          &in::litrePerSecond,
                                          &in::perHour,
                                          &in::rpm,
                                          &in::turnsPerMinute,
                                          &in::metrePerSecond,
                                          &in::metrePerSecond2,
                                          &in::metrePerSecond3,
                                          &in::secondsPerMetre,
                                          &in::N,
                                          &in::kN,
                                          &in::Nm,
                                          &in::J,
                                          &in::kW,
                                          &in::W,
                                          &in::WPerMm2,
                                          &in::bar,
                                          &in::MPa,
                                          &in::GPa,
                                          &in::perGPa,
                                          &in::pascalSecond,
                                          &in::kg,
                                          &in::g,
                                          &in::mg,
                                          &in::kgm2,
                                          &in::gPerSecond,
                                          &in::kgPerHour,
                                          &in::kgPerSecond,
                                          &in::gPerKWh,
                                          &in::kelvin,
                                          &in::kJPerKg,
                                          &in::MJPerKg,
                                          &in::JPerKgK,
                                          &in::WPerM2K};
    return all;
}

const Unit* findUnit(std::string_view symbol) {
    const auto all = allUnits();
    const auto found =
        std::ranges::find_if(all, [&](const Unit* unit) { return unit->symbol == symbol; });
    return found == all.end() ? nullptr : *found;
}

} // namespace lobewright
