#pragma once

#include "ui/base/shown.h"

#include <optional>
#include <string_view>

namespace lobewright::ui {

/// What the gas of one cylinder is at one moment, as far as a drawing needs it.
struct GasMoment {
    double pressure = 0.0;    ///< [bar]
    double temperature = 0.0; ///< [K]
    double burntShare = 0.0;  ///< products over all, 0 … 1
    bool burning = false;     ///< inside the burn of a fired cycle
};

/// The engine that a view of the scene draws: the newest geometry, and the newest solution, which
/// while a handle is dragged may still belong to the design before.
class ShownEngine {
  public:
    void setGeometry(const GeometryPointer& geometry);
    /// Null: forget the solution, keep the geometry.
    void setSolution(const SolutionPointer& solution);
    void setBaseline(const SolutionPointer& baseline) { baseline_ = baseline; }

    bool isEmpty() const { return !geometry_; }
    const design::Design& design() const { return geometry_->design; }
    std::shared_ptr<const design::Design> sharedDesign() const {
        return {geometry_, &geometry_->design};
    }
    const mechanism::OpposedPair& pair() const { return geometry_->pair; }
    const ports::PortTiming& timing() const { return geometry_->timing; }
    const solution::Solution* solution() const { return solution_.get(); }
    const SolutionPointer& sharedSolution() const { return solution_; }
    const solution::Solution* baseline() const { return baseline_.get(); }
    /// Whether the solution belongs to the design shown.
    bool isSolved() const { return solved_; }

    int cylinders() const { return design().mechanism.cylinders; }
    /// Shaft angle [rad, 0 … 2π) at which cylinder 1 is where cylinder `index` (from 0) is at θ.
    double angleOfCylinder(int index, double theta) const;
    /// Cycle that cylinder 1 is in at θ, and the cycle angle from its IDC [rad], −π … π.
    struct CycleMoment {
        int cycle = 0;
        double angle = 0.0;
    };
    CycleMoment cycleAt(double theta) const;
    /// The events that follow the last IDC at or before θ, shifted by whole periods to lie there.
    ports::CycleEvents eventsSince(double theta) const;

    /// A channel of the solution at θ of cylinder 1, linear between samples; nothing when there is
    /// no such channel or no value there.
    std::optional<double> channel(std::string_view name, double theta) const;
    /// Largest magnitude of a channel over the turn.
    std::optional<double> channelPeak(std::string_view name) const;
    std::optional<GasMoment> gasAt(double theta) const;
    /// Cycle angle since the start of combustion [rad], −2π … 2π; nothing where nothing burns.
    std::optional<double> sinceBurnStart(double theta) const;
    /// Mean pressure outside the ports of an end [bar]; nothing without a solved gas.
    std::optional<double> pressureOutside(End end) const;
    /// Whether gas would flow into the chamber through open ports of an end at θ.
    std::optional<bool> flowsIn(End end, double theta) const;

  private:
    GeometryPointer geometry_;
    SolutionPointer solution_;
    SolutionPointer baseline_;
    bool solved_ = false;
};

} // namespace lobewright::ui
