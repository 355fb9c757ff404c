#pragma once

#include "core/claims/claims.h"
#include "core/result.h"

#include <optional>
#include <string>

/// Power correction for the state of the ambient air [ISO 1585:1992; ISO 15550:2002 has the same
/// reference state]. Formulas from memory, checked against the form printed in a diesel maker's
/// service manual.
namespace lobewright::study {

inline constexpr double referenceDryPressure = 99e3;  ///< [Pa]
inline constexpr double referenceTemperature = 298.0; ///< [K]

/// State of the ambient air.
struct AmbientAir {
    double pressure = 0.0;         ///< humid [Pa]
    double temperature = 0.0;      ///< [K]
    double relativeHumidity = 0.0; ///< 0 … 1
};

/// Saturation pressure of water vapour [Pa], 233 … 373 K (Magnus form: 611.2 Pa·exp(17.62·t/(243.12
/// + t)), t in °C; WMO-No. 8, annex 4.B).
double saturationPressure(double temperature);
/// Pressure of the dry air [Pa].
double dryPressure(const AmbientAir& air);

/// Factor by which power at this air is multiplied to stand for the reference air.
struct PowerCorrection {
    double factor = 1.0;
    double dryPressure = 0.0;           ///< [Pa]
    double atmosphericFactor = 1.0;     ///< f_a; spark ignition: the factor itself
    std::optional<double> engineFactor; ///< f_m, compression ignition
    Message formula, substituted;       ///< arithmetic in words
    /// What the standard asks that does not hold; empty: inside its limits.
    Message outsideLimits;
};

/// Spark ignition: α_a = (99/p_d)^1.2·(T/298)^0.6, p_d in kPa; limits 288 … 308 K, 80 … 110 kPa,
/// factor 0.93 … 1.07.
PowerCorrection sparkCorrection(const AmbientAir& air);

/// Compression ignition: α_c = f_a^f_m; f_a = (99/p_d)·(T/298)^0.7 without turbocharger,
/// (99/p_d)^0.7·(T/298)^1.5 with, (99/p_d)^0.7·(T/298)^0.7 with a liquid after-cooler;
/// f_m = 0.036·q_c − 1.14 with 37.2 ≤ q_c ≤ 65 mg/(L·cycle), 0.2 below and 1.2 above. Limits 283 …
/// 313 K, 80 … 110 kPa, factor 0.9 … 1.1. `correctedFuelling` q_c is fuel a cycle and displacement
/// by the charge's pressure ratio [kg/m³]; ≥ 0.
PowerCorrection compressionCorrection(const AmbientAir& air, Charger charger,
                                      double correctedFuelling);

} // namespace lobewright::study
