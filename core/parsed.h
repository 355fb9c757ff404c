#pragma once

#include <charconv>
#include <optional>
#include <string_view>
#include <system_error>

namespace lobewright {

/// The number that is the whole text, as files have it whatever the language: digits and a decimal
/// point. "inf" and "nan" are read as such.
template <class Number>
std::optional<Number> parsed(std::string_view text) {
    Number value{};
    const char* end = text.data() + text.size();
    const auto read = std::from_chars(text.data(), end, value);
    return read.ec == std::errc() && read.ptr == end ? std::optional(value) : std::nullopt;
}

} // namespace lobewright
