#pragma once

#include "core/gas/models/elementary.h"

#include <algorithm>
#include <cmath>

namespace lobewright::gas {

/// Woschni's coefficient [W/(m²·K)]: h = 3.26·B^−0.2·p^0.8·T^−0.55·w^0.8 with p in kPa.
/// bore [m], pressure [Pa], temperature [K], gas speed w [m/s], all > 0.
/// [Woschni 1967, SAE 670931; Heywood, §12.4.3 (from memory)]
inline double woschniCoefficient(double bore, double pressure, double temperature, double gasSpeed);

/// Of it what the bore decides: 3.26·B^−0.2.
inline double woschniOfBore(double bore) {
    return 3.26 * std::pow(bore, -0.2);
}

/// Of it what the gas decides; one logarithm for both powers, 0.8 = 16/20 and 0.55 = 11/20.
inline double woschniOfGas(double pressure, double temperature, double gasSpeed) {
    const auto square = [](double x) { return x * x; };
    const double toTheSixteenth = square(square(square(square(1e-3 * pressure * gasSpeed))));
    const double t2 = square(temperature);
    return exponential(0.05 * logarithm(toTheSixteenth / (square(square(t2)) * t2 * temperature)));
}

inline double woschniCoefficient(double bore, double pressure, double temperature,
                                 double gasSpeed) {
    return woschniOfBore(bore) * woschniOfGas(pressure, temperature, gasSpeed);
}

inline constexpr double woschniExchange = 6.18;      ///< C₁ while a port is open
inline constexpr double woschniClosed = 2.28;        ///< C₁ while all ports are closed
inline constexpr double woschniCombustion = 3.24e-3; ///< C₂ from burn start on [m/(s·K)]

/// Index of the motored pressure that Woschni's excess is counted from: fitted between the last
/// port closing (p_r, V_r) and the burn start (p_s, V_s); 1.35 where V_r/V_s < 1.2 leaves no
/// compression to fit.
inline double motoredIndex(double closingPressure, double closingVolume, double startPressure,
                           double startVolume) {
    if (closingVolume < 1.2 * startVolume) {
        return 1.35;
    }
    return std::clamp(std::log(startPressure / closingPressure) /
                          std::log(closingVolume / startVolume),
                      1.25, 1.42);
}

/// Hohenberg's coefficient [W/(m²·K)]: h = 130·V^−0.06·p^0.8·T^−0.4·(S̄p + 1.4)^0.8 with p in bar.
/// volume [m³], pressure [Pa], temperature [K], mean piston speed [m/s].
/// [Hohenberg 1979, SAE 790825 (from memory)]
inline double hohenbergCoefficient(double volume, double pressure, double temperature,
                                   double meanPistonSpeed) {
    return 130.0 * exponential(-0.06 * logarithm(volume) +
                               0.8 * logarithm(1e-5 * pressure * (meanPistonSpeed + 1.4)) -
                               0.4 * logarithm(temperature));
}

} // namespace lobewright::gas
