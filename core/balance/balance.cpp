#include "core/balance/balance.h"

#include <algorithm>
#include <cmath>

namespace lobewright::balance {

namespace {

/// Largest |m·ÿ| of either piston at 1 rad/s [N], from even samples of one period and both sides of
/// every junction.
double largestPistonForce(const mechanism::OpposedPair& pair) {
    constexpr int samples = 360;
    const Samples phi = Samples::LinSpaced(samples, 0.0, pair.period());
    double largest = 0.0;
    for (const End end : pair.pistons()) {
        double acceleration = pair.curve(end).sample(phi).y2.abs().maxCoeff();
        for (const motion::Junction& junction : pair.curve(end).junctions()) {
            acceleration =
                std::max({acceleration, std::abs(junction.before.y2), std::abs(junction.after.y2)});
        }
        largest = std::max(largest, pair.mechanism().pistonMass[end] * acceleration);
    }
    return largest;
}

} // namespace

UnitBalance unitBalance(const mechanism::OpposedPair& pair, const Samples& theta,
                        int highestOrder) {
    return {shaking(pair, 1.0, theta), shakingOrders(pair, 1.0, highestOrder), remedy(pair),
            largestPistonForce(pair)};
}

UnitPeaks unitPeaks(const mechanism::OpposedPair& pair, const Samples& theta) {
    const Shaking sum = shaking(pair, 1.0, theta);
    return {sum.force.abs().maxCoeff(),
            std::sqrt((sum.momentX.square() + sum.momentY.square()).maxCoeff()),
            largestPistonForce(pair)};
}

Balance peaksAt(const UnitPeaks& unit, double omega) {
    const double square = omega * omega;
    Balance result;
    result.highestForce = square * unit.force;
    result.highestMoment = square * unit.moment;
    result.pistonForce = square * unit.pistonForce;
    return result;
}

Balance solveBalance(const Inputs& inputs) {
    const double square = inputs.omega * inputs.omega;
    Balance result;
    result.shaking = inputs.unit.shaking;
    for (Samples* values :
         {&result.shaking.force, &result.shaking.momentX, &result.shaking.momentY}) {
        *values *= square;
    }
    result.orders = inputs.unit.orders;
    for (Samples* values :
         {&result.orders.cylinder, &result.orders.force, &result.orders.momentX,
          &result.orders.momentY, &result.orders.forward, &result.orders.backward}) {
        *values *= square;
    }
    result.remedy = inputs.unit.remedy;
    result.pistonForce = square * inputs.unit.pistonForce;
    result.highestForce = result.shaking.force.abs().maxCoeff();
    result.highestMoment =
        (result.shaking.momentX.square() + result.shaking.momentY.square()).maxCoeff();
    result.highestMoment = std::sqrt(result.highestMoment);
    result.energy = energyFluctuation(inputs.evenTotalTorque);
    if (inputs.inertia > 0.0) {
        result.fluctuation = fluctuation(result.energy.energy, inputs.inertia, inputs.omega);
        result.speeds = speedRange(result.energy.energy, inputs.inertia, inputs.omega);
    }
    return result;
}

} // namespace lobewright::balance
