#pragma once

#include <fmt/format.h>

#include <cstdio>
#include <string_view>
#include <utility>

namespace lobewright::cli {

/// Writes what can be written. That the screen is gone or full never ends the work: of the standard
/// output main() asks at the end, and nobody is left to be told of the other.
inline void write(std::FILE* stream, std::string_view text) {
    [[maybe_unused]] const std::size_t ignored = std::fwrite(text.data(), 1, text.size(), stream);
}

/// To the standard error: why something is refused.
template <class... Values>
void say(fmt::format_string<Values...> format, Values&&... values) {
    write(stderr, fmt::format(format, std::forward<Values>(values)...));
}

/// To the standard output: what was asked for.
template <class... Values>
void put(fmt::format_string<Values...> format, Values&&... values) {
    write(stdout, fmt::format(format, std::forward<Values>(values)...));
}

} // namespace lobewright::cli
