#pragma once

#include "core/ends.h"
#include "core/gas/cycle/cycle.h"
#include "core/mechanism/mechanism.h"
#include "core/ports/row.h"
#include "core/reference/crank_motion.h"
#include "core/result.h"

#include <memory>
#include <span>
#include <vector>

namespace lobewright::study {

/// Two opposed pistons on cranks that turn together, with the bore, ports, clearance and adjuster
/// shift of a cam-track cylinder. One gas cycle a crank turn; crank angle θ, inlet crank at
/// τ = θ − π from its inner dead centre, exhaust crank ahead of it by the lead.
///
/// One-sided: the ordinary two-stroke, one piston on a crank against a flat head. Stroke, lead and
/// shift of the exhaust end are then not used; `shift` is that of the only piston.
struct CrankPairGeometry {
    bool oneSided = false;
    double bore = 0.0;      ///< [m]
    PerEnd<double> stroke;  ///< [m]
    double rodRatio = 0.28; ///< crank radius by rod length
    double clearance = 0.0; ///< between the crowns, both at inner dead centre [m]
    double recess = 0.0;    ///< [m³]
    double lead = 0.0;      ///< of the exhaust crank [rad of the crank]
    double shift = 0.0;     ///< of the exhaust piston in its bore, outward [m]
    ports::Rows ports;
};

class CrankPairChamber final : public gas::Chamber {
  public:
    /// Errors: pistons collide; a row that never opens or never closes; events out of order. Paths
    /// as in the design file.
    static Result<CrankPairChamber> make(const CrankPairGeometry& geometry);

    std::unique_ptr<gas::Chamber> clone() const override;
    gas::ChamberGeometry at(double theta) const override;
    gas::SpaceBehind behind(double theta, gas::PumpSides sides) const override;
    double period() const override;
    double cyclesPerTurn() const override { return 1.0; }
    double bore() const override { return geometry_.bore; }
    double sweptVolume() const override;
    double meanStrokeSum() const override;
    const std::vector<gas::CycleAngles>& cycles() const override { return cycles_; }
    const std::vector<double>& kinks() const override { return kinks_; }

    const CrankPairGeometry& geometry() const { return geometry_; }
    const SliderCrank& crank(End end) const { return cranks_[static_cast<std::size_t>(end)]; }
    /// The ends with a crank.
    std::span<const End> pistons() const {
        return std::span(bothEnds).first(geometry_.oneSided ? 1 : 2);
    }
    double tau(End end, double theta) const; ///< from inner dead centre of this end [rad]
    double pistonArea() const;               ///< [m²]

  private:
    explicit CrankPairChamber(const CrankPairGeometry& geometry);
    double gap(double theta) const;
    std::optional<Problem> findEvents();
    double strokeSum() const;
    /// The end whose piston uncovers the ports of this side.
    End uncovers(End side) const { return geometry_.oneSided ? End::inlet : side; }
    double shift(End end) const { return end == pistons().back() ? geometry_.shift : 0.0; }

    CrankPairGeometry geometry_;
    std::vector<SliderCrank> cranks_; ///< inlet, exhaust
    std::vector<gas::CycleAngles> cycles_;
    std::vector<double> kinks_;
};

} // namespace lobewright::study
