#pragma once

#include "core/study/operating_points.h"

#include <string>

namespace lobewright::exchange {

/// Significant digits of the figures of a study. A point begins its search where its neighbours
/// ended and ends within the tolerance of the search, so that further digits depend on which
/// neighbours it had: those of a part of a sweep would differ from those of the whole by up to 1e-4
/// of the value, where the start of burn is searched for or a plenum fills slowly.
inline constexpr int tableDigits = 4;

/// A text as a field of RFC 4180 text: in quotes where it needs them.
std::string csvField(const std::string& text);

/// A study's table as RFC 4180 text: parameter, figures, then `failure` with the reason in words
/// where a point could not be solved and `beyond_limits` with why a solved one could not be run.
/// Lines end in CR LF, the parameter has nine significant digits, figures have `tableDigits`, gaps
/// are empty fields.
std::string tableCsv(const study::Table& table, bool withNames = true);

} // namespace lobewright::exchange
