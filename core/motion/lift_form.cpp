#include "core/motion/lift_form.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace lobewright::motion {
namespace {

/// φ reduced to [0, period); `period` itself and rounding below 0 end at 0.
double reduce(double phi, double period) {
    const double reduced = phi - period * std::floor(phi / period);
    return reduced >= period || reduced < 0.0 ? 0.0 : reduced;
}

Lift evaluateSeries(const LiftForm& form, double phi) {
    // Multiples of the angle by complex rotation; orders are ascending.
    const double base = 2.0 * std::acos(-1.0) / form.period;
    const double c1 = std::cos(base * phi), s1 = std::sin(base * phi);
    double c = 1.0, s = 0.0;
    int order = 0;
    Lift lift{form.constant, 0.0, 0.0, 0.0};
    for (const Harmonic& term : form.harmonics) {
        for (; order < term.order; ++order) {
            const double next = c * c1 - s * s1;
            s = s * c1 + c * s1;
            c = next;
        }
        const double k = base * order;
        const double even = term.cosine * c + term.sine * s;
        const double odd = k * (term.sine * c - term.cosine * s);
        lift.y += even;
        lift.y1 += odd;
        lift.y2 -= k * k * even;
        lift.y3 -= k * k * odd;
    }
    return lift;
}

} // namespace

void LiftForm::index() {
    assert(!pieces.empty() && pieces.front().begin == 0.0);
    const std::size_t count = 4 * pieces.size();
    buckets_.resize(count);
    std::size_t piece = 0;
    for (std::size_t i = 0; i < count; ++i) {
        const double angle = period * static_cast<double>(i) / static_cast<double>(count);
        while (piece + 1 < pieces.size() && pieces[piece + 1].begin <= angle)
            ++piece;
        buckets_[i] = static_cast<int>(piece);
    }
}

Lift LiftForm::at(double phi, Side side) const {
    assert(std::isfinite(phi));
    if (pieces.empty())
        return evaluateSeries(*this, reduce(phi, period));
    const double tolerance = side == Side::after ? junctionTolerance : -junctionTolerance;
    const double angle = reduce(phi + tolerance, period);
    const auto count = buckets_.size();
    const auto bucket = static_cast<std::size_t>(angle / period * static_cast<double>(count));
    auto piece = static_cast<std::size_t>(buckets_[std::min(bucket, count - 1)]);
    // A bucket bound may round to either side of a piece that begins on it.
    if (piece > 0 && pieces[piece].begin > angle)
        --piece;
    while (piece + 1 < pieces.size() && pieces[piece + 1].begin <= angle)
        ++piece;
    return evaluate(pieces[piece], angle - tolerance);
}

void settleTurningPoints(LiftForm& form) {
    std::vector<TurningPoint>& points = form.turningPoints;
    assert(points.size() % 2 == 0);
    const auto rise = [&](std::size_t i) {
        return std::abs(points[(i + 1) % points.size()].lift - points[i].lift);
    };
    while (points.size() > 2) {
        std::size_t smallest = 0;
        for (std::size_t i = 1; i < points.size(); ++i) {
            if (rise(i) < rise(smallest))
                smallest = i;
        }
        if (rise(smallest) >= smallestRise * form.stroke)
            break;
        // The two go together, so that crests and troughs stay in turn.
        const std::size_t next = (smallest + 1) % points.size();
        points.erase(points.begin() + static_cast<std::ptrdiff_t>(std::max(smallest, next)));
        points.erase(points.begin() + static_cast<std::ptrdiff_t>(std::min(smallest, next)));
    }
    for (TurningPoint& point : points) {
        const double begin = reduce(point.begin + junctionTolerance, form.period);
        const double moved = std::max(begin - junctionTolerance, 0.0) - point.begin;
        point.begin += moved;
        point.end += moved;
    }
    std::sort(points.begin(), points.end(),
              [](const TurningPoint& a, const TurningPoint& b) { return a.begin < b.begin; });
}

void evaluateJunctions(LiftForm& form) {
    for (Junction& junction : form.junctions) {
        junction.before = form.at(junction.angle, LiftForm::Side::before);
        junction.after = form.at(junction.angle, LiftForm::Side::after);
    }
}

} // namespace lobewright::motion
