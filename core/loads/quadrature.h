#pragma once

#include "core/mechanism/opposed_pair.h"
#include "core/samples.h"

#include <vector>

namespace lobewright::loads {

/// Nodes and weights of ∫f dθ over one period.
struct Quadrature {
    Samples theta, weight; ///< shape (nodes) [rad]
};

/// Gauss-Legendre on every interval between junctions and turning points of the pair and the given
/// further breaks (shaft angles of cylinder 1 [rad], any period), halved until none is longer than
/// three cycle degrees.
Quadrature periodQuadrature(const mechanism::OpposedPair& pair, const std::vector<double>& breaks);

} // namespace lobewright::loads
