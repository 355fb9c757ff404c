#include "core/contact/stations.h"

#include "core/contact/film.h"
#include "core/contact/line_contact.h"
#include "core/track/speeds.h"
#include "core/track/track.h"

#include <algorithm>
#include <cmath>

namespace lobewright::contact {

namespace {

using track::Flank;

/// A quantity that differs by flank, taken on the one that is loaded.
template <class OnFlank>
Samples onLoadedFlank(const Ride& ride, OnFlank&& onFlank) {
    Samples push = onFlank(Flank::push);
    if ((ride.force >= 0.0).all()) {
        return push;
    }
    return (ride.force >= 0.0).select(push, onFlank(Flank::pull));
}

StationContact straightStation(const RollerOnTrack& contact, const Ride& ride, double rho) {
    StationContact station;
    station.rho = rho;
    station.relativeRadius = loadedRadius(contact, ride, rho);
    const Samples load = bearingLoad(ride, station.relativeRadius);
    const Samples radius = (load > 0.0).select(station.relativeRadius, 1.0);
    const double length = contact.loadedWidth();
    station.pressure = linePeakPressure(load, length, radius, contact.modulus);
    station.halfWidth = lineHalfWidth(load, length, radius, contact.modulus);
    const Samples entrainment = onLoadedFlank(ride, [&](Flank flank) {
        return track::entrainmentSpeed(ride.lift, rho, contact.pitchRadius, contact.roller.radius,
                                       contact.omega, flank);
    });
    station.film = lineFilm(contact.lubricant, load, length, entrainment, radius, contact.modulus);
    return station;
}

/// Ordinates of the pressure ellipse, and the elliptical film in the middle.
StationContact crownedStation(const RollerOnTrack& contact, const Ride& ride,
                              const CrownedSamples& ellipse, const Samples& middleLoad,
                              const Samples& middleRadius, double rho) {
    StationContact station;
    station.rho = rho;
    station.relativeRadius = loadedRadius(contact, ride, rho);
    const Samples share = (rho - contact.pitchRadius) / ellipse.halfLength.max(1e-300);
    const Samples ordinate = (1.0 - share.square()).max(0.0).sqrt();
    station.pressure = ordinate * ellipse.pressure;
    station.halfWidth = ordinate * ellipse.halfWidth;
    if (rho != contact.pitchRadius) {
        station.film = Samples::Zero(share.size());
        return station;
    }
    const Samples entrainment = onLoadedFlank(ride, [&](Flank flank) {
        return track::entrainmentSpeed(ride.lift, rho, contact.pitchRadius, contact.roller.radius,
                                       contact.omega, flank);
    });
    station.film = ellipticalFilm(contact.lubricant, middleLoad, ellipse.ellipticity, entrainment,
                                  middleRadius, contact.modulus);
    return station;
}

Samples slipAt(const RollerOnTrack& contact, const Ride& ride, double rho) {
    return track::slip(ride.lift, rho, contact.pitchRadius, contact.roller.radius, contact.omega,
                       Flank::push)
        .magnitude();
}

/// Least film of the stations that have one; 0 where none has.
Samples leastFilm(const std::array<StationContact, 3>& stations) {
    constexpr double far = 1e300;
    Samples least = Samples::Constant(stations[0].film.size(), far);
    for (const StationContact& station : stations) {
        least = (station.film > 0.0).select(least.min(station.film), least);
    }
    return (least < far).select(least, 0.0);
}

void addCrowned(StationSamples& result, const RollerOnTrack& contact, const Ride& ride) {
    const Samples radius = loadedRadius(contact, ride, contact.pitchRadius);
    const Samples load = bearingLoad(ride, radius);
    const Samples sound = (load > 0.0).select(radius, 1.0);
    const CrownedSamples ellipse = crownedSamples(contact, load, sound);
    for (const Station station : allStations) {
        result.stations[static_cast<std::size_t>(station)] =
            crownedStation(contact, ride, ellipse, load, sound, contact.rho(station));
    }
    result.deepestShear = ellipse.shear;
    result.shearDepth = ellipse.depth;
    result.truncation = 2.0 * ellipse.halfLength / contact.loadedWidth();
}

void addStraight(StationSamples& result, const RollerOnTrack& contact, const Ride& ride) {
    const DeepestShear deepest = lineDeepestShear();
    Samples pressure = Samples::Zero(ride.force.size());
    Samples halfWidth = pressure;
    for (const Station station : allStations) {
        StationContact& at = result.stations[static_cast<std::size_t>(station)];
        at = straightStation(contact, ride, contact.rho(station));
        halfWidth = (at.pressure > pressure).select(at.halfWidth, halfWidth);
        pressure = pressure.max(at.pressure);
    }
    result.deepestShear = deepest.ratio * pressure;
    result.shearDepth = deepest.depth * halfWidth;
}

} // namespace

namespace {
double radiusOf(Station station, double pitchRadius, double loadedWidth) {
    const double half = 0.5 * loadedWidth;
    switch (station) {
    case Station::inner:
        return pitchRadius - half;
    case Station::outer:
        return pitchRadius + half;
    case Station::middle:
        break;
    }
    return pitchRadius;
}
} // namespace

double RollerOnTrack::rho(Station station) const {
    return radiusOf(station, pitchRadius, loadedWidth());
}

double stationRadius(const mechanism::Mechanism& mechanism, Station station) {
    return radiusOf(station, mechanism.pitchRadius, mechanism.roller.loadedWidth());
}

RollerOnTrack rollerOnTrack(const mechanism::Mechanism& mechanism, const Materials& materials,
                            const Lubricant& lubricant, double omega,
                            const std::vector<Ride>& rides) {
    RollerOnTrack contact;
    contact.roller = mechanism.roller;
    contact.pitchRadius = mechanism.pitchRadius;
    contact.omega = omega;
    contact.modulus = contactModulus(materials.trackElastic, materials.rollerElastic);
    contact.poissonRatio = materials.trackElastic.poissonRatio;
    contact.roughness = compositeRoughness(materials);
    contact.lubricant = lubricant;
    if (contact.roller.crownRadius) {
        contact.crown = crownTable(contact, rides);
    }
    return contact;
}

Samples loadedRadius(const RollerOnTrack& contact, const Ride& ride, double rho) {
    return onLoadedFlank(ride, [&](Flank flank) {
        return track::relativeRadius(ride.lift, rho, contact.roller.radius, flank);
    });
}

Samples bearingLoad(const Ride& ride, const Samples& relativeRadius) {
    return (relativeRadius > 0.0).select(ride.force.abs(), 0.0);
}

std::vector<StationContact> contactAcross(const RollerOnTrack& contact, const Ride& ride,
                                          const Samples& radii) {
    const Samples middle = loadedRadius(contact, ride, contact.pitchRadius);
    const Samples load = bearingLoad(ride, middle);
    const Samples sound = (load > 0.0).select(middle, 1.0);
    CrownedSamples ellipse;
    if (contact.roller.crownRadius) {
        ellipse = crownedSamples(contact, load, sound);
    }
    // Evenly spaced radii meet the pitch radius to rounding only.
    const double rounding = 1e-9 * contact.loadedWidth();
    std::vector<StationContact> lines;
    for (const double radius : radii) {
        const double rho =
            std::abs(radius - contact.pitchRadius) < rounding ? contact.pitchRadius : radius;
        lines.push_back(contact.roller.crownRadius
                            ? crownedStation(contact, ride, ellipse, load, sound, rho)
                            : straightStation(contact, ride, rho));
        lines.back().slip = slipAt(contact, ride, rho);
    }
    return lines;
}

StationSamples stationSamples(const RollerOnTrack& contact, const Ride& ride) {
    StationSamples result;
    if (contact.roller.crownRadius) {
        addCrowned(result, contact, ride);
    } else {
        addStraight(result, contact, ride);
    }
    const Eigen::Index count = ride.force.size();
    result.peakPressure = result.slip = result.pressureSlip = Samples::Zero(count);
    for (StationContact& station : result.stations) {
        station.slip = slipAt(contact, ride, station.rho);
        result.peakPressure = result.peakPressure.max(station.pressure);
        result.slip = result.slip.max(station.slip);
        result.pressureSlip = result.pressureSlip.max(station.pressure * station.slip);
    }
    result.film = leastFilm(result.stations);
    result.filmRatio = result.film / contact.roughness;
    return result;
}

} // namespace lobewright::contact
