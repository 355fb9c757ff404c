#include "core/mechanism/extremes.h"

#include "core/mechanism/bracketed_root.h"

#include <algorithm>
#include <cmath>

namespace lobewright::mechanism {

namespace {

struct Node {
    double angle = 0.0;
    double slope = 0.0;
};

/// Breaks of one period with enough points between them to tell neighbouring extremes apart, first
/// to last + period exclusive.
std::vector<Node> nodes(const PeriodicFunction& function) {
    constexpr double nodesPerPeriod = 360.0;
    std::vector<double> breaks = function.breaks;
    if (breaks.empty()) {
        breaks.push_back(0.0);
    }
    std::vector<Node> result;
    for (std::size_t i = 0; i < breaks.size(); ++i) {
        const double from = breaks[i];
        const double to = i + 1 < breaks.size() ? breaks[i + 1] : breaks[0] + function.period;
        const int pieces = std::max(
            8, static_cast<int>(std::ceil(nodesPerPeriod * (to - from) / function.period)));
        for (int j = 0; j < pieces; ++j) {
            const double angle = from + (to - from) * j / pieces;
            result.push_back({angle, function.slope(angle)});
        }
    }
    return result;
}

/// The known level that overlaps [from, to], moved by whole periods onto it; otherwise [from, to].
Level levelWithin(const PeriodicFunction& function, double from, double to) {
    for (const Level& level : function.levels) {
        const double middle = 0.5 * (level.begin + level.end);
        const double turns = std::round((0.5 * (from + to) - middle) / function.period);
        const Level moved{level.begin + turns * function.period,
                          level.end + turns * function.period};
        if (moved.begin <= to && moved.end >= from) {
            return moved;
        }
    }
    return {from, to};
}

} // namespace

double wrapped(double angle, double period) {
    constexpr double slack = 1e-12;
    const double rest = angle - period * std::floor(angle / period);
    return rest >= period - slack || rest < 0.0 ? 0.0 : rest;
}

std::vector<Extreme> extremes(const PeriodicFunction& function) {
    const std::vector<Node> ring = nodes(function);
    const auto steepest = std::max_element(ring.begin(), ring.end(), [](auto& a, auto& b) {
        return std::abs(a.slope) < std::abs(b.slope);
    });
    // Slopes that are zero in exact arithmetic come out at rounding level with either sign.
    const double zero = 1e-12 * std::max(std::abs(steepest->slope), function.slopeScale);
    const auto sign = [zero](double slope) { return slope > zero ? 1 : slope < -zero ? -1 : 0; };
    if (sign(steepest->slope) == 0) {
        return {};
    }

    std::vector<Extreme> result;
    const std::size_t count = ring.size();
    const std::size_t start = static_cast<std::size_t>(steepest - ring.begin());
    const auto unrolled = [&](std::size_t i) {
        const std::size_t turns = i / count;
        return ring[i % count].angle + function.period * static_cast<double>(turns);
    };
    std::size_t last = start; // last node with a slope
    for (std::size_t i = start + 1; i <= start + count; ++i) {
        const int now = sign(ring[i % count].slope);
        const int before = sign(ring[last % count].slope);
        if (now == 0) {
            continue;
        }
        if (now != before) {
            Level place;
            if (i == last + 1) {
                place.begin = place.end =
                    bracketedRoot(function.slope, unrolled(last), unrolled(i));
            } else {
                place = levelWithin(function, unrolled(last + 1), unrolled(i - 1));
            }
            const double begin = wrapped(place.begin, function.period);
            const double end = begin + (place.end - place.begin);
            result.push_back({begin, end, function.value(0.5 * (begin + end)), before > 0});
        }
        last = i;
    }
    std::sort(result.begin(), result.end(),
              [](const Extreme& a, const Extreme& b) { return a.begin < b.begin; });
    return result;
}

std::vector<Extreme> extremes(const motion::LiftCurve& curve) {
    std::vector<Extreme> result;
    for (const motion::TurningPoint& point : curve.turningPoints()) {
        result.push_back({point.begin, point.end, point.lift, point.crest});
    }
    return result;
}

} // namespace lobewright::mechanism
