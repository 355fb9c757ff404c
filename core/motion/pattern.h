#pragma once

#include <optional>
#include <variant>
#include <vector>

namespace lobewright::motion {

/// Motion laws of a rise or return [VDI 2143-1; Norton 2009].
enum class Law {
    harmonic,
    cycloidal,
    parabolic,
    modifiedTrapezoid,
    modifiedSine,
    polynomial345,
    polynomial4567
};
inline constexpr Law allLaws[] = {Law::harmonic,          Law::cycloidal,    Law::parabolic,
                                  Law::modifiedTrapezoid, Law::modifiedSine, Law::polynomial345,
                                  Law::polynomial4567};

enum class SegmentKind { rise, dwell, fall };

/// One piece of a segment pattern. Segments start at outer dead centre (lift 0).
struct Segment {
    SegmentKind kind = SegmentKind::dwell;
    double span = 0.0;             ///< [rad], > 0
    Law law = Law::harmonic;       ///< not used by a dwell
    std::optional<double> endLift; ///< lift at the end [m]; rise: stroke and fall: 0 when absent
    bool operator==(const Segment&) const = default;
};

/// A point of a free-form lobe; with a slope the spline is C³ there instead of C⁴.
struct Knot {
    double angle = 0.0;          ///< [rad], 0 ≤ angle < period, increasing
    double lift = 0.0;           ///< [m]; the lift curve is the spline less its minimum
    std::optional<double> slope; ///< [m/rad]
    bool operator==(const Knot&) const = default;
};

/// One term of a harmonic series, order counted per pattern (shaft order = order·lobes).
struct Harmonic {
    int order = 1;       ///< ≥ 1
    double cosine = 0.0; ///< [m]
    double sine = 0.0;   ///< [m]
    bool operator==(const Harmonic&) const = default;
};

struct SegmentShape {
    double stroke = 0.0; ///< [m], > 0
    std::vector<Segment> segments;
    bool operator==(const SegmentShape&) const = default;
};
struct KnotShape {
    std::vector<Knot> knots; ///< at least 3
    bool operator==(const KnotShape&) const = default;
};
struct HarmonicShape {
    std::vector<Harmonic> harmonics;
    bool operator==(const HarmonicShape&) const = default;
};

/// What a track repeats `lobes` times a turn. A pattern with several rises and returns makes
/// several gas cycles a repetition.
struct Pattern {
    int lobes = 1;
    std::variant<SegmentShape, KnotShape, HarmonicShape> shape;
    bool operator==(const Pattern&) const = default;
};

} // namespace lobewright::motion
