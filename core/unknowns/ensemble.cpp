#include "core/unknowns/ensemble.h"

#include "core/design/file.h"
#include "core/parallel.h"
#include "core/units.h"

#include <algorithm>
#include <atomic>
#include <cmath>
#include <mutex>
#include <random>

LW_TEXTS_OF(Core)

namespace lobewright::unknowns {

namespace {

std::optional<Problem> speedProblem(const std::vector<double>& speeds) {
    const bool isAscending =
        std::ranges::adjacent_find(speeds, std::greater_equal<>()) == speeds.end();
    if (speeds.size() < 3) {
        return Problem{"", LW_TEXT("A curve needs at least three speeds.")};
    }
    if (!isAscending || !(speeds.front() > 0.0) || !std::isfinite(speeds.back())) {
        return Problem{"", LW_TEXT("The speeds of the curve must be positive and ascend.")};
    }
    return std::nullopt;
}

/// What is wrong with a design or a plan, if anything.
std::optional<Problems> planProblem(const design::Design& design, const Plan& plan) {
    if (auto problems = design::validateEngine(design); !problems.empty()) {
        return problems;
    }
    if (auto problem = speedProblem(plan.speeds)) {
        return Problems{*problem};
    }
    if (design::rangedInputs(design).empty()) {
        return Problems{{"/knowledge", LW_TEXT("No input has a range or options: everything counts "
                                               "as known.")}};
    }
    return std::nullopt;
}

/// One number a seed and unknown, the same on every machine: the generator of the standard library
/// is defined to the bit, its distributions are not.
std::vector<double> shifts(std::uint64_t seed, int unknowns) {
    std::mt19937_64 generator(seed);
    std::vector<double> values;
    values.reserve(static_cast<std::size_t>(unknowns));
    for (int i = 0; i < unknowns; ++i) {
        values.push_back(static_cast<double>(generator() >> 11) * 0x1.0p-53);
    }
    return values;
}

Ensemble emptyOf(const Plan& plan, const Engines& engines) {
    return {plan, engines.unknowns(), engines.followers(), engines.results(), engines.nominal(),
            {}};
}

std::vector<double> row(const Matrix& points, Eigen::Index index) {
    std::vector<double> values(static_cast<std::size_t>(points.cols()));
    for (Eigen::Index i = 0; i < points.cols(); ++i) {
        values[static_cast<std::size_t>(i)] = points(index, i);
    }
    return values;
}

} // namespace

std::vector<double> usualSpeeds(const design::Design& design) {
    const double own = design.running.speed / units::revPerMinute;
    std::vector<double> speeds;
    for (int percent = 25; percent <= 130; percent += 15) {
        speeds.push_back(percent == 100 ? own : percent / 100.0 * own);
    }
    return speeds;
}

std::optional<std::size_t> Ensemble::result(std::string_view name) const {
    const auto place =
        std::ranges::find(results, name, [](const auto& column) { return column.name; });
    return place == results.end()
               ? std::nullopt
               : std::optional(static_cast<std::size_t>(place - results.begin()));
}

std::vector<double> Ensemble::inputsOf(const Run& run) const {
    const auto values = valuesAt(unknowns, followers, run.shares);
    std::vector<double> found;
    std::size_t place = 0; // of the first member
    for (std::size_t i = 0; i < unknowns.size(); ++i) {
        const auto& value = values[place].second;
        if (const auto* number = std::get_if<double>(&value)) {
            found.push_back(*number);
        } else {
            found.push_back(unknowns[i].marginal().value(run.shares[i]));
        }
        place += unknowns[i].members.size();
    }
    return found;
}

Matrix sharesOf(const Statistics& statistics, int unknowns, std::uint64_t seed, long from,
                long to) {
    Matrix shares = statistics.sobolPoints(unknowns, from, to);
    const auto shift = shifts(seed, unknowns);
    for (Eigen::Index i = 0; i < shares.rows(); ++i) {
        for (Eigen::Index k = 0; k < shares.cols(); ++k) {
            const double moved = shares(i, k) + shift[static_cast<std::size_t>(k)];
            shares(i, k) = moved < 1.0 ? moved : moved - 1.0;
        }
    }
    return shares;
}

Result<Ensemble> emptyEnsemble(const design::Design& design, const Plan& plan) {
    if (auto problem = planProblem(design, plan)) {
        return std::move(*problem);
    }
    const Engines engines(design, plan.speeds);
    return emptyOf(plan, engines);
}

Result<Ensemble> computeEnsemble(const design::Design& design, const Plan& plan, Monitor& monitor,
                                 const RunSink& sink, const EmptySink& begun) {
    if (auto problem = planProblem(design, plan)) {
        return std::move(*problem);
    }
    const auto library = statistics();
    if (!library) {
        return library.problems();
    }
    const Engines engines(design, plan.speeds);
    Ensemble ensemble = emptyOf(plan, engines);
    if (begun) {
        begun(ensemble);
    }
    const Matrix shares = sharesOf(**library, static_cast<int>(engines.unknowns().size()),
                                   plan.seed, 0, plan.samples);
    const long count = (plan.samples - plan.part.part + plan.part.of - 1) / plan.part.of;
    ensemble.runs.resize(static_cast<std::size_t>(count));
    std::atomic<bool> stopped = false;
    StoppedByFlag engineMonitor(stopped);
    std::mutex collecting;
    long done = 0;
    const auto runOne = [&](long place) {
        const long index = plan.part.part + place * plan.part.of;
        auto run = engines.run(index, row(shares, index), engineMonitor);
        if (!run) {
            return;
        }
        const std::scoped_lock lock(collecting);
        ++done;
        if (!monitor.step(static_cast<double>(done) / static_cast<double>(count),
                          Message(LW_TEXT("%1 of %2 engines"), done, count))) {
            stopped = true;
        } else if (sink) {
            sink(*run);
        }
        ensemble.runs[static_cast<std::size_t>(place)] = std::move(*run);
    };
    onAllCores(count, [&](long i) {
        if (!stopped) {
            runOne(i);
        }
    });
    if (stopped) {
        return Problem{"", LW_TEXT("cancelled")};
    }
    return ensemble;
}

} // namespace lobewright::unknowns
