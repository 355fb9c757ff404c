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
    const double s = std::clamp((window - begin[step]) / length[step], 0.0, 1.0);
    const double* r = &plenumCoefficients[2 * terms * step];
    return pressurePerState * denseValue(r, s) * denseValue(r + terms, s);
}

std::optional<double> StepRecord::plenumTemperatureAt(double window) const {
    if (plenumCoefficients.empty()) {
        return std::nullopt;
    }
    const std::size_t step = stepAt(window);
    const double s = std::clamp((window - begin[step]) / length[step], 0.0, 1.0);
    return denseValue(&plenumCoefficients[(2 * step + 1) * terms], s);
}

std::size_t StepRecord::stepAt(double window) const {
    const auto after = std::upper_bound(begin.begin(), begin.end(), window);
    return after == begin.begin() ? 0 : static_cast<std::size_t>(after - begin.begin()) - 1;
}

RecordedGas StepRecord::gasInStep(std::size_t step, double s, std::size_t index,
                                  std::size_t count) const {
    const double* r = &coefficients[(step * count + index) * variables * terms];
    return {denseValue(r, s), denseValue(r + terms, s), denseValue(r + 2 * terms, s)};
}

RecordedGas StepRecord::gasAt(double window) const {
    const std::size_t step = stepAt(window);
    return gasInStep(step, std::clamp((window - begin[step]) / length[step], 0.0, 1.0), 0, 1);
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

RecordedTrace::State RecordedTrace::stateAt(double localAngle, int cylinder) const {
    const double period = setup_.chamber->period();
    int stretch = 0;
    double window = 0.0;
    if (setup_.alike) {
        double into = localAngle - setup_.start;
        into -= std::floor(into / period) * period;
        const int last = static_cast<int>(setup_.stretches.size()) - 1;
        stretch = std::clamp(static_cast<int>(into / setup_.window), 0, last);
        window = into - stretch * setup_.window;
    } else {
        stretch = setup_.cylinderStretch[static_cast<std::size_t>(cylinder)];
        window = localAngle - setup_.stretches[static_cast<std::size_t>(stretch)].localStart;
        window -= std::floor(window / period) * period;
    }
    const std::size_t step = setup_.steps.stepAt(window);
    const double s =
        std::clamp((window - setup_.steps.begin[step]) / setup_.steps.length[step], 0.0, 1.0);
    return stateInStep(static_cast<int>(step), s, stretch);
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
