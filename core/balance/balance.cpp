#include "core/balance/balance.h"

#include <algorithm>
#include <cmath>

namespace lobewright::balance {

namespace {

/// Largest |m·ÿ| of either piston [N], from even samples of one period and both sides of every
/// junction.
double largestPistonForce(const mechanism::OpposedPair& pair, double omega) {
    constexpr int samples = 360;
    const Samples phi = Samples::LinSpaced(samples, 0.0, pair.period());
    double largest = 0.0;
    for (const End end : bothEnds) {
        double acceleration = pair.curve(end).sample(phi).y2.abs().maxCoeff();
        for (const motion::Junction& junction : pair.curve(end).junctions()) {
            acceleration =
                std::max({acceleration, std::abs(junction.before.y2), std::abs(junction.after.y2)});
        }
        largest = std::max(largest, pair.mechanism().pistonMass[end] * acceleration);
    }
    return omega * omega * largest;
}

} // namespace

Balance solveBalance(const Inputs& inputs) {
    Balance result;
    result.shaking = shaking(inputs.pair, inputs.omega, inputs.theta);
    result.orders = shakingOrders(inputs.pair, inputs.omega, inputs.highestOrder);
    result.remedy = remedy(inputs.pair);
    result.pistonForce = largestPistonForce(inputs.pair, inputs.omega);
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
