#pragma once

namespace lobewright {

/// Four numbers that are worked on side by side.
using Four __attribute__((vector_size(4 * sizeof(double)))) = double;
/// Four neighbours among any numbers, read and written in place.
using FourOf __attribute__((vector_size(4 * sizeof(double)), aligned(alignof(double)), may_alias)) =
    double;

inline const FourOf& fourAt(const double* first) {
    return *reinterpret_cast<const FourOf*>(first);
}
inline FourOf& fourAt(double* first) {
    return *reinterpret_cast<FourOf*>(first);
}

} // namespace lobewright
