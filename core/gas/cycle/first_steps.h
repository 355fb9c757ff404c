#pragma once

#include <cmath>
#include <cstddef>
#include <optional>
#include <vector>

namespace lobewright::gas {

/// Step sizes differ from one smooth stretch to the next, but windows are much alike: each stretch
/// begins with the size that suited its first step before. What is known is kept as long as it
/// serves, so that windows in turn are divided alike and their states comparable.
class FirstSteps {
  public:
    void beginPeriod() { stretch_ = 0; }
    /// A stretch begins: the size for its first step [rad]; absent: none is known.
    std::optional<double> begin(double tolerance, bool implicit) {
        if (stretch_ >= known_.size()) {
            known_.resize(stretch_ + 1);
        }
        const Size& known = known_[stretch_++];
        isPending_ = true;
        hasFailed_ = false;
        if (!(known.size > 0.0 && known.implicit == implicit)) {
            return std::nullopt;
        }
        return known.size * std::pow(tolerance / known.tolerance, implicit ? 0.25 : 0.2);
    }
    void fail() { hasFailed_ = true; }  ///< a step had to be shortened
    void skip() { isPending_ = false; } ///< it ended at an event and tells nothing
    /// The size that would have suited the step just taken [rad].
    void note(double suitable, double tolerance, bool implicit) {
        if (!isPending_) {
            return;
        }
        isPending_ = false;
        Size& known = known_[stretch_ - 1];
        if (hasFailed_ || known.tolerance != tolerance || known.implicit != implicit) {
            known = {suitable, tolerance, implicit};
        }
    }

  private:
    struct Size {
        double size = 0.0, tolerance = 1.0;
        bool implicit = false;
    };
    std::vector<Size> known_; ///< of each stretch of the period
    std::size_t stretch_ = 0; ///< stretches begun in this period
    bool isPending_ = false, hasFailed_ = false;
};

} // namespace lobewright::gas
