#pragma once

#include "core/solution/solution.h"
#include "ui/report/report_sheet.h"

#include <QString>

#include <utility>
#include <vector>

/// What a report says in words and numbers.
namespace lobewright::ui {

/// The figures a reader looks for first.
std::vector<Sheet::Row> mainFigures(const solution::Solution& solution);
/// Events and spans of cycle 1, shaft and cycle degrees side by side.
std::vector<Sheet::Row> timingFigures(const solution::Solution& solution);
/// Extremes of both tracks, and how much a roller could grow before it undercuts.
std::vector<Sheet::Row> trackFigures(const solution::Solution& solution);
/// Main figures and port timing that differ from a baseline, with its value and the change.
std::vector<Sheet::Row> changedFigures(const solution::Solution& now,
                                       const solution::Solution& before);
/// Numbers of the design that differ from a baseline's, with the baseline's.
std::vector<Sheet::Row> changedNumbers(const design::Design& now, const design::Design& before);
/// Every number of the design under the name of its section.
std::vector<Sheet::Row> designNumbers(const design::Design& design);

/// Name of an assumption and what is assumed, with its source; those that this design uses.
std::vector<std::pair<QString, QString>> assumptions(const solution::Solution& solution);
/// The usual cautions, one sentence or two each.
std::vector<QString> cautionTexts();

} // namespace lobewright::ui
