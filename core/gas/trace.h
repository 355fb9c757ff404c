#pragma once

#include "core/gas/cycle.h"
#include "core/gas/fuel.h"

#include <memory>
#include <optional>
#include <vector>

namespace lobewright::gas {

/// What a record tells of one cylinder.
struct RecordedGas {
    double air = 0.0, products = 0.0; ///< [kg]
    double temperature = 0.0;         ///< [K]
};

/// The continuous extension of every step of one window, for the three variables that give the
/// state of the gas.
struct StepRecord {
    static constexpr int terms = 5;     ///< coefficients a variable
    static constexpr int variables = 3; ///< air, products, temperature
    std::vector<double> begin, length;  ///< window angle [rad]
    std::vector<double> coefficients;   ///< terms × variables × cylinders × steps, terms fastest

    /// The same of the plenum's mass and temperature, terms × 2 × steps; empty without one.
    std::vector<double> plenumCoefficients;
    double pressurePerState = 0.0; ///< plenum pressure = this·mass·temperature [Pa/(kg·K)]
    double constantPressure = 0.0; ///< of the supply, without a plenum [Pa]

    void clear();
    double supplyPressureAt(double window) const; ///< [Pa]
    /// Temperature in the plenum [K]; absent without one.
    std::optional<double> plenumTemperatureAt(double window) const;
    /// Index of the step that holds a window angle [rad].
    std::size_t stepAt(double window) const;
    /// Where in a step a window angle falls, 0 … 1.
    double shareAt(std::size_t step, double window) const;
    /// Cylinder `index` of `count` at the share s of a step.
    RecordedGas gasInStep(std::size_t step, double s, std::size_t index, std::size_t count) const;
    /// The only cylinder of a record at a window angle [rad].
    RecordedGas gasAt(double window) const;
};

/// Which stretch of the recorded window shows a cylinder at a local angle.
struct Stretch {
    double localStart = 0.0; ///< local angle at the start of the window [rad]
};

/// A periodic solution made of the recorded steps. Cylinders that run alike share the stretches:
/// stretch b shows the b-th part of the period. Otherwise stretch r is the whole period of one
/// cylinder.
class RecordedTrace final : public GasTrace {
  public:
    struct Setup {
        std::shared_ptr<const Chamber> chamber;
        double airConstant = 0.0, productsConstant = 0.0; ///< R [J/(kg·K)]
        double start = 0.0;  ///< local angle where the period starts [rad]
        double window = 0.0; ///< length of the record [rad]
        bool alike = true;   ///< stretches are parts of one period
        std::vector<Stretch> stretches;
        std::vector<double> cylinderLag;  ///< local angle = θ − lag, a cylinder [rad]
        std::vector<int> cylinderStretch; ///< used when not alike
        StepRecord steps;
    };
    explicit RecordedTrace(Setup setup);

    GasSamples sample(const Samples& theta, int cylinder) const override;
    double pressure(double theta, int cylinder) const override;

    /// State of the gas at one local angle of a stretch group.
    struct State {
        double pressure, temperature, airMass, productsMass;
    };
    State stateAt(double localAngle, int cylinder) const;
    /// Where a local angle was recorded.
    struct Place {
        int stretch = 0;
        double window = 0.0; ///< angle [rad]
    };
    Place placeOf(double localAngle, int cylinder) const;
    const Setup& setup() const { return setup_; }
    /// State at the share s of a recorded step.
    State stateInStep(int step, double s, int stretch) const;

  private:
    Setup setup_;
};

} // namespace lobewright::gas
