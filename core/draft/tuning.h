#pragma once

#include "core/draft/brief.h"
#include "core/solution/solution.h"

#include <string>
#include <string_view>
#include <vector>

namespace lobewright::draft {

/// Numbers that the rules take as usual, moved within their ranges until the draft keeps the
/// program's own limits.
struct Tuning {
    double rollerWidth = 0.0;         ///< [m]; 0: a first guess
    double rollerRadius = 0.37;       ///< of the bore
    double bearing = 24e6;            ///< rating of the bearing per area 2r·b [N/m²]
    bool isClosed = false;            ///< tracks that hold the rollers back too
    double burnStart = -8.0;          ///< [cycle °]
    double portHeight = 0.17;         ///< least height of the ports, of the stroke
    double exhaustLead = 14.0;        ///< [cycle °]
    double compression = 0.0;         ///< 0: usual for the fuel, 1: the lowest usual
    double supplyTemperature = 330.0; ///< [K]
    double viscosity = 0.0;           ///< of the oil [Pa·s]; 0: the program's own
    double pitchRadius = 1.0;         ///< of the smallest that the rules allow
    double meanPressure = 0.5;        ///< place in the ordinary band, 0: the lowest
    double pistonSpeed = 0.5;         ///< likewise, 0: the slowest
    bool operator==(const Tuning&) const = default;
};

/// Moves what may cure the limits that the draft exceeds. Nothing moves where all are kept or
/// where every number stands at the end of its range.
Tuning tuned(const Tuning& tuning, const solution::Solution& draft);

/// As tuned(), where the rollers are wider than all limits ask for: as wide as they do.
Tuning trimmed(const Tuning& tuning, const solution::Solution& draft);

/// A limit that a draft still exceeds.
struct Exceeded {
    std::string check;               ///< id of the check
    Message message;                 ///< its sentence
    std::vector<TextId> forcedBy{};  ///< given figures without which the rules would keep it
    std::vector<std::string> keys{}; ///< the same as keys of Brief, "power"
};

/// The limits that a draft exceeds, errors and warnings, with the given figures that the numbers in
/// question follow from.
std::vector<Exceeded> exceeded(const Brief& brief, const solution::Solution& draft);

/// The brief without the figure of that key. Unknown keys change nothing.
Brief withoutFigure(Brief brief, std::string_view key);

} // namespace lobewright::draft
