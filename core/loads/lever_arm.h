#pragma once

#include "core/samples.h"

namespace lobewright::loads {

/// Lever arm of a piston on a track: torque per axial force, −y' [m]. Whatever the lever, the mean
/// torque is the work of a turn divided by 2π.
Samples leverArm(const Samples& y1);

/// The same of a crank of equal stroke: S/2·sin τ·(1 + λ·cos τ/√(1 − λ²·sin²τ)) [m], τ from inner
/// dead centre [rad], positive driving after it. 0 ≤ λ = crank radius/rod length < 1.
Samples crankLeverArm(double stroke, double rodRatio, const Samples& tau);

} // namespace lobewright::loads
