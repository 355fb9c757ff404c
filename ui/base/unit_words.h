#pragma once

#include <QString>

namespace lobewright::ui {

/// "12.5 mm" or "35°", of a number and a unit that are already as shown.
QString withUnit(const QString& number, const QString& unit);

} // namespace lobewright::ui
