#pragma once

#include "core/study/operating_points.h"

#include <string>

namespace lobewright::exchange {

/// A study's table as RFC 4180 text: parameter, figures, then `failure` with the reason in words
/// where a point could not be solved. Lines end in CR LF, nine significant digits, gaps are empty
/// fields.
std::string tableCsv(const study::Table& table, bool withNames = true);

} // namespace lobewright::exchange
