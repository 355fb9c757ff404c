#pragma once

#include "core/gas/acceleration.h"
#include "core/gas/model.h"
#include "core/gas/ring.h"

#include <vector>

/// Where the search for the steady state begins.
namespace lobewright::gas {

/// A supply whose state does not change: the reservoir, or the blower's delivery at a pressure
/// [Pa].
SupplyState constantSupply(const Model& model, double blowerPressure);

/// Where the period of a converged cycle begins, for the search in a similar engine.
struct CycleStart {
    double period = 0.0;    ///< [rad]
    double burnStart = 0.0; ///< cycle angle [rad]
    bool fired = false;
    SupplyKind supply = SupplyKind::reservoir;
    Ring::Pose pose;
    AndersonAcceleration acceleration; ///< how windows answered to the state they began with
};
std::shared_ptr<const CycleStart> cycleStart(const Model& model, const Ring& ring,
                                             const AndersonAcceleration& acceleration);
/// options.near where it is of an engine like this one, otherwise null.
const CycleStart* startNear(const Model& model, const CycleOptions& options);

/// A likely charge at the last port closing.
Ring::Snapshot guessedCharge(const Model& model, const SupplyState& supply);

/// A cylinder on a constant supply whose pressure has been moved until it takes what the blower
/// gives.
struct ConstantSupplyStart {
    Ring ring;
    double pressure = 0.0; ///< [Pa]
    SupplyState supply;
};

/// Runs a few cycles loosely; the last leaves snapshots at the window angles [rad], ascending.
Result<ConstantSupplyStart> startOnConstantSupply(const Model& model, int cylinders,
                                                  const std::vector<double>& snapshotAngles);

/// Places the snapshots in the given cylinders of a ring and fills its plenum.
void placeOn(Ring& ring, const Model& model, const ConstantSupplyStart& start,
             const std::vector<int>& cylinders);

} // namespace lobewright::gas
