#pragma once

#include "core/design/design.h"
#include "core/editing/change.h"

#include <vector>

/// What can be gripped on a lift curve or its derivatives, and the edit that a move of it asks for.
namespace lobewright::editing {

/// A bound between two segments, or a knot, of the first repetition of a pattern.
struct LiftGrip {
    enum class Kind { bound, knot };
    /// The curve it stands on. Up and down it moves: on the lift, the lift; on the velocity, the
    /// slope at the knot; on the acceleration, the lift of the knot by as much as makes the
    /// acceleration there follow, which an interpolating spline has no other number for.
    enum class Curve { lift, velocity, acceleration };

    Kind kind = Kind::bound;
    Curve curve = Curve::lift;
    End end = End::inlet;
    int index = 0;      ///< bound: of the segment that starts here, ≥ 1; knot: of the knot
    double angle = 0.0; ///< track angle [deg of the shaft]
    double value = 0.0; ///< lift as the file states it [mm]; slope [mm/deg]; [mm/deg²]
    double angleFrom = 0.0, angleTo = 0.0; ///< between its neighbours
    double valueFrom = 0.0, valueTo = 0.0; ///< what can be meant, in the unit of the value
    double shift = 0.0;                    ///< what the curve adds to the lift of a knot [mm]
    bool movesAngle = true;
    bool movesValue = true;
    Message label;         ///< "Inlet track, boundary 2"
    std::string anglePath; ///< field that states the angle or span
    std::string valuePath; ///< field that states the lift or slope; empty when it is fixed

    bool isSameAs(const LiftGrip& other) const {
        return kind == other.kind && curve == other.curve && end == other.end &&
               index == other.index;
    }
};

/// How far one key press or the grid of a drag goes [mm], [mm/deg], [mm/deg²].
double valueStep(LiftGrip::Curve curve, bool fine);
double angleStep(bool fine);

/// Empty for harmonics, and for an exhaust track that is the same as the inlet track. On velocity
/// and acceleration only knots.
std::vector<LiftGrip> liftGrips(const design::Design& design, End end,
                                LiftGrip::Curve curve = LiftGrip::Curve::lift);

/// Moves a grip to an angle [deg] and a value in its unit, kept between its neighbours; spans on
/// both sides of a bound change together, so that the pattern keeps its length.
Change moveGrip(const design::Design& design, const LiftGrip& grip, double angle, double value);

} // namespace lobewright::editing
