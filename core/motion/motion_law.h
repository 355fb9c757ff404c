#pragma once

#include "core/motion/pattern.h"
#include "core/motion/piece.h"
#include "core/text/message.h"

#include <span>
#include <vector>

namespace lobewright::motion {

/// What handbooks tabulate for unit rise over unit span (dimensionless), closed forms.
/// A segment with lift change h over span β has peak y' = C_v·h/β, y'' = C_a·h/β²,
/// y''' = C_j·h/β³ and peak y'·y'' = C_M·h²/β³.
struct CharacteristicFactors {
    double velocity = 0.0;     ///< C_v
    double acceleration = 0.0; ///< C_a
    double jerk = 0.0;         ///< C_j; infinite where the acceleration jumps, ends included
    double jerkInside = 0.0;   ///< largest finite jerk between jumps
    double torque = 0.0;       ///< C_M = max(s'·s'')
    bool operator==(const CharacteristicFactors&) const = default;
};

/// One row of the table of laws: all that the program knows of one.
struct LawRow {
    Law law;
    const char* key; ///< in files
    TextId label;    ///< for people
    /// Begin and origin as fractions of the span, up to its middle. The second half is the point
    /// reflection, s(x) + s(1 − x) = 1 for every law here.
    std::vector<Piece> firstHalf;
    CharacteristicFactors factors;
    bool jumpsInTheMiddle = false; ///< its acceleration
};
/// In the order of Law.
std::span<const LawRow> laws();
const LawRow& rowOf(Law law);

/// Position and derivatives of a law for unit rise over unit span, x in [0, 1] (dimensionless;
/// x outside is continued with the end values and zero derivatives). Right-hand limits at the
/// junctions inside a law; at x = 1 the left-hand limit. Source: [VDI 2143-1; Norton 2009].
Lift unitLift(const LawRow& row, double x);
Lift unitLift(Law law, double x);

/// Where pieces of a law meet inside the span, as fractions of it, ascending: mid-span of the
/// parabolic law, the ends of the ramps of the modified laws; empty for the others.
std::vector<double> innerJunctions(Law law);

CharacteristicFactors characteristicFactors(Law law);

/// Peaks of one rise or return, from the factors of its law.
struct SegmentPeaks {
    int segment = 0;               ///< index in the pattern
    CharacteristicFactors factors; ///< of its law
    double velocity = 0.0;         ///< max |y'| [m/rad]
    double acceleration = 0.0;     ///< max |y''| [m/rad²]
    double jerk = 0.0;             ///< max |y'''| between jumps [m/rad³]
    double torque = 0.0;           ///< max |y'·y''| [m²/rad³]
};
/// One entry for each rise and return of a pattern that LiftCurve::make accepts; dwells have none.
std::vector<SegmentPeaks> segmentPeaks(const SegmentShape& shape);

} // namespace lobewright::motion
