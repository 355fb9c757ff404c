#include "core/gas/cycle/best_torque.h"

#include "core/units.h"

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::gas {
namespace {

constexpr double earliestStart = -60.0 * units::degree;
constexpr double latestStart = 20.0 * units::degree;
constexpr double coarseSpacing = 8.0 * units::degree;
constexpr double ordinaryStart = -12.0 * units::degree;
constexpr double accuracy = burnStartAccuracy;
constexpr double sameStart = 1e-9; ///< nearer ones differ by rounding alone [rad]
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
        for (const Steady& known : steady_) {
            if (std::fabs(known.start - start) < sameStart) {
                return known.work;
            }
        }
        problem = model_.setBurnStart(start);
        if (problem) {
            return std::nullopt;
        }
        CycleOptions limited = options;
        limited.maxEvaluations = std::max(0L, last_ - search_.cylinders().rateEvaluations());
        goTo(start);
        const auto found = search_.find(limited, monitor_, true);
        if (!found) {
            problem = found.problems().front();
            return std::nullopt;
        }
        if (!found->steady) {
            return worthless;
        }
        anySteady = true;
        steady_.push_back({start, search_.cylinders().sumOf(gas::work), search_.state});
        return steady_.back().work;
    }
    /// Puts the search where the steady state of a start lies likely: on the parabola through those
    /// of the starts nearest to it.
    void goTo(double start) {
        if (steady_.empty()) {
            return;
        }
        const std::size_t count = std::min<std::size_t>(steady_.size(), 3);
        std::partial_sort(steady_.begin(), steady_.begin() + static_cast<std::ptrdiff_t>(count),
                          steady_.end(), [start](const Steady& a, const Steady& b) {
                              return std::fabs(a.start - start) < std::fabs(b.start - start);
                          });
        std::vector<const CoupledCylinders::State*> states;
        std::vector<double> weights;
        for (std::size_t i = 0; i < count; ++i) {
            double weight = 1.0;
            for (std::size_t j = 0; j < count; ++j) {
                weight *= j == i
                              ? 1.0
                              : (start - steady_[j].start) / (steady_[i].start - steady_[j].start);
            }
            states.push_back(&steady_[i].state);
            weights.push_back(weight);
        }
        const CoupledCylinders::State likely = blend(states, weights);
        search_.state = likely.with(likely.scaled(model_), model_).value_or(steady_.front().state);
    }
    bool exhausted() const { return search_.cylinders().rateEvaluations() >= last_; }
    static constexpr double worthless = -1e300;
    bool anySteady = false;
    std::optional<Problem> problem;

  private:
    struct Steady {
        double start = 0.0, work = 0.0;
        CoupledCylinders::State state;
    };
    Model& model_;
    SteadyState& search_;
    Monitor& monitor_;
    std::vector<Steady> steady_;
    long last_; ///< amount of work at which the search ends
};

/// Where the quartic through five equally spaced values is highest, in spacings from the middle.
double peakOfQuartic(const std::vector<double>& f) {
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

/// Where the parabola through a value and its neighbours is highest, in spacings from it; where it
/// is not, one spacing towards the higher neighbour. 0 at the ends and beside worthless ones.
double peakOfParabola(const std::vector<double>& works, std::size_t middle) {
    if (middle == 0 || middle + 1 >= works.size() || works[middle - 1] == Trial::worthless ||
        works[middle + 1] == Trial::worthless) {
        return 0.0;
    }
    const double slope = 0.5 * (works[middle + 1] - works[middle - 1]);
    const double bend = works[middle + 1] - 2.0 * works[middle] + works[middle - 1];
    return bend < 0.0 ? std::clamp(-slope / bend, -1.0, 1.0) : std::copysign(1.0, slope);
}

/// Where the burn may start [cycle angle, rad].
struct Range {
    double low = 0.0, high = 0.0;
};

/// About the best start, from starts a coarse spacing apart: neighbours differ by percents, so that
/// a thousandth will do. Looked at from an ordinary start to either side until the work has fallen
/// twice in turn: it has one peak. Absent: see `trial.problem`.
std::optional<double> bestOfSpaced(Trial& trial, const Range& range, const CycleOptions& options) {
    const CycleOptions coarse = loosened(options, 1e-4, 1e-3);
    const int divisions =
        std::max(1, static_cast<int>(std::ceil((range.high - range.low) / coarseSpacing)));
    const double spacing = (range.high - range.low) / divisions;
    std::vector<double> works(static_cast<std::size_t>(divisions) + 1, Trial::worthless);
    const int ordinary = std::clamp(
        static_cast<int>(std::lround((ordinaryStart - range.low) / spacing)), 0, divisions);
    int best = ordinary;
    const auto workAt = [&works](int i) -> double& { return works[static_cast<std::size_t>(i)]; };
    for (const int direction : {-1, 1}) {
        int falls = 0;
        for (int i = direction < 0 ? ordinary : ordinary + 1;
             i >= 0 && i <= divisions && falls < 2 && !trial.exhausted(); i += direction) {
            const std::optional<double> work = trial.work(range.low + spacing * i, coarse);
            if (!work) {
                return std::nullopt;
            }
            workAt(i) = *work;
            if (*work > workAt(best)) {
                best = i;
                falls = 0;
            } else if (i != best && workAt(best) != Trial::worthless) {
                ++falls;
            }
        }
    }
    return range.low + spacing * (best + peakOfParabola(works, static_cast<std::size_t>(best)));
}

/// Works at `count` starts around `middle`, an odd number of them, ascending; looked at from the
/// middle outwards. Empty: one is not known, see `trial`.
std::vector<double> worksAround(Trial& trial, double middle, double spacing, int count,
                                const CycleOptions& options) {
    std::vector<double> works(static_cast<std::size_t>(count));
    for (int i = 0; i < count; ++i) {
        const int offset = (i % 2 == 0 ? -1 : 1) * ((i + 1) / 2);
        const std::optional<double> work =
            trial.exhausted() ? std::nullopt : trial.work(middle + offset * spacing, options);
        if (!work || *work == Trial::worthless) {
            return {};
        }
        const int place = count / 2 + offset;
        works[static_cast<std::size_t>(place)] = *work;
    }
    return works;
}

/// The close look: at five starts so far apart. The work at 2° from the peak lies some 5e-3 lower:
/// 3e-5 of it places the peak to 0.015°.
constexpr int closeStarts = 5;
constexpr double closeSpacing = 2.0 * units::degree;

/// Moves `best` to the peak. The starts looked at are multiples of the spacing where the range has
/// room, so that the peak found does not depend on where the search came from: a point of a sweep
/// is the same whichever neighbour it began at. False: the trial ended before. Error: see
/// `trial.problem`.
bool lookClosely(Trial& trial, const Range& range, const CycleOptions& options, double& best) {
    const CycleOptions fine = loosened(options, 3e-7, 3e-6);
    constexpr int reach = closeStarts / 2;
    const double spacing = std::min(closeSpacing, 0.4 / reach * (range.high - range.low));
    for (int round = 0; round < roundLimit; ++round) {
        const double middle = std::clamp(spacing * std::round(best / spacing),
                                         range.low + reach * spacing, range.high - reach * spacing);
        const auto works = worksAround(trial, middle, spacing, closeStarts, fine);
        if (works.empty()) {
            return false;
        }
        const double peak = peakOfQuartic(works);
        best = std::clamp(middle + peak * spacing, range.low, range.high);
        const bool inside = std::fabs(peak) < 0.6;
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
    close.goTo(best);
    return !model.burnStartRough;
}

} // namespace

Result<bool> findBestStart(Model& model, SteadyState& scout, SteadyState& search,
                           CycleOptions& options, Monitor& monitor) {
    const Range range = possibleStarts(model);
    const auto allowed = static_cast<double>(options.maxEvaluations);
    const long before = scout.cylinders().rateEvaluations();
    Trial spaced(model, scout, spacedShare * allowed, monitor);
    const std::optional<double> found = bestOfSpaced(spaced, range, options);
    if (!found) {
        return *spaced.problem;
    }
    if (!spaced.anySteady) {
        return Problem{
            "", LW_TEXT("no start of combustion between -60 and 20° gives a cyclic steady state")};
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
