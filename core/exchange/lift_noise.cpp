#include "core/exchange/lift_noise.h"

#include "core/units.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <vector>

namespace lobewright::exchange {

namespace {

constexpr std::size_t neighbours = 4;
/// Median of |x| over the standard deviation of normally distributed x.
constexpr double medianOfNormal = 0.6745;

/// Row i less the cubic through the two rows at either side, over what noise alone would make of
/// it.
double cubicResidual(const motion::LiftTable& table, std::size_t i) {
    const std::array<std::size_t, neighbours> near{i - 2, i - 1, i + 1, i + 2};
    double lift = 0.0, spread = 1.0;
    for (const std::size_t node : near) {
        double weight = 1.0;
        for (const std::size_t other : near) {
            if (other != node) {
                weight *= (table.angles[i] - table.angles[other]) /
                          (table.angles[node] - table.angles[other]);
            }
        }
        lift += weight * table.lifts[node];
        spread += weight * weight;
    }
    return (table.lifts[i] - lift) / std::sqrt(spread);
}

} // namespace

double liftNoise(const motion::LiftTable& table) {
    const std::size_t rows = table.angles.size();
    if (rows <= neighbours || !std::ranges::is_sorted(table.angles, std::ranges::less_equal())) {
        return 0.0;
    }
    std::vector<double> differences;
    for (std::size_t i = 2; i + 2 < rows; ++i) {
        differences.push_back(std::abs(cubicResidual(table, i)));
    }
    const auto middle = differences.begin() + static_cast<std::ptrdiff_t>(differences.size() / 2);
    std::ranges::nth_element(differences, middle);
    return *middle / medianOfNormal;
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
