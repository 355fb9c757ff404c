#pragma once

#include "core/design/design.h"
#include "ui/editing/edit.h"

#include <QString>

#include <vector>

/// What can be gripped on a lift curve, and the edit that a move of it asks for.
namespace lobewright::ui {

/// A bound between two segments, or a knot, of the first repetition of a pattern.
struct LiftGrip {
    enum class Kind { bound, knot };
    Kind kind = Kind::bound;
    End end = End::inlet;
    int index = 0;      ///< bound: of the segment that starts here, ≥ 1; knot: of the knot
    double angle = 0.0; ///< track angle [deg of the shaft]
    double lift = 0.0;  ///< as the file states it [mm]
    bool movesAngle = true;
    bool movesLift = true;
    QString label;         ///< "Inlet track, bound 2"
    std::string anglePath; ///< field that states the angle or span
    std::string liftPath;  ///< field that states the lift; empty when it is fixed
};

/// Empty for harmonics, and for an exhaust track that is the same as the inlet track.
std::vector<LiftGrip> liftGrips(const design::Design& design, End end);

/// Moves a grip to an angle [deg] and a lift [mm], kept between its neighbours; spans on both
/// sides of a bound change together, so that the pattern keeps its length.
Edit moveGrip(const design::Design& design, const LiftGrip& grip, double angle, double lift);

} // namespace lobewright::ui
