#include "core/contact/contact.h"

#include "core/contact/bearing_life.h"
#include "core/contact/stations.h"
#include "core/contact/track_materials.h"
#include "core/mechanism/folded_angles.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::contact {

namespace {

/// Contacts of one end at all places of a period and just before the junctions.
struct Observed {
    const Samples& places;
    const StationSamples& samples;
    const Samples& edgePlaces;
    const StationSamples& edges;

    /// The largest value, of `scale` times what `of` gives for a station, over both sets.
    template <class Of>
    std::optional<Place> extreme(double scale, Of&& of) const {
        std::optional<Place> best;
        const auto look = [&](const StationSamples& set, const Samples& theta) {
            for (const Station station : allStations) {
                const StationContact& at = set.stations[static_cast<std::size_t>(station)];
                const auto& [values, counts] = of(at);
                for (Eigen::Index i = 0; i < values.size(); ++i) {
                    if (counts(i) && (!best || scale * values(i) > scale * best->value)) {
                        best = Place{values(i), theta(i), station};
                    }
                }
            }
        };
        look(samples, places);
        look(edges, edgePlaces);
        return best;
    }
};

using Mask = Eigen::Array<bool, Eigen::Dynamic, 1>;

void addWorstPlaces(TrackContact& track, const Observed& observed, double roughness) {
    using Values = std::pair<Samples, Mask>;
    const auto positive = [](const Samples& f) { return Values{f, f > 0.0}; };
    track.highestPressure =
        observed.extreme(1.0, [&](const StationContact& s) { return positive(s.pressure); });
    track.lowestFilm =
        observed.extreme(-1.0, [&](const StationContact& s) { return positive(s.film); });
    if (track.lowestFilm) {
        track.lowestFilmRatio = track.lowestFilm;
        track.lowestFilmRatio->value /= roughness;
    }
    track.highestSlip = *observed.extreme(1.0, [](const StationContact& s) {
        return Values{s.slip, Mask::Constant(s.slip.size(), true)};
    });
    track.highestPressureSlip = *observed.extreme(1.0, [](const StationContact& s) {
        return Values{s.pressure * s.slip, Mask::Constant(s.slip.size(), true)};
    });
    track.undercut = observed.extreme(-1.0, [](const StationContact& s) {
        return Values{s.relativeRadius, s.relativeRadius <= 0.0};
    });
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

RollerLife rollerLife(const Inputs& inputs, End end) {
    const loads::Nodes& nodes = inputs.loads.nodes;
    const loads::PistonLoads& piston = nodes.piston[end];
    const mechanism::Mechanism& mechanism = inputs.pair.mechanism();
    const double radius = mechanism.pitchRadius;
    const Samples path = nodes.weight * (radius * radius + piston.lift.y1.square()).sqrt();

    RollerLife life;
    life.turnsPerShaftTurn =
        inputs.pair.curve(end).lobes() * path.sum() / (units::turn * mechanism.roller.radius);
    life.meanSpeed = life.turnsPerShaftTurn * inputs.omega;
    life.equivalentLoad = equivalentLoad(piston.contactForce, path);
    if (inputs.bearing.dynamicRating && life.equivalentLoad > 0.0) {
        life.ratingLife = ratingLife(*inputs.bearing.dynamicRating, life.equivalentLoad);
        life.life = *life.ratingLife * 1e6 * units::turn / life.meanSpeed;
    }
    const double largest = inputs.loads.highestContactForce[end].value;
    if (inputs.bearing.staticRating && largest > 0.0) {
        life.staticSafety = *inputs.bearing.staticRating / largest;
        life.staticStress = staticStress(*life.staticSafety);
    }
    return life;
}

struct Allowable {
    double stress = 0.0;
    std::optional<double> cycles;
};

Result<Allowable> allowable(const Materials& materials) {
    const TrackMaterial* material = findTrackMaterial(materials.track);
    if (materials.allowableStress) {
        return Allowable{*materials.allowableStress,
                         material ? std::optional(material->cycles) : std::nullopt};
    }
    if (!material) {
        return Problem{"/materials/track",
                       Message(LW_TEXT("is \"%1\", which is not in the table of track materials, "
                                       "and no allowable stress is given"),
                               materials.track)};
    }
    return Allowable{material->allowableStress, material->cycles};
}

void addDurability(TrackContact& track, const Inputs& inputs, End end, const Allowable& limit) {
    track.allowableStress = limit.stress;
    if (track.highestPressure) {
        track.safety = limit.stress / track.highestPressure->value;
    }
    constexpr double hour = 3600.0;
    track.passesPerTurn = inputs.pair.mechanism().cylinders;
    const double passesPerSecond = track.passesPerTurn * inputs.omega / units::turn;
    track.passesPerHour = passesPerSecond * hour;
    if (limit.cycles) {
        track.timeToCycles = *limit.cycles / passesPerSecond;
    }
    track.life = rollerLife(inputs, end);
}

Result<double> loadedWidth(const mechanism::Mechanism& mechanism) {
    const double width = mechanism.roller.loadedWidth();
    if (!(width > 0.0)) {
        return Problem{
            "/mechanism/roller/edge_relief_mm",
            Message(
                LW_TEXT("is %1 at each end of a roller %2 wide: no width is left to carry load"),
                Amount(mechanism.roller.edgeRelief, in::mm),
                Amount(mechanism.roller.width, in::mm))};
    }
    return width;
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
