#include "core/gas/models/feeder.h"

#include "core/gas/models/supply.h"

#include <boost/math/tools/roots.hpp>

#include <algorithm>
#include <cmath>
#include <limits>

namespace lobewright::gas {
namespace {

/// Where the flow of the wheel is what the blower takes of the air behind it.
Feeder::Between betweenOf(const TurningWheel& wheel, const Supply& supply, double blown) {
    const double coolest =
        supply.compressor.interCoolerTemperature.value_or(std::numeric_limits<double>::infinity());
    const auto stateAt = [&](double flow) {
        const Compression compression = wheel.compression(flow);
        return Feeder::Between{flow, intakePressure(supply) * wheel.pressureRatio(flow),
                               std::min(compression.outletTemperature, coolest),
                               compression.outletTemperature, compression.work};
    };
    // the blower's flow goes with the density before it
    const auto excess = [&](double flow) {
        const Feeder::Between state = stateAt(flow);
        return flow - blown * state.pressure / intakePressure(supply) * supply.ambientTemperature /
                          state.temperature;
    };
    double high = blown;
    while (excess(high) < 0.0) {
        high *= 2.0;
    }
    std::uintmax_t iterations = 60;
    const auto bracket = boost::math::tools::toms748_solve(
        excess, 0.0, high, [](double a, double b) { return b - a <= 1e-14 * b; }, iterations);
    return stateAt(0.5 * (bracket.first + bracket.second));
}

} // namespace

double likelySpeed(const Supply& supply, const GasGroup& air) {
    const double t = supply.ambientTemperature;
    const double heat = air.heat(t);
    const double rise = std::pow(1.6, air.gasConstant() / heat) - 1.0;
    const Wheel& wheel = supply.compressor.wheel;
    return std::sqrt(heat * t * rise / wheel.headCoefficient) / (0.5 * wheel.diameter);
}

double gearedSpeed(const Supply& supply, double omega) {
    return supply.compressor.gearRatio * omega;
}

Feeder::Feeder(const Supply& supply, const GasGroup& air, double omega, double wheelSpeed)
    : blown_(blowerFlow(supply, air, omega)),
      coolest_(supply.afterCoolerTemperature.value_or(std::numeric_limits<double>::infinity())) {
    Inlet inlet{intakePressure(supply), supply.ambientTemperature};
    if (supply.kind == SupplyKind::compressor) {
        wheel_.emplace(supply.compressor.wheel, air, inlet.pressure, inlet.temperature, wheelSpeed);
        if (supply.compressor.stages == Stages::wheelThenBlower) {
            between_ = betweenOf(*wheel_, supply, blown_);
            inlet = {between_->pressure, between_->temperature};
            blown_ = between_->flow;
        }
    }
    if (!wheel_ || between_) {
        blower_.emplace(air, inlet, supply.isentropicEfficiency);
    }
}

Feed Feeder::feed(double plenumPressure) const {
    Feed feed;
    Compression last;
    if (blower_) {
        last = blower_->to(plenumPressure);
        feed.flow = blown_;
        feed.wheelWork = between_ ? between_->work : 0.0;
        feed.blowerWork = last.work;
    } else {
        feed.flow = wheel_->flowAgainst(plenumPressure);
        last = wheel_->compression(feed.flow);
        feed.wheelWork = last.work;
    }
    feed.hottest = last.outletTemperature;
    feed.temperature = std::min(feed.hottest, coolest_);
    return feed;
}

double Feeder::slope(double plenumPressure) const {
    if (!wheel_ || between_) {
        return 0.0;
    }
    const double step = 1e-6 * plenumPressure;
    return (wheel_->flowAgainst(plenumPressure - step) -
            wheel_->flowAgainst(plenumPressure + step)) /
           (2.0 * step);
}

} // namespace lobewright::gas
