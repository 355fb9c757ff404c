#pragma once

#include "core/mechanism/opposed_pair.h"

#include <vector>

/// Lift and its derivatives over the shaft turn, straight from the tracks: they follow a drag
/// before anything is solved.
namespace lobewright::ui {

/// One track over one turn, every half degree and both limits at every junction.
struct TurnMotion {
    Samples theta; ///< [rad], ascending; a junction occurs twice
    motion::LiftSamples lift;
};
TurnMotion turnMotion(const mechanism::OpposedPair& pair, End end);

/// The same as one quantity.
struct MotionCurve {
    Samples theta;  ///< [rad]
    Samples values; ///< [m], [m/s], [m/s²] or [m/s³]
};
/// `derivative` 0 … 3; ω [rad/s].
MotionCurve motionCurve(const mechanism::OpposedPair& pair, End end, int derivative, double omega);

/// A jump of a derivative, at each place of the turn.
struct ShownJump {
    End end = End::inlet;
    double theta = 0.0;               ///< [rad] in [0, 2π)
    double before = 0.0, after = 0.0; ///< [m/s], [m/s²] or [m/s³]
};
/// `derivative` 1 … 3.
std::vector<ShownJump> shownJumps(const mechanism::OpposedPair& pair, int derivative, double omega);

/// θ in [0, 2π) of every repetition of a track angle [rad].
std::vector<double> shaftAngles(const mechanism::OpposedPair& pair, End end, double phi);

} // namespace lobewright::ui
