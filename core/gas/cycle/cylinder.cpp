#include "core/gas/cycle/cylinder.h"

#include "core/gas/cycle/instant.h"
#include "core/wide.h"

namespace lobewright::gas {
namespace {

/// Pascal that a kilogram through the port adds to the chamber.
double rise(const Responses& seen, const PortResponse& port) {
    return (1.0 - port.products) * seen.pressurePerAir + port.products * seen.pressurePerProducts +
           port.energy / seen.heatCapacity * seen.pressurePerKelvin;
}

} // namespace

double Responses::relaxation() const {
    return -inlet.slope * rise(*this, inlet) - exhaust.slope * rise(*this, exhaust);
}

double Cylinder::pressure(double angle, const double* y) {
    return (y[airMass] * model_->gas.air.gasConstant() +
            y[productsMass] * model_->gas.products.gasConstant()) *
           y[temperature] / geometry(angle).volume;
}

/// p = m·R·T/V, each factor by its own rate.
double Cylinder::pressureRise(double angle, const double* y, const double* dy) {
    const double air = model_->gas.air.gasConstant();
    const double products = model_->gas.products.gasConstant();
    const ChamberGeometry& g = geometry(angle);
    return (dy[airMass] * air + dy[productsMass] * products) /
               (y[airMass] * air + y[productsMass] * products) +
           dy[temperature] / y[temperature] - g.volumeRate / g.volume;
}

double Cylinder::internalEnergy(const double* y) const {
    return y[airMass] * model_->gas.air.internalEnergy(y[temperature]) +
           y[productsMass] * model_->gas.products.internalEnergy(y[temperature]);
}

LW_WIDE void Cylinder::rates(double angle, const double* y, const Memory& memory,
                             const SupplyState& supply, double* dy) {
    Instant(*model_, geometry(angle), y, memory, supply).rates(angle, dy, ports_);
}

LW_WIDE Responses Cylinder::responses(double angle, const double* y, const Memory& memory,
                                      const SupplyState& supply) {
    return Instant(*model_, geometry(angle), y, memory, supply).responses(ports_);
}

LW_WIDE Margins Cylinder::margins(double angle, const double* y, const Memory& memory,
                                  const SupplyState& supply, bool bends) {
    return Instant(*model_, geometry(angle), y, memory, supply).margins(ports_, bends);
}

LW_WIDE Margins Cylinder::marginsElsewhere(double angle, const double* y, const Memory& memory,
                                           const SupplyState& supply) {
    const Instant there(*model_, geometry(angle), y, memory, supply);
    PortFlows ports;
    there.findFlows(ports);
    return there.margins(ports, true);
}

double Cylinder::wallCoefficient(double angle, const double* y, const Memory& memory) {
    return Instant(*model_, geometry(angle), y, memory, {}).wallCoefficient();
}

} // namespace lobewright::gas
