#pragma once

#include "core/gas/cycle/cycle.h"
#include "core/gas/cycle/pair_chamber.h"

#include <vector>

namespace lobewright::gas {

/// A design as the gas side sees it.
struct Engine {
    PairChamber chamber;
    Settings settings;
    RunConditions run;
};

/// Two lobes, three cylinders, methane: modified-sine rises and returns with dwells.
Engine pumpEngine();
/// One lobe, slow, large ports, motored, ambient supply.
Engine classroomEngine();
/// Three lobes, one cylinder, hydrogen.
Engine buoyEngine();

/// One lobe, one piston against a head, filled by the space under it.
Engine craneEngine();

/// Both tracks cut to one pattern. Aborts where that cannot be built.
PairChamber chamberOf(const mechanism::Mechanism& mechanism, const motion::Pattern& pattern,
                      const ports::Rows& rows);

/// Cylinders evenly spaced on the circle.
RunConditions running(double revPerMinute, int cylinders = 1, bool motored = false);

/// The converged cycle of an engine; throws what kept it from one.
CycleSolution cycleOf(const Engine& engine, const CycleOptions& options = {});

} // namespace lobewright::gas
