#pragma once

#include "core/result.h"
#include "core/samples.h"
#include "core/unknowns/marginal.h"

#include <Eigen/Core>

#include <optional>
#include <span>
#include <vector>

namespace lobewright::unknowns {

/// Shape (samples, unknowns).
using Matrix = Eigen::Array<double, Eigen::Dynamic, Eigen::Dynamic, Eigen::RowMajor>;

/// A polynomial in place of the computation, and what it says of the variance.
struct Surrogate {
    /// Q², 1 less the leave-one-out error over the variance: 1 for a perfect stand-in, 0 for one
    /// that knows no more than the mean.
    double quality = 0.0;
    std::vector<double> first, total; ///< Sobol' indices, one an unknown
};

/// What the library of statistics does for the program. It is loaded on first use, since it takes
/// as long to load as the rest of the program takes to start.
class Statistics {
  public:
    virtual ~Statistics() = default;
    /// Points `from` … `to` − 1 of the Sobol' sequence in (0, 1); unknowns 1 … 1000.
    virtual Matrix sobolPoints(int unknowns, long from, long to) const = 0;
    /// Sparse polynomial chaos (least angles, corrected leave-one-out error) through values at
    /// points; nothing where none can be made. x: shape (samples, unknowns), y: (samples).
    virtual std::optional<Surrogate> fit(const Matrix& x, const Samples& y,
                                         std::span<const Marginal> marginals) const = 0;
};

/// Error (path ""): the library is missing.
Result<const Statistics*> statistics();

/// The name of what the loaded file gives, and of that file.
inline constexpr const char* statisticsEntry = "lobewrightStatistics";
inline constexpr const char* statisticsFile = "liblobewright_statistics.so";

} // namespace lobewright::unknowns
