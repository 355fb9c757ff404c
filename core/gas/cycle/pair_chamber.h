#pragma once

#include "core/gas/cycle/cycle.h"
#include "core/mechanism/pair_polynomials.h"
#include "core/ports/events.h"

namespace lobewright::gas {

/// The chamber between two opposed pistons on their tracks, with its ports.
class PairChamber final : public Chamber {
  public:
    /// Angles are those of the pair: shaft angles of cylinder 1.
    explicit PairChamber(const ports::PortTiming& timing);

    std::unique_ptr<Chamber> clone() const override;
    ChamberGeometry at(double theta) const override;
    double volume(double theta) const override;
    SpaceBehind behind(double theta, PumpSides sides) const override;
    double period() const override;
    double cyclesPerTurn() const override;
    double bore() const override;
    double sweptVolume() const override;
    double meanStrokeSum() const override;
    const std::vector<CycleAngles>& cycles() const override { return cycles_; }
    const std::vector<double>& kinks() const override { return kinks_; }

  private:
    /// Rows of one end.
    struct Opening {
        double edge = 0.0; ///< outermost position that covers every row [m]
        std::vector<ports::Row> rows;
    };
    void findOpenStretches();
    ChamberGeometry geometryAt(double theta) const;
    double effectiveArea(const Opening& opening, double position) const;

    ports::PortTiming timing_;
    std::shared_ptr<const mechanism::PairPolynomials> motion_;
    double pistonArea_ = 0.0, recess_ = 0.0;
    PerEnd<Opening> openings_;
    std::vector<char> mayOpen_; ///< whether a port may, on each stretch of motion_
    std::vector<CycleAngles> cycles_;
    std::vector<double> kinks_;
};

} // namespace lobewright::gas
