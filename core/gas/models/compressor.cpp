#include "core/gas/models/compressor.h"

#include <algorithm>
#include <cmath>

namespace lobewright::gas {

double correctedFlow(double flow, double pressure, double temperature, const Wheel& wheel) {
    return flow * std::sqrt(temperature / wheel.referenceTemperature) * wheel.referencePressure /
           pressure;
}

TurningWheel::TurningWheel(const Wheel& wheel, const GasGroup& air, double pressure,
                           double temperature, double speed)
    : curve_(curveOf(wheel, air, speed * std::sqrt(wheel.referenceTemperature / temperature))),
      air_(air), pressure_(pressure), temperature_(temperature), speed_(speed),
      tip_(0.5 * wheel.diameter * speed),
      unit_(pressure / (air.gasConstant() * temperature) * tip_ * wheel.diameter * wheel.diameter),
      heatTimesTemperature_(air.heat(temperature) * temperature) {
    const double gamma = air.heatRatio(temperature);
    exponent_ = (gamma - 1.0) / gamma;
}

double TurningWheel::headCoefficient(double flow) const {
    return curve_->headCoefficient(flowCoefficient(flow));
}

double TurningWheel::pressureRatio(double flow) const {
    const double rise = headCoefficient(flow) * tip_ * tip_ / heatTimesTemperature_;
    return std::exp(std::log1p(std::max(rise, -0.99)) / exponent_);
}

double TurningWheel::efficiency(double flow) const {
    return curve_->efficiency(flowCoefficient(flow));
}

double TurningWheel::flowAgainst(double outletPressure) const {
    const double rise = std::expm1(exponent_ * std::log(outletPressure / pressure_));
    const double psi = rise * heatTimesTemperature_ / (tip_ * tip_);
    return unit_ * std::max(curve_->flowCoefficient(psi), 0.0);
}

Compression TurningWheel::compression(double flow) const {
    const double head = headCoefficient(flow) * tip_ * tip_;
    if (head <= 0.0) {
        return {temperature_, 0.0};
    }
    const double outlet = temperature_ * (1.0 + head / (heatTimesTemperature_ * efficiency(flow)));
    return {outlet, air_.enthalpy(outlet) - air_.enthalpy(temperature_)};
}

} // namespace lobewright::gas
