#pragma once

#include "core/gas/cycle/cycle.h"
#include "core/gas/models/fuel.h"

#include <cmath>
#include <numbers>

namespace lobewright::gas {

/// A chamber in closed form: one cycle a turn, inner dead centre at 0, harmonic volume, ports that
/// open along sin². Both ends open and close symmetrically about outer dead centre.
class AnalyticChamber final : public Chamber {
  public:
    struct Shape {
        double clearanceVolume = 2e-5;
        double sweptVolume = 2e-4;                         ///< 0: constant volume
        double inletHalfSpan = 0.9, exhaustHalfSpan = 1.1; ///< about outer dead centre [rad]
        double inletArea = 4e-4, exhaustArea = 4e-4;       ///< largest, effective [m²]
        double referenceVolume = 2e-4; ///< V_s of figures where the volume is constant
    };
    AnalyticChamber() : AnalyticChamber(Shape{}) {}
    explicit AnalyticChamber(const Shape& shape) : shape_(shape) {
        const double odc = std::numbers::pi;
        const double widest = std::fmax(shape.inletHalfSpan, shape.exhaustHalfSpan);
        cycles_ = {{0.0, odc - widest, odc - shape.inletHalfSpan, odc - shape.exhaustHalfSpan,
                    odc + shape.inletHalfSpan, odc + shape.exhaustHalfSpan, odc + widest}};
    }

    std::unique_ptr<Chamber> clone() const override {
        return std::make_unique<AnalyticChamber>(*this);
    }
    ChamberGeometry at(double theta) const override {
        const double half = 0.5 * shape_.sweptVolume;
        return {shape_.clearanceVolume + half * (1.0 - std::cos(theta)), half * std::sin(theta),
                opening(theta, shape_.inletHalfSpan, shape_.inletArea),
                opening(theta, shape_.exhaustHalfSpan, shape_.exhaustArea), 0.05};
    }
    double period() const override { return 2.0 * std::numbers::pi; }
    double cyclesPerTurn() const override { return 1.0; }
    double bore() const override { return 0.06; }
    double sweptVolume() const override {
        return shape_.sweptVolume > 0.0 ? shape_.sweptVolume : shape_.referenceVolume;
    }
    double meanStrokeSum() const override { return 0.07; }
    const std::vector<CycleAngles>& cycles() const override { return cycles_; }
    const std::vector<double>& kinks() const override { return kinks_; }

  private:
    static double opening(double theta, double halfSpan, double area) {
        const double turns = std::floor(theta / (2.0 * std::numbers::pi));
        const double from = theta - turns * 2.0 * std::numbers::pi - std::numbers::pi + halfSpan;
        if (from <= 0.0 || from >= 2.0 * halfSpan) {
            return 0.0;
        }
        const double s = std::sin(std::numbers::pi * from / (2.0 * halfSpan));
        return area * s * s;
    }
    Shape shape_;
    std::vector<CycleAngles> cycles_;
    std::vector<double> kinks_;
};

/// A monatomic-like gas for limiting cases: both groups alike, constant heat, and so much air to a
/// kilogram of fuel that burning adds no mass to speak of.
inline WorkingGas constantGas(double gamma = 1.4) {
    const double gasConstant = 287.0;
    const double heat = gamma / (gamma - 1.0) * gasConstant;
    WorkingGas gas;
    gas.air = gas.products = GasGroup::constant(gasConstant, heat);
    gas.airFuelRatio = 1e9;
    gas.lowerHeatingValue = 1e6 * gas.airFuelRatio;
    return gas;
}

/// Settings without wall heat at equal pressures, to be changed by a test.
inline Settings plainSettings() {
    Settings settings;
    settings.combustionEfficiency = 1.0;
    settings.wallHeat.model = WallHeatModel::none;
    settings.supply.pressure = 1.2e5;
    settings.supply.temperature = 300.0;
    settings.exhaustPressure = 1.0e5;
    return settings;
}

} // namespace lobewright::gas
