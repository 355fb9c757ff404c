#pragma once

#include "core/gas/models/elementary.h"

#include <cmath>

namespace lobewright::gas {

/// Below this relative pressure drop the flow is taken as laminar, proportional to the drop to
/// begin with (own estimate; at 1 bar the drop is 10 Pa). Where the flow hardly knows its direction
/// the infinite slope of the ideal law is noise, not physics; the work of a cycle moves by less
/// than 1e-5.
inline constexpr double laminarDrop = 1e-4;

/// Flow function ψ of an isentropic compressible orifice: ṁ = C_d·A·p₀/√(R·T₀)·ψ.
struct FlowFunction {
    double value = 0.0;
    double slope = 0.0;   ///< dψ/d(ratio)
    double choking = 0.0; ///< > 0 subsonic, < 0 choked: (p/p₀)^((γ−1)/γ) − 2/(γ+1)
};

/// `pressureRatio` = downstream/upstream, > 0; γ > 1 of the upstream gas. Odd about ratio 1, so
/// that a flow just turning round continues smoothly. [Heywood, appendix C]
[[gnu::always_inline]] inline FlowFunction flowFunction(double pressureRatio, double gamma) {
    const bool reversed = pressureRatio > 1.0;
    const double ratio = reversed ? 1.0 / pressureRatio : pressureRatio;
    const double drop = 1.0 - ratio;
    const double exponent = (gamma - 1.0) / gamma;
    const double critical = 2.0 / (gamma + 1.0);
    FlowFunction psi;
    if (drop < laminarDrop) {
        // odd cubic that meets the ideal law, ψ² = 2·drop·(1 − 1.5·drop/γ + …), with its slope
        const double s = drop / laminarDrop;
        const double q = 0.75 * laminarDrop / gamma;
        constexpr double scale = 0.25 * 1.4142135623730951e-2; // √(2·laminarDrop)/4
        static_assert(laminarDrop == 1e-4);
        const double first = scale * (5.0 - 3.0 * q);
        const double third = -scale * (1.0 + q);
        psi = {s * (first + third * s * s), -(first + 3.0 * third * s * s) / laminarDrop,
               1.0 - critical};
    } else {
        const double power = exponential(exponent * logarithm(ratio));
        psi.choking = power - critical;
        if (psi.choking <= 0.0) {
            psi.value =
                std::sqrt(gamma * exponential((gamma + 1.0) / (gamma - 1.0) * logarithm(critical)));
        } else {
            psi.value = ratio / power * std::sqrt(2.0 / exponent * (1.0 - power));
            psi.slope = psi.value / ratio * (1.0 / gamma - 0.5 * exponent * power / (1.0 - power));
        }
    }
    if (reversed) {
        psi.value = -psi.value;
        psi.slope *= ratio * ratio;
    }
    return psi;
}

/// Mass flow through an effective area C_d·A [kg/s], positive downstream.
inline double orificeFlow(double effectiveArea, double upstreamPressure, double upstreamTemperature,
                          double gasConstant, double psi) {
    return effectiveArea * upstreamPressure / std::sqrt(gasConstant * upstreamTemperature) * psi;
}

} // namespace lobewright::gas
