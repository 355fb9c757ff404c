#pragma once

#include "core/claims/claims_units.h"
#include "core/gas/models/settings.h"

#include <optional>
#include <string>
#include <vector>

/// What somebody says about an engine, as they said it, to be held against arithmetic.
namespace lobewright::study {

enum class StrokeCycle { twoStroke, fourStroke };
enum class Ignition { spark, compression };
enum class Charging { naturallyAspirated, boosted };
/// What turns the pistons' motion into rotation; a crank makes one revolution of the cycle a turn.
enum class Drive { crank, camTrack };
enum class Rating { net, gross };
enum class SupplyPower { included, notCounted };
/// How the charge is compressed, as the power correction of compression-ignition engines asks.
enum class Charger { none, mechanical, turbo, turboAfterCooled };

/// The engine as described. Everything may be missing.
struct ClaimedEngine {
    std::optional<StrokeCycle> cycle;
    std::optional<Ignition> ignition;
    std::optional<Charging> charging;
    std::optional<Drive> drive;
    std::optional<double> cylinders;      ///< working chambers
    std::optional<double> pistons;        ///< of all chambers
    std::optional<double> eventsPerTurn;  ///< power strokes of the whole engine per shaft turn
    std::optional<double> reciprocations; ///< of one piston per shaft turn: lobes of a cam track
    std::optional<gas::Fuel> fuel;
    std::optional<Amount> displacement;            ///< of the whole engine, each chamber once
    std::optional<Amount> bore, stroke;            ///< stroke of one piston
    std::optional<Amount> mass;                    ///< of the engine
    std::optional<double> compressionRatio;        ///< geometric; the lower of two
    std::optional<double> highestCompressionRatio; ///< where it can be adjusted
    std::optional<Amount> diameter, length;        ///< over everything
    std::optional<Amount> chargePressure;          ///< absolute, in front of the ports or valves
    bool operator==(const ClaimedEngine&) const = default;
};

/// The figures claimed for it.
struct ClaimedFigures {
    std::optional<Amount> power, powerSpeed;   ///< highest, and where
    std::optional<Amount> torque, torqueSpeed; ///< highest, and where
    std::optional<Amount> maximumSpeed;
    std::optional<Amount> meanPressure;     ///< bmep
    std::optional<Amount> pistonSpeed;      ///< mean
    std::optional<Amount> efficiency;       ///< brake, of the lower heating value
    std::optional<Amount> fuelConsumption;  ///< brake specific
    std::optional<Amount> frictionPressure; ///< fmep
    std::optional<Amount> airRatio;         ///< λ
    bool operator==(const ClaimedFigures&) const = default;
};

/// Under which conditions the power stands.
struct ClaimedConditions {
    std::optional<Rating> rating;
    std::optional<SupplyPower> supplyPower;
    std::optional<Amount> airPressure; ///< absolute, humid
    std::optional<Amount> airTemperature;
    std::optional<Amount> relativeHumidity; ///< fraction
    std::optional<Charger> charger;
    bool operator==(const ClaimedConditions&) const = default;
};

enum class StatementKind {
    strokes,
    eventsPerChamberAndTurn,
    eventsPerTurn,
    boosted,
    balanced,
    timesUsual,
    other,
    firingInterval,
    compressionRange,
    size,
    friction,
    lowSpeedTorque,
    oilConsumption
};
/// The engine that a "usual" one is. A crank engine has the cycle of the claimed one.
enum class UsualEngine { fourStroke, twoStroke, crank };
/// What "a multiple of a usual engine" refers to.
enum class UsualMeasure {
    powerPerDisplacement,
    torquePerDisplacement,
    powerPerMass,
    efficiency,
    powerStrokes
};

/// A statement in words, with what is needed to compute against it.
struct Statement {
    std::string claim, source, date;
    StatementKind kind = StatementKind::other;
    std::optional<double> value;                  ///< strokes, events, times
    std::optional<bool> holds;                    ///< boosted, balanced: what is said
    std::optional<UsualMeasure> measure;          ///< times a usual engine
    std::optional<UsualEngine> usual;             ///< which; absent: not said
    std::optional<Amount> exhaustLead;            ///< balanced: shaft angle
    std::optional<Amount> inletMass, exhaustMass; ///< balanced: of one piston with its roller
    std::optional<Amount> interval;               ///< firing: shaft angle
    std::optional<double> lowRatio, highRatio;    ///< compression range
    std::optional<Amount> length, diameter;       ///< size, over all
    std::optional<Amount> torque, speed;          ///< low-speed torque
    std::optional<Amount> oilConsumption;         ///< mass per brake work
    bool operator==(const Statement&) const = default;
};

/// A claims file. A plain value.
struct Claims {
    std::string title, source, date, notes;
    ClaimedEngine engine;
    ClaimedFigures figures;
    ClaimedConditions conditions;
    std::vector<Statement> statements;
    bool operator==(const Claims&) const = default;
};

} // namespace lobewright::study
