#pragma once

#include "core/mechanism/opposed_pair.h"
#include "core/samples.h"

#include <vector>

namespace lobewright::mechanism {

/// Angles of cylinder 1 at which all cylinders must be known, without repeats. Lobes and evenly
/// spaced cylinders pass the same places again and again; each is evaluated once.
class FoldedAngles {
  public:
    /// All cylinders of the pair at shaft angles theta [rad].
    FoldedAngles(const OpposedPair& pair, const Samples& theta);

    /// Different angles of cylinder 1 in [0, period) [rad], in no order; apart by more than 1e-12.
    const Samples& angles() const { return angles_; }
    /// Values of a cylinder (from 0) at theta, from values at angles().
    Samples unfolded(const Samples& values, int cylinder) const;

  private:
    Samples angles_;
    std::vector<std::vector<Eigen::Index>> index_; ///< by cylinder and sample, into angles_
};

} // namespace lobewright::mechanism
