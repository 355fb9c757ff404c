#pragma once

#include <cstdint>
#include <string>
#include <string_view>

namespace lobewright {

/// One character of UTF-8 text.
struct Utf8Character {
    std::size_t bytes = 1;
    std::uint32_t code = 0;
    bool isValid = false; ///< false: a byte that belongs to no character; `bytes` is 1
};

/// The first character of a text that is not empty.
constexpr Utf8Character firstCharacter(std::string_view text) {
    const auto byte = [&](std::size_t i) { return static_cast<unsigned char>(text[i]); };
    const unsigned lead = byte(0);
    if (lead < 0x80U) {
        return {1, lead, true};
    }
    const std::size_t bytes = lead >= 0xF8U ? 1 : lead >= 0xF0U ? 4 : lead >= 0xE0U ? 3 : 2;
    if (lead < 0xC2U || bytes == 1 || bytes > text.size()) {
        return {};
    }
    std::uint32_t code = lead & (0xFFU >> (bytes + 1));
    for (std::size_t i = 1; i < bytes; ++i) {
        if ((byte(i) & 0xC0U) != 0x80U) {
            return {};
        }
        code = code << 6U | (byte(i) & 0x3FU);
    }
    const bool isShortest = code >= (bytes == 4 ? 0x10000U : bytes == 3 ? 0x800U : 0x80U);
    const bool isSurrogate = code >= 0xD800U && code <= 0xDFFFU;
    return isShortest && !isSurrogate && code <= 0x10FFFFU ? Utf8Character{bytes, code, true}
                                                           : Utf8Character{};
}

/// Characters of UTF-8 text, bytes that are none counted as one each.
constexpr std::size_t characterCount(std::string_view text) {
    std::size_t count = 0;
    for (; !text.empty(); ++count) {
        text.remove_prefix(firstCharacter(text).bytes);
    }
    return count;
}

/// Whether a character steers a terminal or the order of a line instead of being read: controls,
/// line and paragraph separators, marks that turn the direction of text.
constexpr bool isSteering(std::uint32_t code) {
    return code < 0x20U || (code >= 0x7FU && code < 0xA0U) || code == 0x061CU ||
           (code >= 0x200EU && code <= 0x200FU) || (code >= 0x2028U && code <= 0x202EU) ||
           (code >= 0x2066U && code <= 0x2069U) || code == 0xFEFFU;
}

/// The text with everything replaced that could forge a line of the program's own: steering
/// characters by a blank, bytes that are no UTF-8 by "?". For titles, names of files and whatever
/// else a stranger wrote.
inline std::string printable(std::string_view text) {
    std::string shown;
    shown.reserve(text.size());
    while (!text.empty()) {
        const Utf8Character next = firstCharacter(text);
        if (!next.isValid) {
            shown += '?';
        } else if (isSteering(next.code)) {
            shown += ' ';
        } else {
            shown += text.substr(0, next.bytes);
        }
        text.remove_prefix(next.bytes);
    }
    return shown;
}

} // namespace lobewright
