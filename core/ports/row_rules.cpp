#include "core/ports/row.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string>

namespace lobewright::ports {

namespace {

struct RowCheck {
    Problems& problems;
    std::string row;
    void require(bool good, const char* key, double value, const char* unit, const char* rule) {
        if (!good) {
            problems.push_back({row + key, fmt::format("is {:.6g}{}, {}", value, unit, rule)});
        }
    }
};

/// Comparisons are written so that a NaN fails.
void checkRow(const Row& row, double bore, RowCheck check) {
    constexpr double mm = units::millimetre;
    check.require(row.edge > 0.0 && std::isfinite(row.edge), "/edge_mm", row.edge / mm, " mm",
                  "must be positive");
    check.require(row.height > 0.0 && std::isfinite(row.height), "/height_mm", row.height / mm,
                  " mm", "must be positive");
    check.require(row.width > 0.0, "/width_mm", row.width / mm, " mm", "must be positive");
    check.require(row.width < bore, "/width_mm", row.width / mm, " mm",
                  "must be less than the bore");
    check.require(row.count > 0, "/count", row.count, "", "must be at least 1");
    check.require(row.cornerRadius >= 0.0, "/corner_radius_mm", row.cornerRadius / mm, " mm",
                  "must not be negative");
    check.require(!(row.cornerRadius > 0.5 * std::min(row.width, row.height)), "/corner_radius_mm",
                  row.cornerRadius / mm, " mm", "must not exceed half of the width or height");
    check.require(row.dischargeCoefficient > 0.0 && row.dischargeCoefficient <= 1.0,
                  "/discharge_coefficient", row.dischargeCoefficient, "",
                  "must be positive and at most 1");
}

} // namespace

Problems rowProblems(const Rows& rows, double bore) {
    Problems problems;
    for (const End end : bothEnds) {
        if (rows[end].empty()) {
            problems.push_back({fmt::format("/{}", name(end)), "has no rows of ports, needs one"});
        }
        for (std::size_t i = 0; i < rows[end].size(); ++i) {
            checkRow(rows[end][i], bore, {problems, fmt::format("/{}/{}", name(end), i)});
        }
    }
    return problems;
}

} // namespace lobewright::ports
