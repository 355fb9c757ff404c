#pragma once

#include "core/ends.h"
#include "core/units/unit.h"

#include <optional>
#include <string>

namespace lobewright::solution {

/// What a figure or a channel is of. Its name in files and commands is made of this, here only.
struct QuantityId {
    std::string id; ///< "peak_contact_pressure"
    const Unit* unit = &in::pure;
    std::optional<End> end = {};

    /// "peak_contact_pressure_inlet_MPa".
    std::string written() const;
    /// "MPa", for tables.
    std::string symbolOfUnit() const { return std::string(unit->symbol); }
    bool operator==(const QuantityId&) const = default;
};

} // namespace lobewright::solution
