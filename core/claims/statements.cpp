#include "core/claims/statement_check.h"
#include "core/enum_table.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::study {

StatementRow StatementCheck::check() {
    using Check = StatementCheck;
    const auto check = entryOf<StatementKind::oilConsumption>(
        {&Check::strokes, &Check::eventsPerChamber, &Check::events, &Check::boost, &Check::balance,
         &Check::timesUsual, &Check::other, &Check::firingInterval, &Check::compressionRange,
         &Check::size, &Check::friction, &Check::lowSpeedTorque, &Check::oilConsumption},
        row_.statement.kind);
    (this->*check)();
    return std::move(row_);
}

namespace {

/// "9.5 bar", in the unit of the finding.
std::string withUnit(double value, const std::string& unit, int digits) {
    return lobewright::withUnit(fmt::format("{:.{}g}", value, digits), unit);
}

} // namespace

void StatementCheck::strokes() {
    const auto& value = row_.statement.value;
    const double m = engine_.reciprocations.value_or(1.0);
    const bool isKnown = engine_.reciprocations || engine_.drive == Drive::crank;
    if (!value) {
        open(LW_TEXT("The number of strokes is not given as a value."), LW_TEXT("The number."));
        return;
    }
    if (engine_.cycle) {
        const bool isTwoStroke = *engine_.cycle == StrokeCycle::twoStroke;
        const double counted = isTwoStroke ? 2.0 : 4.0;
        row_.computed =
            Message(LW_TEXT("A piston makes %1 strokes for each power stroke."), number(counted));
        row_.arithmetic =
            isTwoStroke ? LW_TEXT("two-stroke cycle: compression and expansion")
                        : LW_TEXT("four-stroke cycle: intake, compression, expansion, exhaust");
        decide(isAbout(counted, *value), Confidence::high);
        row_.overturnedBy = LW_TEXT("Another cycle.");
        return;
    }
    if (!isKnown || !engine_.eventsPerTurn || !engine_.cylinders) {
        open(LW_TEXT("Strokes per cycle = 2·reciprocations/cycles, per chamber and revolution: "
                     "reciprocations per revolution, power strokes per revolution and chambers are "
                     "not all given."),
             LW_TEXT("Reciprocations per revolution, power strokes per revolution and the number "
                     "of chambers."));
        return;
    }
    const double c = *engine_.eventsPerTurn / *engine_.cylinders;
    const double counted = 2.0 * m / c;
    row_.computed =
        Message(LW_TEXT("A piston makes %1 strokes for each power stroke."), number(counted));
    row_.arithmetic = fmt::format("2·{:.6g}/({:.6g}/{:.6g}) = {:.4g}", m, *engine_.eventsPerTurn,
                                  *engine_.cylinders, counted);
    decide(isAbout(counted, *value), Confidence::high);
    row_.overturnedBy =
        LW_TEXT("Another number of power strokes per chamber and revolution, or of lobes.");
}

void StatementCheck::eventsPerChamber() {
    const auto& value = row_.statement.value;
    if (!value || !basis_.cyclesPerTurn) {
        open(LW_TEXT("The power strokes per chamber and revolution follow from the cycle and the "
                     "reciprocations per revolution, which are not both given."),
             LW_TEXT("The cycle, and lobes (or a crank)."));
        return;
    }
    const Derived& c = *basis_.cyclesPerTurn;
    row_.computed =
        Message(LW_TEXT("%1 power strokes per chamber and revolution."), number(c.value));
    row_.arithmetic = Message(LW_TEXT("%1 = %2 = %3"), c.formula, c.substituted, number(c.value));
    decide(isAbout(c.value, *value), c.assumed ? Confidence::medium : Confidence::high);
    row_.overturnedBy = c.assumed
                            ? LW_TEXT("More than one reciprocation per revolution.")
                            : LW_TEXT("Another number of chambers, lobes or strokes per cycle.");
}

void StatementCheck::events() {
    const auto& value = row_.statement.value;
    // Counted from cycle and lobes where it can be, so that the statement does not confirm itself.
    const bool isCounted = engine_.cycle && engine_.cylinders &&
                           (engine_.reciprocations || engine_.drive == Drive::crank);
    if (!value || (!isCounted && !engine_.eventsPerTurn)) {
        open(LW_TEXT("Power strokes per revolution = chambers·cycles per chamber and revolution: "
                     "not all are given."),
             LW_TEXT("The number of chambers, the cycle, and lobes (or a crank)."));
        return;
    }
    double counted = engine_.eventsPerTurn.value_or(0.0);
    row_.arithmetic = Message(LW_TEXT("as given: %1"), number(counted, 6));
    if (isCounted) {
        const double m = engine_.reciprocations.value_or(1.0);
        const double share = *engine_.cycle == StrokeCycle::twoStroke ? 1.0 : 0.5;
        counted = *engine_.cylinders * m * share;
        row_.arithmetic =
            Message(LW_TEXT("%1 chambers·%2 reciprocations·%3 = %4"), number(*engine_.cylinders, 6),
                    number(m, 6), number(share, 6), number(counted, 6));
    }
    row_.computed = Message(LW_TEXT("%1 power strokes of the whole engine per revolution."),
                            number(counted, 6));
    decide(isAbout(counted, *value), isCounted ? Confidence::high : Confidence::medium);
    row_.overturnedBy = LW_TEXT("Another number of chambers, lobes or strokes per cycle.");
}

void StatementCheck::boost() {
    const bool saysBoosted = row_.statement.holds.value_or(true);
    if (engine_.chargePressure) {
        const bool isBoosted =
            engine_.chargePressure->si > basis_.ambientPressure * (1.0 + roundingOfFigures);
        row_.computed = isBoosted ? LW_TEXT("The supply is above ambient pressure.")
                                  : LW_TEXT("The supply is not above ambient pressure.");
        row_.arithmetic = fmt::format("{}/({}) = {:.4g}", shown(engine_.chargePressure->si, "Pa"),
                                      shown(basis_.ambientPressure, "Pa"),
                                      engine_.chargePressure->si / basis_.ambientPressure);
        decide(isBoosted == saysBoosted, Confidence::high);
        row_.overturnedBy = LW_TEXT("Another supply pressure.");
        return;
    }
    if (const auto supply = own("supply_pressure_bar")) {
        const double ambient = design_->design.gas.supply.ambientPressure / units::bar;
        const bool isBoosted = *supply > ambient * (1.0 + roundingOfFigures);
        row_.computed = isBoosted
                            ? LW_TEXT("The open design is supplied above ambient pressure.")
                            : LW_TEXT("The open design is not supplied above ambient pressure.");
        row_.arithmetic =
            fmt::format("{:.4g} bar/({:.4g} bar) = {:.4g}", *supply, ambient, *supply / ambient);
        decide(isBoosted == saysBoosted, Confidence::medium);
        row_.overturnedBy = LW_TEXT("The supply pressure of the engine as built.");
        return;
    }
    boostFromFigures(saysBoosted);
}

void StatementCheck::boostFromFigures(bool saysBoosted) {
    EngineClass unboosted = engineClass(report_.claims);
    unboosted.charging = Charging::naturallyAspirated;
    bool needsBoost = false, isDoubtful = false, isKnown = false;
    // A speed that is only the lowest possible makes the figures at the power peak upper bounds.
    const bool isUpperBound = basis_.powerSpeedBound == Bound::atMost;
    const auto weigh = [&](BandQuantity quantity, const char* id, TextId what, TextId plain,
                           TextId tuned, TextId beyond) {
        const Finding* finding = report_.finding(id);
        if (finding == nullptr) {
            return;
        }
        const double si = finding->value * bandUnit(quantity).factor;
        const Verdict verdict = judge(quantity, si, unboosted).verdict;
        const bool isBeyond = verdict == Verdict::onlyWithBoost ||
                              verdict == Verdict::outsideBand ||
                              verdict == Verdict::outsideEstimate;
        const TextId verdictText = isBeyond                        ? beyond
                                   : verdict == Verdict::ambitious ? tuned
                                                                   : plain;
        say({LW_TEXT("%1 is %2: %3"), what, withUnit(finding->value, finding->unit, 3),
             verdictText},
            {LW_TEXT("%1 = %2"), finding->substituted, withUnit(finding->value, finding->unit, 4)});
        const bool isBound =
            isUpperBound && id != std::string_view("mean-effective-pressure-at-torque");
        needsBoost = needsBoost || (isBeyond && !isBound);
        isDoubtful = isDoubtful || (isBeyond && isBound);
        isKnown = true;
    };
    constexpr TextId alone = LW_TEXT("engines reach that without boost"),
                     tuned = LW_TEXT("without boost only highly tuned engines reach that"),
                     never = LW_TEXT("more than engines reach without boost");
    weigh(BandQuantity::chargingRatio, "charging-ratio", LW_TEXT("Required charging efficiency"),
          LW_TEXT("a naturally aspirated engine can take that in"),
          LW_TEXT("only engines with tuned pipes take that in without boost"),
          LW_TEXT("more than a naturally aspirated engine takes in"));
    weigh(BandQuantity::meanEffectivePressure, "mean-effective-pressure-at-torque",
          LW_TEXT("Brake mean effective pressure at peak torque"), alone, tuned, never);
    weigh(BandQuantity::meanEffectivePressure, "mean-effective-pressure-at-power",
          LW_TEXT("Brake mean effective pressure at peak power"), alone, tuned, never);
    if (!isKnown) {
        open(LW_TEXT("Neither the charge required nor a mean effective pressure can be computed."),
             LW_TEXT("Power or torque, speed, displacement and cycles per revolution; or the "
                     "supply pressure."));
        return;
    }
    const Finding* ports = report_.finding("charging-ratio-ports");
    if (ports != nullptr && ports->value > 1.0) {
        isDoubtful = true;
        say(Message(
                LW_TEXT(
                    "Delivery ratio %1: more than the displacement, a blower has to deliver it"),
                number(ports->value, 3)),
            Message(LW_TEXT("%1 = %2"), ports->substituted, number(ports->value)));
    }
    if (saysBoosted && !needsBoost) {
        open(Message(LW_TEXT("%1 Boost is not required, but not ruled out."), row_.computed),
             LW_TEXT("The supply pressure."));
        return;
    }
    decide(needsBoost == saysBoosted, Confidence::medium);
    if (isDoubtful && row_.outcome == Outcome::agrees && !saysBoosted) {
        row_.outcome = Outcome::doubtful;
    }
    row_.overturnedBy = Message(LW_TEXT("A brake thermal efficiency other than %1, an excess-air "
                                        "ratio other than %2, or another speed of peak power."),
                                number(basis_.efficiency, 3), number(basis_.airRatio, 3));
}

void StatementCheck::balance() {
    Statement s = row_.statement;
    row_.overturnedBy = LW_TEXT("Masses and exhaust lead as built, weighed and measured.");
    if (design_ != nullptr) { // what the statement does not say, the design does
        const auto& mechanism = design_->pair.mechanism();
        const auto fill = [](std::optional<Amount>& amount, double si) {
            if (!amount) {
                amount.emplace().si = si;
            }
        };
        fill(s.exhaustLead, mechanism.exhaustLead + mechanism.adjuster.setting);
        fill(s.inletMass, mechanism.pistonMass.inlet);
        fill(s.exhaustMass, mechanism.pistonMass.exhaust);
    }
    if (!s.exhaustLead && !(s.inletMass && s.exhaustMass)) {
        open(LW_TEXT(
                 "Opposed pistons cancel only with equal masses, equal tracks and no exhaust lead; "
                 "neither lead nor masses are given."),
             row_.overturnedBy);
        return;
    }
    const double m = design_ != nullptr      ? design_->pair.cyclesPerTurn()
                     : basis_.reciprocations ? basis_.reciprocations->value
                                             : 1.0;
    const double lead = s.exhaustLead ? s.exhaustLead->si : 0.0;
    const double heavier = s.inletMass && s.exhaustMass ? s.exhaustMass->si / s.inletMass->si : 1.0;
    // Two equal waves of order m, one `heavier` and ahead by m·lead.
    const double rest =
        std::sqrt(std::max(0.0, 1.0 + heavier * heavier - 2.0 * heavier * std::cos(m * lead)));
    row_.computed =
        Message(LW_TEXT("%1 % of one inlet-side piston's inertia force of the main order remains "
                        "on the cylinder pair; torque reaction remains in any case."),
                number(100.0 * rest, 3));
    row_.arithmetic = Message(LW_TEXT("√(1 + %1² − 2·%1·cos(%2·%3 rad)) = %4"), number(heavier),
                              number(m), number(lead), number(rest));
    const bool isComplete = s.exhaustLead && s.inletMass && s.exhaustMass;
    const bool balanced = rest < 1e-3;
    const bool saysBalanced = s.holds.value_or(true);
    decide(balanced == saysBalanced, isComplete && basis_.reciprocations && design_ == nullptr
                                         ? Confidence::high
                                         : Confidence::medium);
    if (balanced && !isComplete) {
        row_.outcome = Outcome::open;
    }
}

void StatementCheck::powerStrokes(double times) {
    if (!basis_.cyclesPerTurn) {
        open(LW_TEXT("The cycles per chamber and revolution are not known."),
             LW_TEXT("The cycle, and lobes (or a crank)."));
        return;
    }
    const Derived& c = *basis_.cyclesPerTurn;
    const bool isTwoStroke =
        basis_.cycle.value_or(StrokeCycle::twoStroke) == StrokeCycle::twoStroke;
    struct Reference {
        UsualEngine engine;
        double cycles; ///< per chamber and turn
        TextId said;
    };
    const Reference references[] = {
        {UsualEngine::fourStroke, 0.5,
         LW_TEXT("%1 times the power strokes of a four-stroke on a crank")},
        {UsualEngine::twoStroke, 1.0, LW_TEXT("%1 times those of a two-stroke on a crank")},
        {UsualEngine::crank, isTwoStroke ? 1.0 : 0.5,
         LW_TEXT("%1 times those of the same cycle on a crank")}};
    const auto& asked = row_.statement.usual;
    bool agrees = false;
    for (const Reference& reference : references) {
        const double ratio = c.value / reference.cycles;
        const bool isAsked = !asked || *asked == reference.engine;
        agrees = agrees || (isAsked && isAbout(ratio, times, 0.02));
        say({reference.said, number(ratio)},
            fmt::format("{:.4g}/{:.4g} = {:.4g}", c.value, reference.cycles, ratio));
    }
    decide(agrees, asked && !c.assumed ? Confidence::high : Confidence::medium);
    row_.overturnedBy = asked ? LW_TEXT("Another number of lobes or of power strokes.")
                              : LW_TEXT("Another reference engine: each reading is shown.");
}

void StatementCheck::timesUsual() {
    const Statement& s = row_.statement;
    if (!s.value || !s.measure) {
        open(
            LW_TEXT("The quantity compared with a usual engine and its factor are not both given."),
            LW_TEXT("The quantity and the number."));
        return;
    }
    if (*s.measure == UsualMeasure::powerStrokes) {
        powerStrokes(*s.value);
        return;
    }
    // A usual engine: without boost, of the same ignition; a four-stroke unless it is said which.
    const UsualEngine reference = s.usual.value_or(UsualEngine::fourStroke);
    const StrokeCycle usualCycle = reference == UsualEngine::fourStroke ? StrokeCycle::fourStroke
                                   : reference == UsualEngine::twoStroke
                                       ? StrokeCycle::twoStroke
                                       : basis_.cycle.value_or(StrokeCycle::fourStroke);
    const double usualCycles = usualCycle == StrokeCycle::fourStroke ? 0.5 : 1.0;
    EngineClass usual{usualCycle, engine_.ignition.value_or(Ignition::spark),
                      Charging::naturallyAspirated};
    const bool isTorque = *s.measure == UsualMeasure::torquePerDisplacement;
    const BandQuantity quantity =
        isTorque                                           ? BandQuantity::meanEffectivePressure
        : *s.measure == UsualMeasure::powerPerDisplacement ? BandQuantity::specificPower
        : *s.measure == UsualMeasure::powerPerMass         ? BandQuantity::powerPerMass
                                                           : BandQuantity::efficiency;
    const Finding* found =
        report_.finding(isTorque ? "mean-effective-pressure-at-torque"
                        : quantity == BandQuantity::specificPower ? "specific-power"
                        : quantity == BandQuantity::powerPerMass  ? "power-per-mass"
                        : report_.claims.figures.efficiency       ? "efficiency"
                                                                  : "efficiency-from-consumption");
    if (found == nullptr) {
        open(LW_TEXT("The figure itself cannot be computed."),
             LW_TEXT("The numbers listed as missing."));
        return;
    }
    const Judgement judgement = judge(quantity, 0.0, usual); // the most modest ordinary band
    const BandUnit unit = bandUnit(quantity);
    // Torque a turn and displacement is bmep·c/2π: an engine with more cycles a turn has more of it
    // at the same pressure.
    const double own4 =
        isTorque ? found->value * basis_.cyclesPerTurn->value / usualCycles : found->value;
    const double low = judgement.band->low / unit.factor;
    const double high = judgement.band->high / unit.factor;
    row_.computed = {LW_TEXT("%1 … %2 times a usual engine (%3)."), number(own4 / high, 3),
                     number(own4 / low, 3), judgement.band->what};
    if (isTorque) {
        row_.computed = {LW_TEXT("%1 Per cycle and displacement it is %2 … %3 times."),
                         row_.computed, number(found->value / high, 3),
                         number(found->value / low, 3)};
    }
    row_.arithmetic = fmt::format("{:.5g} {}/({}) = {:.3g} … {:.3g}", own4, unit.symbol,
                                  text(*judgement.band), own4 / high, own4 / low);
    decide(*s.value >= own4 / high * (1.0 - looseness) &&
               *s.value <= own4 / low * (1.0 + looseness),
           Confidence::medium);
    row_.overturnedBy =
        Message(LW_TEXT("Another reference engine than: %1."), describeSource(*judgement.band));
}

void StatementCheck::other() {
    open(LW_TEXT("It contains no number to compare with."),
         LW_TEXT("A figure with its unit and the conditions under which it was measured."));
}

StatementRow checkStatement(const Statement& statement, const ClaimsReport& report,
                            const ClaimBasis& basis, const solution::Solution* design) {
    return StatementCheck(statement, report, basis, design).check();
}

} // namespace lobewright::study
