#pragma once

#include <cassert>
#include <cstddef>

namespace lobewright {

/// The entry of one enumerator in a table that has one for each, in their order up to `last`.
template <auto last, class T, std::size_t size>
constexpr T entryOf(const T (&entries)[size], decltype(last) which) {
    static_assert(size == static_cast<std::size_t>(last) + 1, "an entry for each enumerator");
    assert(static_cast<std::size_t>(which) < size);
    return entries[static_cast<std::size_t>(which)];
}

} // namespace lobewright
