#pragma once

#include "core/units/unit.h"

namespace lobewright {

/// The unit of the table with this symbol; that of a pure number where the table has none.
inline const Unit& unitNamed(std::string_view symbol) {
    const Unit* unit = findUnit(symbol);
    return unit != nullptr ? *unit : in::pure;
}

} // namespace lobewright
