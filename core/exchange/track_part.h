#pragma once

#include "core/design/design.h"
#include "core/exchange/flank_section.h"
#include "core/result.h"

#include <string>
#include <vector>

namespace lobewright::exchange {

/// One track as a part of its own, ready to be drawn, meshed or cut: every dimension settled, no
/// undercut anywhere on its face. Polar angles as in the engine with the exhaust lead and the
/// adjuster setting; z = 0 where the roller axis stands at outer dead centre.
struct TrackPart {
    std::string title;  ///< of the design, never empty
    std::string origin; ///< file and date, said in text exports; empty: not said
    End end = End::inlet;
    double pitchRadius = 0.0; ///< R [m]
    track::Roller roller;
    std::vector<FlankForm> flanks; ///< push, and pull where the track is closed
    double boreRadius = 0.0;       ///< [m]
    double faceInner = 0.0;        ///< where the face begins: bore, or floor of the groove [m]
    double faceOuter = 0.0;        ///< where it ends: outside radius of the blank [m]
    double backHeight = 0.0;       ///< lift coordinate of the plane behind the push flank [m]
    double frontHeight = 0.0;      ///< of the plane over the pull flank; closed tracks only [m]

    bool isClosed() const { return flanks.size() == 2; }
    const motion::LiftCurve& curve() const { return flanks.front().curve; }
    const track::Placement& placement() const { return flanks.front().placement; }
    /// The track's name in messages and files, e.g. "inlet track".
    Message name() const;
};

/// The track of one end of a design. Errors, with paths into the design file: a broken pattern or
/// roller; a blank that does not cover the roller's contact, or whose parts meet; an undercut flank
/// (place, and the largest roller radius that would do).
Result<TrackPart> trackPart(const design::Design& design, End end);

/// Parts of one turn between which the track faces are divided: a turn from the first outer dead
/// centre on, cut at every repetition of the pattern and where the acceleration jumps, so that the
/// curvature is continuous along each.
struct Sectors {
    std::vector<double> bounds; ///< pattern angles [rad], ascending, the last 2π after the first
    std::size_t seam = 0;       ///< index of a bound near half a turn where y' = 0, as at the first
};
Sectors sectors(const motion::LiftCurve& curve);

/// Bounds of the closed forms within [begin, end] of the track angle, both ends included; more of
/// them where there are junctions or many harmonics.
std::vector<double> stretchBounds(const motion::LiftCurve& curve, double begin, double end);

} // namespace lobewright::exchange
