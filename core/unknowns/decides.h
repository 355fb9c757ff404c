#pragma once

#include "core/unknowns/ensemble.h"
#include "core/unknowns/statistics.h"

#include <optional>
#include <span>
#include <string>
#include <vector>

namespace lobewright::unknowns {

/// How a result answers to an unknown.
enum class Direction { rises, falls, mixed };
std::string_view name(Direction direction);

/// How much of the variance of a result comes from one unknown.
struct Influence {
    std::size_t unknown = 0;
    double first = 0.0;          ///< by itself
    std::optional<double> total; ///< with what it does together with others
    std::optional<double> error; ///< of `first`: 95 % confidence, ±; absent of a surrogate
    Direction direction = Direction::mixed;
};

/// Where the variance of a result comes from.
struct Decision {
    std::optional<double> quality;     ///< Q² of the surrogate; absent where there is none
    bool isOfSurrogate = false;        ///< the indices are those of a surrogate with Q² ≥ 0.9
    std::vector<Influence> influences; ///< largest first
};

/// From this Q² on a surrogate is believed.
inline constexpr double believable = 0.9;

/// Sobol' indices of the values at these points, from sparse polynomial chaos where that is good
/// enough, else from groups of the points themselves, along each unknown [Kelley 1935]. Rows with
/// values that are not finite are left out. x: shape (samples, unknowns); y: (samples). Absent:
/// fewer than 16 values, or all the same.
std::optional<Decision> decide(const Statistics& statistics, const Matrix& x, const Samples& y,
                               std::span<const Marginal> marginals);
/// Of one result of the engines that run.
std::optional<Decision> decide(const Statistics& statistics, const Ensemble& ensemble,
                               std::size_t result);

/// What to measure so that a band becomes half as wide.
struct Measurement {
    std::size_t unknown = 0;
    double accuracy = 0.0; ///< ±, in the unit of the unknown; 0 of a choice, which is to be known
};
struct Advice {
    std::vector<Measurement> measurements; ///< together they halve it; empty: nothing does
    double byFirst = 0.0;      ///< how much the first of them narrows it by itself, 0 … 1
    std::size_t strongest = 0; ///< the unknown that narrows the band most
    double narrowing = 0.0;    ///< by knowing that one exactly, 0 … 1
};
/// Up to three unknowns that by themselves make three quarters of the variance, measured so closely
/// that a quarter is left. Exact where the unknowns act alone and along straight lines; else on the
/// average over their ranges.
Advice halving(const Decision& decision, std::span<const Marginal> marginals);

/// Names of the results that people ask about first, speed of peak torque before all.
const std::vector<std::string>& principalResults();

/// What decides one result.
struct DecidedResult {
    std::size_t result = 0; ///< column of the ensemble
    Decision decision;
    Advice advice;
};
/// Results that nothing decides, or of too few engines, are left out. Absent: stopped.
std::optional<std::vector<DecidedResult>> decideAll(const Statistics& statistics,
                                                    const Ensemble& ensemble,
                                                    const std::vector<std::string>& results,
                                                    Monitor& monitor);

/// "Measure two things and this band is half as wide: …; …. The first alone narrows it by 30 %."
Message sentence(const Advice& advice, std::span<const Unknown> unknowns);

} // namespace lobewright::unknowns
