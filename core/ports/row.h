#pragma once

#include "core/ends.h"

#include <vector>

namespace lobewright::ports {

/// A row of equal ports around the bore.
struct Row {
    double edge = 0.0;   ///< inner edge from the crown at ODC, inward [m]
    double height = 0.0; ///< axial [m]
    double width = 0.0;  ///< chord [m]
    int count = 0;
    double cornerRadius = 0.0;         ///< [m]
    double dischargeCoefficient = 0.7; ///< 0 < C_d ≤ 1
    bool operator==(const Row&) const = default;
};

using Rows = PerEnd<std::vector<Row>>;

} // namespace lobewright::ports
