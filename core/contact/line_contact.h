#pragma once

#include "core/contact/settings.h"
#include "core/samples.h"

/// Cylinders in line contact [Johnson 1985, §4.2]. Elastic, half-width ≪ radius, load even along
/// the line, no edge effect. Radii are relative radii of curvature: 1/R = 1/R₁ + 1/R₂, concave
/// negative.
namespace lobewright::contact {

/// E* [Pa]: 1/E* = Σ(1 − ν²)/E. Some books use E' = 2·E*.
double contactModulus(const Elastic& a, const Elastic& b);

/// Peak pressure p₀ = √(N·E*/(π·L·R)) [Pa]. Load N ≥ 0 [N] and radius R > 0 [m] of equal shape,
/// length L > 0 [m], modulus E* > 0 [Pa].
Samples linePeakPressure(const Samples& load, double length, const Samples& radius, double modulus);
double linePeakPressure(double load, double length, double radius, double modulus);

/// Half-width of the contact strip √(4·N·R/(π·L·E*)) [m]; arguments as above.
Samples lineHalfWidth(const Samples& load, double length, const Samples& radius, double modulus);
double lineHalfWidth(double load, double length, double radius, double modulus);

/// The largest shear stress below a contact, as ratios.
struct DeepestShear {
    double ratio = 0.0; ///< τ_max/p₀
    double depth = 0.0; ///< z/b, b the (smaller) half-width
};
/// Below a line contact, whatever Poisson's ratio: z/b = √((√5 − 1)/2) = 0.7862, τ/p₀ = 0.3003.
DeepestShear lineDeepestShear();

} // namespace lobewright::contact
