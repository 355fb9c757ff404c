#pragma once

#include "core/design/design.h"

namespace lobewright::design {

/// The row that the skirt of the piston of this end uncovers for the pump; null where there is
/// none.
inline const ports::Row* skirtRow(const Design& design, End end) {
    const gas::Supply& supply = design.gas.supply;
    const auto pistons = design.mechanism.pistons();
    const bool pumps = supply.kind == gas::SupplyKind::underPiston && end <= pistons.back() &&
                       (end == End::inlet || supply.pump.sides == gas::PumpSides::both);
    return pumps && supply.pump.skirtRow ? &*supply.pump.skirtRow : nullptr;
}

} // namespace lobewright::design
