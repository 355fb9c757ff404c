#include "core/reference/comparison.h"

#include "core/parallel.h"
#include "core/reference/compared_values.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <array>
#include <atomic>
#include <cassert>
#include <mutex>

LW_TEXTS_OF(Core)

namespace lobewright::study {

namespace {

struct ComparedWord {
    Compared engine;
    std::string_view key;
    TextId label;
};
constexpr ComparedWord allCompared[] = {
    {Compared::camTrack, "cam-track", LW_TEXT("Cam track")},
    {Compared::cranksSameSpeed, "cranks-same-shaft-speed", LW_TEXT("Cranks, same shaft speed")},
    {Compared::cranksSamePistonSpeed, "cranks-same-piston-speed",
     LW_TEXT("Cranks, same piston speed")},
    {Compared::fourStrokeAmbient, "four-stroke-ambient", LW_TEXT("Four-stroke, ambient air")},
    {Compared::fourStrokeSameSupply, "four-stroke-same-supply",
     LW_TEXT("Four-stroke, same supply")}};

const ComparedWord& wordOf(Compared engine) {
    return *std::ranges::find(allCompared, engine, &ComparedWord::engine);
}

/// Passes a share of the progress on; remembers that the caller asked to stop.
class ShareOfProgress final : public Monitor {
  public:
    ShareOfProgress(Monitor& caller, std::atomic<bool>& stopped, double from, double to,
                    TextId what)
        : caller_(caller), stopped_(stopped), from_(from), to_(to), what_(what) {}
    bool step(double fraction, const Message&) override {
        if (!stopped_ && !caller_.step(from_ + fraction * (to_ - from_), what_)) {
            stopped_ = true;
        }
        return !stopped_;
    }

  private:
    Monitor& caller_;
    std::atomic<bool>& stopped_;
    double from_, to_;
    TextId what_;
};

/// Solves of one row take turns reporting; their fractions would jump to and fro.
class Quiet final : public Monitor {
  public:
    Quiet(Monitor& caller, std::atomic<bool>& stopped, double fraction, Message what)
        : caller_(caller), stopped_(stopped), fraction_(fraction), what_(std::move(what)) {}
    bool step(double, const Message&) override {
        if (!stopped_ && !caller_.step(fraction_, what_)) {
            stopped_ = true;
        }
        return !stopped_;
    }

  private:
    Monitor& caller_;
    std::atomic<bool>& stopped_;
    double fraction_;
    Message what_;
};

Result<ComparedResult> solveRow(const solution::Solution& solution, Compared engine, Basis basis,
                                Monitor& monitor) {
    switch (engine) {
    case Compared::camTrack:
        return camTrackEngine(solution);
    case Compared::cranksSameSpeed:
        return crankEngine(solution, false, monitor);
    case Compared::cranksSamePistonSpeed:
        return crankEngine(solution, true, monitor);
    case Compared::fourStrokeAmbient:
        return fourStrokeEngine(solution, false, basis, monitor);
    case Compared::fourStrokeSameSupply:
        return fourStrokeEngine(solution, true, basis, monitor);
    }
    assert(false);
    return Problem{"", LW_TEXT("unknown engine")};
}

/// The four-stroke that heat and friction are weighed against: at the same supply if it has one.
const ComparedValues* weighedAgainst(const std::vector<Result<ComparedResult>>& results) {
    for (const std::size_t i : {std::size_t{4}, std::size_t{3}}) {
        if (results[i]) {
            return &results[i]->values;
        }
    }
    return nullptr;
}

ComparedEngine row(Compared engine, const Result<ComparedResult>& result, Basis basis,
                   double wantedPower, const ComparedValues* reference) {
    ComparedEngine row;
    row.engine = engine;
    if (!result) {
        row.problem = result.problems().front().message;
        row.figures = absentFigures(row.problem);
        return row;
    }
    double scale = 1.0;
    if (basis == Basis::power) {
        const double own = result->values.power();
        if (!(own > 0.0 && wantedPower > 0.0)) {
            row.problem = LW_TEXT("without brake power no size gives the same power");
            row.figures = absentFigures(row.problem);
            return row;
        }
        scale = wantedPower / own;
    }
    row.figures = comparedFigures(result->values, scale, reference);
    row.curves = result->curves;
    return row;
}

Result<Comparison> compareSolved(const solution::Solution& solution, Basis basis,
                                 Monitor& monitor) {
    std::atomic<bool> stopped = false;
    std::vector<Result<ComparedResult>> results;
    for (const auto& [engine, key, name] : allCompared) {
        const double share = static_cast<double>(results.size()) / std::size(allCompared);
        Quiet quiet(monitor, stopped, share, name);
        results.push_back(solveRow(solution, engine, basis, quiet));
        if (stopped) {
            return Problem{"", LW_TEXT("cancelled")};
        }
    }
    if (!results.front()) {
        return results.front().problems();
    }
    Comparison comparison;
    comparison.basis = basis;
    comparison.speed = solution.design.running.speed;
    const double power = results.front()->values.power();
    const ComparedValues* reference = weighedAgainst(results);
    for (std::size_t i = 0; i < std::size(allCompared); ++i) {
        comparison.engines.push_back(
            row(allCompared[i].engine, results[i], basis, power, reference));
    }
    return comparison;
}

std::string quoted(const std::string& field) {
    if (field.find_first_of(",\"\r\n") == std::string::npos) {
        return field;
    }
    std::string result = "\"";
    for (const char c : field) {
        result.append(c == '"' ? 2 : 1, c);
    }
    result += '"';
    return result;
}

} // namespace

TextId label(Basis basis) {
    return std::ranges::find(basisWords, basis, &BasisWord::basis)->label;
}

std::string_view key(Compared engine) {
    return wordOf(engine).key;
}

TextId label(Compared engine) {
    return wordOf(engine).label;
}

const solution::Figure* ComparedEngine::figure(std::string_view name) const {
    const auto found = std::ranges::find(figures, name, &solution::Figure::name);
    return found == figures.end() ? nullptr : &*found;
}

Result<Comparison> compare(const design::Design& design, Basis basis, Monitor& monitor,
                           const solution::Solution* previous) {
    std::atomic<bool> stopped = false;
    ShareOfProgress first(monitor, stopped, 0.0, 0.2, LW_TEXT("the design itself"));
    const auto solution = solution::solve(design, first, previous);
    if (!solution) {
        return solution.problems();
    }
    ShareOfProgress rest(monitor, stopped, 0.2, 1.0, LW_TEXT("references"));
    return compareSolved(*solution, basis, rest);
}

Result<std::vector<Comparison>> compareSpeeds(const design::Design& design,
                                              const std::vector<double>& speeds, Basis basis,
                                              Monitor& monitor) {
    std::vector<std::optional<Result<Comparison>>> results(speeds.size());
    std::atomic<bool> stopped = false;
    std::atomic<std::size_t> done = 0;
    onAllCores(speeds.size(), [&](std::size_t i) {
        if (stopped) {
            return;
        }
        design::Design atSpeed = design;
        atSpeed.running.speed = speeds[i];
        Quiet quiet(monitor, stopped,
                    static_cast<double>(done.load()) / static_cast<double>(speeds.size()),
                    Message(LW_TEXT("%1"), withDecimals(speeds[i], in::turnsPerMinute, 0)));
        results[i] = compare(atSpeed, basis, quiet);
        ++done;
    });
    if (stopped) {
        return Problem{"", LW_TEXT("cancelled")};
    }
    std::vector<Comparison> comparisons;
    for (const auto& result : results) {
        if (result && *result) {
            comparisons.push_back(**result);
        }
    }
    if (comparisons.empty()) {
        return results.empty() ? Problems{{"", LW_TEXT("no speeds are given")}}
                               : results.front()->problems();
    }
    return comparisons;
}

std::string comparisonCsv(const std::vector<Comparison>& comparisons) {
    std::string text = "design_speed_rpm,basis,engine,problem";
    if (!comparisons.empty()) {
        for (const solution::Figure& figure : comparisons.front().engines.front().figures) {
            text.append(",").append(quoted(figure.name));
        }
    }
    text += "\r\n";
    for (const Comparison& comparison : comparisons) {
        const auto word = std::ranges::find(basisWords, comparison.basis, &BasisWord::basis);
        for (const ComparedEngine& engine : comparison.engines) {
            text += fmt::format("{:.10g},{},{},{}", comparison.speed / units::revPerMinute,
                                word->key, key(engine.engine), quoted(engine.problem.english()));
            for (const solution::Figure& figure : engine.figures) {
                text += figure.value ? fmt::format(",{:.10g}", *figure.value) : ",";
            }
            text += "\r\n";
        }
    }
    return text;
}

} // namespace lobewright::study
