#pragma once

#include "core/gas/cycle/cycle.h"
#include "core/gas/cycle/outside.h"
#include "core/gas/cycle/pump_space.h"
#include "core/gas/cycle/state.h"
#include "core/gas/integrators/dense_step.h"
#include "core/gas/models/fuel.h"

#include <algorithm>
#include <cmath>
#include <memory>
#include <vector>

namespace lobewright::gas {

/// What a record tells of one cylinder.
struct RecordedGas {
    double air = 0.0, products = 0.0; ///< [kg]
    double temperature = 0.0;         ///< [K]
};

/// The continuous extension of every step of one cylinder's period, for the state of the gas.
struct StepRecord {
    static constexpr int terms = DenseStep::denseTerms; ///< coefficients a variable
    static constexpr int variables = 4; ///< air, products, temperature, and one that fills up
    std::vector<double> begin, length;  ///< window angle, from the start of the period [rad]
    std::vector<double> coefficients;   ///< variables × terms × steps, variables fastest

    void clear();
    void sort(); ///< by angle: parts of a period may have been recorded in another order
    /// Index of the step that holds a window angle [rad].
    std::size_t stepAt(double window) const;
    /// The same, looked for from another step on: at once where angles ascend.
    std::size_t stepFrom(std::size_t step, double window) const;
    /// Where in a step a window angle falls, 0 … 1.
    double shareAt(std::size_t step, double window) const {
        return std::clamp((window - begin[step]) / length[step], 0.0, 1.0);
    }
    RecordedGas gasInStep(std::size_t step, double s) const {
        double values[variables];
        denseValuesOfFour(&coefficients[step * variables * terms], s, values);
        return {values[airMass], values[productsMass], values[temperature]};
    }
};

/// The supply over the shaft angle: constant, or the recorded steps of a plenum.
struct SupplyTrace {
    SupplyState constant;              ///< where there are no steps
    double span = 0.0;                 ///< after which the plenum repeats [rad]
    std::vector<double> begin, length; ///< [rad]
    std::vector<int> variables;        ///< of a PlenumState, as Outside::coupled
    std::vector<double> coefficients;  ///< terms × variables × steps, terms fastest
    PumpSpace pump;                    ///< without a chamber: there is none
    bool pumps() const { return pump.chamber != nullptr && !begin.empty(); }
    /// At an angle from the start of cylinder 1's period [rad].
    SupplyState at(double window, const Model& model) const;
    /// Of a pump chamber [Pa]; gas constants [J/(kg·K)].
    double pumpPressure(double window, double airConstant, double productsConstant) const;

  private:
    PlenumState stateAt(double window) const;
};

/// A periodic solution made of the recorded steps of every cylinder that runs differently.
class RecordedTrace final : public GasTrace {
  public:
    struct Setup {
        std::shared_ptr<const Chamber> chamber;
        double airConstant = 0.0, productsConstant = 0.0; ///< R [J/(kg·K)]
        double start = 0.0;              ///< local angle where the period starts [rad]
        std::vector<double> cylinderLag; ///< local angle = θ − lag, a cylinder [rad]
        std::vector<int> ofCylinder;     ///< which record shows a cylinder
        std::vector<StepRecord> records;
        SupplyTrace supply; ///< by θ − start
    };
    explicit RecordedTrace(Setup setup);

    GasSamples sample(const Samples& theta, int cylinder) const override;
    double pressure(double theta, int cylinder) const override;
    Samples pumpPressure(const Samples& theta, int cylinder) const override;

    struct State {
        double pressure, temperature, airMass, productsMass;
    };
    /// The gas at a local angle of a cylinder.
    State stateAt(double localAngle, int cylinder) const;
    /// Local angle less the start of the period, 0 … period [rad].
    double windowOf(double localAngle) const {
        const double into = localAngle - setup_.start;
        return into - std::floor(into / period_) * period_;
    }
    const Setup& setup() const { return setup_; }
    const StepRecord& recordOf(int cylinder) const {
        return setup_.records[static_cast<std::size_t>(
            setup_.ofCylinder[static_cast<std::size_t>(cylinder)])];
    }
    /// State at the share s of a recorded step.
    State stateInStep(const StepRecord& record, std::size_t step, double s) const {
        const RecordedGas gas = record.gasInStep(step, s);
        const double local = setup_.start + record.begin[step] + s * record.length[step];
        const double massTimesConstant =
            gas.air * setup_.airConstant + gas.products * setup_.productsConstant;
        return {massTimesConstant * gas.temperature / setup_.chamber->volume(local),
                gas.temperature, gas.air, gas.products};
    }

  private:
    Setup setup_;
    double period_ = 0.0; ///< [rad]
};

} // namespace lobewright::gas
