#pragma once

#include "core/gas/cycle/cycle.h"

#include <vector>

namespace lobewright::gas {

/// Cylinders grouped by where they stand in the period.
struct Phases {
    std::vector<double> lags;    ///< distinct, ascending, the first 0 [rad]
    std::vector<double> weights; ///< cylinders of each
    std::vector<int> ofCylinder; ///< phase of each cylinder
    bool even = true;            ///< evenly spaced with equal weights
};

/// Angles that differ by whole periods are one phase; cylinder 1 has lag 0.
Phases phasesOf(const RunConditions& run, double period);

/// Local angle = θ − lag, a cylinder [rad]: ψ_k − ψ_1.
std::vector<double> cylinderLags(const RunConditions& run);

} // namespace lobewright::gas
