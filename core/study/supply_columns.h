#pragma once

#include "core/design/design.h"

#include <string>
#include <vector>

namespace lobewright::study {

/// Figures of the air supply of a design that studies over speed and load show beside those that
/// every engine has: the operating line of a compressor, its turbine, the pressures of a pump, the
/// fuel that a mixture loses. Empty for a reservoir or a blower with the fuel injected.
std::vector<std::string> supplyColumns(const design::Design& design);

/// Names followed by those of the design's air supply.
std::vector<std::string> withSupplyColumns(std::vector<std::string> names,
                                           const design::Design& design);

} // namespace lobewright::study
