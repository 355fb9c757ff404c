#pragma once

#include "core/ends.h"
#include "core/mechanism/opposed_pair.h"
#include "core/ports/row.h"

#include <optional>
#include <vector>

namespace lobewright::ports {

/// A stretch along the bore [m], measured inward from where the crown of that end stands at outer
/// dead centre without adjuster shift, as `Row::edge` is; from < to.
struct Stretch {
    double from = 0.0;
    double to = 0.0;
    bool meets(const Stretch& other) const { return from < other.to && other.from < to; }
};

/// A piston ring that passes a row of ports wide enough to let it spring out.
struct RingOverPort {
    int ring = 0;          ///< index into PistonGeometry::ringDistances
    int row = 0;           ///< index of the row
    End side = End::inlet; ///< of the row: both, where one piston uncovers both
};

/// A row that the skirt's end passes into near inner dead centre.
struct RowUnderSkirt {
    int row = 0;
    End side = End::inlet;
    double depth = 0.0; ///< uncovered [m]
};

/// What the piston of one end touches of the liner in a turn.
struct LinerSweep {
    Stretch crown;                     ///< travel of the crown
    Stretch skirt;                     ///< travel of the skirt's end
    std::vector<Stretch> rings;        ///< travel of each ring
    std::optional<double> skirtMargin; ///< from the skirt's end at IDC to the nearest row [m]; < 0:
                                       ///< it uncovers one
    std::vector<RowUnderSkirt> rowsUncoveredBySkirt;
    std::vector<RingOverPort> ringsOverWide; ///< wider than `widePort` of the bore
};

/// Chord of a port, as share of the bore, above which a ring that passes it needs care (own
/// estimate; practice for unsupported rings ranges from a third to two thirds of the bore).
inline constexpr double widePort = 0.4;

/// The row as a stretch along the bore.
Stretch stretchOf(const Row& row);

/// Sweeps of both pistons; that of a head is empty. Needs the piston section of the mechanism;
/// without it only `crown` is filled.
PerEnd<LinerSweep> linerSweep(const Rows& rows, const mechanism::OpposedPair& pair);

/// Gap between the crowns where they are nearest [m], with the adjuster as set and at rest.
struct CrownGap {
    double asSet = 0.0;
    std::optional<double> atRest; ///< absent: the crowns would meet there
};
CrownGap leastCrownGap(const mechanism::OpposedPair& pair);

} // namespace lobewright::ports
