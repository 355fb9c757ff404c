#pragma once

#include "ui/report/report.h"
#include "ui/report/report_sheet.h"

namespace lobewright::ui {

/// Bands of the results, what decides them, and what would have to be true for published figures.
void writeUnknowns(Sheet& sheet, const ReportUnknowns& known);

} // namespace lobewright::ui
