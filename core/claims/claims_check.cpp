#include "core/claims/claims_check.h"

#include "core/claims/claims_basis.h"
#include "core/claims/claims_keys.h"
#include "core/enum_table.h"

#include <algorithm>
#include <cmath>

LW_TEXTS_OF(Core)

namespace lobewright::study {

namespace {

/// What each number would decide where it is missing, in the order in which it matters.
struct Decision {
    const char* path;
    TextId label;
    bool isMissing;
    TextId decides;
};

} // namespace

TextId name(Confidence confidence) {
    return entryOf<Confidence::low>({LW_TEXT("high"), LW_TEXT("medium"), LW_TEXT("low")},
                                    confidence);
}

TextId name(Outcome outcome) {
    return entryOf<Outcome::open>(
        {LW_TEXT("agrees"), LW_TEXT("disagrees"), LW_TEXT("doubtful"), LW_TEXT("cannot be judged")},
        outcome);
}

const Finding* ClaimsReport::finding(std::string_view id) const {
    const auto found = std::ranges::find(findings, id, &Finding::id);
    return found == findings.end() ? nullptr : &*found;
}

EngineClass engineClass(const Claims& claims) {
    return {claimBasis(claims).cycle, claims.engine.ignition, claims.engine.charging};
}

std::vector<ClaimedPoint> claimedPoints(const Claims& claims) {
    const ClaimedFigures& figures = claims.figures;
    std::vector<ClaimedPoint> points;
    const auto add = [&](TextId label, double speed, double torque) {
        ClaimedPoint& point = points.emplace_back();
        point.label = label;
        point.speed = speed;
        point.torque = torque;
    };
    if (figures.torque && figures.torqueSpeed) {
        add(LW_TEXT("claimed torque"), figures.torqueSpeed->si, figures.torque->si);
    }
    if (figures.power && figures.powerSpeed) {
        add(LW_TEXT("claimed power"), figures.powerSpeed->si,
            figures.power->si / figures.powerSpeed->si);
    } else if (figures.power && figures.torque) {
        add(LW_TEXT("claimed power, lowest speed"), figures.power->si / figures.torque->si,
            figures.torque->si);
    }
    return points;
}

void addMissing(ClaimsReport& report, const ClaimBasis& basis) {
    const ClaimedEngine& engine = report.claims.engine;
    const ClaimedFigures& figures = report.claims.figures;
    const ClaimedConditions& conditions = report.claims.conditions;
    const bool isBoosted =
        engine.charging == Charging::boosted ||
        (engine.chargePressure && engine.chargePressure->si > basis.ambientPressure);
    const bool noCycles = !basis.cyclesPerTurn || basis.cyclesPerTurn->assumed;
    const Decision decisions[] = {
        {"/figures/power", LW_TEXT("Power"), !figures.power,
         LW_TEXT("power per displacement and mass, air and charge needed")},
        {"/figures/power_speed", LW_TEXT("Speed of peak power"), !figures.powerSpeed,
         LW_TEXT("mean effective pressure and charge per cycle at peak power; whether power and "
                 "torque agree")},
        {"/figures/torque", LW_TEXT("Torque"), !figures.torque,
         LW_TEXT("lowest possible speed of peak power; mean effective pressure at peak torque")},
        {"/figures/torque_speed", LW_TEXT("Speed of peak torque"), !figures.torqueSpeed,
         LW_TEXT("whether peak torque times its speed exceeds peak power")},
        {"/engine/displacement", LW_TEXT("Displacement (or bore, stroke and pistons)"),
         !basis.displacement,
         LW_TEXT("mean effective pressure, power per displacement, charging efficiency")},
        {"/engine/cycle", LW_TEXT("Cycle"), !basis.cycle, LW_TEXT("which published bands apply")},
        {"/engine/events_per_turn",
         LW_TEXT("Power strokes per revolution (with the number of chambers)"), noCycles,
         LW_TEXT("cycles per revolution, and with them all pressures and charges in proportion")},
        {"/engine/ignition", LW_TEXT("Ignition"), !engine.ignition,
         LW_TEXT("which published bands apply")},
        {"/engine/charging", LW_TEXT("Supply"), !engine.charging,
         LW_TEXT("whether a high pressure is ambitious or ordinary")},
        {"/engine/stroke", LW_TEXT("Stroke"), !engine.stroke && !figures.pistonSpeed,
         LW_TEXT("mean piston speed")},
        {"/engine/mass", LW_TEXT("Mass"), !engine.mass, LW_TEXT("power per mass")},
        {"/engine/fuel", LW_TEXT("Fuel"), !engine.fuel, LW_TEXT("heating value and air needed")},
        {"/figures/efficiency", LW_TEXT("Brake thermal efficiency or fuel consumption"),
         !figures.efficiency && !figures.fuelConsumption,
         LW_TEXT("air and charge needed, in proportion")},
        {"/figures/air_ratio", LW_TEXT("Excess-air ratio λ"), !figures.airRatio,
         LW_TEXT("air and charge needed, in proportion")},
        {"/engine/charge_pressure", LW_TEXT("Supply pressure"), isBoosted && !engine.chargePressure,
         LW_TEXT("whether the charge required is possible, and what it costs")},
        {"/conditions/supply_power", LW_TEXT("Supply power"), isBoosted && !conditions.supplyPower,
         LW_TEXT("whether the supply power has still to be deducted")},
        {"/conditions/rating", LW_TEXT("Rating (gross or net)"),
         figures.power && !conditions.rating, LW_TEXT("about a tenth of the power")},
        {"/conditions/air_pressure", LW_TEXT("Reference air"),
         figures.power && (!conditions.airPressure || !conditions.airTemperature),
         LW_TEXT("a few per cent of the power: the reference states of the standards differ")},
    };
    for (const Decision& decision : decisions) {
        if (decision.isMissing) {
            report.missing.push_back({decision.path, decision.label, decision.decides});
        }
    }
}

namespace {

/// Lobes that a cam track is read with where their number is not said.
constexpr int readLobes[] = {1, 2};

/// Figures that depend on the number of lobes, which is not said: one value for each, side by side.
void addLobeReadings(ClaimsReport& report, const Claims& claims) {
    std::vector<ClaimsReport> read;
    for (const int lobes : readLobes) {
        ClaimsReport& one = read.emplace_back();
        one.claims = claims;
        one.claims.engine.reciprocations = lobes;
        addFindings(one, claimBasis(one.claims));
    }
    for (Finding& finding : report.findings) {
        std::vector<Reading> readings;
        for (std::size_t i = 0; i < read.size(); ++i) {
            if (const Finding* found = read[i].finding(finding.id)) {
                const int lobes = readLobes[i];
                readings.push_back(
                    {lobes == 1 ? Message(LW_TEXT("1 lobe")) : Message(LW_TEXT("%1 lobes"), lobes),
                     found->value, found->verdict});
            }
        }
        const bool differ =
            readings.size() == read.size() && readings.front().value != readings.back().value;
        if (differ) {
            finding.readings = std::move(readings);
            finding.verdict = finding.readings.front().verdict == finding.readings.back().verdict
                                  ? finding.verdict
                                  : Verdict::computed;
        }
    }
}

double figureOf(const solution::Solution& design, std::string_view name) {
    const auto* figure = design.figure(name);
    return figure != nullptr ? figure->value.value_or(0.0) : 0.0;
}

} // namespace

EngineMatch matchEngine(const Claims& claims, const solution::Solution& design) {
    const ClaimedEngine& engine = claims.engine;
    const auto& pair = design.pair;
    EngineMatch match;
    const auto differ = [&match](const Message& how) {
        match.differs = match.differs.empty() ? how : match.differs;
    };
    if (engine.cycle.value_or(StrokeCycle::twoStroke) != StrokeCycle::twoStroke) {
        differ(LW_TEXT("it is a two-stroke"));
    }
    if (engine.drive.value_or(Drive::camTrack) != Drive::camTrack) {
        differ(LW_TEXT("it has cam tracks"));
    }
    const auto compare = [&](TextId what, const Unit& unit, std::optional<double> claimed,
                             double own) {
        if (!claimed) {
            return;
        }
        ++match.compared;
        if (std::abs(*claimed - own) > 2.0 * roundingOfFigures * own) {
            differ({LW_TEXT("%1 %2, published %3"), what, lobewright::Amount(own, unit),
                    lobewright::Amount(*claimed, unit)});
        }
    };
    const auto si = [](const std::optional<Amount>& amount) {
        return amount ? std::optional(amount->si) : std::nullopt;
    };
    const int cycles = pair.cyclesPerTurn();
    compare(LW_TEXT("cylinders"), in::pure, engine.cylinders, pair.mechanism().cylinders);
    compare(LW_TEXT("lobes"), in::pure, engine.reciprocations, cycles);
    compare(LW_TEXT("power strokes per revolution"), in::pure, engine.eventsPerTurn,
            pair.mechanism().cylinders * cycles);
    compare(LW_TEXT("displacement"), in::cm3, si(engine.displacement),
            1e-6 * figureOf(design, "displacement_cm3"));
    compare(LW_TEXT("bore"), in::mm, si(engine.bore), pair.mechanism().bore);
    compare(LW_TEXT("stroke"), in::mm, si(engine.stroke), pair.curve(End::inlet).stroke());
    return match;
}

bool isSameEngine(const Claims& claims, const solution::Solution& design) {
    const EngineMatch match = matchEngine(claims, design);
    return match.differs.empty() && match.compared >= 2;
}

ClaimsReport reportOn(const Claims& claims, const solution::Solution* sameEngine) {
    const ClaimBasis basis = claimBasis(claims);
    ClaimsReport report;
    report.claims = claims;
    report.assumptions = basis.assumptions;
    if (sameEngine != nullptr) {
        report.assumptions.emplace_back(
            LW_TEXT("The open design is the engine claimed: no number given for it differs."));
    }
    addFindings(report, basis);
    if (basis.cyclesPerTurn && basis.cyclesPerTurn->assumed) {
        addLobeReadings(report, claims);
    }
    addConflicts(report, basis);
    addMissing(report, basis);
    for (const Statement& statement : claims.statements) {
        report.statements.push_back(checkStatement(statement, report, basis, sameEngine));
    }
    return report;
}

ClaimsReport checkClaims(const Claims& claims, const solution::Solution* design) {
    const bool isSame = design != nullptr && isSameEngine(claims, *design);
    return reportOn(claims, isSame ? design : nullptr);
}

} // namespace lobewright::study
