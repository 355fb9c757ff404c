#pragma once

#include "core/track/roller.h"
#include "core/track/track.h"

#include <optional>

namespace lobewright::track {

/// A place on a flank.
struct Place {
    double phi = 0.0; ///< pattern angle in [0, period) [rad]
    double rho = 0.0; ///< position along the roller [m]
};

/// The smallest value of something over one period and the whole width, and where it lies.
struct Smallest {
    double value = 0.0;
    Place place;
};

/// Smallest relative radius of curvature on a flank [m], exact formula, both sides of junctions.
/// Zero or negative: undercut, worst near this place. To about 1e-12 of r in value.
/// Preconditions: checkRoller finds nothing.
Smallest smallestRelativeRadius(const motion::LiftCurve& curve, double pitchRadius,
                                const Roller& roller, Flank flank);

/// Whether a limit [m] this large means that any roller or cutter will do: a track that is flat but
/// for rounding has a limit of astronomic size. A thousand pitch radii [own estimate].
inline bool isAnyRadius(double limit, double pitchRadius) {
    return !(limit < 1e3 * pitchRadius);
}

/// Largest roller radius that cuts no cusp anywhere on a width of this pitch radius [m]; absent
/// when every radius will do. The roller's own radius is not used.
std::optional<Smallest> largestRollerRadius(const motion::LiftCurve& curve, double pitchRadius,
                                            double width, Flank flank);

/// Largest radius of a cutter that does not gouge the hollow stretches of a flank that the roller
/// of this radius runs on, r + 1/κ with κ the concave curvature of the pitch curve [m]; absent when
/// there is no hollow stretch.
std::optional<Smallest> largestCutterRadius(const motion::LiftCurve& curve, double pitchRadius,
                                            const Roller& roller, Flank flank);

} // namespace lobewright::track
