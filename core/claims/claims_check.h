#pragma once

#include "core/claims/bands.h"
#include "core/claims/claims.h"
#include "core/solution/solution.h"

#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Claims held against arithmetic: everything that follows from the given numbers, placed in
/// published bands, with the arithmetic shown.
namespace lobewright::study {

/// One of several values of a figure, none of which is to be preferred.
struct Reading {
    Message what; ///< "1 lobe"
    double value = 0.0;
    Verdict verdict = Verdict::computed;
};

/// One figure that follows from the claims.
struct Finding {
    std::string id{};      ///< "mean-effective-pressure-at-power"
    Message quantity{};    ///< trade words
    Message formula{};     ///< symbols
    Message substituted{}; ///< the formula with the numbers put in, SI
    double value = 0.0;    ///< in `unit`
    std::string unit{};
    Message band{};   ///< "8.5 … 10.5 bar, spark-ignition four-strokes"; may be empty
    Message source{}; ///< of the band or of the formula; may be empty
    Verdict verdict = Verdict::computed;
    Message note{}; ///< assumptions of this row, may be empty
    /// Where the claims leave open which value it is; `value` then is only the first of them.
    std::vector<Reading> readings{};
};

/// Given numbers that do not fit each other.
struct Conflict {
    Verdict verdict = Verdict::contradictory; ///< or implausible
    std::vector<std::string> paths;           ///< keys of the file, e.g. "/figures/power"
    Message message;
    Message arithmetic;
};

/// A number that was not given.
struct MissingNumber {
    std::string path;
    TextId label;
    TextId decides; ///< what it would decide
};

enum class Confidence {
    high,   ///< arithmetic on the given numbers alone
    medium, ///< rests on an assumption or a published band
    low     ///< too little is given
};
TextId name(Confidence confidence);

enum class Outcome {
    agrees,
    disagrees,
    doubtful, ///< a figure speaks against it, none excludes it
    open
};
TextId name(Outcome outcome);

/// A statement in words with what the program computes against it.
struct StatementRow {
    Statement statement;
    Message computed;   ///< a sentence
    Message arithmetic; ///< may be empty where nothing can be computed
    Outcome outcome = Outcome::open;
    Confidence confidence = Confidence::low;
    Message overturnedBy; ///< the fact that would change the outcome
};

/// A point claimed on the full-load curve.
struct ClaimedPoint {
    TextId label;
    double speed = 0.0;  ///< ω [rad/s]
    double torque = 0.0; ///< [N·m]
};

struct ClaimsReport {
    Claims claims;
    std::vector<Message> assumptions; ///< one sentence each
    std::vector<Finding> findings;
    std::vector<Conflict> conflicts;
    std::vector<MissingNumber> missing;
    std::vector<StatementRow> statements;

    const Finding* finding(std::string_view id) const; ///< null when there is none of that id
};

/// Published figures are rounded: numbers that should agree may differ by this much [own estimate].
inline constexpr double roundingOfFigures = 0.01;

/// Everything that follows. Never fails: what cannot be computed is listed as missing. Every number
/// of the report is finite. `design`: a solved design, or null; where it is the engine that the
/// claims speak of, statements on balance, boost and size are answered from it.
ClaimsReport checkClaims(const Claims& claims, const solution::Solution* design = nullptr);

/// How far a design is the engine that claims speak of.
struct EngineMatch {
    int compared = 0; ///< given numbers that were held against the design
    Message differs;  ///< "bore 58 mm, published 60 mm": the first that differs; empty: none
};
EngineMatch matchEngine(const Claims& claims, const solution::Solution& design);

/// Whether the claims speak of this design: no given number of chambers, lobes, cycle, bore, stroke
/// or displacement differs by more than rounding, and at least two of them are given.
bool isSameEngine(const Claims& claims, const solution::Solution& design);

/// As checkClaims(), with a design that is known to be the engine claimed, or null.
ClaimsReport reportOn(const Claims& claims, const solution::Solution* sameEngine);

/// The torque and power points, for laying over a torque curve; a power without its speed is placed
/// at the lowest speed at which the claimed torque can give it.
std::vector<ClaimedPoint> claimedPoints(const Claims& claims);

/// What the claims say of the engine's class.
EngineClass engineClass(const Claims& claims);

} // namespace lobewright::study
