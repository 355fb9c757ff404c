#pragma once

#include "core/gas/cycle/cycle.h"
#include "core/reference/comparison.h"

#include <optional>
#include <vector>

/// What the engines of a comparison have in common. Internal to the comparison.
namespace lobewright::study {

/// Figures of one engine [SI]; pressures count once a cycle and swept volume.
struct ComparedValues {
    double outputSpeed = 0.0, crankSpeed = 0.0; ///< ω [rad/s]
    double cyclesPerTurn = 0.0;                 ///< of the crank or cam
    int cylinders = 0;
    double sweptVolume = 0.0; ///< of one cylinder [m³]
    double bore = 0.0, stroke = 0.0;
    double compressionRatio = 0.0, trappedCompressionRatio = 0.0;
    double surfaceToVolume = 0.0; ///< at the least volume [1/m]
    double meanPistonSpeed = 0.0, peakPistonSpeed = 0.0, peakAcceleration = 0.0;
    double leverArm = 0.0; ///< largest [m], referred to the output shaft
    double imep = 0.0;
    /// Absent: within fmepDrive, which then is a fit of all friction.
    std::optional<double> fmepRing, fmepGuide, fmepAuxiliary;
    double fmepDrive = 0.0;
    double fmepSupply = 0.0;  ///< deducted
    double supplyPower = 0.0; ///< [W]
    bool supplyPaid = true;
    std::vector<gas::CycleFigures> cycles;
    std::optional<double> burnStart; ///< in degrees of one reciprocation [rad]
    double peakToPeakTorque = 0.0;   ///< on the output shaft [N·m]
    std::optional<double> ripple;
    double shortestInterval = 0.0, longestInterval = 0.0; ///< of the output shaft [rad]
    int together = 1;
    std::optional<double> sideForce; ///< largest [N]
    double shakingForce = 0.0;       ///< largest [N]
    std::optional<double> rockingMoment;

    double mechanicalFmep() const {
        return fmepRing.value_or(0.0) + fmepGuide.value_or(0.0) + fmepDrive;
    }
    double fmep() const { return mechanicalFmep() + fmepSupply + fmepAuxiliary.value_or(0.0); }
    double bmep() const { return imep - fmep(); }
    double cyclesPerSecond() const; ///< all cylinders
    double power() const;           ///< brake [W]
    double mean(double gas::CycleFigures::*member) const;
    double largest(double gas::CycleFigures::*member) const;
    double wallHeatShare() const; ///< of the fuel heat; 0 when motored
    double frictionShare() const; ///< mechanical friction, of the fuel heat; 0 when motored
};

/// Figures for tables. `scale` ≥ 0 enlarges the engine by equal cylinders; `reference`: what heat
/// and friction are compared with, or null.
std::vector<solution::Figure> comparedFigures(const ComparedValues& values, double scale,
                                              const ComparedValues* reference);
/// The same figures without values, all with this note.
std::vector<solution::Figure> absentFigures(const Message& note);

/// One engine, solved.
struct ComparedResult {
    ComparedValues values;
    ComparedCurves curves;
};

Result<ComparedResult> camTrackEngine(const solution::Solution& solution);
Result<ComparedResult> crankEngine(const solution::Solution& solution, bool samePistonSpeed,
                                   Monitor& monitor);
Result<ComparedResult> fourStrokeEngine(const solution::Solution& solution, bool sameSupply,
                                        Basis basis, Monitor& monitor);

/// −π … π in whole degrees, both ends.
Samples strokeAngles();
/// Two turns in whole degrees, both ends.
Samples twoTurns();

} // namespace lobewright::study
