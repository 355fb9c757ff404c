#include "ui/scene/handle.h"

#include "ui/scene/words.h"

#include <algorithm>
#include <cmath>

namespace lobewright::ui {

double snapped(const HandleAxis& axis, double value, double step) {
    const double gridded = step > 0.0 ? std::round(value / step) * step : value;
    return std::clamp(gridded, axis.min, axis.max);
}

QString shownValue(const HandleAxis& axis, double value) {
    const QString number = words::number(value, axis.decimals);
    const QString space = axis.unit.startsWith(QChar(0x00B0)) ? QString() : QString(QChar(0x00A0));
    return axis.unit.isEmpty() ? number : number + space + axis.unit;
}

} // namespace lobewright::ui
