#include "core/claims/claims_correction.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::study {

namespace {

struct CorrectionLimits {
    double coldest, hottest; ///< [K]
    double least, most;      ///< of the factor
};

Message brokenLimits(const AmbientAir& air, double dry, double factor,
                     const CorrectionLimits& limits) {
    Message list;
    const auto check = [&](bool isInside, const Message& sentence) {
        if (!isInside) {
            list = joined(list, sentence);
        }
    };
    check(air.temperature >= limits.coldest && air.temperature <= limits.hottest,
          Message(LW_TEXT("%1 K is outside %2 … %3 K"), withDecimals(air.temperature, in::pure, 1),
                  withDecimals(limits.coldest, in::pure, 0),
                  withDecimals(limits.hottest, in::pure, 0)));
    check(dry >= 80e3 && dry <= 110e3, Message(LW_TEXT("%1 kPa of dry air is outside 80 … 110 kPa"),
                                               withDecimals(dry / 1e3, in::pure, 2)));
    check(factor >= limits.least && factor <= limits.most,
          Message(LW_TEXT("factor %1 is outside %2 … %3"), withDecimals(factor, in::pure, 4),
                  asTyped(limits.least), asTyped(limits.most)));
    return list;
}

} // namespace

double saturationPressure(double temperature) {
    const double celsius = std::clamp(temperature, 233.15, 373.15) - 273.15;
    return 611.2 * std::exp(17.62 * celsius / (243.12 + celsius));
}

double dryPressure(const AmbientAir& air) {
    return air.pressure - air.relativeHumidity * saturationPressure(air.temperature);
}

PowerCorrection sparkCorrection(const AmbientAir& air) {
    PowerCorrection result;
    result.dryPressure = dryPressure(air);
    result.factor = std::pow(referenceDryPressure / result.dryPressure, 1.2) *
                    std::pow(air.temperature / referenceTemperature, 0.6);
    result.atmosphericFactor = result.factor;
    result.formula = "α_a = (99 kPa/p_d)^1.2·(T/298 K)^0.6";
    result.substituted =
        fmt::format("(99/{:.3f})^1.2·({:.2f}/298)^0.6", result.dryPressure / 1e3, air.temperature);
    result.outsideLimits =
        brokenLimits(air, result.dryPressure, result.factor, {288.0, 308.0, 0.93, 1.07});
    return result;
}

PowerCorrection compressionCorrection(const AmbientAir& air, Charger charger,
                                      double correctedFuelling) {
    const bool isTurbo = charger == Charger::turbo || charger == Charger::turboAfterCooled;
    const double pressureExponent = isTurbo ? 0.7 : 1.0;
    const double temperatureExponent = charger == Charger::turbo ? 1.5 : 0.7;
    const double milligramsPerLitre = correctedFuelling * 1e3;
    PowerCorrection result;
    result.dryPressure = dryPressure(air);
    result.atmosphericFactor =
        std::pow(referenceDryPressure / result.dryPressure, pressureExponent) *
        std::pow(air.temperature / referenceTemperature, temperatureExponent);
    result.engineFactor = milligramsPerLitre < 37.2   ? 0.2
                          : milligramsPerLitre > 65.0 ? 1.2
                                                      : 0.036 * milligramsPerLitre - 1.14;
    result.factor = std::pow(result.atmosphericFactor, *result.engineFactor);
    result.formula =
        Message(LW_TEXT("α_c = f_a^f_m, f_a = (99 kPa/p_d)^%1·(T/298 K)^%2, f_m from q_c"),
                asTyped(pressureExponent), asTyped(temperatureExponent));
    result.substituted =
        Message(LW_TEXT("[(99/%1)^%2·(%3/298)^%4]^%5, q_c = %6 mg/(L·cycle)"),
                withDecimals(result.dryPressure / 1e3, in::pure, 3), asTyped(pressureExponent),
                withDecimals(air.temperature, in::pure, 2), asTyped(temperatureExponent),
                withDecimals(*result.engineFactor, in::pure, 3),
                withDecimals(milligramsPerLitre, in::pure, 1));
    result.outsideLimits =
        brokenLimits(air, result.dryPressure, result.factor, {283.0, 313.0, 0.9, 1.1});
    return result;
}

} // namespace lobewright::study
