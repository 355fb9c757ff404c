#pragma once

#include "core/design/reference.h"
#include "core/gas/cycle/cycle.h"
#include "core/reference/crank_motion.h"
#include "core/result.h"

#include <memory>
#include <vector>

namespace lobewright::study {

/// One cylinder of a conventional four-stroke: crank angle θ = 0 at firing top dead centre, one gas
/// cycle in two turns, flat head of the bore's area. The piston faces the head alone, so its lift
/// is counted from bottom dead centre.
class FourStrokeChamber final : public gas::Chamber {
  public:
    /// sweptVolume > 0 [m³] of one cylinder; 0 < rodRatio < 1. Errors: a number out of range, valve
    /// events out of order, burn or compression without room. Paths below /reference/four_stroke.
    static Result<FourStrokeChamber> make(const design::FourStroke& engine, double sweptVolume,
                                          double rodRatio);

    std::unique_ptr<gas::Chamber> clone() const override;
    gas::ChamberGeometry at(double theta) const override;
    double period() const override;
    double cyclesPerTurn() const override { return 0.5; }
    double bore() const override { return bore_; }
    double sweptVolume() const override { return sweptVolume_; }
    /// 4·S, so that times c·n it is the mean piston speed 2·S·n.
    double meanStrokeSum() const override { return 4.0 * crank_.stroke(); }
    const std::vector<gas::CycleAngles>& cycles() const override { return cycles_; }
    const std::vector<double>& kinks() const override { return kinks_; }

    const SliderCrank& crank() const { return crank_; }
    double pistonArea() const;
    double clearanceVolume() const { return clearanceVolume_; } ///< [m³]
    const design::FourStroke& engine() const { return engine_; }

  private:
    FourStrokeChamber(const design::FourStroke& engine, double sweptVolume, double rodRatio);
    void findKinks();

    design::FourStroke engine_;
    double sweptVolume_, bore_;
    SliderCrank crank_;
    double clearanceVolume_;
    std::vector<gas::CycleAngles> cycles_;
    std::vector<double> kinks_;
};

/// Lift of a valve at θ between opening and closing [rad]: L_max·sin²(π(θ−θ_o)/(θ_c−θ_o)), 0
/// outside.
double valveLift(double theta, double opens, double closes, double largestLift);
/// Flow area of n valves [m²]: n·min(π·D·L, π·D²/4).
double valveArea(int valves, double seatDiameter, double lift);

/// Friction without pumping of a four-stroke at shaft speed ω [Pa]: 0.97 + 0.15·N + 0.05·N² bar, N
/// in 1000/min [Heywood 1988, §13.2, from memory], less 0.2 bar because that fit holds the pumping
/// that the indicated pressure already has [own estimate].
double fourStrokeFmep(double omega);

} // namespace lobewright::study
