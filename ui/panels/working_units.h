#pragma once

#include "core/solution/workings/working.h"

#include <QString>

#include <optional>

/// Workings in the units that are displayed. A formula without factors of metric units holds in
/// any: its numbers are then shown as all others are. Where it holds some, formula and numbers stay
/// metric, and the result is shown in the displayed unit as well.
namespace lobewright::ui {

struct ShownWorking {
    /// Formula, operands and value in units that fit each other; units are those shown, as words.
    solution::Working working;
    /// The value in the displayed unit, where the working stays metric and that is another one.
    std::optional<QString> converted;
    bool isMetric = true; ///< the numbers are metric though others are displayed
};

ShownWorking inDisplayedUnits(const solution::Working& working);

/// "1.417 in": value and unit with so many digits; the unit as it is.
QString numberWithUnit(double value, const std::string& unit, int digits);

} // namespace lobewright::ui
