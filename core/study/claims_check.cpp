#include "core/study/claims_check.h"

#include "core/study/claims_basis.h"
#include "core/study/claims_keys.h"

#include <fmt/format.h>

#include <algorithm>
#include <cassert>
#include <cmath>

namespace lobewright::study {

namespace {

/// What each number would decide where it is missing, in the order in which it matters.
struct Decision {
    const char* path;
    const char* label;
    bool isMissing;
    const char* decides;
};

} // namespace

std::string_view name(Confidence confidence) {
    switch (confidence) {
    case Confidence::high:
        return "high";
    case Confidence::medium:
        return "medium";
    case Confidence::low:
        return "low";
    }
    assert(false);
    return "";
}

std::string_view name(Outcome outcome) {
    switch (outcome) {
    case Outcome::agrees:
        return "agrees";
    case Outcome::disagrees:
        return "disagrees";
    case Outcome::doubtful:
        return "doubtful";
    case Outcome::open:
        return "cannot be judged";
    }
    assert(false);
    return "";
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
    const auto add = [&](std::string label, double speed, double torque) {
        ClaimedPoint& point = points.emplace_back();
        point.label = std::move(label);
        point.speed = speed;
        point.torque = torque;
    };
    if (figures.torque && figures.torqueSpeed) {
        add("claimed torque", figures.torqueSpeed->si, figures.torque->si);
    }
    if (figures.power && figures.powerSpeed) {
        add("claimed power", figures.powerSpeed->si, figures.power->si / figures.powerSpeed->si);
    } else if (figures.power && figures.torque) {
        add("claimed power, lowest speed", figures.power->si / figures.torque->si,
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
        {"/figures/power", "Power", !figures.power,
         "power per displacement and mass, air and charge needed"},
        {"/figures/power_speed", "Speed of highest power", !figures.powerSpeed,
         "mean effective pressure and charge a cycle at the power peak; whether power and torque "
         "agree"},
        {"/figures/torque", "Torque", !figures.torque,
         "lowest possible speed of highest power; mean effective pressure at the torque peak"},
        {"/figures/torque_speed", "Speed of highest torque", !figures.torqueSpeed,
         "whether the torque peak alone exceeds the highest power"},
        {"/engine/displacement", "Displacement (or bore, stroke and pistons)", !basis.displacement,
         "mean effective pressure, power per displacement, charging ratio"},
        {"/engine/cycle", "Cycle", !basis.cycle, "which published bands apply"},
        {"/engine/events_per_turn", "Power strokes per turn (with the number of chambers)",
         noCycles, "cycles per turn, and with them every pressure and charge in proportion"},
        {"/engine/ignition", "Ignition", !engine.ignition, "which published bands apply"},
        {"/engine/charging", "Charging", !engine.charging,
         "whether a high pressure is ambitious or ordinary"},
        {"/engine/stroke", "Stroke", !engine.stroke && !figures.pistonSpeed, "mean piston speed"},
        {"/engine/mass", "Mass", !engine.mass, "power per mass"},
        {"/engine/fuel", "Fuel", !engine.fuel, "heating value and air needed"},
        {"/figures/efficiency", "Brake efficiency or fuel consumption",
         !figures.efficiency && !figures.fuelConsumption, "air and charge needed, in proportion"},
        {"/figures/air_ratio", "Air ratio λ", !figures.airRatio,
         "air and charge needed, in proportion"},
        {"/engine/charge_pressure", "Charge pressure", isBoosted && !engine.chargePressure,
         "whether the charge needed can be had, and what it costs"},
        {"/conditions/supply_power", "Supply power", isBoosted && !conditions.supplyPower,
         "whether the power that charges the engine is still to be deducted"},
        {"/conditions/rating", "Rating (gross or net)", figures.power && !conditions.rating,
         "about a tenth of the power"},
        {"/conditions/air_pressure", "Reference air",
         figures.power && (!conditions.airPressure || !conditions.airTemperature),
         "a few per cent of the power: the standards' reference states differ"},
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
                readings.push_back({lobes == 1 ? "1 lobe" : fmt::format("{} lobes", lobes),
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

bool isSameEngine(const Claims& claims, const solution::Solution& design) {
    const ClaimedEngine& engine = claims.engine;
    const auto& pair = design.pair;
    int compared = 0;
    bool isSame = engine.cycle.value_or(StrokeCycle::twoStroke) == StrokeCycle::twoStroke &&
                  engine.drive.value_or(Drive::camTrack) == Drive::camTrack;
    const auto compare = [&](std::optional<double> claimed, double own) {
        if (claimed) {
            ++compared;
            isSame = isSame && std::abs(*claimed - own) <= 2.0 * roundingOfFigures * own;
        }
    };
    const auto si = [](const std::optional<Amount>& amount) {
        return amount ? std::optional(amount->si) : std::nullopt;
    };
    compare(engine.cylinders, pair.mechanism().cylinders);
    compare(engine.reciprocations, pair.cyclesPerTurn());
    compare(engine.eventsPerTurn, pair.mechanism().cylinders * pair.cyclesPerTurn());
    compare(si(engine.displacement), 1e-6 * figureOf(design, "displacement_cm3"));
    compare(si(engine.bore), pair.mechanism().bore);
    compare(si(engine.stroke), pair.curve(End::inlet).stroke());
    return isSame && compared >= 2;
}

ClaimsReport checkClaims(const Claims& claims, const solution::Solution* design) {
    const ClaimBasis basis = claimBasis(claims);
    ClaimsReport report;
    report.claims = claims;
    report.assumptions = basis.assumptions;
    const bool isSame = design != nullptr && isSameEngine(claims, *design);
    if (isSame) {
        report.assumptions.emplace_back(
            "The open design is the engine claimed: no number given for it differs.");
    }
    addFindings(report, basis);
    if (basis.cyclesPerTurn && basis.cyclesPerTurn->assumed) {
        addLobeReadings(report, claims);
    }
    addConflicts(report, basis);
    addMissing(report, basis);
    for (const Statement& statement : claims.statements) {
        report.statements.push_back(
            checkStatement(statement, report, basis, isSame ? design : nullptr));
    }
    return report;
}

} // namespace lobewright::study
