#pragma once

#include "core/contact/contact.h"
#include "core/contact/crown_table.h"

#include <memory>
#include <vector>

namespace lobewright::contact {

/// Motion and contact force N of one roller over some samples [N]; negative on the pull flank.
struct Ride {
    motion::LiftSamples lift;
    Samples force;
};

/// ρ of a station [m].
double stationRadius(const mechanism::Mechanism& mechanism, Station station);

/// What the contact of one roller depends on besides motion and load.
struct RollerOnTrack {
    track::Roller roller;
    double pitchRadius = 0.0; ///< R [m]
    double omega = 0.0;       ///< [rad/s]
    double modulus = 0.0;     ///< E* [Pa]
    double poissonRatio = 0.3;
    double roughness = 0.0; ///< of both surfaces together [m]
    Lubricant lubricant;
    std::shared_ptr<const CrownTable> crown; ///< null for a straight roller

    double rho(Station station) const;
    double loadedWidth() const { return roller.loadedWidth(); }
};

/// For these rides, and only for these.
RollerOnTrack rollerOnTrack(const mechanism::Mechanism& mechanism, const Materials& materials,
                            const Lubricant& lubricant, double omega,
                            const std::vector<Ride>& rides);

/// R_rel at ρ of whichever flank carries the load [m], shape (samples).
Samples loadedRadius(const RollerOnTrack& contact, const Ride& ride, double rho);

/// Load where the roller touches a sound track, 0 elsewhere [N].
Samples bearingLoad(const Ride& ride, const Samples& relativeRadius);

/// The contact at all stations and what follows from it, over the samples of a ride.
struct StationSamples {
    std::array<StationContact, 3> stations;
    Samples peakPressure, deepestShear, shearDepth, film, filmRatio, slip, pressureSlip;
    Samples truncation; ///< long axis of the ellipse/loaded width; empty without a crown
};
StationSamples stationSamples(const RollerOnTrack& contact, const Ride& ride);

/// The contact on lines along the track at these radii [m], slip included. Crowned rollers have a
/// film on the middle line only.
std::vector<StationContact> contactAcross(const RollerOnTrack& contact, const Ride& ride,
                                          const Samples& radii);

/// Table over the radii that these samples need.
std::shared_ptr<const CrownTable> crownTable(const RollerOnTrack& contact,
                                             const std::vector<Ride>& rides);

/// Elliptical contacts of a crowned roller over the samples.
struct CrownedSamples {
    Samples ellipticity; ///< axis across rolling/axis along rolling
    Samples pressure;    ///< p₀ [Pa], at least that of a straight roller where the ellipse is cut
    Samples halfWidth;   ///< semi-axis in the direction of rolling [m]
    Samples halfLength;  ///< semi-axis along the roller [m]
    Samples shear, depth; ///< deepest shear [Pa] and its depth [m]
};
/// Load ≥ 0 [N]; relative radius > 0 [m], any where nothing bears.
CrownedSamples crownedSamples(const RollerOnTrack& contact, const Samples& load,
                              const Samples& relativeRadius);

} // namespace lobewright::contact
