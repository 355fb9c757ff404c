#pragma once

#include "core/ends.h"
#include "core/mechanism/opposed_pair.h"
#include "core/ports/open_area.h"
#include "core/ports/row.h"
#include "core/result.h"
#include "core/units.h"

#include <optional>
#include <vector>

namespace lobewright::ports {

/// Port events of one cycle as shaft angles of cylinder 1 [rad], following its IDC without
/// wrapping: idc < each event < idc of the next cycle. Found to 1e-10 rad.
struct CycleEvents {
    mechanism::DeadCentres centres;
    double exhaustOpens = 0.0;
    double inletOpens = 0.0;
    double inletCloses = 0.0;
    double exhaustCloses = 0.0;

    double firstOpening() const { return exhaustOpens < inletOpens ? exhaustOpens : inletOpens; }
    double lastClosing() const { return exhaustCloses > inletCloses ? exhaustCloses : inletCloses; }
    double opens(End end) const { return end == End::inlet ? inletOpens : exhaustOpens; }
    double closes(End end) const { return end == End::inlet ? inletCloses : exhaustCloses; }
    double blowdown() const { return inletOpens - exhaustOpens; }      ///< signed [rad]
    double afterCharge() const { return inletCloses - exhaustCloses; } ///< signed [rad]
    /// Angle over which both ends are open [rad], ≥ 0.
    double overlap() const;
};

/// d(area)/d(u) = chord of the opening at depth u [m].
double openChord(const Row& row, double uncovered);

/// Volume and openings at one shaft angle, as the gas integrator wants them.
struct ChamberState {
    mechanism::PairState pair;
    PerEnd<double> area;          ///< geometric [m²]
    PerEnd<double> effectiveArea; ///< Σ C_d·A [m²]
};

/// The ports of cylinder 1 over the shaft angle.
class PortTiming {
  public:
    /// Errors: rows that never open or never close, an end that is open at inner dead centre or
    /// opens more than once a cycle, corner radius or width out of range, an end without rows.
    /// Paths are relative to /ports, e.g. "/inlet/0/edge_mm".
    static Result<PortTiming> make(const Rows& rows, const mechanism::OpposedPair& pair);

    /// Both ends and the chamber in one call: two lift evaluations, no allocation.
    ChamberState at(double theta) const;
    double area(End end, double theta) const;          ///< geometric [m²]
    double effectiveArea(End end, double theta) const; ///< Σ C_d·A [m²]
    Samples area(End end, const Samples& theta) const;
    Samples effectiveArea(End end, const Samples& theta) const;
    double fullArea(End end) const; ///< all rows fully uncovered [m²]
    /// Of the piston that uncovers this side, in from where it stands at outer dead centre without
    /// shift [m].
    double position(End end, double theta) const;
    Samples position(End end, const Samples& theta) const;
    const mechanism::OpposedPair& pair() const { return pair_; }
    const Rows& rows() const { return rows_; }

    /// One entry per cycle of a period, in the order of OpposedPair::deadCentres().
    const std::vector<CycleEvents>& cycles() const { return cycles_; }
    /// Every angle in [0, period) where a row begins to open, is fully open, begins to close or is
    /// closed: area is smooth between them. Ascending.
    const std::vector<double>& kinks() const { return kinks_; }

    /// ∫A dθ over [from, to] [m²·rad], geometric area; Gauss quadrature between all places where
    /// the area is not smooth, to about 1e-12 relative.
    double areaIntegral(End end, double from, double to) const;

  private:
    PortTiming(const Rows& rows, const mechanism::OpposedPair& pair);
    std::optional<Problem> findEvents();
    void findKinks();
    /// Shaft angles in [0, period) where the piston's edge passes the depth [m] from ODC,
    /// ascending.
    std::vector<double> crossings(End end, double depth) const;

    Rows rows_;
    mechanism::OpposedPair pair_;
    PerEnd<double> shift_;
    std::vector<CycleEvents> cycles_;
    std::vector<double> kinks_;
    PerEnd<std::vector<double>> bounds_; ///< of smooth pieces of the area, in [0, period)
};

/// Time-areas at speed ω, geometric, divided by the swept volume [s/m].
struct SpecificTimeAreas {
    double blowdown = 0.0;
    double inlet = 0.0;
    double exhaust = 0.0;
};
SpecificTimeAreas specificTimeAreas(const PortTiming& timing, const CycleEvents& cycle,
                                    double sweptVolume, double omega);

/// The web left between neighbouring ports: rows of one end that overlap axially share the
/// bore.
struct Web {
    End end = End::inlet;
    int row = 0;         ///< index of the first row of the group
    bool across = false; ///< rows of both sides stand in it
    double chord = 0.0;  ///< [m]; ≤ 0: the ports do not fit
};
/// `shared`: both sides lie in the way of one piston, and rows of both may overlap.
std::vector<Web> webs(const Rows& rows, double bore, bool shared = false);

} // namespace lobewright::ports
