#pragma once

#include "core/gas/cycle/integration.h"
#include "core/gas/cycle/phases.h"

#include <Eigen/Core>

#include <deque>
#include <optional>
#include <vector>

namespace lobewright::gas {

/// A supply whose state does not change: the reservoir, or the blower's delivery at a pressure
/// [Pa].
SupplyState constantSupply(const Model& model, double blowerPressure);

/// A likely charge at the last port closing.
Charge guessedCharge(const Model& model, const SupplyState& supply);

/// The cylinders of an engine on one supply.
///
/// On a reservoir one cylinder stands for all and is taken through its period. On a plenum,
/// cylinders are integrated together with it while their inlets may be open, and each by itself
/// while they are not: what happens in a closed chamber concerns no other. Evenly phased cylinders
/// run alike; so a window as long as the phase between them shows the whole period, each cylinder
/// standing at its end where the one before it began. Otherwise the window is the period.
class CoupledCylinders {
  public:
    /// A cylinder in the middle of its gas exchange.
    struct Breathing {
        std::size_t row = 0; ///< which of the cylinders that run differently
        double angle = 0.0;  ///< of the cylinder [rad]
        std::array<double, cylinderVariables> y{};
        Memory memory;
    };
    /// What repeats in the steady state.
    struct State {
        /// At the closing before each cycle, of each cylinder that runs differently.
        std::vector<Charge> charges;
        std::vector<Breathing> breathing; ///< at the start of the window
        PlenumState plenum{};
        double delivery = 0.0; ///< of blower or compressor in a window, about [kg]
        /// The numbers one after the other, scaled to about 1.
        Eigen::VectorXd scaled(const Model& model) const;
        /// Absent where no gas could be in that state.
        std::optional<State> with(const Eigen::VectorXd& numbers, const Model& model) const;
    };

    /// `eachByItself`: evenly phased cylinders on a plenum are integrated one by one all the same.
    CoupledCylinders(const Model& model, const Phases& phases, bool eachByItself = false);
    /// One cylinder on a constant supply.
    CoupledCylinders(const Model& model, const SupplyState& supply);
    CoupledCylinders(const CoupledCylinders&) = delete;
    CoupledCylinders& operator=(const CoupledCylinders&) = delete;

    /// A likely state to begin with. Errors: those of `advance`.
    Result<State> guess() const;
    /// The supply that does not change with the plenum's mean pressure in a state.
    SupplyState meanSupply(const State& state) const;
    /// Whether a state has the shape of these cylinders'.
    bool fits(const State& state) const;

    /// Takes all through a window; `state` becomes that after it. Errors: gas out of range, or the
    /// work allowed used up.
    std::optional<Problem> advance(State& state, double relativeTolerance);
    /// Allows so many rate evaluations from now on.
    void allow(long evaluations);

    /// Moves the plenum of `after` to where the change over the last window leads in the end: a
    /// large one fills slowly. What repeats stays as it is. `trust`: 0 … 1, less where that leads
    /// nowhere. False: it leads farther than the equations are known for, and was cut short.
    bool foreseePlenum(const State& before, State& after, double trust) const;

    int windowsPerPeriod() const { return windows_; }
    // Of the last window.
    const std::vector<CylinderRecord>& records() const { return records_; }
    void sortRecords(); ///< by angle
    SupplyTrace supply() const;
    bool alike() const { return records_.size() == 1; }
    /// The least of what the cycles held of air and took in fresh, as shares of the charge; 1 when
    /// motored.
    double airShare() const;
    double sumOf(Variable counted) const; ///< over all cycles of those that run differently
    double meanPlenumPressure() const;    ///< [Pa]
    double meanPlenumTemperature() const; ///< [K]
    double meanBlowerPower() const;       ///< or that the pump takes [W]
    PumpFigures pump() const;             ///< of the pump chamber, a cylinder and cycle
    CompressorFigures compressor() const; ///< only where there is one
    TurbineFigures turbine() const;       ///< likewise; `sustained` left as it is
    double meanWheelPower() const;        ///< that a turbine's compressor takes [W]
    double meanTurbinePower() const;      ///< [W]
    // Of all windows so far.
    Effort effort() const;
    long rateEvaluations() const { return alone_.rateEvaluations() + together_.rateEvaluations(); }
    Integration& alone() { return alone_; }

  private:
    /// A cylinder about to breathe: where in the window its inlet opens.
    struct Entry {
        double theta = 0.0; ///< [rad]
        std::size_t row = 0, cycle = 0;
    };
    /// Of blower or compressor in a window at a pressure in the plenum [Pa] [kg].
    double delivery(double plenumPressure) const;
    std::size_t cycles() const { return model_->chamber->cycles().size(); }
    /// Where a cylinder begins to concern the others: its inlet opens, or with an exhaust plenum
    /// any port.
    double entryOf(const CycleAngles& cycle) const {
        return model_->hasTurbine() ? cycle.firstOpening : cycle.inletOpens;
    }
    std::optional<Problem> advanceAlone(State& state, double tolerance);
    std::optional<Problem> advanceTogether(State& state, double tolerance);
    /// Through the closed part of a cycle up to the opening of the inlet; or to its end.
    std::optional<Problem> run(RunningCylinder& cylinder, unsigned until, double tolerance);
    std::optional<Problem> enter(const Entry& entry, const State& state, double tolerance);
    void leave(State& state);
    void put(const Breathing& breathing, double tolerance);

    const Model* model_;
    std::vector<double> lags_; ///< of the cylinders that run differently [rad]
    std::vector<double> weights_;
    bool hasPlenum_ = false;
    int windows_ = 1; ///< a period
    double window_ = 0.0;
    Integration alone_, together_;
    RunningCylinder closed_;                ///< followed by itself
    std::deque<RunningCylinder> breathing_; ///< together, the longest first
    std::vector<Entry> entries_;            ///< ascending
    /// Angles of the window where a skirt changes its row, ascending [rad].
    std::vector<double> pumpStops_;
    std::vector<CylinderRecord> records_;
    PlenumState windowBegin_{};
};

/// The weighted sum of states, the weights adding up to 1; the first where they are of different
/// shapes or stand between different events. At least one.
CoupledCylinders::State blend(const std::vector<const CoupledCylinders::State*>& states,
                              const std::vector<double>& weights);

} // namespace lobewright::gas
