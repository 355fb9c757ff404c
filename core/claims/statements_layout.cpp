#include "core/claims/statement_check.h"
#include "core/reference/four_stroke.h"
#include "core/units.h"

#include <fmt/format.h>

LW_TEXTS_OF(Core)

/// Statements that need the layout of an engine, or a test.
namespace lobewright::study {

void StatementCheck::firingInterval() {
    const auto& interval = row_.statement.interval;
    std::optional<double> events = engine_.eventsPerTurn;
    if (!events && basis_.cyclesPerTurn && engine_.cylinders) {
        events = basis_.cyclesPerTurn->value * *engine_.cylinders;
    }
    if (!interval || !events) {
        open(LW_TEXT("An even firing interval is 360° divided by the power strokes per revolution, "
                     "which are not given."),
             LW_TEXT("The interval, and the power strokes per revolution."));
        return;
    }
    const double even = units::turn / *events;
    row_.computed = Message(
        LW_TEXT("%1 evenly spaced power strokes per revolution fire every %2 of the shaft."),
        number(*events), lobewright::Amount(even, in::degrees));
    row_.arithmetic = fmt::format("360°/{:.6g} = {:.6g}°", *events, even / units::degree);
    const auto shortest = own("shortest_firing_interval_deg");
    if (shortest) {
        say({LW_TEXT("the open design fires every %1 at the shortest"),
             amountIn(in::degrees, *shortest)},
            fmt::format("{:.6g}°", *shortest));
    }
    decide(isAbout(interval->si, even) ||
               (shortest && isAbout(interval->si, *shortest * units::degree)),
           Confidence::high);
    row_.overturnedBy =
        LW_TEXT("Uneven spacing of the cylinders, or cylinders that fire together.");
}

void StatementCheck::compressionRange() {
    const auto& [low, high] = std::pair(row_.statement.lowRatio, row_.statement.highRatio);
    row_.overturnedBy = LW_TEXT("The travel of the adjuster as built.");
    if (!low || !high) {
        open(LW_TEXT("Both ends of the range are needed."),
             LW_TEXT("The lowest and the highest ratio."));
        return;
    }
    row_.computed =
        Message(LW_TEXT("From %1 to %2 the volume at inner dead centre shrinks to %3 of itself."),
                number(*low), number(*high), number((*low - 1.0) / (*high - 1.0), 3));
    row_.arithmetic = fmt::format("({:.6g} − 1)/({:.6g} − 1) = {:.4g}", *low, *high,
                                  (*low - 1.0) / (*high - 1.0));
    if (*low >= *high) {
        decide(false, Confidence::high);
        return;
    }
    if (const auto ratio = own("compression_ratio")) {
        const bool isInside = *ratio >= *low * (1.0 - roundingOfFigures) &&
                              *ratio <= *high * (1.0 + roundingOfFigures);
        say({LW_TEXT("the open design has %1 as it is set"), number(*ratio)},
            fmt::format("{:.6g}", *ratio));
        decide(isInside, Confidence::medium);
        return;
    }
    if (engine_.stroke) {
        // Two opposed pistons close the chamber, one otherwise.
        const double pistons = engine_.pistons && engine_.cylinders && *engine_.cylinders > 0.0
                                   ? *engine_.pistons / *engine_.cylinders
                                   : 1.0;
        const double travel =
            pistons * engine_.stroke->si * (1.0 / (*low - 1.0) - 1.0 / (*high - 1.0));
        say({LW_TEXT("without bowls a piston or track has to move by %1"),
             lobewright::Amount(travel, in::mm, 3)},
            fmt::format("{:.4g}·{}·(1/({:.4g} − 1) − 1/({:.4g} − 1))", pistons,
                        shown(engine_.stroke->si, "m"), *low, *high));
    }
    row_.outcome = Outcome::open;
    row_.confidence = Confidence::low;
}

void StatementCheck::size() {
    const auto& [length, diameter] = std::pair(row_.statement.length, row_.statement.diameter);
    row_.overturnedBy = LW_TEXT("An outline drawing.");
    if (!length && !diameter) {
        open(LW_TEXT("Neither length nor diameter is given."), LW_TEXT("Length and diameter."));
        return;
    }
    bool fits = true;
    if (design_ != nullptr && diameter) {
        const auto& mechanism = design_->pair.mechanism();
        const double least = 2.0 * mechanism.pitchRadius + mechanism.bore;
        fits = fits && diameter->si >= least * (1.0 - roundingOfFigures);
        say({LW_TEXT("the bores of the open design alone need a diameter of %1"),
             lobewright::Amount(least, in::mm)},
            fmt::format("2·{:.4g} mm + {:.4g} mm", mechanism.pitchRadius / units::millimetre,
                        mechanism.bore / units::millimetre));
    }
    const auto& stroke = engine_.stroke;
    if (length && (stroke || design_ != nullptr)) {
        const bool isOpposed = design_ != nullptr || (engine_.pistons && engine_.cylinders &&
                                                      *engine_.pistons >= 2.0 * *engine_.cylinders);
        const double one =
            design_ != nullptr ? design_->pair.curve(End::inlet).stroke() : stroke->si;
        // Each piston is at least as long as its stroke, or its ports open to the far side.
        const double least = (isOpposed ? 4.0 : 2.0) * one;
        fits = fits && length->si >= least * (1.0 - roundingOfFigures);
        say({LW_TEXT("strokes and pistons that cover their ports alone need %1 of length"),
             lobewright::Amount(least, in::mm)},
            fmt::format("{}·{}", isOpposed ? 4 : 2, shown(one, "m")));
    }
    if (row_.computed.empty()) {
        open(LW_TEXT("No figure is given with which the size could be compared."),
             LW_TEXT("Bore, stroke and layout."));
        return;
    }
    if (!fits) {
        decide(false, Confidence::medium);
        return;
    }
    row_.outcome = Outcome::open; // not excluded, no more
    row_.confidence = Confidence::low;
}

void StatementCheck::friction() {
    const auto& value = row_.statement.value;
    const auto all = own("fmep_bar");
    const auto supply = own("fmep_supply_bar");
    const auto auxiliary = own("fmep_auxiliary_bar");
    if (!value || !all || design_ == nullptr) {
        open(LW_TEXT("No arithmetic on published figures gives the friction of an engine."),
             LW_TEXT("A motoring test with its conditions, or a solved design of the engine."));
        return;
    }
    const double mechanical = *all - supply.value_or(0.0) - auxiliary.value_or(0.0);
    const double usual = fourStrokeFmep(design_->design.running.speed) / units::bar;
    // Both per cycle: a turn of the track engine has more of them.
    const double ratio = mechanical / usual;
    row_.computed =
        Message(LW_TEXT("%1 times a four-stroke's mean effective pressure of friction at the same "
                        "shaft speed."),
                number(ratio, 3));
    row_.arithmetic = fmt::format("{:.4g} bar/({:.4g} bar) = {:.4g}", mechanical, usual, ratio);
    decide(isAbout(ratio, *value, 2.0 * looseness), Confidence::low);
    row_.overturnedBy = LW_TEXT("A motoring test.");
}

void StatementCheck::lowSpeedTorque() {
    const auto& [torque, speed] = std::pair(row_.statement.torque, row_.statement.speed);
    if (!torque || !basis_.cyclesPerTurn || !basis_.displacement) {
        open(LW_TEXT("A torque is judged by its mean effective pressure: torque, displacement and "
                     "cycles per revolution are not all given."),
             LW_TEXT("Torque, displacement, and power strokes per revolution."));
        return;
    }
    const double c = basis_.cyclesPerTurn->value;
    const double pressure = units::turn * torque->si / (c * basis_.displacement->value);
    const Judgement judgement =
        judge(BandQuantity::meanEffectivePressure, pressure, engineClass(report_.claims));
    row_.computed = Message(LW_TEXT("Brake mean effective pressure %1: %2."),
                            lobewright::Amount(pressure, in::bar), name(judgement.verdict));
    row_.arithmetic = fmt::format("2π·{}/({:.6g}·{}) = {:.4g} bar", shown(torque->si, "N·m"), c,
                                  shown(basis_.displacement->value, "m³"), pressure / units::bar);
    if (speed) {
        say({LW_TEXT("%1 at that speed"), lobewright::Amount(torque->si * speed->si, in::kW)},
            fmt::format("2π·{}·{}", shown(turnsPerSecond(speed->si), "1/s"),
                        shown(torque->si, "N·m")));
    }
    const bool isOrdinary = judgement.verdict == Verdict::ordinary;
    const bool isAmbitious = judgement.verdict == Verdict::ambitious;
    decide(isOrdinary || isAmbitious, Confidence::medium);
    if (isAmbitious) {
        row_.outcome = Outcome::doubtful;
    }
    row_.overturnedBy =
        LW_TEXT("Another number of power strokes per revolution, or supply pressure.");
}

void StatementCheck::oilConsumption() {
    const auto& oil = row_.statement.oilConsumption;
    if (!oil) {
        open(LW_TEXT("The oil consumption is not given."), LW_TEXT("The number."));
        return;
    }
    // Common practice: 0.1 … 0.5 g/kWh of four-strokes; ports wipe more from the liner.
    constexpr double gramPerKilowattHour = 1e-3 / 3.6e6;
    constexpr double least = 0.1, ported = 0.5;
    const double shownOil = oil->si / gramPerKilowattHour;
    const double usual = basis_.cycle == StrokeCycle::twoStroke ? ported : least;
    row_.computed =
        Message(LW_TEXT("%1; engines of this cycle seldom stay below %2 (common practice)."),
                lobewright::Amount(oil->si, in::gPerKWh, 3), amountIn(in::gPerKWh, usual, 2));
    row_.arithmetic = fmt::format("{:.4g} g/kWh", shownOil);
    row_.outcome = shownOil < usual ? Outcome::doubtful : Outcome::open;
    row_.confidence = Confidence::low;
    row_.overturnedBy = LW_TEXT("A test over a hundred hours with the oil weighed.");
}

} // namespace lobewright::study
