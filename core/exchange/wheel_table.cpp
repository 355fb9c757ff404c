#include "core/exchange/wheel_table.h"

#include "core/exchange/table_lines.h"
#include "core/units.h"

#include <fmt/format.h>

LW_TEXTS_OF(Core)

namespace lobewright::exchange {

namespace {

/// Absent: the line does not begin with four numbers.
std::optional<gas::WheelPoint> pointOf(const std::vector<std::string>& columns) {
    if (columns.size() < 4) {
        return std::nullopt;
    }
    double values[4];
    for (std::size_t i = 0; i < 4; ++i) {
        const auto value = numberOf(columns[i]);
        if (!value) {
            return std::nullopt;
        }
        values[i] = *value;
    }
    return gas::WheelPoint{values[0] * units::revPerMinute, values[1], values[2], values[3]};
}

} // namespace

Result<std::vector<gas::WheelPoint>> readWheelTable(std::string_view text) {
    std::vector<gas::WheelPoint> points;
    bool hasNames = false;
    const auto take = [&](int count, std::string_view line) -> std::optional<Problem> {
        if (line.empty() || line.starts_with('#')) {
            return std::nullopt;
        }
        const std::vector<std::string> columns = columnsOf(line);
        if (const auto point = pointOf(columns)) {
            points.push_back(*point);
            return std::nullopt;
        }
        if (points.empty() && !hasNames && !numberOf(columns.front())) {
            hasNames = true;
            return std::nullopt;
        }
        return Problem{fmt::format("/lines/{}", count),
                       Message(LW_TEXT("the line reads \"%1\"; it must begin with four "
                                       "numbers: speed in rpm, flow in kg/s, pressure ratio "
                                       "and efficiency"),
                               shownLine(line))};
    };
    if (auto problem = forEachLine(text, take)) {
        return *problem;
    }
    if (points.empty()) {
        return Problem{"/rows", LW_TEXT("the table of the wheel has no rows")};
    }
    return points;
}

} // namespace lobewright::exchange
