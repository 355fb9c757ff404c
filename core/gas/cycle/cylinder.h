#pragma once

#include "core/gas/cycle/model.h"
#include "core/gas/models/orifice.h"

#include <array>

namespace lobewright::gas {

/// What stands outside the ports of a cylinder just now.
struct SupplyState {
    double pressure = 0.0; ///< before the inlet ports [Pa]
    Stream fresh;
    double exhaustPressure = 0.0; ///< behind the exhaust ports [Pa]
    Stream behind;                ///< there, of an exhaust plenum; not used without one
};

/// What passes a port, in the direction of the mode.
struct PortFlow {
    double products = 0.0;    ///< share of what passes
    double enthalpy = 0.0;    ///< of it [J/kg]
    double conductance = 0.0; ///< [kg/rad] where ψ is 1
    FlowFunction psi;
    double mass() const { return conductance * psi.value; } ///< [kg/rad]
};

/// Of the ports that are open.
struct PortFlows {
    PortFlow inlet, exhaust;
};

/// How the flow through a port answers to the pressures. Where a port is wide and the engine slow,
/// this makes the equations stiff.
struct PortResponse {
    double slope = 0.0;      ///< ∂(flow in)/∂p [kg/(rad·Pa)], ≤ 0 near equilibrium
    double outerSlope = 0.0; ///< the same with the pressure outside
    double products = 0.0;   ///< share of products of the stream
    double energy = 0.0; ///< what a kilogram adds to the internal energy beyond its own, h − u [J]
};

/// The stiff part of the equations.
struct Responses {
    PortResponse inlet, exhaust;
    double heatCapacity = 0.0;        ///< Σ m·c_v [J/K]
    double pressurePerAir = 0.0;      ///< ∂p/∂m [Pa/kg]
    double pressurePerProducts = 0.0; ///< [Pa/kg]
    double pressurePerKelvin = 0.0;   ///< [Pa/K]

    /// Rate at which the chamber pressure relaxes towards that outside the ports [1/rad], ≥ 0.
    double relaxation() const;
};

/// Changes that end a step. The margin of an event is positive while the present mode holds.
enum class Event {
    inletTurns,
    slugReturned,
    exhaustTurns,
    displacementEnds,
    inletChokes,
    exhaustChokes,
    motoredPressureCrossed,
    fitBreakCrossed,
    shortCircuitLimited,
    knockReached,
    airUsedUp
};
inline constexpr int eventCount = 11;
using Margins = std::array<double, eventCount>;

/// The differential equations of the gas in one cylinder. Holds no state but a memory of the
/// last geometry and flows; what varies is in `y` (see Variable) and in `Memory`. Angles are the
/// cylinder's [rad].
class Cylinder {
  public:
    explicit Cylinder(const Model& model) : model_(&model) {}

    /// dy/dθ. y and dy shape (cylinderVariables).
    void rates(double angle, const double* y, const Memory& memory, const SupplyState& supply,
               double* dy);
    /// Only where the rates were asked for last: the flows through the ports are those.
    Responses responses(double angle, const double* y, const Memory& memory,
                        const SupplyState& supply);
    /// Likewise. Of all events that may end the present mode; 1 of the others. `bends`: also of
    /// those that only tell where a formula bends, which a rough integration need not know.
    Margins margins(double angle, const double* y, const Memory& memory, const SupplyState& supply,
                    bool bends);
    /// Of all, wherever the rates were asked for last.
    Margins marginsElsewhere(double angle, const double* y, const Memory& memory,
                             const SupplyState& supply);

    const ChamberGeometry& geometry(double angle) {
        if (angle != geometryAngle_) {
            geometry_ = model_->chamber->at(angle);
            geometryAngle_ = angle;
        }
        return geometry_;
    }
    double pressure(double angle, const double* y); ///< [Pa]
    /// d(ln p)/dθ from the rates dy [1/rad].
    double pressureRise(double angle, const double* y, const double* dy);
    double internalEnergy(const double* y) const; ///< [J]
    /// Multiplier included; 0 without wall heat [W/(m²·K)].
    double wallCoefficient(double angle, const double* y, const Memory& memory);

  private:
    const Model* model_;
    double geometryAngle_ = -1e300;
    ChamberGeometry geometry_;
    PortFlows ports_; ///< where the rates were asked for last
};

} // namespace lobewright::gas
