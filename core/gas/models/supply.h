#pragma once

#include "core/gas/models/settings.h"
#include "core/gas/properties/properties.h"

namespace lobewright::gas {

/// What it takes to compress ambient air.
struct Compression {
    double outletTemperature = 0.0; ///< before any cooler [K]
    double work = 0.0;              ///< h(T₂) − h(T_amb) [J/kg], ≥ 0
};

/// Where the supply takes its air from [Pa]: ambient, or behind the throttle.
double intakePressure(const Supply& supply);

/// A gas before it is compressed.
struct Inlet {
    double pressure = 0.0, temperature = 0.0; ///< [Pa], [K]
};

/// Adiabatic compression with an isentropic efficiency, γ of air before it; what does not depend on
/// the pressure behind it is worked out once. Below the pressure before it nothing is compressed.
class AdiabaticStage {
  public:
    AdiabaticStage(const GasGroup& air, const Inlet& inlet, double efficiency);
    Compression to(double pressure) const;

  private:
    GasGroup air_;
    Inlet inlet_;
    double efficiency_, exponent_; ///< (γ − 1)/γ
    double enthalpy_;              ///< before it [J/kg]
};

/// Adiabatic compression of ambient air from the intake to `pressure` [Pa] with the supply's
/// isentropic efficiency, γ at ambient temperature. Below the intake's nothing is compressed.
Compression compress(const Supply& supply, const GasGroup& air, double pressure);

/// ρ_amb [kg/m³].
double ambientDensity(const Supply& supply, const GasGroup& air);

/// Air that the blower delivers at shaft speed ω [kg/s]: η_v·ρ·V_b·i·n, ρ that of the intake.
double blowerFlow(const Supply& supply, const GasGroup& air, double omega);

} // namespace lobewright::gas
