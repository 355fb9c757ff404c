#pragma once

#include <Eigen/Core>

#include <optional>
#include <vector>

namespace lobewright::study {

/// A place on a grid, counted in cells: row 2.5 lies midway between rows 2 and 3.
struct GridPlace {
    double row = 0.0, column = 0.0;
};

/// Linear between the four corners around a place. A gap, NaN, beside the place that has no weight
/// there is none. 0 ≤ row ≤ rows − 1, likewise the column; shape (rows, columns), each at least 2.
double valueAt(const Eigen::ArrayXXd& values, const GridPlace& place);

/// The highest row at which the values of a column [cells] pass a value, linear between rows;
/// absent where they do not. 0 ≤ column ≤ columns − 1.
std::optional<double> rowWith(const Eigen::ArrayXXd& values, double column, double value);

/// A straight piece of a line of equal value.
struct ContourPiece {
    GridPlace from, to;
};

/// Where values on a grid pass a level, linear along the edges of its cells (marching squares; of
/// two ways through a saddle the one that the mean of its corners tells). Cells with a corner that
/// is not finite are left out. Any level; shape of values (rows, columns), each at least 2.
std::vector<ContourPiece> contourPieces(const Eigen::ArrayXXd& values, double level);

/// Some round levels strictly between the least and the largest finite value, ascending: steps of
/// 1, 2 or 5 times a power of ten, about `wanted` of them; none where all values are alike.
std::vector<double> roundLevels(const Eigen::ArrayXXd& values, int wanted);

} // namespace lobewright::study
