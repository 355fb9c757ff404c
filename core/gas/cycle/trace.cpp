#include "core/gas/cycle/trace.h"

#include <algorithm>
#include <cassert>
#include <cmath>
#include <numeric>

namespace lobewright::gas {

namespace {

/// Index of the last of ascending values that is not greater; the first where all are.
std::size_t lastNotAfter(const std::vector<double>& values, double value) {
    const auto after = std::upper_bound(values.begin(), values.end(), value);
    return after == values.begin() ? 0 : static_cast<std::size_t>(after - values.begin()) - 1;
}

} // namespace

void StepRecord::clear() {
    begin.clear();
    length.clear();
    coefficients.clear();
}

void StepRecord::sort() {
    if (std::is_sorted(begin.begin(), begin.end())) {
        return;
    }
    std::vector<std::size_t> order(begin.size());
    std::iota(order.begin(), order.end(), std::size_t{0});
    std::sort(order.begin(), order.end(),
              [this](std::size_t a, std::size_t b) { return begin[a] < begin[b]; });
    const StepRecord old = *this;
    clear();
    for (const std::size_t i : order) {
        begin.push_back(old.begin[i]);
        length.push_back(old.length[i]);
        const auto first =
            old.coefficients.begin() + static_cast<std::ptrdiff_t>(i * variables * terms);
        coefficients.insert(coefficients.end(), first, first + variables * terms);
    }
}

std::size_t StepRecord::stepAt(double window) const {
    return lastNotAfter(begin, window);
}

std::size_t StepRecord::stepFrom(std::size_t step, double window) const {
    if (begin[step] > window) {
        return stepAt(window);
    }
    while (step + 1 < begin.size() && begin[step + 1] <= window) {
        ++step;
    }
    return step;
}

PlenumState SupplyTrace::stateAt(double window) const {
    const double into = window - std::floor(window / span) * span;
    const std::size_t step = lastNotAfter(begin, into);
    const double s = std::clamp((into - begin[step]) / length[step], 0.0, 1.0);
    const double* r = &coefficients[variables.size() * StepRecord::terms * step];
    PlenumState state{};
    for (std::size_t i = 0; i < variables.size(); ++i) {
        state[static_cast<std::size_t>(variables[i])] = denseValue(r + i * StepRecord::terms, s);
    }
    return state;
}

double SupplyTrace::pumpPressure(double window, double airConstant, double productsConstant) const {
    const PlenumState p = stateAt(window);
    return ((p[plenumMass] - p[plenumProducts]) * airConstant +
            p[plenumProducts] * productsConstant) *
           p[plenumTemperature] / pump.at(window).volume;
}

SupplyState SupplyTrace::at(double window, const Model& model) const {
    return begin.empty() ? constant
                         : Outside(model, constant).state(window, stateAt(window).data());
}

RecordedTrace::RecordedTrace(Setup setup)
    : setup_(std::move(setup)), period_(setup_.chamber->period()) {
    assert(!setup_.records.empty() && !setup_.records.front().begin.empty());
}

RecordedTrace::State RecordedTrace::stateAt(double localAngle, int cylinder) const {
    const StepRecord& record = recordOf(cylinder);
    const double window = windowOf(localAngle);
    const std::size_t step = record.stepAt(window);
    return stateInStep(record, step, record.shareAt(step, window));
}

GasSamples RecordedTrace::sample(const Samples& theta, int cylinder) const {
    const Eigen::Index count = theta.size();
    GasSamples samples{Samples(count), Samples(count), Samples(count), Samples(count)};
    const double lag = setup_.cylinderLag[static_cast<std::size_t>(cylinder)];
    const StepRecord& record = recordOf(cylinder);
    std::size_t step = 0;
    for (Eigen::Index i = 0; i < count; ++i) {
        const double window = windowOf(theta[i] - lag);
        step = record.stepFrom(step, window);
        const State state = stateInStep(record, step, record.shareAt(step, window));
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

/// A chamber for each cylinder runs with it; a case for all is told by the angle of cylinder 1.
Samples RecordedTrace::pumpPressure(const Samples& theta, int cylinder) const {
    const SupplyTrace& supply = setup_.supply;
    if (!supply.pumps()) {
        return {};
    }
    const bool isShared = supply.pump.pump.shared;
    const double lag = setup_.cylinderLag[isShared ? 0 : static_cast<std::size_t>(cylinder)];
    return theta.unaryExpr([&](double angle) {
        return supply.pumpPressure(windowOf(angle - lag), setup_.airConstant,
                                   setup_.productsConstant);
    });
}

} // namespace lobewright::gas
