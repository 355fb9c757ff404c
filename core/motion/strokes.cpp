#include "core/motion/strokes.h"

#include "core/motion/jumps.h"

#include <boost/math/tools/minima.hpp>

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <limits>

namespace lobewright::motion {
namespace {

constexpr int partsPerStretch = 16; ///< only to find the basins of the peaks
constexpr int bits = std::numeric_limits<double>::digits / 2;
constexpr double sameAngle = 1e-9; ///< [rad]

/// Part of a division, so that the curve is one closed form inside.
struct Stretch {
    const LiftCurve* curve;
    double begin, end;

    /// Left-hand limit at its end.
    Lift at(double phi) const { return phi < end ? curve->at(phi) : curve->before(end); }
};

/// Divisions from one angle to another that may lie beyond the period.
std::vector<Stretch> stretches(const LiftCurve& curve, double begin, double end) {
    std::vector<Stretch> found;
    const std::vector<double>& bounds = curve.divisions();
    for (double turn : {0.0, curve.period()}) {
        for (std::size_t i = 0; i + 1 < bounds.size(); ++i) {
            const double from = std::max(begin, bounds[i] + turn);
            const double to = std::min(end, bounds[i + 1] + turn);
            if (to - from > sameAngle)
                found.push_back({&curve, from, to});
        }
    }
    return found;
}

template <class F>
double largest(const std::vector<Stretch>& all, const F& f) {
    double most = 0.0;
    for (const Stretch& stretch : all) {
        const double step = (stretch.end - stretch.begin) / partsPerStretch;
        const auto less = [&](double phi) { return -std::abs(f(stretch.at(phi))); };
        int best = 0;
        double least = less(stretch.begin);
        for (int i = 1; i <= partsPerStretch; ++i) {
            const double here = less(i < partsPerStretch ? stretch.begin + i * step : stretch.end);
            if (here < least) {
                least = here;
                best = i;
            }
        }
        std::uintmax_t tries = 60;
        const double left = stretch.begin + std::max(best - 1, 0) * step;
        const double right =
            best + 1 < partsPerStretch ? stretch.begin + (best + 1) * step : stretch.end;
        const auto refined = boost::math::tools::brent_find_minima(less, left, right, bits, tries);
        most = std::max({most, -least, -refined.second});
    }
    return most;
}

bool jumpsWithin(const LiftCurve& curve, double begin, double end) {
    return std::ranges::any_of(jumps(curve, 2), [&](const Jump& jump) {
        return (jump.angle > begin - sameAngle && jump.angle < end + sameAngle) ||
               jump.angle + curve.period() < end + sameAngle;
    });
}

Stroke strokeBetween(const LiftCurve& curve, const TurningPoint& from, const TurningPoint& to,
                     double end) {
    Stroke stroke;
    stroke.rises = to.crest;
    stroke.begin = from.end;
    stroke.span = end - from.end;
    stroke.lift = std::abs(to.lift - from.lift);
    const auto all = stretches(curve, from.end, end);
    stroke.velocity = largest(all, [](const Lift& lift) { return lift.y1; });
    stroke.acceleration = largest(all, [](const Lift& lift) { return lift.y2; });
    stroke.jerk = largest(all, [](const Lift& lift) { return lift.y3; });
    stroke.torque = largest(all, [](const Lift& lift) { return lift.y1 * lift.y2; });
    const double h = stroke.lift, b = stroke.span;
    CharacteristicFactors& factors = stroke.factors;
    factors.velocity = stroke.velocity * b / h;
    factors.acceleration = stroke.acceleration * b * b / h;
    factors.jerkInside = stroke.jerk * b * b * b / h;
    factors.jerk = jumpsWithin(curve, from.end, end) ? std::numeric_limits<double>::infinity()
                                                     : factors.jerkInside;
    factors.torque = stroke.torque * b * b * b / (h * h);
    if (stroke.begin >= curve.period())
        stroke.begin -= curve.period();
    return stroke;
}

} // namespace

std::vector<Stroke> strokes(const LiftCurve& curve) {
    const std::vector<TurningPoint>& points = curve.turningPoints();
    std::vector<Stroke> found;
    for (std::size_t i = 0; i < points.size(); ++i) {
        const bool isLast = i + 1 == points.size();
        const TurningPoint& next = points[isLast ? 0 : i + 1];
        const double end = next.begin + (isLast ? curve.period() : 0.0);
        found.push_back(strokeBetween(curve, points[i], next, end));
    }
    std::ranges::sort(found, {}, &Stroke::begin);
    return found;
}

} // namespace lobewright::motion
