#pragma once

#include "core/design/design.h"
#include "core/draft/size.h"

#include <optional>

namespace lobewright::draft {

/// Rows of ports after the time-areas that the mean pressure asks for at the rated speed; sets
/// design.ports. The tracks, the bore and the exhaust lead must be there.
void makePorts(const Size& size, const Tuning& tuning, Notebook& notebook, design::Design& design);

/// What the supply pressure may be [Pa].
Span supplyRange(std::optional<study::Charging> charging);

} // namespace lobewright::draft
