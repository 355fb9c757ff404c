#pragma once

#include "core/solution/solution.h"

#include <QString>

namespace lobewright::ui {

/// "62.4", "0.312", "2 105": four digits, as figures are quoted.
QString figureText(double value);
/// "62.4 kW", "yes", "not available": a figure in the unit shown now.
QString figureText(const solution::Figure& figure);

/// How a figure changed against the same one of the baseline.
struct FigureChange {
    QString text;     ///< short: "+3.4 %", "−2.5°", "="; empty where one of them has no value
    QString sentence; ///< with the value of the baseline; empty likewise
    bool isEqual() const { return text == QLatin1String("="); }
};

/// Angles as degrees, event angles the shorter way round (period of the shaft angle [°]); plain
/// differences where a share would mislead: across or below zero; else per cent.
FigureChange figureChange(const solution::Figure& now, const solution::Figure& before,
                          double shaftPeriod);

} // namespace lobewright::ui
