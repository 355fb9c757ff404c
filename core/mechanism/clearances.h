#pragma once

#include "core/mechanism/opposed_pair.h"

#include <optional>

/// Gaps between moving parts that are no part of the gas or force calculation.
namespace lobewright::mechanism {

/// The tightest place between the rollers of neighbouring cylinders.
struct RollerGap {
    double gap = 0.0;           ///< [m]; < 0: they meet by that much
    double angle = 0.0;         ///< between the two cylinders [rad]
    double theta = 0.0;         ///< a shaft angle at which both rollers stand at one height [rad]
    double largestRadius = 0.0; ///< of a roller that would just touch its neighbour [m]
};
/// Rollers with radial axes come nearest at the inner edges of their faces: between axes an angle Δ
/// apart, at one height, the gap is 2·(ρ_in·sin(Δ/2) − r·cos(Δ/2)), and it is larger at unequal
/// heights. The lifts of two cylinders on one track have the same mean, so that they are equal
/// somewhere in every period: the motion never saves what the circle does not. Absent with a single
/// cylinder.
std::optional<RollerGap> tightestRollerGap(const OpposedPair& pair);

/// From crown to roller axis [m]: as given, else as the parts need it, behind a skirt of this
/// length [m] the roller and what of the track the skirt passes, with a fifth of the roller radius
/// as clearance [own estimate]. The rim over the pull flank of a closed track stands the stroke,
/// the roller radius and `rimThickness` [m] inward of the roller axis at outer dead centre.
double crownToRollerAxis(const OpposedPair& pair, double skirtLength, double rimThickness);

/// The tightest place between the end of a skirt and its track, over the turn.
struct SkirtGap {
    double gap = 0.0;   ///< along the cylinder [m]; < 0: they meet by that much
    double theta = 0.0; ///< shaft angle of cylinder 1 [rad]
};
/// To the rim of a closed track, or to the push flank of an open one on the pitch radius, to half a
/// degree of a period. Absent where the distance from crown to roller axis is not given: then the
/// parts are placed so that they clear each other.
std::optional<SkirtGap> skirtGap(const OpposedPair& pair, End end, double rimThickness);

} // namespace lobewright::mechanism
