#pragma once

#include "core/gas/cycle/cycle.h"
#include "core/monitor.h"
#include "core/reference/crank_pair.h"
#include "core/result.h"
#include "core/solution/solution.h"

namespace lobewright::study {

/// How cylinders with even firing intervals over `period` [rad] are run at ω [rad/s].
gas::RunConditions evenConditions(const design::Design& design, double omega, int cylinders,
                                  double period);

/// The pistons of a solved engine on cranks, with the gas cycle of their own.
struct CrankCycle {
    CrankPairChamber chamber;
    gas::Settings settings; ///< a blower gives the same displacement a cycle
    gas::RunConditions run;
    gas::CycleSolution gas;
};

/// The cranks turn with the shaft or, `samePistonSpeed`, as many times as fast as it has cycles per
/// turn. Errors: the cranks let pistons collide or ports never open (paths of the design), the gas
/// has no solution, cancelled.
Result<CrankCycle> crankCycle(const solution::Solution& solution, bool samePistonSpeed,
                              Monitor& monitor);

} // namespace lobewright::study
