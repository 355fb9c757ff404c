#pragma once

#include "core/exchange/track_mesh.h"

#include <string>

namespace lobewright::exchange {

/// A mesh as binary STL, coordinates in millimetres. Its 80 bytes of free text name the design, the
/// part, the units and the chord error [m].
std::string stlBytes(const TrackPart& part, const Mesh& mesh, double chordError);

} // namespace lobewright::exchange
