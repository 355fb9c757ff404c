#pragma once

#include <cstddef>
#include <optional>
#include <vector>

/// Points of a study along a line, where one tells about those beside it.
namespace lobewright::study {

/// The order in which to solve `count` points: a few far apart, then those midway between them, and
/// so on. Every point of a later round lies between points of earlier ones. Depends on nothing but
/// the count, so that the answers do not depend on the cores.
std::vector<std::vector<std::size_t>> bisectingRounds(std::size_t count);

/// Points beside another, the nearest first, and what to weigh them with. The weights add up to 1.
struct Beside {
    std::vector<std::size_t> points;
    std::vector<double> weights;
    std::vector<double> fewer; ///< of all but the two farthest, to compare with; none of 4 or fewer
};

/// Weights of the polynomial through the nearest three `known` points (ascending) on either side of
/// `point`, fewer near the ends; empty where one side has none. `places` of all points: ascending
/// or descending, shape (points).
Beside beside(std::size_t point, const std::vector<std::size_t>& known,
              const std::vector<double>& places);

/// Value and place of the highest of some points: a parabola through it and its neighbours; at an
/// end that end. Absent where a value is missing (NaN) beside the highest, or all are.
struct Peak {
    double place = 0.0, value = 0.0;
};
std::optional<Peak> peakOf(const std::vector<double>& places, const std::vector<double>& values);

} // namespace lobewright::study
