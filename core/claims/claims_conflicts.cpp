#include "core/claims/claims_basis.h"
#include "core/claims/claims_correction.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::study {

namespace {

bool differ(double one, double other, double tolerance = roundingOfFigures) {
    return std::abs(one - other) > tolerance * std::max(std::abs(one), std::abs(other));
}

Message beyondEngines(const Message& subject) {
    return Message(LW_TEXT("%1 is beyond piston engines: the largest two-stroke diesels reach "
                           "about 55 % (common practice), and even the loss-free cycle of fuel and "
                           "air stays near 60 % at the compression engines can use (Heywood 1988, "
                           "ch. 5; secondary value, not checked against the printed source). Taken "
                           "as impossible above %2 % (own estimate)."),
                   subject, number(100.0 * highestEfficiency, 2));
}

/// Compares the given numbers with each other.
class Conflicts {
  public:
    Conflicts(ClaimsReport& report, const ClaimBasis& basis)
        : report_(report), basis_(basis), engine_(report.claims.engine),
          figures_(report.claims.figures) {}

    void all() {
        powerAgainstTorque();
        orderOfSpeeds();
        geometry();
        cycles();
        pistonsAgainstChambers();
        derivedFigures();
        fuelAndEfficiency();
        charging();
        air();
    }

  private:
    void add(Verdict verdict, std::vector<std::string> paths, Message message, Message arithmetic) {
        report_.conflicts.push_back(
            {verdict, std::move(paths), std::move(message), std::move(arithmetic)});
    }
    void powerAgainstTorque();
    void equalPeaks(std::vector<std::string> paths, const Message& arithmetic);
    void orderOfSpeeds();
    void geometry();
    void cycles();
    void pistonsAgainstChambers();
    void derivedFigures();
    void againstFinding(const std::optional<Amount>& given, const std::string& path, TextId label,
                        std::vector<const Finding*> rows, double factor);
    void fuelAndEfficiency();
    void charging();
    void air();

    ClaimsReport& report_;
    const ClaimBasis& basis_;
    const ClaimedEngine& engine_;
    const ClaimedFigures& figures_;
};

void Conflicts::powerAgainstTorque() {
    if (!figures_.power || !figures_.torque || !figures_.powerSpeed) {
        return;
    }
    constexpr double rpm = units::revPerMinute;
    const double lowest = basis_.lowestPowerSpeed->value;
    const double claimed = figures_.powerSpeed->si;
    const std::vector<std::string> paths = {"/figures/power", "/figures/torque",
                                            "/figures/power_speed"};
    const Message arithmetic = Message(
        LW_TEXT("%1/(2π·%2) = %3 rpm; claimed %4 rpm"), shown(figures_.power->si, "W"),
        shown(figures_.torque->si, "N·m"), number(lowest / rpm, 5), number(claimed / rpm, 5));
    if (claimed < lowest * (1.0 - roundingOfFigures)) {
        add(Verdict::contradictory, paths,
            LW_TEXT("Impossible: at the claimed speed even the peak torque gives less than the "
                    "claimed power."),
            arithmetic);
    } else if (claimed < lowest * (1.0 + nearlyEqualPeaks)) {
        equalPeaks(paths, arithmetic);
    }
}

/// A torque that hardly falls on the way to the power peak is a flat curve where its own peak
/// stands well below, and hardly meant where it does not.
void Conflicts::equalPeaks(std::vector<std::string> paths, const Message& arithmetic) {
    const auto& torqueSpeed = figures_.torqueSpeed;
    if (!torqueSpeed) {
        add(Verdict::implausible, std::move(paths),
            LW_TEXT("Torque at peak power would be close to peak torque: either the curve is flat "
                    "up to there, or a governor cuts in. The speed of peak torque would decide."),
            arithmetic);
        return;
    }
    // Above the power peak is contradictory, and named so.
    const double above = figures_.powerSpeed->si / torqueSpeed->si;
    if (above >= 1.0 - roundingOfFigures && above < 1.0 + nearlyEqualPeaks) {
        paths.emplace_back("/figures/torque_speed");
        add(Verdict::implausible, std::move(paths),
            Message(LW_TEXT("Peak torque and peak power lie within %1 % of each other in speed, "
                            "which happens only where a governor cuts in."),
                    number(100.0 * nearlyEqualPeaks, 2)),
            Message(LW_TEXT("%1; %2 and %3"), arithmetic, text(*torqueSpeed),
                    text(*figures_.powerSpeed)));
    }
}

void Conflicts::orderOfSpeeds() {
    const auto& torqueSpeed = figures_.torqueSpeed;
    const auto& powerSpeed = figures_.powerSpeed;
    if (figures_.power && figures_.torque && torqueSpeed) {
        const double there = torqueSpeed->si * figures_.torque->si;
        if (there > figures_.power->si * (1.0 + roundingOfFigures)) {
            add(Verdict::contradictory,
                {"/figures/power", "/figures/torque", "/figures/torque_speed"},
                LW_TEXT("Peak torque times its speed exceeds the claimed peak power."),
                Message(LW_TEXT("2π·%1·%2 = %3 kW; claimed %4 kW"),
                        shown(turnsPerSecond(torqueSpeed->si), "1/s"),
                        shown(figures_.torque->si, "N·m"), number(there / 1e3, 5),
                        number(figures_.power->si / 1e3, 5)));
        }
    }
    if (torqueSpeed && powerSpeed && torqueSpeed->si > powerSpeed->si * (1.0 + roundingOfFigures)) {
        add(Verdict::contradictory, {"/figures/torque_speed", "/figures/power_speed"},
            LW_TEXT("Peak power cannot lie below the speed of peak torque: both torque and speed "
                    "would be higher there."),
            fmt::format("{} > {}", text(*torqueSpeed), text(*powerSpeed)));
    }
    if (!figures_.maximumSpeed) {
        return;
    }
    const auto below = [&](const std::optional<Amount>& speed, const char* path, TextId label) {
        if (speed && speed->si > figures_.maximumSpeed->si * (1.0 + roundingOfFigures)) {
            add(Verdict::contradictory, {path, "/figures/maximum_speed"},
                Message(LW_TEXT("The %1 lies above the highest speed."), label),
                fmt::format("{} > {}", text(*speed), text(*figures_.maximumSpeed)));
        }
    };
    below(powerSpeed, "/figures/power_speed", LW_TEXT("speed of peak power"));
    below(torqueSpeed, "/figures/torque_speed", LW_TEXT("speed of peak torque"));
}

void Conflicts::geometry() {
    if (!engine_.displacement || !engine_.bore || !engine_.stroke) {
        return;
    }
    const double one = units::pi / 4.0 * engine_.bore->si * engine_.bore->si * engine_.stroke->si;
    const double given = engine_.displacement->si;
    const Message arithmetic =
        Message(LW_TEXT("π/4·(%1)²·%2 = %3 L a piston"), shown(engine_.bore->si, "m"),
                shown(engine_.stroke->si, "m"), number(one * 1e3, 5));
    if (engine_.pistons) {
        if (differ(one * *engine_.pistons, given)) {
            add(Verdict::contradictory,
                {"/engine/displacement", "/engine/bore", "/engine/stroke", "/engine/pistons"},
                LW_TEXT("The displacement does not match the pistons."),
                Message(LW_TEXT("%1; ·%2 = %3 L; claimed %4 L"), arithmetic,
                        number(*engine_.pistons, 6), number(one * *engine_.pistons * 1e3, 5),
                        number(given * 1e3, 5)));
        }
        return;
    }
    if (engine_.cylinders && differ(one * *engine_.cylinders, given) &&
        differ(2.0 * one * *engine_.cylinders, given)) {
        add(Verdict::contradictory,
            {"/engine/displacement", "/engine/bore", "/engine/stroke", "/engine/cylinders"},
            LW_TEXT("The displacement is that of neither one nor two pistons per chamber."),
            Message(LW_TEXT("%1; %2 L or %3 L; claimed %4 L"), arithmetic,
                    number(one * *engine_.cylinders * 1e3, 5),
                    number(2.0 * one * *engine_.cylinders * 1e3, 5), number(given * 1e3, 5)));
    }
}

void Conflicts::cycles() {
    const auto m = engine_.reciprocations          ? engine_.reciprocations
                   : engine_.drive == Drive::crank ? std::optional(1.0)
                                                   : std::nullopt;
    if (engine_.drive == Drive::crank && engine_.reciprocations &&
        differ(*engine_.reciprocations, 1.0)) {
        add(Verdict::contradictory, {"/engine/drive", "/engine/reciprocations_per_turn"},
            LW_TEXT("A piston on a crank makes one reciprocation per revolution."),
            fmt::format("{:.6g} ≠ 1", *engine_.reciprocations));
    }
    if (!engine_.cycle || !m || !engine_.eventsPerTurn || !engine_.cylinders) {
        return;
    }
    const bool isTwoStroke = *engine_.cycle == StrokeCycle::twoStroke;
    const double expected = *engine_.cylinders * *m * (isTwoStroke ? 1.0 : 0.5);
    if (differ(expected, *engine_.eventsPerTurn)) {
        add(Verdict::contradictory,
            {"/engine/cycle", "/engine/cylinders", "/engine/reciprocations_per_turn",
             "/engine/events_per_turn"},
            Message(LW_TEXT("%1 cannot make that many power strokes."),
                    isTwoStroke ? LW_TEXT("Two strokes per cycle")
                                : LW_TEXT("Four strokes per cycle")),
            Message(LW_TEXT("%1 chambers·%2 reciprocations%3 = %4 per revolution; claimed %5"),
                    number(*engine_.cylinders, 6), number(*m, 6),
                    std::string(isTwoStroke ? "" : "/2"), number(expected, 6),
                    number(*engine_.eventsPerTurn, 6)));
    }
}

void Conflicts::pistonsAgainstChambers() {
    if (!engine_.pistons || !engine_.cylinders) {
        return;
    }
    // A double-acting piston serves two chambers, an opposed pair shares one.
    const double share = *engine_.pistons / *engine_.cylinders;
    if (share < 0.5 || share > 2.0) {
        add(Verdict::implausible, {"/engine/pistons", "/engine/cylinders"},
            LW_TEXT("A chamber has half a piston (double-acting), one, or two (opposed)."),
            Message(LW_TEXT("%1 pistons/%2 chambers = %3"), number(*engine_.pistons, 6),
                    number(*engine_.cylinders, 6), number(share)));
    }
}

void Conflicts::againstFinding(const std::optional<Amount>& given, const std::string& path,
                               TextId label, std::vector<const Finding*> rows, double factor) {
    std::erase(rows, nullptr);
    if (!given || rows.empty()) {
        return;
    }
    const auto highest =
        *std::ranges::max_element(rows, {}, [](const Finding* row) { return row->value; });
    if (differ(highest->value * factor, given->si, 0.02)) {
        add(Verdict::contradictory, {path},
            Message(LW_TEXT("%1 does not follow from the other figures."), label),
            Message(LW_TEXT("%1 = %2 = %3 %4; claimed %5"), highest->formula, highest->substituted,
                    number(highest->value, 5), highest->unit, text(*given)));
    }
}

void Conflicts::derivedFigures() {
    const bool isBound = basis_.powerSpeedBound != Bound::none;
    const bool isAssumed = (basis_.cyclesPerTurn && basis_.cyclesPerTurn->assumed) ||
                           (basis_.displacement && basis_.displacement->assumed);
    if (isAssumed) {
        return; // an assumption cannot contradict anybody
    }
    againstFinding(figures_.meanPressure, "/figures/mean_effective_pressure",
                   LW_TEXT("Brake mean effective pressure"),
                   {report_.finding("mean-effective-pressure-at-torque"),
                    isBound ? nullptr : report_.finding("mean-effective-pressure-at-power")},
                   1e5);
    againstFinding(figures_.pistonSpeed, "/figures/mean_piston_speed", LW_TEXT("Mean piston speed"),
                   {report_.finding("mean-piston-speed")}, 1.0);
}

void Conflicts::fuelAndEfficiency() {
    if (figures_.efficiency && figures_.efficiency->si >= 1.0) {
        add(Verdict::contradictory, {"/figures/efficiency"},
            LW_TEXT("An engine cannot deliver more work than the heating value of its fuel."),
            fmt::format("{:.4g} ≥ 1", figures_.efficiency->si));
    } else if (figures_.efficiency && figures_.efficiency->si > highestEfficiency) {
        add(Verdict::contradictory, {"/figures/efficiency"},
            beyondEngines(LW_TEXT("Brake thermal efficiency")),
            fmt::format("{:.4g} > {}", figures_.efficiency->si, highestEfficiency));
    }
    const auto& consumption = figures_.fuelConsumption;
    if (!consumption) {
        return;
    }
    const double efficiency = 1.0 / (consumption->si * basis_.heatingValue);
    const Message arithmetic = fmt::format("1/({}·{}) = {:.4g}", shown(consumption->si, "kg/J"),
                                           shown(basis_.heatingValue, "J/kg"), efficiency);
    const auto assuming = [&](TextId what) {
        return engine_.fuel ? Message(what) : Message(LW_TEXT("%1 (fuel assumed)"), what);
    };
    if (efficiency >= 1.0) {
        add(engine_.fuel ? Verdict::contradictory : Verdict::implausible,
            {"/figures/fuel_consumption"},
            Message(LW_TEXT("%1."),
                    assuming(LW_TEXT("The fuel contains less energy than the work claimed"))),
            arithmetic);
    } else if (efficiency > highestEfficiency) {
        add(engine_.fuel ? Verdict::contradictory : Verdict::implausible,
            {"/figures/fuel_consumption"},
            beyondEngines(
                assuming(LW_TEXT("The brake thermal efficiency behind this fuel consumption"))),
            Message(LW_TEXT("%1 > %2"), arithmetic, number(highestEfficiency)));
    } else if (figures_.efficiency && differ(efficiency, figures_.efficiency->si, 0.03)) {
        add(engine_.fuel ? Verdict::contradictory : Verdict::implausible,
            {"/figures/efficiency", "/figures/fuel_consumption", "/engine/fuel"},
            Message(LW_TEXT("%1."),
                    assuming(LW_TEXT("Efficiency and fuel consumption contradict each other"))),
            Message(LW_TEXT("%1; claimed %2"), arithmetic, number(figures_.efficiency->si)));
    }
}

void Conflicts::charging() {
    const auto& pressure = engine_.chargePressure;
    if (!pressure || !engine_.charging) {
        return;
    }
    const double ambient = basis_.ambientPressure;
    const bool isAbove = pressure->si > ambient * (1.0 + roundingOfFigures);
    if (engine_.charging == Charging::naturallyAspirated && isAbove) {
        add(Verdict::contradictory, {"/engine/charging", "/engine/charge_pressure"},
            LW_TEXT("A supply above ambient pressure is boost, whatever compresses it."),
            fmt::format("{} > {}", shown(pressure->si, "Pa"), shown(ambient, "Pa")));
    } else if (engine_.charging == Charging::boosted && !isAbove) {
        add(Verdict::contradictory, {"/engine/charging", "/engine/charge_pressure"},
            LW_TEXT("The supply pressure is not above ambient; give it as an absolute pressure."),
            fmt::format("{} ≤ {}", shown(pressure->si, "Pa"), shown(ambient, "Pa")));
    }
}

void Conflicts::air() {
    const ClaimedConditions& conditions = report_.claims.conditions;
    if (!conditions.airPressure || !conditions.airTemperature || !conditions.relativeHumidity) {
        return;
    }
    const AmbientAir air{conditions.airPressure->si, conditions.airTemperature->si,
                         conditions.relativeHumidity->si};
    if (dryPressure(air) <= 0.0) {
        add(Verdict::contradictory,
            {"/conditions/air_pressure", "/conditions/air_temperature",
             "/conditions/relative_humidity"},
            LW_TEXT("The partial pressure of the water vapour would exceed the air pressure."),
            fmt::format("{:.3g}·{} > {}", air.relativeHumidity,
                        shown(saturationPressure(air.temperature), "Pa"),
                        shown(air.pressure, "Pa")));
    }
}

} // namespace

void addConflicts(ClaimsReport& report, const ClaimBasis& basis) {
    Conflicts(report, basis).all();
}

} // namespace lobewright::study
