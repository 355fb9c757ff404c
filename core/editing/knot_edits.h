#pragma once

#include "core/design/design.h"
#include "core/editing/change.h"
#include "core/motion/knot_fit.h"

#include <optional>

/// Knots of a free-form track: put in, taken out, let free; and other descriptions turned into
/// them. Pure functions of the design.
namespace lobewright::editing {

/// Knots moved by hand stay this far apart; closer ones can be typed [deg].
inline constexpr double closestKnots = 0.5;

/// The end whose pattern both share: the inlet where the exhaust track is the same.
End patternEnd(const design::Design& design, End end);
/// "Inlet track", "Both tracks"; the second within a sentence.
TextId trackLabel(const design::Design& design, End end);
TextId trackName(const design::Design& design, End end);

/// A knot that lies on the curve, which stays as it is; any angle of the track [deg]. Nothing
/// where the track has no knots or one stands closer than `closestKnots`.
std::optional<Change> addKnot(const design::Design& design, End end, double angle);
/// Nothing where fewer than three would be left.
std::optional<Change> removeKnot(const design::Design& design, End end, int index);
/// Lets the spline choose the slope at a knot; nothing where it does already.
std::optional<Change> freeSlope(const design::Design& design, End end, int index);
/// The knot of a pattern at this angle [deg], −1: none.
int knotAt(const design::Design& design, End end, double angle);

/// What the curve adds to the lifts of its knots, so that its lowest place has lift 0 [m]; 0 where
/// the track has no knots.
double knotShift(const design::Design& design, End end);

/// One pattern for both tracks becomes two; nothing where the exhaust track has its own.
std::optional<Change> ownExhaustTrack(const design::Design& design);

/// Knots to a millionth of a degree and a hundredth of a micrometre, far below the error of any
/// fit, so that files and fields stay readable.
motion::KnotShape readable(motion::KnotShape shape);

/// The knots of a fit in place of the present description; its name says how far it strays.
Change knotsEdit(const design::Design& design, End end, const motion::KnotFit& fit);

} // namespace lobewright::editing
