#pragma once

#include "core/samples.h"

namespace lobewright::contact {

/// Function of one variable through its values at Chebyshev points, barycentric form [Berrut and
/// Trefethen 2004].
class ChebyshevCurve {
  public:
    /// Through `values` at points(low, high, values.size()); low < high.
    ChebyshevCurve(double low, double high, Samples values);
    static Samples points(double low, double high, Eigen::Index count);
    /// x shape (samples), within [low, high] to rounding.
    Samples operator()(const Samples& x) const;

  private:
    Samples points_, values_;
};

/// Elliptical contact over the range of radii of one engine: the exact solution at Chebyshev points
/// of the ratio of radii, interpolated to better than 1e-9 (ellipse) and 1e-5 (deepest shear) over
/// ranges up to a factor of 30.
class CrownTable {
  public:
    /// Ratios larger/smaller relative radius, 1 ≤ lowest ≤ highest.
    CrownTable(double lowest, double highest, double poissonRatio);

    /// Shape (samples) each.
    struct Ellipses {
        Samples axisRatio;      ///< k ≥ 1
        Samples secondIntegral; ///< E(e)
        Samples shearRatio;     ///< τ_max/p₀
        Samples shearDepth;     ///< z/b
    };
    /// Ratios outside the range are taken at its end: they belong to samples that bear no load.
    Ellipses at(const Samples& ratio) const;

  private:
    struct Curves {
        ChebyshevCurve logAxisRatio, secondIntegral, shearRatio, shearDepth;
    };
    static Curves tabulate(double low, double high, double poissonRatio);
    double low_, high_; ///< of ln ratio
    Curves curves_;
};

} // namespace lobewright::contact
