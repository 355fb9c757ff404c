#pragma once

#include "core/gas/cylinder.h"
#include "core/gas/trace.h"

#include <vector>

namespace lobewright::gas {

/// A stretch of a window in which a cylinder draws fresh gas [window angle, rad].
struct FreshInterval {
    double from = 0.0, to = 0.0;
};

/// The cylinders that draw from the same plenum as the one that is integrated, where all run alike
/// and evenly spaced: what cylinder 1 did in its last period, each in its turn. Their chambers are
/// remembered; what flows into them is found anew from the present state of the plenum. In the
/// steady state this is the coupled solution.
class Neighbours {
  public:
    Neighbours() = default;
    /// `lags`: phases after cylinder 1 [rad]; `weight`: cylinders in each.
    Neighbours(const Model& model, std::vector<double> lags, double weight);

    bool none() const { return lags_.empty(); }
    /// The last period: steps of cylinder 1 and when it drew fresh gas.
    void remember(const StepRecord& steps, const std::vector<FreshInterval>& intervals);
    void startWindow();
    /// Window angle of the next place where one of them begins or stops to draw; infinite when
    /// there is none.
    double nextChange() const;
    bool pass(double theta); ///< true: something changed at this window angle

    struct Draw {
        double rate = 0.0;  ///< of all together [kg/rad]
        double slope = 0.0; ///< its derivative with the pressure of the supply [kg/(rad·Pa)]
    };
    Draw draw(double theta, const SupplyState& supply) const;

  private:
    struct Change {
        double angle = 0.0;
        std::size_t neighbour = 0;
        bool begins = false;
    };
    double windowAngle(double theta, std::size_t neighbour) const;

    const Model* model_ = nullptr;
    std::vector<double> lags_;
    double weight_ = 1.0;
    StepRecord steps_;
    std::vector<FreshInterval> intervals_;
    std::vector<Change> changes_;
    std::vector<bool> drawing_;
    std::size_t next_ = 0;
};

} // namespace lobewright::gas
