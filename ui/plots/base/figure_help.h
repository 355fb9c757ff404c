#pragma once

#include "core/solution/solution.h"

#include <QString>

#include <string_view>

namespace lobewright::ui {

/// What a figure is, for a tooltip: its name or remark, its formula in symbols, and where that is
/// from. Empty when the solution has no such figure.
QString figureHelp(const solution::Solution& solution, std::string_view figure);

} // namespace lobewright::ui
