#pragma once

#include "core/exchange/track_part.h"
#include "core/monitor.h"
#include "core/result.h"

#include <string>

namespace lobewright::exchange {

/// The track as one closed solid in STEP (ISO 10303-21, schema AP214), millimetres: its faces as
/// B-splines that stray from the exact flank by no more than `tolerance` [m], bore, outside and
/// groove floor as cylinders, the ends as planes. The header names design, part and tolerance.
/// Safe from several threads; they wait for each other.
/// Errors: tolerance that the fit cannot meet, a solid that Open CASCADE finds invalid, cancelled
/// (all with path "").
Result<std::string> stepText(const TrackPart& part, double tolerance, Monitor& monitor);

} // namespace lobewright::exchange
