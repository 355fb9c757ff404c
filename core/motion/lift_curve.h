#pragma once

#include "core/motion/pattern.h"
#include "core/result.h"
#include "core/samples.h"

#include <memory>
#include <vector>

namespace lobewright::motion {

/// Lift and its derivatives with respect to the track angle φ at one angle.
struct Lift {
    double y = 0.0;  ///< [m]
    double y1 = 0.0; ///< [m/rad]
    double y2 = 0.0; ///< [m/rad²]
    double y3 = 0.0; ///< [m/rad³]
};

/// The same at many angles, one array per quantity, shape (samples).
struct LiftSamples {
    Samples y, y1, y2, y3;
};

/// A place where two pieces meet, with the values on both sides.
struct Junction {
    double angle = 0.0; ///< [rad] in [0, period)
    Lift before, after;
    int segment = 0;        ///< index of the segment (or knot) that starts or is divided here
    bool insideLaw = false; ///< a junction inside a motion law (parabolic, modified laws)
};

/// An interval of constant lift [rad]; `end` may exceed the period where it wraps.
struct Plateau {
    double begin = 0.0, end = 0.0;
    double lift = 0.0;
};

/// A crest or trough of the lift; `end` exceeds `begin` where the curve dwells there, and may
/// exceed the period where it wraps.
struct TurningPoint {
    double begin = 0.0, end = 0.0; ///< [rad], begin in [0, period)
    double lift = 0.0;             ///< [m]
    bool crest = false;
    double middle() const { return 0.5 * (begin + end); }
};

/// Rises smaller than this share of the stroke are ripples, not strokes of the engine: a spline
/// through a hand-drawn dwell has some [own estimate].
inline constexpr double smallestRise = 0.05;

/// Lift curve of a track: periodic, closed form, min lift 0. Immutable and cheap to copy.
class LiftCurve {
  public:
    /// Errors: every broken rule of the pattern (spans that do not add up to the period to 1e-9
    /// rad, lifts outside 0 … stroke, a rise that does not rise, fewer than 3 knots, …), each with
    /// a path relative to the track, e.g. "/segments/2/span_deg".
    static Result<LiftCurve> make(const Pattern& pattern);
    /// Lift 0 throughout: of what stands still where a piston could move. lobes ≥ 1.
    static LiftCurve still(int lobes);

    double period() const;       ///< 2π/lobes [rad]
    double stroke() const;       ///< max lift [m]
    int lobes() const;           ///< repetitions of the pattern a turn
    int risesPerPattern() const; ///< rises from a trough to a crest, see turningPoints
    int cyclesPerTurn() const;   ///< lobes × rises per pattern

    /// Right-hand limits at junctions. φ any finite angle [rad].
    Lift at(double phi) const;
    /// Left-hand limits at junctions.
    Lift before(double phi) const;
    LiftSamples sample(const Samples& phi) const;

    /// Bounds of stretches that together make one period, from 0 to period [rad]. Within each the
    /// curve is one closed form without a junction, and no longer than half a law or an eighth of
    /// the shortest harmonic: where searches for extremes start.
    const std::vector<double>& divisions() const;
    const std::vector<Junction>& junctions() const; ///< ascending, in [0, period)
    const std::vector<Plateau>& plateaus() const;   ///< ascending
    /// Crests and troughs in turn, ascending by `begin`; neighbours differ by at least
    /// `smallestRise` of the stroke, ripples between them are left out.
    const std::vector<TurningPoint>& turningPoints() const;

  private:
    struct Pieces;
    explicit LiftCurve(std::shared_ptr<const Pieces> pieces);
    std::shared_ptr<const Pieces> pieces_;
};

} // namespace lobewright::motion
