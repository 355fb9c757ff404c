#pragma once

#include "core/result.h"

#include <algorithm>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

/// Lines of tables that other programs wrote.
namespace lobewright::exchange {

/// Without blanks at its ends.
std::string_view trimmed(std::string_view text);

/// The first columns of a line, 64 at most, separated by semicolons or tabs, else by commas, else
/// by blanks; with semicolons and tabs decimal commas become points.
std::vector<std::string> columnsOf(std::string_view line);

/// A finite number that is the whole text.
std::optional<double> numberOf(std::string_view text);

/// f(number of the line, line) for each, trimmed, the byte order mark left out. Ends with the first
/// problem that f returns, if it does.
template <class F>
std::optional<Problem> forEachLine(std::string_view text, F f) {
    constexpr std::string_view byteOrderMark = "\xEF\xBB\xBF";
    if (text.starts_with(byteOrderMark)) {
        text.remove_prefix(byteOrderMark.size());
    }
    for (int count = 1; !text.empty(); ++count) {
        const std::size_t end = std::min(text.find('\n'), text.size());
        if (std::optional<Problem> problem = f(count, trimmed(text.substr(0, end)))) {
            return problem;
        }
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return std::nullopt;
}

/// The beginning of a bad line, fit to be shown.
std::string shownLine(std::string_view line);

} // namespace lobewright::exchange
