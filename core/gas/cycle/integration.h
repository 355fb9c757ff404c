#pragma once

#include "core/gas/cycle/first_steps.h"
#include "core/gas/cycle/methods.h"
#include "core/gas/cycle/outside.h"
#include "core/gas/cycle/running_cylinder.h"

#include <Eigen/Core>

#include <array>
#include <limits>
#include <memory>
#include <optional>
#include <vector>

namespace lobewright::gas {

/// Above this tolerance an integration is rough: it runs over kinks and bends of formulas.
inline constexpr double roughTolerance = 4e-5;

/// Follows cylinders along the shaft angle: one alone on a constant supply, or several with the
/// plenum that they draw from. The step adapts itself, and ends where the equations change between
/// stops. Where the gas follows the pressure outside its ports too closely for an explicit method,
/// an implicit one takes over.
class Integration {
  public:
    /// `plenum`: there is one, and `supply` does not count.
    Integration(const Model& model, const SupplyState& supply, bool plenum);

    std::vector<RunningCylinder*> cylinders; ///< that are followed; set before `advance`
    PlenumState plenum{};
    double theta = 0.0;              ///< of the plenum [rad]
    SupplyTrace plenumRecord;        ///< of all steps since it was cleared
    PortPressures pressures() const; ///< outside the ports at present
    const Outside& outside() const { return outside_; }

    /// Begins a period like the one before: its smooth stretches begin with the steps that suited
    /// them then.
    void beginPeriod() { firstSteps_.beginPeriod(); }
    /// Follows all over `length` radians, within which no cylinder has a stop.
    std::optional<Problem> advance(double length, double relativeTolerance);

    /// Follows the only cylinder to an angle of its own, through its stops [rad].
    std::optional<Problem> followTo(double angle, double relativeTolerance);

    const Effort& effort() const { return effort_; }
    long rateEvaluations() const { return cylinderEvaluations_; } ///< of one cylinder's rates each
    /// `advance` ends in an error once there have been more rate evaluations.
    long mostEvaluations = std::numeric_limits<long>::max();

    /// States of the first cylinder from which it went on smoothly, for comparison with other
    /// integrators.
    struct Restart {
        double angle = 0.0; ///< of the cylinder [rad]
        std::array<double, cylinderVariables> y{};
        Memory memory;
    };
    bool keepRestarts = false;
    std::vector<Restart> restarts;

  private:
    struct Crossing {
        std::size_t index = 0; ///< of the cylinder
        int event = -1;
        double share = 1.0; ///< of the step
    };
    double* variables(std::size_t index) { return &y_[index * cylinderVariables]; }
    int outsideSize() const { return hasPlenum_ ? outside_.size() : 0; }
    SupplyState supplyOf(double x, const double* y) const;
    void rates(double x, const double* y, double* dy);
    void findDerivativesByDifferences();
    void gather();  ///< states of the cylinders into one
    void scatter(); ///< and back
    void refresh(); ///< rates, observations and margins at the present state
    void settle();  ///< what is judged at the start of a step
    /// Of a cylinder whose state is at y; where the rates were asked for last.
    Margins marginsOf(std::size_t index, const double* y, double x, bool bends);
    void chooseMethod(double stop); ///< explicit or implicit
    void setWeights(double relativeTolerance);
    void findStiffDerivatives();
    std::optional<Problem> integrateTo(double stop);
    /// The error of a step relative to what is tolerated; infinite when it could not be taken.
    double tryStep(double h);
    void adaptStep(double h, double error, bool cutShort);
    void shortenStep(double h, double error);
    bool takePartOfStep(double h); ///< up to an event
    void change(const Crossing& crossing);
    double pressureRise(std::size_t index);
    /// The relative pressure drop from which on a step may reach beyond where a flow turns.
    static double dropNearTurn(double relativeTolerance);
    double stepTowardsTurn(); ///< the longest step that a turning flow allows [rad]
    void accept(double h, double end);
    void recordStep(double h);
    std::optional<Crossing> firstCrossing(double h);
    double crossingShare(RunningCylinder& cylinder, std::size_t index, Event event, double h);
    std::optional<Problem> impossibleState();
    Problem stalled() const;
    const DenseStep& step() const {
        return stiff_ ? static_cast<const DenseStep&>(methods_->implicitly) : methods_->explicitly;
    }

    const Model* model_;
    SupplyState constant_;
    bool hasPlenum_ = false;
    Outside outside_;
    std::vector<int> coupled_; ///< variables outside the ports that the rates depend on
    std::vector<std::array<double, DenseStep::denseTerms>> coupledCourse_; ///< over one step
    std::array<double, cylinderVariables> scales_{};
    PlenumState plenumScales_{};
    SupplyState supply_;                              ///< where the rates were asked for last
    std::vector<std::unique_ptr<Methods>> methodsOf_; ///< by the number of cylinders
    Methods* methods_ = nullptr;
    std::vector<double> y_, dy_, weights_, scratch_;
    std::vector<double> offsets_; ///< angle of a cylinder − x [rad]
    bool rough_ = false;          ///< only a rough answer is wanted
    bool stiff_ = false;          ///< the implicit method is at work
    double relaxation_ = 0.0;     ///< fastest of all [1/rad]
    double x_ = 0.0;              ///< from the start of `advance` [rad]
    double h_ = 0.0, tolerance_ = 0.0, weightsTolerance_ = 1.0, slack_ = 0.0, turnNear_ = 0.0;
    double logarithmOfLastError_ = 0.0;
    FirstSteps firstSteps_;
    Effort effort_;
    long cylinderEvaluations_ = 0;
};

} // namespace lobewright::gas
