#include "core/study/claims_keys.h"

#include "core/units.h"

#include <algorithm>

namespace lobewright::study {

namespace {

template <class Group>
ClaimKey<Group> amountKey(std::string_view name, std::string_view label, Dimension dimension,
                          std::optional<Amount> Group::*member, std::string_view help) {
    ClaimKey<Group> key{name, label, help};
    key.kind = ClaimKey<Group>::Kind::amount;
    key.dimension = dimension;
    key.amount = member;
    return key;
}

template <class Group>
ClaimKey<Group> countKey(std::string_view name, std::string_view label, double least,
                         std::optional<double> Group::*member, std::string_view help) {
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
ClaimKey<Group> flagKey(std::string_view name, std::string_view label,
                        std::optional<bool> Group::*member, std::string_view help) {
    ClaimKey<Group> key{name, label, help};
    key.kind = ClaimKey<Group>::Kind::flag;
    key.flag = member;
    return key;
}

template <class Group>
ClaimKey<Group> textKey(std::string_view name, std::string_view label, std::string Group::*member,
                        std::string_view help) {
    ClaimKey<Group> key{name, label, help};
    key.kind = ClaimKey<Group>::Kind::text;
    key.text = member;
    return key;
}

template <class Group>
void setWords(ClaimKey<Group>& key, std::vector<ClaimWord> words) {
    key.kind = ClaimKey<Group>::Kind::choice;
    key.words = std::move(words);
}

/// Words in the order of the enumerators.
template <class Group, class E>
ClaimKey<Group> choiceKey(std::string_view name, std::string_view label,
                          std::vector<ClaimWord> words, std::optional<E> Group::*member,
                          std::string_view help) {
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
    ClaimKey<Statement> key{"kind", "Kind",
                            "What the statement is about; decides what is computed."};
    setWords(key, {{"strokes", "number of strokes a cycle"},
                   {"events-per-chamber-and-turn", "power strokes per chamber and turn"},
                   {"events-per-turn", "power strokes of the engine per turn"},
                   {"boosted", "boosted or not"},
                   {"balanced", "perfectly balanced"},
                   {"times-usual", "so many times a usual engine"},
                   {"other", "something else"},
                   {"firing-interval", "firing interval"},
                   {"compression-range", "range of the compression ratio"},
                   {"size", "size"},
                   {"friction", "friction compared with a usual engine"},
                   {"low-speed-torque", "torque at low speed"},
                   {"oil-consumption", "oil consumption"}});
    key.chosen = [](const Statement& statement) {
        return std::optional(static_cast<std::size_t>(statement.kind));
    };
    key.choose = [](Statement& statement, std::optional<std::size_t> index) {
        statement.kind = index ? static_cast<StatementKind>(*index) : StatementKind::other;
    };
    return key;
}

std::vector<ClaimKey<ClaimedEngine>> makeEngineKeys() {
    using E = ClaimedEngine;
    using enum Dimension;
    return {
        choiceKey<E>("cycle", "Cycle",
                     {{"two-stroke", "two-stroke"}, {"four-stroke", "four-stroke"}}, &E::cycle,
                     "Piston strokes a gas cycle."),
        choiceKey<E>("ignition", "Ignition",
                     {{"spark", "spark ignition"}, {"compression", "compression ignition"}},
                     &E::ignition, "Decides which published bands apply."),
        choiceKey<E>("charging", "Charging",
                     {{"naturally-aspirated", "naturally aspirated"}, {"boosted", "boosted"}},
                     &E::charging, "Boosted: charged above ambient pressure, by whatever means."),
        choiceKey<E>("drive", "Drive", {{"crank", "crank"}, {"cam-track", "cam track"}}, &E::drive,
                     "A crank moves a piston once to and fro a turn, a cam track as often as it "
                     "has lobes."),
        whole(countKey<E>("cylinders", "Chambers", 1.0, &E::cylinders,
                          "Working chambers; two opposed pistons share one.")),
        whole(countKey<E>("pistons", "Pistons", 1.0, &E::pistons,
                          "Pistons of all chambers together.")),
        countKey<E>("events_per_turn", "Power strokes per turn", 0.01, &E::eventsPerTurn,
                    "Of the whole engine, per turn of the output shaft."),
        countKey<E>("reciprocations_per_turn", "Reciprocations per turn", 0.01, &E::reciprocations,
                    "Of one piston, to and fro, per shaft turn: the lobes of a cam track; 1 for a "
                    "crank."),
        choiceKey<E>("fuel", "Fuel",
                     {{"petrol", "petrol"},
                      {"methane", "methane"},
                      {"hydrogen", "hydrogen"},
                      {"diesel", "diesel"},
                      {"ethanol", "ethanol"}},
                     &E::fuel, "Gives heating value and air needed."),
        amountKey<E>("displacement", "Displacement", volume, &E::displacement,
                     "Swept volume of the whole engine, each chamber counted once."),
        amountKey<E>("bore", "Bore", length, &E::bore, "Diameter of a cylinder."),
        amountKey<E>("stroke", "Stroke", length, &E::stroke, "Of one piston."),
        amountKey<E>("mass", "Mass", mass, &E::mass,
                     "Of the engine; say in the notes what it has on."),
        within(countKey<E>("compression_ratio", "Compression ratio", 1.01, &E::compressionRatio,
                           "Geometric; the lower one where two are published."),
               1.01, 60.0),
        within(countKey<E>("highest_compression_ratio", "Highest compression ratio", 1.01,
                           &E::highestCompressionRatio,
                           "Where the compression can be adjusted: the other end."),
               1.01, 60.0),
        amountKey<E>("diameter", "Outer diameter", length, &E::diameter,
                     "Of the engine, over everything."),
        amountKey<E>("length", "Length", length, &E::length, "Of the engine, over everything."),
        amountKey<E>("charge_pressure", "Charge pressure", pressure, &E::chargePressure,
                     "Absolute, in front of ports or valves."),
    };
}

std::vector<ClaimKey<ClaimedFigures>> makeFigureKeys() {
    using F = ClaimedFigures;
    using enum Dimension;
    return {
        amountKey<F>("power", "Power", power, &F::power, "Highest brake power."),
        amountKey<F>("power_speed", "Speed of highest power", speed, &F::powerSpeed, ""),
        amountKey<F>("torque", "Torque", torque, &F::torque, "Highest brake torque."),
        amountKey<F>("torque_speed", "Speed of highest torque", speed, &F::torqueSpeed, ""),
        amountKey<F>("maximum_speed", "Highest speed", speed, &F::maximumSpeed, ""),
        amountKey<F>("mean_effective_pressure", "Brake mean effective pressure", pressure,
                     &F::meanPressure, "Highest."),
        amountKey<F>("mean_piston_speed", "Mean piston speed", velocity, &F::pistonSpeed,
                     "At the highest speed given."),
        amountKey<F>("efficiency", "Brake efficiency", fraction, &F::efficiency,
                     "Brake power by fuel mass flow and lower heating value."),
        amountKey<F>("fuel_consumption", "Brake specific fuel consumption", fuelConsumption,
                     &F::fuelConsumption, ""),
        amountKey<F>("friction_pressure", "Friction mean effective pressure", pressure,
                     &F::frictionPressure, "Assumed from a fit where it is not given."),
        amountKey<F>("air_ratio", "Air ratio λ", fraction, &F::airRatio,
                     "Air by stoichiometric air; 1 is assumed where it is not given."),
    };
}

std::vector<ClaimKey<ClaimedConditions>> makeConditionKeys() {
    using C = ClaimedConditions;
    using enum Dimension;
    return {
        choiceKey<C>("rating", "Rating", {{"net", "net"}, {"gross", "gross"}}, &C::rating,
                     "Net: with all auxiliaries of its use on [ISO 1585]; gross: without."),
        choiceKey<C>("supply_power", "Supply power",
                     {{"included", "deducted"}, {"not-counted", "not counted"}}, &C::supplyPower,
                     "Whether the power that charges the engine is deducted."),
        amountKey<C>("air_pressure", "Air pressure", pressure, &C::airPressure,
                     "Of the air that the power stands for, absolute."),
        amountKey<C>("air_temperature", "Air temperature", temperature, &C::airTemperature,
                     "Of the air that the power stands for."),
        within(amountKey<C>("relative_humidity", "Relative humidity", fraction,
                            &C::relativeHumidity,
                            "Of the air that the power stands for; 0 where it is not given."),
               0.0, 1.0),
        choiceKey<C>("charger", "Charger",
                     {{"none", "none"},
                      {"mechanical", "driven by the engine"},
                      {"turbo", "turbocharger"},
                      {"turbo-after-cooled", "turbocharger with liquid after-cooler"}},
                     &C::charger, "Decides the correction of a compression-ignition engine."),
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
        textKey<S>("claim", "Claim", &S::claim, "In the words of the source."),
        textKey<S>("source", "Source", &S::source, "Where it stands."),
        textKey<S>("date", "Date", &S::date, "When it was said or read."),
        kindKey(),
        only({strokes, eventsPerChamberAndTurn, eventsPerTurn, timesUsual, friction},
             countKey<S>("value", "Value", 0.0, &S::value,
                         "Number of strokes, of events, or of times.")),
        only({boosted, balanced},
             flagKey<S>("holds", "Said to hold", &S::holds, "Boosted, balanced: what is said.")),
        only({timesUsual}, choiceKey<S>("measure", "Measure",
                                        {{"power-per-displacement", "power per displacement"},
                                         {"torque-per-displacement", "torque per displacement"},
                                         {"power-per-mass", "power per mass"},
                                         {"efficiency", "efficiency"},
                                         {"power-strokes", "power strokes per chamber and turn"}},
                                        &S::measure, "What is so many times a usual engine's.")),
        only({timesUsual}, choiceKey<S>("usual_engine", "Reference engine",
                                        {{"four-stroke", "four-stroke on a crank"},
                                         {"two-stroke", "two-stroke on a crank"},
                                         {"crank", "the same cycle on a crank"}},
                                        &S::usual,
                                        "Which engine the usual one is; every reading is shown "
                                        "where it is not said.")),
        only({balanced}, within(amountKey<S>("exhaust_lead", "Exhaust lead", angle, &S::exhaustLead,
                                             "By which the exhaust piston is ahead, shaft angle."),
                                -units::pi, units::pi)),
        only({balanced}, amountKey<S>("inlet_piston_mass", "Mass of an inlet-side piston", mass,
                                      &S::inletMass, "")),
        only({balanced}, amountKey<S>("exhaust_piston_mass", "Mass of an exhaust-side piston", mass,
                                      &S::exhaustMass, "")),
        only({firingInterval},
             within(amountKey<S>("interval", "Firing interval", angle, &S::interval,
                                 "Shaft angle from one firing to the next."),
                    1e-3, 4.0 * units::pi)),
        only({compressionRange}, countKey<S>("lowest_ratio", "Lowest compression ratio", 1.01,
                                             &S::lowRatio, "Of the range.")),
        only({compressionRange}, countKey<S>("highest_ratio", "Highest compression ratio", 1.01,
                                             &S::highRatio, "Of the range.")),
        only({size}, amountKey<S>("length", "Length", Dimension::length, &S::length, "Over all.")),
        only({size},
             amountKey<S>("diameter", "Diameter", Dimension::length, &S::diameter, "Over all.")),
        only({lowSpeedTorque}, amountKey<S>("torque", "Torque", Dimension::torque, &S::torque,
                                            "At the speed below.")),
        only({lowSpeedTorque}, amountKey<S>("speed", "Speed", Dimension::speed, &S::speed, "")),
        only({oilConsumption}, amountKey<S>("oil_consumption", "Oil consumption", fuelConsumption,
                                            &S::oilConsumption, "Mass of oil per brake work.")),
    };
}

} // namespace

std::span<const ClaimKey<Claims>> claimHeadKeys() {
    static const std::vector<ClaimKey<Claims>> keys = {
        textKey<Claims>("title", "Title", &Claims::title, ""),
        textKey<Claims>("source", "Source", &Claims::source, "Of the figures."),
        textKey<Claims>("date", "Date", &Claims::date, "Of the source."),
        textKey<Claims>("notes", "Notes", &Claims::notes, ""),
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

bool belongsTo(const ClaimKey<Statement>& key, StatementKind kind) {
    return key.kinds.empty() || std::ranges::find(key.kinds, kind) != key.kinds.end();
}

} // namespace lobewright::study
