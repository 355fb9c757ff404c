#include "core/design/file.h"
#include "core/solution/solution.h"
#include "core/study/line.h"
#include "core/study/supply_columns.h"
#include "core/units.h"
#include "core/unknowns/ensemble.h"

#include <algorithm>
#include <cmath>
#include <limits>
#include <set>
#include <utility>

LW_TEXTS_OF(Core)

namespace lobewright::unknowns {

namespace {

constexpr double missing = std::numeric_limits<double>::quiet_NaN();

double valueOf(const solution::Figure* figure) {
    return figure && figure->value ? *figure->value : missing;
}

double valueOf(const solution::Solution& solved, std::string_view name) {
    return valueOf(solved.figure(name));
}

/// The largest of both sides, as far as they are available.
double largerSide(const solution::Solution& solved, const char* id, const Unit& unit) {
    const auto of = [&](End end) {
        return valueOf(solved.figure(solution::QuantityId{id, &unit, end}));
    };
    return std::fmax(of(End::inlet), of(End::exhaust));
}

void fillCurve(const solution::Solution& solved, double* values) {
    values[torque] = valueOf(solved, "brake_torque_Nm");
    values[power] = valueOf(solved, "brake_power_kW");
    values[peakPressure] = valueOf(solved, "peak_pressure_bar");
    values[contactStress] = largerSide(solved, "peak_contact_pressure", in::MPa);
    values[keepsContact] = valueOf(solved, "keeps_contact");
}

Failure failureOf(const solution::Solution& solved) {
    const auto* check = study::unsolvedGas(solved);
    return check ? Failure{Failure::Kind::notRun, check->message.text.text, check->message}
                 : Failure{};
}

Failure failureOf(const Problems& problems) {
    return {Failure::Kind::notBuilt, problems.front().message.text.text, study::reasonOf(problems)};
}

/// Of resultsOfPoint().
const std::vector<std::string>& groupsOfPoint() {
    static const std::vector<std::string> groups = {"geometry", "timing",  "performance",
                                                    "loads",    "contact", "shaking"};
    return groups;
}

const std::vector<std::string>& groupsOfCurve() {
    static const std::vector<std::string> groups = {"performance", "loads", "contact"};
    return groups;
}

/// One engine at its own speed and, if it runs there, at those of the curve. Each search for a gas
/// cycle begins between those of the speeds beside it, so that one engine does not depend on
/// another.
class SpeedLine {
  public:
    /// `results`: names of what is kept of the engine at its own speed.
    SpeedLine(const design::Design& design, const std::vector<double>& speeds,
              const std::vector<std::string>& results, Monitor& monitor)
        : design_(design), results_(results), monitor_(monitor) {
        own_ = design.running.speed / units::revPerMinute;
        speeds_ = speeds;
        const auto place = std::ranges::lower_bound(speeds_, own_);
        ownPlace_ = static_cast<std::size_t>(place - speeds_.begin());
        isOwnExtra_ = place == speeds_.end() || *place != own_;
        if (isOwnExtra_) {
            speeds_.insert(place, own_);
        }
    }

    /// False: stopped.
    bool solve(Run& run) {
        run.curve.assign((speeds_.size() - (isOwnExtra_ ? 1 : 0)) * curveQuantities, missing);
        std::vector<std::shared_ptr<const gas::CycleStart>> starts(speeds_.size());
        if (!solveAt(ownPlace_, starts[ownPlace_], run)) {
            return false;
        }
        // One that does not run counts by its reason alone; the design itself, which is no point of
        // the study, is drawn as far as it goes.
        if (!run.runs() && !run.shares.empty()) {
            return true;
        }
        std::vector<std::size_t> known = {ownPlace_};
        for (auto& round : study::bisectingRounds(speeds_.size())) {
            std::erase(round, ownPlace_);
            for (const std::size_t i : round) {
                const auto near = study::beside(i, known, speeds_);
                std::vector<std::shared_ptr<const gas::CycleStart>> chosen;
                for (const std::size_t k : near.points) {
                    chosen.push_back(starts[k]);
                }
                starts[i] = gas::startBetween(chosen, near.weights);
            }
            for (const std::size_t i : round) {
                if (!solveAt(i, starts[i], run)) {
                    return false;
                }
            }
            known.insert(known.end(), round.begin(), round.end());
            std::ranges::sort(known);
        }
        return true;
    }

  private:
    bool solveAt(std::size_t place, std::shared_ptr<const gas::CycleStart>& start, Run& run) {
        const bool isOwn = place == ownPlace_;
        solution::Request request(solution::Detail::figures);
        request.groups = isOwn ? groupsOfPoint() : groupsOfCurve();
        request.valid = true;
        request.near = std::exchange(start, nullptr);
        design::Design design = design_;
        design.running.speed = isOwn ? design_.running.speed : speeds_[place] * units::revPerMinute;
        auto solved = solution::solve(design, monitor_, before_ ? &*before_ : nullptr, request);
        if (!solved) {
            // With inputs that follow the speed a rule may be broken at this one only; otherwise
            // the rules are kept, and only stopping is left.
            return !isOwn && !solved.problems().front().path.empty();
        }
        before_ = std::move(solved).value();
        start = before_->gas ? before_->gas->start : nullptr;
        if (isOwn) {
            run.failure = failureOf(*before_);
            for (const std::string& name : results_) {
                run.results.push_back(valueOf(*before_, name));
            }
        }
        if (!(isOwn && isOwnExtra_)) {
            const std::size_t row = place - (isOwnExtra_ && place > ownPlace_ ? 1 : 0);
            fillCurve(*before_, run.curve.data() + row * curveQuantities);
        }
        return true;
    }

    const design::Design& design_;
    const std::vector<std::string>& results_;
    Monitor& monitor_;
    std::vector<double> speeds_;
    double own_ = 0.0;
    std::size_t ownPlace_ = 0;
    bool isOwnExtra_ = false;
    std::optional<solution::Solution> before_; ///< lends its stages
};

void addPeaks(const std::vector<double>& speeds, Run& run) {
    for (const CurveQuantity quantity : {torque, power}) {
        std::vector<double> values;
        for (std::size_t i = 0; i < speeds.size(); ++i) {
            values.push_back(run.curveAt(i, quantity));
        }
        const auto peak = study::peakOf(speeds, values);
        run.results.push_back(peak ? peak->value : missing);
        run.results.push_back(peak ? peak->place : missing);
    }
}

/// Label and unit of each result.
std::vector<study::Column> columnsOf(const design::Design& design) {
    SilentMonitor monitor;
    const auto solved = solution::solve(design, monitor, nullptr, solution::Detail::figures);
    std::vector<study::Column> columns;
    for (const std::string& name : resultsOfPoint(design)) {
        const auto* figure = solved ? solved->figure(name) : nullptr;
        columns.push_back(figure ? study::Column{name, figure->label, figure->symbolOfUnit()}
                                 : study::Column{name, Message(name), ""});
    }
    for (const auto& column : resultsOfCurve()) {
        columns.push_back(column);
    }
    return columns;
}

} // namespace

std::vector<study::Column> curveColumns() {
    return {{"brake_torque_Nm", LW_TEXT("Brake torque"), "N·m"},
            {"brake_power_kW", LW_TEXT("Brake power"), "kW"},
            {"peak_pressure_bar", LW_TEXT("Peak pressure"), "bar"},
            {"peak_contact_pressure_MPa", LW_TEXT("Nominal contact stress, larger side"), "MPa"},
            {"lift_off_share", LW_TEXT("Share of engines whose rollers lift off"), ""}};
}

std::vector<std::string> resultsOfPoint(const design::Design& design) {
    static const std::vector<std::string> names = {"brake_torque_Nm",
                                                   "brake_power_kW",
                                                   "bmep_bar",
                                                   "imep_bar",
                                                   "fmep_bar",
                                                   "brake_efficiency",
                                                   "indicated_efficiency",
                                                   "brake_specific_fuel_g_per_kWh",
                                                   "delivery_ratio",
                                                   "trapping_efficiency",
                                                   "scavenging_efficiency",
                                                   "charging_efficiency",
                                                   "peak_pressure_bar",
                                                   "peak_temperature_K",
                                                   "knock_integral",
                                                   "supply_power_kW",
                                                   "displacement_cm3",
                                                   "compression_ratio",
                                                   "trapped_compression_ratio",
                                                   "blowdown_cycle_deg",
                                                   "overlap_cycle_deg",
                                                   "after_charge_cycle_deg",
                                                   "torque_ripple",
                                                   "peak_pressure_angle_inlet_deg",
                                                   "peak_pressure_angle_exhaust_deg",
                                                   "peak_contact_pressure_inlet_MPa",
                                                   "peak_contact_pressure_exhaust_MPa",
                                                   "lowest_contact_force_inlet_N",
                                                   "lowest_contact_force_exhaust_N",
                                                   "lift_off_speed_fired_rpm",
                                                   "lowest_film_ratio_inlet",
                                                   "lowest_film_ratio_exhaust",
                                                   "roller_life_inlet_h",
                                                   "roller_life_exhaust_h",
                                                   "shaking_force_peak_N"};
    return study::withSupplyColumns(names, design);
}

std::vector<study::Column> resultsOfCurve() {
    return {{"peak_torque_Nm", LW_TEXT("Peak torque"), "N·m"},
            {"peak_torque_speed_rpm", LW_TEXT("Speed of peak torque"), "1/min"},
            {"peak_power_kW", LW_TEXT("Peak power"), "kW"},
            {"peak_power_speed_rpm", LW_TEXT("Speed of peak power"), "1/min"}};
}

Engines::Engines(const design::Design& design, std::vector<double> speeds)
    : design_(design), speeds_(std::move(speeds)), unknowns_(unknownsOf(design)),
      followers_(design), names_(resultsOfPoint(design)), results_(columnsOf(design)) {
    // Copied for every engine, and no part of it.
    design_.knowledge.clear();
    design_.snapshots.clear();
    SilentMonitor monitor;
    nominal_ = *solved(design_, Run{-1, {}}, monitor);
}

std::optional<Run> Engines::solved(const design::Design& design, Run run, Monitor& monitor) const {
    if (!SpeedLine(design, speeds_, names_, monitor).solve(run)) {
        return std::nullopt;
    }
    addPeaks(speeds_, run);
    return run;
}

/// Choices first: of the numbers only those are set that the design then uses.
Result<design::Design> withShares(const design::Design& design,
                                  const std::vector<Unknown>& unknowns,
                                  const draft::Followers& followers,
                                  const std::vector<double>& shares) {
    design::FieldValues choices, numbers;
    for (auto& entry : valuesAt(unknowns, followers, shares)) {
        const bool isChoice = std::holds_alternative<std::string>(entry.second);
        (isChoice ? choices : numbers).push_back(std::move(entry));
    }
    if (choices.empty()) {
        return design::withFields(design, numbers);
    }
    const auto chosen = design::withFields(design, choices);
    if (!chosen) {
        return chosen.problems();
    }
    std::set<std::string> used;
    for (const design::Field& field : design::fields(*chosen)) {
        used.insert(field.path);
    }
    std::erase_if(numbers, [&](const auto& entry) { return !used.contains(entry.first); });
    return design::withFields(*chosen, numbers);
}

std::optional<Run> Engines::run(long index, std::vector<double> shares, Monitor& monitor) const {
    if (!monitor.step(0.0, {})) {
        return std::nullopt;
    }
    Run run{index, std::move(shares)};
    const auto changed = withShares(design_, unknowns_, followers_, run.shares);
    const Problems problems = changed ? design::validateEngine(*changed) : changed.problems();
    if (!problems.empty()) {
        run.failure = failureOf(problems);
        run.results.assign(results_.size(), missing);
        run.curve.assign(speeds_.size() * curveQuantities, missing);
        return run;
    }
    return solved(*changed, std::move(run), monitor);
}

} // namespace lobewright::unknowns
