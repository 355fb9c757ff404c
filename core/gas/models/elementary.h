#pragma once

#include <bit>
#include <cstdint>

/// Logarithm and exponential for the rates of the gas, where they are half of the work: inline, and
/// without the cases that no state of a gas brings about. Within 3e-16 relative (the logarithm:
/// absolute where it is near 0) of the exact value, as tests show.
namespace lobewright::gas {

/// ln x; x positive, finite, normal. [ln m = 2·artanh((m − 1)/(m + 1)), Abramowitz & Stegun 4.1.27]
inline double logarithm(double x) {
    const auto bits = std::bit_cast<std::uint64_t>(x);
    // exponent that leaves the mantissa between √½ and √2
    constexpr std::uint64_t rootOfHalf = 0x3FE6A09E667F3BCDULL;
    const auto exponent = static_cast<std::int64_t>(bits - rootOfHalf) >> 52;
    const double m = std::bit_cast<double>(bits - (static_cast<std::uint64_t>(exponent) << 52));
    const double s = (m - 1.0) / (m + 1.0);
    const double q = s * s;
    const double q2 = q * q;
    // 1/3 + q/5 + …: two interleaved halves, so that they are evaluated side by side
    const double even = 1.0 / 3 + q2 * (1.0 / 7 + q2 * (1.0 / 11 + q2 * (1.0 / 15 + q2 / 19)));
    const double odd = 1.0 / 5 + q2 * (1.0 / 9 + q2 * (1.0 / 13 + q2 * (1.0 / 17)));
    constexpr double ln2 = 0.693147180559945309417;
    return static_cast<double>(exponent) * ln2 + 2.0 * (s + s * q * (even + q * odd));
}

/// eˣ; 0 below −700, e⁷⁰⁰ above 700. [Taylor series of the remainder, |r| ≤ ln 2/2]
inline double exponential(double x) {
    if (x < -700.0) {
        return 0.0;
    }
    const double limited = x < 700.0 ? x : 700.0;
    constexpr double inverseLn2 = 1.44269504088896340736;
    constexpr double ln2High = 6.93147180369123816490e-01, ln2Low = 1.90821492927058770002e-10;
    constexpr double rounder = 6755399441055744.0; // 1.5·2⁵²: adding it rounds to an integer
    const double shifted = limited * inverseLn2 + rounder;
    const double k = shifted - rounder;
    const double r = (limited - k * ln2High) - k * ln2Low;
    const double r2 = r * r;
    const double even =
        1.0 / 2 + r2 * (1.0 / 24 + r2 * (1.0 / 720 + r2 * (1.0 / 40320 +
                                                           r2 * (1.0 / 3628800 + r2 / 479001600))));
    const double odd =
        1.0 / 6 + r2 * (1.0 / 120 + r2 * (1.0 / 5040 + r2 * (1.0 / 362880 + r2 / 39916800)));
    const double value = 1.0 + (r + r2 * (even + r * odd));
    const auto power = std::bit_cast<std::uint64_t>(shifted) << 52; // k in the exponent's place
    return std::bit_cast<double>(std::bit_cast<std::uint64_t>(value) + power);
}

} // namespace lobewright::gas
