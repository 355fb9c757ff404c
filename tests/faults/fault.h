// One fault at a time. Only the copy of the core that tests/seeded_faults makes includes this:
// there every chosen place computes the sound value, or the faulty one where its number is the one
// in LW_FAULT. So one build holds all the faults. What the places look like is in
// tests/faults/places.py.
#pragma once

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <initializer_list>
#include <type_traits>

// The sound sources are judged elsewhere; the ones written here mix signs and types on purpose.
#pragma GCC diagnostic ignored "-Wconversion"
#pragma GCC diagnostic ignored "-Wsign-conversion"
#pragma GCC diagnostic ignored "-Wsign-compare"
#pragma GCC diagnostic ignored "-Wparentheses"
#pragma GCC diagnostic ignored "-Wunused-variable"
#pragma GCC diagnostic ignored "-Wmaybe-uninitialized"
#pragma GCC diagnostic ignored "-Wduplicated-branches"
#pragma GCC diagnostic ignored "-Wnull-dereference"
#pragma GCC diagnostic ignored "-Warray-bounds"
#pragma GCC diagnostic ignored "-Wstringop-overflow"

namespace seeded {

/// The number in LW_FAULT; 0 for none. Known before any other object is made.
extern std::uint32_t active;
/// Which places ran: by the low bits of their numbers, which differ from place to place.
extern unsigned char reached[65536];

inline bool on(std::uint32_t number) {
    reached[number & 0xffffU] = 1;
    return active == number;
}

/// `a + b` is written `a + Scaled(number, factor) * b`; every operator binds as it did.
struct Scaled {
    Scaled(std::uint32_t number, double factor) : faulty(on(number)), by(factor) {}
    Scaled operator-() const {
        Scaled other = *this;
        other.minus = !minus;
        return other;
    }
    bool faulty;
    double by;
    bool minus = false;
};

template <class T>
auto operator*(const Scaled& scale, const T& value) {
    if constexpr (std::is_integral_v<T>) {
        const T with = !scale.faulty    ? value
                       : scale.by < 0.0 ? static_cast<T>(T(0) - value)
                                        : static_cast<T>(scale.by * value);
        return scale.minus ? static_cast<T>(T(0) - with) : with;
    } else if constexpr (std::is_floating_point_v<T>) {
        const T with = scale.faulty ? static_cast<T>(scale.by * value) : value;
        return scale.minus ? -with : with;
    } else {
        return ((scale.faulty ? scale.by : 1.0) * (scale.minus ? -1.0 : 1.0)) * value;
    }
}

/// `a * b` is written `a * Either(number) * b`, and so are quotients and comparisons: what stands
/// left is held until what stands right is known.
struct Either {
    explicit Either(std::uint32_t number) : faulty(on(number)) {}
    bool faulty;
};
template <class A>
struct Held {
    const A& left;
    bool faulty;
};
template <class A>
Held<A> operator*(const A& left, const Either& either) {
    return {left, either.faulty};
}
template <class A>
Held<A> operator/(const A& left, const Either& either) {
    return {left, either.faulty};
}
template <class A>
Held<A> operator<(const A& left, const Either& either) {
    return {left, either.faulty};
}
template <class A>
Held<A> operator>(const A& left, const Either& either) {
    return {left, either.faulty};
}
template <class A>
Held<A> operator<=(const A& left, const Either& either) {
    return {left, either.faulty};
}
template <class A>
Held<A> operator>=(const A& left, const Either& either) {
    return {left, either.faulty};
}
template <class A, class B>
auto operator*(const Held<A>& held, const B& right) -> decltype(held.left * right) {
    using R = decltype(held.left * right);
    return held.faulty ? static_cast<R>(held.left / right) : static_cast<R>(held.left * right);
}
template <class A, class B>
auto operator/(const Held<A>& held, const B& right) -> decltype(held.left / right) {
    using R = decltype(held.left / right);
    return held.faulty ? static_cast<R>(held.left * right) : static_cast<R>(held.left / right);
}
template <class A, class B>
bool operator<(const Held<A>& held, const B& right) {
    return held.faulty ? held.left > right : held.left < right;
}
template <class A, class B>
bool operator>(const Held<A>& held, const B& right) {
    return held.faulty ? held.left < right : held.left > right;
}
template <class A, class B>
bool operator<=(const Held<A>& held, const B& right) {
    return held.faulty ? held.left >= right : held.left <= right;
}
template <class A, class B>
bool operator>=(const Held<A>& held, const B& right) {
    return held.faulty ? held.left <= right : held.left >= right;
}

template <class T>
T either(std::uint32_t number, T sound, T faulty) {
    return on(number) ? faulty : sound;
}
template <class T>
T least(std::uint32_t number, const T& a, const T& b) {
    return on(number) ? std::max(a, b) : std::min(a, b);
}
template <class T>
T least(std::uint32_t number, std::initializer_list<T> values) {
    return on(number) ? std::max(values) : std::min(values);
}
template <class T>
T most(std::uint32_t number, const T& a, const T& b) {
    return on(number) ? std::min(a, b) : std::max(a, b);
}
template <class T>
T most(std::uint32_t number, std::initializer_list<T> values) {
    return on(number) ? std::min(values) : std::max(values);
}
inline double sine(std::uint32_t number, double angle) {
    return on(number) ? std::cos(angle) : std::sin(angle);
}
inline double cosine(std::uint32_t number, double angle) {
    return on(number) ? std::sin(angle) : std::cos(angle);
}

} // namespace seeded
