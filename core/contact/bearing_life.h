#pragma once

#include "core/samples.h"

/// Rolling bearings [ISO 281; ISO 76].
namespace lobewright::contact {

inline constexpr double rollerLifeExponent = 10.0 / 3.0;
inline constexpr double ballLifeExponent = 3.0;
/// Contact stress of a roller bearing under its static rating [ISO 76]: 4000 MPa.
inline constexpr double staticRatingStress = 4.0e9;

/// Basic rating life L₁₀ = (C/P)^p [million turns]; C, P > 0 [N].
double ratingLife(double dynamicRating, double equivalentLoad,
                  double exponent = rollerLifeExponent);

/// [Σ|N|^p·s/Σs]^(1/p) [N], s the turns (or speed × weight) at each load; both of shape (samples),
/// s ≥ 0 with a positive sum.
double equivalentLoad(const Samples& load, const Samples& turns,
                      double exponent = rollerLifeExponent);

/// Contact stress of the most loaded roller for a static safety s₀ = C₀/P₀ > 0 [Pa]: 4000 MPa/√s₀
/// (line contact).
double staticStress(double staticSafety);

} // namespace lobewright::contact
