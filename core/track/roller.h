#pragma once

#include "core/result.h"

#include <optional>

namespace lobewright::track {

/// The roller of one piston; its axis is radial to the shaft, its middle at the pitch radius.
struct Roller {
    double radius = 0.0;               ///< [m]
    double width = 0.0;                ///< [m], along the radial axis
    std::optional<double> crownRadius; ///< [m]; absent: cylindrical
    double edgeRelief = 0.0;           ///< [m] at each end that carries no load
    bool operator==(const Roller&) const = default;

    double innerEdge(double pitchRadius) const { return pitchRadius - 0.5 * width; } ///< ρ [m]
    double outerEdge(double pitchRadius) const { return pitchRadius + 0.5 * width; } ///< ρ [m]
    double loadedWidth() const { return width - 2.0 * edgeRelief; }                  ///< L [m]
};

/// Everything wrong with a roller on this pitch radius [m]; paths relative to the mechanism, e.g.
/// "/roller/radius_mm". Empty: the functions of this folder accept it.
Problems checkRoller(const Roller& roller, double pitchRadius);

} // namespace lobewright::track
