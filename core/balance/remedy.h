#pragma once

#include "core/mechanism/opposed_pair.h"

namespace lobewright::balance {

/// What would leave the least axial force of one cylinder, changing one thing at a time. Ratios are
/// root mean squares relative to the force of the inlet piston alone.
struct Remedy {
    double residual = 0.0;     ///< as designed
    double exhaustMass = 0.0;  ///< best mass of the exhaust piston at the present lead [kg]
    double massResidual = 0.0; ///< left with it
    /// Best total lead of the exhaust track, δ + Δ, at the present masses [rad]; of equally good
    /// ones that nearest to the present.
    double exhaustLead = 0.0;
    double leadResidual = 0.0; ///< left with it
    double bothResidual = 0.0; ///< left with that lead and the best mass for it
};

/// Ratios below this count as cancelled: the search places the lead to about 1e-8 rad.
inline constexpr double cancelled = 1e-6;

Remedy remedy(const mechanism::OpposedPair& pair);

} // namespace lobewright::balance
