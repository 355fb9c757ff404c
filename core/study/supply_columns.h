#pragma once

#include "core/design/design.h"

#include <string>
#include <vector>

namespace lobewright::study {

/// Names followed by the figures of the design's air supply that studies over speed and load show:
/// the operating line of a compressor, its turbine, the pressures of a pump, the fuel that a
/// mixture loses. None for a reservoir or a blower with the fuel injected.
std::vector<std::string> withSupplyColumns(std::vector<std::string> names,
                                           const design::Design& design);

} // namespace lobewright::study
