#pragma once

#include "core/ends.h"
#include "core/track/roller.h"

#include <optional>
#include <span>
#include <vector>

namespace lobewright::mechanism {

/// How many pistons bound a chamber.
enum class Arrangement {
    opposed, ///< two, each on its own track
    oneSided ///< one against a fixed flat head, on the inlet track; both rows of ports lie in its
             ///< way
};

/// Turns the exhaust track against the inlet track along a helical spline.
struct Adjuster {
    double helixLead = 0.0; ///< axial travel per turn [m], outward positive for a forward setting
    double setting = 0.0;   ///< Δ [rad]
    double axial = 0.0;     ///< shift without turning [m], outward positive; of the only track of a
                            ///< one-sided engine
    bool operator==(const Adjuster&) const = default;
};

struct PistonGeometry {
    double length = 0.0;                   ///< crown to skirt end [m]
    std::vector<double> ringDistances;     ///< from the crown [m], ascending
    std::optional<double> rollerAxis = {}; ///< behind the crown [m]; absent: as far as parts need
    bool operator==(const PistonGeometry&) const = default;
};

struct Mechanism {
    Arrangement arrangement = Arrangement::opposed;
    int cylinders = 1;
    std::optional<std::vector<double>> cylinderAngles; ///< ψ_k [rad]; absent: evenly spaced from 0
    double pitchRadius = 0.0;                          ///< R [m]
    double bore = 0.0;                                 ///< [m]
    double clearance = 0.0; ///< gap between crowns (or crown and head), at IDC, δ = 0, no shift [m]
    double recess = 0.0;    ///< [m³]
    double exhaustLead = 0.0; ///< δ [rad], positive: the exhaust piston is ahead
    Adjuster adjuster;
    std::optional<PistonGeometry> piston;
    track::Roller roller;
    PerEnd<double> pistonMass; ///< with roller [kg]
    bool closedTrack = false;
    bool operator==(const Mechanism&) const = default;

    bool isOneSided() const { return arrangement == Arrangement::oneSided; }
    /// The ends at which a piston runs on a track.
    std::span<const End> pistons() const { return std::span(bothEnds).first(isOneSided() ? 1 : 2); }
    /// The end whose piston uncovers the ports of this side.
    End uncovers(End side) const { return isOneSided() ? End::inlet : side; }
};

/// ψ_k of every cylinder [rad], listed or evenly spaced.
std::vector<double> cylinderAngles(const Mechanism& mechanism);

} // namespace lobewright::mechanism
