#pragma once

#include "core/solution/solution.h"

namespace lobewright::solution {

/// Whether 1 and 0 of the figure mean yes and no.
inline bool isYesNo(const Figure& figure) {
    return figure.name == "supply_power_counted" || figure.name == "adjuster_holds_itself" ||
           figure.name == "keeps_contact";
}

} // namespace lobewright::solution
