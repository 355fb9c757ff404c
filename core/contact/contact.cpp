#include "core/contact/contact.h"

#include "core/contact/durability.h"
#include "core/contact/stations.h"
#include "core/mechanism/folded_angles.h"

#include <algorithm>
#include <cmath>

namespace lobewright::contact {

namespace {

/// Contacts of one end at all places of a period and just before the junctions.
struct Observed {
    const Samples& places;
    const StationSamples& samples;
    const Samples& edgePlaces;
    const StationSamples& edges;

    /// The largest value, of `scale` times what `of` gives for a sample of a station, over both
    /// sets; absent values do not count.
    template <class Of>
    std::optional<Place> extreme(double scale, Of&& of) const {
        std::optional<Place> best;
        const auto look = [&](const StationSamples& set, const Samples& theta) {
            for (const Station station : allStations) {
                const StationContact& at = set.stations[static_cast<std::size_t>(station)];
                for (Eigen::Index i = 0; i < theta.size(); ++i) {
                    const std::optional<double> value = of(at, i);
                    if (value && (!best || scale * *value > scale * best->value)) {
                        best = Place{*value, theta(i), station};
                    }
                }
            }
        };
        look(samples, places);
        look(edges, edgePlaces);
        return best;
    }
};

void addWorstPlaces(TrackContact& track, const Observed& observed, double roughness) {
    using Value = std::optional<double>;
    const auto positive = [](double value) { return value > 0.0 ? Value(value) : Value(); };
    track.highestPressure = observed.extreme(
        1.0, [&](const StationContact& s, Eigen::Index i) { return positive(s.pressure(i)); });
    track.lowestFilm = observed.extreme(
        -1.0, [&](const StationContact& s, Eigen::Index i) { return positive(s.film(i)); });
    if (track.lowestFilm) {
        track.lowestFilmRatio = track.lowestFilm;
        track.lowestFilmRatio->value /= roughness;
    }
    track.highestSlip = *observed.extreme(
        1.0, [](const StationContact& s, Eigen::Index i) { return Value(s.slip(i)); });
    track.highestPressureSlip = *observed.extreme(1.0, [](const StationContact& s, Eigen::Index i) {
        return Value(s.pressure(i) * s.slip(i));
    });
    track.undercut = observed.extreme(-1.0, [](const StationContact& s, Eigen::Index i) {
        return s.relativeRadius(i) <= 0.0 ? Value(s.relativeRadius(i)) : Value();
    });
    Eigen::Index deepest = 0;
    track.highestShear = observed.samples.deepestShear.maxCoeff(&deepest);
    track.highestShearDepth = observed.samples.shearDepth(deepest);
    if (observed.samples.truncation.size() > 0) {
        track.truncation = observed.samples.truncation.maxCoeff();
        if (observed.edges.truncation.size() > 0) {
            track.truncation = std::max(*track.truncation, observed.edges.truncation.maxCoeff());
        }
    }
}

/// A roller is at the same places lobe after lobe; each is evaluated once.
Ride foldedRide(const mechanism::FoldedAngles& folded, const loads::PistonLoads& piston) {
    const auto fold = [&folded](const Samples& f) { return folded.folded(f); };
    return {{fold(piston.lift.y), fold(piston.lift.y1), fold(piston.lift.y2), fold(piston.lift.y3)},
            fold(piston.contactForce)};
}

void addSamples(TrackContact& track, const StationSamples& samples,
                const mechanism::FoldedAngles& folded) {
    const auto unfold = [&folded](const Samples& f) { return folded.unfolded(f, 0); };
    for (std::size_t i = 0; i < samples.stations.size(); ++i) {
        const StationContact& at = samples.stations[i];
        track.stations[i] = {at.rho,
                             unfold(at.relativeRadius),
                             unfold(at.pressure),
                             unfold(at.halfWidth),
                             unfold(at.slip),
                             unfold(at.film)};
    }
    track.peakPressure = unfold(samples.peakPressure);
    track.deepestShear = unfold(samples.deepestShear);
    track.shearDepth = unfold(samples.shearDepth);
    track.film = unfold(samples.film);
    track.filmRatio = unfold(samples.filmRatio);
    track.slip = unfold(samples.slip);
    track.pressureSlip = unfold(samples.pressureSlip);
}

} // namespace

Result<Contact> solveContact(const Inputs& inputs) {
    const auto limit = allowable(inputs.materials);
    const auto width = loadedWidth(inputs.pair.mechanism());
    if (!limit) {
        return limit.problems();
    }
    if (!width) {
        return width.problems();
    }
    const loads::Loads& loads = inputs.loads;
    const mechanism::FoldedAngles folded(inputs.pair.period(), loads.theta, {0.0});
    PerEnd<Ride> rides;
    PerEnd<Ride> edgeRides;
    for (const End end : inputs.pair.pistons()) {
        rides[end] = foldedRide(folded, loads.piston[end]);
        edgeRides[end] = {loads.edgePiston[end].lift, loads.edgePiston[end].contactForce};
    }
    const RollerOnTrack contact =
        rollerOnTrack(inputs.pair.mechanism(), inputs.materials, inputs.lubricant, inputs.omega,
                      {rides.inlet, rides.exhaust, edgeRides.inlet, edgeRides.exhaust});
    Contact result;
    result.modulus = contact.modulus;
    for (const End end : inputs.pair.pistons()) {
        const StationSamples samples = stationSamples(contact, rides[end]);
        const StationSamples edges = stationSamples(contact, edgeRides[end]);
        TrackContact& track = result.track[end];
        addWorstPlaces(track, {folded.places(), samples, loads.edgeTheta, edges},
                       contact.roughness);
        addDurability(track, inputs, end, *limit);
        addSamples(track, samples, folded);
    }
    return result;
}

Result<std::vector<SpeedContact>> contactOverSpeeds(const loads::Inputs& running,
                                                    const Materials& materials,
                                                    const Lubricant& lubricant,
                                                    const std::vector<double>& speeds) {
    std::vector<SpeedContact> result;
    for (const double speed : speeds) {
        loads::Inputs at = running;
        at.omega = speed;
        const loads::Loads loads = loads::solveLoads(at);
        const RollerBearing unrated;
        const auto contact =
            solveContact({running.pair, loads, materials, lubricant, unrated, speed});
        if (!contact) {
            return contact.problems();
        }
        SpeedContact row;
        row.omega = speed;
        for (const End end : running.pair.pistons()) {
            const TrackContact& track = contact->track[end];
            row.highestPressure[end] = track.highestPressure ? track.highestPressure->value : 0.0;
            row.lowestContactForce[end] = loads.lowestContactForce[end].value;
            if (track.lowestFilmRatio) {
                row.lowestFilmRatio[end] = track.lowestFilmRatio->value;
            }
        }
        result.push_back(row);
    }
    return result;
}

} // namespace lobewright::contact
