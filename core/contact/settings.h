#pragma once

#include <optional>
#include <string>

namespace lobewright::contact {

/// Elastic data of one body.
struct Elastic {
    double modulus = 206e9;     ///< E [Pa]
    double poissonRatio = 0.30; ///< ν
    bool operator==(const Elastic&) const = default;
};

struct Materials {
    std::string track = "case-carburised-mq"; ///< key into the track materials table
    std::optional<double> allowableStress;    ///< σ_allow [Pa]; absent: from the table
    Elastic trackElastic, rollerElastic;
    double trackRoughness = 0.2 / 1e6;  ///< Rq [m]
    double rollerRoughness = 0.1 / 1e6; ///< Rq [m]
    bool operator==(const Materials&) const = default;
};

/// Oil at the track.
struct Lubricant {
    double viscosity = 0.010;            ///< η₀ [Pa·s]
    double pressureCoefficient = 2.0e-8; ///< α_p [1/Pa]
    bool operator==(const Lubricant&) const = default;
};

/// Bearing inside the roller; ratings are the outer-ring-loaded (track-roller) ones.
struct RollerBearing {
    std::optional<double> dynamicRating; ///< C [N]; absent: life is not available
    std::optional<double> staticRating;  ///< C₀ [N]
    bool operator==(const RollerBearing&) const = default;
};

/// Bearing that carries the thrust of a one-sided engine's track into the housing.
struct ThrustBearing {
    std::optional<double> dynamicRating; ///< C of a roller thrust bearing [N]; absent: no life
    bool operator==(const ThrustBearing&) const = default;
};

} // namespace lobewright::contact
