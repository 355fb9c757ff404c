#include "core/ports/row.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>
#include <string>

LW_TEXTS_OF(Core)

namespace lobewright::ports {

namespace {

struct RowCheck {
    Problems& problems;
    std::string row;
    void require(bool good, const char* key, const Amount& value, TextId rule) {
        if (!good) {
            problems.push_back({row + key, Message(LW_TEXT("is %1, %2"), value, rule)});
        }
    }
};

/// Comparisons are written so that a NaN fails.
void checkRow(const Row& row, double bore, RowCheck check) {
    const auto mm = [](double length) { return Amount(length, in::mm, 6); };
    check.require(row.edge > 0.0 && std::isfinite(row.edge), "/edge_mm", mm(row.edge),
                  LW_TEXT("must be positive"));
    check.require(row.height > 0.0 && std::isfinite(row.height), "/height_mm", mm(row.height),
                  LW_TEXT("must be positive"));
    check.require(row.width > 0.0, "/width_mm", mm(row.width), LW_TEXT("must be positive"));
    check.require(row.width < bore, "/width_mm", mm(row.width),
                  LW_TEXT("must be less than the bore"));
    check.require(row.count > 0, "/count", number(row.count, 6), LW_TEXT("must be at least 1"));
    check.require(row.cornerRadius >= 0.0, "/corner_radius_mm", mm(row.cornerRadius),
                  LW_TEXT("must not be negative"));
    check.require(!(row.cornerRadius > 0.5 * std::min(row.width, row.height)), "/corner_radius_mm",
                  mm(row.cornerRadius), LW_TEXT("must not exceed half of the width or height"));
    check.require(row.dischargeCoefficient > 0.0 && row.dischargeCoefficient <= 1.0,
                  "/discharge_coefficient", number(row.dischargeCoefficient, 6),
                  LW_TEXT("must be positive and at most 1"));
}

} // namespace

Problems rowProblems(const Row& row, double bore) {
    Problems problems;
    checkRow(row, bore, {problems, {}});
    return problems;
}

Problems rowProblems(const Rows& rows, double bore) {
    Problems problems;
    for (const End end : bothEnds) {
        if (rows[end].empty()) {
            problems.push_back(
                {fmt::format("/{}", name(end)), LW_TEXT("has no rows of ports, needs one")});
        }
        for (std::size_t i = 0; i < rows[end].size(); ++i) {
            checkRow(rows[end][i], bore, {problems, fmt::format("/{}/{}", name(end), i)});
        }
    }
    return problems;
}

} // namespace lobewright::ports
