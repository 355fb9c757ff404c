#pragma once

#include "core/motion/knot_fit.h"

namespace lobewright::exchange {

/// Standard deviation of the noise of one row of a lift table [m]: of what every row differs from
/// the polynomial through two, three or four rows at either side, by the median, so that junctions
/// and single slips do not count; the least of the three, for rows far apart stray from low powers
/// without noise. Rounding of the table is noise too. At least 5 rows with increasing angles, else
/// 0.
double liftNoise(const motion::LiftTable& table);

/// The largest of so many differences that noise of this standard deviation makes: expected largest
/// of independent normal values, √(2·ln n), and one standard deviation more [m].
double largestOfNoise(double noise, std::size_t rows);

/// Standard deviation of the second derivative of a spline fitted to noisy rows [m/rad²]: noise of
/// the rows, evened out over rows/knots, in waves up to the shortest that the knots can follow,
/// σ·√(knots/rows)·(π/Δ)²/√5 with knots Δ apart [own estimate, within a factor of two of fits].
double accelerationNoise(double noise, std::size_t rows, std::size_t knots, double period);

} // namespace lobewright::exchange
