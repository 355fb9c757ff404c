#pragma once

#include "core/motion/lift_curve.h"

#include <vector>

namespace lobewright::ui {

/// How far a roller has rolled along its track, at the pitch circle: turns the marks on the roller
/// that is drawn, and nothing else.
class RolledPath {
  public:
    RolledPath() = default;
    RolledPath(const motion::LiftCurve& curve, double pitchRadius);
    /// [m] at a pattern angle [rad]; begins anew at every turn.
    double at(double phi) const;

  private:
    std::vector<double> path_; ///< over a turn, even steps
};

} // namespace lobewright::ui
