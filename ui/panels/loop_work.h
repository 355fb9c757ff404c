#pragma once

#include "core/solution/workings/working.h"

#include <QString>

#include <optional>

namespace lobewright::ui {

/// ∮p dV in a formula, as the evaluator writes it.
inline constexpr const char* loopIntegral = "∮(p, V)";

/// The loop integral of a working, in bar·cm³ of one cylinder over a turn; nothing where its
/// formula has none.
std::optional<double> loopIntegralOf(const solution::Working& working);

/// "∮p dV = 123 J …" with a link `view:pressure-volume` to the plot whose loop it is; empty where
/// the formula has none.
QString loopWords(const solution::Working& working);

/// The line of numbers with the value of the loop in place of its sign.
std::string withLoopValue(std::string numbers, const solution::Working& working);

} // namespace lobewright::ui
