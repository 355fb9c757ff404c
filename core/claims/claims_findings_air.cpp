#include "core/claims/claims_correction.h"
#include "core/claims/claims_findings.h"
#include "core/gas/models/supply.h"
#include "core/gas/properties/properties.h"

#include <fmt/format.h>

LW_TEXTS_OF(Core)

/// The air that the power needs, what charges the engine with it, and the air that the power stands
/// for.
namespace lobewright::study {

namespace {

constexpr double portChargingEfficiency = 0.8; ///< of a ported chamber [own estimate]

} // namespace

void Findings::air() {
    if (!figures_.power) {
        return;
    }
    const double flow = figures_.power->si / (basis_.efficiency * basis_.heatingValue) *
                        basis_.airRatio * basis_.stoichiometricAir;
    computed("air-needed", LW_TEXT("Air required for the power"), "P/(η_b·LHV)·λ·L_st",
             fmt::format("{}/({:.6g}·{})·{:.6g}·{:.6g}", shown(figures_.power->si, "W"),
                         basis_.efficiency, shown(basis_.heatingValue, "J/kg"), basis_.airRatio,
                         basis_.stoichiometricAir),
             flow, "kg/s",
             LW_TEXT("fuel data: Heywood 1988, table D.4 (secondary values, not checked against "
                     "the printed source)"));
    if (c_ && v_ && basis_.powerSpeed) {
        chargeOf(flow);
    }
}

void Findings::chargeOf(double flow) {
    const double n = turnsPerSecond(basis_.powerSpeed->value);
    const double displaced = v_->value * c_->value * n * basis_.airDensity;
    const double ratio = flow / displaced;
    Finding needed{"charging-ratio", LW_TEXT("Required charging efficiency"), "air/(V_d·c·n·ρ_amb)",
                   fmt::format("{}/({}·{:.6g}·{}·{})", shown(flow, "kg/s"), shown(v_->value, "m³"),
                               c_->value, shown(n, "1/s"), shown(basis_.airDensity, "kg/m³"))};
    needed.note = powerNote();
    judged(BandQuantity::chargingRatio, std::move(needed), ratio);
    if (isTwoStroke() || !basis_.cycle) {
        computed(
            "charging-ratio-ports", LW_TEXT("Required delivery ratio through ports"),
            LW_TEXT("charging efficiency/trapping efficiency"),
            fmt::format("{:.6g}/{}", ratio, portChargingEfficiency), ratio / portChargingEfficiency,
            "", LW_TEXT("trapping efficiency 0.8: own estimate"),
            ratio / portChargingEfficiency > 1.0
                ? LW_TEXT(
                      "more than the displacement at ambient density: a blower has to deliver it")
                : TextId{});
    }
    const auto& charge = report_.claims.engine.chargePressure;
    if (!charge) {
        return;
    }
    const double available = charge->si / basis_.ambientPressure;
    // A chamber compressed 8:1 traps at most 8/7 of its displacement.
    constexpr double filledClearance = 8.0 / 7.0;
    Finding fits{
        "charge-available", LW_TEXT("Charging efficiency that the supply pressure allows"),
        LW_TEXT("p_supply/p_amb, cooled to ambient temperature"),
        fmt::format("{}/({})", shown(charge->si, "Pa"), shown(basis_.ambientPressure, "Pa")),
        available};
    fits.verdict = ratio <= available                     ? Verdict::ordinary
                   : ratio <= available * filledClearance ? Verdict::ambitious
                                                          : Verdict::implausible;
    fits.source = LW_TEXT("ideal gas; up to 8/7 of it with the clearance filled as well");
    fits.note = Message(LW_TEXT("%1 needed"), number(ratio));
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
    const Message net =
        isNotCounted
            ? Message(LW_TEXT("not counted in the claim; with it deducted the power is %1 kW"),
                      number((figures_.power->si - flow * work) / 1e3))
            : Message();
    computed(
        "supply-power", LW_TEXT("Supply power, if the shaft provides it"),
        LW_TEXT("air/trapping·[h(T₂) − h(T_amb)]"),
        fmt::format("{}/{:.2g}·{}", shown(needed->value, "kg/s"), trapping, shown(work, "J/kg")),
        flow * work / 1e3, "kW",
        Message(LW_TEXT("compressor of isentropic efficiency %1: own estimate"),
                asTyped(efficiency)),
        net);
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
    Message note;
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
        note = conditions.charger
                   ? Message()
                   : Message(LW_TEXT("compressor or blower not given: none assumed"));
    } else {
        correction = sparkCorrection(air);
    }
    if (!correction.outsideLimits.empty()) {
        note = joined(note, Message(LW_TEXT("%1: outside the limits of the standard"),
                                    correction.outsideLimits));
    }
    computed(
        "corrected-power", LW_TEXT("Power at the reference air of ISO 1585"),
        Message(LW_TEXT("%1, %2"), std::string("P·α"), correction.formula),
        Message(LW_TEXT("%1·%2"), shown(figures_.power->si, "W"), correction.substituted),
        figures_.power->si * correction.factor / 1e3, "kW",
        LW_TEXT("ISO 1585:1992, 99 kPa of dry air at 298 K (secondary value, not checked against "
                "the printed source)"),
        note);
}

void Findings::rating() {
    if (report_.claims.conditions.rating != Rating::gross || !figures_.power) {
        return;
    }
    computed("net-power", LW_TEXT("Net power, if auxiliaries and silencing take a tenth"), "P·0.9",
             fmt::format("{}·0.9", shown(figures_.power->si, "W")), figures_.power->si * 0.9 / 1e3,
             "kW", LW_TEXT("gross and net: ISO 15550; a tenth: own estimate"),
             LW_TEXT("the claim is a gross figure: published bands are mostly net"));
}

} // namespace lobewright::study
