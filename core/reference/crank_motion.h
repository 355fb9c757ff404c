#pragma once

#include "core/motion/lift_curve.h"
#include "core/samples.h"

namespace lobewright::study {

/// Exact slider-crank without offset: crank radius r = S/2, rod l = r/λ_c. τ is the crank angle
/// from inner dead centre [rad]; lift y is counted inward from outer dead centre, as on a track:
/// y = S − [r + l − r·cos τ − √(l² − r²·sin²τ)].
class SliderCrank {
  public:
    /// stroke > 0 [m]; 0 < rodRatio < 1 (crank radius by rod length).
    SliderCrank(double stroke, double rodRatio);

    double stroke() const { return 2.0 * radius_; }
    double rodRatio() const { return rodRatio_; }
    /// Lift and its derivatives by τ [m/rad^k].
    motion::Lift at(double tau) const;
    motion::LiftSamples at(const Samples& tau) const; ///< shape (samples)
    /// The crank angle in [0, π] at which the piston stands at this lift, 0 ≤ lift ≤ stroke; the
    /// other one is 2π less it. Law of cosines, so to rounding.
    double angleAt(double lift) const;
    /// sin β of the rod against the cylinder axis, signed like sin τ; shape (samples).
    Samples rodSine(const Samples& tau) const { return rodRatio_ * tau.sin(); }

  private:
    double radius_, rod_, rodRatio_;
};

} // namespace lobewright::study
