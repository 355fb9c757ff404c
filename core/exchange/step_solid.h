#pragma once

#include "core/exchange/flank_spline.h"
#include "core/exchange/track_part.h"

#include <TopoDS_Solid.hxx>
#include <vector>

namespace lobewright::exchange {

/// The fitted faces of one flank, sector after sector.
using FlankFaces = std::vector<FlankSpline>;

/// The track as a solid of Open CASCADE, millimetres. `faces`: one list for each flank of the part,
/// one spline for each sector.
TopoDS_Solid trackSolid(const TrackPart& part, const Sectors& sectors,
                        const std::vector<FlankFaces>& faces);

} // namespace lobewright::exchange
