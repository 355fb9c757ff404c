#pragma once

#include "core/design/design.h"
#include "core/ends.h"
#include "core/monitor.h"
#include "core/motion/motion_law.h"
#include "core/result.h"
#include "core/solution/solution.h"

#include <optional>
#include <string>
#include <vector>

/// Every motion law in the place of the present ones, for the same lifts and spans.
namespace lobewright::study {

/// What one law means for a design. Peaks are those of the segments that take the law.
struct ComparedLaw {
    motion::Law law = motion::Law::harmonic;
    bool isPresent = false;                ///< these segments have it now
    motion::CharacteristicFactors factors; ///< for unit lift over unit span
    double velocity = 0.0;                 ///< [m/s]
    double acceleration = 0.0;             ///< [m/s²]
    double jerk = 0.0;                     ///< [m/s³]; infinite where the acceleration jumps
    // Of the whole track.
    double pressureAngle = 0.0;  ///< largest, at the pitch radius [rad]
    double relativeRadius = 0.0; ///< smallest over the width and flanks in use [m]
    std::optional<double>
        contactPressure; ///< nominal peak, of both tracks where shared [Pa]; absent: see problem
    std::optional<double> leastContactForce; ///< [N]; negative: the roller wants to lift off
    Message problem;                         ///< why the design could not be solved with it
};

/// All laws on one segment of a track, or, absent, on all its rises and returns. Every design is
/// solved in full; `previous` lends the stages that stay. Errors: the track has no segments, or
/// that segment is a dwell ("/tracks/inlet/segments/2"); the design is invalid; cancelled (path
/// "").
Result<std::vector<ComparedLaw>> compareLaws(const design::Design& design, End end,
                                             std::optional<int> segment, Monitor& monitor,
                                             const solution::Solution* previous = nullptr);

/// The design with one law on these segments. Preconditions as the errors of compareLaws.
design::Design withLaw(const design::Design& design, End end, std::optional<int> segment,
                       motion::Law law);

} // namespace lobewright::study
