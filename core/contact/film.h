#pragma once

#include "core/contact/settings.h"
#include "core/samples.h"

/// Least thickness of the oil film: isothermal, fully flooded, smooth. Measured films scatter by
/// some 30 % about these formulas.
namespace lobewright::contact {

/// Line contact, H = 2.65·U^0.70·G^0.54·W^−0.13 [Dowson 1968] (from memory). Load N > 0 [N] over
/// length L [m]; entrainment speed |u| [m/s], radius R > 0 [m], shape (samples); E* [Pa]. Zero
/// where N or u is zero. Result [m].
Samples lineFilm(const Lubricant& oil, const Samples& load, double length,
                 const Samples& entrainment, const Samples& radius, double modulus);

/// Elliptical contact, H = 3.63·U^0.68·G^0.49·W^−0.073·(1 − e^(−0.68k)) [Hamrock and Dowson 1977]
/// (from memory), R_x the radius in the direction of rolling, k = axis across rolling/axis along
/// rolling. Zero where N or u is zero. Result [m].
Samples ellipticalFilm(const Lubricant& oil, const Samples& load, const Samples& ellipticity,
                       const Samples& entrainment, const Samples& radius, double modulus);

/// √(Rq₁² + Rq₂²) [m]; λ is the film thickness over it.
double compositeRoughness(const Materials& materials);

} // namespace lobewright::contact
