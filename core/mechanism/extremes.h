#pragma once

#include "core/motion/lift_curve.h"

#include <functional>
#include <vector>

namespace lobewright::mechanism {

/// A place where a periodic function stops rising (maximum) or falling (minimum). `end` exceeds
/// `begin` where the function stays at its extreme over an interval.
struct Extreme {
    double begin = 0.0, end = 0.0; ///< [rad], begin in [0, period)
    double value = 0.0;
    bool maximum = false;
    double middle() const { return 0.5 * (begin + end); }
};

/// An interval over which the slope of a periodic function is zero [rad].
struct Level {
    double begin = 0.0, end = 0.0;
};

/// A periodic function with its slope, smooth between `breaks`.
struct PeriodicFunction {
    std::function<double(double)> value, slope;
    double period = 0.0;
    double slopeScale = 0.0;    ///< a slope that counts as steep; 1e-12 of it counts as zero
    std::vector<double> breaks; ///< in [0, period), ascending; may be empty
    std::vector<Level> levels;  ///< known intervals of zero slope; `end` may exceed the period
};

/// All extremes of one period, ascending by `begin`; maxima and minima alternate. Empty for a
/// constant. Extremes of `levels` are taken from their bounds, others are roots of the slope to a
/// few units in the last place.
std::vector<Extreme> extremes(const PeriodicFunction& function);

/// Crests and troughs of a lift curve over its track angle φ, ripples left out.
std::vector<Extreme> extremes(const motion::LiftCurve& curve);

/// The angle less whole periods, in [0, period); values within 1e-12 rad below the period become 0.
double wrapped(double angle, double period);

} // namespace lobewright::mechanism
