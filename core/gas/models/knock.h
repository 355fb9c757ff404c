#pragma once

#include "core/gas/models/elementary.h"

#include <cmath>

namespace lobewright::gas {

/// Of the delay what the fuel decides [s]: 0.01768·(ON/100)^3.402.
inline double delayOfFuel(double octaneNumber) {
    return 0.01768 * std::pow(octaneNumber / 100.0, 3.402);
}

/// Of it what the unburnt gas decides: p^−1.7·exp(3800/T).
inline double delayOfGas(double pressure, double temperature) {
    return exponential(3800.0 / temperature - 1.7 * logarithm(pressure / 101325.0));
}

/// Autoignition delay [s] of petrol: 0.01768·(ON/100)^3.402·p^−1.7·exp(3800/T), p in atmospheres.
/// pressure [Pa], temperature of the unburnt gas [K].
/// [Douaud & Eyzat 1978, SAE 780080; Heywood, eq. 9.59 (from memory)]
inline double ignitionDelay(double octaneNumber, double pressure, double temperature) {
    return delayOfFuel(octaneNumber) * delayOfGas(pressure, temperature);
}

} // namespace lobewright::gas
