#include "core/reference/crank_motion.h"

#include <algorithm>
#include <cassert>
#include <cmath>

namespace lobewright::study {

SliderCrank::SliderCrank(double stroke, double rodRatio)
    : radius_(0.5 * stroke), rod_(0.5 * stroke / rodRatio), rodRatio_(rodRatio) {
    assert(stroke > 0.0 && rodRatio > 0.0 && rodRatio < 1.0);
}

motion::Lift SliderCrank::at(double tau) const {
    const double s = std::sin(tau);
    const double c = std::cos(tau);
    const double r = radius_;
    // q = √(l² − r²·s²) is the rod's length along the cylinder; q' = −r²·s·c/q.
    const double q = std::sqrt(rod_ * rod_ - r * r * s * s);
    const double q1 = -r * r * s * c / q;
    const double q2 = (-r * r * (c * c - s * s) - q1 * q1) / q;
    const double q3 = (4.0 * r * r * s * c - 3.0 * q1 * q2) / q;
    motion::Lift lift;
    // S − (r + l − r·c − q), written without cancelling near outer dead centre.
    lift.y = r * (1.0 + c) - r * r * s * s / (rod_ + q);
    lift.y1 = -r * s + q1;
    lift.y2 = -r * c + q2;
    lift.y3 = r * s + q3;
    return lift;
}

motion::LiftSamples SliderCrank::at(const Samples& tau) const {
    const Samples s = tau.sin();
    const Samples c = tau.cos();
    const double r = radius_;
    const Samples q = (rod_ * rod_ - r * r * s.square()).sqrt();
    const Samples q1 = -r * r * s * c / q;
    const Samples q2 = (-r * r * (c.square() - s.square()) - q1.square()) / q;
    const Samples q3 = (4.0 * r * r * s * c - 3.0 * q1 * q2) / q;
    return {r * (1.0 + c) - r * r * s.square() / (rod_ + q), -r * s + q1, -r * c + q2, r * s + q3};
}

double SliderCrank::angleAt(double lift) const {
    // Distance of the piston pin from the crank's axis; l² = r² + d² − 2·r·d·cos τ.
    const double d = rod_ - radius_ + lift;
    const double cosine = (radius_ * radius_ + d * d - rod_ * rod_) / (2.0 * radius_ * d);
    return std::acos(std::clamp(cosine, -1.0, 1.0));
}

} // namespace lobewright::study
