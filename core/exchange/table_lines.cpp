#include "core/exchange/table_lines.h"

#include "core/parsed.h"

#include <algorithm>
#include <cmath>

namespace lobewright::exchange {

namespace {

constexpr std::string_view blanks = " \t\r";
/// At most this much of a bad line is shown.
constexpr std::size_t shownBytes = 40;
/// No table that is read here has as many columns; those beyond are not looked at.
constexpr std::size_t mostColumns = 64;

} // namespace

std::string_view trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(blanks);
    if (first == std::string_view::npos) {
        return {};
    }
    return text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

std::vector<std::string> columnsOf(std::string_view line) {
    const bool hasStrongMark = line.find_first_of(";\t") != std::string_view::npos;
    const bool hasComma = line.find(',') != std::string_view::npos;
    const std::string_view marks = hasStrongMark ? ";\t" : hasComma ? "," : " ";
    std::vector<std::string> columns;
    for (bool isLast = false; !isLast && columns.size() < mostColumns;) {
        const std::size_t end = line.find_first_of(marks);
        columns.emplace_back(trimmed(line.substr(0, end)));
        isLast = end == std::string_view::npos;
        line = isLast ? std::string_view() : trimmed(line.substr(end + 1));
        if (hasStrongMark) {
            std::ranges::replace(columns.back(), ',', '.');
        }
    }
    return columns;
}

std::optional<double> numberOf(std::string_view text) {
    if (text.starts_with('+')) {
        text.remove_prefix(1);
    }
    const auto value = parsed<double>(text);
    return value && std::isfinite(*value) ? value : std::nullopt;
}

std::string shownLine(std::string_view line) {
    std::string text;
    for (char letter : line.substr(0, shownBytes)) {
        const auto code = static_cast<unsigned char>(letter);
        text += code < 0x20 || code >= 0x7f ? '?' : letter;
    }
    return text;
}

} // namespace lobewright::exchange
