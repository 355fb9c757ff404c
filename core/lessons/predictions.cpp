// Tasks that ask for a number before the program says it.
#include "core/design/fields.h"
#include "core/lessons/recipes.h"
#include "core/ports/events.h"
#include "core/units.h"

#include <algorithm>
#include <array>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::lessons {

namespace {

constexpr double leadStep = 4.0 * units::degree;
constexpr double clearanceStep = 1.0 * units::millimetre;
constexpr double fasterShare = 0.5;

/// A guess within a share of the answer, or within an allowance where that is small.
bool isNear(double guess, double answer, double share, double allowance) {
    return std::abs(guess - answer) <= std::max(share * std::abs(answer), allowance);
}

bool runsFired(const solution::Solution& solution) {
    return !solution.design.running.motored && torqueOf(solution) > 0.0;
}

Result<solution::Solution> solved(const Result<design::Design>& design, Monitor& monitor) {
    if (!design) {
        return design.problems();
    }
    auto solution = solution::solve(*design, monitor, nullptr, {solution::Detail::figures});
    if (solution && !solution->gas) {
        return Problem{"", LW_TEXT("The changed engine cannot be solved.")};
    }
    return solution;
}

// How many strokes one cycle takes.

std::optional<Task> tellStrokes(const solution::Solution&) {
    return Task{
        .title = LW_TEXT("Strokes of a cycle"),
        .question = LW_TEXT("A stroke is one movement of a piston from one dead centre to the "
                            "other. How many strokes does one cycle of the gas take here?"),
        .hints = {LW_TEXT("Let the shaft turn from one firing to the next and count aloud.")}};
}

Result<Verdict> judgeStrokes(const Attempt& attempt, Monitor&) {
    Verdict verdict;
    verdict.answer = 2.0;
    verdict.isRight = *attempt.guess == 2.0;
    verdict.text = LW_TEXT("Two strokes, once outward and once inward: a two-stroke. The ports do "
                           "in passing what other engines need two more strokes for.");
    return verdict;
}

// How often the engine fires.

double firings(const solution::Solution& solution) {
    return solution.design.mechanism.cylinders * solution.pair.cyclesPerTurn() *
           solution.design.running.speed / units::turn;
}

std::optional<Task> tellFirings(const solution::Solution& start) {
    Task task;
    task.title = LW_TEXT("Firings per minute");
    task.question = Message(LW_TEXT("The shaft turns at %1. How often does the whole engine fire "
                                    "in a minute?"),
                            Amount(start.design.running.speed, in::turnsPerMinute));
    task.hints = {LW_TEXT("Count the lobes of a track: each makes a cycle of its own in every "
                          "cylinder."),
                  LW_TEXT("Cylinders times cycles per revolution times revolutions per minute.")};
    return start.design.running.motored ? std::nullopt : std::optional(task);
}

Result<Verdict> judgeFirings(const Attempt& attempt, Monitor&) {
    Verdict verdict;
    verdict.answer = 60.0 * firings(attempt.start);
    verdict.isRight = isNear(*attempt.guess, verdict.answer, 1e-3, 0.5);
    verdict.text = Message(LW_TEXT("%1 revolutions × %2 cycles per revolution × cylinders (%3) = "
                                   "%4 firings per minute."),
                           number(fromSi(in::turnsPerMinute, attempt.start.design.running.speed)),
                           attempt.start.pair.cyclesPerTurn(),
                           attempt.start.design.mechanism.cylinders, number(verdict.answer, 6));
    return verdict;
}

// What some more exhaust lead does to the exhaust opening.

double exhaustOpening(const ports::PortTiming& timing, const mechanism::OpposedPair& pair) {
    const auto& cycle = timing.cycles().front();
    return pair.cyclesPerTurn() * (cycle.exhaustOpens - cycle.centres.idc);
}

std::optional<Task> tellLead(const solution::Solution& start) {
    if (start.pair.mechanism().isOneSided()) {
        return std::nullopt;
    }
    return Task{
        .title = LW_TEXT("More exhaust lead"),
        .question = Message(LW_TEXT("The exhaust track is turned %1 further ahead. By how many "
                                    "degrees of the cycle, counted from inner dead centre, does "
                                    "the exhaust open earlier?"),
                            Amount(leadStep, in::degrees)),
        .hints = {LW_TEXT("Degrees of the shaft are not degrees of the cycle: the lobes multiply."),
                  LW_TEXT("Inner dead centre lies between the two pistons: it moves too, by about "
                          "half.")},
        .unit = &in::degrees,
        .decimals = 1};
}

Result<Verdict> judgeLead(const Attempt& attempt, Monitor&) {
    const auto& pair = attempt.start.pair;
    mechanism::Mechanism changed = pair.mechanism();
    changed.exhaustLead += leadStep;
    const auto turned =
        mechanism::OpposedPair::make(changed, {pair.curve(End::inlet), pair.curve(End::exhaust)});
    if (!turned) {
        return turned.problems();
    }
    const auto timing = ports::PortTiming::make(attempt.start.design.ports, *turned);
    if (!timing) {
        return timing.problems();
    }
    Verdict verdict;
    verdict.answer = exhaustOpening(attempt.start.timing, pair) - exhaustOpening(*timing, *turned);
    const double piston = pair.cyclesPerTurn() * leadStep;
    verdict.causes = {{LW_TEXT("the exhaust piston is ahead"), piston},
                      {LW_TEXT("inner dead centre moves ahead with it"), verdict.answer - piston}};
    verdict.isRight = isNear(*attempt.guess, verdict.answer, 0.1, 0.5 * units::degree);
    verdict.text = Message(
        LW_TEXT("The exhaust opens %1 of the cycle earlier: %2 of the shaft are %3 of the cycle "
                "with %4 cycles per revolution, less what inner dead centre itself moves."),
        withDecimals(verdict.answer, in::degrees, 1), Amount(leadStep, in::degrees),
        withDecimals(piston, in::degrees, 1), pair.cyclesPerTurn());
    return verdict;
}

// Compression with more clearance.

std::optional<Task> tellCompression(const solution::Solution& start) {
    const auto now = figureOf(start, "trapped_compression_ratio");
    if (!now) {
        return std::nullopt;
    }
    Task task;
    task.title = LW_TEXT("More clearance");
    task.question =
        Message(LW_TEXT("The trapped compression ratio is %1. What will it be when the clearance "
                        "at inner dead centre grows by %2?"),
                number(*now), Amount(clearanceStep, in::mm));
    task.hints = {
        LW_TEXT("The gap adds the same slice to the smallest and to the trapped volume."),
        Message(
            LW_TEXT(
                "A slice of %1 across this bore has a volume of %2; the smallest volume is %3."),
            Amount(clearanceStep, in::mm),
            Amount(clearanceStep * start.pair.pistonArea(), in::cm3, 3),
            Amount(figureOf(start, "minimum_volume_cm3").value_or(0.0) * 1e-6, in::cm3, 3))};
    task.decimals = 2;
    return task;
}

Result<Verdict> judgeCompression(const Attempt& attempt, Monitor& monitor) {
    design::Design changed = attempt.start.design;
    changed.mechanism.clearance += clearanceStep;
    const auto solution = solved(changed, monitor);
    if (!solution) {
        return solution.problems();
    }
    const double slice = clearanceStep * attempt.start.pair.pistonArea();
    const double least = figureOf(attempt.start, "minimum_volume_cm3").value_or(0.0) * 1e-6;
    Verdict verdict;
    verdict.before = figureOf(attempt.start, "trapped_compression_ratio").value_or(0.0);
    verdict.answer = figureOf(*solution, "trapped_compression_ratio").value_or(0.0);
    const double smallest = verdict.before * least / (least + slice) - verdict.before;
    verdict.causes = {
        {LW_TEXT("the smallest volume is larger"), smallest},
        {LW_TEXT("the trapped volume is larger too"), verdict.answer - verdict.before - smallest}};
    verdict.isRight = isNear(*attempt.guess, verdict.answer, 0.02, 0.05);
    verdict.text = Message(LW_TEXT("The ratio falls from %1 to %2: a small gap is a large part of "
                                   "the smallest volume and a small part of the trapped one."),
                           number(verdict.before), number(verdict.answer));
    return verdict;
}

// Power at a higher speed.

std::optional<Task> tellFaster(const solution::Solution& start) {
    const auto power = figureOf(start, "brake_power_kW");
    if (!runsFired(start) || !power) {
        return std::nullopt;
    }
    return Task{
        .title = LW_TEXT("Faster"),
        .question = Message(
            LW_TEXT("The engine gives %1 at %2. What will it give at %3, with the "
                    "same supply and the same start of combustion?"),
            Amount(*power * 1e3, in::kW), Amount(start.design.running.speed, in::turnsPerMinute),
            Amount((1.0 + fasterShare) * start.design.running.speed, in::turnsPerMinute)),
        .hints = {LW_TEXT(
                      "If the torque stayed the same, power would grow in proportion to speed."),
                  LW_TEXT("The ports are open for a shorter time, and friction grows.")},
        .unit = &in::kW,
        .decimals = 1};
}

Result<Verdict> judgeFaster(const Attempt& attempt, Monitor& monitor) {
    design::Design changed = attempt.start.design;
    changed.running.speed *= 1.0 + fasterShare;
    const auto solution = solved(changed, monitor);
    if (!solution) {
        return solution.problems();
    }
    const auto watts = [](const solution::Solution& of, const char* name) {
        return 1e3 * figureOf(of, name).value_or(0.0);
    };
    Verdict verdict;
    verdict.before = watts(attempt.start, "brake_power_kW");
    verdict.answer = watts(*solution, "brake_power_kW");
    const double indicated = watts(attempt.start, "indicated_power_kW");
    const double gas = watts(*solution, "indicated_power_kW") - (1.0 + fasterShare) * indicated;
    const double revolutions = fasterShare * verdict.before;
    verdict.causes = {{LW_TEXT("more revolutions at the same torque"), revolutions},
                      {LW_TEXT("changed gas work per cycle"), gas},
                      {LW_TEXT("changed friction and pumping per revolution"),
                       verdict.answer - verdict.before - revolutions - gas}};
    verdict.isRight = isNear(*attempt.guess, verdict.answer, 0.1, 0.0);
    verdict.text =
        Message(LW_TEXT("It gives %1. The speed alone would make it %2; gas work per cycle and "
                        "friction account for the rest."),
                Amount(verdict.answer, in::kW), Amount(verdict.before + revolutions, in::kW));
    return verdict;
}

// Half as many lobes, or twice as many where there is one.

int otherLobes(int lobes) {
    return lobes % 2 == 0 ? lobes / 2 : 2 * lobes;
}

bool stretch(motion::Pattern& pattern) {
    auto* shape = std::get_if<motion::SegmentShape>(&pattern.shape);
    if (!shape) {
        return false;
    }
    const int lobes = otherLobes(pattern.lobes);
    for (motion::Segment& segment : shape->segments) {
        segment.span *= static_cast<double>(pattern.lobes) / lobes;
    }
    pattern.lobes = lobes;
    return true;
}

std::optional<design::Design> withOtherLobes(const design::Design& design) {
    design::Design changed = design;
    if (!stretch(changed.tracks.inlet)) {
        return std::nullopt;
    }
    if (changed.tracks.exhaust && !stretch(*changed.tracks.exhaust)) {
        return std::nullopt;
    }
    return changed;
}

std::optional<Task> tellLobes(const solution::Solution& start) {
    if (!runsFired(start) || !withOtherLobes(start.design)) {
        return std::nullopt;
    }
    const int lobes = start.design.tracks.inlet.lobes;
    return Task{
        .title = LW_TEXT("Other lobes"),
        .question = Message(LW_TEXT("Each track has %1 lobes and the engine gives %2. What torque "
                                    "will it give with %3 lobes of the same shape and stroke, at "
                                    "the same speed of the shaft?"),
                            lobes, Amount(torqueOf(start), in::Nm), otherLobes(lobes)),
        .hints = {LW_TEXT("Each lobe adds one power stroke per revolution of every cylinder."),
                  LW_TEXT("The exhaust lead stays the same in degrees of the shaft. What is it in "
                          "degrees of the cycle?")},
        .unit = &in::Nm,
        .decimals = 0};
}

Result<Verdict> judgeLobes(const Attempt& attempt, Monitor& monitor) {
    const int before = attempt.start.design.tracks.inlet.lobes, after = otherLobes(before);
    const double share = static_cast<double>(after) / before;
    design::Design changed = withOtherLobes(attempt.start.design).value();
    const double lead = changed.mechanism.exhaustLead;
    PartOfWork first(monitor, 0.0, 0.5), second(monitor, 0.5, 1.0);
    const auto solution = solved(changed, first);
    if (!solution) {
        return solution.problems();
    }
    // The same again with the lead stretched as the lobes are: what the lead alone changes.
    changed.mechanism.exhaustLead = lead / share;
    const auto sameTiming = solved(changed, second);
    Verdict verdict;
    verdict.before = torqueOf(attempt.start);
    verdict.answer = torqueOf(*solution);
    const double events = (share - 1.0) * verdict.before;
    verdict.causes = {{LW_TEXT("changed number of power strokes"), events}};
    double timing = 0.0;
    if (sameTiming && lead != 0.0) {
        timing = verdict.answer - torqueOf(*sameTiming);
        verdict.causes.push_back(
            {LW_TEXT("the lead, kept in shaft degrees, is another part of the cycle"), timing});
    }
    verdict.causes.push_back({LW_TEXT("changed time for gas exchange, heat and friction per cycle"),
                              verdict.answer - verdict.before - events - timing});
    verdict.isRight = isNear(*attempt.guess, verdict.answer, 0.1, 0.0);
    verdict.text = Message(LW_TEXT("It gives %1. The number of power strokes alone would make it "
                                   "%2; the lead, kept in shaft degrees, also changed the timing."),
                           Amount(verdict.answer, in::Nm), Amount(verdict.before + events, in::Nm));
    return verdict;
}

} // namespace

std::span<const Recipe> predictions() {
    static constexpr std::array<Recipe, 6> all = {{
        {"strokes", TaskKind::predict, tellStrokes, judgeStrokes},
        {"firings", TaskKind::predict, tellFirings, judgeFirings},
        {"exhaust-lead", TaskKind::predict, tellLead, judgeLead},
        {"clearance", TaskKind::predict, tellCompression, judgeCompression},
        {"faster", TaskKind::predict, tellFaster, judgeFaster},
        {"lobes", TaskKind::predict, tellLobes, judgeLobes},
    }};
    return all;
}

} // namespace lobewright::lessons
