#include "core/claims/claims_keys.h"

#include "core/gas/models/fuel.h"
#include "core/units.h"

#include <fmt/format.h>

#include <algorithm>

LW_TEXTS_OF(Core)

namespace lobewright::study {

namespace {

template <class Group>
ClaimKey<Group> amountKey(std::string_view name, TextId label, Dimension dimension,
                          std::optional<Amount> Group::*member, TextId help) {
    ClaimKey<Group> key{name, label, help};
    key.kind = ClaimKey<Group>::Kind::amount;
    key.dimension = dimension;
    key.amount = member;
    return key;
}

template <class Group>
ClaimKey<Group> countKey(std::string_view name, TextId label, double least,
                         std::optional<double> Group::*member, TextId help) {
    ClaimKey<Group> key{name, label, help};
    key.kind = ClaimKey<Group>::Kind::count;
    key.least = least;
    key.most = 1e6;
    key.count = member;
    return key;
}

template <class Group>
ClaimKey<Group> within(ClaimKey<Group> key, double least, double most) {
    key.least = least;
    key.most = most;
    return key;
}

template <class Group>
ClaimKey<Group> whole(ClaimKey<Group> key) {
    key.whole = true;
    return key;
}

template <class Group>
ClaimKey<Group> flagKey(std::string_view name, TextId label, std::optional<bool> Group::*member,
                        TextId help) {
    ClaimKey<Group> key{name, label, help};
    key.kind = ClaimKey<Group>::Kind::flag;
    key.flag = member;
    return key;
}

template <class Group>
ClaimKey<Group> textKey(std::string_view name, TextId label, std::string Group::*member,
                        TextId help) {
    ClaimKey<Group> key{name, label, help};
    key.kind = ClaimKey<Group>::Kind::text;
    key.text = member;
    return key;
}

template <class Group>
// Moved on, which the check does not see in a template.
// NOLINTNEXTLINE(performance-unnecessary-value-param)
void setWords(ClaimKey<Group>& key, std::vector<ClaimWord> words) {
    key.kind = ClaimKey<Group>::Kind::choice;
    key.words = std::move(words);
}

/// Words in the order of the enumerators.
template <class Group, class E>
ClaimKey<Group> choiceKey(std::string_view name, TextId label, std::vector<ClaimWord> words,
                          std::optional<E> Group::*member, TextId help) {
    ClaimKey<Group> key{name, label, help};
    setWords(key, std::move(words));
    key.chosen = [member](const Group& group) -> std::optional<std::size_t> {
        const auto& value = group.*member;
        return value ? std::optional(static_cast<std::size_t>(*value)) : std::nullopt;
    };
    key.choose = [member](Group& group, std::optional<std::size_t> index) {
        group.*member = index ? std::optional(static_cast<E>(*index)) : std::nullopt;
    };
    return key;
}

ClaimKey<Statement> kindKey() {
    ClaimKey<Statement> key{"kind", LW_TEXT("Type"),
                            LW_TEXT("What the statement is about; decides what is computed.")};
    setWords(key,
             {{"strokes", LW_TEXT("number of strokes per cycle")},
              {"events-per-chamber-and-turn", LW_TEXT("power strokes per chamber and revolution")},
              {"events-per-turn", LW_TEXT("power strokes of the engine per revolution")},
              {"boosted", LW_TEXT("boosted or not")},
              {"balanced", LW_TEXT("perfectly balanced")},
              {"times-usual", LW_TEXT("a multiple of a usual engine")},
              {"other", LW_TEXT("something else")},
              {"firing-interval", LW_TEXT("firing interval")},
              {"compression-range", LW_TEXT("range of the compression ratio")},
              {"size", LW_TEXT("size")},
              {"friction", LW_TEXT("friction compared with a usual engine")},
              {"low-speed-torque", LW_TEXT("torque at low speed")},
              {"oil-consumption", LW_TEXT("oil consumption")}});
    key.chosen = [](const Statement& statement) {
        return std::optional(static_cast<std::size_t>(statement.kind));
    };
    key.choose = [](Statement& statement, std::optional<std::size_t> index) {
        statement.kind = index ? static_cast<StatementKind>(*index) : StatementKind::other;
    };
    return key;
}

template <class Group>
void clear(const ClaimKey<Group>& key, Group& group) {
    if (key.amount) {
        (group.*key.amount).reset();
    }
    if (key.count) {
        (group.*key.count).reset();
    }
    if (key.choose) {
        key.choose(group, std::nullopt);
    }
}

std::vector<ClaimWord> fuelWords() {
    std::vector<ClaimWord> words;
    for (const gas::FuelData& fuel : gas::allFuels()) {
        words.push_back({fuel.name, fuel.word});
    }
    return words;
}

std::vector<ClaimKey<ClaimedEngine>> makeEngineKeys() {
    using E = ClaimedEngine;
    using enum Dimension;
    return {
        choiceKey<E>(
            "cycle", LW_TEXT("Cycle"),
            {{"two-stroke", LW_TEXT("two-stroke")}, {"four-stroke", LW_TEXT("four-stroke")}},
            &E::cycle, LW_TEXT("Piston strokes per cycle.")),
        choiceKey<E>("ignition", LW_TEXT("Ignition"),
                     {{"spark", LW_TEXT("spark ignition")},
                      {"compression", LW_TEXT("compression ignition")}},
                     &E::ignition, LW_TEXT("Determines which published bands apply.")),
        choiceKey<E>("charging", LW_TEXT("Supply"),
                     {{"naturally-aspirated", LW_TEXT("naturally aspirated")},
                      {"boosted", LW_TEXT("boosted")}},
                     &E::charging,
                     LW_TEXT("Boosted: supplied above ambient pressure, by whatever means.")),
        choiceKey<E>(
            "drive", LW_TEXT("Drive"),
            {{"crank", LW_TEXT("crank")}, {"cam-track", LW_TEXT("cam track")}}, &E::drive,
            LW_TEXT(
                "A crank makes one reciprocation per revolution, a cam track one for each lobe.")),
        whole(countKey<E>("cylinders", LW_TEXT("Chambers"), 1.0, &E::cylinders,
                          LW_TEXT("Working chambers; two opposed pistons share one."))),
        whole(countKey<E>("pistons", LW_TEXT("Pistons"), 1.0, &E::pistons,
                          LW_TEXT("Pistons of all chambers together."))),
        countKey<E>("events_per_turn", LW_TEXT("Power strokes per revolution"), 0.01,
                    &E::eventsPerTurn,
                    LW_TEXT("Of the whole engine, per revolution of the output shaft.")),
        countKey<E>("reciprocations_per_turn", LW_TEXT("Reciprocations per revolution"), 0.01,
                    &E::reciprocations,
                    LW_TEXT("Of one piston, per shaft revolution: the number of lobes of a cam "
                            "track; 1 for a crank.")),
        choiceKey<E>("fuel", LW_TEXT("Fuel"), fuelWords(), &E::fuel,
                     LW_TEXT("Sets the heating value and the air required.")),
        amountKey<E>("displacement", LW_TEXT("Displacement"), volume, &E::displacement,
                     LW_TEXT("Swept volume of the whole engine, each chamber counted once.")),
        amountKey<E>("bore", LW_TEXT("Bore"), length, &E::bore, LW_TEXT("Cylinder diameter.")),
        amountKey<E>("stroke", LW_TEXT("Stroke"), length, &E::stroke, LW_TEXT("Of one piston.")),
        amountKey<E>("mass", LW_TEXT("Mass"), mass, &E::mass,
                     LW_TEXT("Of the engine; say in the notes which accessories are included.")),
        within(countKey<E>("compression_ratio", LW_TEXT("Compression ratio"), 1.01,
                           &E::compressionRatio,
                           LW_TEXT("Geometric; the lower one where two are published.")),
               1.01, 60.0),
        within(countKey<E>("highest_compression_ratio", LW_TEXT("Highest compression ratio"), 1.01,
                           &E::highestCompressionRatio,
                           LW_TEXT("Where the compression can be adjusted: the other end.")),
               1.01, 60.0),
        amountKey<E>("diameter", LW_TEXT("Outer diameter"), length, &E::diameter,
                     LW_TEXT("Overall, of the whole engine.")),
        amountKey<E>("length", LW_TEXT("Length"), length, &E::length,
                     LW_TEXT("Overall, of the whole engine.")),
        amountKey<E>("charge_pressure", LW_TEXT("Supply pressure"), pressure, &E::chargePressure,
                     LW_TEXT("Absolute, upstream of ports or valves.")),
    };
}

std::vector<ClaimKey<ClaimedFigures>> makeFigureKeys() {
    using F = ClaimedFigures;
    using enum Dimension;
    return {
        amountKey<F>("power", LW_TEXT("Power"), power, &F::power, LW_TEXT("Maximum brake power.")),
        amountKey<F>("power_speed", LW_TEXT("Speed of peak power"), speed, &F::powerSpeed, {}),
        amountKey<F>("torque", LW_TEXT("Torque"), torque, &F::torque,
                     LW_TEXT("Maximum brake torque.")),
        amountKey<F>("torque_speed", LW_TEXT("Speed of peak torque"), speed, &F::torqueSpeed, {}),
        amountKey<F>("maximum_speed", LW_TEXT("Highest speed"), speed, &F::maximumSpeed, {}),
        amountKey<F>("mean_effective_pressure", LW_TEXT("Brake mean effective pressure"), pressure,
                     &F::meanPressure, LW_TEXT("Maximum brake mean effective pressure.")),
        amountKey<F>("mean_piston_speed", LW_TEXT("Mean piston speed"), velocity, &F::pistonSpeed,
                     LW_TEXT("At the highest speed given.")),
        amountKey<F>("efficiency", LW_TEXT("Brake thermal efficiency"), fraction, &F::efficiency,
                     LW_TEXT("Brake power divided by fuel mass flow and lower heating value.")),
        amountKey<F>("fuel_consumption", LW_TEXT("Brake specific fuel consumption"),
                     fuelConsumption, &F::fuelConsumption, {}),
        amountKey<F>("friction_pressure", LW_TEXT("Friction mean effective pressure"), pressure,
                     &F::frictionPressure, LW_TEXT("Assumed from a fit where it is not given.")),
        amountKey<F>(
            "air_ratio", LW_TEXT("Excess-air ratio λ"), fraction, &F::airRatio,
            LW_TEXT("Air divided by stoichiometric air; 1 is assumed where it is not given.")),
    };
}

std::vector<ClaimKey<ClaimedConditions>> makeConditionKeys() {
    using C = ClaimedConditions;
    using enum Dimension;
    return {
        choiceKey<C>(
            "rating", LW_TEXT("Rating"), {{"net", LW_TEXT("net")}, {"gross", LW_TEXT("gross")}},
            &C::rating,
            LW_TEXT("Net: with all auxiliaries of its use on [ISO 1585]; gross: without.")),
        choiceKey<C>("supply_power", LW_TEXT("Supply power"),
                     {{"included", LW_TEXT("deducted")}, {"not-counted", LW_TEXT("not counted")}},
                     &C::supplyPower, LW_TEXT("Whether the supply power is deducted.")),
        amountKey<C>("air_pressure", LW_TEXT("Air pressure"), pressure, &C::airPressure,
                     LW_TEXT("Of the air to which the power refers, absolute.")),
        amountKey<C>("air_temperature", LW_TEXT("Air temperature"), temperature, &C::airTemperature,
                     LW_TEXT("Of the air to which the power refers.")),
        within(
            amountKey<C>("relative_humidity", LW_TEXT("Relative humidity"), fraction,
                         &C::relativeHumidity,
                         LW_TEXT("Of the air to which the power refers; 0 where it is not given.")),
            0.0, 1.0),
        choiceKey<C>("charger", LW_TEXT("Compressor or blower"),
                     {{"none", LW_TEXT("none")},
                      {"mechanical", LW_TEXT("driven by the engine")},
                      {"turbo", LW_TEXT("turbocharger")},
                      {"turbo-after-cooled", LW_TEXT("turbocharger with liquid after-cooler")}},
                     &C::charger,
                     LW_TEXT("Determines the correction of a compression-ignition engine.")),
    };
}

/// A key that statements of some kinds only have.
ClaimKey<Statement> only(std::vector<StatementKind> kinds, ClaimKey<Statement> key) {
    key.kinds = std::move(kinds);
    return key;
}

std::vector<ClaimKey<Statement>> makeStatementKeys() {
    using S = Statement;
    using enum StatementKind;
    using Dimension::angle, Dimension::mass, Dimension::fuelConsumption;
    return {
        textKey<S>("claim", LW_TEXT("Claim"), &S::claim, LW_TEXT("In the words of the source.")),
        textKey<S>("source", LW_TEXT("Source"), &S::source, LW_TEXT("Page, table or paragraph.")),
        textKey<S>("date", LW_TEXT("Date"), &S::date, LW_TEXT("When it was published or read.")),
        kindKey(),
        only({strokes, eventsPerChamberAndTurn, eventsPerTurn, timesUsual, friction},
             countKey<S>("value", LW_TEXT("Value"), 0.0, &S::value,
                         LW_TEXT("Number of strokes, of events or of repetitions."))),
        only({boosted, balanced},
             flagKey<S>("holds", LW_TEXT("Claimed"), &S::holds,
                        LW_TEXT("What is claimed: boosted, balanced and the like."))),
        only({timesUsual},
             choiceKey<S>("measure", LW_TEXT("Quantity"),
                          {{"power-per-displacement", LW_TEXT("power per displacement")},
                           {"torque-per-displacement", LW_TEXT("torque per displacement")},
                           {"power-per-mass", LW_TEXT("power per mass")},
                           {"efficiency", LW_TEXT("efficiency")},
                           {"power-strokes", LW_TEXT("power strokes per chamber and revolution")}},
                          &S::measure, LW_TEXT("The quantity compared with a usual engine."))),
        only({timesUsual},
             choiceKey<S>("usual_engine", LW_TEXT("Reference engine"),
                          {{"four-stroke", LW_TEXT("four-stroke on a crank")},
                           {"two-stroke", LW_TEXT("two-stroke on a crank")},
                           {"crank", LW_TEXT("the same cycle on a crank")}},
                          &S::usual,
                          LW_TEXT("Which engine the usual one is; every reading is shown "
                                  "where it is not said."))),
        only({balanced},
             within(amountKey<S>("exhaust_lead", LW_TEXT("Exhaust lead"), angle, &S::exhaustLead,
                                 LW_TEXT("Shaft angle by which the exhaust piston is ahead.")),
                    -units::pi, units::pi)),
        only({balanced}, amountKey<S>("inlet_piston_mass", LW_TEXT("Mass of an inlet-side piston"),
                                      mass, &S::inletMass, {})),
        only({balanced},
             amountKey<S>("exhaust_piston_mass", LW_TEXT("Mass of an exhaust-side piston"), mass,
                          &S::exhaustMass, {})),
        only({firingInterval},
             within(amountKey<S>("interval", LW_TEXT("Firing interval"), angle, &S::interval,
                                 LW_TEXT("Shaft angle from one firing to the next.")),
                    1e-3, 4.0 * units::pi)),
        only({compressionRange}, countKey<S>("lowest_ratio", LW_TEXT("Lowest compression ratio"),
                                             1.01, &S::lowRatio, LW_TEXT("Of the range."))),
        only({compressionRange}, countKey<S>("highest_ratio", LW_TEXT("Highest compression ratio"),
                                             1.01, &S::highRatio, LW_TEXT("Of the range."))),
        only({size}, amountKey<S>("length", LW_TEXT("Length"), Dimension::length, &S::length,
                                  LW_TEXT("Overall."))),
        only({size}, amountKey<S>("diameter", LW_TEXT("Diameter"), Dimension::length, &S::diameter,
                                  LW_TEXT("Overall."))),
        only({lowSpeedTorque}, amountKey<S>("torque", LW_TEXT("Torque"), Dimension::torque,
                                            &S::torque, LW_TEXT("At the speed below."))),
        only({lowSpeedTorque},
             amountKey<S>("speed", LW_TEXT("Speed"), Dimension::speed, &S::speed, {})),
        only({oilConsumption},
             amountKey<S>("oil_consumption", LW_TEXT("Oil consumption"), fuelConsumption,
                          &S::oilConsumption, LW_TEXT("Mass of oil per brake work."))),
    };
}

} // namespace

std::span<const ClaimKey<Claims>> claimHeadKeys() {
    static const std::vector<ClaimKey<Claims>> keys = {
        textKey<Claims>("title", LW_TEXT("Title"), &Claims::title, {}),
        textKey<Claims>("source", LW_TEXT("Source"), &Claims::source,
                        LW_TEXT("Publication that the figures are taken from.")),
        textKey<Claims>("date", LW_TEXT("Date"), &Claims::date,
                        LW_TEXT("Publication of the source.")),
        textKey<Claims>("notes", LW_TEXT("Notes"), &Claims::notes, {}),
    };
    return keys;
}

std::span<const ClaimKey<ClaimedEngine>> claimEngineKeys() {
    static const auto keys = makeEngineKeys();
    return keys;
}

std::span<const ClaimKey<ClaimedFigures>> claimFigureKeys() {
    static const auto keys = makeFigureKeys();
    return keys;
}

std::span<const ClaimKey<ClaimedConditions>> claimConditionKeys() {
    static const auto keys = makeConditionKeys();
    return keys;
}

std::span<const ClaimKey<Statement>> statementKeys() {
    static const auto keys = makeStatementKeys();
    return keys;
}

Claims without(Claims claims, std::string_view path) {
    withKey(claims, path, [](const auto& key, auto& group) { clear(key, group); });
    return claims;
}

TextId claimLabel(std::string_view path) {
    TextId label;
    const Claims none;
    withKey(none, path, [&label](const auto& key, const auto&) { label = key.label; });
    return label;
}

bool belongsTo(const ClaimKey<Statement>& key, StatementKind kind) {
    return key.kinds.empty() || std::ranges::find(key.kinds, kind) != key.kinds.end();
}

} // namespace lobewright::study
