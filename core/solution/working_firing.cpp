#include "core/loads/piston.h"
#include "core/solution/stages.h"
#include "core/solution/working_recipes.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>

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

Operand reading(std::string symbol, std::string label, std::string unit, double number,
                double theta) {
    return {.kind = Operand::Kind::reading,
            .symbol = std::move(symbol),
            .label = std::move(label),
            .unit = std::move(unit),
            .values = Samples::Constant(1, number),
            .angle = theta};
}

/// Cylinders that fire at each angle of the turn; the most count.
Working togetherWorking(const Figure& figure, const std::vector<Volley>& list) {
    Working working{.figure = figure.name,
                    .symbol = "k",
                    .unit = figure.unit,
                    .value = *figure.value,
                    .source = "Definition: the most at any angle of the turn."};
    std::string symbols;
    for (const Volley& volley : list) {
        const std::string symbol = fmt::format("k{}", working.operands.size() + 1);
        symbols += (symbols.empty() ? "" : ", ") + symbol;
        working.operands.push_back(
            reading(symbol, "Cylinders that fire there", "", volley.cylinders, volley.theta));
    }
    working.formula = fmt::format("max({})", symbols);
    return working;
}

/// The two firings between which the interval is shortest or longest.
std::optional<Working> intervalWorking(const Figure& figure, const std::vector<Volley>& list) {
    if (list.size() < 2) {
        return std::nullopt;
    }
    const bool isShortest = figure.name.starts_with("shortest");
    const auto length = [&](std::size_t i) {
        const double next = i + 1 < list.size() ? list[i + 1].theta : list[0].theta + units::turn;
        return next - list[i].theta;
    };
    std::size_t at = 0;
    for (std::size_t i = 1; i < list.size(); ++i) {
        at = (isShortest ? length(i) < length(at) : length(i) > length(at)) ? i : at;
    }
    const double from = list[at].theta, to = list[(at + 1) % list.size()].theta;
    return Working{
        .figure = figure.name,
        .symbol = "Δ",
        .formula = "mod(θ_b − θ_a, 360)",
        .operands = {reading("θ_a", "A cylinder fires", "shaft °", from / units::degree, from),
                     reading("θ_b", "The next fires", "shaft °", to / units::degree, to)},
        .unit = figure.unit,
        .value = *figure.value,
        .source = "Definition: angle between firings that follow each other.",
        .digits = 12};
}

/// What decides the lift-off speed: the end, the place and the pressure there.
struct LiftOffPlace {
    End end = End::inlet;
    double theta = 0.0, pressure = 0.0;
};

const gas::GasTrace* traceOf(const std::shared_ptr<const GasStage>& stage) {
    return stage && stage->output ? stage->output->trace.get() : nullptr;
}

std::optional<LiftOffPlace> liftOffPlace(const Solution& solution, bool isMotored) {
    const auto& stages = *solution.stages;
    const bool isSecond = isMotored && !solution.design.running.motored;
    const auto& ends = isSecond ? stages.loads->liftOffMotored : stages.loads->liftOffFired;
    if (!ends) {
        return std::nullopt;
    }
    const bool isExhaust =
        ends->exhaust.omega && (!ends->inlet.omega || *ends->exhaust.omega < *ends->inlet.omega);
    LiftOffPlace place;
    place.end = isExhaust ? End::exhaust : End::inlet;
    place.theta = (*ends)[place.end].theta;
    const gas::GasTrace* trace = traceOf(isSecond ? stages.motoredGas : stages.gas);
    place.pressure =
        trace ? trace->pressure(place.theta, 0) : solution.design.running.underPistonPressure;
    return (*ends)[place.end].omega ? std::optional(place) : std::nullopt;
}

/// The motion there; at a junction the side that decelerates more.
motion::LiftSamples motionAt(const Solution& solution, const LiftOffPlace& place) {
    const auto& pair = solution.pair;
    const auto after = pair.lift(place.end, place.theta);
    const auto before = pair.curve(place.end).before(pair.trackAngle(place.end, place.theta));
    const auto& lift = before.y2 < after.y2 ? before : after;
    const auto one = [](double number) { return Samples::Constant(1, number); };
    return {one(lift.y), one(lift.y1), one(lift.y2), one(lift.y3)};
}

} // namespace

std::optional<Operand> liftOffValue(const Solution& solution, std::string_view name) {
    const bool isMotored = name.starts_with("lift_off_motored");
    const auto place = liftOffPlace(solution, isMotored);
    if (!place) {
        return std::nullopt;
    }
    const auto& design = solution.design;
    const auto setup = loads::pistonSetup(solution.pair, place->end, design.friction,
                                          design.running.speed, design.running.underPistonPressure);
    const auto piston = loads::pistonLoads(setup, motionAt(solution, *place),
                                           Samples::Constant(1, place->pressure));
    const std::string ofSide = fmt::format(", {} side", lobewright::name(place->end));
    if (name.ends_with("_gas")) {
        return reading("", "Gas force" + ofSide, "N", piston.gasForce[0], place->theta);
    }
    if (name.ends_with("_ring")) {
        return reading("", "Friction of the piston rings" + ofSide, "N", piston.ringFriction[0],
                       place->theta);
    }
    return reading("", "Inertia force" + ofSide, "N", piston.inertiaForce[0], place->theta);
}

std::optional<Working> firingWorking(const Solution& solution, const Figure& figure) {
    if (!solution.stages->loads) {
        return std::nullopt;
    }
    const auto list = volleys(solution.stages->loads->firing);
    if (figure.name == "cylinders_firing_together") {
        return togetherWorking(figure, list);
    }
    return figure.name.ends_with("_firing_interval_deg") ? intervalWorking(figure, list)
                                                         : std::nullopt;
}

} // namespace lobewright::solution
