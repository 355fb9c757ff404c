#include "core/study/claims_basis.h"
#include "core/study/claims_correction.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace lobewright::study {

namespace {

bool differ(double one, double other, double tolerance = roundingOfFigures) {
    return std::abs(one - other) > tolerance * std::max(std::abs(one), std::abs(other));
}

std::string beyondEngines(const std::string& subject) {
    return fmt::format(
        "{} is beyond piston engines: the largest two-stroke diesels reach about 55 % (common "
        "practice), and even the loss-free cycle of fuel and air stays near 60 % at the "
        "compression engines can use (Heywood 1988, ch. 5, from memory). Taken as impossible above "
        "{:.2g} % (own estimate).",
        subject, 100.0 * highestEfficiency);
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
    void add(Verdict verdict, std::vector<std::string> paths, std::string message,
             std::string arithmetic) {
        report_.conflicts.push_back(
            {verdict, std::move(paths), std::move(message), std::move(arithmetic)});
    }
    void powerAgainstTorque();
    void equalPeaks(std::vector<std::string> paths, const std::string& arithmetic);
    void orderOfSpeeds();
    void geometry();
    void cycles();
    void pistonsAgainstChambers();
    void derivedFigures();
    void againstFinding(const std::optional<Amount>& given, const std::string& path,
                        const std::string& label, std::vector<const Finding*> rows, double factor);
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
    const std::string arithmetic =
        fmt::format("{}/(2π·{}) = {:.5g} rpm; claimed {:.5g} rpm", shown(figures_.power->si, "W"),
                    shown(figures_.torque->si, "N·m"), lowest / rpm, claimed / rpm);
    if (claimed < lowest * (1.0 - roundingOfFigures)) {
        add(Verdict::contradictory, paths,
            "Impossible: at the claimed speed even the highest torque gives less than the claimed "
            "power.",
            arithmetic);
    } else if (claimed < lowest * (1.0 + nearlyEqualPeaks)) {
        equalPeaks(paths, arithmetic);
    }
}

/// A torque that hardly falls on the way to the power peak is a flat curve where its own peak
/// stands well below, and hardly meant where it does not.
void Conflicts::equalPeaks(std::vector<std::string> paths, const std::string& arithmetic) {
    const auto& torqueSpeed = figures_.torqueSpeed;
    if (!torqueSpeed) {
        add(Verdict::implausible, std::move(paths),
            "Torque would have to be nearly at its highest where the power is: the curve would be "
            "flat up to there, or a governor cuts in. The speed of highest torque would decide.",
            arithmetic);
        return;
    }
    // Above the power peak is contradictory, and named so.
    const double above = figures_.powerSpeed->si / torqueSpeed->si;
    if (above >= 1.0 - roundingOfFigures && above < 1.0 + nearlyEqualPeaks) {
        paths.emplace_back("/figures/torque_speed");
        add(Verdict::implausible, std::move(paths),
            fmt::format("The peaks of torque and power stand within {:.2g} % of each other, which "
                        "engines do not do unless a governor cuts in.",
                        100.0 * nearlyEqualPeaks),
            fmt::format("{}; {} and {}", arithmetic, text(*torqueSpeed),
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
                "The torque peak alone gives more power than the claimed highest power.",
                fmt::format("2π·{}·{} = {:.5g} kW; claimed {:.5g} kW",
                            shown(turnsPerSecond(torqueSpeed->si), "1/s"),
                            shown(figures_.torque->si, "N·m"), there / 1e3,
                            figures_.power->si / 1e3));
        }
    }
    if (torqueSpeed && powerSpeed && torqueSpeed->si > powerSpeed->si * (1.0 + roundingOfFigures)) {
        add(Verdict::contradictory, {"/figures/torque_speed", "/figures/power_speed"},
            "The power peak cannot stand below the torque peak: both torque and speed would be "
            "higher there.",
            fmt::format("{} > {}", text(*torqueSpeed), text(*powerSpeed)));
    }
    if (!figures_.maximumSpeed) {
        return;
    }
    const auto below = [&](const std::optional<Amount>& speed, const char* path,
                           const char* label) {
        if (speed && speed->si > figures_.maximumSpeed->si * (1.0 + roundingOfFigures)) {
            add(Verdict::contradictory, {path, "/figures/maximum_speed"},
                fmt::format("The {} stands above the highest speed.", label),
                fmt::format("{} > {}", text(*speed), text(*figures_.maximumSpeed)));
        }
    };
    below(powerSpeed, "/figures/power_speed", "speed of highest power");
    below(torqueSpeed, "/figures/torque_speed", "speed of highest torque");
}

void Conflicts::geometry() {
    if (!engine_.displacement || !engine_.bore || !engine_.stroke) {
        return;
    }
    const double one = units::pi / 4.0 * engine_.bore->si * engine_.bore->si * engine_.stroke->si;
    const double given = engine_.displacement->si;
    const std::string arithmetic =
        fmt::format("π/4·({})²·{} = {:.5g} L a piston", shown(engine_.bore->si, "m"),
                    shown(engine_.stroke->si, "m"), one * 1e3);
    if (engine_.pistons) {
        if (differ(one * *engine_.pistons, given)) {
            add(Verdict::contradictory,
                {"/engine/displacement", "/engine/bore", "/engine/stroke", "/engine/pistons"},
                "Displacement is not that of the pistons.",
                fmt::format("{}; ·{:.6g} = {:.5g} L; claimed {:.5g} L", arithmetic,
                            *engine_.pistons, one * *engine_.pistons * 1e3, given * 1e3));
        }
        return;
    }
    if (engine_.cylinders && differ(one * *engine_.cylinders, given) &&
        differ(2.0 * one * *engine_.cylinders, given)) {
        add(Verdict::contradictory,
            {"/engine/displacement", "/engine/bore", "/engine/stroke", "/engine/cylinders"},
            "Displacement is that of neither one nor two pistons a chamber.",
            fmt::format("{}; {:.5g} L or {:.5g} L; claimed {:.5g} L", arithmetic,
                        one * *engine_.cylinders * 1e3, 2.0 * one * *engine_.cylinders * 1e3,
                        given * 1e3));
    }
}

void Conflicts::cycles() {
    const auto m = engine_.reciprocations          ? engine_.reciprocations
                   : engine_.drive == Drive::crank ? std::optional(1.0)
                                                   : std::nullopt;
    if (engine_.drive == Drive::crank && engine_.reciprocations &&
        differ(*engine_.reciprocations, 1.0)) {
        add(Verdict::contradictory, {"/engine/drive", "/engine/reciprocations_per_turn"},
            "A piston on a crank goes to and fro once a turn.",
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
            fmt::format("{} cannot make that many power strokes.",
                        isTwoStroke ? "Two strokes a cycle" : "Four strokes a cycle"),
            fmt::format("{:.6g} chambers·{:.6g} reciprocations{} = {:.6g} a turn; claimed {:.6g}",
                        *engine_.cylinders, *m, isTwoStroke ? "" : "/2", expected,
                        *engine_.eventsPerTurn));
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
            "A chamber has half a piston (double-acting), one, or two (opposed).",
            fmt::format("{:.6g} pistons/{:.6g} chambers = {:.4g}", *engine_.pistons,
                        *engine_.cylinders, share));
    }
}

void Conflicts::againstFinding(const std::optional<Amount>& given, const std::string& path,
                               const std::string& label, std::vector<const Finding*> rows,
                               double factor) {
    std::erase(rows, nullptr);
    if (!given || rows.empty()) {
        return;
    }
    const auto highest =
        *std::ranges::max_element(rows, {}, [](const Finding* row) { return row->value; });
    if (differ(highest->value * factor, given->si, 0.02)) {
        add(Verdict::contradictory, {path},
            fmt::format("{} does not follow from the other figures.", label),
            fmt::format("{} = {} = {:.5g} {}; claimed {}", highest->formula, highest->substituted,
                        highest->value, highest->unit, text(*given)));
    }
}

void Conflicts::derivedFigures() {
    const bool isBound = !basis_.powerSpeedBound.empty();
    const bool isAssumed = (basis_.cyclesPerTurn && basis_.cyclesPerTurn->assumed) ||
                           (basis_.displacement && basis_.displacement->assumed);
    if (isAssumed) {
        return; // an assumption cannot contradict anybody
    }
    againstFinding(figures_.meanPressure, "/figures/mean_effective_pressure",
                   "Brake mean effective pressure",
                   {report_.finding("mean-effective-pressure-at-torque"),
                    isBound ? nullptr : report_.finding("mean-effective-pressure-at-power")},
                   1e5);
    againstFinding(figures_.pistonSpeed, "/figures/mean_piston_speed", "Mean piston speed",
                   {report_.finding("mean-piston-speed")}, 1.0);
}

void Conflicts::fuelAndEfficiency() {
    if (figures_.efficiency && figures_.efficiency->si >= 1.0) {
        add(Verdict::contradictory, {"/figures/efficiency"},
            "An engine cannot give more work than its fuel brings.",
            fmt::format("{:.4g} ≥ 1", figures_.efficiency->si));
    } else if (figures_.efficiency && figures_.efficiency->si > highestEfficiency) {
        add(Verdict::contradictory, {"/figures/efficiency"}, beyondEngines("Brake efficiency"),
            fmt::format("{:.4g} > {}", figures_.efficiency->si, highestEfficiency));
    }
    const auto& consumption = figures_.fuelConsumption;
    if (!consumption) {
        return;
    }
    const double efficiency = 1.0 / (consumption->si * basis_.heatingValue);
    const std::string arithmetic = fmt::format("1/({}·{}) = {:.4g}", shown(consumption->si, "kg/J"),
                                               shown(basis_.heatingValue, "J/kg"), efficiency);
    const std::string fuel = engine_.fuel ? "" : " (fuel assumed)";
    if (efficiency >= 1.0) {
        add(engine_.fuel ? Verdict::contradictory : Verdict::implausible,
            {"/figures/fuel_consumption"},
            fmt::format("The fuel does not hold as much energy as the work claimed from it{}.",
                        fuel),
            arithmetic);
    } else if (efficiency > highestEfficiency) {
        add(engine_.fuel ? Verdict::contradictory : Verdict::implausible,
            {"/figures/fuel_consumption"},
            beyondEngines("The brake efficiency behind this fuel consumption" + fuel),
            fmt::format("{} > {}", arithmetic, highestEfficiency));
    } else if (figures_.efficiency && differ(efficiency, figures_.efficiency->si, 0.03)) {
        add(engine_.fuel ? Verdict::contradictory : Verdict::implausible,
            {"/figures/efficiency", "/figures/fuel_consumption", "/engine/fuel"},
            fmt::format("Efficiency and fuel consumption do not belong to each other{}.", fuel),
            fmt::format("{}; claimed {:.4g}", arithmetic, figures_.efficiency->si));
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
            "A charge above ambient pressure is boost, whoever makes it.",
            fmt::format("{} > {}", shown(pressure->si, "Pa"), shown(ambient, "Pa")));
    } else if (engine_.charging == Charging::boosted && !isAbove) {
        add(Verdict::contradictory, {"/engine/charging", "/engine/charge_pressure"},
            "The charge pressure is not above ambient; it has to be given as absolute pressure.",
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
            "The water vapour alone would have more pressure than the air.",
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
