#pragma once

#include "core/motion/piece.h"
#include "core/result.h"

#include <vector>

namespace lobewright::motion {

/// Lift in closed form over one period: either pieces or a harmonic series.
struct LiftForm {
    double period = 0.0;
    double stroke = 0.0;
    std::vector<Piece> pieces;       ///< ascending by begin, the first begins at 0
    std::vector<Harmonic> harmonics; ///< used when there are no pieces
    double constant = 0.0;           ///< of the series [m]
    std::vector<Junction> junctions;
    std::vector<Plateau> plateaus;
    std::vector<TurningPoint> turningPoints; ///< crests and troughs in turn

    /// Sorts the pieces into buckets, so that looking one up takes constant time.
    void index();
    /// Right-hand limits, or left-hand limits for `Side::before`.
    enum class Side { after, before };
    Lift at(double phi, Side side) const;

  private:
    std::vector<int> buckets_; ///< piece at the start of each of equally long parts of the period
};

/// Angles closer than this [rad] to a junction count as the junction, so that rounding in
/// φ = θ − ψ + δ does not decide which side of it is meant.
inline constexpr double junctionTolerance = 1e-12;

/// Less lift than this [m] is rounding, not motion [own estimate].
inline constexpr double smallestStroke = 1e-9;

/// The three ways to state a pattern. Errors as in LiftCurve::make.
Result<LiftForm> makeForm(const SegmentShape& shape, double period);
Result<LiftForm> makeForm(const KnotShape& shape, double period);
Result<LiftForm> makeForm(const HarmonicShape& shape, double period);

/// Drops the turning points of ripples, smallest first, until neighbours differ by `smallestRise`
/// of the stroke or two are left; then sorts them into the period.
void settleTurningPoints(LiftForm& form);

/// Fills `before` and `after` of junctions whose angle, segment and insideLaw are set.
void evaluateJunctions(LiftForm& form);

} // namespace lobewright::motion
