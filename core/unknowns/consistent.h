#pragma once

#include "core/unknowns/bands.h"
#include "core/unknowns/conditions.h"

#include <cstdint>
#include <functional>
#include <optional>
#include <utility>
#include <vector>

/// What would have to be true: the engines among those that are thought possible that keep
/// conditions.
namespace lobewright::unknowns {

/// A point of the unknowns (shares 0 … 1) and by how much it misses the conditions; 0: keeps them.
struct Tried {
    std::vector<double> shares;
    double miss = 0.0;
};

/// Called from several threads. Absent: stopped.
using MissOf = std::function<std::optional<double>(const std::vector<double>& shares)>;

struct SearchLimits {
    std::size_t wanted = 200; ///< points that keep the conditions
    std::size_t most = 20000; ///< evaluations
    std::uint64_t seed = 1;
};

struct Kept {
    std::vector<Tried> points; ///< that keep the conditions, spread as the possible ones are
    double share = 0.0;        ///< of all possible points; 0 where none was found
    std::size_t tries = 0;     ///< evaluations beyond `possible`
    Tried nearest;             ///< of all that were looked at
};

/// Subset simulation [Au 2001]: where fewer than the wanted of the possible points keep the
/// conditions, the nearest tenth of them starts random walks that stay within what that tenth
/// reaches, and so on. possible: evenly spread points, not empty. The answer depends on the points
/// and the seed alone, not on the cores. Stops without an answer (no points, share 0) where a round
/// comes no nearer or the limit is reached. Absent: stopped.
std::optional<Kept> keeping(const std::vector<Tried>& possible, const MissOf& missOf,
                            const SearchLimits& limits);

/// Where an unknown lies in all possible engines and in those that keep the conditions, in its
/// unit.
struct Narrowed {
    std::size_t unknown = 0;
    Quantiles before, after;
    double lowest = 0.0, highest = 0.0; ///< of those that keep the conditions
    double least = 0.0, most = 0.0;     ///< of what is thought possible
    std::vector<double> words; ///< of a choice: share of each word among those that keep them
    /// How far the two distributions are apart: the largest difference of their shares
    /// [Kolmogorov 1933], 0 … 1.
    double shift = 0.0;
};

/// What would have to be true.
struct Requirement {
    std::vector<Condition> conditions;
    double share = 0.0;
    std::size_t engines = 0;        ///< possible ones that were computed first
    std::size_t tries = 0;          ///< computed beyond them
    std::vector<Run> runs;          ///< that keep the conditions, each computed
    std::vector<Narrowed> unknowns; ///< most shifted first; empty where none keeps the conditions
    Run nearest;
    double nearestMiss = 0.0;
};

/// Of the engines of a whole ensemble (no part of one).
/// Errors: no condition (path ""), cancelled (path "").
Result<Requirement> whatWouldHaveToBeTrue(const design::Design& design, const Ensemble& ensemble,
                                          const std::vector<Condition>& conditions,
                                          const SearchLimits& limits, Monitor& monitor);

/// The two unknowns whose distributions differ most between the possible engines and those that
/// keep the conditions; absent where none keeps them or there is only one unknown.
std::optional<std::pair<std::size_t, std::size_t>> narrowedMost(const Requirement& requirement);

/// "Supply pressure: all of them have more than 1.7 bar.", one sentence for each unknown of
/// which at least a fifth of the range is ruled out.
std::vector<Message> sentences(const Requirement& requirement,
                               const std::vector<Unknown>& unknowns);

} // namespace lobewright::unknowns
