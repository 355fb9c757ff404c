#pragma once

#include "core/loads/piston.h"

#include <algorithm>

namespace lobewright::loads {

/// Of the forces along the cylinder the one that pulls a piston hardest off its track.
enum class PullingForce { inertia, gas, rings };

inline PullingForce pullingForce(const AxialShares& shares) {
    if (shares.inertia <= std::min(shares.gas, shares.ring)) {
        return PullingForce::inertia;
    }
    return shares.gas <= shares.ring ? PullingForce::gas : PullingForce::rings;
}

} // namespace lobewright::loads
