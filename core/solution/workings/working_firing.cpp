#include "core/loads/piston.h"
#include "core/solution/pipeline/stages.h"
#include "core/solution/sides.h"
#include "core/solution/workings/working_recipes.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>

LW_TEXTS_OF(Core)

namespace lobewright::solution {

namespace {

/// Angles at which cylinders fire, with how many do.
struct Volley {
    double theta = 0.0;
    int cylinders = 0;
};

std::vector<Volley> volleys(const loads::Firing& firing) {
    constexpr double sameAngle = 1e-9;
    std::vector<Volley> list;
    for (const double angle : firing.angles) {
        if (list.empty() || angle - list.back().theta >= sameAngle) {
            list.push_back({angle, 0});
        }
        ++list.back().cylinders;
    }
    return list;
}

Operand named(std::string symbol, Operand operand) {
    operand.symbol = std::move(symbol);
    return operand;
}

/// Cylinders that fire at each angle of the turn; the most count.
Working togetherWorking(const Figure& figure, const std::vector<Volley>& list) {
    Working working{.figure = figure.name,
                    .symbol = "k",
                    .unit = figure.symbolOfUnit(),
                    .value = *figure.value,
                    .source = LW_TEXT("Definition: the maximum over the revolution.")};
    std::string symbols;
    for (const Volley& volley : list) {
        const std::string symbol = fmt::format("k{}", working.operands.size() + 1);
        symbols += (symbols.empty() ? "" : ", ") + symbol;
        working.operands.push_back(named(symbol, reading(LW_TEXT("Cylinders that fire there"), "",
                                                         volley.cylinders, volley.theta)));
    }
    working.formula = fmt::format("max({})", symbols);
    return working;
}

/// The two firings between which the interval is shortest or longest.
std::optional<Working> intervalWorking(const Figure& figure, const std::vector<Volley>& list,
                                       bool isShortest) {
    if (list.size() < 2) {
        return std::nullopt;
    }
    const auto length = [&](std::size_t i) {
        const double next = i + 1 < list.size() ? list[i + 1].theta : list[0].theta + units::turn;
        return next - list[i].theta;
    };
    std::size_t at = 0;
    for (std::size_t i = 1; i < list.size(); ++i) {
        at = (isShortest ? length(i) < length(at) : length(i) > length(at)) ? i : at;
    }
    const double from = list[at].theta, to = list[(at + 1) % list.size()].theta;
    return Working{.figure = figure.name,
                   .symbol = "Δ",
                   .formula = "mod(θ_b − θ_a, 360)",
                   .operands = {named("θ_a", angleReading(LW_TEXT("A cylinder fires"), from)),
                                named("θ_b", angleReading(LW_TEXT("The next fires"), to))},
                   .unit = figure.symbolOfUnit(),
                   .value = *figure.value,
                   .source = LW_TEXT("Definition: shaft angle between consecutive firings."),
                   .digits = 12};
}

/// The end whose bound decides the speeds with contact, and its bound.
struct DecidingBound {
    End end = End::inlet;
    loads::SpeedBound bound;
    bool noSpeed = false; ///< gas and rings pull where inertia does not press
};

std::optional<DecidingBound> decidingBound(const Solution& solution, bool isMotored, bool isLow) {
    const auto& all = *solution.stages->loads;
    const bool isOwn = !isMotored || solution.design.running.motored;
    const auto speeds = isOwn ? std::optional(all.contactSpeeds) : all.contactSpeedsMotored;
    if (!speeds) {
        return std::nullopt;
    }
    std::optional<DecidingBound> decides;
    for (const End end : bothEnds) {
        const auto& bound = isLow ? (*speeds)[end].low : (*speeds)[end].high;
        if (!bound) {
            continue;
        }
        const bool isTighter = !decides || (isLow ? bound->omega > decides->bound.omega
                                                  : bound->omega < decides->bound.omega);
        if (isTighter) {
            decides = DecidingBound{end, *bound, !(*speeds)[end].low};
        }
    }
    return decides;
}

} // namespace

std::optional<Operand> contactSpeedValue(const Solution& solution, std::string_view name) {
    const auto decides = decidingBound(solution, name.find("_motored_") != name.npos,
                                       name.starts_with("contact_low_"));
    if (!decides) {
        return std::nullopt;
    }
    const auto& [end, bound, noSpeed] = *decides;
    const auto force = [&](TextId label, double newtons) {
        return reading(ofTrack(solution.pair, label, end), "N", newtons, bound.theta);
    };
    if (name.ends_with("_gas")) {
        return force(LW_TEXT("Gas force"), bound.shares.gas);
    }
    if (name.ends_with("_ring")) {
        return force(LW_TEXT("Friction of the piston rings"), bound.shares.ring);
    }
    if (name.ends_with("_pull")) {
        return noSpeed ? std::optional(force(LW_TEXT("Force of gas and rings"),
                                             bound.shares.gas + bound.shares.ring))
                       : std::nullopt;
    }
    return force(LW_TEXT("Inertia force"), bound.shares.inertia);
}

std::optional<Working> firingWorking(const Solution& solution, const Figure& figure) {
    if (!solution.stages->loads) {
        return std::nullopt;
    }
    const auto list = volleys(solution.stages->loads->firing);
    if (figure.id == "cylinders_firing_together") {
        return togetherWorking(figure, list);
    }
    const bool isShortest = figure.id == "shortest_firing_interval";
    return isShortest || figure.id == "longest_firing_interval"
               ? intervalWorking(figure, list, isShortest)
               : std::nullopt;
}

} // namespace lobewright::solution
