#pragma once

#include "core/ends.h"
#include "core/result.h"

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

/// Rules that need only the rows and the bore: every end has a row, sizes are positive, corners fit
/// the ports and chords the bore. Paths are relative to /ports.
Problems rowProblems(const Rows& rows, double bore);

/// The same rules for one row; paths are relative to it, e.g. "/edge_mm".
Problems rowProblems(const Row& row, double bore);

} // namespace lobewright::ports
