#pragma once

#include <cmath>

namespace lobewright::gas {

/// Autoignition delay [s] of petrol: 0.01768·(ON/100)^3.402·p^−1.7·exp(3800/T), p in atmospheres.
/// pressure [Pa], temperature of the unburnt gas [K].
/// [Douaud & Eyzat 1978, SAE 780080; Heywood, eq. 9.59 (from memory)]
inline double ignitionDelay(double octaneNumber, double pressure, double temperature) {
    return 0.01768 * std::pow(octaneNumber / 100.0, 3.402) *
           std::exp(3800.0 / temperature - 1.7 * std::log(pressure / 101325.0));
}

} // namespace lobewright::gas
