#include "core/study/contours.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <limits>

namespace lobewright::study {

namespace {

/// Corners of a cell in turn; edge k runs from corner k to the next.
constexpr std::array<std::array<int, 2>, 4> corners = {{{0, 0}, {0, 1}, {1, 1}, {1, 0}}};

/// One cell of the grid.
class Cell {
  public:
    Cell(const Eigen::ArrayXXd& values, Eigen::Index row, Eigen::Index column, double level)
        : row_(static_cast<double>(row)), column_(static_cast<double>(column)) {
        for (std::size_t k = 0; k < 4; ++k) {
            above_[k] = values(row + corners[k][0], column + corners[k][1]) - level;
        }
    }

    void addTo(std::vector<ContourPiece>& pieces) const {
        if (!std::ranges::all_of(above_, [](double value) { return std::isfinite(value); })) {
            return;
        }
        std::vector<std::size_t> crossed;
        for (std::size_t k = 0; k < 4; ++k) {
            if ((above_[k] >= 0.0) != (above_[next(k)] >= 0.0)) {
                crossed.push_back(k);
            }
        }
        if (crossed.size() == 2) {
            pieces.push_back({placeOn(crossed[0]), placeOn(crossed[1])});
        } else if (crossed.size() == 4) {
            const double middle = above_[0] + above_[1] + above_[2] + above_[3];
            // Corners like the middle are joined across it: the lines cut off the other two.
            const std::size_t first = (middle >= 0.0) == (above_[0] >= 0.0) ? 0 : 3;
            pieces.push_back({placeOn(first), placeOn(next(first))});
            pieces.push_back({placeOn(next(next(first))), placeOn((first + 3) % 4)});
        }
    }

  private:
    static std::size_t next(std::size_t k) { return (k + 1) % 4; }

    GridPlace placeOn(std::size_t edge) const {
        const double a = above_[edge], b = above_[next(edge)];
        const double share = a / (a - b);
        const auto along = [&](std::size_t axis) {
            const double from = corners[edge][axis], to = corners[next(edge)][axis];
            return from + share * (to - from);
        };
        return {row_ + along(0), column_ + along(1)};
    }

    double row_, column_;
    std::array<double, 4> above_{};
};

} // namespace

double valueAt(const Eigen::ArrayXXd& values, const GridPlace& place) {
    assert(values.rows() >= 2 && values.cols() >= 2);
    const auto cell = [](double at, Eigen::Index count) {
        return std::clamp<Eigen::Index>(static_cast<Eigen::Index>(at), 0, count - 2);
    };
    const auto mix = [](double share, double a, double b) {
        return share <= 0.0 ? a : share >= 1.0 ? b : (1.0 - share) * a + share * b;
    };
    const auto i = cell(place.row, values.rows()), j = cell(place.column, values.cols());
    const double v = place.column - static_cast<double>(j);
    return mix(place.row - static_cast<double>(i), mix(v, values(i, j), values(i, j + 1)),
               mix(v, values(i + 1, j), values(i + 1, j + 1)));
}

std::optional<double> rowWith(const Eigen::ArrayXXd& values, double column, double value) {
    for (Eigen::Index row = values.rows() - 2; row >= 0; --row) {
        const auto below = static_cast<double>(row);
        const double low = valueAt(values, {below, column});
        const double high = valueAt(values, {below + 1.0, column});
        if ((value - low) * (value - high) <= 0.0 && low != high) { // false for gaps
            return below + (value - low) / (high - low);
        }
    }
    return std::nullopt;
}

std::vector<ContourPiece> contourPieces(const Eigen::ArrayXXd& values, double level) {
    assert(values.rows() >= 2 && values.cols() >= 2);
    std::vector<ContourPiece> pieces;
    for (Eigen::Index row = 0; row + 1 < values.rows(); ++row) {
        for (Eigen::Index column = 0; column + 1 < values.cols(); ++column) {
            Cell(values, row, column, level).addTo(pieces);
        }
    }
    return pieces;
}

std::vector<double> roundLevels(const Eigen::ArrayXXd& values, int wanted) {
    double low = std::numeric_limits<double>::infinity(), high = -low;
    for (const double value : values.reshaped()) {
        if (std::isfinite(value)) {
            low = std::min(low, value);
            high = std::max(high, value);
        }
    }
    if (!(high > low) || wanted < 1) {
        return {};
    }
    const double rough = (high - low) / wanted;
    const double decade = std::pow(10.0, std::floor(std::log10(rough)));
    const double share = rough / decade;
    const double step = decade * (share < 1.5 ? 1.0 : share < 3.5 ? 2.0 : share < 7.5 ? 5.0 : 10.0);
    std::vector<double> levels;
    for (double k = std::floor(low / step) + 1.0; k * step < high; k += 1.0) {
        levels.push_back(k * step);
    }
    return levels;
}

} // namespace lobewright::study
