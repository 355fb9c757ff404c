#include "core/unknowns/consistent.h"

#include "core/parallel.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <iterator>
#include <limits>
#include <mutex>
#include <random>

LW_TEXTS_OF(Core)

namespace lobewright::unknowns {

namespace {

/// Of each round that goes on to the next [Au 2001 recommends 0.1 to 0.2].
constexpr double keptShare = 0.1;
/// A round that comes no nearer than this much of the one before is the last.
constexpr double leastProgress = 0.03;
/// Share of a range that must be excluded before it is worth a sentence.
constexpr double ruledOut = 0.2;

double uniform(std::mt19937_64& generator) {
    return static_cast<double>(generator() >> 11) * 0x1.0p-53;
}

/// Back into 0 … 1, as in a mirror at either end: steps forth and back stay equally likely.
double mirrored(double share) {
    const double period = std::abs(std::fmod(share, 2.0));
    return period < 1.0 ? period : 2.0 - period;
}

/// How far the seeds lie apart in each unknown.
std::vector<double> spreadOf(const std::vector<Tried>& seeds) {
    const std::size_t unknowns = seeds.front().shares.size();
    std::vector<double> spread(unknowns);
    for (std::size_t k = 0; k < unknowns; ++k) {
        double mean = 0.0, squares = 0.0;
        for (const Tried& seed : seeds) {
            mean += seed.shares[k] / static_cast<double>(seeds.size());
        }
        for (const Tried& seed : seeds) {
            squares += (seed.shares[k] - mean) * (seed.shares[k] - mean);
        }
        spread[k] = std::max(std::sqrt(squares / static_cast<double>(seeds.size())), 1e-3);
    }
    return spread;
}

/// Walks of one round: each from a seed, a given number of steps, never past the threshold.
class Round {
  public:
    Round(const std::vector<Tried>& seeds, double threshold, std::size_t points, std::uint64_t seed,
          const MissOf& missOf)
        : seeds_(seeds), spread_(spreadOf(seeds)), threshold_(threshold), points_(points),
          seed_(seed), missOf_(missOf) {}

    /// Absent: stopped.
    std::optional<std::vector<Tried>> walk() {
        std::vector<std::vector<Tried>> walks(seeds_.size());
        std::atomic<bool> stopped = false;
        onAllCores(seeds_.size(), [&](std::size_t i) {
            const std::size_t length =
                points_ / seeds_.size() + (i < points_ % seeds_.size() ? 1 : 0);
            if (!stopped && !walkFrom(i, length, walks[i])) {
                stopped = true;
            }
        });
        if (stopped) {
            return std::nullopt;
        }
        std::vector<Tried> all;
        for (auto& walk : walks) {
            std::ranges::move(walk, std::back_inserter(all));
        }
        return all;
    }

  private:
    bool walkFrom(std::size_t start, std::size_t length, std::vector<Tried>& walk) const {
        // Each walk has numbers of its own, so that it does not matter who walks first.
        std::seed_seq mix{static_cast<std::uint32_t>(seed_),
                          static_cast<std::uint32_t>(seed_ >> 32),
                          static_cast<std::uint32_t>(start)};
        std::mt19937_64 generator(mix);
        Tried now = seeds_[start];
        for (std::size_t i = 0; i < length; ++i) {
            Tried next = now;
            // A long step in a few unknowns, a short one in the others.
            const double reach = i % 2 == 0 ? 1.0 : 0.3;
            for (std::size_t k = 0; k < next.shares.size(); ++k) {
                const double move = 2.0 * uniform(generator) - 1.0;
                const bool moves = reach < 1.0 || uniform(generator) < 0.3;
                next.shares[k] = moves ? mirrored(now.shares[k] + 2.0 * reach * spread_[k] * move)
                                       : now.shares[k];
            }
            const auto miss = missOf_(next.shares);
            if (!miss) {
                return false;
            }
            next.miss = *miss;
            if (next.miss <= threshold_) {
                now = next;
            }
            walk.push_back(now);
        }
        return true;
    }

    const std::vector<Tried>& seeds_;
    std::vector<double> spread_;
    double threshold_;
    std::size_t points_;
    std::uint64_t seed_;
    const MissOf& missOf_;
};

bool isNearer(const Tried& a, const Tried& b) {
    return a.miss < b.miss;
}

/// Different values among sorted ones, by share of the values not above: largest difference.
double apart(const std::vector<double>& a, const std::vector<double>& b) {
    double largest = 0.0;
    std::size_t i = 0, k = 0;
    while (i < a.size() && k < b.size()) {
        const double value = std::min(a[i], b[k]);
        while (i < a.size() && a[i] <= value) {
            ++i;
        }
        while (k < b.size() && b[k] <= value) {
            ++k;
        }
        largest =
            std::max(largest, std::abs(static_cast<double>(i) / static_cast<double>(a.size()) -
                                       static_cast<double>(k) / static_cast<double>(b.size())));
    }
    return largest;
}

/// What each unknown is in all of these engines, ascending.
std::vector<std::vector<double>> inputsOf(const Ensemble& ensemble, const std::vector<Run>& runs) {
    std::vector<std::vector<double>> columns(ensemble.unknowns.size());
    for (const Run& run : runs) {
        const auto values = ensemble.inputsOf(run);
        for (std::size_t i = 0; i < values.size(); ++i) {
            columns[i].push_back(values[i]);
        }
    }
    for (auto& column : columns) {
        std::ranges::sort(column);
    }
    return columns;
}

std::vector<Narrowed> narrowedBy(const Ensemble& ensemble, const std::vector<Run>& keeping) {
    std::vector<Narrowed> all;
    const auto possible = inputsOf(ensemble, ensemble.runs);
    const auto remaining = inputsOf(ensemble, keeping);
    for (std::size_t i = 0; i < ensemble.unknowns.size(); ++i) {
        const Marginal& marginal = ensemble.unknowns[i].marginal();
        const auto &before = possible[i], &after = remaining[i];
        const bool follows =
            ensemble.followers.follows(ensemble.unknowns[i].members.front().field.path);
        Narrowed narrowed;
        narrowed.unknown = i;
        narrowed.before = *quantiles(before);
        narrowed.after = *quantiles(after);
        narrowed.lowest = after.front();
        narrowed.highest = after.back();
        narrowed.least = follows ? before.front() : marginal.low;
        narrowed.most = follows ? before.back() : marginal.high;
        narrowed.shift = apart(before, after);
        for (int word = 0; word < marginal.options; ++word) {
            narrowed.words.push_back(static_cast<double>(std::ranges::count(after, word)) /
                                     static_cast<double>(after.size()));
        }
        all.push_back(narrowed);
    }
    std::ranges::stable_sort(all, std::ranges::greater{}, &Narrowed::shift);
    return all;
}

class FromEngines final : public Monitor {
  public:
    explicit FromEngines(Monitor& whole, std::size_t most) : whole_(whole), most_(most) {}
    bool step(double, const Message&) override { return !stopped_; }
    /// After each engine.
    bool count() {
        const std::scoped_lock lock(mutex_);
        ++done_;
        // How many it takes is not known: the bar comes ever more slowly.
        const double fraction = static_cast<double>(done_) / static_cast<double>(most_);
        stopped_ = stopped_ || !whole_.step(fraction, Message(LW_TEXT("%1 engines"), done_));
        return !stopped_;
    }

  private:
    Monitor& whole_;
    std::size_t most_, done_ = 0;
    std::mutex mutex_;
    std::atomic<bool> stopped_ = false;
};

/// Each of the points once, with all of its results. Absent: stopped.
std::optional<std::vector<Run>> computedAgain(const Engines& engines, std::vector<Tried> points,
                                              Monitor& monitor) {
    std::ranges::sort(points, {}, &Tried::shares);
    const auto twice = std::ranges::unique(points, {}, &Tried::shares);
    points.erase(twice.begin(), twice.end());
    std::vector<std::optional<Run>> runs(points.size());
    onAllCores(points.size(), [&](std::size_t i) {
        runs[i] = engines.run(static_cast<long>(i), points[i].shares, monitor);
    });
    std::vector<Run> all;
    for (auto& run : runs) {
        if (!run) {
            return std::nullopt;
        }
        all.push_back(std::move(*run));
    }
    return all;
}

} // namespace

std::optional<Kept> keeping(const std::vector<Tried>& possible, const MissOf& missOf,
                            const SearchLimits& limits) {
    Kept found;
    found.nearest = *std::ranges::min_element(possible, isNearer);
    std::vector<Tried> population = possible;
    double share = 1.0;
    double thresholdBefore = std::numeric_limits<double>::max();
    for (std::uint64_t round = 0;; ++round) {
        std::ranges::stable_sort(population, isNearer);
        if (isNearer(population.front(), found.nearest)) {
            found.nearest = population.front();
        }
        const auto hits = static_cast<std::size_t>(
            std::ranges::upper_bound(population, 0.0, {}, &Tried::miss) - population.begin());
        if (hits >= std::min(limits.wanted, population.size())) {
            found.share =
                share * static_cast<double>(hits) / static_cast<double>(population.size());
            population.resize(hits);
            found.points = std::move(population);
            return found;
        }
        // Engines that do not run lead nowhere.
        const auto running = static_cast<std::size_t>(std::ranges::count_if(
            population, [](const Tried& point) { return std::isfinite(point.miss); }));
        const auto tenth =
            static_cast<std::size_t>(keptShare * static_cast<double>(population.size()));
        const std::size_t seeds = std::min(std::max({hits, tenth, std::size_t{1}}), running);
        const std::size_t points = std::max(population.size(), 2 * limits.wanted);
        if (seeds == 0 || found.tries + points > limits.most) {
            return found;
        }
        const double threshold = population[seeds - 1].miss;
        if (threshold > (1.0 - leastProgress) * thresholdBefore) {
            return found;
        }
        thresholdBefore = threshold;
        share *= static_cast<double>(seeds) / static_cast<double>(population.size());
        population.resize(seeds);
        auto next =
            Round(population, threshold, points, limits.seed + 7919 * (round + 1), missOf).walk();
        if (!next) {
            return std::nullopt;
        }
        found.tries += points;
        population = std::move(*next);
    }
}

Result<Requirement> whatWouldHaveToBeTrue(const design::Design& design, const Ensemble& ensemble,
                                          const std::vector<Condition>& conditions,
                                          const SearchLimits& limits, Monitor& monitor) {
    if (conditions.empty()) {
        return Problem{
            "", LW_TEXT("No published figure can be compared with the results of the engines.")};
    }
    const Engines engines(design, ensemble.plan.speeds);
    std::vector<Tried> possible;
    for (const Run& run : ensemble.runs) {
        possible.push_back({run.shares, miss(run, ensemble, conditions)});
    }
    FromEngines progress(monitor, limits.most);
    const auto missOf = [&](const std::vector<double>& shares) -> std::optional<double> {
        const auto run = engines.run(-1, shares, progress);
        return run && progress.count() ? std::optional(miss(*run, ensemble, conditions))
                                       : std::nullopt;
    };
    const auto found = keeping(possible, missOf, limits);
    if (!found) {
        return Problem{"", LW_TEXT("cancelled")};
    }
    Requirement requirement;
    requirement.conditions = conditions;
    requirement.share = found->share;
    requirement.engines = possible.size();
    requirement.tries = found->tries;
    requirement.nearestMiss = found->nearest.miss;
    const auto nearest = engines.run(-1, found->nearest.shares, progress);
    auto runs = computedAgain(engines, found->points, progress);
    if (!nearest || !runs) {
        return Problem{"", LW_TEXT("cancelled")};
    }
    requirement.nearest = *nearest;
    requirement.runs = std::move(*runs);
    if (!requirement.runs.empty()) {
        requirement.unknowns = narrowedBy(ensemble, requirement.runs);
    }
    return requirement;
}

std::optional<std::pair<std::size_t, std::size_t>> narrowedMost(const Requirement& requirement) {
    if (requirement.unknowns.size() < 2) {
        return std::nullopt;
    }
    return std::pair(requirement.unknowns[0].unknown, requirement.unknowns[1].unknown);
}

std::vector<Message> sentences(const Requirement& requirement,
                               const std::vector<Unknown>& unknowns) {
    std::vector<Message> found;
    for (const Narrowed& narrowed : requirement.unknowns) {
        const Unknown& unknown = unknowns[narrowed.unknown];
        const Marginal& marginal = unknown.marginal();
        for (std::size_t word = 0; word < narrowed.words.size(); ++word) {
            if (narrowed.words[word] == 1.0) {
                found.push_back({LW_TEXT("%1: all of them have %2."), unknown.label,
                                 unknown.optionLabel(word)});
            }
        }
        if (marginal.kind == Marginal::Kind::choice) {
            continue;
        }
        const double width = narrowed.most - narrowed.least;
        const bool isAbove = narrowed.lowest - narrowed.least > ruledOut * width;
        const bool isBelow = narrowed.most - narrowed.highest > ruledOut * width;
        const Amount lowest = inUnitOf(unknown, narrowed.lowest);
        const Amount highest = inUnitOf(unknown, narrowed.highest);
        if (isAbove && isBelow) {
            found.push_back({LW_TEXT("%1: all of them lie between %2 and %3."), unknown.label,
                             lowest.bare(), highest});
        } else if (isAbove) {
            found.push_back({LW_TEXT("%1: all of them lie above %2."), unknown.label, lowest});
        } else if (isBelow) {
            found.push_back({LW_TEXT("%1: all of them lie below %2."), unknown.label, highest});
        }
    }
    return found;
}

} // namespace lobewright::unknowns
