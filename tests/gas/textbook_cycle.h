#pragma once

#include "core/gas/cycle/cycle.h"

namespace lobewright::testing {

/// A second, deliberately plain solution of the gas cycle: the equations written down again from
/// the textbooks, integrated by CVODE with a tight tolerance and repeated until steady. Reservoir
/// supply, a pump chamber of its own, or one cylinder between compressor and turbine; perfect
/// mixing only; it shares nothing with the solver
/// but the chamber's geometry and the settings.
struct TextbookCycle {
    double work = 0.0;           ///< [J]
    double peakPressure = 0.0;   ///< [Pa]
    double trappedMass = 0.0;    ///< [kg]
    double trappedAir = 0.0;     ///< [kg]
    double deliveredMass = 0.0;  ///< [kg]
    double retainedFresh = 0.0;  ///< [kg]
    double wallHeat = 0.0;       ///< [J]
    double pumpWork = 0.0;       ///< ∮p dV of the space under the piston [J]
    double compressorWork = 0.0; ///< of the wheel, a period [J]
    double turbineWork = 0.0;    ///< from the exhaust, a period [J]
    int periods = 0;
};

/// Cycle 1 of a chamber that makes one cycle a period. `wheelSpeed`: of a turbocharger, given
/// [rad/s].
TextbookCycle solveTextbookCycle(const gas::Chamber& chamber, const gas::Settings& settings,
                                 double omega, bool motored, double wheelSpeed = 0.0);

} // namespace lobewright::testing
