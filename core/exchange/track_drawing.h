#pragma once

#include "core/exchange/track_part.h"
#include "core/monitor.h"
#include "core/result.h"

#include <string>
#include <vector>

namespace lobewright::exchange {

struct DrawingOptions {
    /// Cylinders on which the flanks are drawn [m]; empty: through both edges and the middle of the
    /// roller.
    std::vector<double> radii;
    double tolerance = 1e-6; ///< of the polylines' chords [m], > 0
};

/// Drawing of the unrolled track as DXF text (format 2000, millimetres): the pitch curve at the
/// pitch radius and the line where each flank meets each cylinder, as polylines over one turn.
/// Across: arc length on that cylinder from polar angle 0 on, counted in the direction of rotation;
/// up: along the shaft towards the exhaust end, 0 where the roller axis stands at outer dead
/// centre; as seen from outside. Layers: PITCH_CURVE, PUSH_FLANK_R… and PULL_FLANK_R… (radius in
/// mm), FACES (planes of the blank), NOTES (design, units, tolerance). Errors: a radius outside the
/// face ("/radii_mm/0"), cancelled (path "").
Result<std::string> trackDrawing(const TrackPart& part, const DrawingOptions& options,
                                 Monitor& monitor);

} // namespace lobewright::exchange
