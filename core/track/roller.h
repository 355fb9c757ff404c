#pragma once

#include <optional>

namespace lobewright::track {

/// The roller of one piston; its axis is radial to the shaft, its middle at the pitch radius.
struct Roller {
    double radius = 0.0;               ///< [m]
    double width = 0.0;                ///< [m], along the radial axis
    std::optional<double> crownRadius; ///< [m]; absent: cylindrical
    double edgeRelief = 0.0;           ///< [m] at each end that carries no load
    bool operator==(const Roller&) const = default;
};

} // namespace lobewright::track
