#pragma once

#include "core/gas/cycle/model.h"

namespace lobewright::gas {

/// Gas in the exhaust plenum.
struct ExhaustState {
    double pressure = 0.0; ///< [Pa]
    Stream stream;
};
/// `products` of it [kg].
ExhaustState exhaustState(const Model& model, double mass, double temperature, double products);

/// What passes the nozzle of the turbine and what its wheel takes from that, quasi-steady.
struct TurbineFlow {
    double mass = 0.0;  ///< [kg/s], out
    double power = 0.0; ///< [W]
};

/// Spouting velocity of an isentropic expansion, c₀ = √(2·c_p·T·(1 − (p/p₀)^((γ−1)/γ))) [m/s];
/// 0 where there is none.
double spoutingVelocity(const ExhaustState& before, double outletPressure);

/// Turbine at a wheel speed [rad/s] behind the plenum. P = ṁ·½·c₀²·η_b·(2·ν − ν²) with
/// ν = (u/c₀)/(u/c₀)_b: negative where the wheel outruns the gas.
/// [Watson & Janota, Turbocharging the Internal Combustion Engine; Dixon & Hall, ch. 8]
TurbineFlow turbineFlow(const Turbine& turbine, const ExhaustState& before, double outletPressure,
                        double wheelSpeed);

} // namespace lobewright::gas
