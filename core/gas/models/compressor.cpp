#include "core/gas/models/compressor.h"

#include <algorithm>
#include <cmath>

namespace lobewright::gas {
namespace {

/// Where the level line to the left of the peak begins, as (φ − φ_p)/(φ_c − φ_p): there it touches
/// the parabola.
constexpr double levelFrom = 0.01;
constexpr double levelHead = 1.0 - levelFrom * levelFrom; ///< ψ/ψ₀ there
constexpr double lowestEfficiency = 0.2;                  ///< share of the best, own estimate

} // namespace

TurningWheel::TurningWheel(const Wheel& wheel, const GasGroup& air, double pressure,
                           double temperature, double speed)
    : wheel_(wheel), air_(air), pressure_(pressure), temperature_(temperature), speed_(speed),
      tip_(0.5 * wheel.diameter * speed),
      unit_(pressure / (air.gasConstant() * temperature) * tip_ * wheel.diameter * wheel.diameter),
      heatTimesTemperature_(air.heat(temperature) * temperature) {
    const double gamma = air.heatRatio(temperature);
    exponent_ = (gamma - 1.0) / gamma;
}

double TurningWheel::headCoefficient(double flow) const {
    const double x =
        (flowCoefficient(flow) - wheel_.peakFlow) / (wheel_.chokeFlow - wheel_.peakFlow);
    const double share =
        x > levelFrom ? 1.0 - x * x : levelHead + 2.0 * levelFrom * (levelFrom - x);
    return wheel_.headCoefficient * share;
}

double TurningWheel::pressureRatio(double flow) const {
    const double rise = headCoefficient(flow) * tip_ * tip_ / heatTimesTemperature_;
    return std::exp(std::log1p(std::max(rise, -0.99)) / exponent_);
}

double TurningWheel::efficiency(double flow) const {
    const double s = flowCoefficient(flow) / wheel_.bestFlow;
    return wheel_.bestEfficiency * std::max(s * (2.0 - s), lowestEfficiency);
}

double TurningWheel::flowAgainst(double outletPressure) const {
    const double rise = std::expm1(exponent_ * std::log(outletPressure / pressure_));
    const double share =
        rise * heatTimesTemperature_ / (tip_ * tip_ * wheel_.headCoefficient); // ψ/ψ₀
    const double x = share < levelHead ? std::sqrt(1.0 - share)
                                       : levelFrom - (share - levelHead) / (2.0 * levelFrom);
    const double phi = wheel_.peakFlow + x * (wheel_.chokeFlow - wheel_.peakFlow);
    return unit_ * std::max(phi, 0.0);
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
