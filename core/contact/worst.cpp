#include "core/contact/worst.h"

#include "core/contact/durability.h"
#include "core/contact/film.h"
#include "core/contact/line_contact.h"
#include "core/contact/stations.h"
#include "core/track/speeds.h"
#include "core/track/track.h"
#include "core/units.h"

#include <cmath>
#include <limits>

namespace lobewright::contact {

namespace {

constexpr double noFilm = std::numeric_limits<double>::infinity();

/// Exponents of [Dowson 1968] of speed and load, see lineFilm().
constexpr double speedExponent = 0.70, loadExponent = 0.13;

/// The worst of one roller so far, in what grows with them.
struct Worst {
    double stress2 = 0.0;         ///< p₀² over E*/(π·L) [N/m]
    double stressSlip2 = 0.0;     ///< the same times (slip/ω)²
    double loadTimesRadius = 0.0; ///< where the stress is highest [N·m]
    double filmLoad = noFilm;     ///< RollingShape::OnFlank::filmLoad over the load
    Place stressAt, stressSlipAt, filmAt;
};

struct Samplings {
    const RollingShape& shape;
    const Samples& force;
    const Samples& theta;
};

void look(Worst& worst, const Samplings& over) {
    for (Eigen::Index i = 0; i < over.force.size(); ++i) {
        const double load = std::abs(over.force[i]);
        if (load == 0.0) {
            continue;
        }
        const auto& flank = over.shape.flanks[over.force[i] >= 0.0 ? 0 : 1];
        const auto here = [&](const RollingShape::AtWorst& worstOf) {
            return Place{0.0, over.theta[i], worstOf.station[static_cast<std::size_t>(i)]};
        };
        const double curvature = flank.curvature.value[i];
        if (load * curvature > worst.stress2) {
            worst.stress2 = load * curvature;
            worst.loadTimesRadius = load / curvature;
            worst.stressAt = here(flank.curvature);
        }
        const double stressSlip2 = load * flank.slipCurvature.value[i];
        if (stressSlip2 > worst.stressSlip2) {
            worst.stressSlip2 = stressSlip2;
            worst.stressSlipAt = here(flank.slipCurvature);
        }
        const double filmLoad = flank.filmLoad.value[i];
        if (filmLoad < worst.filmLoad * load) {
            worst.filmLoad = filmLoad / load;
            worst.filmAt = here(flank.filmLoad);
        }
    }
}

/// The largest slip of the samples and the edges, whatever the load.
Place highestSlip(const EndShapes& shapes, const Samples& theta, const Samples& edgeTheta,
                  double omega) {
    const bool atEdge = shapes.edges.highestSlip2 > shapes.samples.highestSlip2;
    const RollingShape& shape = atEdge ? shapes.edges : shapes.samples;
    const Eigen::Index sample = shape.highestSlipSample;
    return {omega * std::sqrt(shape.highestSlip2), atEdge ? edgeTheta[sample] : theta[sample],
            shape.highestSlipStation};
}

void addWorst(TrackContact& track, const Inputs& inputs, End end, const EndShapes& shapes,
              double modulus) {
    const loads::Loads& loads = inputs.loads;
    const double length = inputs.pair.mechanism().roller.loadedWidth();
    const double hertz = modulus / (units::pi * length);
    Worst worst;
    look(worst, {shapes.samples, loads.piston[end].contactForce, loads.theta});
    // The shear below is that of the samples alone.
    const DeepestShear deepest = lineDeepestShear();
    track.highestShear = deepest.ratio * std::sqrt(hertz * worst.stress2);
    if (worst.stress2 > 0.0) {
        track.highestShearDepth =
            deepest.depth * lineHalfWidth(worst.loadTimesRadius, length, 1.0, modulus);
    }
    look(worst, {shapes.edges, loads.edgePiston[end].contactForce, loads.edgeTheta});
    const auto valued = [](Place place, double value) {
        place.value = value;
        return place;
    };
    if (worst.stress2 > 0.0) {
        track.highestPressure = valued(worst.stressAt, std::sqrt(hertz * worst.stress2));
    }
    track.highestPressureSlip =
        valued(worst.stressSlipAt, inputs.omega * std::sqrt(hertz * worst.stressSlip2));
    track.highestSlip = highestSlip(shapes, loads.theta, loads.edgeTheta, inputs.omega);
    if (worst.filmLoad < noFilm) {
        // H = 2.65·U^0.70·G^0.54·W^−0.13 with what does not change along the track put together.
        const double twice = 2.0 * modulus;
        const double material = std::pow(inputs.lubricant.pressureCoefficient * twice, 0.54);
        const double constant =
            speedExponent * std::log(inputs.lubricant.viscosity * inputs.omega / twice) +
            loadExponent * std::log(twice * length);
        const double film = loadExponent * std::log(worst.filmLoad);
        track.lowestFilm = valued(worst.filmAt, 2.65 * material * std::exp(film + constant));
        track.lowestFilmRatio =
            valued(worst.filmAt, track.lowestFilm->value / compositeRoughness(inputs.materials));
    }
}

} // namespace

namespace {

/// The station with the largest value at each sample; the first of equal ones.
RollingShape::AtWorst largest(const std::array<Samples, 3>& values) {
    RollingShape::AtWorst worst{
        values[0],
        std::vector<Station>(static_cast<std::size_t>(values[0].size()), allStations[0])};
    for (std::size_t s = 1; s < values.size(); ++s) {
        for (Eigen::Index i = 0; i < worst.value.size(); ++i) {
            if (values[s][i] > worst.value[i]) {
                worst.value[i] = values[s][i];
                worst.station[static_cast<std::size_t>(i)] = allStations[s];
            }
        }
    }
    return worst;
}

} // namespace

RollingShape rollingShape(const mechanism::Mechanism& mechanism, const motion::LiftSamples& lift) {
    const double radius = mechanism.pitchRadius, roller = mechanism.roller.radius;
    RollingShape shape;
    shape.highestSlip2 = -1.0;
    std::array<Samples, 3> slip2;
    for (std::size_t s = 0; s < 3; ++s) {
        const double rho = stationRadius(mechanism, allStations[s]);
        const track::Slip slip = track::slip(lift, rho, radius, roller, 1.0, track::Flank::push);
        slip2[s] = slip.rolling.square() + slip.axial.square();
        Eigen::Index at = 0;
        const double most = lift.y.size() > 0 ? slip2[s].maxCoeff(&at) : -1.0;
        if (most > shape.highestSlip2) {
            shape.highestSlip2 = most;
            shape.highestSlipSample = at;
            shape.highestSlipStation = allStations[s];
        }
    }
    for (const track::Flank flank : {track::Flank::push, track::Flank::pull}) {
        std::array<Samples, 3> curvature, slipCurvature, withoutFilm;
        for (std::size_t s = 0; s < 3; ++s) {
            const double rho = stationRadius(mechanism, allStations[s]);
            const Samples relative = track::relativeRadius(lift, rho, roller, flank);
            const Samples speed =
                track::entrainmentSpeed(lift, rho, radius, roller, 1.0, flank).abs();
            curvature[s] = (relative > 0.0).select(1.0 / relative, 0.0);
            slipCurvature[s] = curvature[s] * slip2[s];
            // R·U^0.70·W^−0.13 with U ~ u/R and W ~ N/R.
            const Samples film = (1.0 - speedExponent + loadExponent) * relative.max(1e-300).log() +
                                 speedExponent * speed.max(1e-300).log();
            withoutFilm[s] =
                -(relative > 0.0 && speed > 0.0).select((film / loadExponent).exp(), noFilm);
        }
        auto& on = shape.flanks[flank == track::Flank::push ? 0 : 1];
        on = {largest(curvature), largest(slipCurvature), largest(withoutFilm)};
        on.filmLoad.value = -on.filmLoad.value;
    }
    return shape;
}

Result<Contact> worstContact(const Inputs& inputs, const PerEnd<EndShapes>& shapes) {
    const auto limit = allowable(inputs.materials);
    const auto width = loadedWidth(inputs.pair.mechanism());
    if (!limit) {
        return limit.problems();
    }
    if (!width) {
        return width.problems();
    }
    Contact result;
    result.modulus = contactModulus(inputs.materials.trackElastic, inputs.materials.rollerElastic);
    for (const End end : inputs.pair.pistons()) {
        addWorst(result.track[end], inputs, end, shapes[end], result.modulus);
        addDurability(result.track[end], inputs, end, *limit);
    }
    return result;
}

} // namespace lobewright::contact
