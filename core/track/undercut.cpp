#include "core/track/undercut.h"

#include <boost/math/tools/minima.hpp>

#include <cassert>
#include <cmath>
#include <cstdint>
#include <limits>
#include <vector>

namespace lobewright::track {
namespace {

using motion::Lift;
using motion::LiftCurve;

constexpr int anglesPerStretch = 16; ///< only to find the basins of the minima
constexpr int stations = 5;
constexpr int bits = std::numeric_limits<double>::digits / 2; ///< all that a minimum can resolve

struct Width {
    double inner, outer;
};

/// One period of a curve, stretch by stretch, so that both limits at a junction are seen.
struct Stretch {
    const LiftCurve* curve;
    double begin, end;

    Lift at(double phi) const { return phi < end ? curve->at(phi) : curve->before(end); }
};

/// Smallest of f(ρ) over the width: basin from a few stations, then refined; edges included.
template <class F>
Smallest overWidth(const F& f, Width width) {
    Smallest best{std::numeric_limits<double>::infinity(), {}};
    int nearest = 0;
    for (int i = 0; i < stations; ++i) {
        const double rho = width.inner + (width.outer - width.inner) * i / (stations - 1);
        const double value = f(rho);
        if (value < best.value) {
            best = {value, {0.0, rho}};
            nearest = i;
        }
    }
    if (nearest == 0 || nearest == stations - 1 || !std::isfinite(best.value))
        return best;
    const double step = (width.outer - width.inner) / (stations - 1);
    std::uintmax_t steps = 60;
    const auto refined = boost::math::tools::brent_find_minima(f, best.place.rho - step,
                                                               best.place.rho + step, bits, steps);
    if (refined.second < best.value)
        best = {refined.second, {0.0, refined.first}};
    return best;
}

/// Smallest of f(lift, ρ) over a period and the width.
template <class F>
Smallest smallest(const LiftCurve& curve, Width width, const F& f) {
    Smallest best{std::numeric_limits<double>::infinity(), {}};
    const auto at = [&](const Stretch& stretch, double phi) {
        const Lift lift = stretch.at(phi);
        Smallest here = overWidth([&](double rho) { return f(lift, rho); }, width);
        here.place.phi = phi;
        return here;
    };
    const auto keep = [&](const Smallest& candidate) {
        if (candidate.value < best.value)
            best = candidate;
    };
    const std::vector<double>& bounds = curve.divisions();
    for (std::size_t s = 0; s + 1 < bounds.size(); ++s) {
        const Stretch stretch{&curve, bounds[s], bounds[s + 1]};
        const double step = (stretch.end - stretch.begin) / anglesPerStretch;
        std::vector<Smallest> grid;
        for (int i = 0; i <= anglesPerStretch; ++i) {
            const double phi = i < anglesPerStretch ? stretch.begin + i * step : stretch.end;
            grid.push_back(at(stretch, phi));
            keep(grid.back());
        }
        for (std::size_t i = 0; i < grid.size(); ++i) {
            const std::size_t left = i > 0 ? i - 1 : i, right = i + 1 < grid.size() ? i + 1 : i;
            if (!std::isfinite(grid[i].value) || grid[i].value > grid[left].value ||
                grid[i].value > grid[right].value)
                continue;
            std::uintmax_t steps = 60;
            const auto refined = boost::math::tools::brent_find_minima(
                [&](double phi) { return at(stretch, phi).value; }, grid[left].place.phi,
                grid[right].place.phi, bits, steps);
            keep(at(stretch, refined.first));
        }
    }
    if (best.place.phi >= curve.period())
        best.place.phi -= curve.period();
    return best;
}

std::optional<Smallest> finite(const Smallest& found, double pitchRadius) {
    return isAnyRadius(found.value, pitchRadius) ? std::nullopt : std::optional(found);
}

} // namespace

Smallest smallestRelativeRadius(const LiftCurve& curve, double pitchRadius, const Roller& roller,
                                Flank flank) {
    assert(checkRoller(roller, pitchRadius).empty());
    return smallest(curve, {roller.innerEdge(pitchRadius), roller.outerEdge(pitchRadius)},
                    [&](const Lift& lift, double rho) {
                        return relativeRadius(lift, rho, roller.radius, flank);
                    });
}

std::optional<Smallest> largestRollerRadius(const LiftCurve& curve, double pitchRadius,
                                            double width, Flank flank) {
    assert(width > 0.0 && pitchRadius > 0.5 * width);
    return finite(
        smallest(curve, {pitchRadius - 0.5 * width, pitchRadius + 0.5 * width},
                 [&](const Lift& lift, double rho) { return rollerRadiusLimit(lift, rho, flank); }),
        pitchRadius);
}

std::optional<Smallest> largestCutterRadius(const LiftCurve& curve, double pitchRadius,
                                            const Roller& roller, Flank flank) {
    assert(checkRoller(roller, pitchRadius).empty());
    return finite(smallest(curve, {roller.innerEdge(pitchRadius), roller.outerEdge(pitchRadius)},
                           [&](const Lift& lift, double rho) {
                               const double concave = -sign(flank) * pitchCurvature(lift, rho);
                               return concave > 0.0 ? roller.radius + 1.0 / concave
                                                    : std::numeric_limits<double>::infinity();
                           }),
                  pitchRadius);
}

} // namespace lobewright::track
