#pragma once

#include "core/mechanism/extremes.h"
#include "core/mechanism/mechanism.h"
#include "core/motion/lift_curve.h"
#include "core/result.h"

#include <optional>
#include <span>
#include <vector>

namespace lobewright::mechanism {

/// Dead centres of one gas cycle as shaft angles [rad]; odc follows idc.
struct DeadCentres {
    double idc = 0.0;
    double odc = 0.0;
};

/// Both ends and the chamber between them at one shaft angle.
struct PairState {
    PerEnd<motion::Lift> lift;
    double gap = 0.0;        ///< between the crowns, or crown and head [m]
    double volume = 0.0;     ///< [m³]
    double volumeRate = 0.0; ///< dV/dθ [m³/rad]
};

/// The two opposed pistons of cylinder 1 over the shaft angle θ, ψ_1 included.
/// Cylinder k at θ is cylinder 1 at θ − ψ_k + ψ_1.
///
/// In a one-sided engine a fixed head stands in the place of the exhaust piston: the exhaust end
/// has stroke and lift 0 throughout, whatever lift is given for it.
class OpposedPair {
  public:
    /// Errors: periods or rises per period of the two tracks differ; the volume never changes;
    /// crowns meet (gap ≤ 0 anywhere); bore or pitch radius not positive. Paths are those of the
    /// design file.
    static Result<OpposedPair> make(const Mechanism& mechanism,
                                    const PerEnd<motion::LiftCurve>& lifts);

    const Mechanism& mechanism() const { return mechanism_; }
    /// The ends at which a piston runs on a track.
    std::span<const End> pistons() const { return mechanism_.pistons(); }
    /// The end whose piston uncovers the ports of this side.
    End uncovers(End side) const { return mechanism_.uncovers(side); }
    const motion::LiftCurve& curve(End end) const { return lifts_[end]; }
    int cyclesPerTurn() const;
    double period() const;                          ///< of the pattern [rad]
    double trackAngle(End end, double theta) const; ///< φ [rad]
    /// s of the adjuster [m], 0 at the inlet; of a one-sided engine that of its only track.
    double shift(End end) const;
    /// Everything at one angle in one call, for the gas integrator: two lift evaluations.
    PairState at(double theta) const;
    motion::Lift lift(End end, double theta) const;
    motion::LiftSamples lift(End end, const Samples& theta) const;

    double pistonArea() const;             ///< π·bore²/4 [m²]
    double sweptVolume() const;            ///< A·(S_i + S_e) [m³]
    double meanStroke() const;             ///< of the pistons [m]
    double gap(double theta) const;        ///< between the crowns [m]
    double volume(double theta) const;     ///< [m³]
    double volumeRate(double theta) const; ///< dV/dθ [m³/rad]
    Samples volume(const Samples& theta) const;
    Samples volumeRate(const Samples& theta) const;

    /// One entry per cycle of a period, ascending; the first has the first IDC at θ ≥ 0. To
    /// 1e-10 rad.
    const std::vector<DeadCentres>& deadCentres() const { return deadCentres_; }
    /// Shaft angles in [0, period) where a lift derivative up to the third jumps, ascending,
    /// without repeats.
    const std::vector<double>& junctions() const { return junctions_; }

    /// Turning points of one piston over the shaft angle, ascending in [0, period).
    const std::vector<Extreme>& turningPoints(End end) const { return turningPoints_[end]; }

  private:
    OpposedPair(const Mechanism& mechanism, const PerEnd<motion::LiftCurve>& lifts);
    std::vector<Extreme> volumeExtremes() const;
    std::optional<Problem> findDeadCentres();
    Mechanism mechanism_;
    PerEnd<motion::LiftCurve> lifts_;
    PerEnd<double> phase_; ///< φ − θ [rad]
    double pistonArea_ = 0.0;
    double outerGap_ = 0.0; ///< between the crowns with both lifts 0 [m]
    PerEnd<std::vector<Extreme>> turningPoints_;
    std::vector<DeadCentres> deadCentres_;
    std::vector<double> junctions_;
};

} // namespace lobewright::mechanism
