#pragma once

#include "core/motion/lift_curve.h"

#include <array>
#include <cmath>
#include <cstddef>

namespace lobewright::motion {

/// One closed-form stretch of a lift curve, in the local variable w = (φ − origin)·rate:
/// y = base + scale·[Σ cᵢ·wⁱ − amplitude·sin(frequency·w + phase)].
/// Every motion law and every spline interval is of this kind; the local variable starts at the
/// nearer end of a law, so that y keeps its digits where it is small.
struct Piece {
    double begin = 0.0; ///< where it takes over [rad]
    double origin = 0.0;
    double rate = 1.0; ///< [1/rad]; negative: counted backwards from the end of the law
    double base = 0.0;
    double scale = 1.0;
    int degree = 0;
    std::array<double, 8> polynomial{};
    double amplitude = 0.0, frequency = 0.0, phase = 0.0;
};

/// Lift and derivatives per radian of one piece at φ; no check that φ lies inside.
inline Lift evaluate(const Piece& piece, double phi) {
    const double w = (phi - piece.origin) * piece.rate;
    double f = piece.polynomial[static_cast<std::size_t>(piece.degree)];
    double f1 = 0.0, f2 = 0.0, f3 = 0.0; // f⁽ⁿ⁾/n! by Horner's scheme
    for (int i = piece.degree - 1; i >= 0; --i) {
        f3 = f3 * w + f2;
        f2 = f2 * w + f1;
        f1 = f1 * w + f;
        f = f * w + piece.polynomial[static_cast<std::size_t>(i)];
    }
    f2 *= 2.0;
    f3 *= 6.0;
    if (piece.amplitude != 0.0) {
        const double k = piece.frequency;
        const double argument = k * w + piece.phase;
        const double s = piece.amplitude * std::sin(argument);
        const double c = piece.amplitude * std::cos(argument);
        f -= s;
        f1 -= k * c;
        f2 += k * k * s;
        f3 += k * k * k * c;
    }
    const double r = piece.rate;
    const double a = piece.scale * r;
    return {piece.base + piece.scale * f, a * f1, a * r * f2, a * r * r * f3};
}

} // namespace lobewright::motion
