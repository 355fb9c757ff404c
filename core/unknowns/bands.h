#pragma once

#include "core/claims/verdict.h"
#include "core/unknowns/ensemble.h"

#include <array>
#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lobewright::unknowns {

/// Shares of the engines below which the edges of a band lie.
inline constexpr std::array<double, 5> bandShares = {0.05, 0.25, 0.5, 0.75, 0.95};

/// Values below which 5, 25, 50, 75 and 95 % of the engines lie.
struct Quantiles {
    double p05 = 0.0, p25 = 0.0, p50 = 0.0, p75 = 0.0, p95 = 0.0;
    std::size_t count = 0; ///< of values
};

/// The value below which a share 0 … 1 of the values lies: linear between ordered values
/// [Hyndman 1996, type 7]. values: ascending, not empty, finite.
double quantile(std::span<const double> values, double share);

/// Of the finite values; absent where there are none.
std::optional<Quantiles> quantiles(std::vector<double> values);

/// A result of all engines that run.
struct ResultBand {
    study::Column column;
    std::optional<double> nominal;
    std::optional<Quantiles> band; ///< absent where no engine has the result
};
std::vector<ResultBand> resultBands(const Ensemble& ensemble);

/// For a verdict on published figures, each in the unit of the result.
study::ResultQuantileMap bandsByName(const Ensemble& ensemble);

/// A quantity of the curve at one speed. Of the share whose rollers lift off there is no band, but
/// one number.
struct CurvePoint {
    double speed = 0.0; ///< [1/min]
    std::array<std::optional<double>, curveQuantities> nominal;
    std::array<std::optional<Quantiles>, curveQuantities> band;
    std::optional<double> liftOffShare; ///< of the engines with a cycle at this speed
};
std::vector<CurvePoint> curveBands(const Ensemble& ensemble);

/// What a result is in the engines that run, in the order of the engines; NaN where it is missing.
std::vector<double> valuesOf(const Ensemble& ensemble, std::size_t result);

/// Engines that cannot be built or run for one reason.
struct FailureCount {
    Failure::Kind kind = Failure::Kind::notBuilt;
    std::string rule;
    Message example; ///< of the first of them
    long count = 0;
};
struct Feasibility {
    long engines = 0, runs = 0, notBuilt = 0, notRun = 0;
    /// Of those that run: engines without any brake power at their own speed.
    long withoutPower = 0;
    std::vector<FailureCount> reasons; ///< most frequent first; their counts add up with `runs`
};
Feasibility feasibility(const Ensemble& ensemble);

} // namespace lobewright::unknowns
