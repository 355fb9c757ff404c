#pragma once

#include "core/contact/line_contact.h"

/// Crowned roller on the track: elliptical contact with exact elliptic integrals [Johnson 1985,
/// §4.2; Hamrock, Fundamentals of Fluid Film Lubrication].
namespace lobewright::contact {

/// Shape of the contact ellipse for one ratio of radii.
struct Ellipticity {
    double k = 1.0;      ///< a/b ≥ 1, long over short semi-axis
    double first = 0.0;  ///< complete elliptic integral K(e), e² = 1 − 1/k²
    double second = 0.0; ///< complete elliptic integral E(e)
};

/// Solves ratio = (k²·E − K)/(K − E) for k, ratio = larger/smaller relative radius ≥ 1, finite. To
/// rounding. `guess` ≥ 1 starts the search, e.g. k of a neighbouring angle.
Ellipticity ellipticity(double ratio, double guess = 0.0);

struct PointContact {
    Ellipticity shape;
    double longSemiAxis = 0.0;  ///< a [m], along the larger relative radius
    double shortSemiAxis = 0.0; ///< b [m]
    double peakPressure = 0.0;  ///< p₀ = 3N/(2π·a·b) [Pa]
    double approach = 0.0;      ///< of distant points of both bodies [m]
};

/// Load N ≥ 0 [N], relative radii > 0 [m], in either order, E* > 0 [Pa].
PointContact pointContact(double load, double radiusX, double radiusY, double modulus,
                          double guess = 0.0);

/// Largest shear on the axis below an elliptical contact of axis ratio k ≥ 1 and Poisson's ratio ν,
/// depth in units of the short semi-axis.
DeepestShear ellipticDeepestShear(double k, double poissonRatio);

/// Principal stresses on the axis at depth z = ζ·b, in units of p₀ (compression negative): along
/// the long axis, the short axis and the normal. 1 ≤ k ≤ 1e5; digits are lost beyond.
struct AxisStresses {
    double along = 0.0, across = 0.0, normal = 0.0;
};
AxisStresses axisStresses(double k, double poissonRatio, double zeta);

} // namespace lobewright::contact
