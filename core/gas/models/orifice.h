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
    double choking = 0.0; ///< > 0 subsonic, < 0 choked: (p/p₀)^((γ−1)/γ) − 2/(γ+1)
    // what the slope is made of
    double ratio = 1.0; ///< of the lower pressure to the higher
    double power = 1.0; ///< ratio^((γ−1)/γ)
    double gamma = 1.4;
    bool reversed = false;
    double slope() const; ///< dψ/d(downstream/upstream)
};

/// Near equal pressures ψ = s·(first + third·s²) with s = drop/laminarDrop: an odd cubic that meets
/// the ideal law, ψ² = 2·drop·(1 − 1.5·drop/γ + …), with its slope.
struct LaminarFlow {
    double first = 0.0, third = 0.0;
    explicit LaminarFlow(double gamma) {
        constexpr double scale = 0.25 * 1.4142135623730951e-2; // √(2·laminarDrop)/4
        static_assert(laminarDrop == 1e-4);
        const double q = 0.75 * laminarDrop / gamma;
        first = scale * (5.0 - 3.0 * q);
        third = -scale * (1.0 + q);
    }
};

/// `pressureRatio` = downstream/upstream, > 0; γ > 1 of the upstream gas. Odd about ratio 1, so
/// that a flow just turning round continues smoothly. [Heywood, appendix C]
[[gnu::always_inline]] inline FlowFunction flowFunction(double pressureRatio, double gamma) {
    FlowFunction psi;
    psi.gamma = gamma;
    psi.reversed = pressureRatio > 1.0;
    psi.ratio = psi.reversed ? 1.0 / pressureRatio : pressureRatio;
    const double drop = 1.0 - psi.ratio;
    const double exponent = (gamma - 1.0) / gamma;
    const double critical = 2.0 / (gamma + 1.0);
    if (drop < laminarDrop) {
        const LaminarFlow laminar(gamma);
        const double s = drop / laminarDrop;
        psi.value = s * (laminar.first + laminar.third * s * s);
        psi.choking = 1.0 - critical;
    } else {
        psi.power = exponential(exponent * logarithm(psi.ratio));
        psi.choking = psi.power - critical;
        psi.value = psi.choking > 0.0
                        ? psi.ratio / psi.power * std::sqrt(2.0 / exponent * (1.0 - psi.power))
                        : std::sqrt(gamma * exponential((gamma + 1.0) / (gamma - 1.0) *
                                                        logarithm(critical)));
    }
    if (psi.reversed) {
        psi.value = -psi.value;
    }
    return psi;
}

inline double FlowFunction::slope() const {
    const double drop = 1.0 - ratio;
    double falling = 0.0; // of |ψ| by the ratio of the lower pressure to the higher
    if (drop < laminarDrop) {
        const LaminarFlow laminar(gamma);
        const double s = drop / laminarDrop;
        falling = -(laminar.first + 3.0 * laminar.third * s * s) / laminarDrop;
    } else if (choking > 0.0) {
        const double exponent = (gamma - 1.0) / gamma;
        falling = (reversed ? -value : value) / ratio *
                  (1.0 / gamma - 0.5 * exponent * power / (1.0 - power));
    }
    return reversed ? falling * ratio * ratio : falling;
}

/// Mass flow through an effective area C_d·A [kg/s], positive downstream.
inline double orificeFlow(double effectiveArea, double upstreamPressure, double upstreamTemperature,
                          double gasConstant, double psi) {
    return effectiveArea * upstreamPressure / std::sqrt(gasConstant * upstreamTemperature) * psi;
}

} // namespace lobewright::gas
