#pragma once

#include "core/gas/cycle/cylinder.h"
#include "core/gas/cycle/trace.h"

#include <optional>
#include <vector>

namespace lobewright::gas {

/// What is collected over one cycle of one cylinder.
struct CycleRecord {
    std::array<double, countedVariables> counted{}; ///< Variable − carriedVariables
    double massChange = 0.0;                        ///< [kg]
    double energyChange = 0.0;                      ///< of the internal energy [J]
    double trappedMass = 0.0, trappedPressure = 0.0, trappedTemperature = 0.0;
    double trappedVolume = 0.0, trappedAir = 0.0; ///< at the closing that begins the cycle
    double fuelMass = 0.0;
    double closingMass = 0.0, retainedFresh = 0.0; ///< at the closing that ends it
    double knockIntegral = 0.0;
    std::optional<double> knockAngle; ///< local [rad]
    double of(Variable variable) const {
        return counted[static_cast<std::size_t>(variable - carriedVariables)];
    }
};

/// A place where the equations of a cylinder change, and what it remembers from there on.
struct ModeChange {
    double window = 0.0; ///< angle from the start of the period [rad]
    Memory memory;
};

/// What is written down of a cylinder along its period.
struct CylinderRecord {
    std::vector<CycleRecord> cycles;
    StepRecord steps;
    std::vector<ModeChange> modeChanges;
    void clear();
    void sort(); ///< by angle: parts of a period may have been recorded in another order
};

/// Pressures outside the ports [Pa].
struct PortPressures {
    double inlet = 0.0, exhaust = 0.0;
};

/// A cylinder somewhere in its cycle, and what happens to it where its equations change: at port
/// and burn events, and where flows turn, choke or run out.
class RunningCylinder {
  public:
    explicit RunningCylinder(const Model& model);

    /// Stands at the closing that begins a cycle.
    void begin(const Charge& charge, std::size_t cycle);
    Charge carried() const;
    /// The next stop of its angle, from where it stands.
    void findNextStop();
    double nextStopAngle() const;
    bool portOpens() const;                ///< where it stands
    bool portClosesAt(double angle) const; ///< its next stop being there or beyond
    /// Whatever happens at the angle where it stands: the actions.
    unsigned applyStops(const PortPressures& outside);
    void toggle(Event event);
    void startCounting();
    void count(); ///< moves what was counted into the record

    Cylinder equations;
    std::array<double, cylinderVariables> y{};
    Memory memory;
    double angle = 0.0;  ///< of the cylinder [rad]
    double weight = 1.0; ///< cylinders it stands for
    std::size_t row = 0; ///< which of the cylinders that run differently
    std::size_t nextStop = 0;
    bool rough = false; ///< stops only where something happens
    CylinderRecord* written = nullptr;
    Responses responses;       ///< at the start of the step, while a port is open
    Margins margins{};         ///< there too
    Margins ahead{};           ///< at its end
    double lastEvent = -1e300; ///< angle of the last change of mode found
    bool hintsStale = true;    ///< the flags that only tell where formulas bend are to be set

  private:
    CycleRecord& record() { return written->cycles[static_cast<std::size_t>(memory.cycle)]; }
    void passKinks();
    void applyStop(unsigned actions, const PortPressures& outside);
    void openInlet(double supplyPressure);
    void openExhaust(double exhaustPressure);
    void startBurn();
    void beginCycle();
    void endCycle();
    void setInletInflow();

    const Model* model_;
    double countedMass_ = 0.0, countedEnergy_ = 0.0; ///< when counting began
};

} // namespace lobewright::gas
