#pragma once

#include <type_traits>

namespace lobewright {

/// The two ends of a cylinder, named after the ports that their piston uncovers.
enum class End { inlet, exhaust };

inline constexpr End bothEnds[] = {End::inlet, End::exhaust};
inline constexpr const char* name(End end) {
    return end == End::inlet ? "inlet" : "exhaust";
}

/// One value for each end.
template <class T>
struct PerEnd {
    T inlet{};
    T exhaust{};
    T& operator[](End end) { return end == End::inlet ? inlet : exhaust; }
    const T& operator[](End end) const { return end == End::inlet ? inlet : exhaust; }
    bool operator==(const PerEnd&) const = default;
};

/// The same of values that have no default: both must be given.
template <class T>
requires(!std::is_default_constructible_v<T>) struct PerEnd<T> {
    T inlet;
    T exhaust;
    T& operator[](End end) { return end == End::inlet ? inlet : exhaust; }
    const T& operator[](End end) const { return end == End::inlet ? inlet : exhaust; }
    bool operator==(const PerEnd&) const = default;
};

} // namespace lobewright
