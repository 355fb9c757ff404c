#include "core/gas/properties.h"
#include "core/gas/supply.h"
#include "core/study/claims_basis.h"
#include "core/study/claims_correction.h"
#include "core/study/claims_keys.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

namespace lobewright::study {

namespace {

constexpr double portChargingEfficiency = 0.8; ///< of a ported chamber [own estimate]

/// Adds rows to the report and judges them by the bands of the claimed class.
class Findings {
  public:
    Findings(ClaimsReport& report, const ClaimBasis& basis)
        : report_(report), basis_(basis), engine_(engineClass(report.claims)),
          figures_(report.claims.figures), c_(basis.cyclesPerTurn), v_(basis.displacement) {}

    void all() {
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

  private:
    void conversions();
    void cyclesAndDisplacement();
    void speeds();
    void pressures();
    void meanPressure(const std::string& id, const std::string& quantity, double pressure,
                      const std::string& formula, const std::string& substituted, double omega,
                      const std::string& note);
    void pistonSpeed();
    void powerDensities();
    void efficiency();
    void air();
    void chargeOf(double airFlow);
    void supply();
    void correction();
    void rating();

    Finding& add(Finding finding) {
        report_.findings.push_back(std::move(finding));
        return report_.findings.back();
    }
    void judged(BandQuantity quantity, Finding finding, double si) {
        const Judgement judgement = judge(quantity, si, engine_);
        const BandUnit unit = bandUnit(quantity);
        finding.value = si / unit.factor;
        finding.unit = unit.symbol;
        finding.verdict = judgement.verdict;
        if (judgement.band != nullptr) {
            const Band& band = *judgement.band;
            finding.band = fmt::format("{}, {}", text(band), band.what);
            finding.source = describeSource(band);
        }
        if (!judgement.note.empty()) {
            finding.note += (finding.note.empty() ? "" : "; ") + judgement.note;
        }
        add(std::move(finding));
    }
    std::string powerNote() const {
        return basis_.powerSpeedBound.empty()
                   ? ""
                   : basis_.powerSpeedBound + " this: the speed is a bound";
    }
    bool isTwoStroke() const { return basis_.cycle == StrokeCycle::twoStroke; }

    ClaimsReport& report_;
    const ClaimBasis& basis_;
    EngineClass engine_;
    const ClaimedFigures& figures_;
    const std::optional<Derived>& c_;
    const std::optional<Derived>& v_;
};

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
            add({fmt::format("given-{}", key.name), fmt::format("{} as given", key.label),
                 from.offset == 0.0 ? fmt::format("number·{}", from.symbol)
                                    : fmt::format("(number + {})·unit", from.offset),
                 from.offset == 0.0
                     ? fmt::format("{}·{}", given.number, factor)
                     : fmt::format("({} + {})·{}", given.number, from.offset, factor),
                 given.si / to.factor, std::string(to.symbol), "", std::string(from.source),
                 Verdict::computed, ""});
        }
    });
}

void Findings::cyclesAndDisplacement() {
    if (c_) {
        add({"cycles-per-turn", "Gas cycles per chamber and turn", c_->formula, c_->substituted,
             c_->value, "", "", "", Verdict::computed, c_->assumed ? "assumed" : ""});
    }
    if (v_ && !report_.claims.engine.displacement) {
        add({"displacement", "Displacement", v_->formula, v_->substituted, v_->value / 1e-3, "L",
             "", "", Verdict::computed, v_->assumed ? "rests on an assumption" : ""});
    }
    if (c_ && v_) {
        // The same air pump as a four-stroke on a crank: two turns for each displacement.
        add({"four-stroke-equivalent",
             "Displacement of a four-stroke crank engine that displaces as "
             "much a turn",
             "V_d·c/½", fmt::format("{}·{:.6g}/0.5", shown(v_->value, "m³"), c_->value),
             v_->value * c_->value / 0.5 / 1e-3, "L", "", "", Verdict::computed, ""});
    }
}

void Findings::speeds() {
    constexpr double rpm = units::revPerMinute;
    if (basis_.lowestPowerSpeed) {
        const Derived& lowest = *basis_.lowestPowerSpeed;
        add({"lowest-power-speed", "Lowest possible speed of highest power", "n_min = P/(2π·T_max)",
             fmt::format("{}/(2π·{})", shown(figures_.power->si, "W"),
                         shown(figures_.torque->si, "N·m")),
             lowest.value / rpm, "rpm", "", "P = ω·T ≤ ω·T_max, exact", Verdict::computed, ""});
    }
    if (figures_.power && figures_.powerSpeed) {
        const double torque = figures_.power->si / figures_.powerSpeed->si;
        add({"torque-at-power", "Torque at the power peak", "T = P/(2π·n)",
             fmt::format("{}/(2π·{})", shown(figures_.power->si, "W"),
                         shown(turnsPerSecond(figures_.powerSpeed->si), "1/s")),
             torque, "N·m", "", "exact", Verdict::computed, ""});
    }
    if (figures_.torque && figures_.torqueSpeed) {
        add({"power-at-torque", "Power at the torque peak", "P = 2π·n·T",
             fmt::format("2π·{}·{}", shown(turnsPerSecond(figures_.torqueSpeed->si), "1/s"),
                         shown(figures_.torque->si, "N·m")),
             figures_.torqueSpeed->si * figures_.torque->si / 1e3, "kW", "", "exact",
             Verdict::computed, ""});
    }
}

void Findings::meanPressure(const std::string& id, const std::string& quantity, double pressure,
                            const std::string& formula, const std::string& substituted,
                            double omega, const std::string& note) {
    Finding finding{id, quantity, formula, substituted};
    finding.note = note;
    judged(BandQuantity::meanEffectivePressure, std::move(finding), pressure);
    if (omega <= 0.0 || !basis_.reciprocations) {
        return;
    }
    const double thousands = basis_.reciprocations->value * omega / units::revPerMinute / 1000.0;
    const bool isGiven = figures_.frictionPressure.has_value();
    // The fit is of motored crank engines: reciprocations a minute stand for their speed.
    const double friction = isGiven
                                ? figures_.frictionPressure->si
                                : (0.97 + 0.15 * thousands + 0.05 * thousands * thousands) * 1e5;
    const std::string row = id.substr(std::string_view("mean-effective-pressure").size());
    add({"indicated-pressure" + row,
         "Indicated mean effective pressure" + quantity.substr(quantity.rfind(" at ")),
         "imep = bmep + fmep",
         isGiven ? fmt::format("{:.6g} bar + {:.6g} bar", pressure / 1e5, friction / 1e5)
                 : fmt::format("{:.6g} bar + (0.97 + 0.15·{:.4g} + 0.05·{:.4g}²) bar",
                               pressure / 1e5, thousands, thousands),
         (pressure + friction) / 1e5, "bar", "",
         isGiven
             ? "fmep as given"
             : "Heywood 1988, §13.2, motored spark-ignition engines, reciprocations in 1000/min "
               "(from memory)",
         Verdict::computed, thousands > 7.0 && !isGiven ? "friction far outside the fit" : ""});
}

void Findings::pressures() {
    if (!c_ || !v_) {
        return;
    }
    const double volumePerTurn = c_->value * v_->value;
    if (figures_.torque) {
        meanPressure("mean-effective-pressure-at-torque",
                     "Brake mean effective pressure at the torque peak",
                     units::turn * figures_.torque->si / volumePerTurn, "bmep = 2π·T/(c·V_d)",
                     fmt::format("2π·{}/({:.6g}·{})", shown(figures_.torque->si, "N·m"), c_->value,
                                 shown(v_->value, "m³")),
                     figures_.torqueSpeed ? figures_.torqueSpeed->si : 0.0, "");
    }
    if (figures_.power && basis_.powerSpeed) {
        const double n = turnsPerSecond(basis_.powerSpeed->value);
        meanPressure("mean-effective-pressure-at-power",
                     "Brake mean effective pressure at the power peak",
                     figures_.power->si / (volumePerTurn * n), "bmep = P/(V_d·c·n)",
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
        return;
    }
    const double n = turnsPerSecond(fastest);
    const double m = basis_.reciprocations->value;
    Finding finding{"mean-piston-speed", "Mean piston speed at the highest speed given", "2·S·m·n",
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
               {"specific-power", "Power per displacement", "P/V_d",
                fmt::format("{}/({})", shown(power, "W"), shown(v_->value, "m³"))},
               power / v_->value);
    }
    if (const auto& mass = report_.claims.engine.mass) {
        judged(BandQuantity::powerPerMass,
               {"power-per-mass", "Power per mass", "P/m",
                fmt::format("{}/({})", shown(power, "W"), shown(mass->si, "kg"))},
               power / mass->si);
    }
}

void Findings::efficiency() {
    if (figures_.efficiency) {
        judged(BandQuantity::efficiency,
               {"efficiency", "Brake efficiency", "η_b as given", shown(figures_.efficiency->si)},
               figures_.efficiency->si);
    }
    if (figures_.fuelConsumption) {
        judged(BandQuantity::efficiency,
               {"efficiency-from-consumption", "Brake efficiency from the fuel consumption",
                "η_b = 1/(b_e·LHV)",
                fmt::format("1/({}·{})", shown(figures_.fuelConsumption->si, "kg/J"),
                            shown(basis_.heatingValue, "J/kg"))},
               1.0 / (figures_.fuelConsumption->si * basis_.heatingValue));
    }
}

void Findings::air() {
    if (!figures_.power) {
        return;
    }
    const double flow = figures_.power->si / (basis_.efficiency * basis_.heatingValue) *
                        basis_.airRatio * basis_.stoichiometricAir;
    add({"air-needed", "Air needed for the power", "P/(η_b·LHV)·λ·L_st",
         fmt::format("{}/({:.6g}·{})·{:.6g}·{:.6g}", shown(figures_.power->si, "W"),
                     basis_.efficiency, shown(basis_.heatingValue, "J/kg"), basis_.airRatio,
                     basis_.stoichiometricAir),
         flow, "kg/s", "", "fuel data: Heywood 1988, table D.4 (from memory)", Verdict::computed,
         ""});
    if (c_ && v_ && basis_.powerSpeed) {
        chargeOf(flow);
    }
}

void Findings::chargeOf(double flow) {
    const double n = turnsPerSecond(basis_.powerSpeed->value);
    const double displaced = v_->value * c_->value * n * basis_.airDensity;
    const double ratio = flow / displaced;
    Finding needed{"charging-ratio", "Charging ratio needed", "air/(V_d·c·n·ρ_amb)",
                   fmt::format("{}/({}·{:.6g}·{}·{})", shown(flow, "kg/s"), shown(v_->value, "m³"),
                               c_->value, shown(n, "1/s"), shown(basis_.airDensity, "kg/m³"))};
    needed.note = powerNote();
    judged(BandQuantity::chargingRatio, std::move(needed), ratio);
    if (isTwoStroke() || !basis_.cycle) {
        add({"charging-ratio-ports", "Delivery ratio needed through ports",
             "charging ratio/trapping efficiency",
             fmt::format("{:.6g}/{}", ratio, portChargingEfficiency),
             ratio / portChargingEfficiency, "", "", "trapping efficiency 0.8: own estimate",
             Verdict::computed,
             ratio / portChargingEfficiency > 1.0
                 ? "more than the displacement at ambient density: a blower has to deliver it"
                 : ""});
    }
    const auto& charge = report_.claims.engine.chargePressure;
    if (!charge) {
        return;
    }
    const double available = charge->si / basis_.ambientPressure;
    // A chamber compressed 8:1 traps at most 8/7 of its displacement.
    constexpr double filledClearance = 8.0 / 7.0;
    Finding fits{
        "charge-available", "Charging ratio that the charge pressure allows",
        "p_charge/p_amb, cooled to ambient temperature",
        fmt::format("{}/({})", shown(charge->si, "Pa"), shown(basis_.ambientPressure, "Pa")),
        available};
    fits.verdict = ratio <= available                     ? Verdict::ordinary
                   : ratio <= available * filledClearance ? Verdict::ambitious
                                                          : Verdict::implausible;
    fits.source = "ideal gas; up to 8/7 of it with the clearance filled as well";
    fits.note = fmt::format("{:.4g} needed", ratio);
    add(std::move(fits));
}

void Findings::supply() {
    const Finding* needed = report_.finding("air-needed");
    const auto& charge = report_.claims.engine.chargePressure;
    if (needed == nullptr || !charge || charge->si <= basis_.ambientPressure) {
        return;
    }
    gas::Supply supply;
    supply.ambientPressure = basis_.ambientPressure;
    supply.ambientTemperature = basis_.ambientTemperature;
    const double efficiency = supply.isentropicEfficiency;
    const double work = gas::compress(supply, gas::dryAir(), charge->si).work;
    const double trapping = isTwoStroke() ? portChargingEfficiency : 1.0;
    const double flow = needed->value / trapping;
    const bool isNotCounted = report_.claims.conditions.supplyPower == SupplyPower::notCounted;
    const std::string net =
        isNotCounted ? fmt::format("not counted in the claim; less it the power is {:.4g} kW",
                                   (figures_.power->si - flow * work) / 1e3)
                     : "";
    add({"supply-power", "Power that charges the engine, if its shaft pays",
         "air/trapping·[h(T₂) − h(T_amb)]",
         fmt::format("{}/{:.2g}·{}", shown(needed->value, "kg/s"), trapping, shown(work, "J/kg")),
         flow * work / 1e3, "kW", "",
         fmt::format("compressor of isentropic efficiency {}: own estimate", efficiency),
         Verdict::computed, net});
}

void Findings::correction() {
    const ClaimedConditions& conditions = report_.claims.conditions;
    if (!conditions.airPressure || !conditions.airTemperature || !figures_.power) {
        return;
    }
    const AmbientAir air{conditions.airPressure->si, conditions.airTemperature->si,
                         conditions.relativeHumidity ? conditions.relativeHumidity->si : 0.0};
    if (dryPressure(air) <= 0.0) {
        return; // named among the conflicts
    }
    PowerCorrection correction;
    std::string note;
    if (engine_.ignition == Ignition::compression) {
        if (!c_ || !v_ || !basis_.powerSpeed) {
            return;
        }
        const double fuelFlow = figures_.power->si / (basis_.efficiency * basis_.heatingValue);
        const double perCycle =
            fuelFlow / (v_->value * c_->value * turnsPerSecond(basis_.powerSpeed->value));
        const auto& charge = report_.claims.engine.chargePressure;
        const double ratio = charge ? charge->si / air.pressure : 1.0;
        correction = compressionCorrection(air, conditions.charger.value_or(Charger::none),
                                           perCycle / ratio);
        note = conditions.charger ? "" : "charger not given: none assumed";
    } else {
        correction = sparkCorrection(air);
    }
    if (!correction.outsideLimits.empty()) {
        note += (note.empty() ? "" : "; ") + correction.outsideLimits +
                ": outside the limits of the standard";
    }
    add({"corrected-power", "Power at the reference air of ISO 1585", "P·α, " + correction.formula,
         fmt::format("{}·{}", shown(figures_.power->si, "W"), correction.substituted),
         figures_.power->si * correction.factor / 1e3, "kW", "",
         "ISO 1585:1992, 99 kPa of dry air at 298 K (formula from memory)", Verdict::computed,
         note});
}

void Findings::rating() {
    if (report_.claims.conditions.rating != Rating::gross || !figures_.power) {
        return;
    }
    add({"net-power", "Net power, if auxiliaries and silencing take a tenth", "P·0.9",
         fmt::format("{}·0.9", shown(figures_.power->si, "W")), figures_.power->si * 0.9 / 1e3,
         "kW", "", "gross and net: ISO 15550; a tenth: own estimate", Verdict::computed,
         "the claim is a gross figure: published bands are mostly net"});
}

} // namespace

void addFindings(ClaimsReport& report, const ClaimBasis& basis) {
    Findings(report, basis).all();
}

} // namespace lobewright::study
