#pragma once

#include "core/mechanism/opposed_pair.h"
#include "core/samples.h"

#include <vector>

namespace lobewright::loads {

/// Nodes, ascending, and weights of ∫f dθ over one period.
struct Quadrature {
    Samples theta, weight; ///< shape (nodes) [rad]
};

/// Gauss-Legendre on pieces of about `usual` [rad], crowded at both ends of every interval between
/// the cuts [rad, any period].
Quadrature periodQuadrature(double period, const std::vector<double>& cuts, double usual);

/// The same on pieces of about six cycle degrees, between junctions and turning points of the
/// pair and the given further breaks (shaft angles of cylinder 1 [rad], any period).
Quadrature periodQuadrature(const mechanism::OpposedPair& pair, const std::vector<double>& breaks);

} // namespace lobewright::loads
