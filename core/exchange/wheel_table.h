#pragma once

#include "core/gas/models/settings.h"
#include "core/result.h"

#include <cstdint>
#include <string_view>
#include <vector>

namespace lobewright::exchange {

/// No table of a wheel is larger [bytes].
inline constexpr std::uintmax_t largestWheelTable = std::uintmax_t{4} << 20;

/// Reads the measured points of a compressor wheel: corrected speed [1/min], corrected flow [kg/s],
/// pressure ratio and isentropic efficiency (0 … 1), in any order of rows. Columns as columnsOf()
/// has them; lines that begin with "#", empty lines and one line of names are skipped, further
/// columns are ignored. Errors: a row that does not begin with four numbers ("/lines/12"), no rows.
Result<std::vector<gas::WheelPoint>> readWheelTable(std::string_view text);

} // namespace lobewright::exchange
