#pragma once

#include "core/gas/cylinder.h"
#include "core/gas/dormand_prince.h"
#include "core/gas/neighbours.h"
#include "core/gas/radau.h"
#include "core/gas/trace.h"

#include <Eigen/Core>

#include <optional>
#include <string>
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
    double theta = 0.0; ///< window angle [rad]
    std::size_t member = 0;
    Memory memory;
};

/// The supply at a window angle of a record [rad].
SupplyState supplyAt(const Model& model, const StepRecord& steps, double window);

/// Cylinders that share one supply, and their plenum if it has one.
///
/// Evenly phased cylinders run alike. They are integrated together over the phase between them
/// only: each then stands where its neighbour began, so that one short window shows the whole
/// period. Unevenly phased cylinders are integrated together over the whole period. A reservoir
/// couples nothing, and one cylinder suffices.
class Ring {
  public:
    /// A constant supply: one cylinder over its period.
    Ring(const Model& model, const SupplyState& supply);
    /// A blower's plenum. `lags`: distinct phases of the cylinders [rad], the first 0; `weights`:
    /// cylinders in each phase; `even`: evenly spaced with equal weights.
    Ring(const Model& model, const std::vector<double>& lags, const std::vector<double>& weights,
         bool even);

    /// A blower's plenum with evenly phased cylinders, of which one is integrated over its period;
    /// the others follow it (see Neighbours). Needs a pose, or the last window of another ring.
    Ring(const Model& model, const std::vector<double>& lags, double weight);
    void followWindowOf(const Ring& other) {
        neighbours_.remember(other.steps_, other.freshIntervals_);
    }

    struct Snapshot {
        std::array<double, cylinderVariables> y{};
        Memory memory;
    };
    /// Places a cylinder. At the period's start only the masses, temperature, slug and exhaust
    /// matter.
    void place(int cylinder, const Snapshot& snapshot);
    void setPlenum(double mass, double temperature);

    /// A ring between two windows.
    struct Pose {
        struct Stand {
            double localStart = 0.0;      ///< [rad]
            std::vector<unsigned> behind; ///< actions since the closing that began its period
            Memory memory;
        };
        std::vector<double> y;
        std::vector<Stand> members;
        StepRecord steps; ///< of the last window, where others follow
        std::vector<FreshInterval> freshIntervals;
    };
    Pose pose() const;
    /// False, and nothing is changed: a pose of another kind of ring, or one in which a cylinder
    /// has other events behind it.
    bool assume(const Pose& pose);

    void setSupply(const SupplyState& supply) {
        constantSupply_ = supply;
        steps_.constantPressure = supply.pressure;
    }

    int cylinders() const { return static_cast<int>(members_.size()); }
    double localStart(int cylinder) const {
        return members_[static_cast<std::size_t>(cylinder)].localStart;
    }

    /// Integrates one window from the present state, which becomes the state after it. `snapshots`
    /// receives cylinder 0 at the window angles of `snapshotAngles`, ascending.
    std::optional<Problem> advance(double relativeTolerance);

    /// Snapshots of cylinder 0 taken by `advance` [window angle, rad].
    std::vector<double> snapshotAngles;
    std::vector<Snapshot> snapshots;

    /// Where equations change: states of cylinder 0 from which `advance` went on smoothly [window
    /// angle, rad]. Kept only where asked for, for comparison with other integrators.
    struct Restart {
        double theta = 0.0;
        Snapshot snapshot;
    };
    bool keepRestarts = false;
    std::vector<Restart> restarts;

    /// The state that must repeat, scaled to about 1: cylinders one after the other,
    /// then the plenum.
    Eigen::VectorXd repeating();
    /// False, and nothing is changed, when no gas could be in that state.
    bool setRepeating(const Eigen::VectorXd& state);

    const std::vector<std::vector<CycleRecord>>& records() const { return records_; }
    const StepRecord& steps() const { return steps_; }
    const std::vector<ModeChange>& modeChanges() const { return modeChanges_; } ///< ascending
    std::vector<Stretch> stretches() const;
    double window() const { return window_; }
    bool alike() const { return even_; }
    /// The least of what the cycles of the last window held of air and took in fresh, as shares of
    /// the charge; 1 when motored.
    double airShare() const;
    /// Means over the last window: plenum pressure [Pa], temperature [K], blower power [W].
    double meanPlenumPressure() const { return plenumPressure_; }
    double meanPlenumTemperature() const { return plenumTemperature_; }
    double meanBlowerPower() const { return blowerPower_; }
    /// When cylinder 0 drew fresh gas in the last window.
    const std::vector<FreshInterval>& freshIntervals() const { return freshIntervals_; }
    long rhsEvaluations() const { return rhsEvaluations_; }
    /// Evaluations of one cylinder's rates.
    long work() const { return rhsEvaluations_ * cylinders(); }
    long stepCount() const { return stepCount_; }
    long implicitSteps() const { return effort_.implicitSteps; }
    /// Steps and evaluations so far, by kind.
    const Effort& effort() const { return effort_; }
    /// Rates of the whole ring at a window angle, for comparison with other integrators.
    int size() const { return static_cast<int>(y_.size()); }
    void rates(double theta, const double* y, double* dy);
    const std::vector<double>& state() const { return y_; }

  private:
    struct Member {
        Member(const Model& model, double start)
            : cylinder(model), localStart(start), offset(start) {}
        Cylinder cylinder;
        Memory memory;
        double localStart = 0.0; ///< local angle at window angle 0
        double offset = 0.0;     ///< local angle − window angle
        double weight = 1.0;     ///< cylinders it stands for
        std::size_t nextStop = 0;
        std::size_t record = 0;                        ///< which row of records_
        double countedMass = 0.0, countedEnergy = 0.0; ///< when counting began
        Observed observed;                             ///< of the latest evaluation of the rates
        Observed settled;                              ///< at the start of the step
        Margins margins{};                             ///< there too
        double lastEvent = -1.0; ///< window angle of the last change of mode found
        bool hintsStale = true;  ///< the flags that only tell where formulas bend are to be set
    };
    /// The size that suited the first step of a smooth stretch [rad], and for which tolerance.
    struct FirstStep {
        double size = 0.0, tolerance = 1.0;
        bool implicit = false;
    };
    struct Crossing {
        std::size_t member = 0;
        int event = -1;
        double share = 1.0; ///< of the step
    };
    enum PlenumVariable {
        plenumMass,
        plenumTemperature,
        blowerWork,
        pressureSum,
        temperatureSum,
        plenumVariables
    };

    double* variables(std::size_t member) { return &y_[member * cylinderVariables]; }
    const double* variables(std::size_t member) const { return &y_[member * cylinderVariables]; }
    bool standsAtClosing(std::size_t member) const;
    bool hasPlenum() const { return plenumOffset_ < y_.size(); }
    SupplyState plenumState(const double* y) const;
    void plenumRates(const double* y, double fresh, const SupplyState& supply, double* dy) const;

    // ring.cpp
    void startWindow();
    void finishWindow();
    void noteFreshFlow();
    void setPlenumScales();
    void setWeights(double relativeTolerance);
    std::optional<Problem> integrateTo(double stop);
    /// The error of a step relative to what is tolerated; infinite when it could not be taken.
    double tryStep(double h);
    void adaptStep(double h, double error, bool cutShort);
    void shortenStep(double h, double error);
    void accept(double h, double end);
    void settle();                  ///< what is judged at the start of a step
    void chooseMethod(double stop); ///< explicit or implicit
    bool takePartOfStep(double h);  ///< up to an event
    void extend(std::size_t member, std::vector<double>& coefficients) const;
    void beginStretch();
    void noteFirstStep(double suitable);
    void refresh(); ///< rates, observations and margins at the present state
    std::optional<Crossing> firstCrossing(double h);
    double crossingShare(std::size_t member, int event, double h);
    std::optional<Problem> impossibleState(double theta) const;
    Problem stalled() const;
    void takeStorage(std::size_t recordRows);

    // ring_stiffness.cpp
    static std::vector<VariableRange> coupledRanges(std::size_t cylinders, bool plenum);
    static std::vector<int> stiffVariables(std::size_t cylinders, bool plenum);
    double plenumRelaxation() const;
    void findStiffDerivatives();
    const DenseStep& step() const {
        return stiff_ ? static_cast<const DenseStep&>(implicit_) : explicit_;
    }

    // ring_stops.cpp
    std::size_t stopAfter(double localAngle) const;
    std::vector<unsigned> eventsUpTo(double localAngle) const;
    std::vector<unsigned> eventsBehind(std::size_t member) const;
    double nextStopAngle() const;
    bool applyStops(); ///< true: something happened
    void applyStop(std::size_t member, unsigned actions);
    void openInlet(std::size_t index);
    void openExhaust(std::size_t index);
    void startBurn(std::size_t index);
    void beginCycle(std::size_t index);
    void endCycle(std::size_t index);
    void toggle(std::size_t member, Event event);
    void count(std::size_t member); ///< moves what was counted into the record
    void startCounting(std::size_t member);
    void setInletInflow(std::size_t index);

    const Model* model_;
    SupplyState constantSupply_;
    bool even_ = true;
    double window_ = 0.0;
    std::vector<Member> members_;
    std::vector<double> y_, dy_, scratch_, scratchRates_, scales_, weights_, extension_;
    std::size_t plenumOffset_ = 0;
    DormandPrince explicit_;
    Radau implicit_;
    bool stiff_ = false;          ///< the implicit method is at work
    Eigen::MatrixXd derivatives_; ///< ∂f/∂y of the stiff variables
    double relaxation_ = 0.0;     ///< fastest of all chambers [1/rad]
    StepRecord steps_;
    std::vector<ModeChange> modeChanges_; ///< of the window
    Neighbours neighbours_;
    std::vector<FreshInterval> freshIntervals_;
    std::vector<Crossing> crossings_;
    std::vector<FirstStep> firstSteps_; ///< of each stretch of the window
    std::size_t stretch_ = 0;           ///< stretches begun in this window
    bool firstStepPending_ = false, firstStepFailed_ = false;
    double weightsTolerance_ = 0.0; ///< that weights_ stand for
    std::vector<std::vector<CycleRecord>> records_;
    double theta_ = 0.0, h_ = 0.0, tolerance_ = 0.0, slack_ = 0.0, lastError_ = 1e-4;
    double plenumPressure_ = 0.0, plenumTemperature_ = 0.0, blowerPower_ = 0.0;
    long rhsEvaluations_ = 0, stepCount_ = 0;
    Effort effort_;
};

/// The weighted sum of poses, the weights adding up to 1; the first where they are of different
/// kinds of ring or stand between different events. What others follow is the first's. At least one
/// pose.
Ring::Pose blend(const std::vector<const Ring::Pose*>& poses, const std::vector<double>& weights);

} // namespace lobewright::gas
