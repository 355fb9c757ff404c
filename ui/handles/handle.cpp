#include "ui/handles/handle.h"

#include "core/editing/tidy.h"
#include "ui/base/units.h"

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

double snapped(const HandleAxis& axis, double value, double step) {
    const Unit unit = unitFor(axis.unit);
    const double grid = unit.step(step);
    if (grid <= 0.0)
        return std::clamp(value, axis.min, axis.max);
    const double gridded = std::round(value / grid) * grid;
    return std::clamp(unit.isMetric() ? editing::tidy(gridded) : unit.metric(unit.shown(gridded)),
                      axis.min, axis.max);
}

QString shownValue(const HandleAxis& axis, double value) {
    return axis.words ? axis.words(value) : quantityText(value, axis.unit, axis.decimals);
}

} // namespace lobewright::ui
