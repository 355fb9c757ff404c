#include "core/motion/motion_law.h"

#include "core/units.h"

#include <algorithm>
#include <array>
#include <cassert>
#include <cmath>
#include <limits>

LW_TEXTS_OF(Core)

namespace lobewright::motion {
namespace {

using units::pi;

/// Acceleration peak·sin(frequency·w + phase) from `begin` on; frequency 0: constant.
struct AccelerationPiece {
    double begin;
    double peak;
    double frequency = 0.0;
    double phase = 0.0;
};

/// Integrates the acceleration twice in closed form, from rest at zero.
std::vector<Piece> integrate(const std::vector<AccelerationPiece>& accelerations) {
    std::vector<Piece> pieces;
    double s = 0.0, v = 0.0;
    for (std::size_t i = 0; i < accelerations.size(); ++i) {
        const AccelerationPiece& a = accelerations[i];
        const double k = a.frequency;
        Piece piece;
        piece.begin = piece.origin = a.begin;
        if (k == 0.0) {
            piece.degree = 2;
            piece.polynomial = {s, v, a.peak / 2.0};
        } else {
            piece.degree = 1;
            piece.amplitude = a.peak / (k * k);
            piece.frequency = k;
            piece.phase = a.phase;
            piece.polynomial = {s + piece.amplitude * std::sin(a.phase),
                                v + piece.amplitude * k * std::cos(a.phase)};
        }
        pieces.push_back(piece);
        const Lift end =
            evaluate(piece, i + 1 < accelerations.size() ? accelerations[i + 1].begin : 0.5);
        s = end.y;
        v = end.y1;
    }
    return pieces;
}

std::vector<Piece> power(std::array<double, 8> coefficients, int degree) {
    Piece piece;
    piece.polynomial = coefficients;
    piece.degree = degree;
    return {piece};
}

const double trapezoidPeak = 8.0 * pi / (pi + 2.0);
const double sinePeak = 4.0 * pi * pi / (pi + 4.0);

/// Peak of s'·s'' where s'' = a·cos u and s' = base + slope·sin u: the root of
/// 2·slope·sin²u + base·sin u − slope = 0 in the rising quarter.
double sinusoidTorquePeak(double acceleration, double base, double slope) {
    const double sine = (std::sqrt(base * base + 8.0 * slope * slope) - base) / (4.0 * slope);
    return acceleration * std::sqrt(1.0 - sine * sine) * (base + slope * sine);
}

CharacteristicFactors trapezoidFactors() {
    // The peak of s'·s'' lies in the piece that falls from the flat at x = 3/8, where
    // s' = C_a·(1/4π + 1/4) + C_a/4π·sin u.
    const double jerk = 4.0 * pi * trapezoidPeak;
    return {2.0, trapezoidPeak, jerk, jerk,
            sinusoidTorquePeak(trapezoidPeak, trapezoidPeak * (1.0 / (4.0 * pi) + 0.25),
                               trapezoidPeak / (4.0 * pi))};
}

CharacteristicFactors sineFactors() {
    // The peak of s'·s'' lies in the long middle piece, where s' = C_a/4π + 3·C_a/4π·sin u.
    const double jerk = 4.0 * pi * sinePeak;
    return {4.0 * pi / (pi + 4.0), sinePeak, jerk, jerk,
            sinusoidTorquePeak(sinePeak, sinePeak / (4.0 * pi), 3.0 * sinePeak / (4.0 * pi))};
}

CharacteristicFactors factors345() {
    // s' = 30·q², s'' = 60·q·t with q = x·(1 − x), t = 1 − 2x, t² = 1 − 4q:
    // q³·t is largest at q = 3/14.
    const double q = 3.0 / 14.0;
    return {1.875, 10.0 / std::sqrt(3.0), 60.0, 60.0,
            1800.0 * q * q * q * std::sqrt(1.0 - 4.0 * q)};
}

CharacteristicFactors factors4567() {
    // s' = 140·q³, s'' = 420·q²·t: q⁵·t is largest at q = 5/22.
    const double q = 5.0 / 22.0;
    return {35.0 / 16.0, 84.0 / (5.0 * std::sqrt(5.0)), 52.5, 52.5,
            140.0 * 420.0 * std::pow(q, 5) * std::sqrt(1.0 - 4.0 * q)};
}

constexpr double infinite = std::numeric_limits<double>::infinity();

std::vector<LawRow> makeLaws() {
    return {
        {Law::harmonic,
         "harmonic",
         LW_TEXT("Harmonic"),
         integrate({{0.0, pi * pi / 2.0, pi, pi / 2.0}}),
         {pi / 2.0, pi * pi / 2.0, infinite, pi * pi * pi / 2.0, pi * pi * pi / 8.0}},
        {Law::cycloidal, // s'·s'' = 2π·sin u·(1 − cos u), largest at u = 2π/3
         "cycloidal",
         LW_TEXT("Cycloidal"),
         integrate({{0.0, 2.0 * pi, 2.0 * pi, 0.0}}),
         {2.0, 2.0 * pi, 4.0 * pi * pi, 4.0 * pi * pi, 1.5 * std::sqrt(3.0) * pi}},
        {Law::parabolic,
         "parabolic",
         LW_TEXT("Parabolic"),
         integrate({{0.0, 4.0}}),
         {2.0, 4.0, infinite, 0.0, 8.0},
         true},
        {Law::modifiedTrapezoid, "modified-trapezoid", LW_TEXT("Modified trapezoid"),
         integrate({{0.0, trapezoidPeak, 4.0 * pi, 0.0},
                    {0.125, trapezoidPeak},
                    {0.375, trapezoidPeak, 4.0 * pi, pi / 2.0}}),
         trapezoidFactors()},
        {Law::modifiedSine, "modified-sine", LW_TEXT("Modified sine"),
         integrate({{0.0, sinePeak, 4.0 * pi, 0.0}, {0.125, sinePeak, 4.0 * pi / 3.0, pi / 2.0}}),
         sineFactors()},
        {Law::polynomial345, "polynomial-345", LW_TEXT("Polynomial 3-4-5"),
         power({0.0, 0.0, 0.0, 10.0, -15.0, 6.0}, 5), factors345()},
        {Law::polynomial4567, "polynomial-4567", LW_TEXT("Polynomial 4-5-6-7"),
         power({0.0, 0.0, 0.0, 0.0, 35.0, -84.0, 70.0, -20.0}, 7), factors4567()},
    };
}

} // namespace

std::span<const LawRow> laws() {
    static const std::vector<LawRow> table = makeLaws();
    return table;
}

const LawRow& rowOf(Law law) {
    const LawRow& row = laws()[static_cast<std::size_t>(law)];
    assert(row.law == law);
    return row;
}

Lift unitLift(const LawRow& row, double x) {
    if (x < 0.0)
        return {};
    if (x > 1.0)
        return {1.0, 0.0, 0.0, 0.0};
    // At a junction of the reflected half the right-hand limit is the left-hand one of the first.
    const bool reflected = x >= 0.5;
    const double u = reflected ? 1.0 - x : x;
    const std::vector<Piece>& half = row.firstHalf;
    std::size_t i = half.size() - 1;
    while (i > 0 && (reflected ? half[i].begin >= u : half[i].begin > u))
        --i;
    const Lift lift = evaluate(half[i], u);
    return reflected ? Lift{1.0 - lift.y, lift.y1, -lift.y2, lift.y3} : lift;
}

Lift unitLift(Law law, double x) {
    return unitLift(rowOf(law), x);
}

std::vector<double> innerJunctions(Law law) {
    const std::vector<Piece>& half = rowOf(law).firstHalf;
    std::vector<double> inner;
    for (std::size_t i = 1; i < half.size(); ++i)
        inner.push_back(half[i].begin);
    if (rowOf(law).jumpsInTheMiddle)
        inner.push_back(0.5);
    for (std::size_t i = half.size() - 1; i > 0; --i)
        inner.push_back(1.0 - half[i].begin);
    return inner;
}

CharacteristicFactors characteristicFactors(Law law) {
    return rowOf(law).factors;
}

std::vector<SegmentPeaks> segmentPeaks(const SegmentShape& shape) {
    std::vector<SegmentPeaks> peaks;
    double lift = 0.0;
    for (std::size_t i = 0; i < shape.segments.size(); ++i) {
        const Segment& segment = shape.segments[i];
        if (segment.kind == SegmentKind::dwell)
            continue;
        const double end =
            segment.endLift.value_or(segment.kind == SegmentKind::rise ? shape.stroke : 0.0);
        const double h = std::abs(end - lift), span = segment.span;
        const CharacteristicFactors c = characteristicFactors(segment.law);
        peaks.push_back(
            {static_cast<int>(i), c, c.velocity * h / span, c.acceleration * h / (span * span),
             c.jerkInside * h / (span * span * span), c.torque * h * h / (span * span * span)});
        lift = end;
    }
    return peaks;
}

} // namespace lobewright::motion
