#pragma once

#include "core/gas/model.h"

#include <array>

namespace lobewright::gas {

/// What the supply offers a cylinder just now.
struct SupplyState {
    double pressure = 0.0; ///< [Pa]
    Stream fresh;
};

/// How the flow through a port answers to the chamber pressure. Where a port is wide and the engine
/// slow, this makes the equations stiff.
struct PortResponse {
    double slope = 0.0;      ///< ∂(flow in)/∂p [kg/(rad·Pa)], ≤ 0 near equilibrium
    double outerSlope = 0.0; ///< the same with the pressure outside
    double products = 0.0;   ///< share of products of the stream
    double energy = 0.0; ///< what a kilogram adds to the internal energy beyond its own, h − u [J]
};

/// Quantities that come with the rates and that events are judged by.
struct Observed {
    double angle = 0.0;       ///< of the cylinder [rad]
    double pressure = 0.0;    ///< [Pa]
    double inletDrop = 0.0;   ///< (supply − chamber)/supply
    double exhaustDrop = 0.0; ///< (chamber − exhaust)/exhaust
    double inletChoking = 1.0, exhaustChoking = 1.0;
    double wallCoefficient = 0.0; ///< multiplier included [W/(m²·K)]
    double excess = 0.0;          ///< (p − motored p)/motored p while Woschni's term is on
    double freshRate = 0.0;       ///< drawn from the supply, net [kg/rad]
    double inletProducts = 0.0;   ///< with the flow in through the inlet, net [kg/rad]
    double shortCircuit = 0.0;    ///< exhaust outflow − σ·fresh inflow [kg/rad]
    PortResponse inletResponse, exhaustResponse;
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

/// The differential equations of the gas in one cylinder. Holds no state but a memory of the last
/// geometry; what varies is in `y` (see Variable) and in `Memory`.
class Cylinder {
  public:
    explicit Cylinder(const Model& model) : model_(&model) {}

    /// dy/dθ at the cylinder's angle. y and dy shape (cylinderVariables).
    void rates(double angle, const double* y, const Memory& memory, const SupplyState& supply,
               double* dy, Observed& observed);

    Margins margins(const double* y, const Memory& memory, const Observed& observed) const;

    const ChamberGeometry& geometry(double angle);
    double pressure(double angle, const double* y); ///< [Pa]
    double internalEnergy(const double* y) const;   ///< [J]

  private:
    /// Sums of what happens to the chamber in a radian.
    struct Balance {
        double air = 0.0, products = 0.0; ///< [kg]
        double energy = 0.0;              ///< heat and enthalpy [J]
    };
    struct Gas; ///< in the chamber, with its properties

    void burn(double angle, const Memory& memory, double* dy, Balance& balance) const;
    Stream leaving(const Gas& charge, const Memory& memory) const;
    void passInlet(const Gas& charge, const Memory& memory, const SupplyState& supply, double* dy,
                   Balance& balance, Observed& observed) const;
    void inletBackFlow(const Gas& charge, const Memory& memory, const SupplyState& supply,
                       double* dy, Balance& balance, Observed& observed) const;
    void passExhaust(const Gas& charge, const Memory& memory, const SupplyState& supply, double* dy,
                     Balance& balance, Observed& observed) const;
    void wallLoss(const Gas& charge, const Memory& memory, double* dy, Balance& balance,
                  Observed& observed) const;
    double wallCoefficient(const Gas& charge, const Memory& memory, Observed& observed) const;
    void countKnock(const Gas& charge, const Memory& memory, const double* y, double* dy) const;

    const Model* model_;
    double geometryAngle_ = -1e300;
    ChamberGeometry geometry_;
};

} // namespace lobewright::gas
