#pragma once

#include "core/gas/cycle/cycle.h"

namespace lobewright::testing {

/// A second, deliberately plain solution of the gas cycle: the equations written down again from
/// the textbooks, integrated by CVODE with a tight tolerance and repeated until steady. Reservoir
/// supply or a pump chamber of its own, and perfect mixing only; it shares nothing with the solver
/// but the chamber's geometry and the settings.
struct TextbookCycle {
    double work = 0.0;          ///< [J]
    double peakPressure = 0.0;  ///< [Pa]
    double trappedMass = 0.0;   ///< [kg]
    double trappedAir = 0.0;    ///< [kg]
    double deliveredMass = 0.0; ///< [kg]
    double retainedFresh = 0.0; ///< [kg]
    double wallHeat = 0.0;      ///< [J]
    double pumpWork = 0.0;      ///< ∮p dV of the space under the piston [J]
    int periods = 0;
};

/// Cycle 1 of a chamber that makes one cycle a period.
TextbookCycle solveTextbookCycle(const gas::Chamber& chamber, const gas::Settings& settings,
                                 double omega, bool motored);

} // namespace lobewright::testing
