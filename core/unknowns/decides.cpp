#include "core/unknowns/decides.h"

#include "core/enum_table.h"
#include "core/unknowns/bands.h"

#include <algorithm>
#include <cmath>
#include <numeric>

LW_TEXTS_OF(Core)

namespace lobewright::unknowns {

namespace {

constexpr Eigen::Index fewestValues = 16;
/// A band half as wide has a quarter of the variance.
constexpr double shareToRemove = 0.75;
constexpr std::size_t mostMeasurements = 3;

/// Indices that put the column in order; equal values keep their order.
std::vector<Eigen::Index> ordered(const Samples& column) {
    std::vector<Eigen::Index> order(static_cast<std::size_t>(column.size()));
    std::iota(order.begin(), order.end(), Eigen::Index{0});
    std::ranges::stable_sort(order,
                             [&](Eigen::Index a, Eigen::Index b) { return column[a] < column[b]; });
    return order;
}

/// Ranks, equal values sharing the mean of theirs.
Samples ranks(const Samples& column) {
    const auto order = ordered(column);
    Samples ranked(column.size());
    for (std::size_t i = 0; i < order.size();) {
        std::size_t end = i;
        while (end < order.size() && column[order[end]] == column[order[i]]) {
            ++end;
        }
        for (std::size_t k = i; k < end; ++k) {
            ranked[order[k]] = 0.5 * static_cast<double>(i + end - 1);
        }
        i = end;
    }
    return ranked;
}

double correlation(const Samples& a, const Samples& b) {
    const Samples da = a - a.mean(), db = b - b.mean();
    const double scale = std::sqrt(da.square().sum() * db.square().sum());
    return scale > 0.0 ? (da * db).sum() / scale : 0.0;
}

/// Whether the result follows the unknown up or down: from the correlation of ranks [Spearman
/// 1904].
Direction directionOf(const Samples& x, const Samples& y) {
    const double rank = correlation(ranks(x), ranks(y));
    // What two independent columns reach in one of twenty.
    const double chance = 1.96 / std::sqrt(static_cast<double>(x.size()));
    if (std::abs(rank) < chance) {
        return Direction::mixed;
    }
    return rank > 0.0 ? Direction::rises : Direction::falls;
}

/// How much of the variance lies between groups of engines and not within them, less what chance
/// puts there [Kelley 1935, ε²]. groups: which group each value is in, 0 … count − 1.
double betweenGroups(const std::vector<int>& groups, int count, const Samples& y) {
    Samples sums = Samples::Zero(count), sizes = Samples::Zero(count);
    const Samples d = y - y.mean();
    for (Eigen::Index i = 0; i < y.size(); ++i) {
        sums[groups[static_cast<std::size_t>(i)]] += d[i];
        sizes[groups[static_cast<std::size_t>(i)]] += 1.0;
    }
    const double all = d.square().sum();
    const double between = (sizes > 0.0).select(sums.square() / sizes.max(1.0), 0.0).sum();
    const double used = (sizes > 0.0).cast<double>().sum();
    const auto size = static_cast<double>(y.size());
    const double byChance = (used - 1.0) * (all - between) / std::max(1.0, size - used);
    return std::clamp((between - byChance) / all, 0.0, 1.0);
}

/// Groups of equal size along a number; a choice has one for each word.
double sampleIndex(const Samples& x, const Samples& y, const Marginal& marginal) {
    std::vector<int> groups(static_cast<std::size_t>(x.size()));
    if (marginal.kind == Marginal::Kind::choice) {
        for (std::size_t i = 0; i < groups.size(); ++i) {
            groups[i] = static_cast<int>(x[static_cast<Eigen::Index>(i)]);
        }
        return betweenGroups(groups, marginal.options, y);
    }
    // Few enough that chance is small, many enough that the result is level within each.
    const int count =
        std::clamp(static_cast<int>(0.7 * std::sqrt(static_cast<double>(x.size()))), 4, 40);
    const auto order = ordered(x);
    for (std::size_t i = 0; i < order.size(); ++i) {
        groups[static_cast<std::size_t>(order[i])] =
            static_cast<int>(i * static_cast<std::size_t>(count) / order.size());
    }
    return betweenGroups(groups, count, y);
}

/// 95 % confidence by leaving out one tenth after the other (delete-group jackknife).
double sampleError(const Samples& x, const Samples& y, const Marginal& marginal) {
    constexpr Eigen::Index parts = 10;
    std::vector<double> values;
    for (Eigen::Index part = 0; part < parts; ++part) {
        std::vector<Eigen::Index> kept;
        for (Eigen::Index i = 0; i < y.size(); ++i) {
            if (i % parts != part) {
                kept.push_back(i);
            }
        }
        const Samples keptY = y(kept);
        if ((keptY == keptY[0]).all()) {
            continue;
        }
        values.push_back(sampleIndex(x(kept), keptY, marginal));
    }
    const auto count = static_cast<double>(values.size());
    const double mean = std::accumulate(values.begin(), values.end(), 0.0) / count;
    double squares = 0.0;
    for (const double value : values) {
        squares += (value - mean) * (value - mean);
    }
    return 1.96 * std::sqrt(squares * (count - 1.0) / count);
}

double weight(const Influence& influence) {
    return influence.total.value_or(influence.first);
}

/// Two significant digits, downwards: what is asked for is at least enough.
double roundedDown(double value) {
    const double step = std::pow(10.0, std::floor(std::log10(value)) - 1.0);
    return std::floor(value / step * (1.0 + 1e-9)) * step;
}

/// How much narrower a band is of which this share of the variance is gone.
double narrowing(double removed) {
    return 1.0 - std::sqrt(1.0 - std::clamp(removed, 0.0, 1.0));
}

Message phrase(const Measurement& measurement, const Unknown& unknown) {
    return measurement.accuracy == 0.0 ? Message(LW_TEXT("%1 for certain"), unknown.label)
                                       : Message(LW_TEXT("%1 to within ±%2"), unknown.label,
                                                 inUnitOf(unknown, measurement.accuracy, 2));
}

} // namespace

std::string_view name(Direction direction) {
    return entryOf<Direction::mixed, std::string_view>({"rises", "falls", "mixed"}, direction);
}

std::optional<Decision> decide(const Statistics& statistics, const Matrix& allX,
                               const Samples& allY, std::span<const Marginal> marginals) {
    std::vector<Eigen::Index> rows;
    for (Eigen::Index i = 0; i < allY.size(); ++i) {
        if (std::isfinite(allY[i])) {
            rows.push_back(i);
        }
    }
    const Samples y = allY(rows);
    const Matrix x = allX(rows, Eigen::all);
    const double largest = y.size() > 0 ? y.abs().maxCoeff() : 0.0;
    if (y.size() < fewestValues || !(y.maxCoeff() - y.minCoeff() > 1e-9 * largest)) {
        return std::nullopt;
    }
    const auto surrogate = statistics.fit(x, y, marginals);
    Decision decision;
    if (surrogate) {
        decision.quality = surrogate->quality;
        decision.isOfSurrogate = surrogate->quality >= believable;
    }
    for (std::size_t i = 0; i < marginals.size(); ++i) {
        const Samples column = x.col(static_cast<Eigen::Index>(i));
        Influence influence;
        influence.unknown = i;
        influence.direction = directionOf(column, y);
        if (decision.isOfSurrogate) {
            influence.first = surrogate->first[i];
            influence.total = surrogate->total[i];
        } else {
            influence.first = sampleIndex(column, y, marginals[i]);
            influence.error = sampleError(column, y, marginals[i]);
        }
        decision.influences.push_back(influence);
    }
    std::ranges::stable_sort(decision.influences, std::ranges::greater{}, weight);
    return decision;
}

std::optional<Decision> decide(const Statistics& statistics, const Ensemble& ensemble,
                               std::size_t result) {
    const auto values = valuesOf(ensemble, result);
    const auto marginals = marginalsOf(ensemble.unknowns);
    Matrix x(static_cast<Eigen::Index>(values.size()), static_cast<Eigen::Index>(marginals.size()));
    Eigen::Index row = 0;
    for (const Run& run : ensemble.runs) {
        if (!run.runs()) {
            continue;
        }
        for (std::size_t k = 0; k < marginals.size(); ++k) {
            x(row, static_cast<Eigen::Index>(k)) = marginals[k].value(run.shares[k]);
        }
        ++row;
    }
    const Samples y = Eigen::Map<const Samples>(values.data(), row);
    return decide(statistics, x, y, marginals);
}

Advice halving(const Decision& decision, std::span<const Marginal> marginals) {
    Advice advice;
    std::vector<Influence> byItself = decision.influences;
    std::ranges::stable_sort(byItself, std::ranges::greater{}, &Influence::first);
    if (byItself.empty()) {
        return advice;
    }
    advice.strongest = byItself.front().unknown;
    advice.narrowing = narrowing(byItself.front().first);
    double ofChoices = 0.0, ofNumbers = 0.0;
    for (std::size_t count = 0; count < std::min(mostMeasurements, byItself.size()); ++count) {
        const Influence& next = byItself[count];
        const bool isChoice = marginals[next.unknown].kind == Marginal::Kind::choice;
        (isChoice ? ofChoices : ofNumbers) += next.first;
        if (ofChoices + ofNumbers < shareToRemove) {
            continue;
        }
        // What is left of the variance of the numbers goes with the square of their accuracy.
        const double removed =
            ofNumbers > 0.0 ? std::max(0.0, (shareToRemove - ofChoices) / ofNumbers) : 0.0;
        const double part = std::sqrt(1.0 - removed);
        for (std::size_t i = 0; i <= count; ++i) {
            const Marginal& marginal = marginals[byItself[i].unknown];
            const double accuracy = part * marginal.halfWidth();
            // Nobody measures to nothing: such a set is as good as none.
            if (marginal.kind != Marginal::Kind::choice && !(part > 0.02)) {
                advice.measurements.clear();
                break;
            }
            advice.measurements.push_back(
                {byItself[i].unknown, accuracy > 0.0 ? roundedDown(accuracy) : 0.0});
        }
        if (!advice.measurements.empty()) {
            const bool isFirstChoice =
                marginals[byItself.front().unknown].kind == Marginal::Kind::choice;
            const double left = isFirstChoice ? 0.0 : part * part;
            advice.byFirst = narrowing(byItself.front().first * (1.0 - left));
            break;
        }
    }
    return advice;
}

const std::vector<std::string>& principalResults() {
    static const std::vector<std::string> names = {"peak_torque_speed_rpm",
                                                   "peak_torque_Nm",
                                                   "peak_power_kW",
                                                   "brake_power_kW",
                                                   "brake_efficiency",
                                                   "peak_pressure_bar",
                                                   "knock_integral",
                                                   "peak_contact_pressure_inlet_MPa",
                                                   "lift_off_speed_fired_rpm",
                                                   "roller_life_inlet_h",
                                                   "compression_ratio",
                                                   "overlap_cycle_deg"};
    return names;
}

std::optional<std::vector<DecidedResult>> decideAll(const Statistics& statistics,
                                                    const Ensemble& ensemble,
                                                    const std::vector<std::string>& results,
                                                    Monitor& monitor) {
    const auto marginals = marginalsOf(ensemble.unknowns);
    std::vector<DecidedResult> all;
    for (std::size_t i = 0; i < results.size(); ++i) {
        if (!monitor.step(static_cast<double>(i) / static_cast<double>(results.size()),
                          LW_TEXT("what decides the results"))) {
            return std::nullopt;
        }
        const auto column = ensemble.result(results[i]);
        auto decision = column ? decide(statistics, ensemble, *column) : std::nullopt;
        if (decision) {
            const Advice advice = halving(*decision, marginals);
            all.push_back({*column, std::move(*decision), advice});
        }
    }
    return all;
}

Message sentence(const Advice& advice, std::span<const Unknown> unknowns) {
    if (unknowns.empty()) {
        return {};
    }
    std::vector<Message> phrases;
    for (const Measurement& measurement : advice.measurements) {
        phrases.push_back(phrase(measurement, unknowns[measurement.unknown]));
    }
    switch (phrases.size()) {
    case 1:
        return {LW_TEXT("Measure one thing and this band is half as wide: %1."), phrases[0]};
    case 2:
        return {LW_TEXT("Measure two things and this band is half as wide: %1; %2. The first alone "
                        "narrows it by %3."),
                phrases[0], phrases[1], Amount(advice.byFirst, in::percent, 2)};
    case 3:
        return {LW_TEXT("Measure three things and this band is half as wide: %1; %2; %3. The first "
                        "alone narrows it by %4."),
                phrases[0], phrases[1], phrases[2], Amount(advice.byFirst, in::percent, 2)};
    default:
        return {
            LW_TEXT("No three measurements make this band half as wide. Measure this first; known "
                    "exactly, it narrows the band by %2: %1."),
            unknowns[advice.strongest].label, Amount(advice.narrowing, in::percent, 2)};
    }
}

} // namespace lobewright::unknowns
