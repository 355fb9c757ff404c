#pragma once

#include "core/design/design.h"
#include "core/loads/piston.h"
#include "core/monitor.h"
#include "core/result.h"

#include <optional>
#include <vector>

namespace lobewright::study {

/// Where contact is lost first at one end of a range of speeds.
struct ContactLoss {
    End end = End::inlet;
    double theta = 0.0;        ///< shaft angle of cylinder 1 [rad]
    loads::AxialShares shares; ///< there; their sum is zero but for the tolerance of the search
};

/// Speeds over which every roller keeps to its track.
struct ContactRange {
    double from = 0.0, to = 0.0; ///< shaft speed [1/min]
    /// Absent where the speeds looked at, or those with a solution, end.
    std::optional<ContactLoss> below, above;
};

struct ContactRanges {
    double from = 0.0, to = 0.0;    ///< speeds looked at [1/min]
    bool isOneSided = false;        ///< one track, whose side nobody names
    bool isClosed = false;          ///< a closed track holds the rollers at every speed
    std::vector<ContactRange> kept; ///< ascending
    int unsolved = 0;               ///< of the speeds tried first
    Message failure;                ///< why, at the first of them
};

/// Speeds tried first, evenly spaced. A range narrower than their distance may be missed.
inline constexpr int contactTrials = 33;

/// Speeds at which the rollers keep contact over the whole turn, the gas solved at each of them:
/// unlike the bounds of one solution, which hold its pressure trace. The ends are searched to 1e-5
/// of the speed [TOMS 748, Alefeld 1995]. from < to: shaft speed [1/min], > 0.
/// Errors: speeds not in order or not positive, no speed with a solution (path ""), cancelled, the
/// design is invalid.
Result<ContactRanges> contactRanges(const design::Design& design, double from, double to,
                                    Monitor& monitor);

/// What was found, a sentence each: ranges, then what ends them, then what could not be solved.
std::vector<Message> sentences(const ContactRanges& ranges);

} // namespace lobewright::study
