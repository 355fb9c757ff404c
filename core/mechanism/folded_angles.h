#pragma once

#include "core/mechanism/opposed_pair.h"
#include "core/samples.h"

#include <vector>

namespace lobewright::mechanism {

/// Places of one period at which a periodic quantity must be known to have it at many angles and
/// lags, without repeats. Lobes and evenly spaced cylinders pass the same places again and again;
/// each need be evaluated only once.
class FoldedAngles {
  public:
    /// All angles theta − lag [rad], shape (samples) for every lag; period > 0.
    FoldedAngles(double period, const Samples& theta, const std::vector<double>& lags);

    /// Different places in [0, period) [rad], in the order met; apart by more than 1e-12.
    const Samples& places() const { return places_; }
    /// Which place an angle of theta less a lag is at.
    Eigen::Index place(Eigen::Index sample, std::size_t lag) const {
        return index_[lag][static_cast<std::size_t>(sample)];
    }
    /// Values at theta − lag, from values at the places.
    Samples unfolded(const Samples& atPlaces, std::size_t lag) const;
    /// The first `count` of them.
    Samples unfolded(const Samples& atPlaces, std::size_t lag, Eigen::Index count) const;
    /// Values at the places, from values at theta − lag; the only lag.
    Samples folded(const Samples& atTheta) const;

  private:
    Samples places_;
    std::vector<std::vector<Eigen::Index>> index_; ///< by lag and sample, into the places
    /// Consecutive samples at consecutive places: most samples follow upon one another.
    struct Run {
        Eigen::Index sample = 0, place = 0, count = 0;
    };
    std::vector<std::vector<Run>> runs_; ///< by lag, ascending
};

/// How far every cylinder runs behind cylinder 1, ψ_k − ψ_1 [rad].
std::vector<double> cylinderLags(const Mechanism& mechanism);

} // namespace lobewright::mechanism
