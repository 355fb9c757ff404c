#pragma once

#include "core/gas/models/settings.h"
#include "core/gas/properties/properties.h"

namespace lobewright::gas {

/// What it takes to compress ambient air.
struct Compression {
    double outletTemperature = 0.0; ///< before any cooler [K]
    double work = 0.0;              ///< h(T₂) − h(T_amb) [J/kg], ≥ 0
};

/// A gas before it is compressed.
struct Inlet {
    double pressure = 0.0, temperature = 0.0; ///< [Pa], [K]
};

/// Adiabatic compression with an isentropic efficiency, γ of air before it. Below the pressure
/// before it nothing is compressed.
Compression compress(const GasGroup& air, const Inlet& inlet, double pressure, double efficiency);

/// Adiabatic compression from the supply's ambient state to `pressure` [Pa] with its isentropic
/// efficiency, γ of air at ambient temperature. Below ambient pressure nothing is compressed.
Compression compress(const Supply& supply, const GasGroup& air, double pressure);

/// ρ_amb [kg/m³].
double ambientDensity(const Supply& supply, const GasGroup& air);

/// Air that the blower delivers at shaft speed ω [kg/s]: η_v·ρ_amb·V_b·i·n.
double blowerFlow(const Supply& supply, const GasGroup& air, double omega);

} // namespace lobewright::gas
