#include "core/claims/claims_findings.h"

#include "core/claims/claims_keys.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::study {

namespace {

/// Where the fit of motored friction ends, in 1000/min [own estimate from the engines it is of].
constexpr double highestFittedSpeed = 7.0;

} // namespace

void Findings::all() {
    conversions();
    cyclesAndDisplacement();
    speeds();
    pressures();
    pistonSpeed();
    powerDensities();
    efficiency();
    air();
    supply();
    correction();
    rating();
}

void Findings::judged(BandQuantity quantity, Finding finding, double si) {
    const Judgement judgement = judge(quantity, si, engine_);
    const BandUnit unit = bandUnit(quantity);
    finding.value = si / unit.factor;
    finding.unit = unit.symbol;
    finding.verdict = quantity == BandQuantity::efficiency && si > highestEfficiency
                          ? (finding.note.empty() ? Verdict::contradictory : Verdict::implausible)
                          : judgement.verdict;
    if (judgement.band != nullptr) {
        const Band& band = *judgement.band;
        finding.band = {LW_TEXT("%1, %2"), text(band), band.what};
        finding.source = describeSource(band);
    }
    finding.note = joined(finding.note, judgement.note);
    add(std::move(finding));
}

Message Findings::powerNote() const {
    switch (basis_.powerSpeedBound) {
    case Bound::atLeast:
        return LW_TEXT("at least this: the speed is only a bound");
    case Bound::atMost:
        return LW_TEXT("at most this: the speed is only a bound");
    case Bound::none:
        break;
    }
    return {};
}

void Findings::conversions() {
    forEachGroup([&](const char*, const auto& keys, auto member) {
        for (const auto& key : keys) {
            const auto& group = report_.claims.*member;
            if (key.amount == nullptr || !(group.*(key.amount)) ||
                (group.*(key.amount))->unit.empty()) {
                continue;
            }
            const Amount& given = *(group.*(key.amount));
            const TradeUnit& to = shownUnit(key.dimension);
            const auto all = tradeUnits();
            const TradeUnit& from = *std::ranges::find(all, given.unit, &TradeUnit::symbol);
            if (from.source == siUnit || from.symbol == to.symbol) {
                continue;
            }
            const std::string unit(siSymbol(key.dimension));
            const std::string factor =
                fmt::format("{:.10g}{}{}", from.factor, unit.empty() ? "" : " ", unit);
            computed(
                fmt::format("given-{}", key.name), Message(LW_TEXT("%1, as given"), key.label),
                from.offset == 0.0 ? Message(LW_TEXT("number·%1"), from.symbol)
                                   : Message(LW_TEXT("(number + %1)·unit"), asTyped(from.offset)),
                from.offset == 0.0 ? fmt::format("{}·{}", given.number, factor)
                                   : fmt::format("({} + {})·{}", given.number, from.offset, factor),
                given.si / to.factor, std::string(to.symbol), std::string(from.source));
        }
    });
}

void Findings::cyclesAndDisplacement() {
    if (c_) {
        computed("cycles-per-turn", LW_TEXT("Cycles per chamber and revolution"), c_->formula,
                 c_->substituted, c_->value, "", "", c_->assumed ? LW_TEXT("assumed") : TextId{});
    }
    if (v_ && !report_.claims.engine.displacement) {
        computed("displacement", LW_TEXT("Displacement"), v_->formula, v_->substituted,
                 v_->value / 1e-3, "L", "",
                 v_->assumed ? LW_TEXT("rests on an assumption") : TextId{});
    }
    if (c_ && v_) {
        // The same air pump as a four-stroke on a crank: two turns for each displacement.
        computed("four-stroke-equivalent",
                 LW_TEXT("Displacement of a four-stroke crank engine that displaces as much per "
                         "revolution"),
                 "V_d·c/½", fmt::format("{}·{:.6g}/0.5", shown(v_->value, "m³"), c_->value),
                 v_->value * c_->value / 0.5 / 1e-3, "L", "");
    }
}

Message Findings::fallOfTorque(double torqueAtPower) const {
    if (!figures_.torque || !figures_.torqueSpeed ||
        figures_.torqueSpeed->si >= figures_.powerSpeed->si) {
        return {};
    }
    const double fall = std::max(0.0, 1.0 - torqueAtPower / figures_.torque->si);
    const double from = figures_.torqueSpeed->si / units::revPerMinute;
    const double to = figures_.powerSpeed->si / units::revPerMinute;
    return fall < nearlyEqualPeaks
               ? Message(LW_TEXT("torque would fall only %1 % from %2 to %3 rpm"),
                         number(100.0 * fall, 2), number(from, 5), number(to, 5))
               : Message(LW_TEXT("torque would fall %1 % from %2 to %3 rpm"),
                         number(100.0 * fall, 2), number(from, 5), number(to, 5));
}

void Findings::speeds() {
    constexpr double rpm = units::revPerMinute;
    if (basis_.lowestPowerSpeed) {
        const Derived& lowest = *basis_.lowestPowerSpeed;
        computed("lowest-power-speed", LW_TEXT("Lowest possible speed of peak power"),
                 "n_min = P/(2π·T_max)",
                 fmt::format("{}/(2π·{})", shown(figures_.power->si, "W"),
                             shown(figures_.torque->si, "N·m")),
                 lowest.value / rpm, "rpm", LW_TEXT("P = ω·T ≤ ω·T_max, exact"));
    }
    if (figures_.power && figures_.powerSpeed) {
        const double torque = figures_.power->si / figures_.powerSpeed->si;
        computed("torque-at-power", LW_TEXT("Torque at the speed of peak power"), "T = P/(2π·n)",
                 fmt::format("{}/(2π·{})", shown(figures_.power->si, "W"),
                             shown(turnsPerSecond(figures_.powerSpeed->si), "1/s")),
                 torque, "N·m", LW_TEXT("exact"), fallOfTorque(torque));
    }
    if (figures_.torque && figures_.torqueSpeed) {
        computed("power-at-torque", LW_TEXT("Power at the speed of peak torque"), "P = 2π·n·T",
                 fmt::format("2π·{}·{}", shown(turnsPerSecond(figures_.torqueSpeed->si), "1/s"),
                             shown(figures_.torque->si, "N·m")),
                 figures_.torqueSpeed->si * figures_.torque->si / 1e3, "kW", LW_TEXT("exact"));
    }
}

void Findings::meanPressure(const PressurePlace& place, double pressure, TextId formula,
                            const Message& substituted, double omega, const Message& note) {
    Finding finding{fmt::format("mean-effective-pressure-{}", place.id), place.brake, formula,
                    substituted};
    finding.note = note;
    judged(BandQuantity::meanEffectivePressure, std::move(finding), pressure);
    if (omega <= 0.0 || !basis_.reciprocations) {
        return;
    }
    const double thousands = basis_.reciprocations->value * omega / units::revPerMinute / 1000.0;
    const bool isGiven = figures_.frictionPressure.has_value();
    // The fit is of motored crank engines: reciprocations a minute stand for their speed.
    const auto fit = [](double speed) {
        return (0.97 + 0.15 * speed + 0.05 * speed * speed) * 1e5;
    };
    const double friction = isGiven ? figures_.frictionPressure->si : fit(thousands);
    Finding& found = add(
        {fmt::format("indicated-pressure-{}", place.id), place.indicated,
         LW_TEXT("imep = bmep + fmep"),
         isGiven ? Message(LW_TEXT("%1 bar + %2 bar"), number(pressure / 1e5, 6),
                           number(friction / 1e5, 6))
                 : Message(LW_TEXT("%1 bar + (0.97 + 0.15·%2 + 0.05·%3²) bar"),
                           number(pressure / 1e5, 6), number(thousands), number(thousands)),
         (pressure + friction) / 1e5, "bar", "",
         isGiven
             ? LW_TEXT("fmep as given")
             : LW_TEXT("Heywood 1988, §13.2, motored spark-ignition engines, reciprocations in "
                       "1000 per minute (secondary value, not checked against the printed source)"),
         Verdict::computed, Message()});
    if (thousands > highestFittedSpeed && !isGiven) {
        found.note = {LW_TEXT("the fit ends at %1 rpm: beyond it only a range can be given"),
                      withDecimals(1e3 * highestFittedSpeed, in::pure, 0)};
        found.readings = {{LW_TEXT("friction as at the end of the fit"),
                           (pressure + fit(highestFittedSpeed)) / 1e5, Verdict::computed},
                          {LW_TEXT("friction by the fit extended"), (pressure + friction) / 1e5,
                           Verdict::computed}};
        found.value = found.readings.front().value;
    }
}

void Findings::pressures() {
    if (!c_ || !v_) {
        return;
    }
    const double volumePerTurn = c_->value * v_->value;
    if (figures_.torque) {
        meanPressure({"at-torque", LW_TEXT("Brake mean effective pressure at peak torque"),
                      LW_TEXT("Indicated mean effective pressure at peak torque")},
                     units::turn * figures_.torque->si / volumePerTurn,
                     LW_TEXT("bmep = 2π·T/(c·V_d)"),
                     fmt::format("2π·{}/({:.6g}·{})", shown(figures_.torque->si, "N·m"), c_->value,
                                 shown(v_->value, "m³")),
                     figures_.torqueSpeed ? figures_.torqueSpeed->si : 0.0, "");
    }
    if (figures_.power && basis_.powerSpeed) {
        const double n = turnsPerSecond(basis_.powerSpeed->value);
        meanPressure({"at-power", LW_TEXT("Brake mean effective pressure at peak power"),
                      LW_TEXT("Indicated mean effective pressure at peak power")},
                     figures_.power->si / (volumePerTurn * n), LW_TEXT("bmep = P/(V_d·c·n)"),
                     fmt::format("{}/({}·{:.6g}·{})", shown(figures_.power->si, "W"),
                                 shown(v_->value, "m³"), c_->value, shown(n, "1/s")),
                     basis_.powerSpeed->value, powerNote());
    }
}

void Findings::pistonSpeed() {
    double fastest = 0.0;
    for (const auto& speed : {figures_.maximumSpeed, figures_.powerSpeed, figures_.torqueSpeed}) {
        fastest = std::max(fastest, speed ? speed->si : 0.0);
    }
    const auto& stroke = report_.claims.engine.stroke;
    if (fastest == 0.0 || !stroke || !basis_.reciprocations) {
        if (figures_.pistonSpeed) {
            judged(BandQuantity::meanPistonSpeed,
                   {"mean-piston-speed-given", LW_TEXT("Mean piston speed as given"),
                    LW_TEXT("S̄p as given"), shown(figures_.pistonSpeed->si, "m/s")},
                   figures_.pistonSpeed->si);
        }
        return;
    }
    const double n = turnsPerSecond(fastest);
    const double m = basis_.reciprocations->value;
    Finding finding{"mean-piston-speed", LW_TEXT("Mean piston speed at the highest speed given"),
                    "2·S·m·n",
                    fmt::format("2·{}·{:.6g}·{}", shown(stroke->si, "m"), m, shown(n, "1/s"))};
    judged(BandQuantity::meanPistonSpeed, std::move(finding), 2.0 * stroke->si * m * n);
}

void Findings::powerDensities() {
    if (!figures_.power) {
        return;
    }
    const double power = figures_.power->si;
    if (v_) {
        judged(BandQuantity::specificPower,
               {"specific-power", LW_TEXT("Power per displacement"), "P/V_d",
                fmt::format("{}/({})", shown(power, "W"), shown(v_->value, "m³"))},
               power / v_->value);
    }
    if (const auto& mass = report_.claims.engine.mass) {
        judged(BandQuantity::powerPerMass,
               {"power-per-mass", LW_TEXT("Power per mass"), "P/m",
                fmt::format("{}/({})", shown(power, "W"), shown(mass->si, "kg"))},
               power / mass->si);
    }
}

void Findings::efficiency() {
    if (figures_.efficiency) {
        judged(BandQuantity::efficiency,
               {"efficiency", LW_TEXT("Brake thermal efficiency"), LW_TEXT("η_b as given"),
                shown(figures_.efficiency->si)},
               figures_.efficiency->si);
    }
    if (figures_.fuelConsumption) {
        judged(BandQuantity::efficiency,
               {"efficiency-from-consumption",
                LW_TEXT("Brake thermal efficiency from the fuel consumption"), "η_b = 1/(b_e·LHV)",
                fmt::format("1/({}·{})", shown(figures_.fuelConsumption->si, "kg/J"),
                            shown(basis_.heatingValue, "J/kg")),
                0.0, "", "", "", Verdict::computed,
                report_.claims.engine.fuel ? TextId{} : LW_TEXT("fuel assumed")},
               1.0 / (figures_.fuelConsumption->si * basis_.heatingValue));
    }
}

void addFindings(ClaimsReport& report, const ClaimBasis& basis) {
    Findings(report, basis).all();
}

} // namespace lobewright::study
