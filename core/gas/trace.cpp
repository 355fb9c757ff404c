#include "core/gas/trace.h"

#include "core/gas/dense_step.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace lobewright::gas {

static_assert(StepRecord::terms == DenseStep::denseTerms);

void StepRecord::clear() {
    begin.clear();
    length.clear();
    coefficients.clear();
    plenumCoefficients.clear();
}

double StepRecord::supplyPressureAt(double window) const {
    if (plenumCoefficients.empty()) {
        return constantPressure;
    }
    const std::size_t step = stepAt(window);
    const double s = shareAt(step, window);
    const double* r = &plenumCoefficients[2 * terms * step];
    return pressurePerState * denseValue(r, s) * denseValue(r + terms, s);
}

std::optional<double> StepRecord::plenumTemperatureAt(double window) const {
    if (plenumCoefficients.empty()) {
        return std::nullopt;
    }
    const std::size_t step = stepAt(window);
    const double s = shareAt(step, window);
    return denseValue(&plenumCoefficients[(2 * step + 1) * terms], s);
}

std::size_t StepRecord::stepAt(double window) const {
    const auto after = std::upper_bound(begin.begin(), begin.end(), window);
    return after == begin.begin() ? 0 : static_cast<std::size_t>(after - begin.begin()) - 1;
}

double StepRecord::shareAt(std::size_t step, double window) const {
    return std::clamp((window - begin[step]) / length[step], 0.0, 1.0);
}

RecordedGas StepRecord::gasInStep(std::size_t step, double s, std::size_t index,
                                  std::size_t count) const {
    const double* r = &coefficients[(step * count + index) * variables * terms];
    return {denseValue(r, s), denseValue(r + terms, s), denseValue(r + 2 * terms, s)};
}

RecordedGas StepRecord::gasAt(double window) const {
    const std::size_t step = stepAt(window);
    return gasInStep(step, shareAt(step, window), 0, 1);
}

RecordedTrace::RecordedTrace(Setup setup) : setup_(std::move(setup)) {
    assert(!setup_.steps.begin.empty());
}

RecordedTrace::State RecordedTrace::stateInStep(int step, double s, int stretch) const {
    const auto index = static_cast<std::size_t>(step);
    const auto cylinder = static_cast<std::size_t>(stretch);
    const RecordedGas gas = setup_.steps.gasInStep(index, s, cylinder, setup_.stretches.size());
    const double local = setup_.stretches[cylinder].localStart + setup_.steps.begin[index] +
                         s * setup_.steps.length[index];
    const double volume = setup_.chamber->at(local).volume;
    const double pressure =
        (gas.air * setup_.airConstant + gas.products * setup_.productsConstant) * gas.temperature /
        volume;
    return {pressure, gas.temperature, gas.air, gas.products};
}

RecordedTrace::Place RecordedTrace::placeOf(double localAngle, int cylinder) const {
    const double period = setup_.chamber->period();
    if (setup_.alike) {
        double into = localAngle - setup_.start;
        into -= std::floor(into / period) * period;
        const int last = static_cast<int>(setup_.stretches.size()) - 1;
        const int stretch = std::clamp(static_cast<int>(into / setup_.window), 0, last);
        return {stretch, into - stretch * setup_.window};
    }
    const int stretch = setup_.cylinderStretch[static_cast<std::size_t>(cylinder)];
    double window = localAngle - setup_.stretches[static_cast<std::size_t>(stretch)].localStart;
    window -= std::floor(window / period) * period;
    return {stretch, window};
}

RecordedTrace::State RecordedTrace::stateAt(double localAngle, int cylinder) const {
    const Place place = placeOf(localAngle, cylinder);
    const std::size_t step = setup_.steps.stepAt(place.window);
    return stateInStep(static_cast<int>(step), setup_.steps.shareAt(step, place.window),
                       place.stretch);
}

GasSamples RecordedTrace::sample(const Samples& theta, int cylinder) const {
    const Eigen::Index count = theta.size();
    GasSamples samples{Samples(count), Samples(count), Samples(count), Samples(count)};
    const double lag = setup_.cylinderLag[static_cast<std::size_t>(cylinder)];
    for (Eigen::Index i = 0; i < count; ++i) {
        const State state = stateAt(theta[i] - lag, cylinder);
        samples.pressure[i] = state.pressure;
        samples.temperature[i] = state.temperature;
        samples.airMass[i] = state.airMass;
        samples.productsMass[i] = state.productsMass;
    }
    return samples;
}

double RecordedTrace::pressure(double theta, int cylinder) const {
    return stateAt(theta - setup_.cylinderLag[static_cast<std::size_t>(cylinder)], cylinder)
        .pressure;
}

} // namespace lobewright::gas
