#pragma once

#include <cmath>

namespace lobewright::exchange {

/// A quantity with its first and second derivative; the operations carry both exactly, so that a
/// formula written once yields its derivatives too [Griewank 2008].
struct Jet {
    double value = 0.0, first = 0.0, second = 0.0;

    Jet() = default;
    Jet(double constant) : value(constant) {}
    Jet(double v, double d1, double d2) : value(v), first(d1), second(d2) {}
};

/// f(a) from f, f' and f'' at a's value.
inline Jet chain(const Jet& a, double f, double f1, double f2) {
    return {f, f1 * a.first, f1 * a.second + f2 * a.first * a.first};
}

inline Jet operator+(const Jet& a, const Jet& b) {
    return {a.value + b.value, a.first + b.first, a.second + b.second};
}
inline Jet operator-(const Jet& a, const Jet& b) {
    return {a.value - b.value, a.first - b.first, a.second - b.second};
}
inline Jet operator*(const Jet& a, const Jet& b) {
    return {a.value * b.value, a.first * b.value + a.value * b.first,
            a.second * b.value + 2.0 * a.first * b.first + a.value * b.second};
}
inline Jet operator/(const Jet& a, const Jet& b) {
    const double v = 1.0 / b.value;
    return a * chain(b, v, -v * v, 2.0 * v * v * v);
}
inline Jet sqrt(const Jet& a) {
    const double root = std::sqrt(a.value);
    return chain(a, root, 0.5 / root, -0.25 / (root * a.value));
}
inline Jet atan(const Jet& a) {
    const double slope = 1.0 / (1.0 + a.value * a.value);
    return chain(a, std::atan(a.value), slope, -2.0 * a.value * slope * slope);
}
inline Jet cos(const Jet& a) {
    const double c = std::cos(a.value), s = std::sin(a.value);
    return chain(a, c, -s, -c);
}
inline Jet sin(const Jet& a) {
    const double c = std::cos(a.value), s = std::sin(a.value);
    return chain(a, s, c, -s);
}

} // namespace lobewright::exchange
