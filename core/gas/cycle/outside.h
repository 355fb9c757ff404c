#pragma once

#include "core/gas/cycle/cylinder.h"

#include <array>
#include <optional>
#include <vector>

namespace lobewright::gas {

/// What stands before the inlet ports, the blower's plenum or the pump chamber, and what is counted
/// of it.
enum PlenumVariable : int {
    plenumMass,        ///< [kg]
    plenumTemperature, ///< [K]
    plenumProducts,    ///< in a pump chamber [kg]
    blowerWork,        ///< of the blower, or that the pump takes [J]
    pressureSum,       ///< ∫p dθ [Pa·rad]
    temperatureSum,    ///< ∫T dθ [K·rad]
    intakeMass,        ///< taken in, by blower or compressor through reed or skirt row [kg]
    intakeEnthalpy,    ///< with it [J]
    portMass,          ///< given to the cylinders, net [kg]
    portEnthalpy,      ///< with it [J]
    plenumVariables,
    // and with a turbine what stands behind the exhaust ports
    exhaustPlenumMass = plenumVariables, ///< [kg]
    exhaustPlenumTemperature,            ///< [K]
    exhaustPlenumProducts,               ///< [kg]
    // or, of a pump with a transfer volume, what stands in it before the inlet ports
    transferMass = exhaustPlenumMass,
    transferTemperature = exhaustPlenumTemperature,
    transferProducts = exhaustPlenumProducts,
    turbineWork,           ///< from the gas [J]
    wheelWork,             ///< of the compressor [J]
    exhaustInMass,         ///< from the cylinders, net [kg]
    exhaustInEnthalpy,     ///< with it [J]
    nozzleMass,            ///< through the turbine [kg]
    nozzleEnthalpy,        ///< before it [J]
    exhaustPressureSum,    ///< ∫p dθ [Pa·rad]
    exhaustTemperatureSum, ///< ∫T dθ [K·rad]
    outsideVariables
};
using PlenumState = std::array<double, outsideVariables>;

/// Above or below, the gas model means nothing [K].
inline constexpr double coldestGas = 50.0, hottestGas = 8000.0;

/// A stream of gas: mass, its products and its enthalpy.
struct Passed {
    double mass = 0.0, products = 0.0, enthalpy = 0.0;
};

/// What passes the ports of all cylinders in a radian.
struct PortTraffic {
    double fresh = 0.0; ///< into the cylinders through the inlet, of it what is fresh [kg]
    Passed in;          ///< into them through the inlet, net [kg], [kg], [J]
    Passed out;         ///< out of them through the exhaust, net [kg], [kg], [J]
    /// Of a cylinder whose state is y and whose rates are dy.
    void add(double weight, const double* y, const double* dy, const Memory& memory,
             const SupplyState& supply);
};

/// How the traffic answers to the pressures outside the ports [kg/(rad·Pa)].
struct TrafficAnswer {
    double fresh = 0.0;   ///< of what is drawn fresh
    double inlet = 0.0;   ///< through the inlet either way
    double exhaust = 0.0; ///< through the exhaust
    void add(double weight, const Mode& mode, const Responses& responses);
};

/// What stands outside the ports of several cylinders and changes with what they take and give: the
/// plenum that blower or compressor fill, or a pump chamber; behind a turbine's exhaust ports an
/// exhaust plenum besides. Holds no state; p is a PlenumState's numbers.
class Outside {
  public:
    /// `constant`: what does not change.
    Outside(const Model& model, const SupplyState& constant)
        : model_(&model), constant_(constant) {}

    int size() const {
        return model_->hasTurbine() || model_->hasTransfer() ? outsideVariables : plenumVariables;
    }
    std::vector<int> coupled() const; ///< variables that rates depend on
    PlenumState scales() const;       ///< an error of `tolerance` times the scale is tolerated
    double pressurePerState() const;  ///< of a plenum: p/(m·T) [Pa/(kg·K)]

    /// At an angle from the start of the window [rad].
    SupplyState state(double window, const double* p) const;
    void rates(double window, const double* p, const SupplyState& now, const PortTraffic& traffic,
               double* rate) const;
    /// Fastest rate at which pressures relax [1/rad], where those of the cylinders do at one.
    double relaxation(double ofCylinders, double window, const double* p, const SupplyState& now,
                      const TrafficAnswer& answer) const;
    /// Why no gas can be in that state.
    std::optional<Problem> impossible(const double* p) const;

  private:
    /// In the pump chamber, and in the transfer volume behind it.
    SupplyState pumpState(double window, const double* p) const;
    SupplyState transferState(const double* p) const;
    void plenumRates(const double* p, const SupplyState& now, double fresh, double* rate) const;
    void pumpRates(double window, const double* p, const SupplyState& now, const Passed& ports,
                   double* rate) const;
    void exhaustRates(const double* p, const SupplyState& now, const Passed& in,
                      double* rate) const;
    double pumpIntake(double window, const SupplyState& inside) const;
    double pumpRelaxation(double window, const double* p, const SupplyState& now,
                          double ports) const;
    double plenumRelaxation(const double* p, const SupplyState& now, double answer) const;
    double exhaustRelaxation(const double* p, const SupplyState& now, double answer) const;

    const Model* model_;
    SupplyState constant_;
};

} // namespace lobewright::gas
