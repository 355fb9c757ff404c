#include "core/exchange/lift_noise.h"

#include "core/units.h"

#include <algorithm>
#include <cmath>
#include <optional>
#include <vector>

namespace lobewright::exchange {

namespace {

/// Median of |x| over the standard deviation of normally distributed x.
constexpr double medianOfNormal = 0.6745;

/// Row i less the polynomial through the `reach` rows at either side, over what noise alone would
/// make of it.
double strayed(const motion::LiftTable& table, std::size_t i, std::size_t reach) {
    double lift = 0.0, spread = 1.0;
    for (std::size_t node = i - reach; node <= i + reach; ++node) {
        if (node == i) {
            continue;
        }
        double weight = 1.0;
        for (std::size_t other = i - reach; other <= i + reach; ++other) {
            if (other != node && other != i) {
                weight *= (table.angles[i] - table.angles[other]) /
                          (table.angles[node] - table.angles[other]);
            }
        }
        lift += weight * table.lifts[node];
        spread += weight * weight;
    }
    return (table.lifts[i] - lift) / std::sqrt(spread);
}

std::optional<double> noiseBeside(const motion::LiftTable& table, std::size_t reach) {
    const std::size_t rows = table.angles.size();
    if (rows <= 2 * reach) {
        return std::nullopt;
    }
    std::vector<double> differences;
    for (std::size_t i = reach; i + reach < rows; ++i) {
        differences.push_back(std::abs(strayed(table, i, reach)));
    }
    const auto middle = differences.begin() + static_cast<std::ptrdiff_t>(differences.size() / 2);
    std::ranges::nth_element(differences, middle);
    return *middle / medianOfNormal;
}

} // namespace

double liftNoise(const motion::LiftTable& table) {
    if (!std::ranges::is_sorted(table.angles, std::ranges::less_equal())) {
        return 0.0;
    }
    std::optional<double> least;
    for (const std::size_t reach : {2, 3, 4}) {
        if (const auto noise = noiseBeside(table, reach); noise && (!least || *noise < *least)) {
            least = noise;
        }
    }
    return least.value_or(0.0);
}

double largestOfNoise(double noise, std::size_t rows) {
    const double many = std::max(2.0, static_cast<double>(rows));
    return noise * (1.0 + std::sqrt(2.0 * std::log(many)));
}

double accelerationNoise(double noise, std::size_t rows, std::size_t knots, double period) {
    if (rows == 0 || knots == 0) {
        return 0.0;
    }
    const double spacing = period / static_cast<double>(knots);
    const double evened = std::sqrt(static_cast<double>(knots) / static_cast<double>(rows));
    const double wave = units::pi / spacing;
    return noise * std::min(1.0, evened) * wave * wave / std::sqrt(5.0);
}

} // namespace lobewright::exchange
