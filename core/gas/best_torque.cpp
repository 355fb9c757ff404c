#include "core/gas/best_torque.h"

#include "core/units.h"

#include <algorithm>
#include <array>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::gas {
namespace {

constexpr double earliestStart = -60.0 * units::degree;
constexpr double latestStart = 20.0 * units::degree;
constexpr double coarseSpacing = 8.0 * units::degree;
constexpr double fineSpacing = 2.0 * units::degree;
constexpr double accuracy = 0.05 * units::degree;
constexpr int roundLimit = 10;
/// Share of the allowed evaluations for the look at spaced starts, and of what is then left for the
/// close look; the rest is for the cycle at the start found.
constexpr double spacedShare = 0.3, closeShare = 0.43;

/// Net work in steady state over the burn start.
class Trial {
  public:
    /// May do `evaluations` of one cylinder's rates.
    Trial(Model& model, SteadyState& search, double evaluations, Monitor& monitor)
        : model_(model), search_(search), monitor_(monitor),
          last_(search.cylinders().rateEvaluations() + static_cast<long>(evaluations)) {}

    /// Absent: the search failed; see `problem`. A start for which no steady state is found (an
    /// engine on the edge of misfire) counts as worthless instead: others may well be steady.
    std::optional<double> work(double start, const CycleOptions& options) {
        problem = model_.setBurnStart(start);
        if (problem) {
            return std::nullopt;
        }
        CycleOptions limited = options;
        limited.maxEvaluations = std::max(0L, last_ - search_.cylinders().rateEvaluations());
        const auto found = search_.find(limited, monitor_, true);
        if (!found) {
            problem = found.problems().front();
            return std::nullopt;
        }
        if (!found->steady) {
            return worthless;
        }
        anySteady = true;
        return search_.cylinders().sumOf(gas::work);
    }
    bool exhausted() const { return search_.cylinders().rateEvaluations() >= last_; }
    static constexpr double worthless = -1e300;
    bool anySteady = false;
    std::optional<Problem> problem;

  private:
    Model& model_;
    SteadyState& search_;
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

CycleOptions loosened(const CycleOptions& options, double integrator, double steady) {
    CycleOptions loose = options;
    loose.relativeTolerance = std::max(options.relativeTolerance, integrator);
    loose.steadyTolerance = std::max(options.steadyTolerance, steady);
    return loose;
}

/// Where the parabola through the highest of equally spaced values and its neighbours is highest,
/// in spacings from the highest; 0 at the ends and beside worthless ones.
double peakOfParabola(const std::vector<double>& works, std::size_t highest) {
    if (highest == 0 || highest + 1 >= works.size() || works[highest - 1] == Trial::worthless ||
        works[highest + 1] == Trial::worthless) {
        return 0.0;
    }
    const double slope = 0.5 * (works[highest + 1] - works[highest - 1]);
    const double bend = works[highest + 1] - 2.0 * works[highest] + works[highest - 1];
    return bend < 0.0 ? std::clamp(-slope / bend, -0.5, 0.5) : 0.0;
}

/// About the best start, from starts a coarse spacing apart: neighbours differ by percents, so that
/// a thousandth will do. Absent: see `trial.problem`.
std::optional<double> bestOfSpaced(Trial& trial, double low, double high,
                                   const CycleOptions& options) {
    const CycleOptions coarse = loosened(options, 1e-4, 1e-3);
    const int divisions = std::max(1, static_cast<int>(std::ceil((high - low) / coarseSpacing)));
    const double spacing = (high - low) / divisions;
    std::vector<double> works;
    for (int i = 0; i <= divisions && !trial.exhausted(); ++i) {
        const std::optional<double> work = trial.work(low + spacing * i, coarse);
        if (!work) {
            return std::nullopt;
        }
        works.push_back(*work);
    }
    if (works.empty()) {
        return low;
    }
    const auto highest =
        static_cast<std::size_t>(std::max_element(works.begin(), works.end()) - works.begin());
    return low + spacing * (static_cast<double>(highest) + peakOfParabola(works, highest));
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

/// Where the burn may start [cycle angle, rad].
struct Range {
    double low = 0.0, high = 0.0;
};

/// Moves `best` to the peak. False: the trial ended before. Error: see `trial.problem`.
bool lookClosely(Trial& trial, const Range& range, const CycleOptions& options, double& best) {
    // the work at 2° from the peak lies some 5e-3 lower: 3e-5 of it places the peak to 0.015°
    const CycleOptions fine = loosened(options, 1e-6, 3e-5);
    const double spacing = std::min(fineSpacing, 0.2 * (range.high - range.low));
    for (int round = 0; round < roundLimit; ++round) {
        const double middle =
            std::clamp(best, range.low + 2.0 * spacing, range.high - 2.0 * spacing);
        const auto works = worksAround(trial, middle, spacing, fine);
        if (!works) {
            return false;
        }
        const double peak = peakOfQuartic(*works);
        best = std::clamp(middle + peak * spacing, range.low, range.high);
        const bool inside = std::fabs(peak) < 1.5;
        const bool atEdge = best - range.low < accuracy || range.high - best < accuracy;
        if (inside || atEdge) {
            return true;
        }
    }
    return false;
}

Range possibleStarts(const Model& model) {
    const auto [earliestClosed, latestClosed] = model.closedInterval();
    return {std::max(earliestStart, earliestClosed + accuracy),
            std::min(latestStart, latestClosed - accuracy)};
}

/// Looks closely from `best` on and takes the work from what `options` allow.
Result<bool> bestAround(double best, Model& model, const Range& range, SteadyState& search,
                        CycleOptions& options, Monitor& monitor) {
    const long before = search.cylinders().rateEvaluations();
    Trial close(model, search, closeShare * static_cast<double>(options.maxEvaluations), monitor);
    model.burnStartRough = !lookClosely(close, range, options, best);
    if (close.problem) {
        return *close.problem;
    }
    options.maxEvaluations -= search.cylinders().rateEvaluations() - before;
    if (auto problem = model.setBurnStart(best)) {
        return *problem;
    }
    return !model.burnStartRough;
}

} // namespace

Result<bool> findBestStart(Model& model, SteadyState& scout, SteadyState& search,
                           CycleOptions& options, Monitor& monitor) {
    const Range range = possibleStarts(model);
    const auto allowed = static_cast<double>(options.maxEvaluations);
    const long before = scout.cylinders().rateEvaluations();
    Trial spaced(model, scout, spacedShare * allowed, monitor);
    const std::optional<double> found = bestOfSpaced(spaced, range.low, range.high, options);
    if (!found) {
        return *spaced.problem;
    }
    if (!spaced.anySteady) {
        return Problem{"",
                       LW_TEXT("no burn start between -60 and 20° gives a cyclic steady state")};
    }
    options.maxEvaluations -= scout.cylinders().rateEvaluations() - before;
    return bestAround(*found, model, range, search, options, monitor);
}

Result<bool> findBestStartNear(Model& model, SteadyState& search, CycleOptions& options,
                               Monitor& monitor) {
    const double start = model.burnStart * model.chamber->cyclesPerTurn();
    return bestAround(start, model, possibleStarts(model), search, options, monitor);
}

} // namespace lobewright::gas
