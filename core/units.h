#pragma once

/// SI inside the core; these factors turn the units of files and screens into SI (multiply) and
/// back (divide).
namespace lobewright::units {

inline constexpr double pi = 3.14159265358979323846; // moc stops at the header of constants
inline constexpr double turn = 2.0 * pi;
inline constexpr double degree = pi / 180.0;
inline constexpr double millimetre = 1e-3;
inline constexpr double micrometre = 1e-6;
inline constexpr double cubicCentimetre = 1e-6;
inline constexpr double squareMillimetre = 1e-6;
inline constexpr double bar = 1e5;
inline constexpr double megapascal = 1e6;
inline constexpr double gigapascal = 1e9;
inline constexpr double milligram = 1e-6;
inline constexpr double kilowatt = 1e3;
inline constexpr double revPerMinute = 2.0 * pi / 60.0; ///< to rad/s

} // namespace lobewright::units
