#pragma once

#include "core/claims/claims_check.h"

#include <optional>
#include <string>
#include <vector>

/// What the claims' figures rest on, worked out once. Internal to the claims check.
namespace lobewright::study {

/// A number with the arithmetic that gave it.
struct Derived {
    double value = 0.0; ///< SI
    Message formula, substituted;
    bool assumed = false; ///< rests on an assumption
};

/// What a figure is that rests on a bound.
enum class Bound { none, atLeast, atMost };

/// Cycles, volumes and speeds that findings, conflicts and statements share.
struct ClaimBasis {
    std::optional<StrokeCycle> cycle;
    std::optional<Derived> cyclesPerTurn;    ///< c, per chamber
    std::optional<Derived> reciprocations;   ///< m, of one piston per turn
    std::optional<Derived> displacement;     ///< V_d [m³]
    std::optional<Derived> lowestPowerSpeed; ///< P/T [rad/s]
    std::optional<Derived> powerSpeed;       ///< ω at the power peak [rad/s], or a bound of it
    Bound powerSpeedBound = Bound::none;     ///< what pressures at the power peak are
    double heatingValue = 0.0;               ///< [J/kg]
    double stoichiometricAir = 0.0;          ///< kg air a kg fuel
    double airRatio = 1.0;
    double efficiency = 0.30; ///< brake
    double airDensity = 0.0;  ///< [kg/m³]
    double ambientPressure = 0.0, ambientTemperature = 0.0;
    std::vector<Message> assumptions;
};

ClaimBasis claimBasis(const Claims& claims);

/// Peaks of torque and power that stand this near, of the lower speed, are taken as equal [own
/// estimate].
inline constexpr double nearlyEqualPeaks = 0.05;
/// Brake efficiency above which no piston engine is believed [own estimate]: the largest two-stroke
/// diesels reach 0.55.
inline constexpr double highestEfficiency = 0.60;

/// "149140 W": the number in SI with six digits.
std::string shown(double value, std::string_view unit = "");
/// ω [rad/s] as turns per second.
double turnsPerSecond(double omega);

void addFindings(ClaimsReport& report, const ClaimBasis& basis);
void addConflicts(ClaimsReport& report, const ClaimBasis& basis);
void addMissing(ClaimsReport& report, const ClaimBasis& basis);
/// `design`: of the same engine, or null.
StatementRow checkStatement(const Statement& statement, const ClaimsReport& report,
                            const ClaimBasis& basis, const solution::Solution* design);

} // namespace lobewright::study
