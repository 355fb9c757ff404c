#pragma once

#include <array>
#include <bit>
#include <cstdint>

/// Logarithm and exponential for the rates of the gas, where they are much of the work: inline, and
/// without the cases that no state of a gas brings about. Within 4e-16 relative (the logarithm:
/// absolute where it is below 1) of the exact value, as tests show. Both look up the nearest of
/// some values and add a short series. [Tang, ACM Trans. Math. Software 15 (1989), 16 (1990)]
namespace lobewright::gas {

namespace elementary {

inline constexpr int indexBits = 7; ///< of the values looked up
inline constexpr std::size_t entries = std::size_t{1} << indexBits;
inline constexpr int restBits = 52 - indexBits; ///< of a mantissa that the index leaves
/// Mantissas are taken from 0.6875 to 1.375, so that those around 1 lie among them.
inline constexpr std::uint64_t leastMantissa = 0x3FE6000000000000ULL;

/// ln m = 2·artanh((m − 1)/(m + 1)) [Abramowitz & Stegun 4.1.27], m about 1.
constexpr long double logarithmBySeries(long double m) {
    const long double s = (m - 1.0L) / (m + 1.0L);
    long double sum = 0.0L;
    for (int k = 41; k >= 1; k -= 2) {
        sum = sum * s * s + 1.0L / static_cast<long double>(k);
    }
    return 2.0L * s * sum;
}

/// A value in each part of the mantissas.
struct Value {
    double value = 1.0, reciprocal = 1.0, logarithm = 0.0;
    double unused = 0.0; ///< the index is a shift
};
constexpr std::array<Value, entries> makeValues() {
    std::array<Value, entries> table{};
    for (std::size_t i = 0; i < entries; ++i) {
        const std::uint64_t begin = leastMantissa + (std::uint64_t{i} << restBits);
        const double middle = std::bit_cast<double>(begin + (std::uint64_t{1} << (restBits - 1)));
        // beside 1 it is 1 itself: there the logarithm is small
        constexpr std::uint64_t one = std::bit_cast<std::uint64_t>(1.0);
        if (begin != one && begin + (std::uint64_t{1} << restBits) != one) {
            table[i] = {middle, 1.0 / middle,
                        static_cast<double>(logarithmBySeries(static_cast<long double>(middle)))};
        }
    }
    return table;
}
inline constexpr std::array<Value, entries> values = makeValues();

/// Bits of 2^(i/entries) less those that the index adds to the exponent.
constexpr std::array<std::uint64_t, entries> makePowers() {
    constexpr long double ln2 = 0.693147180559945309417232121458L;
    std::array<std::uint64_t, entries> table{};
    for (std::size_t i = 0; i < entries; ++i) {
        const long double x = ln2 * static_cast<long double>(i) / static_cast<long double>(entries);
        long double power = 1.0L;
        for (int k = 30; k >= 1; --k) {
            power = 1.0L + power * x / static_cast<long double>(k);
        }
        table[i] = std::bit_cast<std::uint64_t>(static_cast<double>(power)) -
                   (std::uint64_t{i} << restBits);
    }
    return table;
}
inline constexpr std::array<std::uint64_t, entries> powers = makePowers();

} // namespace elementary

/// ln x; x positive, finite, normal. [ln x = k·ln 2 + ln c + ln(1 + r), |r| < 0.008]
inline double logarithm(double x) {
    using namespace elementary;
    const auto bits = std::bit_cast<std::uint64_t>(x);
    const std::uint64_t above = bits - leastMantissa;
    const auto exponent = static_cast<std::int64_t>(above) >> 52;
    const double m = std::bit_cast<double>(bits - (static_cast<std::uint64_t>(exponent) << 52));
    const Value& near = values[(above >> restBits) % entries];
    const double r = (m - near.value) * near.reciprocal; // the difference is exact
    const double r2 = r * r;
    constexpr double third = 1.0 / 3, fifth = 1.0 / 5, sixth = 1.0 / 6, seventh = 1.0 / 7;
    const double series =
        (r * third - 0.5) + r2 * ((r * fifth - 0.25) + r2 * (r * seventh - sixth));
    constexpr double ln2 = 0.693147180559945309417;
    return (static_cast<double>(exponent) * ln2 + near.logarithm) + (r + r2 * series);
}

/// eˣ; x is taken as −700 below it and as 700 above. [eˣ = 2^(k/128)·eʳ, |r| ≤ ln 2/256]
inline double exponential(double x) {
    using namespace elementary;
    const double notTooLarge = x < 700.0 ? x : 700.0;
    const double limited = notTooLarge > -700.0 ? notTooLarge : -700.0;
    constexpr double perPower = 1.44269504088896340736 * entries; // 1/ln 2
    constexpr double high = 6.93147180369123816490e-01 / entries,
                     low = 1.90821492927058770002e-10 / entries;
    constexpr double rounder = 6755399441055744.0; // 1.5·2⁵²: adding it rounds to an integer
    const double shifted = limited * perPower + rounder;
    const double k = shifted - rounder;
    const double r = (limited - k * high) - k * low;
    const double r2 = r * r;
    constexpr double sixth = 1.0 / 6, ofFourth = 1.0 / 24, ofFifth = 1.0 / 120;
    const double rest = r + r2 * ((0.5 + r * sixth) + r2 * (ofFourth + r * ofFifth));
    const auto index = std::bit_cast<std::uint64_t>(shifted);
    const double power = std::bit_cast<double>(powers[index % entries] + (index << restBits));
    return power + power * rest;
}

} // namespace lobewright::gas
