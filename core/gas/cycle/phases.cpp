#include "core/gas/cycle/phases.h"

#include "core/units.h"

#include <algorithm>
#include <cmath>

namespace lobewright::gas {
namespace {

constexpr double samePhase = 1e-9; ///< [rad]

} // namespace

std::vector<double> cylinderLags(const RunConditions& run) {
    const std::size_t count = static_cast<std::size_t>(std::max(run.cylinders, 1));
    std::vector<double> lags(count, 0.0);
    for (std::size_t k = 0; k < count; ++k) {
        lags[k] = run.cylinderAngles.size() == count
                      ? run.cylinderAngles[k] - run.cylinderAngles[0]
                      : units::turn * static_cast<double>(k) / static_cast<double>(count);
    }
    return lags;
}

Phases phasesOf(const RunConditions& run, double period) {
    std::vector<double> reduced;
    for (const double lag : cylinderLags(run)) {
        double into = lag - std::floor(lag / period) * period;
        if (period - into < samePhase) {
            into = 0.0;
        }
        reduced.push_back(into);
    }
    Phases phases;
    phases.lags = reduced;
    std::sort(phases.lags.begin(), phases.lags.end());
    phases.lags.erase(std::unique(phases.lags.begin(), phases.lags.end(),
                                  [](double a, double b) { return b - a < samePhase; }),
                      phases.lags.end());
    phases.weights.assign(phases.lags.size(), 0.0);
    for (const double lag : reduced) {
        const auto near =
            std::min_element(phases.lags.begin(), phases.lags.end(), [lag](double a, double b) {
                return std::fabs(a - lag) < std::fabs(b - lag);
            });
        const auto index = near - phases.lags.begin();
        phases.ofCylinder.push_back(static_cast<int>(index));
        phases.weights[static_cast<std::size_t>(index)] += 1.0;
    }
    const double spacing = period / static_cast<double>(phases.lags.size());
    for (std::size_t i = 0; i < phases.lags.size(); ++i) {
        phases.even = phases.even && phases.weights[i] == phases.weights[0] &&
                      std::fabs(phases.lags[i] - static_cast<double>(i) * spacing) < samePhase;
    }
    return phases;
}

} // namespace lobewright::gas
