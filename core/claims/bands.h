#pragma once

#include "core/claims/claims.h"

#include <optional>
#include <span>
#include <string>
#include <string_view>

/// Published bands of engine figures, and what it means to be inside or outside them.
namespace lobewright::study {

/// Figures that are judged by bands; larger is bolder for all of them.
enum class BandQuantity {
    meanEffectivePressure, ///< bmep at its highest [Pa]
    meanPistonSpeed,       ///< [m/s]
    specificPower,         ///< per displacement [W/m³]
    powerPerMass,          ///< [W/kg]
    efficiency,            ///< brake, of the lower heating value
    chargingRatio          ///< mass of air a cycle by displacement at ambient density
};

enum class BandLevel {
    ordinary, ///< what such engines do
    bold      ///< what the boldest of them do
};

/// One published band. Absent class fields: holds for all.
struct Band {
    BandQuantity quantity;
    std::optional<StrokeCycle> cycle;
    std::optional<Ignition> ignition;
    std::optional<Charging> charging;
    BandLevel level = BandLevel::ordinary;
    double low = 0.0, high = 0.0; ///< SI, both ends inside
    TextId what;                  ///< engines meant
    TextId source;
    bool fromMemory = false; ///< recalled, the page not read again
};

std::span<const Band> bands();

/// What a claim is, so far as it is known.
struct EngineClass {
    std::optional<StrokeCycle> cycle;
    std::optional<Ignition> ignition;
    std::optional<Charging> charging;
};

enum class Verdict {
    computed,        ///< a figure without a band
    ordinary,        ///< within what such engines do, or below
    ambitious,       ///< only the boldest of them do it
    onlyWithBoost,   ///< within what boosted engines do, above what others do
    outsideBand,     ///< above every band that applies
    outsideEstimate, ///< the same, the highest band an own estimate
    implausible,     ///< not contradictory, but hardly meant
    contradictory    ///< arithmetic on the given numbers says no
};
TextId name(Verdict verdict);

struct Judgement {
    Verdict verdict = Verdict::computed;
    const Band* band = nullptr; ///< the band that decided; null: none applies
    Message note;               ///< what had to be assumed, may be empty
};

/// Places a figure [SI, finite] in the bands of its class. Unknown class fields compare with every
/// engine they allow; unknown charging compares with natural aspiration first. Where the class has
/// no band the other ignition's is taken, and the note says so. Band edges are inside.
Judgement judge(BandQuantity quantity, double value, const EngineClass& engine);

/// Unit of tables for a banded quantity: value in table units = SI value/factor.
struct BandUnit {
    std::string_view symbol;
    double factor = 1.0;
};
BandUnit bandUnit(BandQuantity quantity);
/// "8.5 … 10.5 bar".
std::string text(const Band& band);
/// The source, and whether it was recalled.
Message describeSource(const Band& band);

} // namespace lobewright::study
