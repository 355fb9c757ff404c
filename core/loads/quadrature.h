#pragma once

#include "core/mechanism/opposed_pair.h"
#include "core/samples.h"

#include <vector>

namespace lobewright::loads {

/// Nodes and weights of ∫f dθ over one period, five nodes on each piece.
struct Quadrature {
    static constexpr unsigned nodesOfPiece = 5;
    Samples theta, weight;      ///< shape (nodes) [rad], ascending
    std::vector<double> bounds; ///< of the pieces, ascending, one more than pieces [rad]
};

/// Gauss-Legendre on pieces of about `usual` [rad], crowded at both ends of every interval between
/// the cuts [rad, any period].
Quadrature periodQuadrature(double period, const std::vector<double>& cuts, double usual);

/// The same on pieces of about six cycle degrees, between junctions and turning points of the
/// pair and the given further breaks (shaft angles of cylinder 1 [rad], any period).
Quadrature periodQuadrature(const mechanism::OpposedPair& pair, const std::vector<double>& breaks);

/// Pieces to be put in the place of others.
struct Division {
    Samples theta, weight;           ///< of the parts, ascending [rad]
    std::vector<std::size_t> pieces; ///< of the whole, which the parts replace; ascending
};
/// The pieces inside of which one of the breaks lies, divided there: for functions that have a kink
/// now here, now there, but no steeper beginning [rad, any period].
Division dividedAt(const Quadrature& whole, const std::vector<double>& breaks);

} // namespace lobewright::loads
