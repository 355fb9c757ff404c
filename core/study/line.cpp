#include "core/study/line.h"

#include <algorithm>
#include <cmath>

namespace lobewright::study {

namespace {

constexpr std::size_t leastIntervals = 2; ///< between the points of the first round
/// Points to either side. Of 1 to 5, three saved most over four samples at 41 speeds.
constexpr std::ptrdiff_t reach = 3;
constexpr std::size_t leastForDoubt = 5; ///< points that two polynomials can be compared from

} // namespace

std::vector<std::vector<std::size_t>> bisectingRounds(std::size_t count) {
    if (count == 0) {
        return {};
    }
    std::size_t spacing = 1;
    while ((count - 1) / (2 * spacing) >= leastIntervals) {
        spacing *= 2;
    }
    std::vector<std::vector<std::size_t>> rounds(1);
    for (std::size_t i = 0; i < count; i += spacing) {
        rounds.front().push_back(i);
    }
    if (rounds.front().back() != count - 1) {
        rounds.front().push_back(count - 1);
    }
    for (; spacing > 1; spacing /= 2) {
        rounds.emplace_back();
        for (std::size_t i = spacing / 2; i < count - 1; i += spacing) {
            rounds.back().push_back(i);
        }
    }
    return rounds;
}

Beside beside(std::size_t point, const std::vector<std::size_t>& known,
              const std::vector<double>& places) {
    const auto above = std::upper_bound(known.begin(), known.end(), point);
    if (above == known.begin() || above == known.end()) {
        return {};
    }
    Beside found;
    found.points.assign(above - std::min(reach, above - known.begin()),
                        above + std::min(reach, known.end() - above));
    std::stable_sort(found.points.begin(), found.points.end(), [&](std::size_t a, std::size_t b) {
        return std::abs(places[a] - places[point]) < std::abs(places[b] - places[point]);
    });
    const auto weightsOf = [&](std::size_t count) {
        std::vector<double> weights;
        for (std::size_t i = 0; i < count; ++i) {
            double weight = 1.0;
            for (std::size_t j = 0; j < count; ++j) {
                const double other = places[found.points[j]];
                weight *=
                    j == i ? 1.0 : (places[point] - other) / (places[found.points[i]] - other);
            }
            weights.push_back(weight);
        }
        return weights;
    };
    found.weights = weightsOf(found.points.size());
    if (found.points.size() >= leastForDoubt) {
        found.fewer = weightsOf(found.points.size() - 2);
    }
    return found;
}

std::optional<Peak> peakOf(const std::vector<double>& places, const std::vector<double>& values) {
    std::optional<std::size_t> best;
    for (std::size_t i = 0; i < values.size(); ++i) {
        if (std::isfinite(values[i]) && (!best || values[i] > values[*best])) {
            best = i;
        }
    }
    if (!best) {
        return std::nullopt;
    }
    const std::size_t i = *best;
    if (i == 0 || i + 1 == values.size()) {
        return Peak{places[i], values[i]};
    }
    const double before = values[i - 1] - values[i];
    const double after = values[i + 1] - values[i];
    const double left = places[i - 1] - places[i];
    const double right = places[i + 1] - places[i];
    // v = a·x² + b·x from the highest point.
    const double a = (after / right - before / left) / (right - left);
    const double b = before / left - a * left;
    if (!std::isfinite(a)) {
        return std::nullopt;
    }
    if (a >= 0.0) {
        return Peak{places[i], values[i]};
    }
    const double x = -0.5 * b / a;
    return Peak{places[i] + x, values[i] + 0.5 * b * x};
}

} // namespace lobewright::study
