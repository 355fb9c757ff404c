#pragma once

#include <vector>

namespace lobewright::motion {

/// Coefficients, lowest power first.
using Polynomial = std::vector<double>;

double valueOf(const Polynomial& polynomial, double x);
Polynomial derivative(const Polynomial& polynomial);

/// Places in (from, to) where the polynomial changes sign, ascending, to rounding. Found between
/// the sign changes of its derivative, so none is missed; double roots without a change of sign
/// are no such places.
std::vector<double> signChanges(const Polynomial& polynomial, double from, double to);

} // namespace lobewright::motion
