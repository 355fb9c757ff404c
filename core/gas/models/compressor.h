#pragma once

#include "core/gas/models/settings.h"
#include "core/gas/models/supply.h"
#include "core/gas/models/wheel_curve.h"
#include "core/gas/properties/properties.h"

#include <memory>

namespace lobewright::gas {

/// A flow [kg/s] as it would be in the reference state of the wheel: ṁ·√(T/T_r)·p_r/p, with
/// pressure [Pa] and temperature [K] before the wheel. [Cohen, Rogers & Saravanamuttoo, ch. 4]
double correctedFlow(double flow, double pressure, double temperature, const Wheel& wheel);

/// A compressor wheel at one speed with the air before it, quasi-steady and in SI.
///
/// Flow coefficient φ = ṁ/(ρ₁·u·D²), head coefficient ψ = Δh_s/u² with Δh_s the isentropic rise of
/// enthalpy, π = (1 + ψ·u²/(c_p·T₁))^(γ/(γ−1)), c_p and γ of air at T₁. Right of the peak
/// ψ = ψ₀·(1 − ((φ − φ_p)/(φ_c − φ_p))²), or as a table has it. Left of it a real wheel's curve
/// falls: no steady flow into a plenum exists there, the wheel surges. So that the mean of that can
/// still be worked out, the curve goes on there as a nearly level line, which rises by 1.5 % of ψ₀
/// to no flow (own choice). Head coefficients of radial blades are ψ₀ = σ·ψ_i·η, slip factor times
/// power input factor times efficiency [Dixon & Hall, Fluid Mechanics and Thermodynamics of
/// Turbomachinery, ch. 7; Cohen, Rogers & Saravanamuttoo, Gas Turbine Theory, ch. 4].
class TurningWheel {
  public:
    /// `speed` > 0 [rad/s]; pressure [Pa] and temperature [K] before the wheel.
    TurningWheel(const Wheel& wheel, const GasGroup& air, double pressure, double temperature,
                 double speed);

    const WheelCurve& curve() const { return *curve_; }
    double speed() const { return speed_; }   ///< [rad/s]
    double tipSpeed() const { return tip_; }  ///< u [m/s]
    double flowUnit() const { return unit_; } ///< ρ₁·u·D² [kg/s]
    double flowCoefficient(double flow) const { return flow / unit_; }
    double headCoefficient(double flow) const;
    double pressureRatio(double flow) const;
    /// η_b·(2·s − s²), s = φ/φ_b, never below a fifth of η_b (own estimate); or as a table has it.
    double efficiency(double flow) const;
    /// What passes against a pressure behind the wheel, ≥ 0 [kg/s].
    double flowAgainst(double outletPressure) const;
    /// T₂ = T₁·(1 + (π^((γ−1)/γ) − 1)/η) and h(T₂) − h(T₁); nothing is done where π ≤ 1.
    Compression compression(double flow) const;

  private:
    std::shared_ptr<const WheelCurve> curve_;
    GasGroup air_;
    double pressure_, temperature_, speed_, tip_, unit_;
    double heatTimesTemperature_; ///< c_p·T₁ [J/kg]
    double exponent_;             ///< (γ − 1)/γ
};

} // namespace lobewright::gas
