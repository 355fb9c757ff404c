#pragma once

#include "core/monitor.h"
#include "core/result.h"
#include "core/solution/solution.h"

#include <string>

namespace lobewright::cli {

/// Whether this build can make reports; one without the desktop's plots cannot.
bool canReport();

/// The bytes of the PDF. Computes the torque curve first, under the monitor. No display is needed.
/// Errors: cancelled, the gas cycle was not solved. Only where canReport().
Result<std::string> reportPdf(const solution::Solution& solution, Monitor& monitor);

} // namespace lobewright::cli
