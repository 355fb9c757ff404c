#include "core/gas/best_torque.h"

#include "core/gas/steady.h"
#include "core/units.h"

#include <algorithm>
#include <array>
#include <cmath>

namespace lobewright::gas {
namespace {

constexpr double earliestStart = -60.0 * units::degree;
constexpr double latestStart = 20.0 * units::degree;
constexpr double coarseSpacing = 8.0 * units::degree;
constexpr double fineSpacing = 2.0 * units::degree;
constexpr double accuracy = 0.05 * units::degree;
constexpr int roundLimit = 10;
/// Share of the allowed evaluations for the search; the rest is for the cycle at the start found.
constexpr double searchShare = 0.6;

double workOfWindow(const Ring& ring) {
    double sum = 0.0;
    for (const auto& row : ring.records()) {
        for (const CycleRecord& record : row) {
            sum += record.of(work);
        }
    }
    return sum;
}

/// Net work in steady state over the burn start.
class Trial {
  public:
    Trial(Model& model, Ring& ring, const CycleOptions& options, Monitor& monitor)
        : model_(model), ring_(ring), monitor_(monitor),
          last_(ring.work() +
                static_cast<long>(searchShare * static_cast<double>(options.maxEvaluations))) {}

    /// Absent: the search failed; see `problem`. A start for which no steady state is found (an
    /// engine on the edge of misfire) counts as worthless instead: others may well be steady.
    std::optional<double> work(double start, const CycleOptions& options) {
        problem = model_.setBurnStart(start);
        if (problem) {
            return std::nullopt;
        }
        CycleOptions limited = options;
        limited.maxEvaluations = std::max(0L, last_ - ring_.work());
        const auto search = findSteadyState(ring_, limited, monitor_);
        if (!search) {
            problem = search.problems().front();
            return std::nullopt;
        }
        if (!search->steady) {
            return worthless;
        }
        anySteady = true;
        return workOfWindow(ring_);
    }
    bool exhausted() const { return ring_.work() >= last_; }
    static constexpr double worthless = -1e300;
    bool anySteady = false;
    std::optional<Problem> problem;

  private:
    Model& model_;
    Ring& ring_;
    Monitor& monitor_;
    long last_; ///< amount of work at which the search ends
};

/// Where the quartic through five equally spaced values is highest, in spacings from the middle.
double peakOfQuartic(const std::array<double, 5>& f) {
    const double a1 = (f[0] - 8.0 * f[1] + 8.0 * f[3] - f[4]) / 12.0;
    const double a2 = (-f[0] + 16.0 * f[1] - 30.0 * f[2] + 16.0 * f[3] - f[4]) / 24.0;
    const double a3 = (-f[0] + 2.0 * f[1] - 2.0 * f[3] + f[4]) / 12.0;
    const double a4 = (f[0] - 4.0 * f[1] + 6.0 * f[2] - 4.0 * f[3] + f[4]) / 24.0;
    const auto value = [&](double t) { return t * (a1 + t * (a2 + t * (a3 + t * a4))); };
    double best = 0.0;
    constexpr int divisions = 2000;
    for (int i = 0; i <= divisions; ++i) {
        const double t = -2.0 + 4.0 * i / divisions;
        if (value(t) > value(best)) {
            best = t;
        }
    }
    return best;
}

/// The best of starts a coarse spacing apart, loosely solved. Absent: see `trial.problem`.
std::optional<double> bestOfSpaced(Trial& trial, double low, double high,
                                   const CycleOptions& options) {
    CycleOptions coarse = options;
    coarse.relativeTolerance = std::max(options.relativeTolerance, 1e-5);
    coarse.steadyTolerance = std::max(options.steadyTolerance, 1e-4);
    const int divisions = std::max(1, static_cast<int>(std::ceil((high - low) / coarseSpacing)));
    double best = low;
    double highest = Trial::worthless;
    for (int i = 0; i <= divisions && !trial.exhausted(); ++i) {
        const double start = low + (high - low) * i / divisions;
        const std::optional<double> work = trial.work(start, coarse);
        if (!work) {
            return std::nullopt;
        }
        if (*work > highest) {
            highest = *work;
            best = start;
        }
    }
    return best;
}

/// Works at five starts around `middle`; absent: one is not known, see `trial`.
std::optional<std::array<double, 5>> worksAround(Trial& trial, double middle, double spacing,
                                                 const CycleOptions& options) {
    std::array<double, 5> works{};
    for (std::size_t i = 0; i < works.size(); ++i) {
        const double start = middle + (static_cast<double>(i) - 2.0) * spacing;
        const std::optional<double> work =
            trial.exhausted() ? std::nullopt : trial.work(start, options);
        if (!work || *work == Trial::worthless) {
            return std::nullopt;
        }
        works[i] = *work;
    }
    return works;
}

} // namespace

std::optional<Problem> findBestStart(Model& model, Ring& ring, const CycleOptions& options,
                                     Monitor& monitor) {
    const auto [earliestClosed, latestClosed] = model.closedInterval();
    const double low = std::max(earliestStart, earliestClosed + accuracy);
    const double high = std::min(latestStart, latestClosed - accuracy);
    Trial trial(model, ring, options, monitor);
    const std::optional<double> coarse = bestOfSpaced(trial, low, high, options);
    if (!coarse) {
        return trial.problem;
    }
    if (!trial.anySteady) {
        return Problem{"", "no burn start between -60 and 20° gives a cyclic steady state"};
    }
    double best = *coarse;
    model.burnStartRough = true;
    const double spacing = std::min(fineSpacing, 0.2 * (high - low));
    for (int round = 0; round < roundLimit; ++round) {
        const double middle = std::clamp(best, low + 2.0 * spacing, high - 2.0 * spacing);
        const auto works = worksAround(trial, middle, spacing, options);
        if (!works) {
            if (trial.problem) {
                return trial.problem;
            }
            break;
        }
        const double peak = peakOfQuartic(*works);
        best = std::clamp(middle + peak * spacing, low, high);
        const bool inside = std::fabs(peak) < 1.5;
        const bool atEdge = best - low < accuracy || high - best < accuracy;
        if (inside || atEdge) {
            model.burnStartRough = false;
            break;
        }
    }
    return model.setBurnStart(best);
}

} // namespace lobewright::gas
