#pragma once

#include "core/mechanism/opposed_pair.h"
#include "core/samples.h"

/// Inertia forces of all pistons on the engine. z points from the inlet end to the exhaust end;
/// gas and track forces are internal and do not appear.
namespace lobewright::balance {

/// Shape (samples) each.
struct Shaking {
    Samples force;   ///< along the shaft, +z [N]
    Samples momentX; ///< about x through the shaft axis, x through ψ = 0 [N·m]
    Samples momentY; ///< about y [N·m]
};

/// F = Σ_k(−m_i·ÿ_i + m_e·ÿ_e), M_x = Σ F_k·R·sin ψ_k, M_y = −Σ F_k·R·cos ψ_k.
Shaking shaking(const mechanism::OpposedPair& pair, double omega, const Samples& theta);

/// Force of the pistons of cylinder 1 alone [N].
Samples cylinderForce(const mechanism::OpposedPair& pair, double omega, const Samples& theta);

/// Amplitudes by shaft order 0, 1, 2 …
struct ShakingOrders {
    Samples cylinder;         ///< force of one cylinder [N]
    Samples force;            ///< whole engine [N]
    Samples momentX, momentY; ///< [N·m]
    Samples forward;          ///< part of the rocking moment that turns with the shaft [N·m]
    Samples backward;         ///< part that turns against it [N·m]
};
/// Orders 0 … highest: one cylinder by quadrature between its junctions (to about 1e-9 of its
/// largest order), the ring by its exact phases.
ShakingOrders shakingOrders(const mechanism::OpposedPair& pair, double omega, int highest);

} // namespace lobewright::balance
