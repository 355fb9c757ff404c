#pragma once

#include "core/ports/events.h"
#include "core/solution/pipeline/stage_results.h"
#include "core/solution/solution.h"

#include <optional>
#include <string>
#include <vector>

namespace lobewright::solution {

/// Collects figures group by group, in the order in which files and screens show them.
class FigureList {
  public:
    void group(std::string name) { group_ = std::move(name); }
    /// `value` in SI; an absent or not finite one becomes "not available" with the note. `label`
    /// without the side.
    void add(QuantityId id, Message label, std::optional<double> value, Message note = {});
    /// A figure whose 1 and 0 mean yes and no.
    void addYesNo(std::string id, Message label, std::optional<bool> value, Message note = {});
    /// Where both sides have a figure, its label names the side.
    std::vector<Figure> take();

  private:
    std::string group_;
    std::vector<Figure> figures_;
};

/// Group "geometry": volumes, compression ratios, strokes, and what the adjuster changes.
/// speed: ω [rad/s], > 0.
void addGeometryFigures(FigureList& list, const ports::PortTiming& timing, double speed);

/// The same engine with another setting of its adjuster; absent where that setting cannot exist.
std::optional<ports::PortTiming> withAdjuster(const ports::PortTiming& timing,
                                              const mechanism::Adjuster& adjuster);
/// Geometric and trapped compression ratio, the lowest of the cycles.
double compressionRatio(const ports::PortTiming& timing);
double trappedCompressionRatio(const ports::PortTiming& timing);

/// Group "timing": events of the first cycle, spans, specific time-areas.
void addTimingFigures(FigureList& list, const ports::PortTiming& timing, double speed);

/// What reaches the shaft, all cylinders, means over a turn [SI]. Brake values deduct friction,
/// paid supply power and auxiliaries.
struct Brake {
    double imep = 0.0, fmep = 0.0, bmep = 0.0;        ///< [Pa]
    double torque = 0.0;                              ///< [N·m]
    double power = 0.0, indicatedPower = 0.0;         ///< [W]
    double supplyTorque = 0.0, auxiliaryTorque = 0.0; ///< deducted [N·m]
    double cyclesPerSecond = 0.0;                     ///< gas cycles of all cylinders [1/s]
};
Brake brakeOf(const StageResults& results);

/// Groups "performance" and "energy".
void addPerformanceFigures(FigureList& list, const StageResults& results);

/// Of compressor and turbine, into the group at hand; nothing without them.
void addSupplyFigures(FigureList& list, const gas::CycleSolution& gas,
                      const design::Design& design);

/// Group "loads": torque over a turn, forces, lift-off, work balance.
void addLoadFigures(FigureList& list, const StageResults& results);

/// Group "solver": how well and how dearly the equations were solved.
void addSolverFigures(FigureList& list, const StageResults& results);

/// Group "contact": nominal stresses, film, slip, roller life.
void addContactFigures(FigureList& list, const contact::Contact& contact,
                       const mechanism::OpposedPair& pair);

/// Of the group "balance" the largest shaking force and rocking moment alone.
void addShakingFigures(FigureList& list, const balance::Balance& balance);

/// Group "balance": shaking, rocking and torque orders, what would cancel them, speed fluctuation.
void addBalanceFigures(FigureList& list, const balance::Balance& balance,
                       const StageResults& results);

} // namespace lobewright::solution
