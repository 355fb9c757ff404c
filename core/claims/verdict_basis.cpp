#include "core/claims/claims_basis.h"
#include "core/claims/claims_keys.h"
#include "core/claims/verdict_rows.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>

LW_TEXTS_OF(Core)

/// What a row rests on is found by trying: a published number is taken away, a missing one is put
/// in, and the rows that change rest on it.
namespace lobewright::study {

namespace {

using units::revPerMinute;

/// How a missing number is tried: with a value that no assumption of the check has, so that a row
/// which assumed another changes.
struct Trial {
    std::string_view path;
    bool isAssumed; ///< the check takes a value for granted where it is missing
    void (*put)(const ClaimBasis&, Claims&);
};
constexpr Trial trials[] = {
    {"/figures/power", false,
     [](const ClaimBasis&, Claims& claims) { claims.figures.power = amount(37.0, "kW"); }},
    {"/figures/power_speed", true,
     [](const ClaimBasis& basis, Claims& claims) {
         constexpr double notTheBound = 1.17;
         const double speed =
             basis.powerSpeed ? notTheBound * basis.powerSpeed->value / revPerMinute : 2300.0;
         claims.figures.powerSpeed = amount(speed, "rpm");
     }},
    {"/figures/torque", false,
     [](const ClaimBasis&, Claims& claims) { claims.figures.torque = amount(163.0, "N·m"); }},
    {"/figures/torque_speed", false,
     [](const ClaimBasis&, Claims& claims) { claims.figures.torqueSpeed = amount(1430.0, "rpm"); }},
    {"/engine/displacement", false,
     [](const ClaimBasis&, Claims& claims) { claims.engine.displacement = amount(1.13, "L"); }},
    {"/engine/cycle", true,
     [](const ClaimBasis&, Claims& claims) { claims.engine.cycle = StrokeCycle::twoStroke; }},
    {"/engine/events_per_turn", true,
     [](const ClaimBasis&, Claims& claims) {
         claims.engine.cylinders = claims.engine.cylinders.value_or(1.0);
         claims.engine.eventsPerTurn = 3.0 * *claims.engine.cylinders;
     }},
    {"/engine/ignition", true,
     [](const ClaimBasis&, Claims& claims) { claims.engine.ignition = Ignition::compression; }},
    {"/engine/charging", true,
     [](const ClaimBasis&, Claims& claims) { claims.engine.charging = Charging::boosted; }},
    {"/engine/stroke", false,
     [](const ClaimBasis&, Claims& claims) { claims.engine.stroke = amount(71.0, "mm"); }},
    {"/engine/mass", false,
     [](const ClaimBasis&, Claims& claims) { claims.engine.mass = amount(67.0, "kg"); }},
    {"/engine/fuel", true,
     [](const ClaimBasis&, Claims& claims) { claims.engine.fuel = gas::Fuel::ethanol; }},
    {"/figures/efficiency", true,
     [](const ClaimBasis&, Claims& claims) { claims.figures.efficiency = amount(27.0, "%"); }},
    {"/figures/air_ratio", true,
     [](const ClaimBasis&, Claims& claims) { claims.figures.airRatio = amount(1.21, ""); }},
    {"/engine/charge_pressure", false,
     [](const ClaimBasis& basis, Claims& claims) {
         claims.engine.chargePressure = amount(1.7 * basis.ambientPressure / units::bar, "bar");
     }},
    {"/conditions/supply_power", false,
     [](const ClaimBasis&, Claims& claims) {
         claims.conditions.supplyPower = SupplyPower::notCounted;
     }},
    {"/conditions/rating", false,
     [](const ClaimBasis&, Claims& claims) { claims.conditions.rating = Rating::gross; }},
    {"/conditions/air_pressure", true,
     [](const ClaimBasis&, Claims& claims) {
         claims.conditions.airPressure = amount(0.93, "bar");
         claims.conditions.airTemperature = amount(303.0, "K");
     }},
};

const VerdictRow* rowOf(const std::vector<VerdictRow>& rows, std::string_view id) {
    const auto found = std::ranges::find(rows, id, &VerdictRow::id);
    return found == rows.end() ? nullptr : &*found;
}

bool isSilent(const VerdictRow& row) {
    return row.outcome == RowOutcome::open || row.arithmetic.text.empty();
}

/// The deciding formula of one row among those of another.
const RowWorking* sameWorking(const VerdictRow& row, const RowWorking& wanted) {
    const auto found = std::ranges::find_if(row.workings, [&wanted](const RowWorking& working) {
        return working.quantity.text == wanted.quantity.text;
    });
    return found == row.workings.end() ? nullptr : &*found;
}

/// Whether what decides the row came out otherwise; other formulas beside it do not count.
bool hasChanged(const VerdictRow& before, const VerdictRow* after) {
    if (after == nullptr) {
        return true;
    }
    if (isSilent(before) || before.workings.empty()) {
        return false;
    }
    const RowWorking& decisive = before.workings.front();
    const RowWorking* same = sameWorking(*after, decisive);
    return same == nullptr || !(same->arithmetic == decisive.arithmetic) ||
           !(same->verdict == decisive.verdict) ||
           (before.isQuoted && before.outcome != after->outcome);
}

/// The published numbers of the three groups.
std::vector<std::pair<std::string, TextId>> givenKeys(const Claims& claims) {
    std::vector<std::pair<std::string, TextId>> given;
    forEachGroup([&](std::string_view group, const auto& keys, auto) {
        for (const auto& key : keys) {
            const std::string path = fmt::format("/{}/{}", group, key.name);
            if (!publishedText(claims, path).empty()) {
                given.emplace_back(path, key.label);
            }
        }
    });
    return given;
}

Message listed(const std::vector<TextId>& labels) {
    Message all;
    for (const TextId label : labels) {
        all = all.empty() ? Message(label) : Message(LW_TEXT("%1, %2"), all, label);
    }
    return all;
}

/// What would change the outcome of a figure, from what it rests on.
Message overturnedBy(const VerdictRow& row) {
    if (isSilent(row)) {
        return LW_TEXT("The numbers listed as missing.");
    }
    if (!row.assumed.empty()) {
        return {LW_TEXT("Other values than were assumed: %1."), listed(row.assumed)};
    }
    const bool isBanded = !row.workings.empty() && !row.workings.front().band.empty();
    if (isBanded && row.outcome <= RowOutcome::ambitious) {
        return {LW_TEXT("Measured engines of this class that ordinarily reach %1."),
                row.workings.front().value};
    }
    return {LW_TEXT("Another published value: %1."), listed(row.given)};
}

} // namespace

void addBasis(VerdictPage& page, const solution::Solution* design) {
    const Claims& claims = page.report.claims;
    for (const auto& [path, label] : givenKeys(claims)) {
        const auto rows = arithmeticRows(reportOn(without(claims, path), design));
        for (VerdictRow& row : page.rows) {
            const bool isNamed = std::ranges::find(row.given, label) != row.given.end();
            const bool isConflict = row.id.starts_with("conflict/");
            if (!isConflict && !isNamed && !isSilent(row) && hasChanged(row, rowOf(rows, row.id))) {
                row.given.push_back(label);
            }
        }
    }
    const ClaimBasis basis = claimBasis(claims);
    for (const MissingNumber& missing : page.report.missing) {
        const auto* trial = std::ranges::find(trials, missing.path, &Trial::path);
        if (trial == std::end(trials)) {
            continue;
        }
        Claims tried = claims;
        trial->put(basis, tried);
        const auto rows = arithmeticRows(reportOn(tried, design));
        WantedNumber wanted{missing.path, missing.label, missing.decides, {}};
        for (VerdictRow& row : page.rows) {
            const VerdictRow* after = rowOf(rows, row.id);
            const bool isDecided = isSilent(row) && after != nullptr && !isSilent(*after);
            const bool wasAssumed = trial->isAssumed && hasChanged(row, after);
            if (wasAssumed) {
                row.assumed.push_back(missing.label);
            }
            if (isDecided || wasAssumed) {
                wanted.rows.push_back(row.id);
            }
        }
        page.wanted.push_back(std::move(wanted));
    }
    std::ranges::stable_sort(page.wanted, std::greater<>(),
                             [](const WantedNumber& wanted) { return wanted.rows.size(); });
    for (VerdictRow& row : page.rows) {
        if (row.isQuoted && row.given.empty() && !isSilent(row)) {
            row.given.push_back(LW_TEXT("the statement's own numbers"));
        }
        if (row.overturnedBy.empty()) {
            row.overturnedBy = overturnedBy(row);
        }
    }
}

} // namespace lobewright::study
